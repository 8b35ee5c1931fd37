// Our rows beside CGAL's exact polyhedral distances and its heat method on the same hull, in one run.

#include "core/planking/planking.hpp"
#include "tests/slow/polyhedral_hull.hpp"
#include "tests/slow/row_targets.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <exception>
#include <fstream>
#include <string>

using namespace sheerlay;
using namespace sheerlay::test;

namespace {

template <class Work> double secondsOf(const Work& work) {
    const auto begin = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

/// How far distances are from the true ones, mm.
struct Accuracy {
    double worst = 0.0, median = 0.0, mean = 0.0;
};

Accuracy accuracyOf(const std::vector<double>& distances, const std::vector<double>& truth) {
    Accuracy a;
    std::vector<double> sizes;
    for (std::size_t i = 0; i < truth.size(); ++i) {
        const double off = distances[i] - truth[i];
        a.mean += off / static_cast<double>(truth.size());
        sizes.push_back(std::abs(off));
    }
    std::sort(sizes.begin(), sizes.end());
    a.worst = sizes.back();
    a.median = sizes[sizes.size() / 2];
    return a;
}

void tell(const char* what, double seconds, double ours, const Accuracy& a) {
    std::printf("%-44s %12.4f %10.0f %12.4f %12.4f %+12.4f\n",
                what,
                seconds,
                seconds / ours,
                a.worst,
                a.median,
                a.mean);
}

void compare() {
    const Planked boat = planked(projectAt(std::string(SHEERLAY_REFERENCE) + "/formula_canoe.sheerlay"));
    double plan = 1e9;
    for (int i = 0; i < 20; ++i)
        plan = std::min(plan, secondsOf([&] { (void)core::plank(boat.project, boat.hull).has_value(); }));
    // 85 mm and more from the start: nearer, the line's points every 5 mm don't stand for the line
    const RowTargets rows = rowTargets(boat, 5, 85);
    const auto line = startParameters(boat, 5);

    std::vector<double> coarse, exact, heat;
    const PolyhedralHull wide(boat.hull.laid, line, {20, 10});
    const double coarseTime = secondsOf([&] { coarse = wide.exactDistances(rows.points); });
    const PolyhedralHull fine(boat.hull.laid, line, {10, 5});
    const double exactTime = secondsOf([&] { exact = fine.exactDistances(rows.points); });
    // it does best where the line is a row of a right-angled mesh
    std::vector<Eigen::Vector2d> sheer;
    const auto& along = boat.hull.laid.surface.knotsU();
    for (double u = along.first; u <= along.last(); u += 10)
        sheer.emplace_back(u, 0);
    const PolyhedralHull even(boat.hull.laid, sheer, {10, 5});
    const double heatTime = secondsOf([&] { heat = even.heatDistances(rows.points); });
    const std::vector<double> truth = extrapolated(coarse, exact);
    std::vector<double> shifted = heat;
    for (double& d : shifted)
        d -= accuracyOf(heat, truth).mean;

    std::string load;
    std::getline(std::ifstream("/proc/loadavg"), load);
    std::printf("formula canoe, rows from the sheer: %zu places from 85 mm on; load of the machine %s\n"
                "meshes of %zu and %zu corners, %zu points for the start line\n\n",
                rows.points.size(),
                load.c_str(),
                wide.vertices(),
                fine.vertices(),
                line.size());
    std::printf(
        "%-44s %12s %10s %12s %12s %12s\n", "", "seconds", "ratio", "worst mm", "median mm", "mean mm");
    tell("our whole plan, rows measured and flattened", plan, plan, accuracyOf(rows.planned, truth));
    tell("CGAL exact, 20 x 10 mm", coarseTime, plan, accuracyOf(coarse, truth));
    tell("CGAL exact, 10 x 5 mm", exactTime, plan, accuracyOf(exact, truth));
    tell("CGAL heat method, 10 x 5 mm", heatTime, plan, accuracyOf(heat, truth));
    tell("  the same less its mean error", heatTime, plan, accuracyOf(shifted, truth));
    std::printf(
        "\nTrue is what the two exact ones tend to with the square of the step. Times of CGAL are without "
        "making the mesh;\nthey give the distance at every corner, but no strip. CGAL 5.5 is known to set "
        "the heat method's zero wrong when\nthere are many sources, so its line is given again without "
        "its mean error.\n");
}

} // namespace

int main() {
    try {
        compare();
        return 0;
    } catch (const std::exception& e) {
        std::fprintf(stderr, "%s\n", e.what());
        return 1;
    }
}
