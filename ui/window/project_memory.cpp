#include "ui/window/project_memory.hpp"

#include <QCryptographicHash>
#include <QSettings>

namespace sheerlay::ui {
namespace {

const QString placeGroup = QStringLiteral("shop/place/"), printGroup = QStringLiteral("printed/");

/// Paths hold signs that keys must not.
QString keyOf(const QString& group, const QString& path) {
    return group +
           QString::fromLatin1(QCryptographicHash::hash(path.toUtf8(), QCryptographicHash::Sha1).toHex());
}

} // namespace

QString shopPlaceOf(const QString& path) {
    return QSettings().value(keyOf(placeGroup, path)).toString();
}

void rememberShopPlace(const QString& path, const QString& strip) {
    QSettings().setValue(keyOf(placeGroup, path), strip);
}

std::string printRecordOf(const QString& path) {
    return QSettings().value(keyOf(printGroup, path)).toString().toStdString();
}

void rememberPrintRecord(const QString& path, const std::string& record) {
    QSettings().setValue(keyOf(printGroup, path), QString::fromStdString(record));
}

} // namespace sheerlay::ui
