#include "core/surfaces/read_surface.hpp"
#include "tests/support/given_hull.hpp"
#include "tests/support/made_project.hpp"

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

MadeText tried(const geometry::GivenFaces& given, const std::vector<std::string>& takes = {}) {
    return readSurface(given, "trial.step", "Trial", corrected(takes));
}

} // namespace

TEST_CASE("a surface becomes a project that says how near its loft is") {
    const auto read = tried(givenHull({.whole = true}));
    const Project project = projectOf(read);
    CHECK(project.name == "Trial");
    CHECK(project.hull.stations.size() > 40);
    CHECK(project.hull.roundedTo == 0.01);
    CHECK(project.moulds.spacing == 300.0);
    // how near is checked by the round trip; this formula's ends are blunter than a loft can be
    CHECK(read->notes.back().starts_with("The loft lies within "));
    CHECK(read->notes.back().find(" mm of the given surface (") != std::string::npos);
}

TEST_CASE("what the builder says of the boat is checked or kept") {
    CHECK(projectOf(tried(givenHull({}), {"drawn-to = outside", "beam = 80 cm"})).hull.drawnTo ==
          DrawnTo::Outside);
    CHECK(refusalOf(tried(givenHull({}), {"beam = 33 in"})).find("a hull 800 mm wide where you say 838 mm") !=
          std::string::npos);
    CHECK(refusalOf(tried(givenHull({}), {"beam = wide"})).find("beam = 33 in") != std::string::npos);
}

TEST_CASE("a chine is refused, with how far and where the loft leaves it") {
    auto given = givenHull({.whole = true});
    const HullFormula f;
    for (Eigen::Vector3d& p :
         given.mesh.points) { // V bottom and flared sides, a corner at an eighth of a turn
        const double side = p.y() < 0 ? -1 : 1;
        const double t =
            std::acos(std::clamp(1 - (p.z() - f.keel(p.x())) / (f.sheer(p.x()) - f.keel(p.x())), -1.0, 1.0));
        const double part = t / 1.5707963267948966;
        const double b = f.breadth(p.x());
        const double depth = f.sheer(p.x()) - f.keel(p.x());
        if (b < 1e-6)
            continue;
        p.y() = side * b * (part < 0.5 ? 1.6 * part : 0.8 + 0.4 * (part - 0.5));
        p.z() = f.keel(p.x()) + depth * (part < 0.5 ? 0.3 * part : 0.15 + 1.7 * (part - 0.5));
    }
    const std::string refusal = refusalOf(tried(given));
    CHECK(refusal.find(" the loft: a surface that the loft leaves by ") != std::string::npos);
    CHECK(refusal.find("trial.step") == 0);
    CHECK(refusal.find("mm from the bow") != std::string::npos);
    CHECK(refusal.find("chines") != std::string::npos);
}

TEST_CASE("each reason to refuse names the file and what would do") {
    CHECK(refusalOf(tried({})).find(" the faces: no face") != std::string::npos);
    CHECK(refusalOf(tried(turned(givenHull({}), 1e-3 * Eigen::Matrix3d::Identity())))
              .find("--take \"units = m\"") != std::string::npos);
    CHECK(refusalOf(tried(givenHull({.split = true, .apart = 3}))).find("do not meet") != std::string::npos);
    CHECK(refusalOf(tried(givenHull({.hole = true}))).find("a hole in the skin") != std::string::npos);
}

TEST_CASE("the planking may end beside the stem") {
    const Project project = projectOf(tried(givenHull({.whole = true}), {"half-siding = 10"}));
    CHECK(project.hull.halfSiding == 10.0);
    for (const Station& station : project.hull.stations)
        CHECK_THAT(station.keel->halfBreadth, WithinAbs(10.0, 0.01));
    CHECK(refusalOf(tried(givenHull({}), {"half-siding = thin"})).find("half-siding = 3/8 in") !=
          std::string::npos);
}
