#include "ui/window/project_memory.hpp"

#include <QCryptographicHash>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSettings>

#include <algorithm>

namespace sheerlay::ui {
namespace {

const QString placeGroup = QStringLiteral("shop/place/"), printGroup = QStringLiteral("printed/"),
              roundGroup = QStringLiteral("journal/round/");

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

std::optional<core::RowReading> openRoundOf(const QString& path) {
    const QJsonObject kept =
        QJsonDocument::fromJson(QSettings().value(keyOf(roundGroup, path)).toByteArray()).object();
    core::RowReading round;
    round.row = kept[QLatin1String("row")].toInt();
    round.side = static_cast<core::ReadSide>(std::clamp(kept[QLatin1String("side")].toInt(), 0, 2));
    for (const QJsonValue& girth : kept[QLatin1String("girths")].toArray())
        round.girthLeft.push_back({girth[QLatin1String("x")].toDouble(),
                                   0.0,
                                   "",
                                   girth[QLatin1String("typed")].toString().toStdString(),
                                   0});
    return round.girthLeft.empty() ? std::nullopt : std::optional(round);
}

void rememberOpenRound(const QString& path, const core::RowReading& round) {
    if (round.girthLeft.empty()) {
        QSettings().remove(keyOf(roundGroup, path));
        return;
    }
    QJsonArray girths;
    for (const core::GirthLeft& girth : round.girthLeft)
        girths.append(QJsonObject{{QStringLiteral("x"), girth.x},
                                  {QStringLiteral("typed"), QString::fromStdString(girth.printedGirth)}});
    const QJsonObject kept{{QStringLiteral("row"), round.row},
                           {QStringLiteral("side"), static_cast<int>(round.side)},
                           {QStringLiteral("girths"), girths}};
    QSettings().setValue(keyOf(roundGroup, path), QJsonDocument(kept).toJson(QJsonDocument::Compact));
}

} // namespace sheerlay::ui
