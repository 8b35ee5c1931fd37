#include "ui/window/project_desk.hpp"

#include "core/project/project_edit.hpp"
#include "core/project/project_file.hpp"
#include "core/project/project_text.hpp"
#include "core/project/project_writer.hpp"
#include "ui/scene/wording.hpp"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QUndoCommand>
#include <QUndoStack>

#include <utility>

namespace sheerlay::ui {

/// A step between two projects.
class ProjectEdit : public QUndoCommand {
public:
    ProjectEdit(ProjectDesk& desk, const QString& name, core::Project before, core::Project after)
        : QUndoCommand(name), m_desk(desk), m_before(std::move(before)), m_after(std::move(after)) {}
    void undo() override { m_desk.put(m_before); }
    void redo() override { m_desk.put(m_after); }

private:
    ProjectDesk& m_desk;
    core::Project m_before;
    core::Project m_after;
};

namespace {

constexpr int mostSteps = 200;

} // namespace

ProjectDesk::ProjectDesk(QObject* parent) : QObject(parent), m_undo(new QUndoStack(this)) {
    m_undo->setUndoLimit(mostSteps);
    connect(m_undo, &QUndoStack::cleanChanged, this, [this] { Q_EMIT dirtyChanged(dirty()); });
    connect(m_undo, &QUndoStack::indexChanged, this, &ProjectDesk::keep);
}

ProjectDesk::~ProjectDesk() {
    m_undo->disconnect(this);
}

void ProjectDesk::open(const QString& path, std::string text, core::Project project) {
    m_project.reset();
    m_undo->clear();
    m_path = QFileInfo(path).absoluteFilePath();
    m_ground = std::move(text);
    m_base = project;
    m_project = std::move(project);
    m_groundDiffers = false;
    m_missing = false;
    m_problem.clear();
    m_unanswered = kept().has_value();
    Q_EMIT dirtyChanged(false);
}

void ProjectDesk::close() {
    m_project.reset();
    m_undo->clear();
    m_path.clear();
    m_ground.clear();
    m_base.reset();
    m_groundDiffers = false;
    m_missing = false;
    m_unanswered = false;
    Q_EMIT dirtyChanged(false);
}

bool ProjectDesk::dirty() const {
    return isOpen() && (m_groundDiffers || m_missing || !m_undo->isClean());
}

void ProjectDesk::edit(const QString& name, core::Project next) {
    if (!isOpen() || next == *m_project)
        return;
    m_undo->push(new ProjectEdit(*this, name, *m_project, std::move(next)));
}

void ProjectDesk::put(const core::Project& project) {
    m_project = project;
    Q_EMIT projectChanged();
}

void ProjectDesk::keep() {
    if (!isOpen())
        return;
    if (m_unanswered) {
        // work of an earlier session that nobody decided about yet makes room, but is not lost
        QFile::remove(keptPath() + QStringLiteral("~"));
        QFile::rename(keptPath(), keptPath() + QStringLiteral("~"));
        m_unanswered = false;
    }
    if (!dirty())
        forgetKept();
    else if (!writeWhole(keptPath(), core::updateProjectText(m_ground, *m_project)))
        Q_EMIT keepingFailed(m_problem);
}

void ProjectDesk::forgetKept() {
    m_unanswered = false;
    if (!m_path.isEmpty())
        QFile::remove(keptPath());
}

bool ProjectDesk::writeWhole(const QString& path, const std::string& text) {
    QSaveFile file(path);
    const auto bytes = QByteArray::fromStdString(text);
    if (file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit()) {
        m_problem.clear();
        return true;
    }
    m_problem = Wording::tr("%1 can't be written: %2").arg(QFileInfo(path).fileName(), file.errorString());
    return false;
}

std::optional<std::string> ProjectDesk::onDisk() const {
    auto text = core::readProjectText(m_path.toStdString());
    if (!text)
        return std::nullopt;
    return std::move(*text);
}

bool ProjectDesk::changedOnDisk() const {
    const auto now = onDisk();
    return now && *now != m_ground;
}

ProjectDesk::Saved ProjectDesk::save() {
    if (!isOpen())
        return Saved::Yes;
    if (changedOnDisk())
        return Saved::ChangedOnDisk;
    if (QFileInfo::exists(m_path) && !writeWhole(backupPath(), m_ground))
        return Saved::CannotWrite;
    std::string text = core::updateProjectText(m_ground, *m_project);
    if (!writeWhole(m_path, text))
        return Saved::CannotWrite;
    m_ground = std::move(text);
    m_base = m_project;
    m_groundDiffers = false;
    m_missing = false;
    m_undo->setClean();
    forgetKept();
    Q_EMIT dirtyChanged(false);
    return Saved::Yes;
}

bool ProjectDesk::saveAs(const QString& path) {
    if (!isOpen())
        return false;
    const QString whole = QFileInfo(path).absoluteFilePath();
    if (QFile there(whole); there.exists()) {
        if (!there.open(QIODevice::ReadOnly)) {
            m_problem = Wording::tr("%1 can't be written: %2").arg(there.fileName(), there.errorString());
            return false;
        }
        if (!writeWhole(whole + QStringLiteral("~"), there.readAll().toStdString()))
            return false;
    }
    std::string text = core::updateProjectText(m_ground, *m_project);
    if (!writeWhole(whole, text))
        return false;
    if (!m_unanswered)
        forgetKept(); // it stands in the new file
    m_path = whole;
    m_unanswered = QFileInfo::exists(keptPath());
    m_ground = std::move(text);
    m_base = m_project;
    m_groundDiffers = m_missing = false;
    m_undo->setClean();
    keep();
    Q_EMIT dirtyChanged(false);
    return true;
}

void ProjectDesk::takeGround(std::string text, const std::optional<core::Project>& theirs) {
    if (!isOpen())
        return;
    const core::Project mine = *m_project;
    core::Project both = theirs ? core::carryOver(*m_base, mine, *theirs) : mine;
    m_ground = std::move(text);
    m_base = theirs ? theirs : m_base;
    // steps back would lead to projects that stood on the old file
    m_groundDiffers = true;
    m_undo->clear();
    m_groundDiffers = !theirs || !(both == *theirs);
    put(both);
    keep();
    Q_EMIT dirtyChanged(dirty());
}

void ProjectDesk::setMissing(bool missing) {
    if (!isOpen() || missing == m_missing)
        return;
    m_missing = missing;
    keep();
    Q_EMIT dirtyChanged(dirty());
}

std::optional<core::Project> ProjectDesk::kept() const {
    if (!isOpen() || !QFileInfo::exists(keptPath()))
        return std::nullopt;
    const auto read = core::readProject(keptPath().toStdString());
    if (!read || core::writeProject(read->project) == core::writeProject(*m_project))
        return std::nullopt;
    return read->project;
}

} // namespace sheerlay::ui
