#include "core/hull/quick_loft.hpp"
#include "core/lines_drawing/lines_picture.hpp"
#include "core/table_edit/cell_loft.hpp"
#include "core/table_edit/set_cells.hpp"
#include "tests/bench/bench_boat.hpp"

#include <benchmark/benchmark.h>

using namespace sheerlay;

namespace {

/// From a typed cell to its residuals and the lines drawing: 150 ms at most, all of it.
void editedCell(benchmark::State& state) {
    const core::Project& project = bench::canoe();
    const core::LoftedHull before = core::loft(project).value();
    const std::vector<core::GridLine> lines = core::gridLines(project.hull);
    for ([[maybe_unused]] auto _ : state) {
        const core::EditedTable edited = core::setCells(project, lines, {{{1, 6}, "1-0-4"}});
        const core::LoftedHull hull = core::quickLoft(edited.project, before).value();
        benchmark::DoNotOptimize(core::loftOfCells(edited.project.hull, hull, lines).size());
        const core::DrawnLines drawn = core::drawnLines(edited.project, hull, core::Units::Inches);
        benchmark::DoNotOptimize(
            core::linesPicture(drawn, core::LinesPart::Whole, core::Units::Inches, {250, 90}, 1.0)
                .sheet.items.size());
    }
}

} // namespace

BENCHMARK(editedCell)->Unit(benchmark::kMillisecond);
