#include "core/afloat/submerged.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// The water line in one section's plane: points base + s along, height of a point a . p + b.
struct Cut {
    Vector2d normal, base, along;
    double offset = 0.0;

    Cut(const Vector3d& up, double level, double x)
        : normal(up.y(), up.z()), base(Vector2d::Zero()), along(Vector2d::Zero()),
          offset(up.x() * x - level) {
        const double size = normal.norm();
        along = Vector2d(normal.y(), -normal.x()) / size; // to starboard while she is upright
        base = -offset / (size * size) * normal;
    }
    [[nodiscard]] double height(const Vector2d& p) const { return normal.dot(p) + offset; }
};

/// Integrals of one section under water; forms as in SectionPiece, counted around the section from the port
/// sheer down, under the keel and up to starboard, then back along the water.
struct SectionSums {
    double area = 0.0, acrossMoment = 0.0, heightMoment = 0.0, skin = 0.0;
    std::array<double, 3> width{};           ///< integrals of 1, s, s^2 along the water line
    double lowest = 1e300, highest = -1e300; ///< s of its ends

    /// Along the water line the three forms have integrals that only its crossings' places decide.
    void cross(const Cut& cut, const Vector2d& at, double entering) {
        const double s = (at - cut.base).dot(cut.along);
        const double y0 = cut.base.x(), z0 = cut.base.y(), dy = cut.along.x(), dz = cut.along.y();
        area += entering * dz * s * (y0 + dy * s / 2);
        acrossMoment += entering * dz / 2 * s * (y0 * y0 + y0 * dy * s + dy * dy * s * s / 3);
        heightMoment += entering * dz * s * (y0 * z0 + (y0 * dz + z0 * dy) * s / 2 + dy * dz * s * s / 3);
        width[0] -= entering * s;
        width[1] -= entering * s * s / 2;
        width[2] -= entering * s * s * s / 3;
        lowest = std::min(lowest, s);
        highest = std::max(highest, s);
    }
    /// A straight, level line from one side to the other: the lid, or the flat under a keel.
    void straight(const Cut& cut, const Vector2d& a, const Vector2d& b) {
        const double ha = cut.height(a), hb = cut.height(b);
        if ((ha < 0) != (hb < 0))
            cross(cut, a + ha / (ha - hb) * (b - a), ha < 0 ? -1.0 : 1.0);
    }
};

/// Parameter at which a piece meets the water, given that its ends lie on either side.
double meeting(const SectionPiece& piece, const Cut& cut, const Vector2d& mirror) {
    double lo = 0.0, hi = 1.0;
    const auto height = [&](double t) { return cut.height(piece.at(t).cwiseProduct(mirror)); };
    const bool dryFirst = height(0.0) >= 0.0;
    double t = 0.5;
    for (int i = 0; i < 60 && hi - lo > 1e-13; ++i) {
        const double h = height(t);
        ((h >= 0.0) == dryFirst ? lo : hi) = t;
        const double rate = cut.normal.dot(piece.slope(t).cwiseProduct(mirror));
        const double next = rate != 0.0 ? t - h / rate : -1.0;
        if (std::abs(next - t) < 1e-14)
            break;
        t = next > lo && next < hi ? next : 0.5 * (lo + hi);
    }
    return t;
}

SectionSums sumsOf(const FloatSection& section, const Cut& cut) {
    SectionSums sums;
    for (const double side : {-1.0, 1.0}) {
        const Vector2d mirror(side, 1.0);
        // port is walked from the sheer down and starboard from the keel up; y changes its sign to port
        const double acrossSign = side < 0 ? 1.0 : -1.0;
        const auto add = [&](const LineSums& part) {
            sums.area -= part.area;
            sums.acrossMoment += acrossSign * part.acrossMoment;
            sums.heightMoment -= part.heightMoment;
            sums.skin += part.skin;
        };
        double before = cut.height(section.pieces.front().from.cwiseProduct(mirror));
        for (const SectionPiece& piece : section.pieces) {
            const double after = cut.height(piece.to.cwiseProduct(mirror));
            if (before < 0 && after < 0) {
                add(piece.whole);
            } else if ((before < 0) != (after < 0)) {
                const double t = meeting(piece, cut, mirror);
                add(before < 0 ? piece.sums(0.0, t) : piece.sums(t, 1.0));
                const double intoWater = before < 0 ? -1.0 : 1.0; // as the piece runs, sheer to keel
                sums.cross(cut, piece.at(t).cwiseProduct(mirror), side < 0 ? intoWater : -intoWater);
            }
            before = after;
        }
    }
    const Vector2d sheer = section.pieces.front().from, keel = section.pieces.back().to;
    const Vector2d port(-1.0, 1.0);
    sums.straight(cut, keel.cwiseProduct(port), keel);
    sums.straight(cut, sheer, sheer.cwiseProduct(port));
    return sums;
}

/// Where a line crosses the water.
template <class Take> void crossings(const std::vector<Vector3d>& line, const WaterPlane& water, Take take) {
    for (std::size_t i = 1; i < line.size(); ++i) {
        const double a = water.height(line[i - 1]), b = water.height(line[i]);
        if ((a < 0) != (b < 0))
            take(Vector3d(line[i - 1] + a / (a - b) * (line[i] - line[i - 1])));
    }
}

/// Area under water of a flat transom, both sides, mm2.
double wettedFace(const std::vector<Vector3d>& edge, const WaterPlane& water) {
    std::vector<Vector3d> ring = edge;
    for (std::size_t i = edge.size(); i-- > 0;)
        ring.emplace_back(edge[i].x(), -edge[i].y(), edge[i].z());
    std::vector<Vector3d> under;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        const Vector3d &a = ring[i], &b = ring[(i + 1) % ring.size()];
        const double ha = water.height(a), hb = water.height(b);
        if (ha < 0)
            under.push_back(a);
        if ((ha < 0) != (hb < 0))
            under.emplace_back(a + ha / (ha - hb) * (b - a));
    }
    Vector3d twice = Vector3d::Zero();
    for (std::size_t i = 2; i < under.size(); ++i)
        twice += (under[i - 1] - under[0]).cross(under[i] - under[0]);
    return 0.5 * twice.norm();
}

} // namespace

Vector3d WaterPlane::up() const noexcept {
    return {-std::sin(trim), -std::cos(trim) * std::sin(heel), std::cos(trim) * std::cos(heel)};
}
Vector3d WaterPlane::upByTrim() const noexcept {
    return {-std::cos(trim), std::sin(trim) * std::sin(heel), -std::sin(trim) * std::cos(heel)};
}
Vector3d WaterPlane::upByHeel() const noexcept {
    return {0.0, -std::cos(trim) * std::cos(heel), -std::cos(trim) * std::sin(heel)};
}
Vector3d WaterPlane::across() const noexcept {
    return {0.0, std::cos(heel), std::sin(heel)};
}
Vector3d WaterPlane::aft() const noexcept {
    return across().cross(up());
}

Submerged submerged(const FloatBody& body, const WaterPlane& water) {
    Submerged result;
    const Vector3d up = water.up();
    const double stretch =
        1.0 / std::hypot(up.y(), up.z()); // of the waterplane against its sections' spacing
    Vector3d moment = Vector3d::Zero(), planeMoment = Vector3d::Zero();
    Eigen::Matrix3d second = Eigen::Matrix3d::Zero();
    const Vector3d aft = water.aft(), across = water.across();
    double foremost = 1e300, aftmost = -1e300;
    Vector3d bow = Vector3d::Zero(), stern = Vector3d::Zero();
    const auto see = [&](const Vector3d& p) {
        const double at = aft.dot(p);
        if (at < foremost) {
            foremost = at;
            bow = p;
        }
        if (at > aftmost) {
            aftmost = at;
            stern = p;
        }
    };
    for (const FloatSection& section : body.sections()) {
        if (section.pieces.empty())
            continue;
        const Cut cut(up, water.level, section.x);
        const SectionSums sums = sumsOf(section, cut);
        const double w = section.weight;
        result.volume += w * sums.area;
        moment += w * Vector3d(section.x * sums.area, sums.acrossMoment, sums.heightMoment);
        result.wettedSkin += w * sums.skin;
        result.largestSection = std::max(result.largestSection, sums.area);
        if (sums.highest <= sums.lowest)
            continue;
        const Vector3d base(section.x, cut.base.x(), cut.base.y()), along(0.0, cut.along.x(), cut.along.y());
        const double dx = w * stretch;
        result.plane += dx * sums.width[0];
        planeMoment += dx * (sums.width[0] * base + sums.width[1] * along);
        second += dx * (sums.width[0] * base * base.transpose() +
                        sums.width[1] * (base * along.transpose() + along * base.transpose()) +
                        sums.width[2] * along * along.transpose());
        const Vector3d low = base + sums.lowest * along, high = base + sums.highest * along;
        result.beam = std::max(result.beam, across.dot(high - low));
        see(low);
        see(high);
    }
    crossings(body.profile(), water, see);
    for (const std::vector<Vector3d>& edge : body.transoms())
        result.wettedTransom += wettedFace(edge, water);
    if (result.volume > 0.0)
        result.centre = moment / result.volume;
    if (result.plane > 0.0) {
        result.planeCentre = planeMoment / result.plane;
        result.planeInertia = second - result.plane * result.planeCentre * result.planeCentre.transpose();
    }
    if (aftmost > foremost) {
        result.length = aftmost - foremost;
        result.bowX = bow.x();
        result.sternX = stern.x();
    }
    return result;
}

Freeboard leastFreeboard(const FloatBody& body, const WaterPlane& water) {
    Freeboard least{1e300, Vector3d::Zero()};
    for (const Vector3d& p : body.sheer())
        for (const double side : {1.0, -1.0}) {
            const Vector3d q(p.x(), side * p.y(), p.z());
            if (const double h = water.height(q); h < least.height)
                least = {h, q};
        }
    return least;
}

double draught(const FloatBody& body, const WaterPlane& water) {
    double deepest = 0.0;
    for (const Vector3d& p : body.profile())
        deepest = std::max(deepest, -water.height(p));
    for (const FloatSection& section : body.sections())
        for (const SectionPiece& piece : section.pieces)
            for (const double side : {1.0, -1.0})
                deepest = std::max(deepest, -water.height({section.x, side * piece.to.x(), piece.to.y()}));
    return deepest;
}

} // namespace sheerlay::core
