#include "core/fairness/fairness_json.hpp"

#include "core/units/json_text.hpp"

#include <nlohmann/json.hpp>

#include <utility>

namespace sheerlay::core {

std::string withFairness(std::string checkJson, const std::vector<StationBump>& bumps) {
    const auto tidy = [](double mm) { return rounded(mm, 2); };
    nlohmann::ordered_json stations = nlohmann::ordered_json::array();
    for (const StationBump& b : bumps)
        stations.push_back({{"station", b.station},
                            {"x", tidy(b.x)},
                            {"bump", tidy(b.bump)},
                            {"spread", tidy(b.spread)},
                            {"judged", b.judged},
                            {"unfair", b.unfair}});
    const nlohmann::ordered_json fairness = {{"stations", std::move(stations)}};
    return withMember(std::move(checkJson),
                      "fairness",
                      fairness.dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace));
}

} // namespace sheerlay::core
