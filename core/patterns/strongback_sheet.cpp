#include "core/patterns/strongback_sheet.hpp"

#include "core/sheets/list_pages.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/words.hpp"
#include "core/units/both_units.hpp"
#include "core/units/length.hpp"
#include "core/words/heard.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <map>
#include <string>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;

std::string told(double mm, Units units) {
    return formatLength(mm, units, 16);
}

/// Side view and plan, lengths to scale; the boat lies upside down, bow to the left.
class View {
public:
    View(const MouldSet& set, double width, double k) : m_plan(set.strongback), m_k(k) {
        m_scale = width / m_plan.length;
        for (const StrongbackPlan::Place& place : m_plan.places)
            m_high = std::max(m_high, place.keel);
        m_beam = (m_high + 20.0) * m_scale + typeSize::small * 2.6 * m_k;
        m_across = m_beam + m_plan.height * m_scale + 9.0 * m_k;
        m_height = m_across + m_plan.width * m_scale + 7.0 * m_k;
    }
    [[nodiscard]] double height() const { return m_height; }

    std::vector<Item> items() {
        const double length = m_plan.length * m_scale, tall = m_plan.height * m_scale;
        box({0.0, m_beam, length, m_beam + tall}, colours::bench);
        const double wide = m_plan.width * m_scale;
        box({0.0, m_across, length, m_across + wide}, colours::bench);
        m_items.emplace_back(makeLine(
            {-2.0 * m_k, m_across + wide / 2}, {length + 2.0 * m_k, m_across + wide / 2}, LineKind::Centre));
        double occupied = -1e9;
        for (const StrongbackPlan::Place& place : m_plan.places) {
            const double x = place.along * m_scale;
            m_items.emplace_back(
                makeLine({x, m_beam}, {x, m_beam - place.keel * m_scale}, LineKind::Visible));
            m_items.emplace_back(makeLine({x, m_across}, {x, m_across + wide}, LineKind::Thin));
            const double sheer = m_beam - place.sheer * m_scale;
            m_items.emplace_back(makeLine({x - 1.2 * m_k, sheer}, {x + 1.2 * m_k, sheer}, LineKind::Thin));
            // the cleat: a short block on the side away from the mould
            const double toward = place.forward ? 1.0 : -1.0, block = 38.0 * m_scale;
            const double half = place.cleat / 2 * m_scale, mid = m_across + wide / 2;
            box({std::min(x, x + toward * block), mid - half, std::max(x, x + toward * block), mid + half},
                colours::free);
            const double type = typeSize::small * m_k, need = textWidth(place.mould, type) / 2;
            if (x - need < occupied)
                continue;
            occupied = x + need + 1.0;
            m_items.emplace_back(makeText({x, m_beam - place.keel * m_scale - 1.2 * m_k},
                                          place.mould,
                                          {.size = type, .anchor = Anchor::Middle}));
        }
        const double first = m_plan.places.front().along * m_scale,
                     last = m_plan.places.back().along * m_scale;
        for (const bool down : {true, false})
            m_items.emplace_back(makeLine({first, down ? m_across : m_across + wide},
                                          {last, down ? m_across + wide : m_across},
                                          LineKind::Hidden));
        const double type = typeSize::small * m_k;
        m_items.emplace_back(makeText({0.0, m_across + wide + 4.6 * m_k},
                                      say("from above; dashed: the two diagonals to compare"),
                                      {.size = type, .colour = colours::pencil}));
        m_items.emplace_back(
            makeText({0.0, m_beam + tall + 4.6 * m_k},
                     say("from starboard, keel up, bow to the left; cross strokes: the sheer"),
                     {.size = type, .colour = colours::pencil}));
        return std::move(m_items);
    }

private:
    void box(const Box& at, Colour fill) { m_items.emplace_back(makeBox(at, LineKind::Thin, fill)); }

    const StrongbackPlan& m_plan;
    double m_k, m_scale = 1.0, m_high = 0.0, m_beam = 0.0, m_across = 0.0, m_height = 0.0;
    std::vector<Item> m_items;
};

std::vector<std::string> steps(const StrongbackPlan& plan, Units units) {
    return {
        say("Build the strongback straight and out of twist: {} long, {} wide, {} high. Its two diagonals "
            "from "
            "corner to corner are {} each.",
            told(plan.length, units),
            told(plan.width, units),
            told(plan.height, units),
            told(plan.diagonal, units)),
        say("Level it both ways and fasten it to the floor, or weigh it down, so that it can't move."),
        say("Stretch a string over the middle of its top from end to end: the centreline. Snap or draw it."),
        say("Mark the station lines square across it at the places listed, all measured from the forward end "
            "with one tape, never one from the other. From the first line to the last is {}; the diagonals "
            "between these two lines, from side to side, are {} each.",
            told(plan.checkLength, units),
            told(plan.checkDiagonal, units)),
        say("Fasten a cleat along each line, on the side listed, its middle on the centreline, so that the "
            "mould's governing face comes to stand on the line."),
        say("Set the moulds plumb, centreline on the string, foot on the strongback. Check each height above "
            "the strongback's top against the list, and sight along the sheer marks and a batten over the "
            "keel."),
        say("Clamp or screw the moulds to their cleats; stem forms stand plumb on the centreline against the "
            "mould named.")};
}

std::vector<ListRow> partsOf(const Project& project, const MouldSet& set, Units units) {
    const StrongbackPlan& plan = set.strongback;
    const std::string board = say("{} board|that is sawn", told(project.moulds.thickness, units));
    std::vector<ListRow> rows{{{"2",
                                say("sides of the strongback"),
                                say("{} by {}", told(plan.length, units), told(plan.height, units))},
                               true},
                              {{"1",
                                say("top, or rungs every {}", units == Units::Inches ? "2 ft" : "600 mm"),
                                say("{} by {}", told(plan.length, units), told(plan.width, units))},
                               true}};
    std::map<long, std::pair<int, double>> cleats; // by sixteenth of an inch, or millimetre
    for (const StrongbackPlan::Place& place : plan.places) {
        const double step = units == Units::Inches ? mmPerInch / 16 : 1.0;
        auto& [count, length] = cleats[-std::lround(place.cleat / step)];
        ++count;
        length = place.cleat;
    }
    for (const auto& [key, cleat] : cleats)
        rows.push_back(
            {{std::to_string(cleat.first), say("cleats, straight and square"), told(cleat.second, units)},
             true});
    rows.push_back({{std::to_string(set.moulds.size()), say("moulds by their patterns"), board}, true});
    if (!set.stemForms.empty())
        rows.push_back(
            {{std::to_string(set.stemForms.size()), say("stem forms by their patterns"), board}, true});
    return rows;
}

} // namespace

std::vector<Sheet> strongbackSheets(const Project& project, const MouldSet& set, Units units, PageSize size) {
    const StrongbackPlan& plan = set.strongback;
    if (plan.places.empty())
        return {};
    const Speaking speaking(project.language);
    ListPages pages(pageOf(size), say("{}, strongback and moulds", project.name));
    View view(set, pages.width(), pages.size(1.0));
    const double height = view.height();
    pages.drawing(view.items(), height);
    pages.steps(steps(plan, units));

    pages.heading(say("Where the moulds stand"));
    std::vector<ListRow> rows;
    for (const StrongbackPlan::Place& place : plan.places)
        rows.push_back({{place.mould,
                         told(place.along, units),
                         place.forward ? say("after face; cleat abaft") : say("forward face; cleat forward"),
                         told(place.cleat, units),
                         told(place.sheer, units),
                         told(place.keel, units)},
                        true});
    pages.list({{say("Mould"), 1.6, Anchor::Left, Weight::SemiBold},
                {say("From the forward end"), 1.5, Anchor::Right},
                {say("Face on the line"), 3.2},
                {say("Cleat"), 1.1, Anchor::Right},
                {say("Sheer above the top"), 1.3, Anchor::Right},
                {say("Keel above the top"), 1.3, Anchor::Right}},
               rows);
    for (const StemForm& form : set.stemForms)
        pages.text(say("The stem form at the {} stands against mould {}; its head reaches {} beyond that "
                       "mould's face.",
                       toText(form.end),
                       form.mould,
                       told(std::abs(form.edge.front().at.x() - form.endsAt), units)));
    for (const TransomForm& form : set.transoms)
        pages.text(
            say("The transom at the {} stands with its outer face {} from the forward end at the sheer, "
                "the sheer there {} above the strongback's top, raked {} from plumb.",
                toText(form.end),
                told(form.xAtSheer - plan.from, units),
                told(plan.top - form.sheerHeight, units),
                angleText(std::abs(form.rake()))));
    for (const std::string& sentence : set.leftOut)
        pages.text(unitsFirst(heard(sentence), units));
    pages.heading(say("Parts"));
    pages.list(
        {{say("How many"), 1.0, Anchor::Left, Weight::SemiBold}, {say("What"), 3.6}, {say("Size"), 3.0}},
        partsOf(project, set, units));
    std::vector<Sheet> sheets = pages.take();
    addFeet(sheets, project, units, pageOf(size));
    return sheets;
}

} // namespace sheerlay::core
