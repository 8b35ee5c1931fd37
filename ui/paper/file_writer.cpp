#include "ui/paper/file_writer.hpp"

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>
#include <QString>

namespace sheerlay::ui {

PaperError cannotWrite(const std::string& path, const std::string& why) {
    return {path + " could not be written: " + why + ". Choose a folder you may write to that has room."};
}

Written writeBytes(const std::string& bytes, const std::string& path) {
    const QString name = QString::fromStdString(path);
    // a file saved whole takes the place of what bears its name; a device or a folder must not go that way
    if (const QFileInfo there(name); there.exists() && !there.isFile())
        return unexpected(cannotWrite(path, "something that is not a file bears its name"));
    QSaveFile file(name);
    const auto size = static_cast<qint64>(bytes.size());
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes.data(), size) != size || !file.commit())
        return unexpected(cannotWrite(path, file.errorString().toStdString()));
    return std::monostate{};
}

Written makeFolder(const std::string& path) {
    if (QDir(QString::fromStdString(path)).mkpath(QStringLiteral(".")))
        return std::monostate{};
    return unexpected(
        PaperError{"The folder " + path + " could not be made. Name a folder in a place you may write to."});
}

} // namespace sheerlay::ui
