#include "core/surfaces/skin_faces.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/given_hull.hpp"

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

TEST_CASE("decks, transoms and faces in the centreplane are told from the skin") {
    auto given = givenHull({.whole = true, .split = true, .deck = true, .end = 0.8, .transom = true});
    // a keel's side in the centreplane
    const int at = static_cast<int>(given.mesh.points.size());
    given.mesh.points.insert(given.mesh.points.end(), {{500, 0, 0}, {3000, 0, 0}, {3000, 0, -60}});
    given.mesh.triangles.push_back({at, at + 1, at + 2});
    given.faceOf.push_back(4);
    given.faces.push_back({0.0, true});
    const std::vector<FaceRole> roles = faceRoles(given);
    REQUIRE(roles.size() == 5);
    CHECK(roles[0] == FaceRole::Skin); // the bottom looks down as a deck looks up
    CHECK(roles[1] == FaceRole::Skin);
    CHECK(roles[2] == FaceRole::Deck);
    CHECK(roles[3] == FaceRole::Transom);
    CHECK(roles[4] == FaceRole::InCentreplane);
}

TEST_CASE("faces are listed as they are counted in the file") {
    CHECK(faceList({0}) == "face 1");
    CHECK(faceList({1, 4}) == "faces 2 and 5");
    CHECK(faceList({0, 1, 2}) == "faces 1, 2 and 3");
}
