#include "core/stock/row_woods.hpp"

#include "core/stock/joint_places.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>
#include <vector>

namespace sheerlay::core {

namespace {

constexpr int places = 60; // along the boat, among which the widest is taken

/// mm of one side's girth that a strip covers at x; 0 where it does not reach.
double widthAt(const Strip& strip, double x) {
    const auto along = alongAt(strip, x);
    if (!along)
        return 0.0;
    const auto after = std::ranges::lower_bound(strip.samples, *along, {}, &StripSample::s);
    if (after == strip.samples.begin() || after == strip.samples.end())
        return 0.0;
    const StripSample &a = *std::prev(after), &b = *after;
    const double t = b.s > a.s ? (*along - a.s) / (b.s - a.s) : 0.0;
    const double width = a.width + t * (b.width - a.width);
    return strip.side == Side::Centre ? width / 2 : width;
}

/// The pieces of one side by row, from the sheer to the keel.
std::map<int, std::vector<const Strip*>> rowsOf(const Plan& plan) {
    std::map<int, std::vector<const Strip*>> rows;
    for (const Strip& strip : plan.strips)
        if (strip.side != Side::Port && strip.samples.size() > 1)
            rows[strip.row].push_back(&strip);
    return rows;
}

double widthAt(const std::vector<const Strip*>& row, double x) {
    double width = 0.0;
    for (const Strip* strip : row)
        width = std::max(width, widthAt(*strip, x));
    return width;
}

/// The x that a row's pieces reach and that lies nearest to this one, a hair inside their ends.
double nearestOn(const std::vector<const Strip*>& row, double x) {
    double nearest = std::numeric_limits<double>::max();
    for (const Strip* strip : row) {
        const auto [first, last] = std::ranges::minmax(strip->samples, {}, &StripSample::x);
        const double inside = 0.05 * (last.x - first.x);
        const double at = std::clamp(x, first.x + inside, last.x - inside);
        if (std::abs(at - x) < std::abs(nearest - x))
            nearest = at;
    }
    return nearest;
}

void paint(const WoodRule& rule, const std::vector<int>& rows, std::map<int, std::string>& woods) {
    for (std::size_t i = 0; i < rows.size(); i += static_cast<std::size_t>(std::max(1, rule.every)))
        if (const auto found = woods.find(rows[i]); found != woods.end()) // counted, though not in this plan
            found->second = rule.wood;
}

} // namespace

std::map<int, double> rowGirths(const Plan& plan) {
    const auto rows = rowsOf(plan);
    double low = std::numeric_limits<double>::max(), high = -low;
    for (const auto& [row, strips] : rows)
        for (const Strip* strip : strips) {
            low = std::min(low, strip->samples.front().x);
            high = std::max(high, strip->samples.back().x);
        }
    double widest = 0.0, widestAt = low;
    for (int i = 1; i < places; ++i) {
        const double x = low + (high - low) * i / places;
        double girth = 0.0;
        for (const auto& [row, strips] : rows)
            girth += widthAt(strips, x);
        if (girth > widest) {
            widest = girth;
            widestAt = x;
        }
    }
    std::map<int, double> girths;
    for (const auto& [row, strips] : rows) {
        const double x = nearestOn(strips, widestAt);
        double above = 0.0;
        for (auto other = rows.begin(); other->first != row; ++other)
            above += widthAt(other->second, x);
        girths[row] = above + widthAt(strips, x) / 2;
    }
    return girths;
}

std::map<int, std::string> rowWoods(const Project& project, const Plan& plan) {
    std::map<int, std::string> woods;
    for (const Strip& strip : plan.strips)
        woods[strip.row] = project.strips.wood;
    if (!project.stock)
        return woods;
    std::map<int, double> girths;
    for (const WoodRule& rule : project.stock->woodRules) {
        if (rule.girth && girths.empty())
            girths = rowGirths(plan);
        std::vector<int> rows;
        if (rule.girth) {
            for (const auto& [row, girth] : girths)
                if (girth >= (*rule.girth)[0] && girth <= (*rule.girth)[1])
                    rows.push_back(row);
        } else {
            for (int row = rule.firstRow; row <= rule.lastRow; ++row)
                if (row != 0) // there is no such row
                    rows.push_back(row);
        }
        paint(rule, rows, woods);
    }
    return woods;
}

} // namespace sheerlay::core
