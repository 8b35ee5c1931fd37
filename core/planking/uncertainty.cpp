#include "core/planking/uncertainty.hpp"

#include "core/hull/loft_samples.hpp"
#include "core/planking/landing.hpp"
#include "core/planking/parallel_for.hpp"
#include "core/planking/planking.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace sheerlay::core {
namespace {

struct PieceFigures {
    double edgeBend = 0.0, twist = 0.0, length = 0.0;
};

/// What is compared between the plan and a draw.
struct Figures {
    std::map<std::string, PieceFigures> pieces; ///< by id, starboard and centre
    double halfGirth = 0.0;
    std::optional<double> toKeel; ///< mm from the start to the shutter's far edge, where it is widest
};

Figures figuresOf(const LoftedHull& hull, const Plan& plan) {
    Figures f;
    f.halfGirth = hull.laid.halfGirthMax;
    for (const Strip& s : plan.strips)
        if (s.side != Side::Port)
            f.pieces[s.id] = {s.edgeBend.maxAbs, s.twistMax, s.length};
    if (const double remainder = shutterRemainder(plan); remainder > 0)
        f.toKeel = (plan.lastRow - 1) * plan.coverWidth + remainder; // goes on smoothly where a row is gained
    return f;
}

/// The plan without what answers to the hull anew: search, landing and tapers would follow each draw, the
/// strips on the bench do not.
Project held(const Project& project, const Plan& plan) {
    Project p = project;
    p.planking.start = plan.start;
    p.planking.shutter.reset();
    p.planking.taper = Taper::None;
    p.strips.coverWidth = plan.coverWidth;
    return p;
}

class Squares {
public:
    void add(double difference) {
        m_sum += difference * difference;
        ++m_n;
    }
    [[nodiscard]] int count() const { return m_n; }
    /// About the plan's own figure, not about the mean: a figure that only grows counts in full.
    [[nodiscard]] double deviation() const { return m_n > 0 ? std::sqrt(m_sum / m_n) : 0.0; }

private:
    double m_sum = 0.0;
    int m_n = 0;
};

} // namespace

std::optional<PlanUncertainty> uncertainty(const Project& project,
                                           const LoftedHull& hull,
                                           const Plan& plan,
                                           unsigned samples,
                                           unsigned threads,
                                           std::stop_token stop) {
    const auto sampler = LoftSampler::prepare(project, hull);
    if (!sampler || stop.stop_requested())
        return std::nullopt;
    const Project fixed = held(project, plan);
    const auto base = plank(fixed, hull);
    if (!base)
        return std::nullopt;
    const Figures own = figuresOf(hull, *base);

    std::vector<std::optional<Figures>> drawn(samples);
    parallelFor(samples, threads, [&](std::size_t i) {
        if (stop.stop_requested())
            return;
        const auto other = sampler->draw(static_cast<unsigned>(i));
        if (!other)
            return;
        const auto laid = plank(fixed, *other);
        if (laid && laid->splitRow == base->splitRow)
            drawn[i] = figuresOf(*other, *laid);
    });
    if (stop.stop_requested())
        return std::nullopt;

    PlanUncertainty result;
    Squares halfGirth;
    Squares toKeel;
    struct PieceSquares {
        Squares edgeBend, twist, length;
    };
    std::map<std::string, PieceSquares> pieces;
    for (const auto& f : drawn) {
        if (!f)
            continue;
        ++result.draws;
        halfGirth.add(f->halfGirth - own.halfGirth);
        if (f->toKeel && own.toKeel)
            toKeel.add(*f->toKeel - *own.toKeel);
        for (const auto& [id, piece] : own.pieces)
            if (const auto it = f->pieces.find(id); it != f->pieces.end()) {
                pieces[id].edgeBend.add(it->second.edgeBend - piece.edgeBend);
                pieces[id].twist.add(it->second.twist - piece.twist);
                pieces[id].length.add(it->second.length - piece.length);
            }
    }
    if (result.draws < 2)
        return std::nullopt;
    result.halfGirth = halfGirth.deviation();

    std::map<int, RowUncertainty> rows;
    for (const Strip& s : base->strips) {
        if (s.side == Side::Port)
            continue;
        const PieceSquares& q = pieces[s.id];
        if (4 * q.length.count() < 3 * result.draws)
            continue; // a piece that comes and goes has no figures to speak of
        RowUncertainty& row = rows[s.row];
        row.row = s.row;
        row.edgeBend = std::max(row.edgeBend, q.edgeBend.deviation());
        row.twist = std::max(row.twist, q.twist.deviation());
        row.length = std::max(row.length, q.length.deviation());
        result.edgeBend = std::max(result.edgeBend, q.edgeBend.deviation());
        result.twist = std::max(result.twist, q.twist.deviation());
        if (s.kind != StripKind::Shutter)
            result.length = std::max(result.length, q.length.deviation());
    }
    std::vector<double> lengths;
    for (const auto& [number, row] : rows) {
        result.rows.push_back(row);
        lengths.push_back(row.length);
    }
    if (!lengths.empty()) {
        const auto middle = lengths.begin() + static_cast<std::ptrdiff_t>(lengths.size() / 2);
        std::nth_element(lengths.begin(), middle, lengths.end());
        result.lengthTypical = *middle;
    }

    const bool overBothSides = std::any_of(plan.strips.begin(), plan.strips.end(), [](const Strip& s) {
        return s.kind == StripKind::Shutter && s.side == Side::Centre;
    });
    if (toKeel.count() > 0)
        result.shutterWidth = (overBothSides ? 2 : 1) * toKeel.deviation();
    return result;
}

} // namespace sheerlay::core
