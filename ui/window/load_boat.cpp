#include "ui/window/load_boat.hpp"

#include "core/hull/hull.hpp"
#include "core/hull/quick_loft.hpp"
#include "core/journal/replan.hpp"
#include "core/planking/recovery.hpp"
#include "core/project/laid_strips.hpp"
#include "core/project/project_file.hpp"
#include "core/units/both_units.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::ui {

LoadedBoat loadBoat(const std::string& path, std::stop_token stop, const TaskRunner::Progress& progress) {
    LoadedBoat loaded;
    progress(Wording::tr("Reading the table…"));
    auto text = core::readProjectText(path);
    if (!text) {
        loaded.problems = text.error();
        return loaded;
    }
    auto read = core::parseProject(*text, path);
    if (!read) {
        loaded.text = std::move(*text);
        loaded.problems = read.error();
        return loaded;
    }
    if (!stop.stop_requested())
        loaded = planBoat(read->project, nullptr, stop, progress);
    loaded.text = std::move(*text);
    loaded.warnings = std::move(read->warnings);
    return loaded;
}

LoadedBoat planBoat(const core::Project& project,
                    const std::shared_ptr<const Boat>& before,
                    std::stop_token stop,
                    const TaskRunner::Progress& progress,
                    const HullSink& lofted) {
    LoadedBoat loaded;
    loaded.project = project;
    if (before && core::stripsAlike(before->project, project)) {
        Boat same = *before;
        same.project = project;
        same.planned = std::make_shared<ShopOnDemand>(); // boards and parts may well depend on the edit
        loaded.boat = std::make_shared<const Boat>(std::move(same));
        return loaded;
    }
    const bool kept = before && core::hullsAlike(before->project, project);
    if (!kept)
        progress(Wording::tr("Lofting the hull…"));
    if (lofted && before && !kept) // the picture follows before misprints are looked for
        if (auto quick = core::quickLoft(project, before->hull))
            lofted(std::make_shared<const core::LoftedHull>(std::move(*quick)));
    if (stop.stop_requested())
        return loaded;
    auto hull = kept ? Expected<core::LoftedHull, core::LoftError>(before->hull) : core::loft(project);
    if (!hull) {
        loaded.stage = Wording::tr("lofted");
        loaded.failure = toQString(core::unitsFirst(hull.error().text, project.units));
        return loaded;
    }
    if (stop.stop_requested())
        return loaded;
    if (lofted && !kept)
        lofted(std::make_shared<const core::LoftedHull>(*hull));
    progress(Wording::tr("Laying the strips…"));
    core::PlankingWatch watch;
    watch.stop = stop;
    watch.progress = [&progress](double part) {
        progress(Wording::tr("Searching the easiest start… %1 %").arg(std::lround(100 * part)));
    };
    auto plan = core::plankAsLaid(project, *hull, watch);
    if (stop.stop_requested())
        return loaded;
    if (!plan) {
        loaded.stage = Wording::tr("planned");
        loaded.failure = toQString(core::unitsFirst(plan.error().text, project.units));
        return loaded;
    }
    // A boat that is only hard to plank is shown at once; the command line says what would do.
    if (std::ranges::any_of(plan->plan.findings,
                            [](const core::Finding& f) { return f.level == core::Level::Stop; })) {
        progress(Wording::tr("Looking for what would do…"));
        core::proposeRemedy(project, *hull, plan->plan, stop);
        if (stop.stop_requested())
            return loaded;
    }
    progress(Wording::tr("Drawing the boat…"));
    loaded.boat = makeBoat(project, std::move(*hull), std::move(plan->plan));
    return loaded;
}

QString messageLine(const core::FileMessage& message) {
    QString line;
    if (message.line > 0)
        line += Wording::tr("line %1 · ").arg(message.line);
    if (!message.key.empty())
        line += heardText(message.key) + QStringLiteral(": ");
    line += heardText(message.found);
    if (!message.would.empty())
        line += QStringLiteral("; ") + heardText(message.would);
    return line;
}

} // namespace sheerlay::ui
