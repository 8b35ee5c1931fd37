#include "core/hull/hull.hpp"
#include "core/hull/quick_loft.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <cmath>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

Project reference(const std::string& name) {
    return readProject(std::string(SHEERLAY_REFERENCE) + "/" + name + ".sheerlay").value().project;
}

/// How far two hulls' drawn surfaces are apart over the stations, mm.
double apart(const LoftedHull& a, const LoftedHull& b) {
    double most = 0.0;
    for (const double x : a.stationX)
        for (double v = 0.0; v < a.drawn.halfGirthMax; v += 20.0) {
            const Eigen::Vector3d p = a.drawn.surface.point(x, v);
            const Eigen::Vector3d q = b.drawn.surface.point(x, v);
            if (p.y() > 0.0 && q.y() > 0.0)
                most = std::max(most, (p - q).norm());
        }
    return most;
}

bool doubts(const LoftedHull& hull, std::size_t station) {
    return std::any_of(hull.doubtful.begin(), hull.doubtful.end(), [&](const DoubtfulCell& d) {
        return d.station == station;
    });
}

} // namespace

TEST_CASE("after an honest edit the quick loft is the loft") {
    Project p = reference("formula_canoe");
    const auto before = loft(p);
    REQUIRE(before.has_value());
    p.hull.stations[5].points[2].halfBreadth += p.hull.roundedTo;
    const auto quick = quickLoft(p, *before);
    const auto whole = loft(p);
    REQUIRE(quick.has_value());
    REQUIRE(whole.has_value());
    CHECK(apart(*quick, *whole) < 0.1); // mm
    CHECK(quick->residuals.size() == whole->residuals.size());
}

TEST_CASE("numbers set aside stay so until they are settled") {
    Project p = reference("stephens_1889_as_printed");
    const auto before = loft(p);
    REQUIRE(before.has_value());
    REQUIRE(before->doubtful.size() == 4);
    p.hull.stations[7].sheer.height += p.hull.roundedTo;
    const auto quick = quickLoft(p, *before);
    REQUIRE(quick.has_value());
    CHECK(quick->doubtful.size() == 4);
    CHECK(apart(*quick, loft(p).value()) < 1.0); // mm; this table is sparse and rounded to 3.2 mm

    // station 3's 2 in waterline is read 0-4-4: settled, and no other is touched
    const auto doubt = std::find_if(before->doubtful.begin(), before->doubtful.end(), [](const auto& d) {
        return d.kind == PointKind::Waterline && d.likely.has_value();
    });
    REQUIRE(doubt != before->doubtful.end());
    p.hull.stations[doubt->station].points[doubt->point].halfBreadth = *doubt->likely;
    const auto settled = quickLoft(p, *before);
    REQUIRE(settled.has_value());
    CHECK(settled->doubtful.size() == 3);
    CHECK_FALSE(doubts(*settled, doubt->station));

    // a station taken out before it moves no doubt to another
    const std::size_t first = 6;
    Project shorter = reference("stephens_1889_as_printed");
    REQUIRE_FALSE(doubts(*before, first));
    shorter.hull.stations.erase(shorter.hull.stations.begin() + first);
    const auto without = quickLoft(shorter, *before);
    REQUIRE(without.has_value());
    CHECK(without->doubtful.size() == 4);
    for (const DoubtfulCell& d : before->doubtful)
        CHECK(doubts(*without, d.station > first ? d.station - 1 : d.station));
}
