#include "core/stock/joint_places.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"

#include <set>

using namespace sheerlay::core;
using namespace sheerlay::test;

TEST_CASE("bays lie between neighbouring stations") {
    const std::vector<double> stations{0, 300, 600, 900};
    CHECK(bayOf(stations, 0.0) == 0);
    CHECK(bayOf(stations, 299.9) == 0);
    CHECK(bayOf(stations, 300.0) == 1);
    CHECK(bayOf(stations, 900.0) == 2);
    CHECK_FALSE(bayOf(stations, -1.0));
    CHECK_FALSE(bayOf(stations, 901.0));
    CHECK_FALSE(bayOf({5.0}, 5.0));
}

TEST_CASE("joints lie in the middle third of a bay and clear of hard bends") {
    FakeStrip f;
    f.length = 2400.0;
    f.firstX = 100.0;
    f.row = 20; // no lap
    Strip strip = makeFakeStrip(f);
    strip.edgeBend.atX = 650.0;
    strip.twistAtX = 1250.0;
    strip.bendAtX = 1255.0;
    std::vector<double> stations;
    for (int i = 0; i <= 9; ++i)
        stations.push_back(300.0 * i);
    const PlacedUnit placed = placeJoints({&strip}, stations, RuleKept::All);
    REQUIRE(placed.x.size() == placed.unit.places());
    REQUIRE(placed.unit.members.size() == 1);
    const std::vector<double>& at = placed.unit.members[0].at;
    REQUIRE(at.size() == placed.x.size() + 2);
    CHECK(at.front() == 0.0);
    CHECK(at.back() == strip.cutLength);
    std::set<int> bays;
    const double allowance = (strip.cutLength - strip.length) / 2; // both ends alike
    for (std::size_t p = 0; p < placed.x.size(); ++p) {
        const int bay = placed.unit.bay[p];
        bays.insert(bay);
        const double part = placed.x[p] / 300.0 - bay;
        CHECK(part > 1.0 / 3 - 1e-9);
        CHECK(part < 2.0 / 3 + 1e-9);
        CHECK_THAT(at[p + 1], WithinAbs(placed.x[p] - 100.0 + allowance, 1e-6)); // x runs with the strip
    }
    // bays 0 to 8 are crossed between x = 100 and 2500; 2 and 4 are hard
    CHECK(bays == std::set<int>{0, 1, 3, 5, 6, 7, 8});
    CHECK(placeJoints({&strip}, stations, RuleKept::NotHardBends).unit.places() > placed.unit.places());
}

TEST_CASE("neighbours are the rows above and below, across the gap at the start") {
    const auto strip = [](int row, Side side) {
        FakeStrip f;
        f.row = row;
        f.side = side;
        return makeFakeStrip(f);
    };
    const Strip one = strip(1, Side::Starboard);
    CHECK(areNeighbours(one, strip(2, Side::Starboard), false));
    CHECK(areNeighbours(one, strip(-1, Side::Starboard), false));
    CHECK_FALSE(areNeighbours(one, strip(3, Side::Starboard), false));
    CHECK_FALSE(areNeighbours(one, strip(2, Side::Port), false));
    CHECK(areNeighbours(one, strip(2, Side::Centre), false));
    CHECK_FALSE(areNeighbours(one, strip(1, Side::Port), false));
    CHECK(areNeighbours(one, strip(1, Side::Port), true));
}
