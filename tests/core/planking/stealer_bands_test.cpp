#include "core/planking/start_line.hpp"
#include "core/planking/taper_field.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

// Limits, edges over and touched strips of closing.md section 2 (formula canoe, w 17), computed there by
// another program. Where a band goes is a search; lengths of stealers agree with its layouts because they
// follow from the limit.

namespace {

const LoftedHull& canoe() {
    static const LoftedHull hull =
        loft(projectAt(std::string(SHEERLAY_REFERENCE) + "/formula_canoe.sheerlay")).value();
    return hull;
}

TaperedField solved(double girth, double limit, double narrowest, bool stealers = true) {
    StartLine start;
    if (girth >= 0) {
        start.kind = StartLine::Kind::Geodesic;
        start.girth = girth;
    }
    const auto master = startLine(canoe().laid, start, taperSpacing).value();
    return taperField(
               canoe().laid,
               master,
               {17, narrowest, limit * 1e-3, Taper::Anywhere, geometry::FanSide::TowardKeel, stealers, {}})
        .value();
}

/// Length along x of the stretch on which a band is wider than one strip, within the canoe (0 to 4877 mm, its
/// rows end 200 mm inside).
double stealerLength(const Band& band) {
    double from = 1e9;
    double to = -1e9;
    for (std::size_t i = 0; i < band.width.u().size(); ++i)
        if (band.width.width()[i] > 17 && std::abs(band.width.u()[i] - 2438) < 2238) {
            from = std::min(from, band.width.u()[i]);
            to = std::max(to, band.width.u()[i]);
        }
    return to - from;
}

std::vector<BandColumn> columnsOf(const std::vector<double>& combined) {
    std::vector<BandColumn> columns;
    for (std::size_t i = 0; i < combined.size(); ++i)
        columns.push_back({combined[i], 20.0 * static_cast<double>(i), true});
    return columns;
}

} // namespace

TEST_CASE("a stealer where the narrowest strip stands in the way of the limit") {
    const TaperedField plain = solved(0, 0.15, 14, false);
    CHECK(plain.bands.empty());
    CHECK(plain.score.edgesOver >= 5); // closing.md: 7 edges, 0.161 at worst
    CHECK_THAT(plain.worst, WithinAbs(0.161e-3, 0.005e-3));
    const TaperedField f = solved(0, 0.15, 14);
    INFO("bands " << f.bands.size() << ", touched " << f.touched << ", worst " << f.worst * 1e3);
    REQUIRE(!f.bands.empty());
    CHECK(f.bands.size() <= 2);
    CHECK(f.score.edgesOver == 0);
    CHECK(f.worst <= 0.153e-3);
    CHECK(f.touched <= 27);
    for (const Band& band : f.bands) {
        CHECK(f.rows[band.row].full());
        CHECK_THAT(stealerLength(band), WithinAbs(3300, 700)); // closing.md: 3.27 and 3.56 m, with two
        for (const double w : band.width.width())
            CHECK(w <= 34.001);
    }
}

TEST_CASE("stealers bring in nearly all edges of strips that may hardly be narrowed") {
    const TaperedField plain = solved(0, 0.15, 15.5, false);
    CHECK(plain.score.edgesOver >= 20); // closing.md: 25 edges
    const TaperedField f = solved(0, 0.15, 15.5);
    INFO("bands " << f.bands.size() << ", over " << f.score.edgesOver << ", worst " << f.worst * 1e3);
    CHECK(f.bands.size() >= 2);
    CHECK(f.bands.size() <= 5); // closing.md: 5 pairs, 1 edge over, 0.160 at worst
    CHECK(f.score.edgesOver <= 1);
    CHECK(f.worst <= 0.160e-3);
}

TEST_CASE("below a sheer start a stealer that brings in one edge alone is not laid") {
    const TaperedField f = solved(-1, 0.15, 11);
    INFO("bands " << f.bands.size() << ", touched " << f.touched << ", met from " << f.metFrom);
    CHECK(f.bands.empty());
    CHECK(f.metFrom <= 6);  // closing.md: from edge 8 without stealers, from 5 with one pair
    CHECK(f.touched <= 14); // closing.md: with the pair
}

TEST_CASE("no stealer where plain tapers do, or where the start alone is over the limit") {
    struct Case {
        double girth, limit;
    };
    const auto c = GENERATE(Case{0, 0.25}, Case{0, 0.15}, Case{-1, 0.30});
    const TaperedField with = solved(c.girth, c.limit, 11);
    const TaperedField without = solved(c.girth, c.limit, 11, false);
    INFO("girth " << c.girth << ", limit " << c.limit << ": edges over " << without.score.edgesOver
                  << ", with " << with.score.edgesOver);
    CHECK(with.bands.empty());
    REQUIRE(with.rows.size() == without.rows.size());
    for (std::size_t i = 0; i < with.rows.size(); ++i)
        CHECK(with.rows[i].width() == without.rows[i].width());
}

TEST_CASE("a band is shared without loss, from two full strips to the nib") {
    CHECK(bandShares(34, 17).stealer == Approx(17));
    CHECK(bandShares(34, 17).beside == Approx(17));
    CHECK(bandShares(17, 17).stealer == Approx(5)); // the nib, and a notch as deep
    CHECK(bandShares(17, 17).beside == Approx(12));
    for (double w = 16; w < 34; w += 0.7) {
        const BandShares s = bandShares(w, 17);
        CHECK(s.stealer + s.beside == Approx(w));
        CHECK(s.stealer <= 17);
        CHECK(s.beside <= 17);
    }
}

TEST_CASE("nibs stand outside the crossing, clear of moulds, and short stealers are left out") {
    // 2 m; wider than one strip from column 20 to 80, 0.5 mm a column
    std::vector<double> combined;
    for (int i = 0; i <= 100; ++i)
        combined.push_back(17.1 + 0.5 * (30 - std::abs(i - 50)));
    auto runs = stealerRuns(columnsOf(combined), 17, {});
    REQUIRE(runs.size() == 1);
    CHECK(runs[0].bowNib);
    CHECK(runs[0].sternNib);
    CHECK(runs[0].first == 19);
    CHECK(runs[0].last == 81);
    runs = stealerRuns(columnsOf(combined), 17, {19 * 20 + 8.0, 81 * 20.0 - 25});
    CHECK(runs[0].first == 17); // 32 mm clear of the mould; 40 mm is as far as it may go
    CHECK(runs[0].last == 82);
    // to the hull's end: no nib there
    for (std::size_t i = 50; i < combined.size(); ++i)
        combined[i] = 30;
    runs = stealerRuns(columnsOf(combined), 17, {});
    REQUIRE(runs.size() == 1);
    CHECK(!runs[0].sternNib);
    CHECK(runs[0].last == 100);
    for (std::size_t i = 0; i < combined.size(); ++i)
        combined[i] = i > 40 && i < 55 ? 18 : 16; // 260 mm
    CHECK(stealerRuns(columnsOf(combined), 17, {}).empty());
}

TEST_CASE("bands go where rows would vanish, and only as many as bring enough") {
    // a made-up field of 40 rows: 9 edges over; rows 12 and 13 would go 13 mm below the narrowest together
    BandNeed need{std::vector<double>(40, 0.0), {}};
    need.below[12] = 9;
    need.below[13] = 4;
    std::vector<std::vector<std::size_t>> asked;
    const auto score = [&](const std::vector<std::size_t>& bands) -> std::optional<FieldScore> {
        asked.push_back(bands);
        const int cured = (bands[0] == 12 ? 6 : 1) + static_cast<int>(bands.size()) - 1;
        return FieldScore{9 - cured, 1e-3 * (9 - cured), 10};
    };
    CHECK(chooseBands({9, 9e-3, 10}, need, 14, score) == std::vector<std::size_t>{12});
    CHECK(asked.front() == std::vector<std::size_t>{12}); // half of what is wanted lies in it
    // the start alone forces them, nothing is over, or no row wants to be narrower
    CHECK(chooseBands({9, 9e-3, 10}, {need.below, {9, 9e-3, 10}}, 14, score).empty());
    CHECK(chooseBands({}, need, 14, score).empty());
    CHECK(chooseBands({9, 9e-3, 10}, {std::vector<double>(40, 0.0), {}}, 14, score).empty());
    // no band helps
    const auto useless = [](const std::vector<std::size_t>&) { return FieldScore{9, 9e-3, 10}; };
    CHECK(chooseBands({9, 9e-3, 10}, need, 14, useless).empty());
}

TEST_CASE("of several bands each takes its share, and they lie apart") {
    BandNeed need{std::vector<double>(40, 0.0), {}};
    for (const std::size_t row : {8, 20, 21, 22})
        need.below[row] = 15;
    const auto score = [](const std::vector<std::size_t>& bands) -> std::optional<FieldScore> {
        const int cured = 3 * static_cast<int>(bands.size());
        return FieldScore{std::max(0, 9 - cured), 1e-3 * std::max(0, 9 - cured), 10};
    };
    // 60 mm: thirds end at 20, 40; their middles lie in rows 8, 20 and 22, of which the last is one too near
    const auto bands = chooseBands({9, 9e-3, 10}, need, 15, score);
    CHECK(bands == std::vector<std::size_t>{8, 20 - 1, 23 - 2}); // a band counts as one row
}
