#include "core/sheets/width_table.hpp"

#include "core/sheets/page.hpp"
#include "core/sheets/words.hpp"
#include "core/units/rounded_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>

namespace sheerlay::core {

namespace {

struct Line {
    std::string name, along, width;
};

// The heading says millimetres once; feet and inches keep their marks.
std::string bare(std::string text) {
    if (text.ends_with(" mm"))
        text.resize(text.size() - 3);
    return text;
}

std::vector<Line> linesOf(const WidthsOf& of) {
    const auto lineAt = [&](const std::string& name, double along, double width) {
        return Line{name, bare(placeText(along, of.units)), bare(widthText(width, of.units))};
    };
    std::vector<Line> lines{lineAt(say("bow end"), 0.0, widthAt(of.strip, 0.0))};
    for (const StationMark& mark : of.marks)
        lines.push_back(lineAt(of.stations[mark.station], mark.along, mark.width));
    lines.push_back(lineAt(say("stern end"), of.strip.length, widthAt(of.strip, of.strip.length)));
    return lines;
}

std::string remarkOn(const WidthsOf& of) {
    const double bead = of.project.strips.width - of.project.strips.coverWidth;
    std::string text = say("Along the strip's middle, from where it meets the line it ends on.") + " ";
    text += bead > 0.05 ? say("Widths are cover; the bead stands {} beyond.", stockText(bead, of.units))
                        : say("Widths stand square to the middle.");
    if (of.strip.planed == PlanedEdge::Lower)
        text += " " + say("Plane the lower edge down to these widths; the upper edge stays as it was "
                          "milled, and its bend is the one told here.");
    if (of.strip.planed == PlanedEdge::Upper)
        text += " " + say("Plane the upper edge down to these widths; the lower edge stays as it was "
                          "milled, and its bend is the one told here.");
    return text;
}

} // namespace

void addWidthTable(Flow& flow, const WidthsOf& of, const WidthTableSetting& setting) {
    const auto size = [&](double atA4) { return atA4 * setting.scale; };
    const std::vector<Line> lines = linesOf(of);
    const double type = setting.size, pitch = setting.pitch, part = type / size(typeSize::table);
    const double heading = part * size(typeSize::note), headHigh = part * size(7.0);
    const double width = flow.width(), alongAt = width - part * size(25.0);
    const bool metric = of.units == Units::Millimetres;
    const auto headings = [&] {
        Slice slice{headHigh, {}, true};
        const double base = part * size(4.4), ruled = part * size(6.2);
        const auto put = [&](double x, const std::string& word, Anchor anchor) {
            slice.items.emplace_back(
                makeText({x, base}, word, {.size = heading, .weight = Weight::SemiBold, .anchor = anchor}));
        };
        put(0.0, say("Station"), Anchor::Left);
        put(alongAt, metric ? say("from bow, mm") : say("from bow"), Anchor::Right);
        put(width, metric ? say("width, mm") : say("width"), Anchor::Right);
        slice.items.emplace_back(makeLine({0.0, ruled}, {width, ruled}, LineKind::Thin));
        return slice;
    };
    const double small = size(typeSize::small);
    const auto perColumn = static_cast<std::size_t>(std::max(1.0, (setting.height - headHigh) / pitch));
    for (std::size_t i = 0; i < lines.size(); i += perColumn) {
        std::vector<Slice> slices{headings()};
        for (std::size_t j = i; j < std::min(lines.size(), i + perColumn); ++j) {
            const double base = pitch / 2 + type * capHeight / 2;
            Slice slice{pitch, {}, false};
            const double nameRoom = alongAt - textWidth(lines[j].along, type) - size(2.0);
            slice.items.emplace_back(
                makeText({0.0, base}, lines[j].name, {.size = sizeToFit(lines[j].name, nameRoom, type)}));
            slice.items.emplace_back(
                makeText({alongAt, base}, lines[j].along, {.size = type, .anchor = Anchor::Right}));
            slice.items.emplace_back(
                makeText({width, base}, lines[j].width, {.size = type, .anchor = Anchor::Right}));
            slices.push_back(slice);
        }
        flow.add(slices);
    }
    flow.gap(size(1.0));
    flow.add(paragraph(remarkOn(of), width, {.size = small, .colour = colours::pencil}, 1.35 * small));
    flow.gap(size(3.0));
}

} // namespace sheerlay::core
