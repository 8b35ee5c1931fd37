#pragma once

#include "core/hull/hull.hpp"
#include "core/project/message.hpp"
#include "ui/scene/boat.hpp"
#include "ui/window/task_runner.hpp"

#include <QString>

#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace sheerlay::ui {

/// What became of a project file: a boat, or why there is none.
struct LoadedBoat {
    std::string text;                        ///< of the file, as far as it could be read
    std::optional<core::Project> project;    ///< none where the file can't be used
    std::shared_ptr<const Boat> boat;        ///< none when something below says why
    std::vector<core::FileMessage> problems; ///< the file can't be used as it is
    std::vector<core::FileMessage> warnings; ///< odd but harmless
    QString failure;                         ///< the file is fine, but can't be lofted or planned
    QString stage;                           ///< "lofted" or "planned", with failure
};

/// Reads, lofts, plans and draws; for a worker. Stops between the steps when asked to, with an empty result.
[[nodiscard]] LoadedBoat
loadBoat(const std::string& path, std::stop_token stop, const TaskRunner::Progress& progress);

/// Takes a hull that was just lofted, on the worker.
using HullSink = std::function<void(std::shared_ptr<const core::LoftedHull>)>;

/// Lofts, plans and draws an edited project. Hull and strips of `before` are taken over where the edit does
/// not touch them; `before` may be none.
/// @param lofted  told of a new hull at once, and again when misprints were looked for, before the strips are
/// laid
[[nodiscard]] LoadedBoat planBoat(const core::Project& project,
                                  const std::shared_ptr<const Boat>& before,
                                  std::stop_token stop,
                                  const TaskRunner::Progress& progress,
                                  const HullSink& lofted = {});

/// "line 12 · hull.station[3].x: what was found; what would do"
[[nodiscard]] QString messageLine(const core::FileMessage& message);

} // namespace sheerlay::ui
