#pragma once

#include "core/project/project.hpp"

#include <QObject>
#include <QString>

#include <optional>
#include <string>

class QUndoStack;

namespace sheerlay::ui {

/// The project on the desk: what the file says, what the builder changed since, and how the two come together
/// again without loss. Every edit can be undone; unsaved edits stand in a file of their own beside the
/// project (FILE.unsaved), so that they outlive the program; saving keeps the file before it (FILE~). GUI
/// thread only.
class ProjectDesk : public QObject {
    Q_OBJECT
public:
    explicit ProjectDesk(QObject* parent = nullptr);
    ~ProjectDesk() override;

    /// What was read from disk; edits so far are discarded.
    /// @param text  of the file, which `project` was read from
    void open(const QString& path, std::string text, core::Project project);
    /// Nothing on the desk any more.
    void close();
    [[nodiscard]] bool isOpen() const noexcept { return m_project.has_value(); }
    [[nodiscard]] const QString& path() const noexcept { return m_path; }
    /// @throws std::bad_optional_access  nothing is open
    [[nodiscard]] const core::Project& project() const { return m_project.value(); }
    [[nodiscard]] QUndoStack* undoStack() const noexcept { return m_undo; }
    /// Something would be lost without saving.
    [[nodiscard]] bool dirty() const;

    /// @param name  what the builder did, for the Edit menu
    void edit(const QString& name, core::Project next);

    enum class Saved { Yes, ChangedOnDisk, CannotWrite };
    /// Writes the file whole or not at all. Refused where the file is no longer the one that was read.
    [[nodiscard]] Saved save();
    /// Writes the project whole under another name, whatever stands there, and goes on with that file; the
    /// one it was read from stays as it was saved last. What stood under that name is kept as its FILE~,
    /// unsaved work of it as FILE.unsaved~. On failure everything stays as it was.
    [[nodiscard]] bool saveAs(const QString& path);
    /// Why the last save or the keeping of unsaved work failed; empty when it did not.
    [[nodiscard]] const QString& problem() const noexcept { return m_problem; }

    /// Text of the file as it stands on disk now; none when it can't be read.
    [[nodiscard]] std::optional<std::string> onDisk() const;
    [[nodiscard]] bool changedOnDisk() const;
    /// The file was changed elsewhere: what it says now becomes the ground, and the edits go on top of it.
    /// @param theirs  none where the text can't be used: then saving replaces it
    void takeGround(std::string text, const std::optional<core::Project>& theirs);

    /// The file is gone from where it was, or back: while it is gone, the whole project counts as not saved
    /// and stands in the file of unsaved work, as far as its folder is there.
    void setMissing(bool missing);
    [[nodiscard]] bool missing() const noexcept { return m_missing; }

    /// Unsaved work of an earlier session that the file does not hold; none when there is none.
    [[nodiscard]] std::optional<core::Project> kept() const;
    [[nodiscard]] QString keptPath() const { return m_path + QStringLiteral(".unsaved"); }
    [[nodiscard]] QString backupPath() const { return m_path + QStringLiteral("~"); }
    void forgetKept();

Q_SIGNALS:
    void projectChanged(); ///< by an edit, undo or redo
    void dirtyChanged(bool dirty);
    void keepingFailed(const QString& why); ///< unsaved work has no file of its own

private:
    friend class ProjectEdit;
    void put(const core::Project& project);
    void keep();
    [[nodiscard]] bool writeWhole(const QString& path, const std::string& text);

    QString m_path;
    std::string m_ground; ///< text on disk that the edits stand on
    std::optional<core::Project> m_base;
    std::optional<core::Project> m_project;
    QUndoStack* m_undo;
    bool m_groundDiffers = false; ///< not saved although nothing is to be undone
    bool m_missing = false;       ///< the file is no longer where it was
    bool m_unanswered = false;    ///< unsaved work of an earlier session waits for a decision
    QString m_problem;
};

} // namespace sheerlay::ui
