#include "core/planking/taper_field.hpp"

#include "core/planking/few_strips.hpp"
#include "core/planking/start_chart.hpp"
#include "core/planking/stealer_bands.hpp"
#include "core/planking/taper_edges.hpp"

#include <algorithm>
#include <cstddef>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace sheerlay::core {
namespace {

constexpr double letPass = 1.02;        // an edge this close to the limit has met it
constexpr double letGo = 1.005;         // leaving strips whole may cost this much
constexpr double outOfReach = 3.0;      // of the limit: so far over it no joint and no choice of strips helps
constexpr double touchedFrom = 0.3;     // mm
constexpr double whole = 0.05;          // mm: what is narrowed less everywhere is left full
constexpr double worthOfStealer = 0.02; // m2 of wood
constexpr double thinnestShare = 0.05;  // of the narrowest, when asking where a row would vanish
constexpr int needRounds = 3;           // of prices
constexpr const char* stopped = "the tapers were stopped";

/// How far a field keeps its limit.
struct Reach {
    double worst = 0.0; // 1/mm
    int metFrom = 1;
    FieldScore score;
};

Reach reachOf(const TaperEdges& edges, double limit) {
    Reach r;
    for (std::size_t e = 1; e <= edges.count(); ++e) {
        const double here = edges.worst(e);
        r.worst = std::max(r.worst, here);
        if (here > limit * letPass) {
            r.metFrom = static_cast<int>(e) + 1;
            ++r.score.edgesOver;
        }
        r.score.slack += std::max(0.0, here - limit);
        r.score.touched += edges.narrowing(e) > touchedFrom;
    }
    return r;
}

/// No taper comes near the limit: most edges stay over it, and by far.
bool isHopeless(const Reach& reach, const TaperEdges& edges, double limit) {
    return 2 * reach.score.edgesOver > static_cast<int>(edges.count()) && reach.worst > outOfReach * limit;
}

/// Solves again about the present edges, with some strips held full. Where slants have changed since, bounds
/// close about the present edges can leave no room: then they are widened.
bool settle(TaperEdges& edges, const std::vector<char>& held, double move, bool counted = true) {
    const bool any = std::ranges::count(held, 0) < std::ssize(held);
    for (const double room : {1.0, 4.0, 1000.0}) {
        TaperProgram program = edges.program(room * move);
        program.countsNarrowing = counted || any;
        TaperSolver solver(program, edges.basis());
        if (any)
            solver.holdFull(held);
        if (!solver.solve())
            continue;
        edges.take(solver.coefficients());
        edges.remember(solver.basis());
        return true;
    }
    return false;
}

/// A field while it is solved for.
struct Shape {
    TaperEdges edges;
    Reach reach;
    bool hopeless = false; // no taper comes near the limit
};

/// Per strip, whether it must stay whole; the field gets more edges as its rows narrow, and a field that is
/// asked to keep rows whole has no bands.
std::vector<char> keptWhole(const TaperEdges& edges, const TaperWish& wish) {
    std::vector<char> full(edges.count(), 0);
    for (const std::size_t row : wish.keepFull)
        if (row < full.size())
            full[row] = 1;
    return full;
}

/// The shape that costs least wood; each solution is a better place to linearise about.
Expected<Shape, std::string> leastWood(TaperEdges from, const TaperWish& wish, const std::stop_token& stop) {
    Shape shape{std::move(from), {}};
    TaperEdges& edges = shape.edges;
    for (const double move : {1e4, 25.0, 12.0}) {
        if (stop.stop_requested())
            return unexpected(std::string(stopped));
        if (!settle(edges, keptWhole(edges, wish), move, false))
            return unexpected(std::string("the tapers could not be solved for"));
        edges.forbidShortStealers(shortestStealer);
        edges.coverHull();
        shape.reach = reachOf(edges, wish.limit);
        shape.hopeless = isHopeless(shape.reach, edges, wish.limit);
        if (shape.hopeless)
            break; // and each solution takes long
    }
    return shape;
}

/// Which rows would go below the narrowest strip if they might, with a high price on every row that does.
/// @param edges  of the field without bands, in the shape that costs least wood
std::optional<BandNeed> needOfBands(TaperEdges edges, const TaperWish& wish) {
    TaperProgram program = edges.program(1e4);
    program.wanted = program.narrowest;
    for (double& least : program.narrowest)
        least *= thinnestShare;
    TaperSolver solver(program); // a basis of the field that keeps its bounds only leads astray here
    std::vector<double> price(edges.count(), worthOfStealer / wish.coverWidth);
    for (int round = 0; round < needRounds; ++round) {
        solver.setPrices(price);
        if (!solver.solve())
            return std::nullopt;
        for (std::size_t i = 0; i < price.size(); ++i)
            price[i] = worthOfStealer / (std::max(0.0, solver.narrowing(i)) + touchedFrom);
    }
    BandNeed need;
    for (std::size_t i = 0; i < price.size(); ++i)
        need.below.push_back(std::max(0.0, solver.narrowing(i)));
    edges.take(solver.coefficients());
    need.reached = reachOf(edges, wish.limit).score;
    return need;
}

/// Solves a few times about where edges stand, with some strips held full, until they reach what can be.
bool reachHeld(TaperEdges& edges,
               const std::vector<char>& held,
               const Reach& reachable,
               const TaperWish& wish,
               const std::stop_token& stop) {
    for (const double move : {25.0, 12.0, 6.0}) {
        if (stop.stop_requested() || !settle(edges, held, move))
            return false;
        const Reach reach = reachOf(edges, wish.limit);
        if (reach.metFrom <= reachable.metFrom &&
            reach.worst <= std::max(wish.limit, reachable.worst * letGo))
            return true;
    }
    return false;
}

/// The wood taken from few strips where that costs nothing of the shape's reach.
/// @param first  strips held full another time, tried before all others; may be empty
/// @return the strips left full; none when it was stopped
std::optional<std::vector<char>>
cutFew(Shape& shape, const TaperWish& wish, const std::vector<char>& first, const std::stop_token& stop) {
    TaperEdges& edges = shape.edges;
    const Reach reachable = shape.reach;
    std::vector<char> held = keptWhole(edges, wish);
    bool found = shape.hopeless; // then there is nothing to choose well
    if (!found && first.size() == edges.count()) {
        const TaperEdges base = edges;
        found = reachHeld(edges, first, reachable, wish, stop);
        if (found)
            held = first;
        else
            edges = base;
    }
    // proposals from the fewest strips on, until one still keeps the limit when linearised again; if none
    // does, once more from a better place
    for (int attempt = 0; attempt < 2 && !found; ++attempt) {
        const TaperEdges base = edges;
        for (const StripChoice& choice : fewStrips(base, keptWhole(base, wish), stop)) {
            edges.take(choice.coefficients);
            found = reachHeld(edges, choice.held, reachable, wish, stop);
            if (found) {
                held = choice.held;
                break;
            }
            edges = base;
        }
        if (!found && !settle(edges, keptWhole(edges, wish), 6.0))
            break;
    }
    if (stop.stop_requested())
        return std::nullopt;
    for (std::size_t e = 1; e <= edges.count(); ++e)
        held[e - 1] = held[e - 1] || edges.narrowing(e) < whole;
    shape.reach = reachOf(edges, wish.limit);
    return held;
}

TaperedField fieldOf(const Shape& shape, const std::vector<char>& held) {
    const TaperEdges& edges = shape.edges;
    TaperedField result;
    result.worst = shape.reach.worst;
    result.metFrom = shape.reach.metFrom;
    result.score = shape.reach.score;
    result.hopeless = shape.hopeless;
    result.wood = edges.wood();
    for (std::size_t e = 1; e <= edges.count(); ++e) {
        if (edges.isBand(e))
            result.bands.push_back({e - 1, edges.widthOf(e)});
        const bool cut = !held[e - 1] && !edges.isBand(e);
        result.rows.push_back(cut ? edges.widthOf(e) : RowWidth());
        result.touched += cut ? 1 : 0;
    }
    return result;
}

/// The shape that costs least wood, with stealers where they are wished for and help.
Expected<Shape, std::string> beginShape(const StartChart& chart,
                                        const TaperEdges& full,
                                        const TaperWish& wish,
                                        const std::stop_token& stop) {
    auto shape = leastWood(full, wish, stop);
    if (!shape || !wish.stealers || !wish.keepFull.empty() || shape->reach.score.edgesOver == 0 ||
        shape->hopeless)
        return shape;
    const auto need = needOfBands(shape->edges, wish);
    if (!need)
        return shape;
    std::map<std::vector<std::size_t>, Shape> tried;
    const auto score = [&](const std::vector<std::size_t>& bands) -> std::optional<FieldScore> {
        TaperEdges banded(chart, wish, bands);
        banded.takeWithoutSeams(shape->edges);
        auto there = leastWood(std::move(banded), wish, stop);
        if (!there)
            return std::nullopt;
        return tried.emplace(bands, std::move(*there)).first->second.reach.score;
    };
    const auto bands = chooseBands(shape->reach.score, *need, wish.narrowest, score);
    if (const auto chosen = tried.find(bands); chosen != tried.end())
        shape = std::move(chosen->second);
    return shape;
}

} // namespace

struct TaperMemory {
    std::shared_ptr<const StartChart> chart; // the edges look into it
    TaperEdges leastWood;
    std::vector<char> held; // strips that were left full
    double plainWorst = 0.0;
};

Expected<TaperedField, std::string> taperField(const TrimmedSurface& hull,
                                               const std::vector<geometry::MasterNode>& master,
                                               const TaperWish& wish,
                                               std::stop_token stop,
                                               const TaperedField* before) {
    const TaperMemory* memory = before ? before->memory.get() : nullptr;
    auto chart =
        memory
            ? memory->chart
            : std::make_shared<const StartChart>(hull, master, taperSpacing, wish.side, wish.coverWidth / 2);
    TaperEdges full = memory ? memory->leastWood : TaperEdges(*chart, wish);
    TaperedField plain;
    if (full.empty())
        return plain; // no row lies on this side
    plain.plainWorst = plain.worst = memory ? memory->plainWorst : reachOf(full, wish.limit).worst;
    if (plain.plainWorst <= wish.limit)
        return plain;
    full.setLimit(wish.limit);
    auto shape = memory ? leastWood(std::move(full), wish, stop) : beginShape(*chart, full, wish, stop);
    if (!shape)
        return unexpected(shape.error());
    TaperEdges leastWoodEdges = shape->edges;
    const auto held = cutFew(*shape, wish, memory ? memory->held : std::vector<char>(), stop);
    if (!held)
        return unexpected(std::string(stopped));
    TaperedField field = fieldOf(*shape, *held);
    field.plainWorst = plain.plainWorst;
    field.memory = std::make_shared<const TaperMemory>(
        TaperMemory{std::move(chart), std::move(leastWoodEdges), *held, plain.plainWorst});
    return field;
}

} // namespace sheerlay::core
