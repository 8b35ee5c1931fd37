#include "core/sheets/sheet_svg.hpp"

#include "core/sheets/type.hpp"
#include "core/units/number_text.hpp"

#include <cstdio>
#include <numbers>

namespace sheerlay::core {

namespace {

std::string number(double value) {
    const std::string text = numberText(value, 3);
    return text == "-0.000" ? "0.000" : text;
}

std::string hex(const Colour& c) {
    char text[8];
    std::snprintf(text, sizeof text, "#%02x%02x%02x", c.red, c.green, c.blue);
    return text;
}

/// Dashes as ui/paper draws them, in widths of the line.
std::string dashes(LineKind kind) {
    const double w = lineWidth(kind);
    const auto lengths = [w](std::initializer_list<double> parts) {
        std::string text;
        for (const double part : parts)
            text += (text.empty() ? "" : " ") + number(part * w);
        return " stroke-dasharray=\"" + text + "\"";
    };
    return kind == LineKind::Centre   ? lengths({24, 3, 1, 3})
           : kind == LineKind::Hidden ? lengths({8, 4})
                                      : std::string();
}

std::string svgOf(const Path& path) {
    std::string text = path.closed ? "<polygon points=\"" : "<polyline points=\"";
    for (std::size_t i = 0; i < path.points.size(); ++i)
        text += (i > 0 ? " " : "") + number(path.points[i].x()) + "," + number(path.points[i].y());
    text += "\" fill=\"" + (path.fill ? hex(*path.fill) : std::string("none")) + "\"";
    if (path.line != LineKind::None)
        text += " stroke=\"" + hex(path.colour) + "\" stroke-width=\"" + number(lineWidth(path.line)) + "\"" +
                dashes(path.line);
    return text + "/>\n";
}

std::string svgOf(const Text& line) {
    const double width = textWidth(line.runs, line.size, line.weight);
    const double start = line.anchor == Anchor::Left     ? 0.0
                         : line.anchor == Anchor::Middle ? -width / 2
                                                         : -width;
    std::string text = "<g transform=\"translate(" + number(line.at.x()) + " " + number(line.at.y()) + ")";
    if (line.rotation != 0.0)
        text += " rotate(" + number(line.rotation * 180.0 / std::numbers::pi) + ")";
    text += "\" fill=\"" + hex(line.colour) + "\"";
    if (line.weight != Weight::Regular)
        text += std::string(" font-weight=\"") + (line.weight == Weight::Bold ? "700" : "600") + "\"";
    text += ">";
    for (const PlacedRun& run : place(line.runs, line.size, line.weight))
        text += "<text x=\"" + number(start + run.offset) + "\" y=\"" + number(-run.raise) +
                "\" font-size=\"" + number(run.size) + "\" xml:space=\"preserve\">" + xmlText(run.text) +
                "</text>";
    return text + "</g>\n";
}

} // namespace

std::string xmlText(std::string_view text) {
    std::string safe;
    for (const char c : text)
        safe += c == '&'   ? "&amp;"
                : c == '<' ? "&lt;"
                : c == '>' ? "&gt;"
                : c == '"' ? "&quot;"
                           : std::string(1, c);
    return safe;
}

std::string toSvg(const Sheet& sheet) {
    std::string svg =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" +
        number(sheet.width) + "mm\" height=\"" + number(sheet.height) + "mm\" viewBox=\"0 0 " +
        number(sheet.width) + " " + number(sheet.height) + "\">\n<title>" + xmlText(sheet.title) +
        "</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n" +
        "<g font-family=\"Inter, sans-serif\" stroke-linejoin=\"round\">\n";
    for (const Item& item : sheet.items)
        svg += std::visit([](const auto& value) { return svgOf(value); }, item);
    return svg + "</g>\n</svg>\n";
}

} // namespace sheerlay::core
