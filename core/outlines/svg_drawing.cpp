#include "core/outlines/svg_drawing.hpp"

#include "core/outlines/svg_path.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <cstring>
#include <map>
#include <numbers>
#include <pugixml.hpp>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr int deepest = 60; // groups within groups; no drawing nests further

/// x' = a x + c y + e, y' = b x + d y + f
struct Transform {
    double a = 1.0, b = 0.0, c = 0.0, d = 1.0, e = 0.0, f = 0.0;

    [[nodiscard]] DrawnPoint of(DrawnPoint p) const { return {a * p.x + c * p.y + e, b * p.x + d * p.y + f}; }
    /// This one after the other.
    [[nodiscard]] Transform after(const Transform& o) const {
        return {a * o.a + c * o.b,
                b * o.a + d * o.b,
                a * o.c + c * o.d,
                b * o.c + d * o.d,
                a * o.e + c * o.f + e,
                b * o.e + d * o.f + f};
    }
};

/// One of "translate(3 4)" and its like; the identity for what is not known.
Transform single(std::string_view name, const std::vector<double>& n) {
    constexpr double degree = std::numbers::pi / 180;
    if (name == "matrix" && n.size() == 6)
        return {n[0], n[1], n[2], n[3], n[4], n[5]};
    if (name == "translate" && !n.empty())
        return {1, 0, 0, 1, n[0], n.size() > 1 ? n[1] : 0.0};
    if (name == "scale" && !n.empty())
        return {n[0], 0, 0, n.size() > 1 ? n[1] : n[0], 0, 0};
    if (name == "skewX" && !n.empty())
        return {1, 0, std::tan(n[0] * degree), 1, 0, 0};
    if (name == "skewY" && !n.empty())
        return {1, std::tan(n[0] * degree), 0, 1, 0, 0};
    if (name == "rotate" && !n.empty()) {
        const double cos = std::cos(n[0] * degree);
        const double sin = std::sin(n[0] * degree);
        const Transform turn{cos, sin, -sin, cos, 0, 0};
        if (n.size() < 3)
            return turn;
        const Transform there{1, 0, 0, 1, n[1], n[2]};
        const Transform back{1, 0, 0, 1, -n[1], -n[2]};
        return there.after(turn).after(back);
    }
    return {};
}

Transform transformOf(std::string_view text) {
    Transform all;
    while (!text.empty()) {
        const auto open = text.find('(');
        const auto close = text.find(')');
        if (open == std::string_view::npos || close == std::string_view::npos || close < open)
            break;
        std::string_view name = text.substr(0, open);
        while (!name.empty() && (name.front() < 'a' || name.front() > 'z'))
            name.remove_prefix(1);
        while (!name.empty() && name.back() == ' ')
            name.remove_suffix(1);
        all = all.after(single(name, svgNumbers(text.substr(open + 1, close - open - 1))));
        text.remove_prefix(close + 1);
    }
    return all;
}

/// A length with a unit that means the same everywhere; pixels do not.
std::optional<double> millimetres(const char* text) {
    char* end = nullptr;
    const double value = std::strtod(text, &end);
    if (end == text || !(value > 0.0) || !std::isfinite(value))
        return std::nullopt;
    constexpr std::array<std::pair<const char*, double>, 3> units{{{"mm", 1.0}, {"cm", 10.0}, {"in", 25.4}}};
    for (const auto& [name, size] : units)
        if (std::strcmp(end, name) == 0)
            return value * size;
    return std::nullopt;
}

/// Whether a part is not to be seen: a layer that was hidden when the drawing was saved.
bool hidden(const pugi::xml_node& node) {
    std::string style = node.attribute("style").value();
    std::erase(style, ' ');
    return style.find("display:none") != std::string::npos ||
           std::string_view(node.attribute("display").value()) == "none";
}

class SvgReader {
public:
    Drawing read(const pugi::xml_node& root) {
        const auto box = svgNumbers(root.attribute("viewBox").value());
        const auto width = millimetres(root.attribute("width").value());
        if (width && box.size() == 4 && box[2] > 0.0)
            m_drawing.millimetres = *width / box[2];
        children(root, {}, {}, 0);
        for (const auto& [name, count] : m_leftOut)
            m_drawing.leftOut.push_back(std::to_string(count) + " " + name);
        return std::move(m_drawing);
    }

private:
    void children(const pugi::xml_node& parent,
                  const Transform& outer,
                  const std::vector<std::string>& groups,
                  int depth) {
        for (const pugi::xml_node& node : parent.children()) {
            if (node.type() != pugi::node_element)
                continue;
            if (hidden(node)) {
                ++m_leftOut["hidden"];
                continue;
            }
            const std::string name = node.name();
            std::vector<std::string> names;
            for (const char* key : {"inkscape:label", "id"})
                if (const auto label = node.attribute(key))
                    names.emplace_back(label.value());
            names.insert(names.end(), groups.begin(), groups.end());
            const Transform transform = outer.after(transformOf(node.attribute("transform").value()));
            if (name == "g" || name == "svg" || name == "a" || name == "switch") {
                if (depth < deepest)
                    children(node, transform, names, depth + 1);
                else
                    ++m_leftOut["group"];
            } else {
                element(node, name, transform, names);
            }
        }
    }

    void element(const pugi::xml_node& node,
                 const std::string& name,
                 const Transform& transform,
                 const std::vector<std::string>& names) {
        std::vector<std::vector<DrawnPoint>> curves;
        if (name == "path") {
            curves = svgPath(node.attribute("d").value());
        } else if (name == "polyline" || name == "polygon") {
            const auto numbers = svgNumbers(node.attribute("points").value());
            std::vector<DrawnPoint> points;
            for (std::size_t i = 0; i + 1 < numbers.size(); i += 2)
                points.push_back({numbers[i], numbers[i + 1]});
            if (name == "polygon" && !points.empty())
                points.push_back(points.front());
            curves.push_back(std::move(points));
        } else if (name == "line") {
            curves.push_back({{node.attribute("x1").as_double(), node.attribute("y1").as_double()},
                              {node.attribute("x2").as_double(), node.attribute("y2").as_double()}});
        } else if (name == "rect" || name == "circle" || name == "ellipse" || name == "text" ||
                   name == "image" || name == "use") {
            ++m_leftOut[name];
            return;
        }
        for (auto& points : curves) {
            bool finite = points.size() >= 2;
            for (DrawnPoint& point : points) {
                point = transform.of(point);
                point.y = -point.y;
                finite = finite && std::isfinite(point.x) && std::isfinite(point.y);
            }
            if (finite)
                m_drawing.curves.push_back({names, std::move(points)});
        }
    }

    Drawing m_drawing;
    std::map<std::string, int> m_leftOut;
};

} // namespace

Expected<Drawing, FileMessage> readSvg(std::string_view text, const std::string& file) {
    pugi::xml_document document;
    const auto result = document.load_buffer(text.data(), text.size());
    if (!result) {
        const auto end = static_cast<std::size_t>(result.offset) < text.size()
                             ? static_cast<std::size_t>(result.offset)
                             : text.size();
        const auto lines = std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(end), '\n');
        return unexpected(FileMessage{file,
                                      static_cast<int>(lines) + 1,
                                      "file",
                                      "no XML from here on (" + std::string(result.description()) + ")",
                                      "an SVG file as drawing programs save it"});
    }
    const pugi::xml_node root = document.document_element();
    if (std::string_view(root.name()) != "svg")
        return unexpected(
            FileMessage{file, 1, "file", "XML, but no SVG", "an SVG file as drawing programs save it"});
    return SvgReader().read(root);
}

} // namespace sheerlay::core
