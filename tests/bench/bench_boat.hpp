#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project_file.hpp"

#include <array>
#include <cstddef>
#include <random>
#include <string>
#include <vector>

namespace sheerlay::bench {

/// The reference canoe, 16 ft, cover width 17 mm: 37 rows.
[[nodiscard]] inline const core::Project& canoe(const char* file = "/formula_canoe.sheerlay") {
    static const core::Project sheer =
        core::readProject(std::string(SHEERLAY_REFERENCE) + "/formula_canoe.sheerlay").value().project;
    static const core::Project geodesic =
        core::readProject(std::string(SHEERLAY_REFERENCE) + "/formula_canoe_geodesic.sheerlay")
            .value()
            .project;
    return std::string(file) == "/formula_canoe.sheerlay" ? sheer : geodesic;
}

[[nodiscard]] inline const core::LoftedHull& canoeHull() {
    static const core::LoftedHull hull = core::loft(canoe()).value();
    return hull;
}

/// The same random parameters for every evaluator, all over the canoe's surface; a power of two of them.
[[nodiscard]] inline const std::vector<std::array<double, 2>>& randomParameters() {
    static const std::vector<std::array<double, 2>> list = [] {
        const auto &u = canoeHull().laid.surface.knotsU(), &v = canoeHull().laid.surface.knotsV();
        std::mt19937 random(4711);
        std::uniform_real_distribution<double> du(u.first, u.last()), dv(v.first, v.last());
        std::vector<std::array<double, 2>> made(4096);
        for (auto& p : made)
            p = {du(random), dv(random)};
        return made;
    }();
    return list;
}

} // namespace sheerlay::bench
