#include "core/journal/replan.hpp"
#include "core/planking/plan_json.hpp"
#include "core/planking/planking.hpp"
#include "core/planking/start_search.hpp"
#include "tests/bench/bench_boat.hpp"

#include <benchmark/benchmark.h>

using namespace sheerlay;

namespace {

void loftCanoe(benchmark::State& state) {
    for ([[maybe_unused]] auto _ : state)
        benchmark::DoNotOptimize(core::loft(bench::canoe()).has_value());
}

void plankFrom(benchmark::State& state, const char* file) {
    const core::Project& project = bench::canoe(file);
    const core::LoftedHull hull = core::loft(project).value();
    std::size_t strips = 0;
    for ([[maybe_unused]] auto _ : state) {
        const auto plan = core::plank(project, hull);
        strips = plan->strips.size();
        benchmark::DoNotOptimize(strips);
    }
    state.counters["strips"] = static_cast<double>(strips);
}
void plankFromSheer(benchmark::State& state) {
    plankFrom(state, "/formula_canoe.sheerlay");
}
void plankFromGeodesic(benchmark::State& state) {
    plankFrom(state, "/formula_canoe_geodesic.sheerlay");
}

void writePlanJson(benchmark::State& state) {
    const core::LoftedHull& hull = bench::canoeHull();
    const core::Plan plan = core::plank(bench::canoe(), hull).value();
    std::size_t bytes = 0;
    for ([[maybe_unused]] auto _ : state) {
        const std::string text = core::planToJson(bench::canoe(), hull, plan);
        bytes = text.size();
        benchmark::DoNotOptimize(bytes);
    }
    state.counters["bytes"] = static_cast<double>(bytes);
}

/// Tapers anywhere on the whole canoe for 0.2 /m, no strip under 11 mm; solved, laid and checked again.
void plankTapered(benchmark::State& state) {
    core::Project project = bench::canoe("/formula_canoe_geodesic.sheerlay");
    project.planking.taper = core::Taper::Anywhere;
    project.planking.edgeBendRadius = 5000;
    project.planking.narrowest = 11;
    const core::LoftedHull hull = core::loft(project).value();
    int touched = 0;
    for ([[maybe_unused]] auto _ : state) {
        const auto plan = core::plank(project, hull);
        touched = plan->tapers->touched;
        benchmark::DoNotOptimize(touched);
    }
    state.counters["touched"] = touched;
}

/// The easiest start line, searched on as many threads as the argument says.
void searchEasiestStart(benchmark::State& state) {
    const core::LoftedHull& hull = bench::canoeHull();
    double worst = 0;
    for ([[maybe_unused]] auto _ : state) {
        const core::StartSearch search =
            core::searchStart(hull, bench::canoe().strips, static_cast<unsigned>(state.range(0)));
        worst = search.candidates[search.best].worst;
    }
    state.counters["worst_per_m"] = worst * 1e3;
}

/// The rows still to lay planned anew from the edge of row 20, found 2 mm low, without tapers.
void replanFromRow20(benchmark::State& state) {
    const core::LoftedHull& hull = bench::canoeHull();
    const core::Plan plan = core::plank(bench::canoe(), hull).value();
    core::MeasuredEdge edge{20, {}, {}};
    for (double x = 0; x < hull.laid.length; x += 304.8) {
        edge.x.push_back(x);
        edge.offset.push_back(2.0);
    }
    for ([[maybe_unused]] auto _ : state)
        benchmark::DoNotOptimize(
            core::replan(bench::canoe(), hull, plan, edge, plan.coverWidth)->strips.size());
}

// Wanted (issue 3), on a quiet machine: plankFrom… 20 ms, replanFromRow20 30 ms, plankTapered 3 s,
// searchEasiestStart/2 2 s.
BENCHMARK(loftCanoe)->Unit(benchmark::kMillisecond);
BENCHMARK(plankFromSheer)->Unit(benchmark::kMillisecond);
BENCHMARK(plankFromGeodesic)->Unit(benchmark::kMillisecond);
BENCHMARK(replanFromRow20)->Unit(benchmark::kMillisecond);
BENCHMARK(plankTapered)->Unit(benchmark::kMillisecond);
BENCHMARK(searchEasiestStart)->Arg(1)->Arg(2)->Unit(benchmark::kMillisecond)->UseRealTime();
BENCHMARK(writePlanJson)->Unit(benchmark::kMillisecond);

} // namespace
