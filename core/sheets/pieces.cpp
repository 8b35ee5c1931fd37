#include "core/sheets/pieces.hpp"

#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace sheerlay::core {

namespace {

bool near(double a, double b, double within) {
    return std::abs(a - b) <= within;
}

/// What to cut without what a woven end adds on the side that passes.
double cutBesidesEnds(const Strip& strip) {
    double length = strip.cutLength;
    for (const StripEnd& end : strip.ends)
        length -= std::max({0.0, end.runInner, end.runOuter});
    return length;
}

bool mirrorImages(const Strip& a, const Strip& b) {
    constexpr double halfMillimetre = 0.5, halfDegree = 0.0087;
    if (a.kind != b.kind || !near(a.length, b.length, halfMillimetre) ||
        !near(cutBesidesEnds(a), cutBesidesEnds(b), halfMillimetre) || a.widths.size() != b.widths.size())
        return false;
    for (std::size_t i = 0; i < a.widths.size(); ++i)
        if (!near(a.widths[i][0], b.widths[i][0], halfMillimetre) ||
            !near(a.widths[i][1], b.widths[i][1], halfMillimetre))
            return false;
    for (std::size_t i = 0; i < a.ends.size(); ++i)
        if (a.ends[i].on != b.ends[i].on || !near(a.ends[i].lap, b.ends[i].lap, halfMillimetre) ||
            !near(a.ends[i].cut, b.ends[i].cut, halfDegree) ||
            !near(a.ends[i].bevel, b.ends[i].bevel, halfDegree))
            return false;
    return true;
}

} // namespace

int Piece::order() const {
    return mirror != nullptr ? std::min(strip->order, mirror->order) : strip->order;
}

std::string Piece::name() const {
    return mirror != nullptr ? strip->id + " " + mirror->id : strip->id;
}

bool Piece::portFirst() const {
    return mirror != nullptr && mirror->order < strip->order;
}

double Piece::cutLength() const {
    return mirror != nullptr ? std::max(strip->cutLength, mirror->cutLength) : strip->cutLength;
}

std::vector<Piece> piecesOf(const Plan& plan) {
    std::map<std::string, const Strip*> port; // by name without the side's letter
    for (const Strip& strip : plan.strips)
        if (strip.side == Side::Port && !strip.id.empty())
            port[strip.id.substr(1)] = &strip;

    std::vector<Piece> pieces;
    std::map<const Strip*, bool> paired;
    for (const Strip& strip : plan.strips) {
        if (strip.side != Side::Starboard || strip.id.empty())
            continue;
        const auto found = port.find(strip.id.substr(1));
        const bool pair = found != port.end() && mirrorImages(strip, *found->second);
        if (pair)
            paired[found->second] = true;
        pieces.push_back({&strip, pair ? found->second : nullptr});
    }
    for (const Strip& strip : plan.strips)
        if (strip.side == Side::Centre || (strip.side == Side::Port && !paired.contains(&strip)))
            pieces.push_back({&strip, nullptr});
    std::stable_sort(
        pieces.begin(), pieces.end(), [](const Piece& a, const Piece& b) { return a.order() < b.order(); });
    return pieces;
}

std::string kindWords(const Piece& piece) {
    const Strip& strip = *piece.strip;
    std::string sides = say("port");
    if (piece.mirror != nullptr)
        sides = say("one for each side");
    else if (strip.side == Side::Starboard)
        sides = say("starboard");
    else if (strip.side == Side::Centre)
        sides = say("one over both sides");
    switch (strip.kind) {
    case StripKind::Full:
        return say("full width, {}", sides);
    case StripKind::Tapered:
        if (strip.planedBack)
            return say("laid whole, planed back to the centreline, {}", sides);
        if (strip.planed != PlanedEdge::None)
            return strip.planed == PlanedEdge::Lower ? say("lower edge planed, {}", sides)
                                                     : say("upper edge planed, {}", sides);
        return say("tapered, {}", sides);
    case StripKind::Stealer:
        return say("stealer, {}", sides);
    case StripKind::Filler:
        return say("filler, {}", sides);
    case StripKind::Shutter:
        break;
    }
    return say("shutter, {}", sides);
}

std::string orderWords(const Piece& piece) {
    const std::string first = std::to_string(piece.order());
    if (piece.mirror == nullptr)
        return say("laid as number {}", first);
    const int second = std::max(piece.strip->order, piece.mirror->order);
    return piece.portFirst() ? say("laid as {} and {}, port first", first, second)
                             : say("laid as {} and {}, starboard first", first, second);
}

std::string namesInRow(const Plan& plan, int row, const Piece& beside) {
    std::vector<std::string> names;
    for (const Strip& strip : plan.strips) {
        if (strip.row != row || &strip == beside.strip || &strip == beside.mirror)
            continue;
        const bool bothSides = beside.mirror != nullptr || beside.strip->side == Side::Centre;
        if (bothSides || strip.side == beside.strip->side || strip.side == Side::Centre)
            names.push_back(strip.id);
    }
    std::string text;
    for (std::size_t i = 0; i < names.size(); ++i)
        text = i == 0                  ? names[i]
               : i + 1 == names.size() ? say("{} and {}", text, names[i])
                                       : text + ", " + names[i];
    return text;
}

int nextRow(int row, int step) noexcept {
    const int next = row + step;
    return next == 0 ? next + step : next;
}

Colour colourOf(Difficulty difficulty) noexcept {
    switch (difficulty) {
    case Difficulty::Free:
        return colours::free;
    case Difficulty::Clamp:
        return colours::clamp;
    case Difficulty::Hard:
        return colours::hard;
    case Difficulty::Taper:
        break;
    }
    return colours::taper;
}

} // namespace sheerlay::core
