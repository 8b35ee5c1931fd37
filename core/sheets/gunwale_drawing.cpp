#include "core/sheets/gunwale_drawing.hpp"

#include "core/sheets/type.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <string>

namespace sheerlay::core {

namespace {

/// One stick of `tall` mm on paper.
class Stick {
public:
    Stick(
        std::vector<Item>& items, const Gunwale& gunwale, double left, double scale, double top, double tall)
        : m_items(items), m_gunwale(gunwale), m_left(left), m_scale(scale), m_top(top), m_tall(tall) {
        const double over = 0.5 * (gunwale.cutLength - gunwale.sheerLength);
        m_items.emplace_back(makeBox({at(-over), m_top, at(gunwale.sheerLength + over), m_top + m_tall},
                                     LineKind::Visible,
                                     colours::bench));
        for (const double end : {0.0, gunwale.sheerLength})
            m_items.emplace_back(makeLine({at(end), m_top}, {at(end), m_top + m_tall}, LineKind::Hidden));
        for (const double s : gunwale.scarfs)
            m_items.emplace_back(makeLine({at(s - gunwale.scarf / 2), m_top},
                                          {at(s + gunwale.scarf / 2), m_top + m_tall},
                                          LineKind::Visible));
    }
    void mark(double s) {
        m_items.emplace_back(
            makeLine({at(s), m_top + 0.3 * m_tall}, {at(s), m_top + 0.7 * m_tall}, LineKind::Visible));
    }
    void opening(double from, double to) {
        m_items.emplace_back(makeBox(
            {at(from), m_top + 0.4 * m_tall, at(to), m_top + m_tall}, LineKind::Thin, colours::white));
    }
    void tick(double s, const std::string& name, double type, double& last) {
        m_items.emplace_back(makeLine({at(s), m_top - 0.3 * type}, {at(s), m_top}, LineKind::Thin));
        const double wide = textWidth(name, type);
        if (at(s) - wide / 2 < last)
            return;
        last = at(s) + wide / 2 + 0.4 * type;
        m_items.emplace_back(
            makeText({at(s), m_top - 0.5 * type}, name, {.size = type, .anchor = Anchor::Middle}));
    }

private:
    [[nodiscard]] double at(double s) const { return m_left + m_scale * s; }

    std::vector<Item>& m_items;
    const Gunwale& m_gunwale;
    double m_left, m_scale, m_top, m_tall;
};

} // namespace

GunwaleDrawing drawGunwales(const Gunwales& g, double width, double type) {
    GunwaleDrawing drawing;
    const double longest = std::max(g.outer.cutLength, g.inner.cutLength);
    const double over =
        0.5 * std::max(g.outer.cutLength - g.outer.sheerLength, g.inner.cutLength - g.inner.sheerLength);
    const double scale = (width - 0.4) / longest, left = 0.2 + scale * over, tall = 1.8 * type;
    double y = 2.6 * type;
    const auto caption = [&](const std::string& words) {
        drawing.items.emplace_back(makeText({0.2, y - 1.7 * type}, words, {.size = type}));
    };
    caption(say("outer, with its screws"));
    Stick outer(drawing.items, g.outer, left, scale, y, tall);
    double last = 0.0;
    for (const GunwaleBevel& b : g.bevels)
        outer.tick(b.alongOuter, b.name, type, last);
    for (const double s : g.screws)
        outer.mark(s);
    y += tall + 3.2 * type;
    caption(g.scuppers ? say("inner, with its scuppers") : say("inner|gunwale"));
    Stick inner(drawing.items, g.inner, left, scale, y, tall);
    last = 0.0;
    for (const GunwaleBevel& b : g.bevels)
        inner.tick(b.alongInner, b.name, type, last);
    if (g.scuppers)
        for (int i = 0; i < g.scuppers->count; ++i) {
            const double from = g.scuppers->first + i * (g.scuppers->opening + g.scuppers->block);
            inner.opening(from, from + g.scuppers->opening);
        }
    drawing.height = y + tall + type;
    return drawing;
}

} // namespace sheerlay::core
