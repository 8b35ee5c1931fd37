#include "core/materials/materials.hpp"

#include "core/patterns/nest_sheets.hpp"
#include "core/project/wood.hpp"
#include "core/sheets/words.hpp"
#include "core/stock/row_woods.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/units/weight.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr double mmPerYard = 3 * mmPerFoot, mmPerMetre = 1000.0;
constexpr double ouncesPerGallon = 128.0;

class Lister {
public:
    Lister(const Project& project, Units units)
        : m_project(project), m_prices(project.prices), m_inches(units == Units::Inches) {}

    void boards(const StockPlan& stock) {
        for (const LotUse& use : stock.lots)
            if (use.boards > 0)
                m_all.push_back({Shop::Wood,
                                 say("{} boards, lot {}", spoken(use.lot.wood), use.lot.name),
                                 sizeText(use.lot, units()),
                                 static_cast<double>(use.boards),
                                 sayable("boards"),
                                 use.lot.price,
                                 use.cost});
    }
    void strips(const Plan& plan) {
        const auto woods = rowWoods(m_project, plan);
        const double spare = 1 + Stock{}.spare;
        std::map<std::string, double> run;
        for (const Strip& strip : plan.strips)
            run[woods.at(strip.row)] += spare * strip.cutLength;
        for (const auto& [wood, length] : run)
            length_(Shop::Wood,
                    say("strips, {}, {} percent spare in it", spoken(wood), numberText(100 * (spare - 1), 0)),
                    section(m_project.strips.thickness, m_project.strips.width),
                    length,
                    m_prices.strip);
    }
    /// @param what  with places for wood, pieces and the longest
    void gunwale(const char* what, const Gunwale& g) {
        double run = 0.0, longest = 0.0;
        for (const GunwalePiece& piece : g.pieces) {
            run += 2 * piece.length();
            longest = std::max(longest, piece.length());
        }
        if (g.pieces.empty()) { // no stock is long enough: the whole is told
            run = 2 * g.cutLength;
            longest = g.cutLength;
        }
        length_(
            Shop::Wood,
            say(what, fitWood(), 2 * std::max<std::size_t>(1, g.pieces.size()), pieceText(longest, units())),
            section(g.size.width, g.size.height),
            run,
            m_prices.stick);
    }
    void crossPieces(const Fitout& fitout) {
        std::map<std::string, double> run;
        double hangers = 0.0;
        const auto bar = [&](const BoltedPiece& part) {
            const CrossPiece& p = part.piece;
            run[section(p.width, p.height)] += std::max({p.frontTop, p.backTop, p.frontBottom, p.backBottom});
            if (part.bolt)
                hangers += 2 * std::max(0.0, part.bolt->hanger);
        };
        for (const Seat& s : fitout.seats) {
            bar(s.front);
            bar(s.back);
            run[section(s.choice.rail.width, s.choice.rail.height)] += 2 * s.sideRail;
        }
        for (const Thwart& t : fitout.thwarts)
            bar(t.bar);
        if (fitout.yoke)
            bar(fitout.yoke->bar);
        for (const auto& [size, length] : run)
            length_(Shop::Wood,
                    say("seats, thwarts and yoke, {}, tenons not counted", fitWood()),
                    size,
                    length,
                    m_prices.stick);
        length_(
            Shop::Wood, say("hangers, {}", fitWood()), say("as wide as the rails"), hangers, m_prices.stick);
    }
    /// Bulkheads and decks of one thickness on sheets of 8 by 4 ft.
    void plywood(const Fitout& fitout) {
        std::map<double, std::vector<std::vector<Eigen::Vector2d>>> parts;
        for (const Bulkhead& b : fitout.bulkheads)
            parts[b.choice.thickness].push_back(b.outline);
        for (const Deck& d : fitout.decks)
            parts[d.choice.thickness].push_back(d.flat);
        for (const auto& [thickness, outlines] : parts) {
            const Nesting nesting = nest(outlines, SheetGoods{});
            const std::size_t sheets = nesting.sheets.size() + nesting.tooLarge.size();
            this->sheets(
                say("plywood for bulkheads and decks"), thickness, SheetSize{}, sheets, m_prices.plywood);
        }
    }
    void moulds(const LoftedHull& hull) {
        const auto set = mouldsOf(m_project, hull);
        if (!set)
            return;
        const NestedBoards boards = nestMoulds(*set, m_project.moulds);
        std::map<std::size_t, std::size_t> count;
        for (const NestedSheet& sheet : boards.nesting.sheets)
            ++count[sheet.size];
        for (const auto& [size, number] : count)
            sheets(say("plywood for moulds and stem forms"),
                   m_project.moulds.thickness,
                   boards.goods.sizes[size],
                   number,
                   m_prices.mouldBoard);
    }
    void cloth(const FaceCovering& f) {
        const double ounces = f.choices.cloth / gsmPerOunce;
        const std::string what =
            m_inches ? say("cloth, {}, {} oz to the square yard", f.name, numberText(ounces, 1))
                     : say("cloth, {}, {} g to the square metre", f.name, numberText(f.choices.cloth, 0));
        add(Shop::Glass,
            what,
            say("{} roll", stockText(f.choices.roll, units())),
            upTo(f.fromRoll / (m_inches ? mmPerYard : mmPerMetre), 0.5),
            m_inches ? "yd" : "m",
            perUnit(f.bulkheads           ? m_prices.clothBulkheads
                    : f.name == "outside" ? m_prices.clothOutside
                                          : m_prices.clothInside,
                    m_inches ? mmPerYard / mmPerMetre : 1.0));
    }
    void resin(const AfterPlanking& after) {
        double mixed = after.covering ? after.covering->litres : 0.0, wood = 0.0;
        for (const GlueUse& g : after.glue)
            (g.epoxy ? mixed : wood) += g.litres;
        const CoveringChoices choices = m_project.covering.value_or(CoveringChoices{});
        CoveringPlan plan;
        plan.mix = choices.mix;
        if (const auto parts = plan.litresOf(mixed)) {
            litres(say("resin"), parts->resin, m_prices.resin);
            litres(say("hardener"), parts->hardener, m_prices.hardener);
        } else if (const auto masses = plan.kilogramsOf(mixed, choices.liquidDensity)) {
            const double litre = choices.liquidDensity; // kg; of either, as of both together
            kilograms(say("resin"), masses->resin, perUnit(m_prices.resin, 1 / litre));
            kilograms(say("hardener"), masses->hardener, perUnit(m_prices.hardener, 1 / litre));
        } else {
            litres(say("resin and hardener together"), mixed, std::nullopt); // in parts that nobody told
        }
        litres(say("glue for wood, for the strips' edges"), wood, m_prices.glue);
        litres(say("varnish"), after.covering ? after.covering->varnish : 0.0, m_prices.varnish);
    }
    void fastenings(const AfterPlanking& after) {
        std::map<double, int> bolts; // by length
        const double step = m_inches ? mmPerInch / 4 : 5.0;
        for (const Fastening& f : after.fastenings)
            if (f.kind == Fastening::Kind::Screw)
                add(Shop::Fastenings,
                    say("wood screws, {}", f.what),
                    screwSize(f.diameter, std::floor(f.length / step + 1e-6) * step),
                    f.count,
                    sayable("screws"),
                    m_prices.screw);
            else
                bolts[std::ceil(f.length / step - 1e-6) * step] += f.count;
        for (const auto& [length, count] : bolts)
            add(Shop::Fastenings,
                say("bolts with nut and two washers"),
                say("{} by {}", boltText(), formatLength(length, units(), 4)),
                count,
                sayable("bolts"),
                m_prices.bolt);
        if (!after.fitout)
            return;
        if (after.fitout->gunwales && after.fitout->gunwales->plugCount > 0)
            add(Shop::Fastenings,
                say("wooden plugs"),
                "",
                after.fitout->gunwales->plugCount,
                sayable("plugs"),
                m_prices.plug);
        double cane = 0.0;
        for (const Seat& s : after.fitout->seats)
            cane += s.caning ? s.caning->cane : 0.0;
        length_(Shop::Fastenings, say("cane for seats"), "", cane, m_prices.cane);
    }
    std::vector<Material> take() { return std::move(m_all); }

private:
    [[nodiscard]] Units units() const { return m_inches ? Units::Inches : Units::Millimetres; }
    [[nodiscard]] std::string fitWood() const {
        return spoken(m_project.fitout ? m_project.fitout->wood : FitoutChoices{}.wood);
    }
    [[nodiscard]] std::string section(double one, double other) const {
        return say("{} by {}", stockText(one, units()), stockText(other, units()));
    }
    static double upTo(double amount, double step) { return std::ceil(amount / step - 1e-9) * step; }

    /// Wood screws go by number: diameter in inches 0.060 + 0.013 n (ASME B18.6.1, from memory).
    [[nodiscard]] std::string screwSize(double diameter, double length) const {
        const std::string long_ = formatLength(length, units(), 4);
        if (!m_inches)
            return say("{} by {}", numberText(diameter, 1) + " mm", long_);
        return say("No. {} by {}",
                   numberText(std::max(0.0, std::round((diameter / mmPerInch - 0.060) / 0.013)), 0),
                   long_);
    }
    [[nodiscard]] std::string boltText() const {
        const double across =
            m_project.fitout ? m_project.fitout->boltDiameter : FitoutChoices{}.boltDiameter;
        return m_inches ? formatLength(across, units(), 16)
                        : numberText(std::floor(across + 1e-6), 0) + " mm";
    }
    /// A price of one of `unit` where it is told of another. @param part  what one is of the other
    static std::optional<double> perUnit(const std::optional<double>& price, double part) {
        return price ? std::optional(*price * part) : std::nullopt;
    }

    void add(Shop shop,
             std::string what,
             std::string size,
             double amount,
             std::string unit,
             const std::optional<double>& price) {
        if (amount > 0.0)
            m_all.push_back({shop,
                             std::move(what),
                             std::move(size),
                             amount,
                             std::move(unit),
                             price,
                             perUnit(price, amount)});
    }
    /// @param price  of a metre
    void length_(Shop shop,
                 std::string what,
                 std::string size,
                 double millimetres,
                 const std::optional<double>& price) {
        add(shop,
            std::move(what),
            std::move(size),
            m_inches ? upTo(millimetres / mmPerFoot, 1.0) : upTo(millimetres / mmPerMetre, 0.1),
            m_inches ? "ft" : "m",
            perUnit(price, m_inches ? mmPerFoot / mmPerMetre : 1.0));
    }
    /// @param price  of a litre
    void litres(const std::string& what, double litres, const std::optional<double>& price) {
        add(Shop::Resin,
            what,
            "",
            m_inches ? upTo(litres / litresPerGallon * ouncesPerGallon, 1.0) : upTo(litres, 0.05),
            m_inches ? "fl oz" : "L",
            perUnit(price, m_inches ? litresPerGallon / ouncesPerGallon : 1.0));
    }
    /// @param price  of a kilogram
    void kilograms(const std::string& what, double mass, const std::optional<double>& price) {
        add(Shop::Resin,
            what,
            "",
            m_inches ? upTo(mass / kgPerPound, 0.1) : upTo(mass, 0.05),
            m_inches ? "lb" : "kg",
            perUnit(price, m_inches ? kgPerPound : 1.0));
    }
    /// @param price  of a sheet
    void sheets(const std::string& what,
                double thickness,
                const SheetSize& size,
                std::size_t count,
                const std::optional<double>& price) {
        add(Shop::Wood,
            what,
            say("{}, {} by {}",
                stockText(thickness, units()),
                formatLength(size.length, units(), 4),
                formatLength(size.width, units(), 4)),
            static_cast<double>(count),
            sayable("sheets"),
            price);
    }

    const Project& m_project;
    const Prices& m_prices;
    bool m_inches;
    std::vector<Material> m_all;
};

} // namespace

const char* toText(Shop shop) noexcept {
    switch (shop) {
    case Shop::Glass:
        return "glass";
    case Shop::Resin:
        return "resin";
    case Shop::Fastenings:
        return "fastenings";
    case Shop::Wood:
        break;
    }
    return "wood";
}

std::vector<Material>
materialsOf(const Project& project, const LoftedHull& hull, const ShopPlan& shop, Units units) {
    Lister list(project, units);
    if (shop.stock)
        list.boards(*shop.stock);
    else
        list.strips(shop.plan);
    if (const auto& fitout = shop.after.fitout) {
        if (fitout->gunwales) {
            list.gunwale(sayable("inner gunwale, {}, {} pieces of at most {}"), fitout->gunwales->inner);
            list.gunwale(sayable("outer gunwale, {}, {} pieces of at most {}"), fitout->gunwales->outer);
        }
        list.crossPieces(*fitout);
        list.plywood(*fitout);
    }
    list.moulds(hull);
    if (shop.after.covering)
        for (const FaceCovering& face : shop.after.covering->faces)
            list.cloth(face);
    list.resin(shop.after);
    list.fastenings(shop.after);
    return list.take();
}

MaterialSum sumOf(const std::vector<Material>& materials, std::optional<Shop> shop) {
    MaterialSum sum;
    for (const Material& m : materials)
        if (!shop || m.shop == *shop) {
            ++(m.cost ? sum.priced : sum.unpriced);
            sum.cost += m.cost.value_or(0.0);
        }
    return sum;
}

} // namespace sheerlay::core
