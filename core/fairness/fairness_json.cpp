#include "core/fairness/fairness_json.hpp"

#include <nlohmann/json.hpp>

#include <cmath>
#include <stdexcept>

namespace sheerlay::core {

std::string withFairness(std::string checkJson, const std::vector<StationBump>& bumps) {
    if (checkJson.size() < 3 || checkJson.front() != '{' || checkJson.back() != '}')
        throw std::invalid_argument("withFairness: no JSON object");
    const auto tidy = [](double mm) { return std::round(mm * 100.0) / 100.0; };
    nlohmann::ordered_json stations = nlohmann::ordered_json::array();
    for (const StationBump& b : bumps)
        stations.push_back({{"station", b.station},
                            {"x", tidy(b.x)},
                            {"bump", tidy(b.bump)},
                            {"spread", tidy(b.spread)},
                            {"judged", b.judged},
                            {"unfair", b.unfair}});
    const nlohmann::ordered_json fairness = {{"stations", std::move(stations)}};
    checkJson.pop_back();
    return checkJson + ",\"fairness\":" +
           fairness.dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "}";
}

} // namespace sheerlay::core
