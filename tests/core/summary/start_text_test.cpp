#include "core/summary/start_text.hpp"
#include "tests/support/catch.hpp"

#include <algorithm>
#include <sstream>
#include <string>

using namespace sheerlay::core;

namespace {

std::vector<StartTableRow> table() {
    StartTableRow sheer;
    sheer.worst = 0.434e-3;
    sheer.rowsOverFree = 35;
    sheer.rowsOverClamp = 27;
    sheer.worstRow = 12;
    sheer.stripLength = 284800;
    sheer.shutter = 2.9;
    StartTableRow low;
    low.line.kind = StartLine::Kind::Geodesic;
    low.line.girth = 254;
    low.worst = 0.208e-3;
    low.rowsOverFree = 4;
    low.fillers = 17;
    low.slivers = 2;
    low.tapered = 3;
    low.stripLength = 283000;
    low.shutter = 14;
    return {sheer, low};
}

} // namespace

TEST_CASE("start lines stand side by side, the chosen one marked, in either unit") {
    const auto rows = table();
    const std::string metric = startTableText(rows, rows[1].line, 0.25e-3, Units::Millimetres);
    INFO(metric);
    std::istringstream lines(metric);
    std::string line;
    std::size_t width = 0;
    for (int i = 0; std::getline(lines, line); ++i) {
        CHECK(line.size() <= 100);
        if (i == 1)
            width = line.size();
        if (i == 2 || i == 3) {
            CHECK(line.size() == width); // columns stand under their headings
            CHECK((line.front() == '>') == (i == 3));
        }
        if (i == 2) {
            CHECK(line.find("along the sheer") != std::string::npos);
            CHECK(line.find("0.43") != std::string::npos);
            CHECK(line.find("not met") != std::string::npos);
            CHECK(line.find("   12     35    27") != std::string::npos); // row, clamp, hard
            CHECK(line.find("285") != std::string::npos);
        }
        if (i == 3)
            CHECK(line.find("geodesic, 254 mm down") != std::string::npos);
    }
    const std::string inches = startTableText(rows, rows[0].line, 0.25e-3, Units::Inches);
    CHECK(inches.find("10\" down") != std::string::npos);
    CHECK(inches.find("13.1 ft") != std::string::npos);
    CHECK(startTableText({}, {}, 1e-3, Units::Inches).empty());
}
