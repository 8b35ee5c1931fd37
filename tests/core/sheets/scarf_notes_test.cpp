#include "core/sheets/cut_sheets.hpp"
#include "core/sheets/scarf_notes.hpp"
#include "core/sheets/wall_map.hpp"
#include "core/units/length.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/sheet_reading.hpp"

#include <algorithm>

using namespace sheerlay;
using namespace sheerlay::core;

TEST_CASE("a strip's sheet names its pieces, whose lengths make up the strip and its scarfs") {
    const test::Planked boat =
        test::planked(test::projectAt(SHEERLAY_EXAMPLES "/brindlewick/brindlewick.sheerlay"));
    const std::optional<StockPlan> stock = planStock(boat.project, boat.hull, boat.plan);
    REQUIRE(stock);
    const Places places(boat.project, boat.hull);
    std::size_t joined = 0;
    for (const Piece& piece : piecesOf(boat.plan)) {
        const auto note = scarfNote(piece, &*stock, places, Units::Millimetres);
        INFO(piece.name());
        REQUIRE(note);
        const std::string& text = note->paragraphs.front();
        CHECK(text.starts_with(piece.strip->id + " from "));
        double sum = 0.0;
        int pieces = 0;
        for (std::size_t at = text.find('('); at != std::string::npos; at = text.find('(', at + 1)) {
            sum += std::stod(text.substr(at + 1));
            ++pieces;
        }
        const std::vector<double> scarfs = scarfsOf(&*stock, piece.strip->id);
        REQUIRE(pieces == static_cast<int>(scarfs.size()) + 1);
        const double glued = sum - static_cast<double>(scarfs.size()) * stock->scarf;
        CHECK(glued >= piece.strip->cutLength - 1e-6);
        CHECK(glued <= piece.strip->cutLength + pieces * 7.4); // each rounded up to 1/4 in and to 1 mm
        for (const double scarf : scarfs) {
            CHECK(scarf > 0.0);
            CHECK(scarf < piece.strip->length);
        }
        joined += scarfs.empty() ? 0 : 1;
        CHECK((note->heading == "In one piece") == scarfs.empty());
        CHECK_FALSE(scarfNote(piece, nullptr, places, Units::Millimetres));
    }
    CHECK(joined > 10);

    // as many more strokes on the map as there are scarfs in the boat
    const auto strokes = [](const Sheet& sheet) {
        return std::ranges::count_if(sheet.items, [](const Item& item) {
            const auto* path = std::get_if<Path>(&item);
            return path != nullptr && path->points.size() == 2 && path->line == LineKind::Visible;
        });
    };
    std::ptrdiff_t joints = 0;
    for (const StockStrip& strip : stock->strips)
        joints += static_cast<std::ptrdiff_t>(strip.joints.size());
    const auto map = [&](const StockPlan* with) {
        return wallMap(boat.project, boat.hull, boat.plan, Units::Inches, with);
    };
    CHECK(strokes(map(&*stock)) - strokes(map(nullptr)) == joints);
}
