#include "core/outlines/dxf_drawing.hpp"

#include "core/units/length_text.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <map>
#include <numbers>
#include <set>

namespace sheerlay::core {

namespace {

/// A group code with its value: two lines of the file.
struct Pair {
    int code = 0;
    std::string value;
    int line = 0;

    [[nodiscard]] double number() const {
        const double read = std::strtod(value.c_str(), nullptr);
        return std::isfinite(read) ? read : 0.0;
    }
};

/// One entity: its name and everything that follows.
struct Entity {
    std::string name;
    std::vector<Pair> pairs;

    [[nodiscard]] double first(int code, double otherwise = 0.0) const {
        const auto found = std::ranges::find(pairs, code, &Pair::code);
        return found == pairs.end() ? otherwise : found->number();
    }
    [[nodiscard]] int flags() const { return static_cast<int>(std::clamp(first(70), 0.0, 255.0)); }
    [[nodiscard]] std::string text(int code) const {
        const auto found = std::ranges::find(pairs, code, &Pair::code);
        return found == pairs.end() ? std::string() : found->value;
    }
};

Expected<std::vector<Pair>, FileMessage> pairsOf(std::string_view text, const std::string& file) {
    std::vector<Pair> pairs;
    int line = 0;
    const auto next = [&] {
        const auto end = text.find('\n');
        std::string taken = trimmed(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        ++line;
        return taken;
    };
    while (!text.empty()) {
        const std::string code = next();
        if (code.empty() && text.empty())
            break; // an empty line at the end
        if (code.empty() || code.size() > 5 || code.find_first_not_of("-0123456789") != std::string::npos)
            return unexpected(FileMessage{file,
                                          line,
                                          "file",
                                          quoted(code) + " where a group code should be",
                                          "a DXF file saved as text (ASCII)"});
        Pair pair{static_cast<int>(std::strtol(code.c_str(), nullptr, 10)), "", line + 1};
        pair.value = next();
        pairs.push_back(std::move(pair));
    }
    return pairs;
}

/// Millimetres to the unit of $INSUNITS; none for 0 and what no boat is drawn in.
std::optional<double> unitOf(int insunits) {
    switch (insunits) {
    case 1:
        return 25.4;
    case 2:
        return 304.8;
    case 4:
        return 1.0;
    case 5:
        return 10.0;
    case 6:
        return 1000.0;
    default:
        return std::nullopt;
    }
}

/// An arc between two corners; a bulge is the tangent of a quarter of its angle, + counter-clockwise.
void addBulge(std::vector<DrawnPoint>& points, DrawnPoint to, double bulge) {
    constexpr double straight = 1e-9;
    if (points.empty() || std::abs(bulge) < straight) {
        points.push_back(to);
        return;
    }
    const DrawnPoint from = points.back();
    const double sweep = 4 * std::atan(bulge);
    const double h = (1 / bulge - bulge) / 4; // of the chord, from its middle to the centre, to the left
    const DrawnPoint centre{(from.x + to.x) / 2 - h * (to.y - from.y),
                            (from.y + to.y) / 2 + h * (to.x - from.x)};
    const double radius = std::hypot(from.x - centre.x, from.y - centre.y);
    auto arc = arcPoints(centre, radius, radius, std::atan2(from.y - centre.y, from.x - centre.x), sweep);
    arc.back() = to;
    points.insert(points.end(), arc.begin() + 1, arc.end());
}

/// Corners with their bulges, each that of the side behind it.
struct Corner {
    DrawnPoint at;
    double bulge = 0.0;
};

std::vector<DrawnPoint> polyline(const std::vector<Corner>& corners, bool closed) {
    std::vector<DrawnPoint> points;
    for (std::size_t i = 0; i < corners.size(); ++i)
        addBulge(points, corners[i].at, i > 0 ? corners[i - 1].bulge : 0.0);
    if (closed && corners.size() > 1)
        addBulge(points, corners.front().at, corners.back().bulge);
    return points;
}

std::vector<Corner> cornersOf(const Entity& entity) {
    std::vector<Corner> corners;
    for (const Pair& pair : entity.pairs) {
        if (pair.code == 10)
            corners.push_back({{pair.number(), 0.0}, 0.0});
        else if (pair.code == 20 && !corners.empty())
            corners.back().at.y = pair.number();
        else if (pair.code == 42 && !corners.empty())
            corners.back().bulge = pair.number();
    }
    return corners;
}

std::vector<DrawnPoint> spline(const Entity& entity) {
    DrawnSpline read;
    read.degree = static_cast<int>(std::clamp(entity.first(71, 3), 0.0, 99.0));
    std::vector<DrawnPoint> through;
    for (const Pair& pair : entity.pairs) {
        if (pair.code == 40)
            read.knots.push_back(pair.number());
        else if (pair.code == 41)
            read.weights.push_back(pair.number());
        else if (pair.code == 10)
            read.poles.push_back({pair.number(), 0.0});
        else if (pair.code == 20 && !read.poles.empty())
            read.poles.back().y = pair.number();
        else if (pair.code == 11)
            through.push_back({pair.number(), 0.0});
        else if (pair.code == 21 && !through.empty())
            through.back().y = pair.number();
    }
    // Some programs write only the points it was drawn through; they lie on the curve, and are used alone.
    return read.poles.empty() ? through : splinePoints(read);
}

bool leavesThePlane(const Entity& entity) {
    std::optional<double> z;
    for (const Pair& pair : entity.pairs) {
        if (pair.code != 30 && pair.code != 31)
            continue;
        if (z && std::abs(*z - pair.number()) > 1e-6)
            return true;
        z = pair.number();
    }
    return false;
}

/// A layer that was off (a negative colour) or frozen when the drawing was saved.
bool isHidden(const Entity& layer) {
    constexpr int frozen = 1;
    return layer.first(62) < 0.0 || (layer.flags() & frozen) != 0;
}

/// Goes through the entities of the drawing.
class DxfReader {
public:
    DxfReader(const std::vector<Pair>& pairs, const std::string& file) : m_pairs(pairs), m_file(file) {}

    Expected<Drawing, FileMessage> read() {
        std::string section;
        for (std::size_t i = 0; i < m_pairs.size();) {
            const Pair& pair = m_pairs[i];
            if (pair.code != 0) {
                ++i;
                continue;
            }
            Entity entity{pair.value, {}};
            const int line = pair.line;
            for (++i; i < m_pairs.size() && m_pairs[i].code != 0; ++i)
                entity.pairs.push_back(m_pairs[i]);
            if (entity.name == "SECTION" && !entity.pairs.empty()) {
                section = entity.pairs.front().value;
                for (std::size_t k = 0; k + 1 < entity.pairs.size(); ++k)
                    if (entity.pairs[k].code == 9 && entity.pairs[k].value == "$INSUNITS")
                        m_drawing.millimetres =
                            unitOf(static_cast<int>(std::clamp(entity.pairs[k + 1].number(), 0.0, 99.0)));
            } else if (entity.name == "ENDSEC") {
                section.clear();
            } else if (section == "TABLES" && entity.name == "LAYER") {
                if (isHidden(entity))
                    m_hidden.insert(entity.text(2));
            } else if (section == "ENTITIES" && m_hidden.contains(entity.text(8))) {
                ++m_leftOut["hidden"];
            } else if (section == "ENTITIES") {
                if (leavesThePlane(entity))
                    return unexpected(FileMessage{m_file,
                                                  line,
                                                  entity.text(8),
                                                  "a curve that leaves the plane of the drawing",
                                                  "half sections drawn flat, seen along the boat"});
                take(entity);
            }
        }
        for (const auto& [name, count] : m_leftOut)
            m_drawing.leftOut.push_back(std::to_string(count) + " " + name);
        return std::move(m_drawing);
    }

private:
    void add(const Entity& entity, std::vector<DrawnPoint> points) {
        // Drawn seen from behind: x runs the other way.
        if (entity.first(230, 1.0) < 0.0 && entity.name != "LINE" && entity.name != "SPLINE")
            for (DrawnPoint& point : points)
                point.x = -point.x;
        if (points.size() >= 2)
            m_drawing.curves.push_back({{entity.text(8)}, std::move(points)});
        else
            ++m_leftOut[entity.name];
    }

    void take(const Entity& entity) {
        constexpr double degree = std::numbers::pi / 180;
        if (entity.name == "VERTEX") {
            const DrawnPoint at{entity.first(10), entity.first(20)};
            constexpr int helper = 16; // a control point of a polyline that was smoothed
            if ((entity.flags() & helper) == 0)
                m_corners.push_back({at, entity.first(42)});
        } else if (entity.name == "POLYLINE") {
            m_polyline = entity;
            m_corners.clear();
        } else if (entity.name == "SEQEND") {
            if (m_polyline.name == "POLYLINE")
                add(m_polyline, polyline(m_corners, (m_polyline.flags() & 1) != 0));
            m_polyline = {};
        } else if (entity.name == "LINE") {
            add(entity, {{entity.first(10), entity.first(20)}, {entity.first(11), entity.first(21)}});
        } else if (entity.name == "ARC") {
            const double from = entity.first(50) * degree;
            double sweep = std::fmod(entity.first(51) * degree - from, 2 * std::numbers::pi);
            sweep += sweep <= 0.0 ? 2 * std::numbers::pi : 0.0;
            const double radius = entity.first(40);
            add(entity, arcPoints({entity.first(10), entity.first(20)}, radius, radius, from, sweep));
        } else if (entity.name == "LWPOLYLINE") {
            add(entity, polyline(cornersOf(entity), (entity.flags() & 1) != 0));
        } else if (entity.name == "SPLINE") {
            add(entity, spline(entity));
        } else {
            ++m_leftOut[entity.name];
        }
    }

    const std::vector<Pair>& m_pairs;
    const std::string& m_file;
    Drawing m_drawing;
    Entity m_polyline;
    std::vector<Corner> m_corners;
    std::map<std::string, int> m_leftOut;
    std::set<std::string> m_hidden; ///< layers
};

} // namespace

Expected<Drawing, FileMessage> readDxf(std::string_view text, const std::string& file) {
    if (text.find('\0') != std::string_view::npos)
        return unexpected(
            FileMessage{file, 0, "file", "a binary drawing", "a DXF file saved as text (ASCII)"});
    const auto pairs = pairsOf(text, file);
    if (!pairs)
        return unexpected(pairs.error());
    return DxfReader(*pairs, file).read();
}

} // namespace sheerlay::core
