#include "core/sheets/load_board.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/loaded_boat.hpp"
#include "tests/support/sheet_reading.hpp"

using namespace sheerlay;
using namespace sheerlay::core;

namespace {

AfloatReport reportOf(double mass) {
    const auto& [bare, hull, plan] = test::canoeToLoad();
    Project project = test::loaded(bare);
    project.afloat->loads[0].mass = mass;
    return *afterPlanking(project, hull, plan).afloat;
}

} // namespace

TEST_CASE("the board shows boat, figures and curves inside its edges, in either unit") {
    const AfloatReport report = reportOf(80);
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        const LoadBoard board = loadBoard(report, units, 240, 170);
        CHECK(test::outside(board.sheet, 0.0) == "");
        const std::string words = test::wordsOf(board.sheet);
        for (const char* said : {"draught", "Righting arm", "What she displaces"})
            CHECK_THAT(words, Catch::Matchers::Contains(said));
    }
    // too low for curves: none, and nothing over the edge
    CHECK_THAT(test::wordsOf(loadBoard(report, Units::Inches, 240, 100).sheet),
               !Catch::Matchers::Contains("Righting arm"));
}

TEST_CASE("paper and boat are the same places, true to scale") {
    const AfloatReport report = reportOf(80);
    const LoadBoard board = loadBoard(report, Units::Millimetres, 240, 170);
    const Eigen::Vector2d at = board.onPaper(1000, 200);
    CHECK((board.onBoat(at) - Eigen::Vector2d(1000, 200)).norm() < 1e-9);
    CHECK((board.onPaper(2000, 200) - at).x() == Approx(1000 * board.scale));
    CHECK((board.onPaper(1000, 300) - at).y() == Approx(-100 * board.scale)); // up is up
    // the sheer's line is drawn where its ends lie
    const auto& line = std::get<Path>(board.sheet.items.front());
    const Eigen::Vector3d bow = report.sheer.front();
    CHECK((line.points.front() - board.onPaper(bow.x(), bow.z())).norm() < 1e-9);
}

TEST_CASE("a load that swamps her is told on the board, without a water line's figures") {
    const std::string words = test::wordsOf(loadBoard(reportOf(3000), Units::Millimetres, 240, 170).sheet);
    CHECK_THAT(words, Catch::Matchers::Contains("Take weight out"));
    CHECK_THAT(words, !Catch::Matchers::Contains("least freeboard"));
}

TEST_CASE("a load's name stands clear of the water line") {
    AfloatReport report = reportOf(80);
    REQUIRE(report.rest);
    constexpr double type = 3.0;
    const double scale = boatProfile(report, 180, type).scale;
    const Eigen::Vector3d up = report.rest->water.up();
    WeightItem& load = report.loads[0];
    const double water = (report.rest->water.level - up.x() * load.centre.x()) / up.z();
    int read = 0;
    for (double over = -6; over <= 6; over += 0.5) { // mm on paper, its centre over the water
        load.centre.z() = water + over / scale;
        const BoatProfile drawn = boatProfile(report, 180, type);
        const double line = drawn.origin.y() - water * drawn.scale;
        for (const Item& item : drawn.items)
            if (const auto* words = std::get_if<Text>(&item);
                words != nullptr && words->runs.front().text == load.name) {
                INFO("centre " << over << " mm over the water");
                const double base = words->at.y();
                CHECK((line < base - 0.7 * type || line > base + 0.2 * type));
                ++read;
            }
    }
    CHECK(read == 25);
}
