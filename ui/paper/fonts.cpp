#include "ui/paper/fonts.hpp"

#include <QFontDatabase>
#include <QStringList>

#include <stdexcept>

static void initFontResource() {
    Q_INIT_RESOURCE(sheerlay_fonts); // must stand outside any namespace
}

namespace sheerlay::ui {

namespace {

QString family() {
    return QStringLiteral("Inter");
}

bool load() {
    initFontResource();
    for (const char* weight : {"Regular", "SemiBold", "Bold"}) {
        const QString path = QStringLiteral(":/sheerlay/fonts/Inter-%1.otf").arg(QLatin1String(weight));
        const int id = QFontDatabase::addApplicationFont(path);
        if (id < 0)
            throw std::runtime_error("The built-in typeface could not be loaded: " + path.toStdString());
    }
    if (!QFontDatabase::families().contains(family()))
        throw std::runtime_error(
            "The built-in typeface is missing from the list of fonts; on a machine without a display set "
            "QT_QPA_PLATFORM=offscreen");
    return true;
}

} // namespace

void loadFonts() {
    [[maybe_unused]] static const bool loaded = load();
}

QFont sheetFont(core::Weight weight, int pixels) {
    loadFonts();
    QFont font(family());
    font.setPixelSize(pixels);
    font.setWeight(weight == core::Weight::Regular    ? QFont::Normal
                   : weight == core::Weight::SemiBold ? QFont::DemiBold
                                                      : QFont::Bold);
    // letters as they are typed: the typeface's contextual forms (a raised hyphen between digits, and others)
    // have no text in a PDF, so that 3-0-0 would be searched for in vain
    font.setStyleStrategy(QFont::PreferNoShaping);
    font.setKerning(false);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

} // namespace sheerlay::ui
