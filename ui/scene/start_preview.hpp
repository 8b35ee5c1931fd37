#pragma once

#include "ui/scene/boat.hpp"

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace sheerlay::ui {

/// A start line that is being tried: where it runs on the map, and what it does to the rows.
struct StartPreview {
    core::StartLine line;
    std::vector<Eigen::Vector2d> onMap;         ///< starboard, bow to stern: x, girth (mm)
    std::optional<core::StartCandidate> judged; ///< none where the line can't be laid
};

/// Pure; takes some tens of milliseconds for a canoe, so call it on a worker. Not for "easiest".
[[nodiscard]] StartPreview previewStart(const Boat& boat, const core::StartLine& line);

} // namespace sheerlay::ui
