#include "core/fairness/station_bumps.hpp"

#include "core/hull/coupled_fit.hpp"
#include "core/hull/loft_data.hpp"
#include "core/hull/station_names.hpp"
#include "core/hull/surface_fit.hpp"
#include "core/hull/suspect_cells.hpp"
#include "geometry/fair_fit.hpp"

#include <Eigen/LU>

#include <algorithm>
#include <cmath>

namespace sheerlay::core {
namespace {

constexpr double stretch = 3.0;        // as the fit shrinks x
constexpr double slidingSpread = 30.0; // of sigma: a point may slide along its section, but not get lost
constexpr double levelSpread = 0.005;  // as the fit holds a level keel

constexpr double fairness = 3e5;     // looser, and rounding looks like humps; stiffer, and so does true shape
constexpr double leastTold = 1e-4;   // 1/mm2: spreads of 0.1 m are none
constexpr double nearlyAsGood = 1.2; // spreads by which a neighbour may explain a hump worse

/// One row of the fit: what it leaves over, and by how much its own station's bump would raise it.
struct Row {
    CoupledRow condition;
    double residual = 0.0;
    double outward = 0.0;
    int station = -1;
    [[nodiscard]] double weight() const { return 1 / (condition.sigma * condition.sigma); }
};

std::vector<Row> rowsOf(const LoftData& data, const SurfaceFit& fit) {
    std::vector<Row> rows;
    for (std::size_t i = 0; i < data.points.size(); ++i) {
        const LoftPoint& p = data.points[i];
        const PointResidual& r = fit.residuals[i];
        const bool body = p.kind == LoftPoint::Kind::Sheer || p.kind == LoftPoint::Kind::Section ||
                          p.kind == LoftPoint::Kind::Knuckle;
        const int station = body ? p.station : -1;
        const auto add = [&](double ny, double nz, double sigma, double residual, double outward) {
            rows.push_back({{p.x, p.girth, ny, nz, sigma}, residual, outward, outward != 0.0 ? station : -1});
        };
        if (p.girth == 0.0 || p.kind == LoftPoint::Kind::Knuckle) {
            if (p.weightY > 0)
                add(1, 0, 1 / p.weightY, r.y, body ? r.ny : 0.0);
            if (p.weightZ > 0)
                add(0, 1, 1 / p.weightZ, r.z, body ? r.nz : 0.0);
        } else if (p.weightY > 0 && p.weightZ > 0) {
            add(r.ny, r.nz, std::hypot(r.ny / p.weightY, r.nz / p.weightZ), r.normal, body ? 1.0 : 0.0);
            add(r.nz, -r.ny, slidingSpread * data.sigma, 0.0, 0.0);
        }
        if (p.kind == LoftPoint::Kind::Keel &&
            std::find(fit.levelKeel.begin(), fit.levelKeel.end(), p.station) != fit.levelKeel.end())
            rows.push_back({{p.x, p.girth, 0, 1, levelSpread, true}, 0.0, 0.0, -1});
    }
    return rows;
}

/// The bumps' information matrix and score: bumps of all stations together solve information * d = score.
struct Score {
    Eigen::MatrixXd information;
    Eigen::VectorXd score;
};

Score scoreOf(const CoupledFit& fit, const std::vector<Row>& rows, std::size_t stations) {
    const auto n = static_cast<Eigen::Index>(stations);
    Score s{Eigen::MatrixXd::Zero(n, n), Eigen::VectorXd::Zero(n)};
    for (const Row& r : rows)
        if (r.station >= 0) {
            s.score[r.station] += r.outward * r.weight() * r.residual;
            s.information(r.station, r.station) += r.outward * r.weight() * r.outward;
        }
    std::vector<double> values(rows.size());
    for (Eigen::Index k = 0; k < n; ++k) {
        for (std::size_t i = 0; i < rows.size(); ++i)
            values[i] = rows[i].station == k ? rows[i].outward : 0.0;
        const Eigen::VectorXd poles = fit.solve(values); // how the surface gives way to this bump
        for (const Row& r : rows)
            if (r.station >= 0)
                s.information(r.station, k) -= r.outward * r.weight() * fit.reading(r.condition, poles);
    }
    return s;
}

/// Forward selection over the judged stations: the worst is unfair, the others are weighed again beside it.
void choose(const Score& all, std::vector<StationBump>& bumps) {
    std::vector<StationBump*> judged;
    std::vector<Eigen::Index> of;
    for (StationBump& b : bumps)
        if (b.judged) {
            judged.push_back(&b);
            of.push_back(&b - bumps.data());
        }
    const Score s{all.information(of, of), all.score(of)};
    std::vector<Eigen::Index> found;
    for (const StationBump* worst = nullptr;; worst = nullptr) {
        for (std::size_t i = 0; i < judged.size(); ++i) {
            const auto k = static_cast<Eigen::Index>(i);
            std::vector<Eigen::Index> with = found;
            if (std::find(found.begin(), found.end(), k) == found.end())
                with.push_back(k);
            const auto at = std::find(with.begin(), with.end(), k) - with.begin();
            const Eigen::MatrixXd covariance = s.information(with, with).inverse();
            StationBump& b = *judged[i];
            b.bump = (covariance * s.score(with))[at];
            b.spread = std::sqrt(std::max(0.0, covariance(at, at)));
            if (!b.unfair && std::abs(b.bump) >= leastBump && std::abs(b.spreads()) >= leastSpreads &&
                (!worst || std::abs(b.spreads()) > std::abs(worst->spreads())))
                worst = &b;
        }
        if (!worst)
            return;
        const auto at = std::find(judged.begin(), judged.end(), worst);
        (*at)->unfair = true;
        const auto own = static_cast<std::size_t>(worst - bumps.data());
        for (const std::size_t beside : {own - 1, own + 1}) {
            const StationBump& other = bumps[beside];
            if (!other.unfair && other.spreads() * worst->spreads() < 0 &&
                std::abs(other.spreads()) > std::abs(worst->spreads()) - nearlyAsGood &&
                (!(*at)->rival || std::abs(other.spreads()) > std::abs(bumps[*worst->rival].spreads())))
                (*at)->rival = beside;
        }
        found.push_back(at - judged.begin());
    }
}

} // namespace

Expected<std::vector<StationBump>, std::string> stationBumps(const Project& project, const LoftedHull& hull) {
    auto prepared = prepareLoft(project.hull);
    if (!prepared)
        return unexpected(prepared.error());
    LoftData& data = *prepared;
    static_cast<void>(findSuspectCells(project.hull, data)); // takes out what the loft is made without
    const auto fitted = fitSurface(data, {.lambda = fairness});
    if (!fitted)
        return unexpected(fitted.error());
    const std::vector<Row> rows = rowsOf(data, *fitted);
    std::vector<CoupledRow> conditions;
    for (const Row& r : rows)
        conditions.push_back(r.condition);
    CoupledFit fit(geometry::FairFit(fitted->surface.knotsU(), fitted->surface.knotsV(), stretch), fairness);
    if (!fit.factor(conditions))
        return unexpected(std::string("the points do not determine a surface"));
    const std::size_t count = project.hull.stations.size();
    const Score s = scoreOf(fit, rows, count);

    const double bow = std::min(hull.drawn.sheer.front().x(), hull.drawn.profile.front().x());
    const std::vector<std::string> names = stationNames(project, hull);
    std::vector<StationBump> bumps(count);
    for (std::size_t i = 0; i < count; ++i) {
        StationBump& b = bumps[i];
        b.station = names[i];
        b.x = hull.stationX[i];
        const double part = (b.x - bow) / hull.drawn.length;
        const auto k = static_cast<Eigen::Index>(i);
        const double told = s.information(k, k); // 1/mm2; nothing where a station gives no point but its keel
        if (told > leastTold) {
            b.bump = s.score[k] / told;
            b.spread = 1 / std::sqrt(told);
        }
        b.judged = told > leastTold && i >= 2 && i + 2 < count && part >= 0.25 && part <= 0.75;
    }
    choose(s, bumps);
    return bumps;
}

} // namespace sheerlay::core
