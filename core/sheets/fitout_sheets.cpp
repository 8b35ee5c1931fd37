#include "core/sheets/fitout_sheets.hpp"

#include "core/sheets/fitout_titles.hpp"
#include "core/sheets/gunwale_drawing.hpp"
#include "core/sheets/list_pages.hpp"
#include "core/sheets/page_frame.hpp"
#include "core/sheets/strip_notes.hpp"
#include "core/sheets/words.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/words/heard.hpp"
#include "core/words/language.hpp"
#include "core/words/say.hpp"

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

std::string
seatPlaceText(const std::string& middle, const std::string& top, const std::string& under, double tilt) {
    if (std::abs(tilt) < 0.05 * std::numbers::pi / 180) // prints as 0.0
        return say(
            "Middle {} from the bow, top {} over the bottom, {} under the sheer, level.", middle, top, under);
    const std::string lower = degreesText(std::abs(tilt));
    return tilt > 0.0 ? say("Middle {} from the bow, top {} over the bottom, {} under the sheer; its forward "
                            "edge lower by {}.",
                            middle,
                            top,
                            under,
                            lower)
                      : say("Middle {} from the bow, top {} over the bottom, {} under the sheer; its after "
                            "edge lower by {}.",
                            middle,
                            top,
                            under,
                            lower);
}

class Writer {
public:
    Writer(const Project& project, Units units, PageSize size)
        : m_project(project), m_units(units), m_page(pageOf(size)) {}

    void sheer(const Fitout& f) {
        keep(fewestPages(m_page, fitoutTitles::sheer(m_project), [&](ListPages& pages) {
            sheerMarks(pages, f);
            fairing(pages, f);
        }));
    }
    void gunwales(const Gunwales& g) {
        keep(fewestPages(m_page, fitoutTitles::gunwales(m_project), [&](ListPages& pages) {
            gunwalePieces(pages, g);
            gunwaleBevels(pages, g);
        }));
    }
    void bulkhead(const Bulkhead& b) {
        ListPages pages(m_page, fitoutTitles::bulkhead(m_project, b.choice.end));
        pages.text(say("{} wide, {} high, of {}; its larger face stands {} from the end. Behind it {} litres "
                       "of air hold up {} in fresh water, less the weight of its own parts.",
                       length(b.width),
                       length(b.height),
                       stockText(b.choice.thickness, m_units),
                       length(b.choice.fromEnd),
                       numberText(b.litres(), 0),
                       weightText(b.litres() * freshWater, m_units)));
        outline(pages, b.outline, sayable("drawn at {} percent of its size"));
        std::vector<ListRow> rows;
        const std::size_t step = std::max<std::size_t>(1, b.edge.size() / edgePlaces);
        for (std::size_t i = 0; i < b.edge.size(); i += step)
            rows.push_back({{length(b.edge.front().at.y() - b.edge[i].at.y()),
                             length(b.edge[i].at.x()),
                             degreesText(b.edge[i].bevel)}});
        pages.list({{say("Down from its corners"), 1.4, Anchor::Right},
                    {say("From the middle"), 1.4, Anchor::Right},
                    {say("Bevel off square"), 1.4, Anchor::Right, Weight::SemiBold}},
                   rows);
        pages.text(say("Saw to the larger face and plane the bevel toward the end. Bed it in thickened epoxy "
                       "with a fillet both sides; gloves on, and no dust before it is cured."));
        keep(pages.take());
    }

    void deck(const Deck& d) {
        ListPages pages(m_page, fitoutTitles::deck(m_project, d.choice.end));
        const std::string along = length(d.places.back().along), across = length(2 * d.places.front().girth);
        pages.text(
            d.radius > 0.0
                ? say("The plate laid flat: {} along its middle, {} across its inner edge; sprung to a "
                      "radius of {}.",
                      along,
                      across,
                      length(d.radius))
                : say("The plate laid flat: {} along its middle, {} across its inner edge.", along, across));
        outline(pages, turned(d.flat), sayable("drawn at {} percent of its size; inner edge below"));
        std::vector<ListRow> rows;
        const std::size_t step = std::max<std::size_t>(1, d.places.size() / edgePlaces);
        for (std::size_t i = 0; i < d.places.size(); i += step)
            rows.push_back(
                {{length(d.places[i].along), length(d.places[i].girth), degreesText(d.places[i].bevel)}});
        rows.push_back({{length(d.places.back().along),
                         length(d.places.back().girth),
                         degreesText(d.places.back().bevel)}});
        pages.list({{say("From the inner edge"), 1.4, Anchor::Right},
                    {say("Middle to edge"), 1.4, Anchor::Right},
                    {say("Bevel off square"), 1.4, Anchor::Right, Weight::SemiBold}},
                   rows);
        pages.text(
            say("+ bevel: its underside is the narrower. Cut it a little over and fit it to the boat."));
        keep(pages.take());
    }

    void seat(const Seat& s) {
        ListPages pages(m_page, fitoutTitles::seat(m_project, s.choice.name));
        pages.text(seatPlaceText(
                       placeText(s.x, m_units), length(s.aboveBottom), length(s.belowSheer), s.choice.tilt) +
                   " " +
                   say("Inside width {} at its front edge, {} at its back. Under it {} of room.",
                       length(s.widthFront),
                       length(s.widthBack),
                       length(s.footRoom)));
        const std::string front = say("front rail"), back = say("back rail");
        std::vector<ListRow> rows{railRow(front, s.front), railRow(back, s.back)};
        pages.list(railColumns(), rows);
        railNotes(pages);
        if (s.front.bolt && s.back.bolt)
            bolts(pages, {{front, &s.front}, {back, &s.back}});
        if (s.choice.on == SeatChoice::On::Cleats)
            pages.text(
                say("Cleats {} long, their tops {} down the inside from the sheer in front and {} behind.",
                    length(s.cleatLength),
                    length(s.cleatFront),
                    length(s.cleatBack)));
        pages.text(say("Side rails {} between the cross rails, {} apart, tenons not counted.",
                       length(s.sideRail),
                       length(s.opening)));
        if (s.caning)
            pages.text(say("Caning: {} holes in all, {} along front and back rail {} apart, {} along each "
                           "side rail {} apart, corners in both; about {} of cane in six ways.",
                           s.caning->holes,
                           s.caning->front,
                           fine(s.caning->spacingAcross),
                           s.caning->side,
                           fine(s.caning->spacingAlong),
                           runText(s.caning->cane, m_units)));
        keep(pages.take());
    }

    void bars(const std::vector<const Thwart*>& all) {
        if (all.empty())
            return;
        ListPages pages(m_page, fitoutTitles::bars(m_project));
        std::vector<ListRow> rows;
        std::vector<std::pair<std::string, const BoltedPiece*>> pieces;
        for (const Thwart* t : all) {
            const std::string name = heard(t->name);
            rows.push_back(railRow(name, t->bar));
            pieces.emplace_back(name, &t->bar);
            pages.text(say(
                "The middle of the {} lies {} from the bow, under the inner gunwales; {} of room under it.",
                name,
                placeText(t->x, m_units),
                length(t->kneeRoom)));
        }
        pages.list(railColumns(), rows);
        railNotes(pages);
        bolts(pages, pieces);
        pages.text(say("The place where she balances is reckoned: lift the finished boat and shift the yoke "
                       "before you drill."));
        keep(pages.take());
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

    void sheerMarks(ListPages& pages, const Fitout& f) {
        pages.text(say("Mark the sheer on the bare planking at every mould, spring a batten through the "
                       "marks and plane to it."));
        std::vector<ListRow> rows;
        for (const SheerMark& m : f.sheerMarks)
            rows.push_back({{m.mould,
                             m.aboveStrongback > 0.0 ? length(m.aboveStrongback) : "",
                             length(m.halfBreadth),
                             length(m.alongOutside),
                             m.fromStart ? length(*m.fromStart) : ""},
                            true});
        std::vector<ListColumn> columns{{say("Mould"), 1.4, Anchor::Left, Weight::SemiBold},
                                        {say("Over strongback"), 1.5, Anchor::Right},
                                        {say("Half-breadth"), 1.3, Anchor::Right},
                                        {say("Along from bow"), 1.5, Anchor::Right},
                                        {say("Up from the start"), 1.5, Anchor::Right}};
        if (std::ranges::none_of(f.sheerMarks, [](const SheerMark& m) { return m.fromStart.has_value(); })) {
            columns.pop_back(); // the planking starts along the sheer
            for (ListRow& row : rows)
                row.cells.pop_back();
        }
        pages.list(columns, rows);
    }
    void fairing(ListPages& pages, const Fitout& f) {
        pages.heading(say("Most to plane"));
        std::vector<ListRow> rows;
        for (std::size_t i = 0; i < std::min(mostFacets, f.fairing.facets.size()); ++i) {
            const Facet& facet = f.fairing.facets[i];
            rows.push_back({{facet.strip,
                             placeText(facet.x, m_units),
                             thin(facet.height),
                             facet.across < 0.0 ? say("middle|of a strip") : say("edges|of a strip"),
                             thin(facet.left)}});
        }
        pages.list({{say("Strip"), 1.0, Anchor::Left, Weight::SemiBold},
                    {say("From the bow"), 1.4, Anchor::Right},
                    {say("Stands proud"), 1.3, Anchor::Right},
                    {say("at its|of facets"), 1.0, Anchor::Right},
                    {say("Left of it"), 1.3, Anchor::Right}},
                   rows);
        pages.text(say("Fairing the inside too takes as much again off the strip's other places."));
        if (!f.findings.empty())
            pages.heading(say("Findings, heaviest first"));
        for (const Finding& finding : f.findings)
            pages.text(toSentence(finding, m_units));
    }
    void gunwalePieces(ListPages& pages, const Gunwales& g) {
        const GunwaleChoices& choices = *m_project.fitout->gunwales;
        std::vector<ListRow> rows;
        for (const auto& [name, one] :
             {std::pair{say("inner|gunwale"), &g.inner}, {say("outer|gunwale"), &g.outer}}) {
            rows.push_back({{name,
                             say("whole|of a strip"),
                             cutLengthText(one->cutLength, m_units),
                             say("along the sheer {}, bent to {} percent of what it takes dry",
                                 length(one->sheerLength),
                                 numberText(100 * one->strain, 0))}});
            for (std::size_t i = 0; i < one->pieces.size(); ++i)
                rows.push_back({{name,
                                 std::to_string(i + 1),
                                 cutLengthText(one->pieces[i].length(), m_units),
                                 i < one->scarfs.size()
                                     ? say("scarf's middle {} along the sheer", length(one->scarfs[i]))
                                     : ""},
                                true});
        }
        pages.list({{say("Gunwale"), 1.0, Anchor::Left, Weight::SemiBold},
                    {say("Piece"), 0.8},
                    {say("To cut"), 1.2, Anchor::Right, Weight::SemiBold},
                    {"", 4.2}},
                   rows);
        const GunwaleDrawing drawing = drawGunwales(g, pages.width(), pages.size(typeSize::small));
        pages.drawing(drawing.items, drawing.height);
        pages.text(
            say("Two of each, one a side; {} is left at both ends. A scarf is {} long outside, {} inside.",
                length(choices.overLength),
                length(g.outer.scarf),
                length(g.inner.scarf)));
        pages.text(say(
            g.plugCount > 0
                ? sayable("{} screws for both sides, from the inside, at most {} apart, and as many plugs.")
                : sayable("{} screws for both sides, from the inside, at most {} apart, their heads flush."),
            g.screwCount,
            length(g.screwSpacing)));
        if (g.scuppers)
            pages.text(say("{} scuppers a side of {} with blocks of {} between; the first begins {} along "
                           "the inner sheer from the bow.",
                           g.scuppers->count,
                           length(g.scuppers->opening),
                           length(g.scuppers->block),
                           length(g.scuppers->first)));
        if (g.rabbet > 0.0)
            pages.text(
                say("The outer gunwale is rabbeted by {} to lap the planking's edge.", fine(g.rabbet)));
    }
    void gunwaleBevels(ListPages& pages, const Gunwales& g) {
        pages.heading(say("Bevel, off square"));
        std::vector<ListRow> rows;
        for (const GunwaleBevel& b : g.bevels)
            rows.push_back({{b.name, length(b.alongOuter), length(b.alongInner), degreesText(b.flare)}});
        pages.list({{say("Station"), 1.2, Anchor::Left, Weight::SemiBold},
                    {say("Along the outer sheer"), 1.6, Anchor::Right},
                    {say("Along the inner"), 1.4, Anchor::Right},
                    {say("Bevel"), 1.0, Anchor::Right, Weight::SemiBold}},
                   rows);
        pages.text(m_project.fitout->gunwales->stand == GunwaleChoices::Stand::Square
                       ? say("Plane it off the face against the planking, so that the gunwale stands plumb; "
                             "+ where the side leans outward going up.")
                       : say("The gunwale follows the side; plane this off its top to make it level."));
        if (g.outer.use == WoodUse::SteamIt || g.inner.use == WoodUse::SteamIt)
            pages.text(say("Bent dry the wood would break: steam it or laminate it. Steam scalds; wear "
                           "gloves, keep the box vented and stand clear of its end."));
    }

    void keep(std::vector<Sheet> made) {
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
    /// @param caption  to be said, with a place for the percent it is drawn at
    void outline(ListPages& pages, const std::vector<Vector2d>& ring, const char* caption) {
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
        const std::string words = say(caption, numberText(100 * scale, 0));
        items.emplace_back(makeText(
            {pages.width() / 2, bottom + 2 * type}, words, {.size = type, .anchor = Anchor::Middle}));
        pages.drawing(items, bottom + 2.5 * type);
    }

    static std::vector<ListColumn> railColumns() {
        return {{say("Piece"), 1.3, Anchor::Left, Weight::SemiBold},
                {say("Wide, high"), 2.0},
                {say("Front edge"), 1.2, Anchor::Right, Weight::SemiBold},
                {say("Back edge"), 1.2, Anchor::Right},
                {say("In plan"), 0.8, Anchor::Right, Weight::SemiBold},
                {say("In section"), 0.9, Anchor::Right, Weight::SemiBold}};
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
        pages.text(say("Lengths are of the upper edges, end to end. Angles are off square: in plan + where "
                       "the after edge is the longer, in section + where the top is. Clamp short pieces to "
                       "the gauge; no fingers near the blade."));
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
                                 part->bolt->hanger > 0.0 ? length(part->bolt->hanger) : say("none|hanger"),
                                 degreesText(part->bolt->hangerSlope)}});
        pages.heading(say("Bolts and hangers, each side alike"));
        pages.list({{say("Through"), 1.3, Anchor::Left, Weight::SemiBold},
                    {say("Along the sheer"), 1.4, Anchor::Right},
                    {say("From gunwale's edge"), 1.6, Anchor::Right},
                    {say("From its end"), 1.2, Anchor::Right},
                    {say("Hanger"), 1.1, Anchor::Right, Weight::SemiBold},
                    {say("Its top"), 0.8, Anchor::Right}},
                   rows);
    }

    const Project& m_project;
    Units m_units;
    Page m_page;
    std::vector<Sheet> m_sheets;
};

} // namespace

std::vector<Sheet> fitoutSheets(const Project& project, const Fitout& fitout, Units units, PageSize size) {
    const Speaking speaking(project.language);
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
