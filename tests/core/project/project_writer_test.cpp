#include "core/project/project_file.hpp"
#include "core/project/project_writer.hpp"
#include "tests/support/catch.hpp"

#include <cmath>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <vector>

using namespace sheerlay::core;

namespace {

// Twelve digits of inches on a length below 10 m.
constexpr double tolerance = 1e-7; // mm

bool near(double a, double b) {
    return std::abs(a - b) <= tolerance;
}

bool near(const std::optional<double>& a, const std::optional<double>& b) {
    return a.has_value() == b.has_value() && (!a || near(*a, *b));
}

bool near(const TablePoint& a, const TablePoint& b) {
    return a.kind == b.kind && near(a.halfBreadth, b.halfBreadth) && near(a.height, b.height);
}

void requireSame(const HullTable& a, const HullTable& b) {
    CHECK(a.drawnTo == b.drawnTo);
    CHECK(near(a.roundedTo, b.roundedTo));
    CHECK(near(a.halfSiding, b.halfSiding));
    REQUIRE(a.profile.size() == b.profile.size());
    for (std::size_t i = 0; i < a.profile.size(); ++i) {
        CHECK(near(a.profile[i].x, b.profile[i].x));
        CHECK(near(a.profile[i].height, b.profile[i].height));
        CHECK(near(a.profile[i].halfSiding, b.profile[i].halfSiding));
    }
    REQUIRE(a.stations.size() == b.stations.size());
    for (std::size_t i = 0; i < a.stations.size(); ++i) {
        const Station& s = a.stations[i];
        const Station& t = b.stations[i];
        CHECK(near(s.x, t.x));
        CHECK(near(s.sheer, t.sheer));
        REQUIRE(s.keel.has_value() == t.keel.has_value());
        CHECK((!s.keel || near(*s.keel, *t.keel)));
        REQUIRE(s.points.size() == t.points.size());
        for (std::size_t j = 0; j < s.points.size(); ++j)
            CHECK(near(s.points[j], t.points[j]));
    }
    REQUIRE(a.transoms.size() == b.transoms.size());
    for (std::size_t i = 0; i < a.transoms.size(); ++i) {
        CHECK(a.transoms[i].end == b.transoms[i].end);
        CHECK(near(a.transoms[i].xAtSheer, b.transoms[i].xAtSheer));
        CHECK(near(a.transoms[i].xAtKeel, b.transoms[i].xAtKeel));
    }
}

void requireSame(const Journal& a, const Journal& b) {
    REQUIRE(a.readings.size() == b.readings.size());
    for (std::size_t i = 0; i < a.readings.size(); ++i) {
        const RowReading& r = a.readings[i];
        const RowReading& s = b.readings[i];
        CHECK(r.row == s.row);
        CHECK(r.side == s.side);
        CHECK(near(r.sd, s.sd));
        CHECK(r.date == s.date);
        REQUIRE(r.girthLeft.size() == s.girthLeft.size());
        for (std::size_t k = 0; k < r.girthLeft.size(); ++k) {
            CHECK(near(r.girthLeft[k].x, s.girthLeft[k].x));
            CHECK(near(r.girthLeft[k].girth, s.girthLeft[k].girth));
        }
    }
    REQUIRE(a.laid.size() == b.laid.size());
    for (std::size_t i = 0; i < a.laid.size(); ++i) {
        CHECK(a.laid[i].strip == b.laid[i].strip);
        CHECK(a.laid[i].date == b.laid[i].date);
        CHECK(a.laid[i].note == b.laid[i].note);
    }
}

void requireSame(const Project& a, const Project& b) {
    CHECK(a.name == b.name);
    CHECK(a.units == b.units);
    requireSame(a.hull, b.hull);
    CHECK(near(a.strips.thickness, b.strips.thickness));
    CHECK(near(a.strips.width, b.strips.width));
    CHECK(near(a.strips.coverWidth, b.strips.coverWidth));
    CHECK(a.strips.wood == b.strips.wood);
    const Planking& p = a.planking;
    const Planking& q = b.planking;
    CHECK(p.layOn == q.layOn);
    CHECK(p.start.kind == q.start.kind);
    CHECK(near(p.start.girth, q.start.girth));
    CHECK(p.start.edgeBend == q.start.edgeBend);
    CHECK(near(p.edgeBendRadius, q.edgeBendRadius));
    CHECK(near(p.narrowest, q.narrowest));
    CHECK(p.taper == q.taper);
    CHECK(p.bowEnds == q.bowEnds);
    CHECK(p.sternEnds == q.sternEnds);
    CHECK(p.closing == q.closing);
    REQUIRE(p.accents.size() == q.accents.size());
    for (std::size_t i = 0; i < p.accents.size(); ++i) {
        CHECK(p.accents[i].by == q.accents[i].by);
        CHECK(near(p.accents[i].at, q.accents[i].at));
    }
    CHECK(p.shutter == q.shutter);
    requireSame(a.journal, b.journal);
}

Project readBack(const std::string& text) {
    const auto read = parseProject(text, "written.sheerlay");
    if (!read)
        for (const FileMessage& message : read.error())
            UNSCOPED_INFO(toText(message));
    REQUIRE(read.has_value());
    for (const FileMessage& message : read->warnings) {
        INFO(toText(message)); // some of what is drawn at random no knuckled hull is planked with, and a
                               // round may be empty
        const bool knuckled = message.found.find("on a hull with a knuckle") != std::string::npos;
        const bool empty = message.found.find("no girth stands here yet") != std::string::npos;
        CHECK((knuckled || empty));
    }
    return read->project;
}

/// A project with every field away from its default, values drawn at random.
Project everything(Units units, unsigned seed) {
    std::mt19937 random(seed);
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    const auto pick = [&](int count) { return std::uniform_int_distribution<int>(0, count - 1)(random); };
    Project project;
    project.name = "Odd \"name\" \\ with\ttab, é and ½";
    project.units = units;
    project.hull.drawnTo = DrawnTo::Outside;
    project.hull.roundedTo = between(0.1, 3);
    project.hull.halfSiding = between(0, 10);
    project.hull.profile = {{0.0, between(400, 500), between(1, 5), 0},
                            {between(100, 200), 50.0, std::nullopt, 0},
                            {4000.0, 480.0, 3.0, 0}};
    double x = between(-500, 0);
    for (int i = 0; i < 6; ++i) {
        Station station;
        station.x = x += between(1, 900);
        const double sheer = between(300, 500);
        station.sheer = {PointKind::Sheer, between(0, 400), sheer, {}, {}, 0};
        station.keel =
            TablePoint{PointKind::Keel, i % 2 == 0 ? 0.0 : between(0, 10), between(-30, -10), {}, {}, 0};
        station.knuckle = TablePoint{PointKind::Knuckle, between(100, 400), between(-5, 200), {}, {}, 0};
        for (int k = 0; k < 4; ++k)
            station.points.push_back(
                {PointKind::Waterline, between(0, 400), 30.0 * k + between(1, 20), {}, {}, 0});
        station.points.push_back({PointKind::Buttock, between(0, 400), between(1, 200), {}, {}, 0});
        station.points.push_back({PointKind::Point, between(0, 400), between(1, 200), {}, {}, 0});
        project.hull.stations.push_back(station);
    }
    project.hull.transoms = {{End::Bow, between(0, 10), between(0, 10), 0},
                             {End::Stern, 4000.0, between(3900, 4000), 0}};
    project.strips = {between(4, 10), 20.0, between(10, 19), "yellow-poplar"};
    project.planking.layOn = static_cast<LayOn>(pick(3));
    project.planking.start = {
        StartLine::Kind::Bent, between(0, 300), 0.0, {between(-1, 1), between(-1, 1), 1e-9}};
    project.planking.edgeBendRadius = between(1000, 5000);
    project.planking.narrowest = between(1, 10);
    project.planking.taper = static_cast<Taper>(pick(3));
    project.planking.bowEnds = static_cast<EndStyle>(pick(3));
    project.planking.sternEnds = static_cast<EndStyle>(pick(3));
    project.planking.closing = static_cast<ClosingMethod>(pick(4));
    project.planking.accents = {{Accent::By::Girth, between(0, 300)},
                                {Accent::By::Height, between(-50, 400)}};
    project.planking.shutter = std::array<double, 2>{between(0.1, 0.5), between(0.6, 1.0)};
    for (int row = 0; row < 20; row += 10) {
        RowReading reading;
        reading.row = row;
        reading.side = static_cast<ReadSide>(pick(3));
        reading.sd = between(0.1, 1);
        reading.date = row == 0 ? "" : "the first \"warm\" day";
        for (int i = 0; i < pick(5); ++i)
            reading.girthLeft.push_back({between(-500, 5000), between(0, 700), {}, {}, 0});
        project.journal.readings.push_back(reading);
    }
    project.journal.laid = {{"S01", "", "", 0}, {"P-03.2", "2 May", "split, glued again", 0}};
    return project;
}

std::string fileText(const std::string& path) {
    std::ifstream stream(path, std::ios::binary);
    REQUIRE(stream.good());
    return {std::istreambuf_iterator<char>(stream), {}};
}

} // namespace

TEST_CASE("a written project reads back the same, in both units") {
    for (const Units units : {Units::Millimetres, Units::Inches}) {
        for (unsigned seed = 1; seed <= 50; ++seed) {
            INFO("seed " << seed);
            const Project project = everything(units, seed);
            const std::string text = writeProject(project);
            const Project back = readBack(text);
            requireSame(project, back);
            REQUIRE(writeProject(back) == text); // saving again changes nothing
        }
    }
}

TEST_CASE("how far a reading may be off is written where it is not the usual") {
    Project project = everything(Units::Inches, 1);
    project.journal.readings.resize(1);
    project.journal.readings[0].sd = RowReading{}.sd;
    CHECK(writeProject(project).find("\nsd = ") == std::string::npos);
    project.journal.readings[0].sd = 0.3;
    CHECK(writeProject(project).find("\nsd = ") != std::string::npos);
}

TEST_CASE("every starting line is written by its own word") {
    for (const auto kind : {StartLine::Kind::Sheer,
                            StartLine::Kind::Geodesic,
                            StartLine::Kind::Bent,
                            StartLine::Kind::Easiest}) {
        Project project = everything(Units::Millimetres, 3);
        project.planking.start = {kind, 0.0, 0.0, {}};
        requireSame(project, readBack(writeProject(project)));
    }
}

TEST_CASE("reference projects survive writing in the notation they came in") {
    for (const char* name :
         {"formula_canoe", "formula_canoe_geodesic", "stephens_1889_as_printed", "stephens_1889_corrected"}) {
        INFO(name);
        const auto read = readProject(std::string(SHEERLAY_REFERENCE) + "/" + name + ".sheerlay");
        REQUIRE(read.has_value());
        const std::string text = writeProject(read->project);
        requireSame(read->project, readBack(text));
        CHECK(text.find("x = \"1-0-0\"") != std::string::npos);
        CHECK(writeProject(readBack(text)) == text);
    }
}

TEST_CASE("cut and spoilt files never harm the reader") {
    const unsigned seed = 20261125;
    INFO("seed " << seed);
    std::mt19937 random(seed);
    const std::string folder = std::string(SHEERLAY_REFERENCE) + "/../cli/";
    const std::vector<std::string> originals{fileText(folder + "odd/later_tables.sheerlay"),
                                             fileText(folder + "bad/many.sheerlay"),
                                             writeProject(everything(Units::Inches, 7)),
                                             writeProject(everything(Units::Millimetres, 8))};
    const std::string signs = "0123456789-+.,\"'[]{}=#\n \\enaif_xu\xc3\x00\x7f";
    int refused = 0;
    int readable = 0;
    constexpr int cases = 10000;
    for (int i = 0; i < cases; ++i) {
        std::string text = originals[static_cast<std::size_t>(i) % originals.size()];
        const auto place = [&] {
            return std::uniform_int_distribution<std::size_t>(0, text.empty() ? 0 : text.size() - 1)(random);
        };
        const int kind = std::uniform_int_distribution<int>(0, 3)(random);
        if (kind == 0) {
            text.resize(place());
        } else if (kind == 1) {
            const std::size_t from = place();
            text.erase(from, std::uniform_int_distribution<std::size_t>(1, 60)(random));
        } else {
            const int changes = kind == 2 ? 1 : 6;
            for (int k = 0; k < changes; ++k)
                text[place()] =
                    signs[std::uniform_int_distribution<std::size_t>(0, signs.size() - 1)(random)];
        }
        const auto read = parseProject(text, "spoilt.sheerlay");
        if (read) {
            ++readable;
            REQUIRE(read->project.hull.stations.size() >= 3);
            for (const Station& station : read->project.hull.stations)
                REQUIRE(std::isfinite(station.x + station.sheer.height + station.sheer.halfBreadth));
        } else {
            ++refused;
            REQUIRE_FALSE(read.error().empty());
            int line = 0;
            for (const FileMessage& message : read.error()) {
                REQUIRE(message.line >= line); // in the order of the lines
                line = message.line;
                REQUIRE(toText(message).find('\n') == std::string::npos);
                REQUIRE_FALSE(message.key.empty());
            }
        }
    }
    // Both ways were walked often enough to mean something.
    CHECK(refused > cases / 10);
    CHECK(readable > cases / 100);
}
