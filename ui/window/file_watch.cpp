#include "ui/window/file_watch.hpp"

#include <QFileInfo>

namespace sheerlay::ui {
namespace {

constexpr int quietTime = 250; // ms
constexpr int awayTime = 2000; // ms, longer than an editor takes between deleting and writing anew

} // namespace

FileWatch::FileWatch(QObject* parent) : QObject(parent) {
    m_quiet.setSingleShot(true);
    m_quiet.setInterval(quietTime);
    m_away.setSingleShot(true);
    m_away.setInterval(awayTime);
    connect(&m_away, &QTimer::timeout, this, &FileWatch::lost);
    connect(&m_watcher, &QFileSystemWatcher::fileChanged, this, &FileWatch::look);
    connect(&m_watcher, &QFileSystemWatcher::directoryChanged, this, &FileWatch::look);
    connect(&m_quiet, &QTimer::timeout, this, &FileWatch::settled);
}

QString FileWatch::stamp() const {
    const QFileInfo info(m_path);
    if (!info.exists())
        return {};
    return QStringLiteral("%1/%2").arg(info.lastModified().toMSecsSinceEpoch()).arg(info.size());
}

void FileWatch::watch(const QString& path) {
    if (const QStringList old = m_watcher.files() + m_watcher.directories(); !old.isEmpty())
        m_watcher.removePaths(old);
    m_path = QFileInfo(path).absoluteFilePath();
    m_quiet.stop();
    m_away.stop();
    m_stamp = stamp();
    m_watcher.addPath(QFileInfo(m_path).absolutePath());
    follow();
}

void FileWatch::follow() {
    // a replaced file drops out of the watcher
    if (QFileInfo::exists(m_path) && !m_watcher.files().contains(m_path))
        m_watcher.addPath(m_path);
}

void FileWatch::look() {
    follow();
    if (stamp() != m_stamp)
        m_quiet.start();
}

void FileWatch::settled() {
    const QString now = stamp();
    if (now == m_stamp) {
        m_away.stop();
        return;
    }
    if (now.isEmpty()) { // for a moment, or for good
        m_away.start();
        return;
    }
    m_away.stop();
    m_stamp = now;
    Q_EMIT changed();
}

void FileWatch::lost() {
    if (!stamp().isEmpty() || m_stamp.isEmpty())
        return;
    m_stamp.clear();
    Q_EMIT gone();
}

} // namespace sheerlay::ui
