#include "core/planking/taper_field.hpp"

#include "core/planking/few_strips.hpp"
#include "core/planking/start_chart.hpp"
#include "core/planking/stealer_bands.hpp"
#include "core/planking/taper_edges.hpp"

#include <algorithm>
#include <cstddef>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace sheerlay::core {
namespace {

constexpr double letPass = 1.02;    // an edge this close to the limit has met it
constexpr double letGo = 1.005;     // leaving strips whole may cost this much
constexpr double touchedFrom = 0.3; // mm
constexpr double whole = 0.05;      // mm: what is narrowed less everywhere is left full
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

/// Solves again about the present edges, with some strips held full. Where slants have changed since, bounds
/// close about the present edges can leave no room: then they are widened.
bool settle(TaperEdges& edges, const std::vector<char>& held, double move) {
    for (const double room : {1.0, 4.0, 1000.0}) {
        TaperSolver solver(edges.program(room * move));
        if (!held.empty())
            solver.holdFull(held);
        if (!solver.solve())
            continue;
        edges.take(solver.coefficients());
        return true;
    }
    return false;
}

/// What bands at these rows would reach, roughly: the shape of the edges alone.
std::optional<FieldScore>
tryBands(const StartChart& chart, const TaperWish& wish, const std::vector<std::size_t>& bands) {
    TaperEdges edges(chart, wish, bands);
    for (const double move : {1e4, 25.0}) {
        if (!settle(edges, {}, move))
            return std::nullopt;
        edges.forbidShortStealers(shortestStealer);
    }
    return reachOf(edges, wish.limit).score;
}

/// The whole field with bands at the given rows.
Expected<TaperedField, std::string> solveField(const StartChart& chart,
                                               const TaperWish& wish,
                                               const std::vector<std::size_t>& bands,
                                               const std::stop_token& stop) {
    TaperEdges edges(chart, wish, bands);
    TaperedField result;
    if (edges.empty())
        return result; // no row lies on this side
    result.plainWorst = reachOf(edges, wish.limit).worst;
    if (result.plainWorst <= wish.limit) {
        result.worst = result.plainWorst;
        return result;
    }
    const auto keep = [&] { // the field gets more edges as its rows narrow
        std::vector<char> full(edges.count(), 0);
        for (const std::size_t row : wish.keepFull)
            if (row < full.size())
                full[row] = 1;
        return full;
    };
    // the shape that costs least wood; each solution is a better place to linearise about
    for (const double move : {1e4, 25.0, 12.0}) {
        if (stop.stop_requested())
            return unexpected(std::string(stopped));
        if (!settle(edges, keep(), move))
            return unexpected(std::string("the tapers could not be solved for"));
        edges.forbidShortStealers(shortestStealer);
        edges.coverHull();
    }
    const Reach reachable = reachOf(edges, wish.limit);

    // the same with the wood taken from few strips: proposals from the fewest on, until one still keeps the
    // limit when linearised again; if none does, once more from a better place
    std::vector<char> held = keep();
    bool found = false;
    for (int attempt = 0; attempt < 2 && !found; ++attempt) {
        const TaperEdges base = edges;
        for (const StripChoice& choice : fewStrips(base, keep(), stop)) {
            edges.take(choice.coefficients);
            for (const double move : {25.0, 12.0, 6.0}) {
                if (stop.stop_requested())
                    return unexpected(std::string(stopped));
                if (!settle(edges, choice.held, move))
                    break;
                const Reach reach = reachOf(edges, wish.limit);
                found = reach.metFrom <= reachable.metFrom &&
                        reach.worst <= std::max(wish.limit, reachable.worst * letGo);
                if (found)
                    break;
            }
            if (found) {
                held = choice.held;
                break;
            }
            edges = base;
        }
        if (!found && !settle(edges, keep(), 6.0))
            break;
    }
    if (stop.stop_requested())
        return unexpected(std::string(stopped));
    for (std::size_t e = 1; e <= edges.count(); ++e)
        held[e - 1] = held[e - 1] || edges.narrowing(e) < whole;

    const Reach reach = reachOf(edges, wish.limit);
    result.worst = reach.worst;
    result.metFrom = reach.metFrom;
    result.wood = edges.wood();
    for (std::size_t e = 1; e <= edges.count(); ++e) {
        if (edges.isBand(e))
            result.bands.push_back({e - 1, edges.widthOf(e)});
        const bool cut = !held[e - 1] && !edges.isBand(e);
        result.rows.push_back(cut ? edges.widthOf(e) : RowWidth());
        result.touched += cut ? 1 : 0;
    }
    result.score = reach.score;
    return result;
}

} // namespace

Expected<TaperedField, std::string> taperField(const TrimmedSurface& hull,
                                               const std::vector<geometry::MasterNode>& master,
                                               const TaperWish& wish,
                                               std::stop_token stop) {
    const StartChart chart(hull, master, taperSpacing, wish.side, wish.coverWidth / 2);
    auto plain = solveField(chart, wish, {}, stop);
    if (!plain || !wish.stealers || plain->score.edgesOver == 0)
        return plain;
    const auto score = [&](const std::vector<std::size_t>& bands) -> std::optional<FieldScore> {
        if (stop.stop_requested())
            return std::nullopt;
        return tryBands(chart, wish, bands);
    };
    TaperWish atWill = wish;
    atWill.narrowest /= 2; // as a band in every row would have it
    const auto forced = tryBands(chart, atWill, {});
    if (!forced)
        return plain;
    const std::vector<std::size_t> bands = chooseBands(plain->score, *forced, plain->rows.size(), score);
    if (bands.empty())
        return plain;
    auto banded = solveField(chart, wish, bands, stop);
    return banded && banded->score < plain->score ? banded : plain;
}

} // namespace sheerlay::core
