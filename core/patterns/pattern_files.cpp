#include "core/patterns/pattern_files.hpp"

#include "core/sheets/sheet_svg.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <array>
#include <string_view>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr int decimals = 4;      // of a millimetre
constexpr double svgMargin = 10; // mm, so that no line is cut off

const char* nameOf(Layer layer) {
    return layer == Layer::Cut ? "cut" : layer == Layer::Mark ? "mark" : "text";
}

std::string number(double value) {
    return numberText(value == 0.0 ? 0.0 : value, decimals);
}

constexpr std::array<std::pair<std::string_view, std::string_view>, 7> twoLetters{{{"\u00E4", "ae"},
                                                                                   {"\u00F6", "oe"},
                                                                                   {"\u00FC", "ue"},
                                                                                   {"\u00C4", "Ae"},
                                                                                   {"\u00D6", "Oe"},
                                                                                   {"\u00DC", "Ue"},
                                                                                   {"\u00DF", "ss"}}};

/// R12 knows no letters beyond ASCII; the degree sign has its own writing there, German letters two.
std::string dxfText(const std::string& text) {
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto c = static_cast<unsigned char>(text[i]);
        if (c == 0xC2 && i + 1 < text.size() && static_cast<unsigned char>(text[i + 1]) == 0xB0) {
            plain += "%%d";
            ++i;
        } else if (const auto letter =
                       i + 1 < text.size()
                           ? std::ranges::find(twoLetters,
                                               text.substr(i, 2),
                                               &std::pair<std::string_view, std::string_view>::first)
                           : twoLetters.end();
                   letter != twoLetters.end()) {
            plain += letter->second;
            ++i;
        } else if (c < 0x80) {
            plain += c < 0x20 ? ' ' : text[i];
        } else if (c >= 0xC0) {
            plain += '?';
        }
    }
    return plain;
}

class Dxf {
public:
    void pair(int code, const std::string& value) { m_text += std::to_string(code) + "\n" + value + "\n"; }
    void point(const Eigen::Vector2d& p) {
        pair(10, number(p.x()));
        pair(20, number(p.y()));
        pair(30, "0.0");
    }
    [[nodiscard]] std::string take() { return std::move(m_text); }

private:
    std::string m_text;
};

} // namespace

std::string toDxf(const Pattern& pattern) {
    Dxf dxf;
    const Box box = extentOf(pattern);
    dxf.pair(0, "SECTION");
    dxf.pair(2, "HEADER");
    dxf.pair(9, "$ACADVER");
    dxf.pair(1, "AC1009");
    dxf.pair(9, "$EXTMIN");
    dxf.point({box.left, box.bottom});
    dxf.pair(9, "$EXTMAX");
    dxf.point({box.right, box.top});
    dxf.pair(0, "ENDSEC");
    dxf.pair(0, "SECTION");
    dxf.pair(2, "TABLES");
    dxf.pair(0, "TABLE");
    dxf.pair(2, "LTYPE");
    dxf.pair(70, "1");
    dxf.pair(0, "LTYPE");
    dxf.pair(2, "CONTINUOUS");
    dxf.pair(70, "0");
    dxf.pair(3, "Solid line");
    dxf.pair(72, "65");
    dxf.pair(73, "0");
    dxf.pair(40, "0.0");
    dxf.pair(0, "ENDTAB");
    dxf.pair(0, "TABLE");
    dxf.pair(2, "LAYER");
    dxf.pair(70, "4");
    constexpr std::array<std::pair<const char*, const char*>, 4> layers{
        {{"0", "7"}, {"cut", "1"}, {"mark", "5"}, {"text", "7"}}};
    for (const auto& [name, colour] : layers) {
        dxf.pair(0, "LAYER");
        dxf.pair(2, name);
        dxf.pair(70, "0");
        dxf.pair(62, colour);
        dxf.pair(6, "CONTINUOUS");
    }
    dxf.pair(0, "ENDTAB");
    dxf.pair(0, "TABLE");
    dxf.pair(2, "STYLE");
    dxf.pair(70, "1");
    dxf.pair(0, "STYLE");
    dxf.pair(2, "STANDARD");
    dxf.pair(70, "0");
    dxf.pair(40, "0.0");
    dxf.pair(41, "1.0");
    dxf.pair(50, "0.0");
    dxf.pair(71, "0");
    dxf.pair(42, "2.5");
    dxf.pair(3, "txt");
    dxf.pair(4, "");
    dxf.pair(0, "ENDTAB");
    dxf.pair(0, "ENDSEC");
    dxf.pair(0, "SECTION");
    dxf.pair(2, "ENTITIES");
    for (const PatternLine& line : pattern.lines) {
        dxf.pair(0, "POLYLINE");
        dxf.pair(8, nameOf(line.layer));
        dxf.pair(66, "1");
        dxf.point({0, 0});
        dxf.pair(70, line.closed ? "1" : "0");
        for (const Eigen::Vector2d& p : line.points) {
            dxf.pair(0, "VERTEX");
            dxf.pair(8, nameOf(line.layer));
            dxf.point(p);
        }
        dxf.pair(0, "SEQEND");
        dxf.pair(8, nameOf(line.layer));
    }
    const Speaking speaking(pattern.language);
    std::vector<PatternText> texts = pattern.texts;
    texts.push_back({{0.5 * (box.left + box.right), box.bottom - 12}, say("units: millimetres"), 5.0});
    for (const PatternText& text : texts) {
        dxf.pair(0, "TEXT");
        dxf.pair(8, "text");
        const double height = text.size * capHeight;
        const double width = textWidth(text.text, text.size);
        dxf.point(text.at - Eigen::Vector2d(width / 2, 0));
        dxf.pair(40, number(height));
        dxf.pair(1, dxfText(text.text));
    }
    dxf.pair(0, "ENDSEC");
    dxf.pair(0, "EOF");
    return dxf.take();
}

std::string toSvg(const Pattern& pattern) {
    const Speaking speaking(pattern.language);
    const Box box = extentOf(pattern);
    const double width = box.right - box.left + 2 * svgMargin;
    const double height = box.top - box.bottom + 2 * svgMargin;
    const auto x = [&](double value) { return number(value - box.left + svgMargin); };
    const auto y = [&](double value) { return number(box.top - value + svgMargin); };
    std::string svg =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" +
        number(width) + "mm\" height=\"" + number(height) + "mm\" viewBox=\"0 0 " + number(width) + " " +
        number(height) + "\">\n<title>" + xmlText(say("{}, millimetres", pattern.title)) + "</title>\n";
    for (const Layer layer : {Layer::Cut, Layer::Mark}) {
        svg += std::string("<g id=\"") + nameOf(layer) + "\" fill=\"none\" stroke-width=\"0.2\" stroke=\"" +
               (layer == Layer::Cut ? "#c4532f" : "#2f5d8a") + "\">\n";
        for (const PatternLine& line : pattern.lines) {
            if (line.layer != layer)
                continue;
            svg += line.closed ? "<polygon points=\"" : "<polyline points=\"";
            for (std::size_t i = 0; i < line.points.size(); ++i)
                svg += (i > 0 ? " " : "") + x(line.points[i].x()) + "," + y(line.points[i].y());
            svg += "\"/>\n";
        }
        svg += "</g>\n";
    }
    svg += "<g id=\"text\" font-family=\"sans-serif\" text-anchor=\"middle\">\n";
    for (const PatternText& text : pattern.texts)
        svg += "<text x=\"" + x(text.at.x()) + "\" y=\"" + y(text.at.y()) + "\" font-size=\"" +
               number(text.size) + "\">" + xmlText(text.text) + "</text>\n";
    return svg + "</g>\n</svg>\n";
}

} // namespace sheerlay::core
