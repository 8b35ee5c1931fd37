#include "core/summary/trade_text.hpp"

#include <spdlog/fmt/fmt.h>

#include <cmath>

namespace sheerlay::core {

std::string tradeText(const std::vector<TaperTrade>& trade, double own, Units units) {
    if (trade.empty())
        return {};
    const bool inches = units == Units::Inches;
    std::string text = "What tapers cost, limit by limit (per side of the boat):\n";
    text += fmt::format("  {:>10}{:>10}{:>11}{:>18}  {}\n",
                        "limit /m",
                        inches ? "radius ft" : "radius m",
                        "to taper",
                        inches ? "planed off sq ft" : "planed off m2",
                        "met");
    for (const TaperTrade& t : trade) {
        const bool ownLimit = std::abs(t.limit - own) < 0.01e-3;
        text += fmt::format("{} {:>10.2f}{:>10.1f}{:>11}{:>18.3f}  {}\n",
                            ownLimit ? '>' : ' ',
                            t.limit * 1e3,
                            inches ? 1 / t.limit / mmPerFoot : 1e-3 / t.limit,
                            t.touched,
                            inches ? t.wood / (mmPerFoot * mmPerFoot) : t.wood * 1e-6,
                            t.metFrom <= 1 ? std::string("everywhere")
                                           : fmt::format("from edge {} on", t.metFrom));
    }
    return text;
}

} // namespace sheerlay::core
