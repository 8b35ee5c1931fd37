#include "ui/window/project_memory.hpp"

#include <QCryptographicHash>
#include <QSettings>

#include <algorithm>
#include <array>
#include <utility>

namespace sheerlay::ui {
namespace {

const QString placeGroup = QStringLiteral("shop/place/"), paperGroup = QStringLiteral("paper/"),
              printGroup = QStringLiteral("printed/");

// names, so that the settings stay true when the list of papers grows
constexpr std::array<std::pair<const char*, core::PageSize>, 4> papers{
    {{"A4", core::PageSize::A4},
     {"Letter", core::PageSize::Letter},
     {"A3", core::PageSize::A3},
     {"Tabloid", core::PageSize::Tabloid}}};

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

std::optional<core::PageSize> paperOf(const QString& path) {
    const QString name = QSettings().value(keyOf(paperGroup, path)).toString();
    for (const auto& [known, size] : papers)
        if (name == QLatin1String(known))
            return size;
    return std::nullopt;
}

void rememberPaper(const QString& path, core::PageSize paper) {
    const auto* const known =
        std::ranges::find(papers, paper, &std::pair<const char*, core::PageSize>::second);
    QSettings().setValue(keyOf(paperGroup, path), QString::fromLatin1(known->first));
}

std::string printRecordOf(const QString& path) {
    return QSettings().value(keyOf(printGroup, path)).toString().toStdString();
}

void rememberPrintRecord(const QString& path, const std::string& record) {
    QSettings().setValue(keyOf(printGroup, path), QString::fromStdString(record));
}

} // namespace sheerlay::ui
