#pragma once

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include <stdexcept>
#include <string>

namespace sheerlay::test {

/// Runs one of poppler's tools and gives back what it prints.
/// @throws std::runtime_error  it is not installed or fails
inline std::string run(const char* tool, const QStringList& arguments) {
    QProcess process;
    process.start(QString::fromUtf8(tool), arguments);
    if (!process.waitForStarted() || !process.waitForFinished(60000) || process.exitCode() != 0)
        throw std::runtime_error(std::string(tool) +
                                 " did not run; the tests need the Debian package poppler-utils");
    return process.readAllStandardOutput().toStdString();
}

inline std::string bytesOf(const std::string& path) {
    QFile file(QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly))
        throw std::runtime_error("cannot read " + path);
    return file.readAll().toStdString();
}

/// A folder that goes when the test ends.
struct Folder {
    QTemporaryDir dir;
    [[nodiscard]] std::string file(const char* name) const {
        return dir.filePath(QString::fromUtf8(name)).toStdString();
    }
};

} // namespace sheerlay::test
