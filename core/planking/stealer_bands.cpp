#include "core/planking/stealer_bands.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>
#include <utility>

namespace sheerlay::core {
namespace {

constexpr std::size_t mostBands = 5;
constexpr std::size_t apart = 3;    // rows from band to band: side by side they would share a cut edge
constexpr double leastNeed = 0.3;   // of the narrowest, below which a stealer has nothing to do
constexpr double shareOfBand = 1.2; // of the narrowest, that a band is expected to take
constexpr int worthANib = 2;        // edges a stealer must bring within the limit to be worth its joints
constexpr double muchLess = 2. / 3; // or this much of what edges are over must be left
constexpr double mostLeft = 0.9;    // of what edges are over, if rows could be planed at will
constexpr double nibSlide = 40.0;   // mm

/// More stealers are worth their joints.
bool worthIt(const FieldScore& before, const FieldScore& after) {
    const int gained = before.edgesOver - after.edgesOver;
    return gained >= worthANib || (gained > 0 && after.edgesOver == 0) ||
           (gained >= 0 && after.slack < muchLess * before.slack);
}

/// Places of n bands, each in the middle of its share of what the rows want.
std::vector<std::size_t> spread(const std::vector<double>& want, std::size_t n) {
    const double share = std::accumulate(want.begin(), want.end(), 0.0) / static_cast<double>(n);
    std::vector<std::size_t> bands;
    double sum = 0;
    for (std::size_t row = 0; row + 1 < want.size() && bands.size() < n; ++row) {
        sum += want[row];
        const bool room = bands.empty() || row >= bands.back() + apart;
        if (room && sum >= (static_cast<double>(bands.size()) + 0.5) * share)
            bands.push_back(row);
    }
    for (std::size_t i = 0; i < bands.size(); ++i)
        bands[i] -= i; // a band counts as one row
    return bands;
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
            const BandNeed& need,
            double narrowest,
            const std::function<std::optional<FieldScore>(const std::vector<std::size_t>&)>& score) {
    const double wanted = std::accumulate(need.below.begin(), need.below.end(), 0.0);
    if (plain.edgesOver < worthANib || wanted < leastNeed * narrowest ||
        need.reached.slack > mostLeft * plain.slack)
        return {}; // the start itself forces what is over
    struct Layout {
        std::vector<std::size_t> bands;
        FieldScore score;
    };
    const auto tried = [&](std::size_t n) -> std::optional<Layout> {
        std::vector<std::size_t> bands = spread(need.below, n);
        const auto there = bands.empty() ? std::nullopt : score(bands);
        return there ? std::optional(Layout{std::move(bands), *there}) : std::nullopt;
    };
    const auto about = static_cast<std::size_t>(wanted / (shareOfBand * narrowest));
    std::optional<Layout> best;
    std::size_t n = std::clamp<std::size_t>(about, 1, mostBands);
    for (std::size_t more = n; more <= mostBands; ++more) {
        std::optional<Layout> next = tried(more);
        if (!next || !worthIt(best ? best->score : plain, next->score))
            break;
        best = std::move(next);
        if (best->score.edgesOver == 0)
            break;
    }
    // fewer, if that does as well
    while (--n > 0) {
        std::optional<Layout> next = tried(n);
        if (!next || !worthIt(plain, next->score) || (best && worthIt(next->score, best->score)))
            break;
        best = std::move(next);
    }
    return best ? best->bands : std::vector<std::size_t>();
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
