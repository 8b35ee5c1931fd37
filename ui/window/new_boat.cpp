#include "ui/window/new_boat.hpp"

#include "ui/begin/file_output.hpp"
#include "ui/scene/words.hpp"
#include "ui/window/dropped_file.hpp"
#include "ui/window/load_boat.hpp"

#include <QDragEnterEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QVBoxLayout>

#include <string>
#include <utility>
#include <vector>

namespace sheerlay::ui {
namespace {

constexpr auto suffix = ".sheerlay";

/// The command line's way to say a correction is a line of its own here.
QString asLine(QString sentence) {
    static const QRegularExpression option(QStringLiteral("--take \"([^\"]*)\""));
    return sentence.replace(option, QStringLiteral("“\\1”"));
}

QString here(const std::string& sentence) {
    return asLine(heardText(sentence));
}

} // namespace

NewBoat::NewBoat(TaskRunner::Mode mode, QWidget* parent)
    : QDialog(parent), m_runner(new TaskRunner(mode, this)), m_name(new QLineEdit), m_source(new QLineEdit),
      m_corrections(new QPlainTextEdit), m_said(new QPlainTextEdit), m_hint(new QLabel),
      m_progress(new QLabel), m_read(new QPushButton(tr("Read it"))), m_stop(new QPushButton(tr("Stop"))),
      m_write(new QPushButton(tr("Write the project…"))) {
    setWindowTitle(tr("Begin a boat"));
    resize(760, 620);
    makeForm();
    for (QLineEdit* field : {m_name, m_source})
        connect(field, &QLineEdit::textEdited, this, &NewBoat::forget);
    connect(m_corrections, &QPlainTextEdit::textChanged, this, &NewBoat::forget);
    connect(m_read, &QPushButton::clicked, this, &NewBoat::read);
    m_read->setDefault(true); // Enter in a field
    connect(m_stop, &QPushButton::clicked, this, &NewBoat::stop);
    connect(m_write, &QPushButton::clicked, this, &NewBoat::askWrite);
    connect(m_runner, &TaskRunner::progress, m_progress, &QLabel::setText);
    connect(m_runner, &TaskRunner::busyChanged, this, [this](bool busy) {
        m_stop->setVisible(busy);
        m_read->setEnabled(!busy);
        if (!busy)
            m_progress->clear();
    });
    connect(this, &QDialog::rejected, this, &NewBoat::stop);
    forget();
}

void NewBoat::makeForm() {
    auto* browse = new QPushButton(tr("Choose…"));
    connect(browse, &QPushButton::clicked, this, &NewBoat::askSource);
    for (QPushButton* button : {browse, m_read, m_stop, m_write})
        button->setAutoDefault(false);
    m_source->setPlaceholderText(tr("none: a boat to start from, to be edited"));
    m_source->setToolTip(tr("A table of offsets as text (CSV), half sections as DXF or SVG, or a hull's "
                            "surfaces as STEP or IGES"));
    browse->setToolTip(tr("Look for the file"));
    m_name->setToolTip(tr("Her name, as it stands on every sheet"));
    m_said->setToolTip(tr("What every row, column or line of the file was taken for"));
    m_read->setToolTip(tr("Reads the file, with the lines above in mind, and says how"));
    m_stop->setToolTip(tr("Gives up the reading"));
    m_write->setToolTip(tr("Writes a project file, never over one that is there, and opens it"));
    auto* file = new QHBoxLayout;
    file->addWidget(m_source, 1);
    file->addWidget(browse);
    m_corrections->setMaximumHeight(5 * m_corrections->fontMetrics().lineSpacing());
    m_hint->setWordWrap(true);
    auto* form = new QFormLayout;
    const auto row = [form](const QString& label, QWidget* field, auto* shown) {
        field->setAccessibleName(label);
        form->addRow(label, shown);
    };
    row(tr("She is called"), m_name, m_name);
    row(tr("Read from"), m_source, file);
    row(tr("What the file doesn't say"), m_corrections, m_corrections);
    m_said->setAccessibleName(tr("How it was read"));
    form->addRow(QString(), m_hint);
    auto* reading = new QHBoxLayout;
    reading->addWidget(m_read);
    reading->addWidget(m_progress, 1);
    reading->addWidget(m_stop);
    m_stop->hide();
    m_said->setReadOnly(true);
    setAcceptDrops(true); // the fields would write a file's address among what is typed
    for (QWidget* field : std::initializer_list<QWidget*>{m_name, m_source, m_corrections->viewport()})
        field->setAcceptDrops(false);
    auto* below = new QHBoxLayout;
    below->addStretch(1);
    below->addWidget(m_write);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(form);
    layout->addLayout(reading);
    layout->addWidget(m_said, 1);
    layout->addLayout(below);
}

/// What was read no longer stands for what is asked.
void NewBoat::forget() {
    m_runner->cancel();
    m_text.reset();
    m_write->setEnabled(false);
    m_said->clear();
    const QString source = m_source->text().trimmed();
    const auto kind = sourceKind(source.toStdString());
    m_corrections->setEnabled(!source.isEmpty());
    m_hint->setText(source.isEmpty() ? tr("Without a file she begins as the example, which plans as it is.")
                    : kind ? tr("A line for each thing that isn't said or was read wrongly, such as “%1”.")
                                 .arg(QLatin1String(correctionExample(*kind)))
                           : tr("This ending is none that can be read: .csv, .tsv or .txt would do for a "
                                "table, .dxf or .svg for sections, .step or .iges for surfaces."));
    if (source.isEmpty() && !m_name->text().trimmed().isEmpty())
        takeStarter(); // there is nothing to read first
}

void NewBoat::takeStarter() {
    m_text = checkedStarter(m_name->text().trimmed().toStdString());
    m_write->setEnabled(m_text.has_value());
    say({m_text ? tr("A boat to start from: put your own table in place of hers.")
                : tr("The name can't stand in a project file; plain text would do.")});
}

void NewBoat::say(const QStringList& lines) {
    m_said->setPlainText(lines.join(QLatin1Char('\n')));
}

QString NewBoat::said() const {
    return m_said->toPlainText();
}

void NewBoat::takeFile(const QString& path) {
    m_source->setText(path);
    if (!m_name->isModified() || m_name->text().trimmed().isEmpty()) // typed by hand it stays
        m_name->setText(QFileInfo(path).completeBaseName());
    m_corrections->clear();
    forget();
    read();
}

void NewBoat::dragEnterEvent(QDragEnterEvent* event) {
    if (!droppedFile(event->mimeData()).isEmpty())
        event->acceptProposedAction();
}

void NewBoat::dropEvent(QDropEvent* event) {
    event->acceptProposedAction();
    takeFile(droppedFile(event->mimeData()));
}

void NewBoat::read() {
    forget();
    const std::string name = m_name->text().trimmed().toStdString();
    if (name.empty())
        return say({tr("She has no name yet; any will do.")});
    const QString path = m_source->text().trimmed();
    if (path.isEmpty())
        return; // forget() has taken the starter
    const auto kind = sourceKind(path.toStdString());
    if (!kind)
        return say({m_hint->text()});
    std::vector<std::string> lines;
    for (const QString& line : m_corrections->toPlainText().split(QLatin1Char('\n'), Qt::SkipEmptyParts))
        if (!line.trimmed().isEmpty())
            lines.push_back(line.toStdString());
    const auto corrections = core::readCorrections(lines);
    if (!corrections) {
        QStringList complaints;
        for (const std::string& complaint : corrections.error())
            complaints << here(complaint);
        return say(complaints);
    }
    m_runner->run(
        [kind = *kind, path = path.toStdString(), name, corrections = *corrections](
            std::stop_token stop, const TaskRunner::Progress& progress) {
            progress(kind == SourceKind::Surface ? tr("Finding the boat in her surfaces, and lofting her")
                                                 : tr("Reading"));
            return beginProject(kind, path, name, corrections, std::move(stop));
        },
        [this, kind = *kind](const BegunProject& made) { take(made, kind); },
        [this](const QString& text) { say({tr("Something went wrong inside the program: %1.").arg(text)}); });
}

void NewBoat::stop() {
    if (!m_runner->busy())
        return;
    m_runner->cancel();
    say({tr("Given up; nothing was read.")});
}

void NewBoat::take(const BegunProject& made, SourceKind kind) {
    QStringList lines;
    if (!made) {
        for (const core::FileMessage& message : made.error())
            lines << asLine(messageLine(message));
        return say(lines);
    }
    for (const std::string& sentence : made->reading)
        lines << here(sentence);
    for (const std::string& note : made->notes)
        lines << here(note);
    for (const core::FileMessage& message : made->warnings)
        lines << asLine(messageLine(message));
    lines << QString()
          << tr("Look it over; what is wrong is put right by a line above, such as “%1”.")
                 .arg(QLatin1String(correctionExample(kind, made->reading)));
    say(lines);
    m_text = made->projectText;
    m_write->setEnabled(true);
}

void NewBoat::writeTo(const QString& path) {
    if (!m_text)
        return;
    const QString whole = QFileInfo(path).suffix().isEmpty() ? path + QLatin1String(suffix) : path;
    if (const auto problem = writeNewFile(whole.toStdString(), *m_text)) {
        say({toQString(*problem), QString(), said()});
        return;
    }
    hide();
    Q_EMIT begun(whole);
}

void NewBoat::askSource() {
    const QString path = QFileDialog::getOpenFileName(
        this,
        tr("A table, sections or surfaces"),
        QFileInfo(m_source->text()).absolutePath(),
        tr("Tables, sections, surfaces (*.csv *.tsv *.txt *.dxf *.svg *.step *.stp *.iges *.igs)"));
    if (!path.isEmpty())
        takeFile(path);
}

void NewBoat::askWrite() {
    const QString folder = m_source->text().isEmpty() ? QString() : QFileInfo(m_source->text()).path();
    QString proposed = m_name->text().trimmed().toLower().replace(QLatin1Char(' '), QLatin1Char('-'));
    proposed.remove(QLatin1Char('/'));
    const QString path = QFileDialog::getSaveFileName(
        this,
        tr("Write the project"),
        (folder.isEmpty() ? QString() : folder + QLatin1Char('/')) + proposed + QLatin1String(suffix),
        tr("Sheerlay projects (*.sheerlay)"),
        nullptr,
        QFileDialog::DontConfirmOverwrite); // a file that is there is never written over
    if (!path.isEmpty())
        writeTo(path);
}

} // namespace sheerlay::ui
