#include "geometry/geodesic.hpp"
#include "geometry/offset_surface.hpp"
#include "geometry/surface_frame.hpp"
#include "tests/bench/bench_boat.hpp"

#include <benchmark/benchmark.h>

using namespace sheerlay;

namespace {

/// Point, both first and all three second derivatives at random places.
void evaluateJet(benchmark::State& state) {
    const geometry::TensorSurface& s = bench::canoeHull().laid.surface;
    const auto& at = bench::randomParameters();
    std::size_t i = 0;
    for ([[maybe_unused]] auto _ : state) {
        const geometry::SurfaceJet j = s.jet(at[i][0], at[i][1]);
        benchmark::DoNotOptimize(j);
        i = (i + 1) % at.size();
    }
}

/// One step of half a strip along a geodesic with its Jacobi field: three evaluations and the algebra.
void stepGeodesic(benchmark::State& state) {
    const geometry::TensorSurface& s = bench::canoeHull().laid.surface;
    const geometry::SurfaceJet here = s.jet(2000, 200);
    const geometry::Frame f = geometry::frameAlong(here, here.u);
    const geometry::GeodesicState from{{2000, 200}, geometry::parameterComponents(here, f.across), 1, 0};
    for ([[maybe_unused]] auto _ : state) {
        const geometry::GeodesicState next = geometry::geodesicStep(s, here, from, 8.5);
        benchmark::DoNotOptimize(next);
    }
}

void offsetToMidThickness(benchmark::State& state) {
    const geometry::TensorSurface& s = bench::canoeHull().drawn.surface;
    for ([[maybe_unused]] auto _ : state) {
        const geometry::TensorSurface o = geometry::offsetSurface(s, 3.175);
        benchmark::DoNotOptimize(o);
    }
}

BENCHMARK(evaluateJet);
BENCHMARK(stepGeodesic);
BENCHMARK(offsetToMidThickness)->Unit(benchmark::kMillisecond);

} // namespace
