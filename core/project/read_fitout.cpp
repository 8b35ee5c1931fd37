#include "core/project/read_fitout.hpp"

#include "core/project/ranged_length.hpp"
#include "core/project/ranged_number.hpp"
#include "core/project/wood.hpp"
#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <numbers>
#include <string>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr LengthRange glass{0.0, 10.0};
constexpr LengthRange stick{5.0, 200.0};
constexpr LengthRange plate{2.0, 40.0};
constexpr LengthRange stockLength{300.0, 12000.0};
constexpr LengthRange small{0.0, 200.0};
constexpr LengthRange spacing{20.0, 1000.0};
constexpr LengthRange alongHull{20.0, 3000.0};
constexpr LengthRange depth{100.0, 700.0};
constexpr LengthRange hole{1.0, 60.0};
constexpr LengthRange shank{2.0, 12.0};
constexpr LengthRange screwLength{10.0, 150.0};
constexpr double mostTilt = 20.0; // degrees

class FitoutReader {
public:
    explicit FitoutReader(Reading& reading) : m_reading(reading) {}

    FitoutChoices read(TableView& view) {
        FitoutChoices choices;
        if (const auto wood = view.text("wood", Need::Optional, woodNames())) {
            if (findWood(*wood) != nullptr)
                choices.wood = *wood;
            else
                m_reading.messages.error(view.lineOfKey("wood"),
                                         view.keyOf("wood"),
                                         "the text " + quoted(*wood),
                                         "one of " + woodNames());
        }
        take(choices.glassInside, view, "glass-inside", glass);
        take(choices.glassOutside, view, "glass-outside", glass);
        take(choices.boltDiameter, view, "bolt-diameter", shank);
        if (auto inner = view.table("gunwales", Need::Optional, "a table [fitout.gunwales]"))
            choices.gunwales = gunwales(*inner);
        view.eachTable("bulkhead", Need::Optional, "[[fitout.bulkhead]] with end", [&](TableView inner) {
            choices.bulkheads.push_back(bulkhead(inner));
        });
        view.eachTable("deck", Need::Optional, "[[fitout.deck]] with end", [&](TableView inner) {
            choices.decks.push_back(deck(inner));
        });
        view.eachTable("seat", Need::Optional, "[[fitout.seat]] with x and a height", [&](TableView inner) {
            choices.seats.push_back(seat(inner, choices.seats.size() + 1));
        });
        view.eachTable("thwart", Need::Optional, "[[fitout.thwart]] with x", [&](TableView inner) {
            choices.thwarts.push_back(
                thwart(inner, say("thwart {}", choices.thwarts.size() + 1), Need::Required));
        });
        if (auto inner = view.table("yoke", Need::Optional, "a table [fitout.yoke]"))
            choices.yoke = thwart(*inner, sayable("yoke"), Need::Optional);
        view.reportUnknown();
        return choices;
    }

private:
    void take(double& value, TableView& view, std::string_view key, LengthRange range) {
        takeLength(value, view, key, Need::Optional, range, m_reading);
    }
    void take(std::optional<double>& value, TableView& view, std::string_view key, LengthRange range) {
        double read = -1.0;
        take(read, view, key, range);
        if (read >= 0.0)
            value = read;
    }
    StickSize size(TableView& view, std::string_view key, StickSize size) {
        if (auto inner = view.table(key, Need::Optional, std::string(key) + " = { width = …, height = … }")) {
            take(size.width, *inner, "width", stick);
            take(size.height, *inner, "height", stick);
            inner->reportUnknown();
        }
        return size;
    }
    static End end(TableView& view) {
        return view.choice<End>("end", Need::Required, {{"bow", End::Bow}, {"stern", End::Stern}})
            .value_or(End::Bow);
    }
    GunwaleChoices gunwales(TableView& view) {
        GunwaleChoices g;
        g.inner = size(view, "inner", g.inner);
        g.outer = size(view, "outer", g.outer);
        g.stand = view.choice<GunwaleChoices::Stand>(
                          "stand",
                          Need::Optional,
                          {{"square", GunwaleChoices::Stand::Square}, {"side", GunwaleChoices::Stand::Side}})
                      .value_or(g.stand);
        g.edge = view.choice<GunwaleChoices::Edge>(
                         "edge",
                         Need::Optional,
                         {{"plain", GunwaleChoices::Edge::Plain}, {"rabbet", GunwaleChoices::Edge::Rabbet}})
                     .value_or(g.edge);
        take(g.stockLength, view, "stock-length", stockLength);
        g.scarfSlope =
            rangedNumber(view, "scarf-slope", {4.0, 20.0, sayable("a slope, such as 8")}, m_reading)
                .value_or(g.scarfSlope);
        take(g.overLength, view, "over-length", small);
        take(g.screwSpacing, view, "screw-spacing", spacing);
        g.plugs = view.choice<bool>("screw-heads", Need::Optional, {{"plugged", true}, {"flush", false}})
                      .value_or(true);
        take(g.screwDiameter, view, "screw-diameter", shank);
        take(g.screwLength, view, "screw-length", screwLength);
        if (auto inner = view.table(
                "scuppers", Need::Optional, "scuppers = { opening = …, block = …, solid-ends = … }")) {
            ScupperChoice s;
            take(s.opening, *inner, "opening", spacing);
            take(s.block, *inner, "block", spacing);
            take(s.solidEnds, *inner, "solid-ends", {0.0, 3000.0});
            inner->reportUnknown();
            g.scuppers = s;
        }
        view.reportUnknown();
        return g;
    }
    BulkheadChoice bulkhead(TableView& view) {
        BulkheadChoice b;
        b.end = end(view);
        take(b.fromEnd, view, "from-end", alongHull);
        take(b.thickness, view, "thickness", plate);
        take(b.gap, view, "gap", {0.0, 20.0});
        take(b.belowSheer, view, "below-sheer", small);
        take(b.crown, view, "crown", small);
        view.reportUnknown();
        return b;
    }
    DeckChoice deck(TableView& view) {
        DeckChoice d;
        d.end = end(view);
        take(d.length, view, "length", alongHull);
        take(d.thickness, view, "thickness", plate);
        take(d.crown, view, "crown", small);
        d.between = view.choice<DeckChoice::Between>("between",
                                                     Need::Optional,
                                                     {{"gunwales", DeckChoice::Between::Gunwales},
                                                      {"planking", DeckChoice::Between::Planking}})
                        .value_or(d.between);
        view.reportUnknown();
        return d;
    }
    SeatChoice seat(TableView& view, std::size_t number) {
        SeatChoice s;
        s.name = view.text("name", Need::Optional, "a short name in quotes").value_or(say("seat {}", number));
        if (const auto x = view.length("x", Need::Required, Sign::Any))
            s.x = x->value;
        take(s.aboveBottom, view, "above-bottom", {10.0, 1000.0});
        take(s.belowSheer, view, "below-sheer", {0.0, 1000.0});
        if (view.has("above-bottom") == view.has("below-sheer"))
            m_reading.messages.error(
                view.line(),
                view.keyOf("above-bottom"),
                view.has("above-bottom") ? sayable("a height told twice") : sayable("no height"),
                sayable("one of above-bottom and below-sheer, the place of the seat's top"));
        take(s.depth, view, "depth", depth);
        s.tilt =
            rangedNumber(
                view, "tilt", {-mostTilt, mostTilt, sayable("degrees, the forward edge lower")}, m_reading)
                .value_or(0.0) *
            std::numbers::pi / 180.0;
        s.rail = size(view, "rail", s.rail);
        s.on = view.choice<SeatChoice::On>(
                       "on",
                       Need::Optional,
                       {{"hangers", SeatChoice::On::Hangers}, {"cleats", SeatChoice::On::Cleats}})
                   .value_or(s.on);
        take(s.boltInset, view, "bolt-inset", small);
        take(s.opening, view, "opening", depth);
        take(s.footRoom, view, "foot-room", {0.0, 1000.0});
        take(s.legRoom, view, "leg-room", {0.0, 2000.0});
        if (auto inner =
                view.table("caning", Need::Optional, "caning = { spacing = …, hole = …, inset = … }")) {
            CaningChoice c;
            take(c.spacing, *inner, "spacing", hole);
            take(c.hole, *inner, "hole", hole);
            take(c.inset, *inner, "inset", hole);
            inner->reportUnknown();
            s.caning = c;
        }
        if (2.0 * s.rail.width >= s.depth)
            m_reading.messages.error(view.line(),
                                     view.keyOf("depth"),
                                     sayable("a seat no deeper than its two rails"),
                                     sayable("a depth above twice the rail's width"));
        view.reportUnknown();
        return s;
    }
    ThwartChoice thwart(TableView& view, std::string name, Need place) {
        ThwartChoice t;
        t.name = view.text("name", Need::Optional, "a short name in quotes").value_or(std::move(name));
        if (const auto x = view.length("x", place, Sign::Any))
            t.x = x->value;
        take(t.size.width, view, "width", stick);
        take(t.size.height, view, "height", stick);
        take(t.boltInset, view, "bolt-inset", small);
        take(t.kneeRoom, view, "knee-room", {0.0, 1000.0});
        view.reportUnknown();
        return t;
    }

    Reading& m_reading;
};

} // namespace

std::optional<FitoutChoices> readFitout(TableView& file, Reading& reading) {
    auto view = file.table("fitout", Need::Optional, "a table [fitout]");
    if (!view)
        return std::nullopt;
    return FitoutReader(reading).read(*view);
}

} // namespace sheerlay::core
