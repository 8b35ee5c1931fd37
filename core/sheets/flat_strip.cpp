#include "core/sheets/flat_strip.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace sheerlay::core {

namespace {

using Points = std::vector<Eigen::Vector2d>;

// Height of a polyline over the chord; its first and last segment run on past the ends.
double heightAt(const Points& line, double u) {
    const auto above =
        std::upper_bound(line.begin() + 1, line.end() - 1, u, [](double value, const Eigen::Vector2d& p) {
            return value < p.x();
        });
    const Eigen::Vector2d& a = *(above - 1);
    const Eigen::Vector2d& b = *above;
    const double run = b.x() - a.x();
    return run > 1e-12 ? a.y() + (b.y() - a.y()) * (u - a.x()) / run : a.y();
}

// A line over the chord must not turn back; a step back within the noise of the flattening is left out.
Points forwardOnly(const Points& line) {
    Points forward;
    for (const Eigen::Vector2d& p : line)
        if (forward.empty() || p.x() > forward.back().x() + 1e-9)
            forward.push_back(p);
    return forward;
}

// Middle line between two edges: half way at every vertex of either, over the stretch both reach.
std::vector<Eigen::Vector3d> middleOf(const Points& upper, const Points& lower) {
    const double first = std::max(upper.front().x(), lower.front().x());
    const double last = std::min(upper.back().x(), lower.back().x());
    std::vector<double> places{first, last};
    for (const Points* edge : {&upper, &lower})
        for (const Eigen::Vector2d& p : *edge)
            if (p.x() > first && p.x() < last)
                places.push_back(p.x());
    std::sort(places.begin(), places.end());
    std::vector<Eigen::Vector3d> middle;
    for (const double u : places) {
        const double v = (heightAt(upper, u) + heightAt(lower, u)) / 2;
        if (!middle.empty() && u <= middle.back().x() + 1e-9)
            continue;
        const double s = middle.empty()
                             ? 0.0
                             : middle.back().z() + std::hypot(u - middle.back().x(), v - middle.back().y());
        middle.emplace_back(u, v, s);
    }
    return middle;
}

// Positive where the outline's lower edge lies on the side of growing height.
double signedArea(const Points& outline) {
    double twice = 0.0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Eigen::Vector2d& a = outline[i];
        const Eigen::Vector2d& b = outline[(i + 1) % outline.size()];
        twice += a.x() * b.y() - a.y() * b.x();
    }
    return twice / 2;
}

// Run of the middle past one of its ends, beside the edge that goes on there: a long tip bends as the strip
// does, and set against a straight line it would lie across its neighbours. Outward from the end.
Points runPast(const Points& edge, const Eigen::Vector2d& end, bool stern) {
    constexpr double apart = 1.0; // mm between the end and the run's first point, to step forward only
    const auto beyond = [&](const Eigen::Vector2d& p) { return stern ? p.x() - end.x() : end.x() - p.x(); };
    Points run;
    std::optional<double> across; // from the edge to the middle, square to the edge
    const std::size_t count = edge.size();
    for (std::size_t k = 1; k < count; ++k) {
        const std::size_t i = stern ? k : count - 1 - k;
        if (beyond(edge[i]) <= apart)
            continue;
        const Eigen::Vector2d step = stern ? edge[i] - edge[i - 1] : edge[i + 1] - edge[i];
        const Eigen::Vector2d normal = Eigen::Vector2d(-step.y(), step.x()).normalized();
        if (!across)
            across = (end - edge[i]).dot(normal);
        const Eigen::Vector2d p = edge[i] + *across * normal;
        if (beyond(p) > (run.empty() ? apart : beyond(run.back())))
            run.push_back(p);
    }
    return run;
}

// The middle with its runs past both ends; places along it go on below 0 and past the length.
std::vector<Eigen::Vector3d>
axisOf(const std::vector<Eigen::Vector3d>& middle, const Points& upper, const Points& lower) {
    std::vector<Eigen::Vector3d> axis = middle;
    const Points& sternmost = upper.back().x() >= lower.back().x() ? upper : lower;
    for (const Eigen::Vector2d& p : runPast(sternmost, middle.back().head<2>(), true))
        axis.emplace_back(p.x(), p.y(), axis.back().z() + (p - axis.back().head<2>()).norm());
    const Points& foremost = upper.front().x() <= lower.front().x() ? upper : lower;
    std::vector<Eigen::Vector3d> forward{middle.front()};
    for (const Eigen::Vector2d& p : runPast(foremost, middle.front().head<2>(), false))
        forward.emplace_back(p.x(), p.y(), forward.back().z() - (p - forward.back().head<2>()).norm());
    axis.insert(axis.begin(), forward.rbegin(), forward.rend() - 1);
    return axis;
}

// Segment of the middle that a place belongs to; the outer ones run on.
std::size_t segmentAt(const std::vector<Eigen::Vector3d>& middle, double value, Eigen::Index coordinate) {
    std::size_t i = 0;
    while (i + 2 < middle.size() && middle[i + 1][coordinate] < value)
        ++i;
    return i;
}

Eigen::Vector2d alongAcross(const std::vector<Eigen::Vector3d>& middle, const Eigen::Vector2d& p) {
    // square foot on the middle: start from the same place of the chord, then correct for the slope
    double u = p.x();
    for (int round = 0; round < 3; ++round) {
        const std::size_t i = segmentAt(middle, u, 0);
        const Eigen::Vector3d step = middle[i + 1] - middle[i];
        const Eigen::Vector2d tangent = step.head<2>().normalized();
        const double t = (p - middle[i].head<2>()).dot(tangent);
        u = middle[i].x() + t * tangent.x();
    }
    const std::size_t i = segmentAt(middle, u, 0);
    const Eigen::Vector2d tangent = (middle[i + 1] - middle[i]).head<2>().normalized();
    const Eigen::Vector2d from = p - middle[i].head<2>();
    return {middle[i].z() + from.dot(tangent), tangent.x() * from.y() - tangent.y() * from.x()};
}

} // namespace

FlatStrip layStraight(const Strip& strip) {
    FlatStrip flat;
    const std::size_t upperCount = strip.outlineUpperCount;
    if (upperCount < 2 || strip.outline.size() < upperCount + 2)
        return flat;
    flat.upperCount = upperCount;
    flat.curved = strip.outline;
    const auto split = flat.curved.begin() + static_cast<std::ptrdiff_t>(upperCount);
    if (signedArea(flat.curved) < 0.0) // port: seen from outside it is the mirror image
        for (Eigen::Vector2d& p : flat.curved)
            p.y() = -p.y();

    const Points upper = forwardOnly({flat.curved.begin(), split});
    Points lower(split, flat.curved.end());
    std::reverse(lower.begin(), lower.end());
    lower = forwardOnly(lower);
    if (upper.size() < 2 || lower.size() < 2)
        return {};
    flat.middle = middleOf(upper, lower);
    if (flat.middle.size() < 2)
        return {};

    flat.axis = axisOf(flat.middle, upper, lower);

    // an outline is drawn from its middle's bow end, whatever the cut there
    const double first = alongAcross(flat.axis, Eigen::Vector2d::Zero()).x();
    for (auto* line : {&flat.middle, &flat.axis})
        for (Eigen::Vector3d& m : *line)
            m.z() -= first;
    for (const Eigen::Vector2d& p : flat.curved)
        flat.straight.push_back(alongAcross(flat.axis, p));
    return flat;
}

Eigen::Vector2d FlatStrip::curvedAt(double along, double across) const {
    if (axis.size() < 2)
        return {along, across};
    const std::size_t i = segmentAt(axis, along, 2);
    const Eigen::Vector2d tangent = (axis[i + 1] - axis[i]).head<2>().normalized();
    return axis[i].head<2>() + tangent * (along - axis[i].z()) +
           Eigen::Vector2d(-tangent.y(), tangent.x()) * across;
}

std::vector<StationMark> stationMarks(const Strip& strip, const std::vector<double>& stationX) {
    std::vector<StationMark> marks;
    const std::vector<StripSample>& samples = strip.samples;
    for (std::size_t i = 0; i + 1 < samples.size(); ++i) {
        const StripSample& a = samples[i];
        const StripSample& b = samples[i + 1];
        const bool isLast = i + 2 == samples.size();
        for (std::size_t k = 0; k < stationX.size(); ++k) {
            const double x = stationX[k];
            const double before = x - a.x, after = x - b.x;
            if (before * after > 0.0 || (after == 0.0 && !isLast) || a.x == b.x)
                continue;
            const double t = before / (b.x - a.x);
            marks.push_back({k, a.s + t * (b.s - a.s), a.width + t * (b.width - a.width)});
        }
    }
    std::stable_sort(marks.begin(), marks.end(), [](const StationMark& a, const StationMark& b) {
        return a.along < b.along;
    });
    return marks;
}

double widthAt(const Strip& strip, double along) {
    const std::vector<StripSample>& samples = strip.samples;
    if (samples.empty())
        return 0.0;
    const auto after =
        std::lower_bound(samples.begin(), samples.end(), along, [](const StripSample& sample, double s) {
            return sample.s < s;
        });
    if (after == samples.begin())
        return samples.front().width;
    if (after == samples.end())
        return samples.back().width;
    const StripSample& a = *(after - 1);
    const double t = (along - a.s) / (after->s - a.s);
    return a.width + t * (after->width - a.width);
}

} // namespace sheerlay::core
