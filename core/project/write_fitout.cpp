#include "core/project/write_fitout.hpp"

#include "core/project/written_value.hpp"

#include <numbers>
#include <string_view>

namespace sheerlay::core {

namespace {

class FitoutWriter {
public:
    explicit FitoutWriter(Units units) : m_units(units) {}

    std::string write(const FitoutChoices& f) {
        table("[fitout]");
        line("wood", inQuotes(f.wood));
        length("glass-inside", f.glassInside);
        length("glass-outside", f.glassOutside);
        length("bolt-diameter", f.boltDiameter);
        if (f.gunwales)
            gunwales(*f.gunwales);
        for (const BulkheadChoice& b : f.bulkheads)
            bulkhead(b);
        for (const DeckChoice& d : f.decks)
            deck(d);
        for (const SeatChoice& s : f.seats)
            seat(s);
        for (const ThwartChoice& t : f.thwarts)
            thwart("[[fitout.thwart]]", t);
        if (f.yoke)
            thwart("[fitout.yoke]", *f.yoke);
        return std::move(m_text);
    }

private:
    void table(std::string_view name) { m_text += "\n" + std::string(name) + "\n"; }
    void line(std::string_view key, const std::string& value) {
        m_text += std::string(key) + " = " + value + "\n";
    }
    void length(std::string_view key, double mm) { line(key, writtenLength(mm, m_units)); }
    void length(std::string_view key, const std::optional<double>& mm) {
        if (mm)
            length(key, *mm);
    }
    void size(std::string_view key, const StickSize& s) {
        line(key,
             "{ width = " + writtenLength(s.width, m_units) +
                 ", height = " + writtenLength(s.height, m_units) + " }");
    }
    void end(End end) { line("end", end == End::Bow ? "\"bow\"" : "\"stern\""); }

    void gunwales(const GunwaleChoices& g) {
        table("[fitout.gunwales]");
        size("inner", g.inner);
        size("outer", g.outer);
        line("stand", g.stand == GunwaleChoices::Stand::Square ? "\"square\"" : "\"side\"");
        line("edge", g.edge == GunwaleChoices::Edge::Plain ? "\"plain\"" : "\"rabbet\"");
        length("stock-length", g.stockLength);
        line("scarf-slope", shortestDigits(g.scarfSlope));
        length("over-length", g.overLength);
        length("screw-spacing", g.screwSpacing);
        line("screw-heads", g.plugs ? "\"plugged\"" : "\"flush\"");
        length("screw-diameter", g.screwDiameter);
        length("screw-length", g.screwLength);
        if (g.scuppers)
            line("scuppers",
                 "{ opening = " + writtenLength(g.scuppers->opening, m_units) +
                     ", block = " + writtenLength(g.scuppers->block, m_units) +
                     ", solid-ends = " + writtenLength(g.scuppers->solidEnds, m_units) + " }");
    }
    void bulkhead(const BulkheadChoice& b) {
        table("[[fitout.bulkhead]]");
        end(b.end);
        length("from-end", b.fromEnd);
        length("thickness", b.thickness);
        length("gap", b.gap);
        length("below-sheer", b.belowSheer);
        length("crown", b.crown);
    }
    void deck(const DeckChoice& d) {
        table("[[fitout.deck]]");
        end(d.end);
        length("length", d.length);
        length("thickness", d.thickness);
        length("crown", d.crown);
        line("between", d.between == DeckChoice::Between::Gunwales ? "\"gunwales\"" : "\"planking\"");
    }
    void seat(const SeatChoice& s) {
        table("[[fitout.seat]]");
        line("name", inQuotes(s.name));
        length("x", s.x);
        length("above-bottom", s.aboveBottom);
        length("below-sheer", s.belowSheer);
        length("depth", s.depth);
        line("tilt", steadyDigits(s.tilt * 180.0 / std::numbers::pi));
        size("rail", s.rail);
        line("on", s.on == SeatChoice::On::Hangers ? "\"hangers\"" : "\"cleats\"");
        length("bolt-inset", s.boltInset);
        length("opening", s.opening);
        length("foot-room", s.footRoom);
        length("leg-room", s.legRoom);
        if (s.caning)
            line("caning",
                 "{ spacing = " + writtenLength(s.caning->spacing, m_units) +
                     ", hole = " + writtenLength(s.caning->hole, m_units) +
                     ", inset = " + writtenLength(s.caning->inset, m_units) + " }");
    }
    void thwart(std::string_view heading, const ThwartChoice& t) {
        table(heading);
        line("name", inQuotes(t.name));
        length("x", t.x);
        length("width", t.size.width);
        length("height", t.size.height);
        length("bolt-inset", t.boltInset);
        length("knee-room", t.kneeRoom);
    }

    Units m_units;
    std::string m_text;
};

} // namespace

std::string fitoutText(const FitoutChoices& fitout, Units units) {
    return FitoutWriter(units).write(fitout);
}

} // namespace sheerlay::core
