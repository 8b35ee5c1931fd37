#include "core/surfaces/half_skin.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/given_hull.hpp"

#include <algorithm>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;
using Eigen::Vector3d;

namespace {

Expected<HalfSkin, LengthError> tried(const geometry::GivenFaces& given,
                                      const std::vector<std::size_t>& faces = {}) {
    const auto axes = boatAxes(given.mesh, {});
    REQUIRE(axes.has_value());
    return halfSkin(given, *axes, faces);
}
HalfSkin skinOf(const geometry::GivenFaces& given, const std::vector<std::size_t>& faces = {}) {
    const auto skin = tried(given, faces);
    if (!skin)
        UNSCOPED_INFO(skin.error().found);
    REQUIRE(skin.has_value());
    return *skin;
}
LengthError refused(const geometry::GivenFaces& given, const std::vector<std::size_t>& faces = {}) {
    const auto skin = tried(given, faces);
    REQUIRE_FALSE(skin.has_value());
    CHECK_FALSE(skin.error().would.empty());
    return skin.error();
}
bool holds(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

void checkEdges(const HalfSkin& skin, double end) {
    const HullFormula f;
    for (const Vector3d& p : skin.sheer)
        CHECK_THAT(p.z(), WithinAbs(f.sheer(p.x()), 1e-6));
    for (const Vector3d& p : skin.lower) {
        CHECK(p.y() == 0.0);
        if (p.x() > 1.0 && p.x() < end - 1.0)
            CHECK_THAT(p.z(), WithinAbs(f.keel(p.x()), 1e-6));
    }
    CHECK(skin.sheer.front().x() < 1.0);
    CHECK_THAT(skin.sheer.back().x(), WithinAbs(end, 1e-6));
    CHECK(std::ranges::is_sorted(skin.sheer, {}, [](const Vector3d& p) { return p.x(); }));
}

} // namespace

TEST_CASE("a half and a whole hull give the same skin, edges told apart") {
    for (const bool whole : {false, true}) {
        const HalfSkin skin = skinOf(givenHull({.whole = whole}));
        checkEdges(skin, HullFormula{}.length);
        CHECK_FALSE(skin.bow);
        CHECK_FALSE(skin.stern);
        CHECK_THAT(skin.lower.front().z(), WithinAbs(420, 1e-6)); // the stem's head
    }
}

TEST_CASE("decks and transoms are left out, and the transom's plane is found") {
    const HalfSkin skin = skinOf(givenHull({.whole = true, .deck = true, .end = 0.8, .transom = true}));
    checkEdges(skin, 0.8 * HullFormula{}.length);
    REQUIRE(skin.stern.has_value());
    CHECK_THAT(skin.stern->xAtSheer, WithinAbs(0.8 * HullFormula{}.length, 1e-3));
    CHECK_THAT(skin.stern->xAtKeel, WithinAbs(0.8 * HullFormula{}.length, 1e-3));
    std::string said;
    for (const std::string& sentence : skin.said)
        said += sentence + "\n";
    CHECK(holds(said, "Left out as deck: face 2;"));
    CHECK(holds(said, "Left out as transom: face 3;"));
    CHECK(holds(said, "1 of 3 faces in the file is taken"));
    // an end without its face is a transom all the same
    CHECK(skinOf(givenHull({.whole = true, .end = 0.8})).stern.has_value());
}

TEST_CASE("the builder may name the faces") {
    checkEdges(skinOf(givenHull({.split = true, .deck = true}), {0, 1}), HullFormula{}.length);
    CHECK(holds(refused(givenHull({}), {6}).found, "face 7 where the file has 1"));
}

TEST_CASE("a gap is refused with its size and place") {
    const LengthError gap = refused(givenHull({.split = true, .apart = 2.5}));
    CHECK(holds(gap.found, "2 pieces of skin that do not meet"));
    CHECK(holds(gap.found, "mm from the bow"));
    // the seam runs at an eighth of a turn, where 2.5 mm down is at most 2.5 mm away, less at the stems
    double told = 0;
    for (std::size_t i = gap.found.find(", ", 30); i != std::string::npos && told == 0;
         i = gap.found.find(", ", i + 2))
        told = std::atof(gap.found.c_str() + i + 2);
    CHECK(told <= 2.5);
}

TEST_CASE("a hole is refused with its size and place") {
    const LengthError hole = refused(givenHull({.hole = true}));
    CHECK(holds(hole.found, "a hole in the skin, 26.2 mm along the boat")); // one of 160 steps of 4200 mm
    CHECK(holds(hole.found, "2113 mm from the bow"));
}

TEST_CASE("what is not a hull is refused") {
    auto box = givenHull({.split = true});
    for (geometry::GivenFace& face : box.faces)
        face.flat = true;
    CHECK(holds(refused(box).found, "nothing but flat faces"));
    // a deck that is one face with the hull leaves no sheer
    auto closed = givenHull({.whole = true, .deck = true});
    CHECK(holds(refused(closed, {0, 1}).found, "closed above"));
    CHECK(holds(refused(givenHull({.deck = true}), {0, 1}).found, "closed above"));
}
