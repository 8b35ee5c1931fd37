#include "core/journal/what_was_laid.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <numeric>

namespace sheerlay::core {

namespace {

constexpr double sameStation = 1.0; // mm
constexpr double driftPerRow = 0.5; // mm, five times what strips usually cover more or less
constexpr double apartFrom = 3.0;   // mm, and at least four spreads of a difference: no tape is read so ill
constexpr double slip = 0.5;        // of a strip: what a misread tape is off by, or more (judged)

/// A reading beside what the plan says.
struct Compared {
    double x = 0.0;      ///< mm from the bow
    double along = 0.0;  ///< mm along the mould, planned less read: + nearer the keel
    double square = 1.0; ///< PlannedGirth::square
    double sd = 0.0;
    double read = 0.0;
    double planned = 0.0;
};

using Round = std::vector<Compared>; // all readings of one row

double middleOf(std::vector<double> values) {
    const auto half = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), half, values.end());
    return *half;
}

std::vector<double> offsetsOf(const Round& round) {
    std::vector<double> offsets;
    for (const Compared& c : round)
        offsets.push_back(c.along);
    return offsets;
}

class Comparison {
public:
    /// What a round is checked against: the one before it.
    struct Last {
        int row = 0;
        double offset = 0.0; // mm along the mould
    };

    /// @param last  what the first round is checked against: the plan itself, until something was read
    Comparison(const Journal& journal, const LoftedHull& hull, const Plan& plan, Last last) {
        for (const RowReading& reading : journal.readings)
            for (const GirthLeft& girth : reading.girthLeft)
                compare(reading, girth, hull, plan);
        for (auto& [row, round] : m_rounds) {
            dropFarOff(row, round, last, plan.coverWidth);
            if (round.empty())
                continue;
            dropSlips(row, round, slip * plan.coverWidth);
            doubtApart(row, round);
            last = {row, middleOf(offsetsOf(round))};
        }
        std::erase_if(m_rounds, [](const auto& entry) { return entry.second.empty(); });
    }

    [[nodiscard]] const std::map<int, Round>& rounds() const noexcept { return m_rounds; }
    [[nodiscard]] const std::vector<LeftOutReading>& leftOut() const noexcept { return m_leftOut; }

    [[nodiscard]] const std::vector<ReadingsApart>& apart() const noexcept { return m_apart; }

    /// mm, how much longer the bare mould was read there than lofted.
    [[nodiscard]] std::optional<double> mouldExcess(double x) const {
        const auto bare = m_rounds.find(0);
        if (bare == m_rounds.end())
            return std::nullopt;
        double sum = 0;
        int count = 0;
        for (const Compared& c : bare->second)
            if (std::abs(c.x - x) <= sameStation) {
                sum -= c.along;
                ++count;
            }
        return count > 0 ? std::optional(sum / count) : std::nullopt;
    }

    /// mm, how much the moulds differ among themselves beyond the tape's noise: planking bridges that.
    [[nodiscard]] double mouldScatter() const {
        const auto bare = m_rounds.find(0);
        if (bare == m_rounds.end() || bare->second.size() < 3)
            return 0.0;
        double sum = 0, squares = 0, noise = 0;
        const auto n = static_cast<double>(bare->second.size());
        for (const Compared& c : bare->second) {
            sum += c.along;
            squares += c.along * c.along;
            noise += c.sd * c.sd / n;
        }
        return std::sqrt(std::max(0.0, (squares - sum * sum / n) / (n - 1) - noise));
    }

private:
    void
    compare(const RowReading& reading, const GirthLeft& girth, const LoftedHull& hull, const Plan& plan) {
        const double x = girth.x + hull.xShift;
        const auto& tape = m_tapes.try_emplace(x, hull.moulds, x).first->second;
        const auto planned = reading.row < plan.lastRow ? plannedGirthLeft(plan, reading.row, tape)
                                                        : std::nullopt; // the last plank leaves nothing
        if (!planned) {
            m_leftOut.push_back({reading.row, x, girth.girth, 0.0});
            return;
        }
        m_rounds[reading.row].push_back(
            {x, planned->left - girth.girth, planned->square, reading.sd, girth.girth, planned->left});
    }

    /// From one round to the next, or from the plan to the first, edges go by what strips cover more or less.
    /// A reading on its own may be a slip besides; one that two others of its round bear out is none, and may
    /// be off by as much as a strip, laid too low or too high.
    void dropFarOff(int row, Round& round, const Last& last, double strip) {
        const double drift = driftPerRow * (row - last.row);
        std::size_t before = 0;
        do { // what was borne out by one that goes stands alone
            before = round.size();
            const Round all = round;
            const auto borneOut = [&](const Compared& c) {
                return std::ranges::count_if(all, [&](const Compared& other) {
                           return std::abs(other.along - c.along) <= slip * strip;
                       }) > 2;
            };
            std::erase_if(round, [&](const Compared& c) {
                const double most = (borneOut(c) ? 1.0 : slip) * strip + drift;
                if (std::abs(c.along - last.offset) <= most)
                    return false;
                m_leftOut.push_back({row, c.x, c.read, c.planned - last.offset, true, last.row});
                return true;
            });
        } while (round.size() < before);
    }

    /// Readings of one place that disagree are each as doubtful as they lie apart.
    void doubtApart(int row, Round& round) {
        std::ranges::stable_sort(round, {}, &Compared::x);
        for (auto from = round.begin(); from != round.end();) {
            const auto to = std::find_if(
                from, round.end(), [&](const Compared& c) { return c.x - from->x > sameStation; });
            const auto [least, most] =
                std::ranges::minmax(std::ranges::subrange(from, to), {}, &Compared::read);
            const double gap = most.read - least.read;
            if (gap > std::max(apartFrom, 4 * std::hypot(least.sd, most.sd))) {
                m_apart.push_back({row, from->x, least.read, most.read});
                for (auto c = from; c != to; ++c)
                    c->sd = std::max(c->sd, gap / std::numbers::sqrt2);
            }
            from = to;
        }
    }

    /// A misread tape is off by a finger's breadth or an inch, not by what edges and moulds do.
    void dropSlips(int row, Round& round, double most) {
        const double middle = middleOf(offsetsOf(round));
        if (round.size() < 3)
            return; // nothing to tell which one is wrong
        const auto slips = std::stable_partition(round.begin(), round.end(), [&](const Compared& c) {
            return std::abs(c.along - middle) <= most;
        });
        for (auto c = slips; c != round.end(); ++c)
            m_leftOut.push_back({row, c->x, c->read, c->planned});
        round.erase(slips, round.end());
    }

    std::map<double, SectionTape> m_tapes; // by x; a section is dear
    std::map<int, Round> m_rounds;
    std::vector<LeftOutReading> m_leftOut;
    std::vector<ReadingsApart> m_apart;
};

/// Mean over the stations, freed of the moulds' own error where they were read bare.
struct Means {
    std::vector<MeanOffset> rows;
    double sharedSd = 0.0;
    double length = 0.0;
};

Means meansOf(const Comparison& comparison, const WidthPrior& prior) {
    Means means;
    for (const auto& [row, round] : comparison.rounds()) {
        if (row < 1)
            continue;
        MeanOffset mean{row, 0.0, 0.0};
        const auto n = static_cast<double>(round.size());
        double noise = 0, shared = 0;
        for (const Compared& c : round) {
            const auto mould = comparison.mouldExcess(c.x);
            mean.offset += (c.along + mould.value_or(0.0)) * c.square / n;
            noise += c.sd * c.sd / n;
            shared += (mould ? c.sd * c.sd : prior.mould * prior.mould) / n;
        }
        mean.sd = std::sqrt(noise / n);
        means.rows.push_back(mean);
        means.sharedSd = std::max(means.sharedSd, std::sqrt(shared / n));
        const auto [first, last] = std::minmax_element(
            round.begin(), round.end(), [](const auto& a, const auto& b) { return a.x < b.x; });
        means.length = std::max(means.length, last->x - first->x);
    }
    return means;
}

SmoothOffset smoothed(const Round& round, double mouldScatter) {
    std::vector<OffsetReading> readings;
    for (const Compared& c : round)
        readings.push_back({c.x, c.along * c.square, std::hypot(c.sd, mouldScatter)});
    return smoothReadings(readings);
}

} // namespace

std::optional<WhatWasLaid> whatWasLaid(const Journal& journal,
                                       const Project& project,
                                       const LoftedHull& hull,
                                       const Plan& plan,
                                       const WidthPrior& prior) {
    const Comparison comparison(journal, hull, plan, {});
    if (comparison.rounds().empty() || comparison.rounds().rbegin()->first < 1)
        return std::nullopt;
    const auto& [row, round] = *comparison.rounds().rbegin();
    const SmoothOffset offset = smoothed(round, comparison.mouldScatter());
    const auto planned = plannedLastPlank(plan, hull);
    const Means means = meansOf(comparison, prior);
    const int rows = std::max(plan.lastRow, row);
    constexpr int more = 3; // rows that other tapers may need
    const CoverWidth width = inferCoverWidth(prior, rows + more, {means.rows, means.sharedSd, means.length});

    WhatWasLaid laid;
    laid.row = row;
    laid.stations = round.size();
    laid.edge = measuredEdge(row, offset);
    laid.x = planned ? planned->x : 0.5 * (offset.from() + offset.to());
    laid.offset = {offset.at(laid.x), offset.sdAt(laid.x)};
    laid.planned = plan.coverWidth;
    laid.excess = width.meanOf(1, row);
    laid.ahead = width.meanOf(row + 1, rows);
    laid.leftOut = comparison.leftOut();
    laid.apart = comparison.apart();
    if (!planned || planned->lastRow < row)
        return laid;

    LastPlankOutlook& outlook = laid.outlook;
    outlook.row = row;
    outlook.lastRow = planned->lastRow;
    outlook.planned = planned->width;
    outlook.offset = laid.offset;
    outlook.coverWidth = plan.coverWidth;
    outlook.sides = planned->sides;
    outlook.window = project.planking.shutter.value_or(outlook.window);
    laid.width = width;
    laid.lastPlank = forecastLastPlank(outlook, width);
    laid.correction = proposeCorrection(outlook, width);
    if (const auto reach = reachOf(plan, row + 1))
        laid.correctionReach = {reach->from + correctionFade, reach->to - correctionFade};
    return laid;
}

UnusedReadings unusedReadings(const Journal& journal, const LoftedHull& hull, const Plan& plan) {
    const Comparison comparison(journal, hull, plan, {});
    UnusedReadings readings{comparison.leftOut(), std::nullopt};
    if (const auto bare = comparison.rounds().find(0); bare != comparison.rounds().end()) {
        const std::vector<double> offsets = offsetsOf(bare->second);
        const double mean =
            std::accumulate(offsets.begin(), offsets.end(), 0.0) / static_cast<double>(offsets.size());
        readings.bareMoulds = {offsets.size(), -mean};
    }
    return readings;
}

std::vector<LeftOutReading>
doubtsAbout(const RowReading& round, const Journal& journal, const LoftedHull& hull, const Plan& plan) {
    int since = 0;
    for (const RowReading& before : journal.readings)
        since = std::max(since, before.row);
    if (since >= round.row)
        since = 0; // the rows above the lowest that was read are as they were planned
    return Comparison({{round}, {}}, hull, plan, {since, 0.0}).leftOut();
}

void forecastFrom(const Plan& anew, const LoftedHull& hull, WhatWasLaid& laid) {
    const auto planned = plannedLastPlank(anew, hull);
    if (!planned || !laid.lastPlank || planned->lastRow < laid.row)
        return;
    LastPlankOutlook& outlook = laid.outlook;
    outlook.lastRow = planned->lastRow;
    outlook.sides = planned->sides;
    // that plan holds the edge and what strips cover more already, which the forecast takes off
    outlook.planned =
        planned->width +
        planned->sides * (outlook.offset.value + laid.width->sumOf(laid.row + 1, planned->lastRow).value);
    laid.lastPlank = forecastLastPlank(laid.outlook, *laid.width);
    laid.correction = proposeCorrection(laid.outlook, *laid.width);
}

} // namespace sheerlay::core
