#include "core/hull/loft_samples.hpp"

#include "core/hull/cell_checker.hpp"
#include "core/hull/loft_data.hpp"
#include "core/hull/surface_fit.hpp"
#include "core/hull/suspect_cells.hpp"
#include "core/hull/trimmed_surface.hpp"
#include "geometry/offset_surface.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>

namespace sheerlay::core {
namespace {

constexpr double stretch = 3.0;        // as the fit shrinks x
constexpr double levelSpread = 0.005;  // as the fit holds a level keel
constexpr double slidingSpread = 30.0; // of sigma: a point may slide along its section, but not get lost

constexpr double sameX = 0.01;     // mm
constexpr double mayDiffer = 0.05; // mm, between the fit then and now

using Number = LoftSampler::Number;

/// Which of a point's numbers the table prints to its last digit; the other is the line it stands on.
std::vector<Number> numbersOf(const LoftPoint& p, std::size_t index) {
    if (p.kind == LoftPoint::Kind::Helper)
        return {};
    if (p.kind == LoftPoint::Kind::Profile)
        return {{index, Number::X}, {index, Number::Z}};
    switch (p.cell->kind) {
    case PointKind::Waterline:
        return {{index, Number::Y}};
    case PointKind::Buttock:
    case PointKind::Keel:
        return {{index, Number::Z}};
    case PointKind::Sheer:
    case PointKind::Point:
    case PointKind::Knuckle:
        break;
    }
    return {{index, Number::Y}, {index, Number::Z}};
}

/// For each number the first one that stands for it: its mirror image where the whole table is the same from
/// both ends, otherwise itself.
std::vector<std::size_t> mirrored(const std::vector<Number>& numbers, const std::vector<LoftPoint>& points) {
    double first = 1e300;
    double last = -1e300;
    for (const Number& n : numbers) {
        first = std::min(first, points[n.point].x);
        last = std::max(last, points[n.point].x);
    }
    std::vector<std::size_t> alone(numbers.size());
    std::iota(alone.begin(), alone.end(), std::size_t{0});
    std::vector<std::size_t> mirror = alone;
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        const LoftPoint& p = points[numbers[i].point];
        const auto image = std::find_if(numbers.begin(), numbers.end(), [&](const Number& other) {
            const LoftPoint& q = points[other.point];
            return other.coordinate == numbers[i].coordinate && q.kind == p.kind && q.y == p.y &&
                   q.z == p.z && std::abs(q.x - (first + last - p.x)) < sameX;
        });
        if (image == numbers.end())
            return alone;
        mirror[i] = std::min(i, static_cast<std::size_t>(image - numbers.begin()));
    }
    return mirror;
}

/// The same net and, x aside, the same poles to far less than rounding does.
bool sameSurface(const geometry::TensorSurface& a, const geometry::TensorSurface& b) {
    if (a.knotsU().poles() != b.knotsU().poles() || a.knotsV().poles() != b.knotsV().poles())
        return false;
    double largest = 0;
    for (int i = 0; i < a.knotsU().poles(); ++i)
        for (int j = 0; j < a.knotsV().poles(); ++j)
            largest = std::max(largest, (a.pole(i, j) - b.pole(i, j)).tail<2>().norm());
    return largest < mayDiffer;
}

} // namespace

Expected<LoftSampler, std::string> LoftSampler::prepare(const Project& project, const LoftedHull& hull) {
    auto prepared = prepareLoft(project.hull);
    if (!prepared)
        return unexpected(prepared.error());
    LoftData& data = *prepared;
    if (std::any_of(hull.findings.begin(), hull.findings.end(), [](const Finding& f) {
            return f.code == "doubtful-cell";
        }))
        static_cast<void>(findSuspectCells(project.hull, data)); // takes out what the loft was made without
    else
        CellChecker(project.hull, data)
            .startGirths(); // where the loft began: beside a knuckle its end hangs on it
    const auto fitted = fitSurface(data, {.residual = project.hull.fairing, .lambda = std::nullopt});
    if (!fitted)
        return unexpected(fitted.error());
    const geometry::TensorSurface& surface = fitted->surface;
    if (!sameSurface(surface, hull.drawn.surface))
        return unexpected(std::string("the hull was not lofted from this table"));

    LoftSampler sampler;
    sampler.m_fit = std::make_unique<CoupledFit>(
        geometry::FairFit(surface.knotsU(), surface.knotsV(), stretch), fitted->lambda);
    std::vector<CoupledRow> rows;
    for (std::size_t i = 0; i < data.points.size(); ++i) {
        const LoftPoint& p = data.points[i];
        const geometry::SurfaceJet jet = surface.jet(p.x, p.girth);
        const auto add = [&](double ny, double nz, double sigma) {
            rows.push_back({p.x, p.girth, ny, nz, sigma});
            return rows.size() - 1;
        };
        std::vector<std::size_t> of;
        if (p.girth == 0.0 || p.kind == LoftPoint::Kind::Knuckle) { // on a line of known v
            if (p.weightY > 0)
                of.push_back(add(1, 0, 1 / p.weightY));
            if (p.weightZ > 0)
                of.push_back(add(0, 1, 1 / p.weightZ));
        } else if (p.weightY > 0 && p.weightZ > 0) {
            const double len = std::hypot(jet.v.y(), jet.v.z());
            const double ny = -jet.v.z() / len;
            const double nz = jet.v.y() / len;
            of.push_back(add(ny, nz, std::hypot(ny / p.weightY, nz / p.weightZ)));
            add(nz, -ny, slidingSpread * data.sigma);
        }
        if (p.kind == LoftPoint::Kind::Keel &&
            std::find(fitted->levelKeel.begin(), fitted->levelKeel.end(), p.station) !=
                fitted->levelKeel.end())
            rows.push_back({p.x, p.girth, 0, 1, levelSpread, true});
        for (const Number& n : numbersOf(p, i)) {
            for (const std::size_t row : of) {
                const CoupledRow& r = rows[row];
                const double factor = n.coordinate == Number::Y   ? r.ny
                                      : n.coordinate == Number::Z ? r.nz
                                                                  : -(r.ny * jet.u.y() + r.nz * jet.u.z());
                sampler.m_gains.push_back({row, sampler.m_numbers.size(), factor});
            }
            sampler.m_numbers.push_back(n);
        }
    }
    if (!sampler.m_fit->factor(rows))
        return unexpected(std::string("the points do not determine a surface"));
    sampler.m_rows = rows.size();
    sampler.m_mirror = mirrored(sampler.m_numbers, data.points);
    sampler.m_unit = project.hull.roundedTo;
    sampler.m_drawnHeight = project.hull.drawnTo == DrawnTo::Outside ? project.strips.thickness : 0.0;
    sampler.m_hull = hull;
    return sampler;
}

Eigen::VectorXd LoftSampler::response(const std::vector<double>& shifts) const {
    std::vector<double> values(m_rows, 0.0);
    for (const Gain& g : m_gains)
        values[g.row] += g.factor * shifts[g.number];
    return m_fit->solve(values);
}

std::vector<double> LoftSampler::shifts(unsigned number) const {
    std::mt19937_64 random(0x5eed0000ULL + number);
    std::vector<double> list(m_numbers.size());
    for (std::size_t i = 0; i < list.size(); ++i) {
        // no library distribution: the draws must be the same everywhere
        const double own = m_unit * (static_cast<double>(random() >> 11U) * 0x1p-53 - 0.5);
        const bool image = m_mirror[i] != i;
        list[i] = !image                                 ? own
                  : m_numbers[i].coordinate == Number::X ? -list[m_mirror[i]]
                                                         : list[m_mirror[i]];
    }
    return list;
}

Expected<LoftedHull, std::string> LoftSampler::draw(unsigned number) const {
    const Eigen::VectorXd move = response(shifts(number));
    const geometry::TensorSurface& from = m_hull.drawn.surface;
    std::vector<Eigen::Vector3d> poles;
    poles.reserve(static_cast<std::size_t>(move.size() / 2));
    for (int i = 0; i < from.knotsU().poles(); ++i)
        for (int j = 0; j < from.knotsV().poles(); ++j) {
            const Eigen::Index k = 2 * (i * from.knotsV().poles() + j);
            poles.emplace_back(from.pole(i, j) + Eigen::Vector3d(0, move[k], move[k + 1]));
        }
    geometry::TensorSurface surface(from.knotsU(), from.knotsV(), std::move(poles));
    const double height = m_hull.laidHeight - m_drawnHeight;
    if (height != 0.0)
        surface = geometry::offsetSurface(surface, height);
    auto laid = trimSurface(std::move(surface), m_hull.laid.trims);
    if (!laid)
        return unexpected(laid.error());
    LoftedHull hull;
    hull.laid = std::move(*laid);
    hull.laidHeight = m_hull.laidHeight;
    hull.xShift = m_hull.xShift;
    hull.stationX = m_hull.stationX;
    hull.roundingSigma = m_hull.roundingSigma;
    hull.fairing = m_hull.fairing;
    return hull;
}

} // namespace sheerlay::core
