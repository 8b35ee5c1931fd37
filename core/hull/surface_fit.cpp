#include "core/hull/surface_fit.hpp"

#include "geometry/fair_fit.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace sheerlay::core {
namespace {

constexpr double stemPad = 150.0;    // mm the surface goes on past a stem
constexpr double transomPad = 300.0; // mm past a transom, where rows do not close in
constexpr double stretch = 3.0;      // x is shrunk by this in the fairness integral
constexpr int spansAlong = 36;
constexpr int spansAround = 20;
constexpr double readOff = 0.03;      // mm: a table rounded finer was not measured but read off a surface
constexpr double finerNet = 1.5;      // for such a table, so that it bends wherever that surface does
constexpr int outsideBoat = -2;       // station of a point that only guides the surface outside the boat
constexpr double closingRun = 60.0;   // mm past the stem
constexpr double levelSpread = 0.005; // spread of a level-keel slope

class Fitter {
public:
    /// @param finer  how many times the usual spans the net has
    Fitter(LoftData& data, double finer)
        : m_data(data), m_fit(knots(data.x0 - (data.bowTransom ? transomPad : stemPad),
                                    data.x1 + (data.sternTransom ? transomPad : stemPad),
                                    static_cast<int>(std::lround(finer * spansAlong))),
                              girthKnots(data, static_cast<int>(std::lround(finer * spansAround))),
                              stretch) {}

    static geometry::UniformKnots knots(double a, double b, int spans) { return {a, (b - a) / spans, spans}; }

    bool solve(double lambda) {
        std::vector<geometry::FieldRow> rowsY;
        std::vector<geometry::FieldRow> rowsZ;
        rowsY.reserve(m_data.points.size());
        for (const LoftPoint& p : m_data.points) {
            const auto [wy, wz] = weights(p);
            if (wy > 0)
                rowsY.push_back({p.x, p.girth, p.y, wy});
            if (wz > 0)
                rowsZ.push_back({p.x, p.girth, p.z, wz});
            if (p.kind == LoftPoint::Kind::Keel && m_level.contains(p.station))
                rowsZ.push_back({p.x, p.girth, 0.0, 1 / levelSpread, true});
        }
        const std::vector<double> y = m_fit.solve(rowsY, lambda);
        const std::vector<double> z = m_fit.solve(rowsZ, lambda);
        if (y.empty() || z.empty())
            return false;
        std::vector<Eigen::Vector3d> poles(y.size());
        const auto nv = static_cast<std::size_t>(m_fit.knotsV().poles());
        for (std::size_t i = 0; i < y.size(); ++i)
            poles[i] = {m_fit.knotsU().greville(static_cast<int>(i / nv)), y[i], z[i]};
        m_surface = geometry::TensorSurface(m_fit.knotsU(), m_fit.knotsV(), std::move(poles));
        m_above = m_surface.oneSide(-1);
        m_below = m_surface.oneSide(+1);
        m_haveSurface = true;
        return true;
    }

    /// A stem or keel point is known far better across the centreplane than up and down. Where the section
    /// runs along one of these directions, that coordinate says nothing about the surface and would only hold
    /// the point's girth fast: it fades out.
    [[nodiscard]] std::pair<double, double> weights(const LoftPoint& p) const {
        const bool centre = p.kind == LoftPoint::Kind::Keel || p.kind == LoftPoint::Kind::Profile;
        if (!centre || !m_haveSurface || fixedGirth(p) || p.weightY == 0)
            return {p.weightY, p.weightZ};
        const geometry::SurfaceJet j = m_surface.jet(p.x, p.girth);
        const double len = std::hypot(j.v.y(), j.v.z());
        const double ny = j.v.z() / len;
        const double nz = j.v.y() / len;
        const double normal = 1 / std::hypot(ny / p.weightY, nz / p.weightZ);
        const double least = 0.3 * p.weightZ;
        return {std::max(std::abs(ny) * normal, least), std::max(std::abs(nz) * normal, least)};
    }

    /// Moves each free point's girth to its foot on the section; returns the largest move, mm.
    double reproject() {
        double largest = 0;
        for (LoftPoint& p : m_data.points) {
            if (fixedGirth(p))
                continue;
            double v = p.girth;
            const geometry::TensorSurface& surface = p.side < 0 ? m_above : p.side > 0 ? m_below : m_surface;
            for (int i = 0; i < 6; ++i) {
                const geometry::SurfaceJet j = surface.jet(p.x, v);
                const double ey = p.y - j.p.y();
                const double ez = p.z - j.p.z();
                const double slope = j.v.y() * j.v.y() + j.v.z() * j.v.z();
                const double curve = j.vv.y() * ey + j.vv.z() * ez;
                // full Newton where it is safe, Gauss-Newton near a centre of curvature
                const double den = slope - curve > 0.3 * slope ? slope - curve : slope;
                const double step = std::clamp((j.v.y() * ey + j.v.z() * ez) / den, -20.0, 20.0);
                v = std::clamp(v + step,
                               p.side > 0 ? *m_data.knuckle : m_fit.knotsV().first,
                               p.side < 0 ? *m_data.knuckle : m_fit.knotsV().last());
                if (std::abs(step) < 1e-7)
                    break;
            }
            largest = std::max(largest, std::abs(v - p.girth));
            p.girth = v;
        }
        return largest;
    }

    [[nodiscard]] static bool fixedGirth(const LoftPoint& p) {
        return p.onGivenLine() || p.station == outsideBoat;
    }

    [[nodiscard]] std::vector<PointResidual> residuals() const {
        std::vector<PointResidual> list;
        list.reserve(m_data.points.size());
        for (const LoftPoint& p : m_data.points) {
            const geometry::SurfaceJet j = m_surface.jet(p.x, p.girth);
            const double ry = p.y - j.p.y();
            const double rz = p.z - j.p.z();
            const double len = std::hypot(j.v.y(), j.v.z());
            const double ny = -j.v.z() / len; // e_x x X_v points outward
            const double nz = j.v.y() / len;
            list.push_back({ny * ry + nz * rz, ry, rz, p.girth, ny, nz, 0.0});
        }
        return list;
    }

    struct Spread {
        double rms = 0, robust = 0, clean = 0;
    };
    /// Residuals that count, in an order that does not change: sheer points in both directions, all others
    /// along the section's normal; helpers are no data.
    [[nodiscard]] std::vector<double> misfits() const {
        std::vector<double> e;
        const auto list = residuals();
        for (std::size_t i = 0; i < list.size(); ++i) {
            const LoftPoint& p = m_data.points[i];
            if (p.kind == LoftPoint::Kind::Helper)
                continue;
            if (fixedGirth(p)) {
                if (p.weightY > 0)
                    e.push_back(std::abs(list[i].y));
                if (p.weightZ > 0)
                    e.push_back(std::abs(list[i].z));
            } else if (p.weightY > 0)
                e.push_back(std::abs(list[i].normal));
        }
        return e;
    }

    /// A misprint must not set the weight: what lies far outside the rest is left out of the clean sum. Only
    /// the loosest surface tried yet may say so; on a stiffer one far points can be the stiffness' own work.
    [[nodiscard]] Spread spread(double lambda) {
        const std::vector<double> e = misfits();
        Spread s;
        std::vector<double> sorted = e;
        std::nth_element(
            sorted.begin(), sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2), sorted.end());
        s.robust = 1.4826 * sorted[sorted.size() / 2];
        double sum = 0;
        double sumClean = 0;
        std::size_t n = 0;
        if (lambda <= m_loosest || m_misprint.size() != e.size()) {
            m_loosest = lambda;
            m_misprint.resize(e.size());
            const double far = std::max(6 * s.robust, 8 * m_data.sigma);
            std::transform(e.begin(), e.end(), m_misprint.begin(), [&](double x) { return x > far; });
        }
        for (std::size_t i = 0; i < e.size(); ++i) {
            sum += e[i] * e[i];
            if (!m_misprint[i]) {
                sumClean += e[i] * e[i];
                ++n;
            }
        }
        s.rms = std::sqrt(sum / static_cast<double>(e.size()));
        s.clean = std::sqrt(sumClean / static_cast<double>(std::max<std::size_t>(n, 1)));
        return s;
    }

    /// Stations whose section hangs below its own keel point are held level there; V sections near the ends
    /// are left alone.
    bool holdLevelKeels() {
        std::vector<int> withKeel;
        for (const LoftPoint& p : m_data.points)
            if (p.kind == LoftPoint::Kind::Keel)
                withKeel.push_back(p.station);
        if (withKeel.size() < 5)
            return false;
        bool added = false;
        for (const LoftPoint& p : m_data.points) {
            if (p.kind != LoftPoint::Kind::Keel || p.station < withKeel[2] - 1 ||
                p.station > withKeel[withKeel.size() - 3] + 1 || m_level.contains(p.station))
                continue;
            double lowest = 1e300;
            for (double v = 0; v < p.girth; v += 5)
                lowest = std::min(lowest, m_surface.point(p.x, v).z());
            if (lowest < m_surface.point(p.x, p.girth).z() - 0.4) {
                m_level.insert(p.station);
                added = true;
            }
        }
        return added;
    }

    /// Past a thin stem the sheer must go on through the centreplane, or the planking, which lies outside the
    /// moulds, never closes. Where it does not by itself, a point outside the boat shows it the way its last
    /// gap points.
    bool closeEnds() {
        bool added = false;
        for (const bool bow : {true, false}) {
            if (bow ? m_data.bowTransom || m_bowClosed : m_data.sternTransom || m_sternClosed)
                continue;
            const auto outermost = [&](auto admitted) {
                const LoftPoint* found = nullptr;
                for (const LoftPoint& p : m_data.points)
                    if (fixedGirth(p) && admitted(p) && (!found || (bow ? p.x < found->x : p.x > found->x)))
                        found = &p;
                return found;
            };
            const LoftPoint* tip = outermost([](const LoftPoint&) { return true; });
            // a neighbour too near tells its rounding, not the sheer's run
            const LoftPoint* next = outermost(
                [&](const LoftPoint& p) { return tip && std::abs(p.x - tip->x) > 0.25 * m_data.stationGap; });
            if (!tip || !next)
                continue;
            const double slope = std::max(0.12, (next->y - tip->y) / std::abs(next->x - tip->x));
            const double x = tip->x + (bow ? -closingRun : closingRun);
            const geometry::SurfaceJet there = m_surface.jet(x, 0);
            const double wanted = tip->y - closingRun * slope;
            if (there.p.y() < tip->y - 0.3 * closingRun * slope)
                continue;
            LoftPoint helper;
            helper.kind = LoftPoint::Kind::Helper;
            helper.station = outsideBoat;
            helper.x = x;
            helper.y = wanted;
            helper.z = there.p.z();
            helper.weightY = 2 / m_data.sigma;
            helper.weightZ = 0;
            m_data.points.push_back(helper);
            (bow ? m_bowClosed : m_sternClosed) = true;
            added = true;
        }
        return added;
    }

    LoftData& m_data;
    geometry::FairFit m_fit;
    geometry::TensorSurface m_surface;
    geometry::TensorSurface m_above, m_below; ///< its sides of the knuckle
    bool m_haveSurface = false;
    std::set<int> m_level;
    double m_loosest = 1e300;     ///< smallest weight judged yet
    std::vector<char> m_misprint; ///< per misfit, as told by the surface of that weight
    bool m_bowClosed = false, m_sternClosed = false;
};

Expected<SurfaceFit, std::string> fitOn(Fitter fitter, const LoftData& data, const FitChoices& choices) {
    const double wantedResidual = choices.residual;
    // residuals grow with the fairness weight; a bracketed secant in log lambda runs together with the
    // re-projection
    double logLambda = std::log(choices.lambda.value_or(3e5));
    double below = std::log(1e2);
    double above = std::log(1e9);
    bool haveBelow = false;
    bool haveAbove = false;
    double rmsBelow = 0;
    double rmsAbove = 0;
    SurfaceFit fit;
    constexpr int most = 24;
    for (fit.iterations = 1; fit.iterations <= most; ++fit.iterations) {
        if (!fitter.solve(std::exp(logLambda)))
            return unexpected(
                std::string("the points do not determine a surface: too few of them, or all on one line"));
        double moved = fitter.reproject();
        moved = std::max(moved, 0.0);
        if (fit.iterations == 1)
            continue; // the start girths are only chord sums
        const auto s = fitter.spread(std::exp(logLambda));
        const double ratio = s.clean / data.sigma;
        const bool level = fitter.holdLevelKeels() | fitter.closeEnds();
        if (choices.lambda) {
            if ((moved < 0.2 || fit.iterations >= 8) && !level)
                break;
            continue;
        }
        // a point on a nearly straight stretch creeps along it for long without moving the surface
        if (std::abs(ratio - wantedResidual) < 0.02 && (moved < 0.2 || fit.iterations >= 6) && !level)
            break;
        if (moved > 2.0)
            continue; // let the points settle before the weight is judged
        (ratio < wantedResidual ? below : above) = logLambda;
        (ratio < wantedResidual ? rmsBelow : rmsAbove) = ratio;
        (ratio < wantedResidual ? haveBelow : haveAbove) = true;
        if (haveBelow && haveAbove) {
            const double f = std::clamp((wantedResidual - rmsBelow) / (rmsAbove - rmsBelow), 0.15, 0.85);
            logLambda = below + f * (above - below);
            if (above - below < 0.02) { // points moved under the bracket: open it again
                haveBelow = haveAbove = false;
                below = std::log(1e2);
                above = std::log(1e9);
            }
        } else {
            // residual goes about as lambda to the 0.3
            const double step = std::clamp(std::log(wantedResidual / std::max(ratio, 1e-3)) / 0.3, -2.5, 2.5);
            logLambda = std::clamp(logLambda + step, std::log(1e2), std::log(1e9));
            if (logLambda <= std::log(1e2) + 1e-9 || logLambda >= std::log(1e9) - 1e-9)
                if (moved < 0.3)
                    break;
        }
    }
    fit.lambda = std::exp(logLambda);
    fit.surface = fitter.m_surface;
    fit.residuals = fitter.residuals();
    const auto s = fitter.spread(fit.lambda);
    fit.rms = s.rms;
    fit.robust = s.robust;
    fit.levelKeel.assign(fitter.m_level.begin(), fitter.m_level.end());
    return fit;
}

} // namespace

Expected<SurfaceFit, std::string> fitSurface(LoftData& data, const FitChoices& choices) {
    if (data.sigma * std::sqrt(12.0) < readOff) {
        LoftData trial = data;
        auto fit = fitOn({trial, finerNet}, trial, choices);
        // facets or a chine are more than it can follow, and between the points it would run wild trying
        if (fit && fit->rms < 2 * choices.residual * data.sigma) {
            data = std::move(trial);
            return fit;
        }
    }
    return fitOn({data, 1.0}, data, choices);
}

} // namespace sheerlay::core
