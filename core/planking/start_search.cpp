#include "core/planking/start_search.hpp"

#include "core/planking/difficulty.hpp"
#include "core/planking/parallel_for.hpp"
#include "core/planking/start_line.hpp"
#include "core/planking/trim_crossing.hpp"

#include <algorithm>
#include <array>
#include <atomic>
#include <cmath>

namespace sheerlay::core {
namespace {

constexpr double nodeSpacing = 25.0;     // mm; wider nodes hide peaks near the stems
constexpr double normPower = 24.0;       // high enough to follow the maximum, low enough to be smooth
constexpr double bentMustGain = 0.02e-3; // 1/mm over the best geodesic
constexpr double sheerMayLose = 0.03e-3; // 1/mm
constexpr double foldedJacobi = 0.2;
constexpr double hopeless = 1.0; // 1/mm

/// Edge bends of all rows of one start, node by node.
struct Bends {
    StartCandidate summary;
    double norm = hopeless;
};

std::optional<Bends> bendsOf(const LoftedHull& hull, const StartLine& line, const StripStock& strips) {
    const double w = strips.coverWidth;
    const BendLimits limits = bendLimits(strips.width);
    if (hull.laid.surface.crease()) // no row can run across it, so no line from sheer to keel compares
        return std::nullopt;
    const auto master = startLine(hull.laid, line, nodeSpacing);
    if (!master || master->size() < 8)
        return std::nullopt;
    Bends bends;
    StartCandidate& c = bends.summary;
    c.line = line;
    double sum = 0;
    double largest = 1e-9;
    std::vector<double> all;
    const auto run = [&](geometry::FanSide side) {
        geometry::ParallelFan fan(hull.laid.surface, *master, side, rowBox(hull.laid));
        fan.advance(0.5 * w);
        for (int k = 1; k <= 400; ++k) {
            bool any = false;
            double worstOfRow = 0;
            for (const geometry::RowNode& n : fan.row()) {
                if (!n.alive || !insideHull(hull.laid, n.state.uv, n.jet.p))
                    continue;
                any = true;
                const double bend = n.state.jacobi < foldedJacobi ? hopeless : std::abs(n.edgeBend);
                all.push_back(bend);
                worstOfRow = std::max(worstOfRow, bend);
                if (bend > c.worst) {
                    c.worst = bend;
                    c.worstRow = side == geometry::FanSide::TowardKeel ? k : -k;
                    c.worstX = n.jet.p.x();
                }
            }
            if (!any)
                break;
            (side == geometry::FanSide::TowardKeel ? c.rowsToKeel : c.rowsToSheer) = k;
            c.rowsOverFree += worstOfRow > limits.free;
            c.rowsOverClamp += worstOfRow > limits.clamp;
            if (worstOfRow >= hopeless)
                break;
            fan.advance(w);
        }
    };
    run(geometry::FanSide::TowardKeel);
    if (line.kind != StartLine::Kind::Sheer)
        run(geometry::FanSide::TowardSheer);
    if (all.empty())
        return std::nullopt;
    for (const double b : all)
        largest = std::max(largest, b);
    for (const double b : all)
        sum += std::pow(b / largest, normPower);
    bends.norm = largest * std::pow(sum / static_cast<double>(all.size()), 1 / normPower);
    return bends;
}

/// Girth in mm and the profile in 1/m, scaled so that the simplex is about round.
using Point = std::array<double, 4>;

StartLine bentLine(const Point& p, double girthMax) {
    StartLine line;
    line.kind = StartLine::Kind::Bent;
    line.girth = std::clamp(p[0] * 100, 0.0, 0.97 * girthMax);
    line.edgeBend = {p[1] * 0.1, p[2] * 0.1, p[3] * 0.1};
    return line;
}

/// Nelder and Mead's simplex, A Simplex Method for Function Minimization, Computer Journal 7 (1965).
template <class F>
Point simplex(Point start, double size, int evaluations, F f, const std::stop_token& stop) {
    struct Vertex {
        Point at;
        double value;
    };
    std::vector<Vertex> s;
    s.push_back({start, f(start)});
    for (std::size_t i = 0; i < start.size(); ++i) {
        Point p = start;
        p[i] += size;
        s.push_back({p, f(p)});
    }
    int used = static_cast<int>(s.size());
    const auto along = [&](const Point& centre, const Point& from, double t) {
        Point p{};
        for (std::size_t i = 0; i < p.size(); ++i)
            p[i] = centre[i] + t * (from[i] - centre[i]);
        return p;
    };
    while (used < evaluations && !stop.stop_requested()) {
        std::stable_sort(
            s.begin(), s.end(), [](const Vertex& a, const Vertex& b) { return a.value < b.value; });
        Point centre{};
        for (std::size_t k = 0; k + 1 < s.size(); ++k)
            for (std::size_t i = 0; i < centre.size(); ++i)
                centre[i] += s[k].at[i] / static_cast<double>(s.size() - 1);
        Vertex& last = s.back();
        const Point reflected = along(centre, last.at, -1);
        const double value = f(reflected);
        ++used;
        if (value < s.front().value) {
            const Point further = along(centre, last.at, -2);
            const double there = f(further);
            ++used;
            last = there < value ? Vertex{further, there} : Vertex{reflected, value};
        } else if (value < s[s.size() - 2].value) {
            last = {reflected, value};
        } else {
            const Point nearer = along(centre, last.at, value < last.value ? -0.5 : 0.5);
            const double there = f(nearer);
            ++used;
            if (there < std::min(value, last.value)) {
                last = {nearer, there};
            } else {
                for (std::size_t k = 1; k < s.size(); ++k) {
                    s[k].at = along(s[0].at, s[k].at, 0.5);
                    s[k].value = f(s[k].at);
                    ++used;
                }
            }
        }
    }
    return std::min_element(
               s.begin(), s.end(), [](const Vertex& a, const Vertex& b) { return a.value < b.value; })
        ->at;
}

} // namespace

std::optional<StartCandidate>
judgeStart(const LoftedHull& hull, const StartLine& line, const StripStock& strips) {
    const auto bends = bendsOf(hull, line, strips);
    return bends ? std::optional(bends->summary) : std::nullopt;
}

StartSearch searchStart(const LoftedHull& hull,
                        const StripStock& strips,
                        unsigned threads,
                        const std::function<void(double)>& progress,
                        std::stop_token stop) {
    StartSearch search;
    const auto tell = [&](double part) {
        if (progress)
            progress(part);
    };
    const double girthMax = hull.laid.halfGirthMax;
    const auto geodesicAt = [&](double girth) {
        StartLine line;
        line.kind = StartLine::Kind::Geodesic;
        line.girth = girth;
        return judgeStart(hull, line, strips);
    };
    if (const auto sheer = judgeStart(hull, StartLine{}, strips))
        search.candidates.push_back(*sheer);

    // girth first: a coarse row of geodesics, then closer about the best
    std::vector<std::optional<StartCandidate>> geodesics(10);
    parallelFor(geodesics.size(), threads, [&](std::size_t i) {
        if (!stop.stop_requested())
            geodesics[i] = geodesicAt(girthMax * 0.09 * static_cast<double>(i));
    });
    tell(0.1);
    const auto bestOf = [&](const std::vector<std::optional<StartCandidate>>& list) {
        const StartCandidate* best = nullptr;
        for (const auto& c : list)
            if (c && (!best || c->worst < best->worst))
                best = &*c;
        return best;
    };
    double step = 0.03 * girthMax;
    for (int round = 0; round < 2 && bestOf(geodesics) && !stop.stop_requested(); ++round, step /= 3) {
        const double centre = bestOf(geodesics)->line.girth;
        std::vector<std::optional<StartCandidate>> closer(4);
        const std::array<double, 4> offset = {-2 * step, -step, step, 2 * step};
        parallelFor(closer.size(), threads, [&](std::size_t i) {
            const double girth = centre + offset[i];
            if (girth >= 0 && girth < 0.97 * girthMax)
                closer[i] = geodesicAt(girth);
        });
        geodesics.insert(geodesics.end(), closer.begin(), closer.end());
    }
    tell(0.2);
    const StartCandidate* bestGeodesic = bestOf(geodesics);
    std::vector<std::optional<StartCandidate>> bent;
    if (bestGeodesic && !stop.stop_requested()) {
        const double g = bestGeodesic->line.girth / 100;
        const std::array<Point, 4> starts = {Point{g, 0, 0, 0},
                                             Point{g, 0.7, 1.1, -1.5},
                                             Point{0.9 * g, 0.5, -0.5, 0},
                                             Point{0.41 * girthMax / 100, 0.4, 0.6, -0.8}};
        bent.resize(starts.size());
        std::atomic<int> done = 0;
        parallelFor(starts.size(), threads, [&](std::size_t i) {
            const auto value = [&](const Point& p) {
                const auto b = bendsOf(hull, bentLine(p, girthMax), strips);
                return b ? b->norm : hopeless;
            };
            const Point found = simplex(starts[i], 0.5, 90, value, stop);
            bent[i] = judgeStart(hull, bentLine(found, girthMax), strips);
            tell(0.2 + 0.2 * ++done);
        });
    }
    const auto keep = [&](std::vector<std::optional<StartCandidate>>& list) {
        std::stable_sort(list.begin(), list.end(), [](const auto& a, const auto& b) {
            return (a ? a->line.girth : 1e9) < (b ? b->line.girth : 1e9);
        });
        for (const auto& c : list)
            if (c)
                search.candidates.push_back(*c);
    };
    keep(geodesics);
    keep(bent);
    search.cancelled = stop.stop_requested();

    const auto bestKind = [&](StartLine::Kind kind) -> std::optional<std::size_t> {
        std::optional<std::size_t> best;
        for (std::size_t i = 0; i < search.candidates.size(); ++i)
            if (search.candidates[i].line.kind == kind &&
                (!best || search.candidates[i].worst < search.candidates[*best].worst))
                best = i;
        return best;
    };
    const auto geodesic = bestKind(StartLine::Kind::Geodesic);
    const auto curved = bestKind(StartLine::Kind::Bent);
    const auto sheer = bestKind(StartLine::Kind::Sheer);
    std::optional<std::size_t> best = geodesic;
    if (curved && (!best || search.candidates[*curved].worst < search.candidates[*best].worst - bentMustGain))
        best = curved;
    search.sheerWillDo =
        sheer && (!best || search.candidates[*sheer].rowsOverFree == 0 ||
                  search.candidates[*sheer].worst <= search.candidates[*best].worst + sheerMayLose);
    if (search.sheerWillDo)
        best = sheer;
    search.best = best.value_or(0);
    return search;
}

} // namespace sheerlay::core
