#include "ui/scene/start_preview.hpp"

#include "core/planking/start_line.hpp"
#include "core/planking/start_search.hpp"

namespace sheerlay::ui {
namespace {

constexpr double spacing = 50.0; // mm between the points that are drawn

} // namespace

StartPreview previewStart(const Boat& boat, const core::StartLine& line) {
    StartPreview preview{line, {}, std::nullopt};
    const auto nodes = core::startLine(boat.hull.laid, line, spacing);
    if (!nodes)
        return preview;
    for (const geometry::MasterNode& node : *nodes) {
        const Eigen::Vector3d point = boat.hull.laid.surface.point(node.uv.x(), node.uv.y());
        if (point.y() > 0.0 && point.x() > 0.0 && point.x() < boat.hull.laid.length)
            preview.onMap.push_back(boat.scene.map.place(point));
    }
    core::StripStock strips = boat.project.strips;
    strips.coverWidth = boat.plan.coverWidth; // planed a little, maybe
    preview.judged = core::judgeStart(boat.hull, line, strips);
    return preview;
}

} // namespace sheerlay::ui
