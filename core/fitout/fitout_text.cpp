#include "core/fitout/fitout_text.hpp"

#include "core/units/length.hpp"
#include "core/units/number_text.hpp"
#include "core/units/rounded_text.hpp"

#include <algorithm>

namespace sheerlay::core {

namespace {

std::string line(const std::string& label, const std::string& text) {
    return "  " + label + std::string(11 - std::min<std::size_t>(10, label.size()), ' ') + text + "\n";
}

void join(std::string& text, const std::string& more, const char* by = "; ") {
    if (!more.empty())
        text += (text.empty() ? "" : by) + more;
}

std::string count(std::size_t n, const std::string& one) {
    return n == 0 ? "" : std::to_string(n) + " " + one + (n == 1 ? "" : "s");
}

std::string piecesText(const Gunwale& g) {
    return g.pieces.empty() ? "can't be scarfed" : "in " + count(g.pieces.size(), "piece");
}

} // namespace

std::string toText(const Fitout& f, Units units) {
    const auto length = [units](double mm) { return formatLength(mm, units, 16); };
    std::string text;
    if (f.gunwales)
        text +=
            line("gunwales",
                 "inner " + cutLengthText(f.gunwales->inner.cutLength, units) + " " +
                     piecesText(f.gunwales->inner) + ", outer " +
                     cutLengthText(f.gunwales->outer.cutLength, units) + " " + piecesText(f.gunwales->outer) +
                     "; " + std::to_string(f.gunwales->screwCount) + " screws");
    std::string ends;
    join(ends, count(f.bulkheads.size(), "bulkhead"));
    std::string litres;
    for (const Bulkhead& b : f.bulkheads)
        join(litres, numberText(b.litres(), 0), " and ");
    if (!litres.empty())
        ends += ", " + litres + " litres of air behind";
    join(ends, count(f.decks.size(), "deck"));
    if (!ends.empty())
        text += line("ends", ends);
    std::string seats;
    for (const Seat& s : f.seats)
        join(seats,
             s.choice.name + " " + length(s.widthFront) + " and " + length(s.widthBack) + " wide inside");
    for (const Thwart& t : f.thwarts)
        join(seats, t.name + " " + length(std::max(t.bar.piece.frontTop, t.bar.piece.backTop)));
    if (!seats.empty())
        text += line("seats", seats);
    if (f.yoke)
        text += line("yoke",
                     length(std::max(f.yoke->bar.piece.frontTop, f.yoke->bar.piece.backTop)) + " long, " +
                         placeText(f.yoke->x, units) + " from the bow");
    return text;
}

} // namespace sheerlay::core
