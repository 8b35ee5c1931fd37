#include "core/table_edit/scale_table.hpp"

#include "core/project/diagonal.hpp"
#include "core/project/project_edit.hpp"
#include "core/table_edit/cell_loft.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace sheerlay::core {
namespace {

class Scaler {
public:
    Scaler(const Project& project, const TableScale& scale)
        : m_table(project.hull), m_units(project.units), m_scale(scale),
          m_first(project.hull.stations.front().x), m_last(project.hull.stations.back().x) {}

    /// mm along the boat, spaced and scaled.
    [[nodiscard]] double along(double x) const {
        const double inside = std::clamp(x, m_first, m_last);
        return m_scale.length * (x + (m_scale.spacing - 1) * (inside - m_first));
    }

    /// A number that is a cell or a place: the value follows what is printed.
    void number(double& value, std::string& printed, double by) const {
        if (by != 1.0 && (value != 0.0 || !printed.empty()))
            put(value, printed, by * value);
    }
    /// A number that prints nothing.
    void plain(double& value, double by) const {
        std::string printed = printedLikeSheer();
        number(value, printed, by);
    }
    /// A place along the boat that prints nothing.
    void place(double& x) const {
        std::string printed = printedLikeSheer();
        if (along(x) != x)
            put(x, printed, along(x));
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
            place(p.x);
            plain(p.height, m_scale.depth);
        }
        for (Station& s : hull.stations) {
            if (along(s.x) != s.x)
                put(s.x, s.printedX, along(s.x));
            point(s.sheer);
            if (s.keel)
                keel(*s.keel);
            if (s.knuckle)
                point(*s.knuckle);
            for (TablePoint& p : s.points)
                point(p);
        }
        for (Transom& t : hull.transoms) {
            const double rake = m_scale.length * (t.xAtKeel - t.xAtSheer); // kept when spaced
            place(t.xAtSheer);
            if (m_scale.spacing == 1.0)
                place(t.xAtKeel);
            else
                t.xAtKeel = t.xAtSheer + rake;
        }
    }

private:
    void put(double& value, std::string& printed, double wanted) const {
        printed = textLike(wanted, printed, m_table, m_units);
        const auto read = parseLength(printed, m_units);
        value = read ? read->millimetres : wanted;
    }
    [[nodiscard]] std::string printedLikeSheer() const {
        return m_table.stations.front().sheer.printedHeight;
    }

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
    double m_first, m_last; // mm, x of the outermost stations
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
        if (s.knuckle)
            broad = std::max(broad, s.knuckle->halfBreadth);
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
    return inEnglish(sayable("{} long, {} wide, {} deep where she is widest, stations {} apart"),
                     formatLength(measures.length, units),
                     formatLength(measures.beam, units),
                     formatLength(measures.depth, units),
                     formatLength(measures.spacing, units));
}

Expected<Project, LengthError> scaleTable(const Project& project, const TableScale& scale) {
    for (const double by : {scale.length, scale.beam, scale.depth, scale.length * scale.spacing})
        if (!(by >= leastScale) || !(by <= mostScale))
            return unexpected(LengthError{sayable("a boat more than twice or less than half as large"),
                                          sayable("measures between half and twice what they are")});
    if (!project.journal.laid.empty() || !project.journal.readings.empty())
        return unexpected(LengthError{sayable("strips that are laid or measured already in the journal"),
                                      sayable("scaling before the first strip is laid")});
    Project next = project;
    const Scaler scaler(project, scale);
    scaler.table(next.hull);
    for (double& x : next.moulds.stations)
        scaler.place(x);
    if (const auto judged = checked(next); !judged)
        return unexpected(LengthError{judged.error().front().found, judged.error().front().would});
    return next;
}

} // namespace sheerlay::core
