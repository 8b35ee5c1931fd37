#include "core/journal/last_plank.hpp"
#include "tests/core/journal/simulated_boat.hpp"
#include "tests/support/catch.hpp"

#include <array>
#include <cmath>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

constexpr int rows = 35;
constexpr double strip = 17.0;          // mm
constexpr double planned = 0.8 * strip; // mm
constexpr double midships = midStation * stationSpacing;

LastPlankOutlook outlookAfter(int row, Spread offset) {
    LastPlankOutlook outlook;
    outlook.row = row;
    outlook.lastRow = rows;
    outlook.planned = planned;
    outlook.offset = offset;
    outlook.coverWidth = strip;
    return outlook;
}

/// Spread of the forecast in the design study, "shrunk" method: by reading sd and row. Row 0: nothing read.
std::map<int, double> designSpread(double readingSd) {
    std::ifstream file(std::string(SHEERLAY_REFERENCE) + "/journal_forecast.csv");
    std::map<int, double> spread;
    for (std::string line; std::getline(file, line);) {
        std::istringstream cells(line);
        std::vector<std::string> cell;
        for (std::string c; std::getline(cells, c, ',');)
            cell.push_back(c);
        if (cell.size() != 6 || cell[2] != "shrunk" || std::stod(cell[0]) != readingSd)
            continue;
        spread[std::stoi(cell[1])] = std::stod(cell[3]);
        spread[0] = std::stod(cell[5]);
    }
    return spread;
}

struct Read {
    Spread offset;
    CoverWidth width;
};

Read readOnce(SimulatedBoat& boat, int row, double sd) {
    const SmoothOffset smooth = smoothReadings(boat.read(row, sd));
    const std::array<MeanOffset, 1> mean{{{row, smooth.mean(), smooth.meanSd()}}};
    return {{smooth.at(midships), smooth.sdAt(midships)},
            inferCoverWidth({}, rows + 1, {mean, 0.0, smooth.to() - smooth.from()})};
}

/// Part of a strip that is left for the last plank when `width` mm are left after the last planned row.
double partOf(double width) {
    const double part = width / strip;
    return part - (std::ceil(part) - 1);
}

bool comfortable(double part) {
    return part >= 0.6 && part <= 1.0;
}

} // namespace

TEST_CASE("strips that cover 0.1 mm more come 1 mm nearer every ten rows") {
    WidthPrior sure; // readings are believed as they are
    sure.common = 1e3;
    sure.board = sure.waviness = 0;
    const std::vector<MeanOffset> read{{20, 2.0, 1e-6}};
    const LastPlank plank =
        forecastLastPlank(outlookAfter(20, {2.0, 0.0}), inferCoverWidth(sure, rows, {read, 0.0, 0.0}));
    CHECK(plank.width == Approx(planned - 35 * 0.1));
    CHECK(plank.lastRow == rows);
    CHECK(plank.strips == 15);
    CHECK(plank.part == Approx((planned - 3.5) / (strip + 0.1)));
}

TEST_CASE("the remainder asks for a strip more or less") {
    const CoverWidth asPlanned = inferCoverWidth({}, rows, {});
    const LastPlank more = forecastLastPlank(outlookAfter(20, {-5.0, 0.0}), asPlanned);
    CHECK(more.lastRow == rows + 1);
    CHECK(more.width == Approx(planned + 5.0 - strip));
    const LastPlank less = forecastLastPlank(outlookAfter(20, {15.0, 0.0}), asPlanned);
    CHECK(less.lastRow == rows - 1);
    CHECK(less.width == Approx(planned - 15.0 + strip));
    const LastPlank full = forecastLastPlank(outlookAfter(20, {planned - strip, 0.0}), asPlanned);
    CHECK(full.lastRow == rows);
    CHECK(full.part == Approx(1.0));
    LastPlankOutlook both = outlookAfter(20, {1.0, 0.5});
    both.sides = 2; // one plank over both sides shrinks twice as fast
    const LastPlank centre = forecastLastPlank(both, asPlanned);
    CHECK(centre.width == Approx(planned - 2.0));
    CHECK(centre.strips == 30);
}

TEST_CASE("nothing is asked for inside the window, and light planing just outside it") {
    const CoverWidth asPlanned = inferCoverWidth({}, rows, {});
    CHECK(proposeCorrection(outlookAfter(20, {0.0, 0.2}), asPlanned).kind == Correction::Kind::None);

    const Correction plane = proposeCorrection(outlookAfter(20, {3.0, 0.2}), asPlanned);
    CHECK(plane.kind == Correction::Kind::Plane);
    CHECK(plane.firstRow == 21);
    CHECK(plane.lastRow == rows);
    CHECK(plane.perStrip == Approx(3.0 / 15)); // back to the 13.6 mm of the middle of the window
    CHECK(plane.lastPlank == Approx(0.8 * strip));
    CHECK(plane.cover == Approx(strip - 0.2));

    const Correction mill = proposeCorrection(outlookAfter(20, {8.0, 0.2}), asPlanned);
    CHECK(mill.kind == Correction::Kind::MillNarrower);
    CHECK(mill.perStrip == Approx(8.0 / 15));

    // too wide: one row more, all of them narrower
    const Correction wide = proposeCorrection(outlookAfter(20, {-3.0, 0.2}), asPlanned);
    CHECK(wide.kind == Correction::Kind::MillNarrower);
    CHECK(wide.lastRow == rows + 1);
    CHECK(wide.perStrip == Approx((strip - 3.0) / 16));

    CHECK(proposeCorrection(outlookAfter(34, {8.0, 0.2}), asPlanned).kind == Correction::Kind::AsItComes);
    CHECK(proposeCorrection(outlookAfter(35, {8.0, 0.2}), asPlanned).kind == Correction::Kind::AsItComes);
}

TEST_CASE("what is laid as proposed ends where it was promised") {
    const CoverWidth asPlanned = inferCoverWidth({}, rows, {});
    for (double offset = -16; offset <= 16; offset += 0.25) {
        const LastPlankOutlook outlook = outlookAfter(18, {offset, 0.2});
        const Correction c = proposeCorrection(outlook, asPlanned);
        if (c.kind != Correction::Kind::Plane && c.kind != Correction::Kind::MillNarrower)
            continue;
        INFO("offset " << offset);
        const double left = planned + (rows - 18) * strip - offset;
        CHECK(left - (c.lastRow - c.firstRow + 1) * c.cover == Approx(c.lastPlank));
        CHECK(c.perStrip > 0.0);
    }
}

TEST_CASE("the forecast's spread over 500 boats is the design study's") {
    const auto design = designSpread(0.5);
    REQUIRE(design.size() == 5);
    constexpr int boats = 500;
    for (const auto& [row, spread] : design) {
        double squares = 0, claimed = 0;
        for (unsigned seed = 1; seed <= boats; ++seed) {
            SimulatedBoat boat(seed, rows, {});
            double error = 0;
            const double truth = planned - boat.edge(rows, midships);
            if (row == 0) {
                error =
                    truth + boat.normal() - planned; // with the mould's own error, which readings take away
                claimed += std::pow(inferCoverWidth({}, rows, {}).sumOf(1, rows).sd, 2) + 1.0;
            } else {
                const Read read = readOnce(boat, row, 0.5);
                const LastPlank plank = forecastLastPlank(outlookAfter(row, read.offset), read.width);
                const double left = plank.width + (plank.strips - (rows - row)) * (plank.width / plank.part);
                error = truth - left;
                claimed += plank.sd * plank.sd;
            }
            squares += error * error;
        }
        const double found = std::sqrt(squares / boats);
        INFO("row " << row << ": " << found << ", claimed " << std::sqrt(claimed / boats) << ", design "
                    << spread);
        CHECK(found == Approx(spread).epsilon(0.2));
        CHECK(found == Approx(std::sqrt(claimed / boats)).epsilon(0.2));
    }
}

TEST_CASE("one round of readings at row 20 brings the last plank into its window") {
    constexpr int boats = 500;
    const auto successAfter = [&](int row) {
        int good = 0;
        for (unsigned seed = 1; seed <= boats; ++seed) {
            SimulatedBoat boat(seed, rows + 1, {});
            const double mould = row == 0 ? boat.normal() : 0.0;
            double left = planned + mould;
            Correction c;
            if (row > 0) {
                const Read read = readOnce(boat, row, 0.5);
                c = proposeCorrection(outlookAfter(row, read.offset), read.width);
            }
            const bool more = c.kind != Correction::Kind::None && c.lastRow > rows;
            left -= boat.edge(more ? rows + 1 : rows, midships);
            if (c.kind == Correction::Kind::Plane || c.kind == Correction::Kind::MillNarrower)
                left += c.perStrip * (c.lastRow - c.firstRow + 1) - strip * (c.lastRow - rows);
            good += comfortable(partOf(left)) ? 1 : 0;
        }
        return 100.0 * good / boats;
    };
    // design study: 60, 84, 94, 98 per cent
    CHECK(successAfter(0) == Approx(60).margin(5));
    CHECK(successAfter(10) == Approx(84).margin(5));
    CHECK(successAfter(20) == Approx(94).margin(3));
    CHECK(successAfter(30) == Approx(98).margin(2));
}
