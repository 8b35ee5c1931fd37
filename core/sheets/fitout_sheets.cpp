#include "core/sheets/fitout_sheets.hpp"

#include "core/sheets/gunwale_drawing.hpp"
#include "core/sheets/list_pages.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/strip_notes.hpp"
#include "core/sheets/words.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <numbers>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;

constexpr double freshWater = 1.0;     // kg to the litre
constexpr std::size_t mostFacets = 8;  // strips named on the sheet
constexpr std::size_t edgePlaces = 12; // of a bulkhead or a deck

std::string degreesText(double radians) {
    return numberText(radians * 180.0 / std::numbers::pi, 1) + "\u00B0";
}

std::string tiltText(double tilt) {
    if (std::abs(tilt) < 0.05 * std::numbers::pi / 180) // prints as 0.0
        return ", level";
    return std::string("; its ") + (tilt > 0.0 ? "forward" : "after") + " edge lower by " +
           degreesText(std::abs(tilt));
}

class Writer {
public:
    Writer(const Project& project, Units units, PageSize size)
        : m_project(project), m_units(units), m_page(pageOf(size)) {}

    void sheer(const Fitout& f) {
        ListPages pages(m_page, m_project.name + ", sheer and fairing");
        pages.text(
            "Mark the sheer on the bare planking at every mould, spring a batten through the marks and "
            "plane to it.");
        std::vector<ListRow> rows;
        for (const SheerMark& m : f.sheerMarks)
            rows.push_back({{m.mould,
                             m.aboveStrongback > 0.0 ? length(m.aboveStrongback) : "",
                             length(m.halfBreadth),
                             length(m.alongOutside),
                             m.fromStart ? length(*m.fromStart) : ""},
                            true});
        std::vector<ListColumn> columns{{"Mould", 1.4, Anchor::Left, Weight::SemiBold},
                                        {"Over strongback", 1.5, Anchor::Right},
                                        {"Half-breadth", 1.3, Anchor::Right},
                                        {"Along from bow", 1.5, Anchor::Right},
                                        {"Up from the start", 1.5, Anchor::Right}};
        if (std::ranges::none_of(f.sheerMarks, [](const SheerMark& m) { return m.fromStart.has_value(); })) {
            columns.pop_back(); // the planking starts along the sheer
            for (ListRow& row : rows)
                row.cells.pop_back();
        }
        pages.list(columns, rows);
        pages.heading("Most to plane");
        rows.clear();
        for (std::size_t i = 0; i < std::min(mostFacets, f.fairing.facets.size()); ++i) {
            const Facet& facet = f.fairing.facets[i];
            rows.push_back({{facet.strip,
                             placeText(facet.x, m_units),
                             thin(facet.height),
                             facet.across < 0.0 ? "middle" : "edges",
                             thin(facet.left)}});
        }
        pages.list({{"Strip", 1.0, Anchor::Left, Weight::SemiBold},
                    {"From the bow", 1.4, Anchor::Right},
                    {"Stands proud", 1.3, Anchor::Right},
                    {"at its", 1.0, Anchor::Right},
                    {"Left of it", 1.3, Anchor::Right}},
                   rows);
        pages.text("Fairing the inside too takes as much again off the strip's other places.");
        if (!f.findings.empty())
            pages.heading("Findings, heaviest first");
        for (const Finding& finding : f.findings)
            pages.text(toSentence(finding));
        keep(pages);
    }

    void gunwales(const Gunwales& g) {
        ListPages pages(m_page, m_project.name + ", gunwales");
        const GunwaleChoices& choices = *m_project.fitout->gunwales;
        std::vector<ListRow> rows;
        for (const auto& [name, one] : {std::pair{"inner", &g.inner}, {"outer", &g.outer}}) {
            rows.push_back({{name,
                             "whole",
                             cutLengthText(one->cutLength, m_units),
                             "along the sheer " + length(one->sheerLength) + ", bent to " +
                                 numberText(100 * one->strain, 0) + " percent of what it takes dry"}});
            for (std::size_t i = 0; i < one->pieces.size(); ++i)
                rows.push_back(
                    {{name,
                      std::to_string(i + 1),
                      cutLengthText(one->pieces[i].length(), m_units),
                      i < one->scarfs.size() ? "scarf's middle " + length(one->scarfs[i]) + " along the sheer"
                                             : ""},
                     true});
        }
        pages.list({{"Gunwale", 1.0, Anchor::Left, Weight::SemiBold},
                    {"Piece", 0.8},
                    {"To cut", 1.2, Anchor::Right, Weight::SemiBold},
                    {"", 4.2}},
                   rows);
        const GunwaleDrawing drawing = drawGunwales(g, pages.width(), pages.size(typeSize::small));
        pages.drawing(drawing.items, drawing.height);
        pages.text("Two of each, one a side; " + length(choices.overLength) +
                   " is left at both ends. A scarf is " + length(g.outer.scarf) + " long outside, " +
                   length(g.inner.scarf) + " inside.");
        pages.text(std::to_string(g.screwCount) + " screws for both sides, from the inside, at most " +
                   length(g.screwSpacing) + " apart" +
                   (g.plugCount > 0 ? ", and as many plugs." : ", their heads flush."));
        if (g.scuppers)
            pages.text(std::to_string(g.scuppers->count) + " scuppers a side of " +
                       length(g.scuppers->opening) + " with blocks of " + length(g.scuppers->block) +
                       " between; the first begins " + length(g.scuppers->first) +
                       " along the inner sheer from the bow.");
        if (g.rabbet > 0.0)
            pages.text("The outer gunwale is rabbeted by " + fine(g.rabbet) + " to lap the planking's edge.");
        pages.heading("Bevel, off square");
        rows.clear();
        for (const GunwaleBevel& b : g.bevels)
            rows.push_back({{b.name, length(b.alongOuter), length(b.alongInner), degreesText(b.flare)}});
        pages.list({{"Station", 1.2, Anchor::Left, Weight::SemiBold},
                    {"Along the outer sheer", 1.6, Anchor::Right},
                    {"Along the inner", 1.4, Anchor::Right},
                    {"Bevel", 1.0, Anchor::Right, Weight::SemiBold}},
                   rows);
        pages.text(
            choices.stand == GunwaleChoices::Stand::Square
                ? "Plane it off the face against the planking, so that the gunwale stands plumb; + where "
                  "the side leans outward going up."
                : "The gunwale follows the side; plane this off its top to make it level.");
        if (g.outer.use == WoodUse::SteamIt || g.inner.use == WoodUse::SteamIt)
            pages.text(
                "Bent dry the wood would break: steam it or laminate it. Steam scalds; wear gloves, keep "
                "the box vented and stand clear of its end.");
        keep(pages);
    }

    void bulkhead(const Bulkhead& b) {
        ListPages pages(m_page, m_project.name + ", " + toText(b.choice.end) + " bulkhead");
        pages.text(length(b.width) + " wide, " + length(b.height) + " high, of " +
                   stockText(b.choice.thickness, m_units) + "; its larger face stands " +
                   length(b.choice.fromEnd) + " from the end. Behind it " + numberText(b.litres(), 0) +
                   " litres of air hold up " + weightText(b.litres() * freshWater, m_units) +
                   " in fresh water, less the weight of its own parts.");
        outline(pages, b.outline, "");
        std::vector<ListRow> rows;
        const std::size_t step = std::max<std::size_t>(1, b.edge.size() / edgePlaces);
        for (std::size_t i = 0; i < b.edge.size(); i += step)
            rows.push_back({{length(b.edge.front().at.y() - b.edge[i].at.y()),
                             length(b.edge[i].at.x()),
                             degreesText(b.edge[i].bevel)}});
        pages.list({{"Down from its corners", 1.4, Anchor::Right},
                    {"From the middle", 1.4, Anchor::Right},
                    {"Bevel off square", 1.4, Anchor::Right, Weight::SemiBold}},
                   rows);
        pages.text(
            "Saw to the larger face and plane the bevel toward the end. Bed it in thickened epoxy with a "
            "fillet both sides; gloves on, and no dust before it is cured.");
        keep(pages);
    }

    void deck(const Deck& d) {
        ListPages pages(m_page, m_project.name + ", " + toText(d.choice.end) + " deck");
        pages.text("The plate laid flat: " + length(d.places.back().along) + " along its middle, " +
                   length(2 * d.places.front().girth) + " across its inner edge" +
                   (d.radius > 0.0 ? "; sprung to a radius of " + length(d.radius) + "." : "."));
        outline(pages, turned(d.flat), "inner edge below");
        std::vector<ListRow> rows;
        const std::size_t step = std::max<std::size_t>(1, d.places.size() / edgePlaces);
        for (std::size_t i = 0; i < d.places.size(); i += step)
            rows.push_back(
                {{length(d.places[i].along), length(d.places[i].girth), degreesText(d.places[i].bevel)}});
        rows.push_back({{length(d.places.back().along),
                         length(d.places.back().girth),
                         degreesText(d.places.back().bevel)}});
        pages.list({{"From the inner edge", 1.4, Anchor::Right},
                    {"Middle to edge", 1.4, Anchor::Right},
                    {"Bevel off square", 1.4, Anchor::Right, Weight::SemiBold}},
                   rows);
        pages.text("+ bevel: its underside is the narrower. Cut it a little over and fit it to the boat.");
        keep(pages);
    }

    void seat(const Seat& s) {
        ListPages pages(m_page, m_project.name + ", " + s.choice.name);
        pages.text("Middle " + placeText(s.x, m_units) + " from the bow, top " + length(s.aboveBottom) +
                   " over the bottom, " + length(s.belowSheer) + " under the sheer" +
                   tiltText(s.choice.tilt) + ". Inside width " + length(s.widthFront) +
                   " at its front edge, " + length(s.widthBack) + " at its back. Under it " +
                   length(s.footRoom) + " of room.");
        std::vector<ListRow> rows{railRow("front rail", s.front), railRow("back rail", s.back)};
        pages.list(railColumns(), rows);
        railNotes(pages);
        if (s.front.bolt && s.back.bolt)
            bolts(pages, {{"front rail", &s.front}, {"back rail", &s.back}});
        if (s.choice.on == SeatChoice::On::Cleats)
            pages.text("Cleats " + length(s.cleatLength) + " long, their tops " + length(s.cleatFront) +
                       " down the inside from the sheer in front and " + length(s.cleatBack) + " behind.");
        pages.text("Side rails " + length(s.sideRail) + " between the cross rails, " + length(s.opening) +
                   " apart, tenons not counted.");
        if (s.caning)
            pages.text("Caning: " + std::to_string(s.caning->holes) + " holes in all, " +
                       std::to_string(s.caning->front) + " along front and back rail " +
                       fine(s.caning->spacingAcross) + " apart, " + std::to_string(s.caning->side) +
                       " along each side rail " + fine(s.caning->spacingAlong) +
                       " apart, corners in both; about " + runText(s.caning->cane, m_units) +
                       " of cane in six ways.");
        keep(pages);
    }

    void bars(const std::vector<const Thwart*>& all) {
        if (all.empty())
            return;
        ListPages pages(m_page, m_project.name + ", thwarts and yoke");
        std::vector<ListRow> rows;
        std::vector<std::pair<std::string, const BoltedPiece*>> pieces;
        for (const Thwart* t : all) {
            rows.push_back(railRow(t->name, t->bar));
            pieces.emplace_back(t->name, &t->bar);
            pages.text("The middle of the " + t->name + " lies " + placeText(t->x, m_units) +
                       " from the bow, under the inner gunwales; " + length(t->kneeRoom) +
                       " of room under it.");
        }
        pages.list(railColumns(), rows);
        railNotes(pages);
        bolts(pages, pieces);
        pages.text(
            "The place where she balances is reckoned: lift the finished boat and shift the yoke before you "
            "drill.");
        keep(pages);
    }

    std::vector<Sheet> finish() {
        addFeet(m_sheets, m_project, m_units, m_page);
        return std::move(m_sheets);
    }

private:
    [[nodiscard]] std::string length(double mm) const { return lapText(mm, m_units); }
    /// What is cut to fit between two sides, or adds up from hole to hole: 0.1 mm, 1/32 in.
    [[nodiscard]] std::string fine(double mm) const { return widthText(mm, m_units); }
    /// What a plane takes: hundredths of a millimetre, thousandths of an inch.
    [[nodiscard]] std::string thin(double mm) const {
        return m_units == Units::Inches ? numberText(mm / mmPerInch, 3) + "\"" : numberText(mm, 2) + " mm";
    }

    void keep(ListPages& pages) {
        std::vector<Sheet> made = pages.take();
        m_sheets.insert(
            m_sheets.end(), std::make_move_iterator(made.begin()), std::make_move_iterator(made.end()));
    }

    /// A deck's flat plate with its tip up.
    static std::vector<Vector2d> turned(const std::vector<Vector2d>& flat) {
        std::vector<Vector2d> up;
        for (const Vector2d& p : flat)
            up.emplace_back(p.y(), p.x());
        return up;
    }

    /// A closed outline, second coordinate up, as large as the page allows.
    void outline(ListPages& pages, const std::vector<Vector2d>& ring, const std::string& caption) {
        double left = 1e9, right = -1e9, low = 1e9, high = -1e9;
        for (const Vector2d& p : ring) {
            left = std::min(left, p.x());
            right = std::max(right, p.x());
            low = std::min(low, p.y());
            high = std::max(high, p.y());
        }
        const double tall = pages.size(95.0);
        const double scale = std::min({1.0, pages.width() * 0.9 / (right - left), tall / (high - low)});
        const auto onPaper = [&](const Vector2d& p) {
            return Vector2d(pages.width() / 2 + scale * (p.x() - 0.5 * (left + right)),
                            scale * (high - p.y()));
        };
        Path path;
        path.closed = true;
        for (const Vector2d& p : ring)
            path.points.push_back(onPaper(p));
        const double bottom = scale * (high - low), type = pages.size(typeSize::small);
        std::vector<Item> items{
            path, makeLine({pages.width() / 2, 0.0}, {pages.width() / 2, bottom}, LineKind::Centre)};
        const std::string words = "drawn at " + numberText(100 * scale, 0) + " percent of its size" +
                                  (caption.empty() ? "" : "; " + caption);
        items.emplace_back(makeText(
            {pages.width() / 2, bottom + 2 * type}, words, {.size = type, .anchor = Anchor::Middle}));
        pages.drawing(items, bottom + 2.5 * type);
    }

    static std::vector<ListColumn> railColumns() {
        return {{"Piece", 1.3, Anchor::Left, Weight::SemiBold},
                {"Wide, high", 2.0},
                {"Front edge", 1.2, Anchor::Right, Weight::SemiBold},
                {"Back edge", 1.2, Anchor::Right},
                {"In plan", 0.8, Anchor::Right, Weight::SemiBold},
                {"In section", 0.9, Anchor::Right, Weight::SemiBold}};
    }
    [[nodiscard]] ListRow railRow(const std::string& name, const BoltedPiece& part) const {
        const CrossPiece& p = part.piece;
        return {{name,
                 stockText(p.width, m_units) + ", " + stockText(p.height, m_units),
                 fine(p.frontTop),
                 fine(p.backTop),
                 degreesText(p.plan),
                 degreesText(p.section)}};
    }
    static void railNotes(ListPages& pages) {
        pages.text(
            "Lengths are of the upper edges, end to end. Angles are off square: in plan + where the after "
            "edge is the longer, in section + where the top is. Clamp short pieces to the gauge; no fingers "
            "near the blade.");
    }
    void bolts(ListPages& pages,
               const std::vector<std::pair<std::string, const BoltedPiece*>>& pieces) const {
        std::vector<ListRow> rows;
        for (const auto& [name, part] : pieces)
            if (part->bolt)
                rows.push_back({{name,
                                 length(part->bolt->alongSheer),
                                 length(part->bolt->inset),
                                 length(part->bolt->fromEnd),
                                 part->bolt->hanger > 0.0 ? length(part->bolt->hanger) : "none",
                                 degreesText(part->bolt->hangerSlope)}});
        pages.heading("Bolts and hangers, each side alike");
        pages.list({{"Through", 1.3, Anchor::Left, Weight::SemiBold},
                    {"Along the sheer", 1.4, Anchor::Right},
                    {"From gunwale's edge", 1.6, Anchor::Right},
                    {"From its end", 1.2, Anchor::Right},
                    {"Hanger", 1.1, Anchor::Right, Weight::SemiBold},
                    {"Its top", 0.8, Anchor::Right}},
                   rows);
    }

    const Project& m_project;
    Units m_units;
    Page m_page;
    std::vector<Sheet> m_sheets;
};

} // namespace

std::vector<Sheet> fitoutSheets(const Project& project, const Fitout& fitout, Units units, PageSize size) {
    Writer writer(project, units, size);
    writer.sheer(fitout);
    if (fitout.gunwales)
        writer.gunwales(*fitout.gunwales);
    for (const Bulkhead& b : fitout.bulkheads)
        writer.bulkhead(b);
    for (const Deck& d : fitout.decks)
        writer.deck(d);
    for (const Seat& s : fitout.seats)
        writer.seat(s);
    std::vector<const Thwart*> bars;
    for (const Thwart& t : fitout.thwarts)
        bars.push_back(&t);
    if (fitout.yoke)
        bars.push_back(&*fitout.yoke);
    writer.bars(bars);
    return writer.finish();
}

} // namespace sheerlay::core
