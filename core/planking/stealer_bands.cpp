#include "core/planking/stealer_bands.hpp"

#include "core/planking/parallel_for.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace sheerlay::core {
namespace {

constexpr std::size_t mostBands = 5;
constexpr std::size_t coarse = 4; // rows between the first tries
constexpr unsigned threads = 2;
constexpr int worthANib = 2;        // edges a stealer must bring within the limit to be worth its joints
constexpr double muchLess = 2. / 3; // or this much of the slack that could go must be left
constexpr double nibSlide = 40.0;   // mm
constexpr double nibClear = 30.0;   // mm off a mould

/// A stealer more is worth its joints.
bool worthIt(const FieldScore& before, const FieldScore& after, const FieldScore& forced) {
    const int gained = before.edgesOver - after.edgesOver;
    if (gained >= worthANib || (gained > 0 && after.edgesOver <= forced.edgesOver))
        return true;
    return before.edgesOver - forced.edgesOver >= worthANib &&
           after.slack - forced.slack < muchLess * (before.slack - forced.slack);
}

} // namespace

bool operator<(const FieldScore& a, const FieldScore& b) noexcept {
    return std::tie(a.edgesOver, a.slack, a.touched) < std::tie(b.edgesOver, b.slack, b.touched);
}

BandShares bandShares(double combined, double cover) noexcept {
    const double g = (combined - cover) / cover;
    const double stealer = nibWidth + (cover - nibWidth) * g;
    return {stealer, combined - stealer};
}

std::vector<std::size_t>
chooseBands(const FieldScore& plain,
            const FieldScore& forced,
            std::size_t rows,
            const std::function<std::optional<FieldScore>(const std::vector<std::size_t>&)>& score) {
    std::vector<std::size_t> bands;
    FieldScore reached = plain;
    if (!worthIt(plain, forced, forced))
        return bands;
    while (reached.edgesOver > forced.edgesOver && bands.size() < mostBands) {
        std::optional<FieldScore> best;
        std::size_t bestRow = 0;
        const auto tryRows = [&](const std::vector<std::size_t>& places) {
            std::vector<std::optional<FieldScore>> scores(places.size());
            parallelFor(places.size(), threads, [&](std::size_t i) {
                std::vector<std::size_t> with = bands;
                with.insert(std::upper_bound(with.begin(), with.end(), places[i]), places[i]);
                scores[i] = score(with);
            });
            for (std::size_t i = 0; i < places.size(); ++i)
                if (scores[i] && (!best || *scores[i] < *best)) {
                    best = scores[i];
                    bestRow = places[i];
                }
        };
        const auto apart = [&](std::size_t row) { // two stealers side by side would share a cut edge
            return std::none_of(
                bands.begin(), bands.end(), [&](std::size_t b) { return row + 1 >= b && row <= b + 1; });
        };
        std::vector<std::size_t> places;
        for (std::size_t row = 1; row < rows * 2 / 3; row += coarse)
            if (apart(row))
                places.push_back(row);
        tryRows(places);
        if (!best)
            break;
        places.clear();
        for (std::size_t row = std::max<std::size_t>(bestRow, 3) - 2; row <= bestRow + 2; ++row)
            if (row != bestRow && row < rows && apart(row))
                places.push_back(row);
        tryRows(places);
        if (!worthIt(reached, *best, forced))
            break;
        reached = *best;
        bands.insert(std::upper_bound(bands.begin(), bands.end(), bestRow), bestRow);
    }
    return bands;
}

std::vector<StealerRun>
stealerRuns(const std::vector<BandColumn>& columns, double cover, const std::vector<double>& moulds) {
    const auto holds = [&](std::size_t i) { return columns[i].inside && columns[i].combined > cover; };
    const auto clear = [&](double x) {
        double least = nibClear;
        for (const double m : moulds)
            least = std::min(least, std::abs(x - m));
        return least;
    };
    // of the columns out from the crossing the nearest one that is clear of moulds, else the clearest
    const auto nib = [&](std::size_t crossing, int step) {
        std::size_t best = crossing;
        for (auto i = static_cast<std::ptrdiff_t>(crossing);
             i >= 0 && i < static_cast<std::ptrdiff_t>(columns.size());
             i += step) {
            const BandColumn& c = columns[static_cast<std::size_t>(i)];
            if (!c.inside || std::abs(c.x - columns[crossing].x) > nibSlide || c.combined > cover)
                break;
            if (clear(c.x) > clear(columns[best].x))
                best = static_cast<std::size_t>(i);
        }
        return best;
    };
    std::vector<StealerRun> runs;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        if (!holds(i))
            continue;
        StealerRun run;
        run.first = run.last = i;
        while (run.last + 1 < columns.size() && holds(run.last + 1))
            ++run.last;
        i = run.last;
        if (columns[run.last].x - columns[run.first].x < shortestStealer)
            continue;
        run.bowNib = run.first > 0 && columns[run.first - 1].inside;
        run.sternNib = run.last + 1 < columns.size() && columns[run.last + 1].inside;
        run.first = run.bowNib ? nib(run.first - 1, -1) : 0;
        run.last = run.sternNib ? nib(run.last + 1, +1) : columns.size() - 1;
        runs.push_back(run);
    }
    return runs;
}

} // namespace sheerlay::core
