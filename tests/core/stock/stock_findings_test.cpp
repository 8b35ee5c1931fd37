#include "core/stock/stock_findings.hpp"
#include "tests/support/catch.hpp"

using namespace sheerlay::core;

TEST_CASE("findings of the stock say what was found and what would do") {
    const auto says = [](const Finding& finding, const char* words) {
        return finding.text.find(words) != std::string::npos;
    };
    const Finding none = noBoardsOf("white-ash", 7);
    CHECK(none.level == Level::Stop);
    CHECK(says(none, "white ash"));
    CHECK(says(none, "7 rows or pieces"));

    CHECK(scarfsSideBySide("S08").code == "stock-scarfs-side-by-side");
}

TEST_CASE("a scarf against a rule is told with the boards that do without") {
    CuttingProblem problem;
    problem.grid = 5.0;
    problem.scarf = 50.0;
    problem.longestPiece = 5000.0;
    CutUnit unit;
    unit.bay = {3};
    unit.members = {{{0.0, 1000.0, 2400.0}}}; // the longer piece takes 1425 mm
    const Finding bend = scarfAgainstRule("S07", RuleKept::NotHardBends, problem, unit, 30.0);
    CHECK(bend.code == "stock-scarf-in-bend");
    CHECK(bend.strip == "S07");
    CHECK(bend.text.find("; boards of 1485 mm") != std::string::npos);
    problem.longestPiece = 1000.0;
    const Finding nib = scarfAgainstRule("S07", RuleKept::NotNibs, problem, unit, 30.0);
    CHECK(nib.code == "stock-scarf-at-nib");
    CHECK(nib.text.find("; a longest-piece of 1425 mm") != std::string::npos);
    CHECK(nib.text.find("and boards of 1485 mm") != std::string::npos);
}

TEST_CASE("boards that are too short are told with the least length that does") {
    CuttingProblem problem;
    problem.grid = 5.0;
    problem.scarf = 50.0;
    problem.shortestPiece = 300.0;
    problem.longestPiece = 5000.0;
    CutUnit unit;
    unit.bay = {3};
    unit.members = {{{0.0, 1000.0, 2400.0}}};
    // pieces of 1025 and 1425 mm, each with half a scarf; 30 mm are trimmed off both ends of the board
    Finding finding = boardsTooShort("S07", problem, unit, 30.0);
    CHECK(finding.text.find("longest piece is 1425 mm") != std::string::npos);
    CHECK(finding.text.find("; boards of 1485 mm") != std::string::npos);
    problem.longestPiece = 1200.0;
    finding = boardsTooShort("S07", problem, unit, 30.0);
    CHECK(finding.text.find("a longest-piece of that, and boards of 1485 mm") != std::string::npos);
}
