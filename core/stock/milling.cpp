#include "core/stock/milling.hpp"

#include "core/units/both_units.hpp"
#include "core/units/length.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

constexpr double shortestClear = 100.0; // mm; a shorter end is no use for any strip
constexpr double hair = 1e-6;           // mm, so that a board that just holds a strip does

} // namespace

int stripsSideBySide(double width, double ripped, double kerf) {
    return std::max(0, static_cast<int>(std::floor((width + kerf + hair) / (ripped + kerf))));
}

double boardFeet(double thickness, double width, double length) {
    return thickness / mmPerInch * (width / mmPerInch) * (length / mmPerFoot) / 12.0;
}

double talliedBoardFeet(double thickness, double width, double length) {
    return boardFeet(
        std::max(thickness, mmPerInch), width, std::floor(length / mmPerFoot + hair) * mmPerFoot);
}

Milling mill(const BoardLot& lot, const Stock& stock, const StripStock& strip) {
    Milling m;
    m.thickness = lot.thickness - stock.surfacing;
    m.width = lot.width - stock.jointing;
    m.ripped = strip.thickness + stock.planing;
    m.sideBySide = stripsSideBySide(m.width, m.ripped, stock.kerf);
    m.layers = stripsSideBySide(m.thickness, strip.width, stock.kerf);
    m.stripLength = lot.length - 2 * stock.endTrim;
    double from = stock.endTrim;
    const auto keep = [&](double to) {
        if (to - from >= shortestClear)
            m.clear.push_back({from, to});
    };
    for (const auto& [begins, ends] : lot.defects) {
        keep(std::min(begins, lot.length - stock.endTrim));
        from = std::max(from, ends);
    }
    keep(lot.length - stock.endTrim);
    if (m.layers < 1)
        m.problem = say("The boards of lot {} are {} thick once planed, less than the strip's width of {}; "
                        "thicker boards or narrower strips would do.",
                        lot.name,
                        bothUnitsFine(std::max(0.0, m.thickness)),
                        bothUnitsFine(strip.width));
    else if (m.sideBySide < 1)
        m.problem =
            say("The boards of lot {} are too narrow for a single strip; wider boards would do.", lot.name);
    else if (m.stripLength <= 0.0)
        m.problem = say(
            "The boards of lot {} are no longer than what is trimmed off their ends; longer boards would do.",
            lot.name);
    else if (m.clear.empty())
        m.problem = say(
            "The boards of lot {} have no clear length of {} between their defects; other boards would do.",
            lot.name,
            bothUnits(shortestClear));
    return m;
}

} // namespace sheerlay::core
