#include "ui/scene/strip_colour.hpp"

#include "core/project/wood.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <algorithm>
#include <array>
#include <numbers>
#include <set>
#include <string>

namespace sheerlay::ui {

namespace {

struct Tone {
    std::string_view wood;
    QRgb colour;
};

constexpr std::array tones{
    Tone{"western-redcedar", 0xFFB5794F},
    Tone{"northern-white-cedar", 0xFFE2CCA2},
    Tone{"atlantic-white-cedar", 0xFFDDBF9C},
    Tone{"alaska-yellow-cedar", 0xFFE8D58F},
    Tone{"port-orford-cedar", 0xFFEBDDBA},
    Tone{"redwood-old-growth", 0xFF94493A},
    Tone{"redwood-young-growth", 0xFFB0684E},
    Tone{"eastern-white-pine", 0xFFEEDCAC},
    Tone{"sitka-spruce", 0xFFE9CFA0},
    Tone{"yellow-poplar", 0xFFC9C596},
    Tone{"white-ash", 0xFFDFD0B5},
    Tone{"black-cherry", 0xFFA45C3A},
    Tone{"black-walnut", 0xFF5F4535},
};

constexpr double degreesPerMetre = std::numbers::pi / 180.0 / 1000.0;
constexpr std::array twistLimits{10 * degreesPerMetre, 20 * degreesPerMetre, 40 * degreesPerMetre}; // rad/mm
constexpr std::array bendLimits{1.0 / 4000.0, 1.0 / 2000.0, 1.0 / 1000.0};                          // 1/mm
constexpr std::array strainLimits{0.5, 0.75, 1.0}; // parts of what the wood bears
constexpr std::array widthLimits{0.5, 0.75, 0.99}; // parts of a full strip

/// Four classes in one hue, falling in lightness.
constexpr std::array<QRgb, 4> steps{0xFFE4ECF3, 0xFFA9C4DC, 0xFF5F8CB6, 0xFF1F3E5C};
constexpr std::array kinds{core::StripKind::Full,
                           core::StripKind::Tapered,
                           core::StripKind::Stealer,
                           core::StripKind::Filler,
                           core::StripKind::Shutter};

/// 0 up to the first limit … 3 over the last one.
std::size_t classOf(double value, const std::array<double, 3>& limits) {
    return static_cast<std::size_t>(std::ranges::lower_bound(limits, value) - limits.begin());
}

QColor stepColour(std::size_t step) {
    return QColor::fromRgb(steps.at(step));
}

/// A width falls in lightness as it falls, so that what is narrow stands out.
QColor widthColour(std::size_t step) {
    return stepColour(steps.size() - 1 - step);
}

QColor kindColour(core::StripKind kind) {
    switch (kind) {
    case core::StripKind::Full:
        return QColor::fromRgb(palette::free);
    case core::StripKind::Tapered:
        return QColor::fromRgb(palette::clamp);
    case core::StripKind::Stealer:
        return QColor::fromRgb(palette::lineBlue);
    case core::StripKind::Filler:
        return QColor::fromRgb(palette::timber);
    case core::StripKind::Shutter:
        break;
    }
    return QColor::fromRgb(palette::taperOrPreBend);
}

QColor laidColour(bool laid) {
    return QColor::fromRgb(laid ? palette::cedar : palette::free);
}

bool inJournal(const Boat& boat, const core::Strip& strip) {
    return std::ranges::find(boat.project.journal.laid, strip.id, &core::LaidStrip::strip) !=
           boat.project.journal.laid.end();
}

double widthPart(const Boat& boat, const core::Strip& strip) {
    return boat.plan.coverWidth > 0.0 ? core::widest(strip) / boat.plan.coverWidth : 1.0;
}

/// "up to …" for each limit and "over …" for what is beyond the last.
template <class Text>
std::vector<ColourLine>
classLines(const std::array<double, 3>& limits, const std::array<QString, 4>& words, const Text& text) {
    std::vector<ColourLine> lines;
    for (std::size_t i = 0; i < words.size(); ++i)
        lines.push_back({stepColour(i),
                         words[i],
                         i < limits.size() ? Wording::tr("up to %1").arg(text(limits[i]))
                                           : Wording::tr("over %1").arg(text(limits.back()))});
    return lines;
}

std::vector<ColourLine> edgeBendLines(const Boat* boat, core::Units units) {
    const core::BendLimits limits =
        core::bendLimits(boat != nullptr ? boat->project.strips.width : core::commonStripWidth);
    std::vector<ColourLine> lines;
    const auto add = [&](core::Difficulty difficulty, double limit, const QString& pattern) {
        lines.push_back({difficultyColour(difficulty),
                         heardText(core::toText(difficulty)),
                         pattern.arg(sagText(limit, units), radiusText(1.0 / limit, units))});
    };
    const QString upTo = Wording::tr("up to %1 (radius %2)");
    add(core::Difficulty::Free, limits.free, upTo);
    add(core::Difficulty::Clamp, limits.clamp, upTo);
    add(core::Difficulty::Hard, limits.hard, upTo);
    add(core::Difficulty::Taper, limits.hard, Wording::tr("over %1 (radius %2)"));
    return lines;
}

std::vector<ColourLine> widthLines() {
    const std::array words{
        Wording::tr("narrow"), Wording::tr("half"), Wording::tr("most"), Wording::tr("full")};
    std::vector<ColourLine> lines;
    for (std::size_t i = words.size(); i-- > 0;)
        lines.push_back(
            {widthColour(i),
             words[i],
             i == words.size() - 1
                 ? Wording::tr("as milled")
                 : Wording::tr("widest place up to %1 % of a strip").arg(100.0 * widthLimits[i])});
    return lines;
}

std::vector<ColourLine> shapeLines(const Boat& boat) {
    std::vector<ColourLine> lines;
    for (const core::StripKind kind : kinds) {
        const auto first = std::ranges::find(boat.plan.strips, kind, &core::Strip::kind);
        if (first != boat.plan.strips.end())
            lines.push_back({kindColour(kind), kindText(*first), QString()});
    }
    return lines;
}

std::vector<ColourLine> woodLines(const Boat& boat) {
    std::vector<ColourLine> lines;
    for (const std::string& id : std::set<std::string>(boat.wood.begin(), boat.wood.end())) {
        const core::Wood* wood = core::findWood(id);
        lines.push_back({woodColour(id), toQString(wood != nullptr ? wood->commonName : id), QString()});
    }
    return lines;
}

} // namespace

QColor woodColour(std::string_view wood) {
    const auto* tone = std::ranges::find(tones, wood, &Tone::wood);
    return QColor::fromRgb(tone == tones.end() ? palette::free : tone->colour);
}

QColor stripColour(const Boat& boat, std::size_t strip, StripColours colours) {
    const core::Strip& piece = boat.plan.strips[strip];
    switch (colours) {
    case StripColours::Bend:
        break;
    case StripColours::Twist:
        return stepColour(classOf(piece.twistMax, twistLimits));
    case StripColours::HullBend:
        return stepColour(classOf(piece.bendMinRadius ? 1.0 / *piece.bendMinRadius : 0.0, bendLimits));
    case StripColours::Strain:
        return stepColour(classOf(piece.strainMax, strainLimits));
    case StripColours::Width:
        return widthColour(classOf(widthPart(boat, piece), widthLimits));
    case StripColours::Shape:
        return kindColour(piece.kind);
    case StripColours::Wood:
        return woodColour(boat.wood[strip]);
    case StripColours::Laid:
        return laidColour(inJournal(boat, piece));
    }
    return difficultyColour(boat.difficulty[strip]);
}

QString colourHeading(StripColours colours) {
    switch (colours) {
    case StripColours::Bend:
        break;
    case StripColours::Twist:
        return Wording::tr("Twist");
    case StripColours::HullBend:
        return Wording::tr("Bend over the moulds");
    case StripColours::Strain:
        return Wording::tr("Strain of the wood");
    case StripColours::Width:
        return Wording::tr("Width");
    case StripColours::Shape:
        return Wording::tr("Shape of the strips");
    case StripColours::Wood:
        return Wording::tr("Woods");
    case StripColours::Laid:
        return Wording::tr("Laid, by the journal");
    }
    return Wording::tr("Edge bend of the uncut edge");
}

std::vector<ColourLine> colourLines(const Boat* boat, StripColours colours, core::Units units) {
    switch (colours) {
    case StripColours::Bend:
        return edgeBendLines(boat, units);
    case StripColours::Twist:
        return classLines(
            twistLimits,
            {Wording::tr("little"), Wording::tr("some"), Wording::tr("much"), Wording::tr("most")},
            [units](double twist) { return twistText(twist, units); });
    case StripColours::HullBend:
        return classLines(
            bendLimits,
            {Wording::tr("flat"), Wording::tr("easy"), Wording::tr("round"), Wording::tr("tight")},
            [units](double bend) { return Wording::tr("radius %1").arg(radiusText(1.0 / bend, units)); });
    case StripColours::Strain:
        return classLines(
            strainLimits,
            {Wording::tr("easy"), Wording::tr("fair"), Wording::tr("close"), Wording::tr("too much")},
            [](double part) { return Wording::tr("%1 % of what it bears").arg(100.0 * part); });
    case StripColours::Width:
        return widthLines();
    case StripColours::Shape:
        return boat != nullptr ? shapeLines(*boat) : std::vector<ColourLine>();
    case StripColours::Wood:
        return boat != nullptr ? woodLines(*boat) : std::vector<ColourLine>();
    case StripColours::Laid:
        break;
    }
    return {{laidColour(true), Wording::tr("laid"), QString()},
            {laidColour(false), Wording::tr("to come"), QString()}};
}

} // namespace sheerlay::ui
