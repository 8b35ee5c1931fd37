#include "core/patterns/pattern_set.hpp"
#include "core/planking/planking.hpp"
#include "core/project/project_file.hpp"
#include "core/sheets/shop_plan.hpp"
#include "core/units/length.hpp"
#include "ui/paper/pattern_files.hpp"
#include "ui/paper/sheet_set.hpp"

#include <QGuiApplication>
#include <QTemporaryDir>

#include <benchmark/benchmark.h>

#include <optional>
#include <string>

using namespace sheerlay;

namespace {

/// The example, planned.
struct ShopBoat {
    core::Project project =
        core::readProject(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay").value().project;
    core::LoftedHull hull = core::loft(project).value();
    core::Plan plan = core::plank(project, hull).value();

    /// With strips so narrow that there are at least so many pieces.
    static ShopBoat ofPieces(std::size_t least) {
        ShopBoat boat;
        while (boat.plan.strips.size() < least) {
            boat.project.strips.width *= 0.95;
            boat.project.strips.coverWidth *= 0.95;
            boat.hull = core::loft(boat.project).value();
            boat.plan = core::plank(boat.project, boat.hull).value();
        }
        return boat;
    }
};

const ShopBoat& example() {
    static const ShopBoat boat;
    return boat;
}

std::string folder() {
    static const QTemporaryDir dir;
    return dir.path().toStdString();
}

void startQt() {
    static int count = 1;
    static char name[] = "bench";
    static char* arguments[] = {name, nullptr};
    qputenv("QT_QPA_PLATFORM", "offscreen");
    // never ended: it would be after what Qt itself keeps
    [[maybe_unused]] static const auto* application = new QGuiApplication(count, arguments);
}

/// All strips of the example from boards of one length, in feet: within 10 s and 5 percent of the bound.
void cutFromBoards(benchmark::State& state) {
    core::Project project = example().project;
    core::BoardLot lot;
    lot.name = "A";
    lot.wood = project.strips.wood;
    lot.thickness = 0.75 * core::mmPerInch;
    lot.width = 5.5 * core::mmPerInch;
    lot.length = static_cast<double>(state.range(0)) * core::mmPerFoot;
    lot.chargedThickness = core::mmPerInch;
    project.stock = core::Stock{};
    project.stock->lots = {lot};
    double gap = 0.0;
    for ([[maybe_unused]] auto _ : state)
        gap = core::planStock(project, example().hull, example().plan)->woods.front().gap();
    state.counters["gap_percent"] = 100 * gap;
}

/// The complete set for the wall of a boat of 160 pieces, planned beforehand: 3 s.
void writeSheets(benchmark::State& state) {
    startQt();
    static const ShopBoat boat = ShopBoat::ofPieces(160);
    static const core::ShopPlan shop = core::planShop(boat.project, boat.hull, boat.plan);
    for ([[maybe_unused]] auto _ : state)
        if (!ui::writeSheetSet(boat.project,
                               boat.hull,
                               shop,
                               core::Units::Inches,
                               core::PageSize::Letter,
                               folder() + "/sheets"))
            state.SkipWithError("the sheets could not be written");
    state.counters["pieces"] = static_cast<double>(boat.plan.strips.size());
}

/// All patterns of the example: drawn, nested, tiled and written. Wanted is 1 s for the moulds.
void writePatterns(benchmark::State& state) {
    startQt();
    for ([[maybe_unused]] auto _ : state) {
        const auto set =
            core::patternSet(example().project, example().hull, example().plan, core::Units::Inches);
        if (!set ||
            !ui::writePatternFiles(
                example().project, *set, core::Units::Inches, core::PageSize::Letter, folder() + "/patterns"))
            state.SkipWithError("the patterns could not be written");
    }
}

BENCHMARK(cutFromBoards)->Arg(8)->Arg(10)->Arg(12)->Arg(16)->Unit(benchmark::kMillisecond);
BENCHMARK(writeSheets)->Unit(benchmark::kMillisecond);
BENCHMARK(writePatterns)->Unit(benchmark::kMillisecond);

} // namespace
