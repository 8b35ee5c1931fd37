#include "core/afloat/afloat.hpp"
#include "core/planking/planking.hpp"
#include "tests/bench/bench_boat.hpp"
#include "tests/support/loaded_boat.hpp"

#include <benchmark/benchmark.h>

using namespace sheerlay;

namespace {

/// Fit-out, cloth, weights and how she floats: 300 ms at most after a change.
void afterPlanking(benchmark::State& state) {
    core::Project project = test::loaded(bench::canoe());
    project.fitout = core::FitoutChoices{};
    project.fitout->gunwales = core::GunwaleChoices{};
    project.fitout->bulkheads.resize(2);
    project.fitout->bulkheads[1].end = core::End::Stern;
    project.fitout->decks.resize(1);
    project.fitout->yoke = core::ThwartChoice{};
    const core::LoftedHull& hull = bench::canoeHull();
    const core::Plan plan = core::plank(project, hull).value();
    for ([[maybe_unused]] auto _ : state)
        benchmark::DoNotOptimize(core::afterPlanking(project, hull, plan).afloat.has_value());
}

} // namespace

BENCHMARK(afterPlanking)->Unit(benchmark::kMillisecond);
