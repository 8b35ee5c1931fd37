#include "core/sheets/cover.hpp"

#include "core/planking/plan_findings.hpp"
#include "core/planking/uncertainty_text.hpp"
#include "core/sheets/compose.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/pieces.hpp"
#include "core/sheets/strip_notes.hpp"
#include "core/sheets/words.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlay::core {

namespace {

struct Fact {
    std::string label, value;
};

/// As the plan's summary has it: to the nearest foot or metre.
std::string totalText(double millimetres, Units units) {
    return units == Units::Millimetres ? numberText(millimetres / 1000.0, 0) + " m"
                                       : numberText(millimetres / mmPerFoot, 0) + " ft";
}

std::vector<Fact> factsOf(const Project& project, const LoftedHull& hull, const Plan& plan, Units units) {
    double total = 0.0;
    const Strip* worst = nullptr;
    for (const Strip& strip : plan.strips) {
        total += strip.cutLength;
        if (worst == nullptr || strip.edgeBend.maxAbs > worst->edgeBend.maxAbs)
            worst = &strip;
    }
    int rows = 0;
    for (int row = plan.firstRow; row <= plan.lastRow; ++row)
        rows += row != 0 ? 1 : 0;
    std::vector<Fact> facts{
        {say("Length, beam"),
         say("{} by {}", formatLength(hull.laid.length, units, 8), formatLength(hull.laid.beam, units, 8))},
        {say("Strip"),
         say("{} by {}, covers {}",
             stockText(project.strips.width, units),
             stockText(project.strips.thickness, units),
             stockText(plan.coverWidth, units))},
        {say("Rows, pieces"),
         say("{} a side, {}",
             countText(static_cast<std::size_t>(rows), say("row"), say("rows")),
             countText(plan.strips.size(), say("piece"), say("pieces")))},
        {say("Strip to cut"), say("{} in all, without spares", totalText(total, units))}};
    if (worst != nullptr) {
        const Places places(project, hull);
        facts.push_back({say("Worst edge bend"),
                         say("{}: {}, about {}",
                             say(toText(difficultyOf(*worst))),
                             worst->id,
                             sagText(worst->edgeBend.maxAbs, units))});
        facts.push_back({"", places.at(worst->edgeBend.atX)});
    }
    return facts;
}

std::vector<std::string> landmarksOf(const Plan& plan, Units units) {
    std::vector<std::string> texts;
    const auto rows = [](const RowRange& range) {
        return range.first == range.last ? say("row {}|of the ends", range.first)
                                         : say("rows {} to {}|of the ends", range.first, range.last);
    };
    if (plan.marks.weaveBow)
        texts.push_back(say("At the bow the ends of {} are woven.", rows(*plan.marks.weaveBow)));
    if (plan.marks.weaveStern)
        texts.push_back(say("At the stern the ends of {} are woven.", rows(*plan.marks.weaveStern)));
    if (plan.marks.closingBow)
        texts.push_back(
            say("From row {} on, bow ends land on the bottom's centreline.", *plan.marks.closingBow));
    if (plan.marks.closingStern)
        texts.push_back(
            say("From row {} on, stern ends land on the bottom's centreline.", *plan.marks.closingStern));
    for (const Strip& strip : plan.strips) {
        if (strip.kind != StripKind::Shutter || strip.widths.empty())
            continue;
        double widest = 0.0;
        for (const std::array<double, 2>& width : strip.widths)
            widest = std::max(widest, width[1]);
        const double longPlusMinus =
            plan.uncertainty ? printedDeviations * plan.uncertainty->lengthOf(strip.row) : 0.0;
        const double widePlusMinus =
            plan.uncertainty ? printedDeviations * plan.uncertainty->shutterWidth.value_or(0.0) : 0.0;
        const bool inches = units == Units::Inches;
        texts.push_back(
            say("The closing plank {} is about {} long and {} wide at its widest. Measure the gap before you "
                "cut it.",
                strip.id,
                lengthText(strip.length, inches ? mmPerInch / 4 : 5.0, longPlusMinus, units),
                lengthText(widest, inches ? mmPerInch / 16 : 1.0, widePlusMinus, units)));
    }
    if (plan.uncertainty)
        texts.push_back(toText(*plan.uncertainty, units));
    return texts;
}

std::vector<std::string>
findingsOf(const Project& project, const LoftedHull& hull, const Plan& plan, Units units) {
    std::vector<std::string> texts;
    for (const Finding& finding : withAsides(allFindings(hull, plan), project.putAside)) {
        const std::string text = toSentence(finding, units);
        const bool named = finding.strip && text.find(*finding.strip) == std::string::npos;
        texts.push_back(named ? *finding.strip + ". " + text : text);
    }
    texts.erase(std::unique(texts.begin(), texts.end()), texts.end());
    return texts;
}

/// Lays out the cover and the laying order.
class Cover {
public:
    Cover(const Page& page, Units units)
        : m_page(page), m_units(units), m_room(roomOf(page)), m_k(page.scale) {}

    std::vector<Sheet> make(const Project& project, const LoftedHull& hull, const Plan& plan) {
        front(project, hull, plan);
        for (const double smaller : {0.94, 0.88, 1.0}) { // where that saves a page
            if (m_sheets.size() == 1)
                break;
            m_sheets.clear();
            m_small = smaller;
            front(project, hull, plan);
        }
        const std::vector<Sheet> head = std::exchange(m_sheets, {});
        order(plan, fullPitch);
        for (const double pitch : {5.95, 5.7}) {
            const std::vector<Sheet> wide = std::exchange(m_sheets, {});
            order(plan, pitch);
            if (m_sheets.size() < wide.size())
                break;
            m_sheets = wide;
        }
        m_sheets.insert(m_sheets.begin(), head.begin(), head.end());
        return std::move(m_sheets);
    }

private:
    static constexpr double fullPitch = 6.2; // mm, line to line of the laying order

    void front(const Project& project, const LoftedHull& hull, const Plan& plan) {
        m_sheets.push_back(blankSheet(m_page, say("{}, cover", project.name)));
        double y = title(project);
        y = table(factsOf(project, hull, plan, m_units), y + size(4.0));
        Flow flow(m_sheets, {{m_room.left, y + size(3.0), m_room.right, m_room.bottom}}, [&] {
            return std::vector<Box>{newPage(say("{}, findings continued", project.name))};
        });
        list(flow, say("Landmarks"), landmarksOf(plan, m_units));
        std::vector<std::string> findings = findingsOf(project, hull, plan, m_units);
        if (findings.empty())
            findings.push_back(say("Nothing that asks for care was found."));
        list(flow, say("Findings, heaviest first"), findings);
    }

    [[nodiscard]] double size(double atA4) const { return atA4 * m_k; }

    double title(const Project& project) {
        std::vector<Item>& items = m_sheets.back().items;
        const double width = m_room.right - m_room.left;
        const double wanted = sizeForCapitals(size(typeSize::length));
        const std::string name = shortened(project.name, width * 1.6, wanted, Weight::Bold);
        const double type = sizeToFit(name, width, wanted, Weight::Bold);
        double y = m_room.top + size(typeSize::length);
        items.emplace_back(makeText({m_room.left, y}, name, {.size = type, .weight = Weight::Bold}));
        y += size(9.0);
        items.emplace_back(makeText({m_room.left, y},
                                    say("Cut sheets, strip by strip, in the order of laying"),
                                    {.size = size(typeSize::table)}));
        y += size(4.0);
        items.emplace_back(makeLine({m_room.left, y}, {m_room.right, y}, LineKind::Visible));
        return y;
    }

    double table(const std::vector<Fact>& facts, double top) {
        const double type = size(typeSize::table), pitch = size(8.6);
        double labels = 0.0;
        for (const Fact& fact : facts)
            labels = std::max(labels, textWidth(fact.label, type));
        const double valuesAt = m_room.left + labels + size(5.0);
        double base = top + pitch / 2 + type * capHeight / 2;
        for (const Fact& fact : facts) {
            std::vector<Item>& items = m_sheets.back().items;
            if (!fact.label.empty())
                items.emplace_back(
                    makeText({m_room.left, base}, fact.label, {.size = type, .colour = colours::pencil}));
            const double fits = sizeToFit(fact.value, m_room.right - valuesAt, type, Weight::SemiBold);
            items.emplace_back(
                makeText({valuesAt, base}, fact.value, {.size = fits, .weight = Weight::SemiBold}));
            base += pitch;
        }
        return base;
    }

    void list(Flow& flow, const std::string& heading, const std::vector<std::string>& texts) {
        if (texts.empty())
            return;
        const double type = m_small * size(typeSize::note);
        Slice head{size(8.0), {}, true};
        head.items.emplace_back(
            makeText({0.0, size(5.0)}, heading, {.size = size(typeSize::table), .weight = Weight::Bold}));
        std::vector<Slice> slices{head};
        for (const std::string& text : texts) {
            for (Slice& slice : paragraph(text, flow.width(), {.size = type}, m_small * size(5.8)))
                slices.push_back(std::move(slice));
            slices.push_back({size(1.6), {}, false});
        }
        flow.add(slices);
        flow.gap(size(4.0));
    }

    Box newPage(const std::string& heading) {
        m_sheets.push_back(blankSheet(m_page, heading));
        const double wanted = size(8.0), base = m_room.top + wanted * capHeight;
        const double type = sizeToFit(heading, m_room.right - m_room.left, wanted, Weight::Bold);
        m_sheets.back().items.emplace_back(
            makeText({m_room.left, base}, heading, {.size = type, .weight = Weight::Bold}));
        return {m_room.left, base + size(6.0), m_room.right, m_room.bottom};
    }

    std::vector<Box> orderColumns(const std::string& heading) {
        const Box all = newPage(heading);
        const double gap = size(8.0), width = (all.right - all.left - gap) / 2;
        return {{all.left, all.top, all.left + width, all.bottom},
                {all.right - width, all.top, all.right, all.bottom}};
    }

    // One line a piece of planking: when, which, how long, how hard, and a box to tick.
    void order(const Plan& plan, double pitchAtA4) {
        std::vector<const Strip*> strips;
        for (const Strip& strip : plan.strips)
            strips.push_back(&strip);
        std::stable_sort(
            strips.begin(), strips.end(), [](const Strip* a, const Strip* b) { return a->order < b->order; });
        std::vector<Box> columns = orderColumns(say("Laying order and lengths to cut"));
        Flow flow(
            m_sheets, std::move(columns), [this] { return orderColumns(say("Laying order, continued")); });
        const double type = size(typeSize::note), pitch = size(pitchAtA4),
                     base = pitch / 2 + type * capHeight / 2;
        const double box = size(3.4);
        for (const Strip* strip : strips) {
            Slice slice{pitch, {}, false};
            slice.items.emplace_back(makeBox({0.2, base - box, box, base}, LineKind::Thin));
            slice.items.emplace_back(makeText(
                {size(14.0), base}, std::to_string(strip->order), {.size = type, .anchor = Anchor::Right}));
            slice.items.emplace_back(
                makeText({size(17.0), base}, strip->id, {.size = type, .weight = Weight::SemiBold}));
            slice.items.emplace_back(makeText({size(60.0), base},
                                              cutLengthText(strip->cutLength, m_units),
                                              {.size = type, .anchor = Anchor::Right}));
            const Difficulty difficulty = difficultyOf(*strip);
            slice.items.emplace_back(makeBox(
                {size(64.0), base - box, size(64.0) + box, base}, LineKind::Thin, colourOf(difficulty)));
            const std::string word = difficulty == Difficulty::Taper ? say("taper") : say(toText(difficulty));
            slice.items.emplace_back(makeText({size(69.0), base}, word, {.size = type}));
            flow.add({slice});
        }
    }

    Page m_page;
    Units m_units;
    Box m_room;
    double m_k;
    double m_small = 1.0; // of the full type, in landmarks and findings
    std::vector<Sheet> m_sheets;
};

} // namespace

std::vector<Sheet>
coverSheets(const Project& project, const LoftedHull& hull, const Plan& plan, Units units, PageSize size) {
    const Speaking speaking(project.language);
    return Cover(pageOf(size), units).make(project, hull, plan);
}

} // namespace sheerlay::core
