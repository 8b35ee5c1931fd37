#pragma once

#include "tests/support/catch.hpp"

#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

namespace sheerlay::test {

/// One line of formula_canoe_rows.csv; 1/m, degrees per foot, mm, x from amidships.
struct ReferenceRow {
    double upper, middle, lower, bendMin, bendMax, bendAbs, bendAtX, twist, endX, lap;
    int pieces;
};

/// The rows of one layout of formula_canoe_rows.csv by their number there; row 0 is our row 1.
[[nodiscard]] inline std::map<int, ReferenceRow> referenceRows(const std::string& start) {
    std::ifstream file(SHEERLAY_REFERENCE "/formula_canoe_rows.csv");
    REQUIRE(file.good());
    std::map<int, ReferenceRow> rows;
    for (std::string line; std::getline(file, line);) {
        std::vector<std::string> c;
        std::stringstream in(line);
        for (std::string cell; std::getline(in, cell, ',');)
            c.push_back(cell);
        if (c.empty() || c[0] != start || c.size() < 19)
            continue;
        const auto number = [&](std::size_t i) {
            return i < c.size() && !c[i].empty() ? std::stod(c[i]) : 0.0;
        };
        rows[std::stoi(c[1])] = {number(2),
                                 number(3),
                                 number(4),
                                 number(12),
                                 number(13),
                                 number(14),
                                 number(15),
                                 number(18),
                                 number(23),
                                 number(28),
                                 static_cast<int>(number(11))};
    }
    return rows;
}

} // namespace sheerlay::test
