#include "tests/bench/bench_boat.hpp"

#include <BSplSLib.hxx>
#include <TColStd_Array1OfInteger.hxx>
#include <TColStd_Array1OfReal.hxx>
#include <TColgp_Array2OfPnt.hxx>
#include <gp_Pnt.hxx>
#include <gp_Vec.hxx>

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>

using namespace sheerlay;

namespace {

/// OpenCASCADE's evaluator on the same quintic surface, for comparison in the same run.
class OcctSurface {
public:
    explicit OcctSurface(const geometry::TensorSurface& s)
        : m_poles(1, s.knotsU().poles(), 1, s.knotsV().poles()), m_u(1, s.knotsU().poles() + 6),
          m_v(1, s.knotsV().poles() + 6), m_multU(1, m_u.Length()), m_multV(1, m_v.Length()) {
        for (int i = 1; i <= s.knotsU().poles(); ++i)
            for (int j = 1; j <= s.knotsV().poles(); ++j) {
                const Eigen::Vector3d& p = s.pole(i - 1, j - 1);
                m_poles.SetValue(i, j, gp_Pnt(p.x(), p.y(), p.z()));
            }
        const auto ku = s.knotsU().fullVector(), kv = s.knotsV().fullVector();
        for (int i = 1; i <= m_u.Length(); ++i)
            m_u.SetValue(i, ku[static_cast<std::size_t>(i - 1)]);
        for (int i = 1; i <= m_v.Length(); ++i)
            m_v.SetValue(i, kv[static_cast<std::size_t>(i - 1)]);
        m_multU.Init(1);
        m_multV.Init(1);
    }

    struct Jet {
        gp_Pnt p;
        gp_Vec u, v, uu, vv, uv;
    };
    [[nodiscard]] Jet jet(double u, double v) const {
        Jet j;
        BSplSLib::D2(u,
                     v,
                     0,
                     0,
                     m_poles,
                     nullptr,
                     m_u,
                     m_v,
                     &m_multU,
                     &m_multV,
                     5,
                     5,
                     false,
                     false,
                     false,
                     false,
                     j.p,
                     j.u,
                     j.v,
                     j.uu,
                     j.vv,
                     j.uv);
        return j;
    }

private:
    TColgp_Array2OfPnt m_poles;
    TColStd_Array1OfReal m_u, m_v;
    TColStd_Array1OfInteger m_multU, m_multV;
};

void evaluateOcctD2(benchmark::State& state) {
    const geometry::TensorSurface& ours = bench::canoeHull().laid.surface;
    const OcctSurface s(ours);
    const auto& at = bench::randomParameters();
    // the comparison is only fair if both say the same
    double apart = 0;
    for (const auto& uv : at) {
        const geometry::SurfaceJet a = ours.jet(uv[0], uv[1]);
        const OcctSurface::Jet b = s.jet(uv[0], uv[1]);
        apart = std::max({apart,
                          (a.p - Eigen::Vector3d(b.p.X(), b.p.Y(), b.p.Z())).norm(),
                          (a.uv - Eigen::Vector3d(b.uv.X(), b.uv.Y(), b.uv.Z())).norm(),
                          (a.vv - Eigen::Vector3d(b.vv.X(), b.vv.Y(), b.vv.Z())).norm()});
    }
    if (!(apart < 1e-9)) {
        state.SkipWithError("the two evaluators disagree");
        return;
    }
    std::size_t i = 0;
    for ([[maybe_unused]] auto _ : state) {
        const OcctSurface::Jet j = s.jet(at[i][0], at[i][1]);
        benchmark::DoNotOptimize(j);
        i = (i + 1) % at.size();
    }
    state.counters["apart"] = apart;
}

BENCHMARK(evaluateOcctD2);

} // namespace
