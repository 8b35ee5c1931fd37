#include "core/planking/plan_json.hpp"
#include "core/planking/planking.hpp"
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

BENCHMARK(loftCanoe)->Unit(benchmark::kMillisecond);
BENCHMARK(plankFromSheer)->Unit(benchmark::kMillisecond);
BENCHMARK(plankFromGeodesic)->Unit(benchmark::kMillisecond);
BENCHMARK(writePlanJson)->Unit(benchmark::kMillisecond);

} // namespace
