#include "core/stock/joint_places.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"

#include <algorithm>
#include <cmath>
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
    const PlacedUnit placed = placeJoints({&strip}, stations, {}, 50.0, RuleKept::All);
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
    CHECK(placeJoints({&strip}, stations, {}, 50.0, RuleKept::NotHardBends).unit.places() >
          placed.unit.places());
}

TEST_CASE("no scarf reaches nearer to a nib than it should, unless the rule is given up") {
    FakeStrip f;
    f.length = 2400.0;
    Strip strip = makeFakeStrip(f);
    strip.edgeBend.atX = strip.twistAtX = strip.bendAtX = 2350.0;
    std::vector<double> stations;
    for (int i = 0; i <= 8; ++i)
        stations.push_back(300.0 * i);
    const std::vector<double> nibs{460.0, 1299.0, 9000.0};
    const double scarf = 50.0, clear = scarf / 2 + nibToScarf;
    const PlacedUnit all = placeJoints({&strip}, stations, {}, scarf, RuleKept::NotHardBends);
    const PlacedUnit kept = placeJoints({&strip}, stations, nibs, scarf, RuleKept::NotHardBends);
    std::vector<double> wanted; // x runs with the strip
    for (const double x : all.x)
        if (std::abs(x - 460.0) >= clear && std::abs(x - 1299.0) >= clear)
            wanted.push_back(x);
    CHECK(kept.x == wanted);
    // 460 lies amid a bay's places, from 400 to 500; of those from 1300 on the first ones are too near
    CHECK(wanted.size() < all.x.size() - 5);
    CHECK(std::ranges::count(kept.unit.bay, 1) == 1); // 400
    CHECK(placeJoints({&strip}, stations, nibs, scarf, RuleKept::NotNibs).x == all.x);
}

TEST_CASE("nibs beside a strip are those of its row and of the row below, on its side") {
    Plan plan;
    const auto stealer = [&plan](int row, Side side, double bow, double stern) {
        FakeStrip f;
        f.row = row;
        f.side = side;
        f.kind = StripKind::Stealer;
        Strip strip = makeFakeStrip(f);
        strip.ends[0].on = EndsOn::Nib;
        strip.ends[0].x = bow;
        if (stern > 0.0) {
            strip.ends[1].on = EndsOn::Nib;
            strip.ends[1].x = stern;
        }
        plan.strips.push_back(strip);
    };
    stealer(5, Side::Starboard, 900.0, 2000.0);
    stealer(5, Side::Port, 901.0, 2001.0);
    stealer(6, Side::Starboard, 700.0, 0.0); // runs out to the stern
    const auto at = [&plan](int row, Side side) {
        FakeStrip f;
        f.row = row;
        f.side = side;
        return nibsAt(makeFakeStrip(f), plan);
    };
    using Places = std::vector<double>;
    CHECK(at(4, Side::Starboard) == Places{900.0, 2000.0});
    CHECK(at(5, Side::Starboard) == Places{700.0, 900.0, 2000.0});
    CHECK(at(6, Side::Starboard) == Places{700.0});
    CHECK(at(7, Side::Starboard).empty());
    CHECK(at(3, Side::Starboard).empty());
    CHECK(at(5, Side::Port) == Places{901.0, 2001.0});
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
    Strip stealer = strip(1, Side::Starboard);
    stealer.kind = StripKind::Stealer;
    CHECK(areNeighbours(one, stealer, false));
    CHECK(areNeighbours(stealer, one, false));
    CHECK_FALSE(areNeighbours(one, strip(1, Side::Starboard), false)); // pieces of a row, end to end
    CHECK_FALSE(areNeighbours(strip(1, Side::Port), stealer, false));
}
