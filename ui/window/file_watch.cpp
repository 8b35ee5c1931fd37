#include "ui/window/file_watch.hpp"

#include <QFileInfo>

namespace sheerlay::ui {
namespace {

constexpr int quietTime = 250; // ms

} // namespace

FileWatch::FileWatch(QObject* parent) : QObject(parent) {
    m_quiet.setSingleShot(true);
    m_quiet.setInterval(quietTime);
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
    // gone for a moment, or for good: there is nothing to read, and the folder tells when it is back
    if (now.isEmpty() || now == m_stamp)
        return;
    m_stamp = now;
    Q_EMIT changed();
}

} // namespace sheerlay::ui
