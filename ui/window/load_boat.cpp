#include "ui/window/load_boat.hpp"

#include "core/hull/hull.hpp"
#include "core/journal/replan.hpp"
#include "core/project/project_file.hpp"
#include "ui/scene/words.hpp"

namespace sheerlay::ui {

LoadedBoat loadBoat(const std::string& path, std::stop_token stop, const TaskRunner::Progress& progress) {
    LoadedBoat loaded;
    progress(QStringLiteral("Reading the table…"));
    auto read = core::readProject(path);
    if (!read) {
        loaded.problems = read.error();
        return loaded;
    }
    loaded.warnings = read->warnings;
    if (stop.stop_requested())
        return loaded;
    progress(QStringLiteral("Lofting the hull…"));
    auto hull = core::loft(read->project);
    if (!hull) {
        loaded.stage = QStringLiteral("lofted");
        loaded.failure = toQString(hull.error().text);
        return loaded;
    }
    if (stop.stop_requested())
        return loaded;
    progress(QStringLiteral("Laying the strips…"));
    auto plan = core::plankAsLaid(read->project, *hull);
    if (!plan) {
        loaded.stage = QStringLiteral("planned");
        loaded.failure = toQString(plan.error().text);
        return loaded;
    }
    if (stop.stop_requested())
        return loaded;
    progress(QStringLiteral("Drawing the boat…"));
    loaded.boat = makeBoat(std::move(read->project), std::move(*hull), std::move(plan->plan));
    return loaded;
}

QString messageLine(const core::FileMessage& message) {
    QString line;
    if (message.line > 0)
        line += QStringLiteral("line %1 · ").arg(message.line);
    if (!message.key.empty())
        line += toQString(message.key) + QStringLiteral(": ");
    line += toQString(message.found);
    if (!message.would.empty())
        line += QStringLiteral("; ") + toQString(message.would);
    return line;
}

} // namespace sheerlay::ui
