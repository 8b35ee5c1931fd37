#include "core/project/project_writer.hpp"

#include "core/project/read_moulds.hpp"
#include "core/project/write_afloat.hpp"
#include "core/project/write_covering.hpp"
#include "core/project/write_fitout.hpp"
#include "core/project/write_prices.hpp"
#include "core/project/written_value.hpp"
#include "core/units/length.hpp"

#include <initializer_list>
#include <string_view>
#include <utility>

namespace sheerlay::core {

namespace {

/// "12.50", "-3": what TOML takes as a number, so that it stays one.
bool isPlainNumber(std::string_view text) {
    if (text.starts_with('-'))
        text.remove_prefix(1);
    const std::string_view whole = text.substr(0, text.find('.'));
    const std::string_view rest = text.substr(whole.size());
    const auto allDigits = [](std::string_view part) {
        return !part.empty() && part.find_first_not_of("0123456789") == std::string_view::npos;
    };
    return allDigits(whole) && (whole.size() == 1 || whole.front() != '0') &&
           (rest.empty() || allDigits(rest.substr(1)));
}

class Writer {
public:
    explicit Writer(Units units) : m_units(units) {}

    [[nodiscard]] std::string length(double mm) const { return writtenLength(mm, m_units); }

    /// In the builder's own notation as long as it says this value.
    [[nodiscard]] std::string length(double mm, const std::string& printed) const {
        const auto read = parseLength(printed, m_units);
        if (!read || read->millimetres != mm)
            return length(mm);
        return isPlainNumber(printed) ? printed : inQuotes(printed);
    }

    [[nodiscard]] std::string point(const TablePoint& p) const {
        std::string text = "{ height = " + length(p.height, p.printedHeight);
        if (p.kind != PointKind::Keel || p.halfBreadth != 0.0 || !p.printedHalfBreadth.empty())
            text += ", half-breadth = " + length(p.halfBreadth, p.printedHalfBreadth);
        return text + replaces({{"height", p.replacedHeight}, {"half-breadth", p.replacedHalfBreadth}}) +
               " }";
    }

    /// Printed numbers that corrected ones stand in place of.
    [[nodiscard]] static std::string
    replaces(std::initializer_list<std::pair<const char*, std::string>> numbers) {
        std::string text;
        for (const auto& [key, printed] : numbers)
            if (!printed.empty())
                text += (text.empty() ? "" : ", ") + std::string(key) + " = " +
                        (isPlainNumber(printed) ? printed : inQuotes(printed));
        return text.empty() ? text : ", replaces = { " + text + " }";
    }

    void line(std::string_view key, std::string_view value) {
        m_text += std::string(key) + " = " + std::string(value) + "\n";
    }
    void add(std::string_view tables) { m_text += tables; }
    void heading(std::string_view name) { m_text += "\n" + std::string(name) + "\n"; }
    void points(std::string_view key, const std::vector<TablePoint>& all, PointKind kind) {
        std::string rows;
        for (const TablePoint& p : all)
            if (p.kind == kind && !p.diagonal)
                rows += "    " + point(p) + ",\n";
        if (!rows.empty())
            line(key, "[\n" + rows + "]");
    }
    void diagonals(const std::vector<TablePoint>& all) {
        std::string rows;
        for (const TablePoint& p : all) {
            if (!p.diagonal)
                continue;
            const DiagonalReading& d = *p.diagonal;
            rows += "    { height = " + length(d.height, d.printedHeight) +
                    (d.angle ? ", angle = " + shortestDigits(*d.angle)
                             : ", through = { half-breadth = " + length(d.throughBreadth) +
                                   ", height = " + length(d.throughHeight) + " }") +
                    ", distance = " + length(d.distance, d.printedDistance) +
                    replaces({{"distance", d.replacedDistance}}) + " },\n";
        }
        if (!rows.empty())
            line("diagonals", "[\n" + rows + "]");
    }
    void station(const Station& s) {
        heading("[[hull.station]]");
        line("x", length(s.x, s.printedX));
        line("sheer", point(s.sheer));
        if (s.keel)
            line("keel", point(*s.keel));
        if (s.knuckle)
            line("knuckle", point(*s.knuckle));
        points("waterlines", s.points, PointKind::Waterline);
        points("buttocks", s.points, PointKind::Buttock);
        diagonals(s.points);
        points("points", s.points, PointKind::Point);
    }
    void profile(const HullTable& hull) {
        if (hull.profile.empty() && hull.halfSiding == 0.0)
            return;
        heading("[hull.profile]");
        line("half-siding", length(hull.halfSiding));
        std::string rows;
        for (const ProfilePoint& p : hull.profile)
            rows += "    [" + length(p.x) + ", " + length(p.height) +
                    (p.halfSiding ? ", " + length(*p.halfSiding) : "") + "],\n";
        if (!rows.empty())
            line("points", "[\n" + rows + "]");
    }
    void planking(const Planking& planking);
    void moulds(const MouldChoices& moulds);
    void stock(const Stock& stock);
    void journal(const Journal& journal);
    void asides(const std::vector<PutAside>& asides);

    [[nodiscard]] std::string text() && { return std::move(m_text); }
    void comment(std::string_view words) { m_text += "# " + std::string(words) + "\n"; }

private:
    [[nodiscard]] std::string pair(double from, double to) const {
        return "[" + length(from) + ", " + length(to) + "]";
    }
    /// A text that may be left out.
    void words(std::string_view key, const std::string& text) {
        if (!text.empty())
            line(key, inQuotes(text));
    }

    Units m_units;
    std::string m_text;
};

/// The word for a choice, in quotes; `words` in the order of the enumeration.
template <class E> std::string word(E value, std::initializer_list<const char*> words) {
    return inQuotes(words.begin()[static_cast<std::size_t>(value)]);
}

void Writer::planking(const Planking& planking) {
    heading("[planking]");
    line("lay-on", word(planking.layOn, {"moulds", "mid-thickness", "outside"}));
    const StartLine& start = planking.start;
    std::string startText =
        "{ line = " + word(start.kind, {"sheer", "geodesic", "bent", "easiest", "knuckle"});
    if (start.kind == StartLine::Kind::Geodesic || start.kind == StartLine::Kind::Bent)
        startText += ", girth = " + length(start.girth);
    if (start.kind == StartLine::Kind::Bent)
        startText += ", edge-bend = [" + shortestDigits(start.edgeBend[0]) + ", " +
                     shortestDigits(start.edgeBend[1]) + ", " + shortestDigits(start.edgeBend[2]) + "]";
    line("start", startText + " }");
    std::string limits;
    if (planking.edgeBendRadius)
        limits = "edge-bend-radius = " + length(*planking.edgeBendRadius);
    if (planking.narrowest)
        limits += (limits.empty() ? "" : ", ") + std::string("narrowest = ") + length(*planking.narrowest);
    if (!limits.empty())
        line("limits", "{ " + limits + " }");
    line("taper", word(planking.taper, {"none", "ends", "anywhere"}));
    std::string accents;
    for (const Accent& accent : planking.accents)
        accents += (accents.empty() ? "{ " : ", { ") +
                   std::string(accent.by == Accent::By::Girth ? "girth = " : "height = ") +
                   length(accent.at) + " }";
    if (!accents.empty())
        line("accents", "[" + accents + "]");
    line("ends",
         "{ bow = " + word(planking.bowEnds, {"weave", "mitre", "stem"}) +
             ", stern = " + word(planking.sternEnds, {"weave", "mitre", "stem"}) + " }");
    std::string closing =
        "{ method = " + word(planking.closing, {"both-sides", "run-over", "herringbone", "split-bottom"});
    if (planking.shutter)
        closing += ", shutter = [" + shortestDigits((*planking.shutter)[0]) + ", " +
                   shortestDigits((*planking.shutter)[1]) + "]";
    line("closing", closing + " }");
}

void Writer::moulds(const MouldChoices& moulds) {
    if (moulds == usualMoulds(m_units))
        return;
    heading("[moulds]");
    line("thickness", length(moulds.thickness));
    if (moulds.spacing)
        line("spacing", length(*moulds.spacing));
    std::string stations;
    for (const double x : moulds.stations)
        stations += (stations.empty() ? "[" : ", ") + length(x);
    if (!stations.empty())
        line("stations", stations + "]");
    line("shape", word(moulds.shape, {"half", "whole"}));
    line("strongback",
         "{ width = " + length(moulds.strongback.width) + ", height = " + length(moulds.strongback.height) +
             ", clear = " + length(moulds.strongback.clear) + " }");
    if (moulds.holes)
        line("holes",
             "{ pitch = " + length(moulds.holes->pitch) + ", inset = " + length(moulds.holes->inset) +
                 ", diameter = " + length(moulds.holes->diameter) + " }");
    line("kerf", length(moulds.kerf));
    for (const SheetSize& size : moulds.sheets) {
        heading("[[moulds.sheet]]");
        line("length", length(size.length));
        line("width", length(size.width));
        if (size.count)
            line("count", std::to_string(*size.count));
    }
}

void Writer::stock(const Stock& stock) {
    heading("[stock]");
    line("kerf", length(stock.kerf));
    line("planing", length(stock.planing));
    line("jointing", length(stock.jointing));
    line("surfacing", length(stock.surfacing));
    line("end-trim", length(stock.endTrim));
    line("spare", shortestDigits(stock.spare));
    line("scarf-slope", shortestDigits(stock.scarfSlope));
    if (stock.longestPiece)
        line("longest-piece", length(*stock.longestPiece));
    line("shortest-piece", length(stock.shortestPiece));
    line("joint-worth", length(stock.jointWorth));
    line("sides", word(stock.sides, {"mirror", "stagger", "book-matched"}));
    if (stock.lots.empty())
        line("lot", "[]");
    for (const BoardLot& lot : stock.lots) {
        heading("[[stock.lot]]");
        line("name", inQuotes(lot.name));
        line("wood", inQuotes(lot.wood));
        line("thickness", length(lot.thickness));
        line("width", length(lot.width));
        line("length", length(lot.length));
        line("charged-thickness", length(lot.chargedThickness));
        if (lot.count)
            line("count", std::to_string(*lot.count));
        if (lot.price)
            line("price", shortestDigits(*lot.price));
        std::string defects;
        for (const auto& [from, to] : lot.defects)
            defects += (defects.empty() ? "[" : ", ") + pair(from, to);
        if (!defects.empty())
            line("defects", defects + "]");
    }
    for (const WoodRule& rule : stock.woodRules) {
        heading("[[stock.wood-rule]]");
        line("wood", inQuotes(rule.wood));
        if (rule.girth)
            line("girth", pair((*rule.girth)[0], (*rule.girth)[1]));
        else
            line("rows", "[" + std::to_string(rule.firstRow) + ", " + std::to_string(rule.lastRow) + "]");
        line("every", std::to_string(rule.every));
    }
}

void Writer::journal(const Journal& journal) {
    for (const RowReading& reading : journal.readings) {
        heading("[[journal.reading]]");
        line("row", std::to_string(reading.row));
        line("side", word(reading.side, {"both", "starboard", "port"}));
        if (reading.sd != RowReading{}.sd) // the usual one is left unsaid
            line("sd", length(reading.sd));
        words("date", reading.date);
        std::string girths;
        for (const GirthLeft& g : reading.girthLeft)
            girths += "    { x = " + length(g.x, g.printedX) +
                      ", girth = " + length(g.girth, g.printedGirth) + " },\n";
        line("girth-left", girths.empty() ? "[]" : "[\n" + girths + "]");
    }
    for (const LaidStrip& laid : journal.laid) {
        heading("[[journal.laid]]");
        line("strip", inQuotes(laid.strip));
        words("date", laid.date);
        words("note", laid.note);
    }
}

void Writer::asides(const std::vector<PutAside>& asides) {
    for (const PutAside& aside : asides) {
        heading("[[put-aside]]");
        line("code", inQuotes(aside.code));
        line("level", inQuotes(toText(aside.level)));
        if (aside.strip)
            line("strip", inQuotes(*aside.strip));
        if (aside.x)
            line("from-bow", length(*aside.x));
        words("text", aside.text);
        line("reason", inQuotes(aside.note.reason));
        words("date", aside.note.date);
    }
}

} // namespace

std::string writeProject(const Project& project) {
    Writer out(project.units);
    out.comment("A Sheerlay project. Plain numbers are in the file's units; lengths may also be written as "
                "\"1-3-4+\" or \"15 3/4 in\".");
    out.line("format", "1");
    out.line("name", inQuotes(project.name));
    out.line("units", project.units == Units::Inches ? "\"in\"" : "\"mm\"");
    if (project.language != Language::English || !(project.paper == PaperChoices{})) {
        out.heading("[project]");
        if (project.language != Language::English)
            out.line("language", inQuotes(std::string(nameOf(project.language).code)));
        for (const auto& [name, size] : papers)
            if (project.paper.size == size)
                out.line("paper", inQuotes(std::string(name)));
        if (project.paper.severalRows)
            out.line("rows-a-page", inQuotes("several"));
    }
    out.heading("[hull]");
    out.line("drawn-to", project.hull.drawnTo == DrawnTo::Outside ? "\"outside\"" : "\"moulds\"");
    out.line("rounded-to", out.length(project.hull.roundedTo));
    out.line("fairing", shortestDigits(project.hull.fairing));
    out.profile(project.hull);
    for (const Station& station : project.hull.stations)
        out.station(station);
    for (const Transom& transom : project.hull.transoms) {
        out.heading("[[hull.transom]]");
        out.line("end", transom.end == End::Bow ? "\"bow\"" : "\"stern\"");
        out.line("x-at-sheer", out.length(transom.xAtSheer));
        out.line("x-at-keel", out.length(transom.xAtKeel));
    }
    out.heading("[strips]");
    out.line("thickness", out.length(project.strips.thickness));
    out.line("width", out.length(project.strips.width));
    out.line("cover-width", out.length(project.strips.coverWidth));
    out.line("wood", inQuotes(project.strips.wood));
    out.planking(project.planking);
    out.moulds(project.moulds);
    if (project.stock)
        out.stock(*project.stock);
    if (project.fitout)
        out.add(fitoutText(*project.fitout, project.units));
    if (project.covering)
        out.add(coveringText(*project.covering, project.units));
    if (project.afloat)
        out.add(afloatText(*project.afloat, project.units));
    out.add(pricesText(project.prices, project.units));
    out.journal(project.journal);
    out.asides(project.putAside);
    return std::move(out).text();
}

} // namespace sheerlay::core
