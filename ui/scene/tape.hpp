#pragma once

#include "core/hull/measured_line.hpp"
#include "ui/scene/boat.hpp"

#include <QString>

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace sheerlay::ui {

/// A tape laid on the planking: its first end, then the line to the second.
struct Tape {
    std::optional<core::HullPlace> from;
    std::optional<core::MeasuredLine> line;
};

/// Puts down the end that is next: the first, the second, or the first of another measurement.
[[nodiscard]] Tape withEnd(const Tape& tape, const core::HullPlace& end, const core::TrimmedSurface& hull);

/// The tape on the boat, so far outside the laid surface: the line, and a ring about each end; mm.
[[nodiscard]] std::vector<std::vector<Eigen::Vector3d>> tapeOnBoat(const Tape& tape, double outward);

/// The tape on the map: x, girth; one point where only its first end is down.
[[nodiscard]] std::vector<Eigen::Vector2d> tapeOnMap(const Tape& tape, const GirthMap& map);

/// What the tape says, in both systems of units, `first` in front; or which end is wanted.
[[nodiscard]] QString tapeText(const Tape& tape, core::Units first);

} // namespace sheerlay::ui
