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

TEST_CASE("a stealer takes a sheer start's field within the limit earlier, and touches fewer strips") {
    // with narrowest 11 plain tapers do as well as closing.md's with a stealer, so the strips are kept wider
    const TaperedField plain = solved(-1, 0.15, 13, false);
    const TaperedField f = solved(-1, 0.15, 13);
    INFO("bands " << f.bands.size() << ", touched " << f.touched << " of " << plain.touched);
    CHECK(plain.metFrom > 5);
    CHECK(f.metFrom <= 5); // closing.md: with one pair and narrowest 11
    CHECK(!f.bands.empty());
    CHECK(f.bands.size() <= 2);
    CHECK(f.touched < plain.touched);
}

TEST_CASE("no stealer where plain tapers do, or where the start alone is over the limit") {
    struct Case {
        double girth, limit;
    };
    const auto c = GENERATE(Case{0, 0.25}, Case{0, 0.15}, Case{-1, 0.30});
    const TaperedField with = solved(c.girth, c.limit, 11);
    const TaperedField without = solved(c.girth, c.limit, 11, false);
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

TEST_CASE("bands go where they bring most, and only as long as they bring enough") {
    // a made-up field of 40 rows: 9 edges over; a band at row 12 cures 6, any other 1 or 2, a second one 1
    const auto score = [](const std::vector<std::size_t>& bands) -> std::optional<FieldScore> {
        const bool there = std::find(bands.begin(), bands.end(), std::size_t{12}) != bands.end();
        const int cured = there ? 6 + static_cast<int>(bands.size()) - 1 : 1 + (bands[0] % 2 == 0);
        const int away = std::abs(static_cast<int>(bands[0]) - 12);
        return FieldScore{9 - cured, 1e-3 * (9 - cured) + 1e-5 * away, 10};
    };
    CHECK(chooseBands({9, 9e-3, 10}, {}, 40, score) == std::vector<std::size_t>{12});
    CHECK(chooseBands({9, 9e-3, 10}, {9, 9e-3, 10}, 40, score).empty()); // the start alone forces them
    CHECK(chooseBands({}, {}, 40, score).empty());
}
