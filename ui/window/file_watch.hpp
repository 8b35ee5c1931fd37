#pragma once

#include <QDateTime>
#include <QFileSystemWatcher>
#include <QObject>
#include <QString>
#include <QTimer>

namespace sheerlay::ui {

/// Tells when a file was written, also by editors that put a new file in the old one's place. Waits until it
/// is quiet, so that a half-written file is not read.
class FileWatch : public QObject {
    Q_OBJECT
public:
    explicit FileWatch(QObject* parent = nullptr);
    void watch(const QString& path);
    [[nodiscard]] const QString& path() const noexcept { return m_path; }

Q_SIGNALS:
    void changed(); ///< also when a file that was gone is back
    void gone();    ///< and not back for two seconds: moved, deleted, or its folder is out of reach

private:
    void look();
    void settled();
    void lost();
    void follow();
    [[nodiscard]] QString stamp() const;

    QFileSystemWatcher m_watcher;
    QTimer m_quiet;
    QTimer m_away;
    QString m_path;
    QString m_stamp; // time and size when last told; empty once it is told gone
};

} // namespace sheerlay::ui
