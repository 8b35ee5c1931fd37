#include "core/questions/hard_turn.hpp"

#include "core/questions/section_chords.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace sheerlay::core {
namespace {

using Eigen::Vector2d;

constexpr double leastTurn = 25.0 * std::numbers::pi / 180.0;
constexpr double besideIt = 1.0 / 3.0; // of the turn, at most, at its neighbours
constexpr double leastUnits = 12.0;    // of the table's rounding: shorter chords turn by rounding alone
constexpr std::size_t leastStations = 3;

double turnAt(const std::vector<Vector2d>& section, std::size_t i) {
    const Vector2d a = section[i] - section[i - 1];
    const Vector2d b = section[i + 1] - section[i];
    return std::atan2(a.x() * b.y() - a.y() * b.x(), a.dot(b));
}

std::optional<HardTurn> turnOf(const HullTable& table, std::size_t station) {
    const std::vector<Vector2d> section = sectionChords(table, station);
    const auto& knuckle = table.stations[station].knuckle;
    std::optional<HardTurn> found;
    for (std::size_t i = 2; i + 2 < section.size(); ++i) {
        if (knuckle && section[i] == Vector2d(knuckle->halfBreadth, knuckle->height))
            continue; // known, and lofted so
        const double turn = std::abs(turnAt(section, i));
        const double chord =
            std::min((section[i] - section[i - 1]).norm(), (section[i + 1] - section[i]).norm());
        if (turn < leastTurn || chord < leastUnits * table.roundedTo ||
            std::abs(turnAt(section, i - 1)) > besideIt * turn ||
            std::abs(turnAt(section, i + 1)) > besideIt * turn)
            continue;
        if (!found || turn > found->angle)
            found = HardTurn{station, section[i].x(), section[i].y(), turn};
    }
    return found;
}

} // namespace

std::vector<HardTurn> hardTurns(const HullTable& table) {
    std::vector<HardTurn> list, run;
    for (std::size_t i = 0; i <= table.stations.size(); ++i) {
        const auto turn = i < table.stations.size() ? turnOf(table, i) : std::nullopt;
        if (turn) {
            run.push_back(*turn);
            continue;
        }
        if (run.size() >= leastStations)
            list.insert(list.end(), run.begin(), run.end());
        run.clear();
    }
    return list;
}

} // namespace sheerlay::core
