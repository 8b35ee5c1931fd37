#include "core/covering/covered_face.hpp"

#include "core/hull/trimmed_surface.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr std::size_t sectionCount = 80; ///< even along the hull
constexpr std::size_t girthSteps = 24;   ///< even in girth

/// A section brought to a fixed count of points, even in girth.
struct Row {
    double x = 0.0;
    std::vector<SectionPoint> points;
};

Row rowAt(const TrimmedSurface& face, double x) {
    Row row{x, {}};
    const std::vector<SectionPoint> found = sectionWithNormals(face, x, static_cast<int>(2 * girthSteps));
    if (found.size() < 2)
        return row;
    std::vector<double> girth{0.0};
    for (std::size_t i = 1; i < found.size(); ++i)
        girth.push_back(girth.back() + (found[i].point - found[i - 1].point).norm());
    std::size_t at = 1;
    for (std::size_t k = 0; k <= girthSteps; ++k) {
        const double wanted = girth.back() * static_cast<double>(k) / girthSteps;
        while (at + 1 < girth.size() && girth[at] < wanted)
            ++at;
        const double bay = girth[at] - girth[at - 1];
        const double f = bay > 0.0 ? std::clamp((wanted - girth[at - 1]) / bay, 0.0, 1.0) : 0.0;
        row.points.push_back({(1 - f) * found[at - 1].point + f * found[at].point,
                              ((1 - f) * found[at - 1].normal + f * found[at].normal).normalized()});
    }
    return row;
}

/// Signed area of a triangle on the unit sphere (A. Van Oosterom and J. Strackee, 1983; from memory).
double sphereTriangle(const Vector3d& a, const Vector3d& b, const Vector3d& c) {
    return 2 * std::atan2(a.dot(b.cross(c)), 1 + a.dot(b) + b.dot(c) + c.dot(a));
}

struct Bay {
    double area = 0.0, turn = 0.0;
    Vector3d moment = Vector3d::Zero();
};

/// Between two rows: area, its moment, and the Gauss curvature as the area that the normals sweep on the unit
/// sphere.
Bay bayBetween(const Row& a, const Row& b) {
    Bay bay;
    for (std::size_t k = 0; k + 1 < a.points.size(); ++k) {
        const SectionPoint &p = a.points[k], &q = b.points[k], &r = b.points[k + 1], &s = a.points[k + 1];
        const double area = 0.5 * (r.point - p.point).cross(s.point - q.point).norm();
        bay.area += area;
        bay.moment += area * 0.25 * (p.point + q.point + r.point + s.point);
        // u runs aft, v to the keel, outward is u x v: p, q, r, s turn left seen from outside
        bay.turn +=
            sphereTriangle(p.normal, q.normal, r.normal) + sphereTriangle(p.normal, r.normal, s.normal);
    }
    return bay;
}

struct KeelTurn {
    double x = 0.0, turn = 0.0;
};

/// Turn of the profile within the surface at each of its inner points, toward the sheer.
std::vector<KeelTurn> keelTurns(const TrimmedSurface& face) {
    std::vector<KeelTurn> turns;
    const std::vector<Vector2d>& uv = face.outline.profile;
    for (std::size_t i = 1; i + 1 < uv.size(); ++i) {
        const Vector3d normal = face.surface.jet(uv[i].x(), uv[i].y()).normal();
        const auto within = [&](const Vector3d& v) {
            return Vector3d(v - v.dot(normal) * normal).normalized();
        };
        const Vector3d before = within(face.profile[i] - face.profile[i - 1]),
                       after = within(face.profile[i + 1] - face.profile[i]);
        if (!before.allFinite() || !after.allFinite())
            continue;
        turns.push_back(
            {face.profile[i].x(), -std::atan2(before.cross(after).dot(normal), before.dot(after))});
    }
    return turns;
}

double lengthOf(const std::vector<Vector3d>& line) {
    double length = 0.0;
    for (std::size_t i = 1; i < line.size(); ++i)
        length += (line[i] - line[i - 1]).norm();
    return length;
}

} // namespace

CoveredFace measureFace(const TrimmedSurface& face) {
    CoveredFace measured;
    measured.area = 2 * face.halfArea;
    measured.halfGirth = face.halfGirthMax;
    measured.keelLength = lengthOf(face.profile);

    double from = 1e300, to = -1e300;
    for (const auto* line : {&face.sheer, &face.profile})
        for (const Vector3d& p : *line) {
            from = std::min(from, p.x());
            to = std::max(to, p.x());
        }
    std::vector<Row> rows;
    for (std::size_t i = 0; i <= sectionCount; ++i) {
        const double inset = 1e-3; // of a step: the very ends have no section
        const double f = std::clamp(static_cast<double>(i), inset, sectionCount - inset) / sectionCount;
        if (Row row = rowAt(face, from + f * (to - from)); !row.points.empty())
            rows.push_back(std::move(row));
    }
    const auto widest = std::min_element(rows.begin(), rows.end(), [&](const Row& a, const Row& b) {
        return std::abs(a.x - face.halfGirthMaxX) < std::abs(b.x - face.halfGirthMaxX);
    });
    const auto middle = static_cast<std::size_t>(widest - rows.begin());

    double area = 0.0;
    Vector3d moment = Vector3d::Zero();
    std::vector<double> turnOfBay;
    for (std::size_t i = 0; i + 1 < rows.size(); ++i) {
        const Bay bay = bayBetween(rows[i], rows[i + 1]);
        area += bay.area;
        moment += bay.moment;
        turnOfBay.push_back(bay.turn);
    }
    if (area > 0.0)
        measured.centre = {moment.x() / area, 0.0, moment.z() / area};

    const std::vector<KeelTurn> keel = keelTurns(face);
    const auto keelTo = [&](double x) {
        double sum = 0.0;
        for (const KeelTurn& k : keel)
            if (x < rows[middle].x ? k.x >= x && k.x < rows[middle].x : k.x <= x && k.x > rows[middle].x)
                sum += k.turn;
        return sum;
    };
    double sum = 0.0;
    for (std::size_t i = middle; i-- > 0;)
        measured.turns[0].push_back({rows[i].x, sum += turnOfBay[i], keelTo(rows[i].x)});
    sum = 0.0;
    for (std::size_t i = middle; i + 1 < rows.size(); ++i)
        measured.turns[1].push_back({rows[i + 1].x, sum += turnOfBay[i], keelTo(rows[i + 1].x)});

    measured.length = lengthOf(face.sheer);
    for (const std::size_t k : {girthSteps / 4, girthSteps / 2, 3 * girthSteps / 4}) {
        std::vector<Vector3d> line;
        for (const Row& row : rows)
            line.push_back(row.points[k].point);
        measured.length = std::max(measured.length, lengthOf(line));
    }
    return measured;
}

} // namespace sheerlay::core
