#include "core/sheets/strip_drawing.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/fake_plan.hpp"

#include <cstdio>

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

// Points of the drawing's first path with at least four points: the strip's outline or its end.
std::vector<Eigen::Vector2d> outlineOf(const Drawing& drawing) {
    for (const Item& item : drawing.items)
        if (const auto* path = std::get_if<Path>(&item); path != nullptr && path->points.size() > 3)
            return path->points;
    return {};
}

} // namespace

// Starboard seen from outside: aft to the right and toward the keel up make a right-handed pair with the
// outward normal, as u and v of the hull do. Drawn the other way round a full-size end would be the port
// side's.
TEST_CASE("a strip is drawn keel side up, bow to the left, and bends the way it does on the boat") {
    test::FakeStrip fake;
    fake.edgeBend = 0.2e-3; // toward the keel: its ends reach for the keel
    const FlatStrip flat = layStraight(test::makeFakeStrip(fake));
    const Drawing drawing = drawStrip(flat, {}, 190.0, 30.0, 1.0, colours::free);
    const std::vector<Eigen::Vector2d> points = outlineOf(drawing);
    REQUIRE(points.size() == flat.straight.size());
    const std::size_t mid = flat.upperCount / 2;
    CHECK(points.front().x() < points[flat.upperCount - 1].x());         // bow to the left
    CHECK(points[mid].y() > points[flat.straight.size() - 1 - mid].y()); // sheer edge below
    CHECK(points.front().y() < points[mid].y());                         // ends up, toward the keel
    for (const Eigen::Vector2d& p : points) {
        CHECK(p.x() >= 0.0);
        CHECK(p.x() <= 190.0);
        CHECK(p.y() >= 0.0);
        CHECK(p.y() <= 30.0);
    }
}

TEST_CASE("a strip is drawn by the whole factors that its caption tells") {
    for (const double length : {150.0, 700.0, 1234.0, 1500.0, 1550.0, 1600.0, 2400.0, 4850.0}) {
        test::FakeStrip fake;
        fake.length = length;
        const FlatStrip flat = layStraight(test::makeFakeStrip(fake));
        const Drawing drawing = drawStrip(flat, {}, 190.0, 30.0, 1.0, colours::free);
        double reduced = 0.0, wider = 0.0;
        REQUIRE(std::sscanf(drawing.caption.substr(drawing.caption.find("1:")).c_str(),
                            "1:%lf, the width %lf times wider",
                            &reduced,
                            &wider) == 2);
        double left = 1e9, right = -1e9, low = 1e9, high = -1e9;
        for (const Eigen::Vector2d& p : outlineOf(drawing)) {
            left = std::min(left, p.x());
            right = std::max(right, p.x());
            low = std::min(low, p.y());
            high = std::max(high, p.y());
        }
        const double slant =
            fake.width / std::tan(fake.cut); // the upper edge's run past the middle, both ends
        CHECK_THAT((right - left) * reduced, WithinAbs(length + slant, 0.05));
        CHECK_THAT((high - low) * reduced / wider, WithinAbs(fake.width, 0.01));
    }
}

TEST_CASE("an end drawn full size has the strip's width, its cut angle and its lap") {
    for (const End which : {End::Bow, End::Stern}) {
        test::FakeStrip fake;
        fake.cut = 0.9;
        const Strip strip = test::makeFakeStrip(fake);
        const StripEnd& end = strip.ends[which == End::Bow ? 0 : 1];
        const Drawing drawing = drawEnd(layStraight(strip), end, 6.35, 92.0, 1.0);
        CHECK(drawing.caption == "full size");
        const std::vector<Eigen::Vector2d> face = outlineOf(drawing);
        REQUIRE(face.size() > 3);
        // it runs from the break along the sheer edge to the end, or back; the cut is the step across
        double cut = 0.0;
        Eigen::Vector2d a, b;
        for (std::size_t i = 0; i + 1 < face.size(); ++i)
            if (std::abs(face[i + 1].y() - face[i].y()) > std::abs(cut)) {
                cut = face[i + 1].y() - face[i].y();
                a = face[i];
                b = face[i + 1];
            }
        CHECK(std::abs(cut) == Approx(fake.width).margin(0.05));
        CHECK(std::atan2(std::abs(b.y() - a.y()), std::abs(b.x() - a.x())) == Approx(fake.cut).margin(0.01));
        const bool sheerEdgeLonger =
            (a.y() > b.y() ? a.x() - b.x() : b.x() - a.x()) * (which == End::Bow ? -1 : 1) > 0.0;
        CHECK(sheerEdgeLonger); // as the made-up strip's upper edge is; it lies below in the picture
        bool lap = false;
        for (const Item& item : drawing.items)
            if (const auto* path = std::get_if<Path>(&item);
                path != nullptr && path->line == LineKind::Hidden)
                lap = std::abs((path->points[1] - path->points[0]).norm() - end.lap) < 1e-6;
        CHECK(lap);
    }
}

TEST_CASE("an end that lands at a fine angle is drawn smaller and says how much") {
    test::FakeStrip fake;
    fake.row = 15;
    fake.cut = 0.06;
    const Strip strip = test::makeFakeStrip(fake);
    const Drawing drawing = drawEnd(layStraight(strip), strip.ends[0], 6.35, 92.0, 1.0);
    CHECK(drawing.caption == "drawn 1:5");
    for (const Item& item : drawing.items) {
        CHECK(extentOf(item).left >= -0.6);
        CHECK(extentOf(item).right <= 92.6);
    }
}
