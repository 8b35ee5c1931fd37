#include "core/table_edit/scale_table.hpp"

#include "core/project/diagonal.hpp"
#include "core/project/project_edit.hpp"
#include "core/table_edit/cell_loft.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace sheerlay::core {
namespace {

class Scaler {
public:
    Scaler(const Project& project, const TableScale& scale)
        : m_table(project.hull), m_units(project.units), m_scale(scale) {}

    /// A number that is a cell or a place: the value follows what is printed.
    void number(double& value, std::string& printed, double by) const {
        if (by == 1.0 || (value == 0.0 && printed.empty()))
            return;
        printed = textLike(by * value, printed, m_table, m_units);
        const auto read = parseLength(printed, m_units);
        value = read ? read->millimetres : by * value;
    }
    /// A number that prints nothing.
    void plain(double& value, double by) const {
        std::string printed = m_table.stations.front().sheer.printedHeight;
        number(value, printed, by);
    }

    void point(TablePoint& p) const {
        forgetPrinted(p);
        if (!p.diagonal) {
            number(p.height, p.printedHeight, m_scale.depth);
            number(p.halfBreadth, p.printedHalfBreadth, m_scale.beam);
            return;
        }
        if (m_scale.beam == 1.0 && m_scale.depth == 1.0)
            return;
        DiagonalReading d = *p.diagonal;
        const double out = m_scale.beam * p.halfBreadth;
        const double down = m_scale.depth * (d.height - p.height);
        const double far = d.distance;
        number(d.height, d.printedHeight, m_scale.depth);
        if (d.angle) {
            const double slope = *d.angle * std::numbers::pi / 180;
            d.angle = std::atan2(m_scale.depth * std::sin(slope), m_scale.beam * std::cos(slope)) * 180 /
                      std::numbers::pi;
        } else {
            plain(d.throughBreadth, m_scale.beam);
            plain(d.throughHeight, m_scale.depth);
        }
        if (far > 0.0)
            number(d.distance, d.printedDistance, std::hypot(out, down) / far);
        if (auto on = pointOnDiagonal(d, m_units)) {
            on->line = p.line;
            p = *std::move(on);
        }
    }

    void table(HullTable& hull) const {
        for (ProfilePoint& p : hull.profile) {
            plain(p.x, m_scale.length);
            plain(p.height, m_scale.depth);
        }
        for (Station& s : hull.stations) {
            number(s.x, s.printedX, m_scale.length);
            point(s.sheer);
            if (s.keel)
                keel(*s.keel);
            for (TablePoint& p : s.points)
                point(p);
        }
        for (Transom& t : hull.transoms) {
            plain(t.xAtSheer, m_scale.length);
            plain(t.xAtKeel, m_scale.length);
        }
    }

private:
    /// A keel's half-breadth is the siding of its timber.
    void keel(TablePoint& p) const {
        forgetPrinted(p);
        number(p.height, p.printedHeight, m_scale.depth);
    }

    /// What a scaled number once replaced is of another boat.
    void forgetPrinted(TablePoint& p) const {
        if (m_scale.depth != 1.0)
            p.replacedHeight.clear();
        if (m_scale.beam != 1.0)
            p.replacedHalfBreadth.clear();
        if (p.diagonal && (m_scale.depth != 1.0 || m_scale.beam != 1.0))
            p.diagonal->replacedDistance.clear();
    }

    const HullTable& m_table;
    Units m_units;
    TableScale m_scale;
};

} // namespace

TableMeasures measuresOf(const HullTable& table) {
    TableMeasures measures;
    std::vector<double> along;
    std::vector<double> gaps;
    for (const ProfilePoint& p : table.profile)
        along.push_back(p.x);
    for (const Transom& t : table.transoms) {
        along.push_back(t.xAtSheer);
        along.push_back(t.xAtKeel);
    }
    for (std::size_t i = 0; i < table.stations.size(); ++i) {
        const Station& s = table.stations[i];
        // a station past a transom only helps the loft
        if (std::none_of(table.transoms.begin(), table.transoms.end(), [&](const Transom& t) {
                const double furthest =
                    t.end == End::Stern ? std::max(t.xAtSheer, t.xAtKeel) : -std::min(t.xAtSheer, t.xAtKeel);
                return (t.end == End::Stern ? s.x : -s.x) > furthest;
            }))
            along.push_back(s.x);
        if (i > 0)
            gaps.push_back(s.x - table.stations[i - 1].x);
        double broad = s.sheer.halfBreadth;
        double low = s.keel ? s.keel->height : s.sheer.height;
        for (const TablePoint& p : s.points) {
            broad = std::max(broad, p.halfBreadth);
            low = std::min(low, p.height);
        }
        if (2 * broad > measures.beam) {
            measures.beam = 2 * broad;
            measures.depth = s.sheer.height - low;
        }
    }
    if (!along.empty())
        measures.length =
            *std::max_element(along.begin(), along.end()) - *std::min_element(along.begin(), along.end());
    if (!gaps.empty()) {
        const auto middle = gaps.begin() + static_cast<std::ptrdiff_t>(gaps.size() / 2);
        std::nth_element(gaps.begin(), middle, gaps.end());
        measures.spacing = *middle;
    }
    return measures;
}

std::string measuresText(const TableMeasures& measures, Units units) {
    return formatLength(measures.length, units) + " long, " + formatLength(measures.beam, units) + " wide, " +
           formatLength(measures.depth, units) + " deep where she is widest, stations " +
           formatLength(measures.spacing, units) + " apart";
}

Expected<Project, LengthError> scaleTable(const Project& project, const TableScale& scale) {
    for (const double by : {scale.length, scale.beam, scale.depth})
        if (!(by >= leastScale) || !(by <= mostScale))
            return unexpected(LengthError{"a boat more than twice or less than half as large",
                                          "measures between half and twice what they are"});
    if (!project.journal.laid.empty() || !project.journal.readings.empty())
        return unexpected(LengthError{"strips that are laid or measured already in the journal",
                                      "scaling before the first strip is laid"});
    Project next = project;
    const Scaler scaler(project, scale);
    scaler.table(next.hull);
    for (double& x : next.moulds.stations)
        scaler.plain(x, scale.length);
    if (const auto judged = checked(next); !judged)
        return unexpected(LengthError{judged.error().front().found, judged.error().front().would});
    return next;
}

} // namespace sheerlay::core
