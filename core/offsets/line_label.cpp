#include "core/offsets/line_label.hpp"

#include "core/project/diagonal.hpp"
#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

namespace sheerlay::core {

namespace {

/// Which line the words name, before heights and half-breadths are told apart.
enum class Named { Nothing, Unused, Station, Position, Sheer, Keel, Siding, Waterline, Buttock, Diagonal };

bool saysHeight(const LabelWords& w) {
    return w.has({"height", "heights", "hgt", "hgts", "hts", "ht", "h", "z", "depth", "depths"});
}
bool saysBreadth(const LabelWords& w) {
    return w.has(
        {"breadth", "breadths", "hb", "hbs", "halfbreadth", "halfbreadths", "half", "width", "widths", "y"});
}
bool saysWaterline(const LabelWords& w) {
    return w.has({"wl", "wls", "waterline", "waterlines", "lwl", "dwl", "cwl"});
}

/// "half-breadth from the centreline" and "height above keel" name no keel: they say what is measured from.
bool namesKeel(const LabelWords& w) {
    const LabelWords before{{"from", "above", "below", "to"}, {}, {}, {}, {}};
    for (std::size_t i = 0; i < w.words.size(); ++i) {
        const LabelWords here{{w.words[i]}, {}, {}, {}, {}};
        if (!here.has({"keel", "rabbet", "profile", "fairbody", "centreline", "centerline", "cl"}))
            continue;
        const std::size_t back = i > 0 && w.words[i - 1] == "the" ? 2 : 1;
        if (i < back || !before.has({w.words[i - back]}))
            return true;
    }
    return false;
}

/// A line's own name; a heading's names of waterlines and the like only count where the line has no name.
Named named(const LabelWords& w, bool heading) {
    if (w.has({"unused", "remark", "remarks", "note", "notes"}))
        return Named::Unused;
    if (w.has({"siding", "sided"}))
        return Named::Siding;
    if (w.has({"diagonal", "diagonals", "diag", "diags", "dia"}))
        return Named::Diagonal;
    if (w.has({"sheer", "sheerline", "deck", "deckline", "gunwale", "gunnel", "rail"}))
        return Named::Sheer;
    if (namesKeel(w))
        return Named::Keel;
    if (w.has({"buttock", "buttocks", "butt", "butts", "but"}) ||
        (w.has({"b", "bk", "bl"}) && !w.lengths.empty()))
        return Named::Buttock;
    // "height above the LWL" names no waterline; "WL 4" does.
    const bool reference = w.has({"above", "below"}) && w.lengths.empty() && !w.has({"waterlines"});
    if (saysWaterline(w) && !reference)
        return Named::Waterline;
    if (heading)
        return Named::Nothing;
    if (w.has({"x", "position", "positions", "distance", "distances", "aft", "location"}))
        return Named::Position;
    if (w.has({"station",
               "stations",
               "st",
               "sta",
               "stn",
               "stns",
               "section",
               "sections",
               "frame",
               "frames",
               "mould",
               "mold"}))
        return Named::Station;
    return Named::Nothing;
}

/// "half-breadth at height 4 in" is a waterline, "height at half-breadth 4 in" a buttock: what comes first is
/// what was measured.
Named namedByPlace(const LabelWords& w) {
    for (const std::string& word : w.words) {
        const LabelWords one{{word}, {}, {}, {}, {}};
        if (saysBreadth(one))
            return Named::Waterline;
        if (saysHeight(one))
            return Named::Buttock;
    }
    return Named::Nothing;
}

/// What is left open by the label and said by its heading.
struct Meaning {
    Named named = Named::Nothing;
    bool height = false;
    bool breadth = false;
    bool below = false;
};

Meaning meaning(const LabelWords& own, const LabelWords& group) {
    Meaning m{named(own, false), saysHeight(own), saysBreadth(own), own.has({"below", "under", "down"})};
    if (!m.height && !m.breadth && m.named != Named::Station && m.named != Named::Position) {
        m.height = saysHeight(group);
        m.breadth = saysBreadth(group);
        if (m.height && m.breadth) // a title over everything says nothing about one line
            m.height = m.breadth = false;
    }
    if (!own.has({"above"}))
        m.below = m.below || group.has({"below"});
    if (m.named == Named::Nothing && !own.lengths.empty()) {
        const Named said = named(group, true);
        const bool lines = said == Named::Waterline || said == Named::Buttock || said == Named::Diagonal;
        m.named = lines                    ? said
                  : m.breadth && !m.height ? Named::Waterline
                  : m.height && !m.breadth ? Named::Buttock
                                           : Named::Nothing;
    }
    if (m.named == Named::Nothing && !own.lengths.empty() && saysHeight(own) && saysBreadth(own) &&
        own.has({"at"}))
        m.named = namedByPlace(own);
    if (m.named == Named::Nothing && own.lengths.empty() && named(group, true) == Named::Diagonal)
        m.named = Named::Diagonal;
    return m;
}

using Result = Expected<std::optional<TableLine>, LengthError>;

/// Where a waterline or buttock lies: the last length of the label, so that "WL 2 | 4 in" is at 4 in.
std::optional<LengthError> place(TableLine& line, const LabelWords& own, const Notation& notation) {
    const bool waterline = line.kind == OffsetLine::Waterline;
    const std::string sample = waterline ? "waterline 6 in" : "buttock 6 in";
    if (own.lengths.empty()) {
        if (waterline && own.has({"lwl", "dwl", "cwl"}) && own.has({"above", "below"})) {
            line.printedAt.assign(1, '0'); // heights are reckoned from this very line
            return std::nullopt;
        }
        return LengthError{
            inEnglish(waterline ? sayable("{} without its height") : sayable("{} without its half-breadth"),
                      quoted(line.label)),
            sample};
    }
    const auto at = readSaid(own.lengths.back(), notation);
    if (!at)
        return LengthError{at.error().found, sample};
    line.at = at->millimetres;
    line.printedAt = at->printed;
    if (waterline && line.below && line.at > 0.0) {
        line.at = -line.at;
        line.printedAt.insert(0, 1, '-');
    }
    return std::nullopt;
}

std::optional<LengthError> slope(TableLine& line, const LabelWords& own, const Notation& notation) {
    const std::size_t wanted = own.degrees ? 1 : 2;
    const LengthError tooLittle{
        inEnglish(sayable("{} without its height on the centreline and its slope"), quoted(line.label)),
        "diagonal 14 in at 40 degrees"};
    if (own.lengths.size() < wanted)
        return tooLittle;
    // A number in front of what is needed is the diagonal's own name: "Diagonal 2, 14 in at 40 degrees".
    std::size_t first = 0;
    if (own.degrees)
        first = own.lengths.size() - 1;
    else if (own.lengths.size() > 3)
        first = own.lengths.size() - 3;
    std::vector<CellLength> lengths;
    for (std::size_t i = first; i < own.lengths.size(); ++i) {
        const auto length = readSaid(own.lengths[i], notation);
        if (!length)
            return LengthError{length.error().found, tooLittle.would};
        lengths.push_back(*length);
    }
    line.diagonal.height = lengths[0].millimetres;
    line.diagonal.printedHeight = lengths[0].printed;
    line.diagonal.angle = own.degrees;
    if (!own.degrees) {
        line.diagonal.throughBreadth = lengths[1].millimetres;
        line.diagonal.throughHeight = lengths.size() > 2 ? lengths[2].millimetres : 0.0;
    }
    if (!slopeOf(line.diagonal))
        return LengthError{
            inEnglish(sayable("{} does not run down and out from the centreline"), quoted(line.label)),
            tooLittle.would};
    return std::nullopt;
}

OffsetLine kindOf(const Meaning& m) {
    switch (m.named) {
    case Named::Station:
        return OffsetLine::StationNames;
    case Named::Position:
        return OffsetLine::Positions;
    case Named::Sheer:
        return m.breadth ? OffsetLine::SheerBreadth : OffsetLine::SheerHeight;
    case Named::Keel:
        return m.breadth && !m.height ? OffsetLine::KeelBreadth : OffsetLine::KeelHeight;
    case Named::Siding:
        return OffsetLine::KeelBreadth;
    case Named::Waterline:
        return OffsetLine::Waterline;
    case Named::Buttock:
        return OffsetLine::Buttock;
    case Named::Diagonal:
        return OffsetLine::Diagonal;
    case Named::Nothing:
    case Named::Unused:
        break;
    }
    if (m.named == Named::Nothing && m.height != m.breadth)
        return m.height ? OffsetLine::PointHeight : OffsetLine::PointBreadth;
    return OffsetLine::Unused;
}

} // namespace

bool namesALine(std::string_view label, std::string_view group) {
    const Named found = meaning(labelWords(label), labelWords(group)).named;
    return found != Named::Nothing && found != Named::Station && found != Named::Position;
}

Result readLabel(std::string_view label, std::string_view group, const Notation& notation) {
    const LabelWords own = labelWords(label);
    const Meaning m = meaning(own, labelWords(group));
    if (m.named == Named::Nothing && !(m.height != m.breadth && own.lengths.empty()))
        return std::optional<TableLine>{};
    TableLine line;
    line.kind = kindOf(m);
    line.label = std::string(label);
    line.below = m.below;
    line.unit = own.unit;
    if (m.named == Named::Sheer && m.height == m.breadth)
        return unexpected(
            LengthError{inEnglish(sayable("{} without heights or half-breadths being said"), quoted(label)),
                        "sheer heights"});
    std::optional<LengthError> problem;
    if (line.kind == OffsetLine::Waterline || line.kind == OffsetLine::Buttock)
        problem = place(line, own, notation);
    else if (line.kind == OffsetLine::Diagonal)
        problem = slope(line, own, notation);
    if (problem)
        return unexpected(*problem);
    return std::optional(line);
}

} // namespace sheerlay::core
