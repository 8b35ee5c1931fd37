#include "core/sheets/strip_drawing.hpp"

#include "core/sheets/page.hpp"
#include "core/sheets/words.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

namespace sheerlay::core {

namespace {

std::string ratio(double value) {
    char buffer[32];
    std::snprintf(buffer, sizeof buffer, "%.1f", value);
    std::string text = buffer;
    if (text.ends_with(".0"))
        text.resize(text.size() - 2);
    return withDecimalMark(text);
}

// Scales are whole numbers, halves below ten, so that what is printed beside a drawing is how it is drawn.
double stepOf(double value) {
    return value < 9.5 ? 0.5 : 1.0;
}

// Part of a polyline (along, across) between two places along it; cut ends are interpolated.
std::vector<Eigen::Vector2d> between(const std::vector<Eigen::Vector2d>& line, double from, double to) {
    std::vector<Eigen::Vector2d> part;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (i > 0)
            for (const double cut : {std::min(from, to), std::max(from, to)}) {
                const Eigen::Vector2d& a = line[i - 1];
                const Eigen::Vector2d& b = line[i];
                if ((a.x() - cut) * (b.x() - cut) < 0.0)
                    part.push_back(a + (b - a) * ((cut - a.x()) / (b.x() - a.x())));
            }
        if (line[i].x() >= from && line[i].x() <= to)
            part.push_back(line[i]);
    }
    return part;
}

// A short break line: the strip goes on.
Path breakLine(double x, double top, double bottom) {
    const double step = (bottom - top) / 4;
    Path path;
    path.line = LineKind::Thin;
    path.points = {{x, top - 1.0},
                   {x, top + step},
                   {x - 1.0, top + 1.5 * step},
                   {x + 1.0, top + 2.5 * step},
                   {x, top + 3 * step},
                   {x, bottom + 1.0}};
    return path;
}

} // namespace

Drawing drawStrip(const FlatStrip& flat,
                  const std::vector<NamedMark>& marks,
                  double width,
                  double height,
                  double scale,
                  Colour fill,
                  const std::vector<double>& scarfs) {
    Drawing drawing;
    drawing.height = height;
    if (flat.straight.empty())
        return drawing;
    const double small = typeSize::small * scale;

    double first = 1e9, last = -1e9, sagTop = 1e9, sagBottom = -1e9, across = 0.0;
    for (const Eigen::Vector3d& m : flat.middle) {
        sagTop = std::min(sagTop, m.y());
        sagBottom = std::max(sagBottom, m.y());
    }
    for (std::size_t i = 0; i < flat.curved.size(); ++i) {
        first = std::min(first, flat.curved[i].x());
        last = std::max(last, flat.curved[i].x());
        across = std::max(across, std::abs(flat.straight[i].y()));
    }
    const double endWords =
        std::max(textWidth(toText(End::Bow), small), textWidth(toText(End::Stern), small)) + 2.0 * scale;
    const double fitting = std::max(1.0, (last - first) / (width - 2 * endWords));
    const double reduced = std::ceil(fitting / stepOf(fitting)) * stepOf(fitting), along = 1.0 / reduced;
    const double spare = (width - 2 * endWords - (last - first) * along) / 2;
    const double namesHeight = 2 * 1.4 * small + 2.0 * scale, bandHeight = 8.0 * scale;
    const double sagRoom = std::max(2.0, height - namesHeight - bandHeight - 2.0 * scale);
    const double sagScale = std::min(along, sagRoom / std::max(1e-9, sagBottom - sagTop));
    const double wider = std::max(1.0, bandHeight / std::max(1.0, 2 * across) / along);
    const double widened = std::floor(wider / stepOf(wider)) * stepOf(wider), widthScale = widened * along;
    const double midTop = namesHeight + bandHeight / 2 + (sagRoom - (sagBottom - sagTop) * sagScale) / 2;

    const auto heightOfMiddle = [&](double s) {
        return midTop + (sagBottom - flat.curvedAt(s, 0.0).y()) * sagScale;
    };
    const auto onPaper = [&](double s, double d) {
        const Eigen::Vector2d m = flat.curvedAt(s, 0.0);
        return Eigen::Vector2d(spare + endWords + (m.x() - first) * along,
                               heightOfMiddle(s) - d * widthScale);
    };

    Path outline;
    outline.closed = true;
    outline.fill = fill;
    for (const Eigen::Vector2d& p : flat.straight)
        outline.points.push_back(onPaper(p.x(), p.y()));
    drawing.items.emplace_back(std::move(outline));

    Path middle;
    middle.line = LineKind::Centre;
    middle.colour = colours::pencil;
    for (const Eigen::Vector3d& m : flat.middle)
        middle.points.push_back(onPaper(m.z(), 0.0));
    drawing.items.emplace_back(std::move(middle));

    // names in two storeys; one that finds no room in either is left to the table
    std::array<double, 2> occupied{-1e9, -1e9};
    for (const NamedMark& named : marks) {
        const double half = named.mark.width / 2; // to the sheer side, below in the picture
        const Eigen::Vector2d foot = onPaper(named.mark.along, -half);
        const double nameWidth = textWidth(named.name, small);
        const double left = std::clamp(foot.x() - nameWidth / 2, 0.0, width - nameWidth);
        const std::size_t storey = left > occupied[1] ? 1 : 0;
        double lineTop = namesHeight - 0.6 * scale;
        if (left > occupied[storey]) {
            occupied[storey] = left + nameWidth + 1.0 * scale;
            const double baseline = storey == 1 ? 2 * 1.4 * small : 1.4 * small - 0.3 * small;
            drawing.items.emplace_back(makeText({left, baseline}, named.name, {.size = small}));
            if (storey == 0 && foot.x() > occupied[1])
                lineTop = baseline + 0.4 * small;
        }
        drawing.items.emplace_back(makeLine({foot.x(), lineTop}, foot, LineKind::Thin, colours::lineBlue));
    }
    const double stroke = 0.7 * bandHeight; // both ends run past the edges, so that it shows
    for (const double scarf : scarfs) {
        const Eigen::Vector2d up(1.5 * scale, -stroke), foot = onPaper(scarf, 0.0);
        drawing.items.emplace_back(makeLine(foot - up, foot + up, LineKind::Visible));
    }
    const double reach = scarfs.empty() ? bandHeight / 2 : stroke;
    drawing.height = std::max(height, midTop + (sagBottom - sagTop) * sagScale + reach + 0.5 * scale);

    const double bowHeight = heightOfMiddle(0.0) + small * capHeight / 2;
    const double sternHeight = heightOfMiddle(flat.middle.back().z()) + small * capHeight / 2;
    drawing.items.emplace_back(makeText({spare, bowHeight}, toText(End::Bow), {.size = small}));
    drawing.items.emplace_back(
        makeText({width - spare, sternHeight}, toText(End::Stern), {.size = small, .anchor = Anchor::Right}));

    drawing.caption =
        say("Unsprung, seen from outside as the boat lies on the moulds: keel side up, bow to "
            "the left.") +
        " " +
        (sagScale < 0.995 * along
             ? say("Drawn 1:{}, the width {} times wider, the curve flatter.", ratio(reduced), ratio(widened))
             : say("Drawn 1:{}, the width {} times wider.", ratio(reduced), ratio(widened)));
    if (!scarfs.empty())
        drawing.caption += " " + (scarfs.size() == 1 ? say("A slanted stroke: the scarf.")
                                                     : say("Slanted strokes: scarfs."));
    return drawing;
}

Drawing drawEnd(const FlatStrip& flat, const StripEnd& end, double thickness, double width, double scale) {
    Drawing drawing;
    if (flat.straight.empty())
        return drawing;
    const bool bow = end.end == End::Bow;
    const double small = typeSize::small * scale;
    const auto split = flat.straight.begin() + static_cast<std::ptrdiff_t>(flat.upperCount);
    std::vector<Eigen::Vector2d> upper(flat.straight.begin(), split), lower(split, flat.straight.end());
    std::reverse(lower.begin(), lower.end());

    // from here on both ends point to the left, as the bow does; the stern is turned over when it is placed
    double tip = 1e9, shoulder = -1e9, across = 0.0;
    if (!bow) {
        for (auto* edge : {&upper, &lower}) {
            std::reverse(edge->begin(), edge->end());
            for (Eigen::Vector2d& p : *edge)
                p.x() = -p.x();
        }
    }
    for (const auto* edge : {&upper, &lower}) {
        tip = std::min(tip, edge->front().x());
        shoulder = std::max(shoulder, edge->front().x());
    }
    const double farEnd = std::max(upper.back().x(), lower.back().x());
    const double sideRoom = 26.0 * scale;
    const double room = width - sideRoom - 4.0 * scale;
    const double tail = 9.0;
    const double needed = shoulder - tip + end.lap + tail;
    double reduction = 1.0;
    for (const double step : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0}) {
        reduction = step;
        if (needed / step <= room)
            break;
    }
    const double shown = std::min({room * reduction, needed + tail, end.lap + farEnd - tip + 1.0});
    const double from = tip - 1e-6, to = tip - end.lap + shown;
    for (const auto* edge : {&upper, &lower})
        for (const Eigen::Vector2d& p : between(*edge, from, to))
            across = std::max(across, std::abs(p.y()));

    const double middle = across / reduction + 0.8;
    const auto face = [&](const Eigen::Vector2d& p) {
        const double x = (p.x() - tip + end.lap) / reduction + 0.5;
        return Eigen::Vector2d(bow ? x : width - x, middle - p.y() / reduction);
    };
    Path outline;
    outline.line = LineKind::Visible;
    std::vector<Eigen::Vector2d> above = between(upper, from, to), below = between(lower, from, to);
    std::reverse(above.begin(), above.end());
    for (const auto* part : {&above, &below})
        for (const Eigen::Vector2d& p : *part)
            outline.points.push_back(face(p));
    drawing.items.emplace_back(outline);
    if (to < farEnd) {
        const double x = face({to, 0.0}).x();
        drawing.items.emplace_back(breakLine(x, middle - across / reduction, middle + across / reduction));
    }
    if (end.lap > 0.5) {
        Path lap;
        lap.line = LineKind::Hidden;
        const Eigen::Vector2d a = upper.front(), b = lower.front(), by(-end.lap, 0.0);
        lap.points = {face(a), face(a + by), face(b + by), face(b)};
        drawing.items.emplace_back(lap);
    }
    // the line the end is fitted to, a little beyond both edges
    const Eigen::Vector2d a = face(upper.front()), b = face(lower.front());
    const Eigen::Vector2d direction =
        (b - a).norm() > 1e-9 ? Eigen::Vector2d((b - a).normalized()) : Eigen::Vector2d(0.0, 1.0);
    drawing.items.emplace_back(
        makeLine(a - direction * 0.8, b + direction * 0.8, LineKind::Centre, colours::lineBlue));

    // the edge: outside above, inside below; at stem and keel the outside is the longer
    const double side = bow ? width - sideRoom : 0.0;
    const double t = std::max(thickness, 1.0);
    const double slope = std::min(t * std::tan(std::min(std::abs(end.bevel), 1.2)), sideRoom * 0.6);
    const double top = 1.4 * small + 1.0;
    const auto edgePoint = [&](double x, double y) {
        return Eigen::Vector2d(side + (bow ? x : sideRoom - x), top + y);
    };
    Path edge;
    edge.points = {edgePoint(sideRoom - 2.0, 0.0),
                   edgePoint(0.5, 0.0),
                   edgePoint(0.5 + slope, t),
                   edgePoint(sideRoom - 2.0, t)};
    drawing.items.emplace_back(edge);
    drawing.items.emplace_back(breakLine(edgePoint(sideRoom - 2.0, 0.0).x(), top, top + t));
    const Anchor anchor = bow ? Anchor::Right : Anchor::Left;
    const double wordsAt = edgePoint(sideRoom, 0.0).x();
    drawing.items.emplace_back(
        makeText({wordsAt, 1.0 * small}, say("outside"), {.size = small, .anchor = anchor}));
    drawing.items.emplace_back(
        makeText({wordsAt, top + t + 1.2 * small + 0.6}, say("inside"), {.size = small, .anchor = anchor}));

    drawing.height = std::max(2 * middle, top + t + 1.6 * small + 0.6) + 1.0;
    drawing.caption = reduction == 1.0 ? say("full size") : say("drawn 1:{}", ratio(reduction));
    return drawing;
}

} // namespace sheerlay::core
