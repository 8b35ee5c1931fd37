#include "ui/scene/words.hpp"

#include "core/planking/difficulty.hpp"
#include "core/planking/uncertainty_text.hpp"
#include "core/units/both_units.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/words/heard.hpp"
#include "core/words/language.hpp"
#include "core/words/say.hpp"
#include "ui/scene/wording.hpp"

#include <QRegularExpression>

#include <cmath>
#include <numbers>

namespace sheerlay::ui {
QString toQString(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QString numberText(double value, int decimals) {
    const core::Speaking speaking(windowLanguage());
    return toQString(core::numberText(value, decimals));
}

QString markedText(std::string_view printed) {
    const core::Speaking speaking(windowLanguage());
    return toQString(core::withDecimalMark(std::string(printed)));
}

QString typedLengthText(double millimetres, core::Units units, Fineness fineness) {
    const core::Speaking speaking(windowLanguage());
    return toQString(core::formatLength(millimetres, units, fineness.denominator, fineness.decimals));
}

QString lengthText(double millimetres, core::Units units, Fineness fineness) {
    QString text = typedLengthText(millimetres, units, fineness);
    static const QRegularExpression fraction(QStringLiteral("(\\d)/(\\d)"));
    text.replace(fraction, QStringLiteral("\\1\u2044\\2"));
    return text.replace(QLatin1Char(' '), QChar(0x00A0));
}

QString departureText(double millimetres, core::Units units, bool sign) {
    const bool inches = units == core::Units::Inches;
    const double value = inches ? millimetres / core::mmPerInch : millimetres;
    const QString number = numberText(std::abs(value), inches ? 3 : 1);
    const QString mark = !sign ? QString() : value < 0 ? QStringLiteral("−") : QStringLiteral("+");
    return mark + number + (inches ? QStringLiteral(" in") : QStringLiteral(" mm"));
}

QString radiusText(double millimetres, core::Units units) {
    const double value = units == core::Units::Inches ? millimetres / core::mmPerFoot : millimetres / 1000.0;
    const QString unit = units == core::Units::Inches ? QStringLiteral(" ft") : QStringLiteral(" m");
    const double shown = std::abs(value);
    return numberText(value, shown < 20.0 ? 1 : 0) + unit;
}

QString placeText(double x, core::Units units) {
    return Wording::tr("%1 from the bow").arg(lengthText(x, units, {1, 0}));
}

QString sagText(double kappa, core::Units units) {
    const bool inches = units == core::Units::Inches;
    const double sag = core::sagOver(kappa, inches ? core::sagBaseInches : core::sagBaseMillimetres);
    return Wording::tr("%1 over %2")
        .arg(lengthText(sag, units, {4, 0}), inches ? QStringLiteral("8 ft") : QStringLiteral("2 m"));
}

QString plusMinusText(std::string_view printed) {
    QString text = markedText(printed);
    text.replace(QStringLiteral("+/- "), QStringLiteral("± "));
    return text.replace(u' ', QChar::Nbsp);
}

QString sagPlusMinusText(double kappaDeviation, core::Units units) {
    const double base = units == core::Units::Inches ? core::sagBaseInches : core::sagBaseMillimetres;
    return plusMinusText(core::lengthPlusMinus(core::sagOver(kappaDeviation, base), units));
}

QString cutLengthText(double millimetres, core::Units units) {
    const double step = units == core::Units::Inches ? core::mmPerInch / 4 : 5.0;
    constexpr double hair = 1e-6; // of a step: what is exact but for the last bits isn't rounded up
    return lengthText(std::ceil(millimetres / step - hair) * step, units, {4, 0});
}

QString twistText(double radPerMm, core::Units units) {
    const double degreesPerMm = radPerMm * 180.0 / std::numbers::pi;
    if (units == core::Units::Inches) { // to the half degree, as on the sheets: the table tells no finer
        const double halves = std::round(2 * degreesPerMm * core::mmPerFoot) / 2;
        return Wording::tr("%1° per foot").arg(numberText(halves, halves == std::round(halves) ? 0 : 1));
    }
    return Wording::tr("%1° per metre").arg(numberText(degreesPerMm * 1000.0, 0));
}

QString rowText(const core::Strip& strip) {
    QString row = strip.row > 0 ? Wording::tr("row %1").arg(strip.row)
                                : Wording::tr("row %1 above the start").arg(-strip.row);
    switch (strip.side) {
    case core::Side::Port:
        return row + Wording::tr(", port");
    case core::Side::Starboard:
        return row + Wording::tr(", starboard");
    case core::Side::Centre:
        break;
    }
    return row + Wording::tr(", over both sides");
}

QString kindText(const core::Strip& strip) {
    if (strip.planedBack)
        return Wording::tr("strip laid whole, planed back to the centreline");
    switch (strip.kind) {
    case core::StripKind::Full:
        return Wording::tr("full strip");
    case core::StripKind::Tapered:
        return Wording::tr("tapered strip");
    case core::StripKind::Stealer:
        return Wording::tr("stealer");
    case core::StripKind::Filler:
        return Wording::tr("filler at the sheer");
    case core::StripKind::Shutter:
        break;
    }
    return Wording::tr("shutter, the closing plank");
}

QString landingText(core::EndsOn on) {
    switch (on) {
    case core::EndsOn::Stem:
        return Wording::tr("on the stem");
    case core::EndsOn::Keel:
        return Wording::tr("on the keel line");
    case core::EndsOn::Transom:
        return Wording::tr("on the transom");
    case core::EndsOn::Sheer:
        return Wording::tr("on the sheer");
    case core::EndsOn::Strip:
        return Wording::tr("on its neighbour");
    case core::EndsOn::Nib:
        break;
    }
    return Wording::tr("in a nib");
}

QString levelText(core::Level level) {
    return level == core::Level::Stop      ? Wording::tr("stop")
           : level == core::Level::Caution ? Wording::tr("caution")
                                           : Wording::tr("note");
}

QString levelCountText(core::Level level, std::ptrdiff_t count) {
    if (count == 1)
        return QStringLiteral("1 ") + levelText(level);
    const QString many = level == core::Level::Stop      ? Wording::tr("%1 stops")
                         : level == core::Level::Caution ? Wording::tr("%1 cautions")
                                                         : Wording::tr("%1 notes");
    return many.arg(count);
}

core::Language windowLanguage() {
    // the context written out: lupdate loses it for a text that is said with a remark
    const std::string window =
        QCoreApplication::translate("Window", "en", "the code of this language").toStdString();
    for (const core::LanguageName& name : core::allLanguages())
        if (name.code == window)
            return name.language;
    return core::Language::English;
}

QString heardText(std::string_view english) {
    const core::Speaking speaking(windowLanguage());
    return toQString(core::heard(std::string(english)));
}

QString heardText(std::string_view english, core::Units units) {
    const core::Speaking speaking(windowLanguage());
    return toQString(core::unitsFirst(core::heard(std::string(english)), units));
}

} // namespace sheerlay::ui
