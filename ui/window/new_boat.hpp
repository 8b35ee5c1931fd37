#pragma once

#include "ui/begin/begin_project.hpp"
#include "ui/window/task_runner.hpp"

#include <QDialog>
#include <QString>

#include <optional>
#include <string>

class QLabel;
class QLineEdit;
class QPlainTextEdit;
class QPushButton;

namespace sheerlay::ui {

/// Begins a project: from the starter, or from a file with a table of offsets, half sections or surfaces. The
/// file is read beside the window; how it was read is told, and put right by lines of "KEY = VALUE" until it
/// is. Then the project is written where no file is.
class NewBoat : public QDialog {
    Q_OBJECT
public:
    explicit NewBoat(TaskRunner::Mode mode = TaskRunner::Mode::Thread, QWidget* parent = nullptr);

    /// Takes up a file and reads it.
    void takeFile(const QString& path);
    /// Reads what is asked for; what is said stands in said() then.
    void read();
    void stop();
    /// Writes what was read; begun() follows, or said() tells what stood in the way.
    void writeTo(const QString& path);

    [[nodiscard]] QLineEdit* name() const { return m_name; }
    [[nodiscard]] QLineEdit* source() const { return m_source; }
    [[nodiscard]] QPlainTextEdit* corrections() const { return m_corrections; }
    [[nodiscard]] QPushButton* writeButton() const { return m_write; }
    [[nodiscard]] QPushButton* stopButton() const { return m_stop; }
    [[nodiscard]] QString said() const;
    [[nodiscard]] bool busy() const { return m_runner->busy(); }

Q_SIGNALS:
    /// The project was written there.
    void begun(const QString& path);

protected:
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void makeForm();
    void askSource();
    void askWrite();
    void forget();
    void say(const QStringList& lines);
    void take(const BegunProject& made, SourceKind kind);
    void takeStarter();

    TaskRunner* m_runner;
    QLineEdit *m_name, *m_source;
    QPlainTextEdit *m_corrections, *m_said;
    QLabel *m_hint, *m_progress;
    QPushButton *m_read, *m_stop, *m_write;
    std::optional<std::string> m_text; // the project that was read
};

} // namespace sheerlay::ui
