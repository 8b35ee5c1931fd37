#include "tests/support/catch.hpp"
#include "tests/support/fake_boat.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/map2d/planking_map.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/words.hpp"

#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include <algorithm>
#include <memory>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::ui;

namespace {

/// Middle of a strip on the map: halfway along, halfway between its edges.
QPointF middleOf(const Boat& boat, const PlankingMap& map, std::size_t strip) {
    const core::Strip& data = boat.plan.strips[strip];
    const test::Spheroid hull;
    const double half = 0.5 * 3.14159265358979 * hull.radius;
    const double girth = half - (data.row - 0.5) * hull.cover;
    return map.toWidget({hull.halfLength, data.side == core::Side::Port ? -girth : girth});
}

std::unique_ptr<PlankingMap> shownMap(const std::shared_ptr<const Boat>& boat) {
    test::qtApp();
    auto map = std::make_unique<PlankingMap>();
    map->resize(1000, 400);
    map->setBoat(boat);
    map->show();
    REQUIRE(QTest::qWaitForWindowExposed(map.get()));
    return map;
}

QColor colourAt(PlankingMap& map, const QPointF& place) {
    return map.grab().toImage().pixelColor((place * map.devicePixelRatioF()).toPoint());
}

} // namespace

TEST_CASE("each strip is found at its own place, port above starboard") {
    const auto boat = test::fakeBoat();
    const auto map = shownMap(boat);
    for (std::size_t i = 0; i < boat->plan.strips.size(); ++i) {
        const QPointF place = middleOf(*boat, *map, i);
        CHECK(map->stripAt(place) == boat->plan.strips[i].id);
        const bool above = place.y() < map->toWidget({0.0, 0.0}).y();
        CHECK(above == (boat->plan.strips[i].side == core::Side::Port));
    }
    CHECK(map->stripAt({1.0, 1.0}).empty());
}

TEST_CASE("the start's handle is seen, even where it lies at the map's lower edge") {
    const auto boat = std::make_shared<Boat>(*test::fakeBoat());
    boat->scene.mapStart.clear();
    for (const Eigen::Vector2d& p : boat->scene.mapSheer)
        boat->scene.mapStart.push_back(p);
    const auto map = shownMap(boat);
    map->setStartShown(true);
    for (const QSize size : {QSize(1000, 400), QSize(700, 240), QSize(420, 140)}) {
        map->resize(size);
        QCoreApplication::processEvents();
        REQUIRE(map->startHandle());
        INFO(size.width() << " by " << size.height() << ", at " << map->startHandle()->y());
        CHECK(colourAt(*map, *map->startHandle()) == QColor::fromRgb(palette::cedar));
    }
}

TEST_CASE("no name on the map lies over another, however little room there is") {
    const auto map = shownMap(test::fakeBoat());
    for (const QSize size : {QSize(1000, 400), QSize(700, 240), QSize(420, 140)}) {
        map->resize(size);
        map->fit();
        const std::vector<MapLabel> labels = map->labels();
        INFO(size.width() << " by " << size.height() << ": " << labels.size());
        CHECK(std::ranges::count_if(labels, [](const MapLabel& l) { return l.leader.has_value(); }) == 4);
        CHECK(labels.size() > 4); // some station is named
        for (std::size_t i = 0; i < labels.size(); ++i)
            for (std::size_t j = 0; j < i; ++j)
                CHECK_FALSE(labels[i].box.intersects(labels[j].box));
    }
}

TEST_CASE("a station's name is read over strips too") {
    const auto boat = test::fakeBoat();
    const auto map = shownMap(boat);
    map->setLaidCount(boat->pieces());
    map->zoom(6.0, map->toWidget({0.5 * boat->hull.laid.length, 0.0})); // strips all over the picture
    const std::vector<MapLabel> labels = map->labels();
    const auto inSight = std::ranges::find_if(
        labels, [&](const MapLabel& l) { return !l.leader && map->rect().contains(l.box.toRect()); });
    REQUIRE(inSight != labels.end());
    // beside the word's letters it is nearly paper
    const QColor corner = colourAt(*map, inSight->box.center() + QPointF(0, -7));
    CHECK(std::abs(corner.lightness() - QColor::fromRgb(palette::paper).lightness()) < 30);
}

TEST_CASE("one scale holds along and across") {
    const auto map = shownMap(test::fakeBoat());
    const QPointF origin = map->toWidget({0.0, 0.0});
    const double along = map->toWidget({1000.0, 0.0}).x() - origin.x();
    const double across = map->toWidget({0.0, 1000.0}).y() - origin.y();
    CHECK(along > 100.0);
    CHECK_THAT(across, WithinAbs(along, 1e-9));
}

TEST_CASE("a click names the strip, a drag does not") {
    const auto boat = test::fakeBoat();
    const auto map = shownMap(boat);
    const QSignalSpy clicked(map.get(), &PlankingMap::stripClicked);
    const QPointF place = middleOf(*boat, *map, 4);
    QTest::mouseClick(map.get(), Qt::LeftButton, Qt::NoModifier, place.toPoint());
    REQUIRE(clicked.count() == 1);
    CHECK(clicked.at(0).at(0).toString().toStdString() == boat->plan.strips[4].id);

    const QPointF before = map->toWidget({0.0, 0.0});
    QTest::mousePress(map.get(), Qt::LeftButton, Qt::NoModifier, place.toPoint());
    QMouseEvent move(QEvent::MouseMove,
                     place.toPoint() + QPoint(40, 25),
                     map->mapToGlobal(place.toPoint() + QPoint(40, 25)),
                     Qt::NoButton,
                     Qt::LeftButton,
                     Qt::NoModifier);
    QApplication::sendEvent(map.get(), &move);
    QTest::mouseRelease(map.get(), Qt::LeftButton, Qt::NoModifier, place.toPoint() + QPoint(40, 25));
    CHECK(clicked.count() == 1);
    const QPointF moved = map->toWidget({0.0, 0.0}) - before;
    CHECK_THAT(moved.x(), WithinAbs(40.0, 1.0));
    CHECK_THAT(moved.y(), WithinAbs(25.0, 1.0));
}

TEST_CASE("zooming keeps what is under the pointer, and fitting brings all back") {
    const auto map = shownMap(test::fakeBoat());
    const QPointF about = map->toWidget({1200.0, 300.0});
    const QPointF other = map->toWidget({1300.0, 300.0});
    map->zoom(2.5, about);
    CHECK_THAT((map->toWidget({1200.0, 300.0}) - about).manhattanLength(), WithinAbs(0.0, 1e-6));
    CHECK_THAT(map->toWidget({1300.0, 300.0}).x() - about.x(),
               WithinRel(2.5 * (other.x() - about.x()), 1e-9));
    map->fit();
    CHECK_THAT((map->toWidget({1300.0, 300.0}) - other).manhattanLength(), WithinAbs(0.0, 1e-6));
}

TEST_CASE("laid strips carry their class's colour, the others the paper's") {
    const auto boat = test::fakeBoat();
    const auto map = shownMap(boat);
    map->setLaidCount(9); // rows 1 to 4 and S05
    for (std::size_t i = 0; i < boat->plan.strips.size(); ++i) {
        const core::Strip& strip = boat->plan.strips[i];
        if (strip.order == 10)
            continue; // the next one: its thick outline covers the narrow strip
        const QPointF shifted = middleOf(*boat, *map, i) + QPointF(7.0, 0.0); // beside the station line
        const QColor seen = colourAt(*map, shifted);
        if (strip.order <= 9)
            CHECK(seen == difficultyColour(boat->difficulty[i]));
        else
            CHECK(seen == QColor::fromRgb(palette::paper));
    }
}

TEST_CASE("a selected strip stands out") {
    const auto boat = test::fakeBoat();
    const auto map = shownMap(boat);
    map->setLaidCount(boat->pieces());
    const QPointF place = middleOf(*boat, *map, 6) + QPointF(7.0, 0.0);
    const QColor before = colourAt(*map, place);
    map->setSelected(boat->plan.strips[6].id);
    const QColor after = colourAt(*map, place);
    CHECK(after != before);
    CHECK(after.blueF() - after.redF() > before.blueF() - before.redF()); // tinted line blue
    map->setSelected(std::string());
    CHECK(colourAt(*map, place) == before);
}

TEST_CASE("scarfs are drawn across their strips and tell themselves under the pointer") {
    const auto boat = test::fakeBoat();
    const auto map = shownMap(boat);
    map->setLaidCount(boat->pieces());
    const QPointF place = middleOf(*boat, *map, 4) + QPointF(7.0, 0.0);
    CHECK(map->scarfTextAt(place).isEmpty());
    const QColor before = colourAt(*map, place);
    const test::Spheroid hull;
    const double shift = 7.0 / (map->toWidget({1.0, 0.0}).x() - map->toWidget({0.0, 0.0}).x());
    const double x = hull.halfLength + shift, half = 0.5 * 3.14159265358979 * hull.radius;
    const int row = boat->plan.strips[4].row;
    map->setScarfs({{4, {x, half - (row - 1) * hull.cover}, {x, half - row * hull.cover}, 1234.0, x}});
    CHECK(colourAt(*map, place) != before);
    const QString told = map->scarfTextAt(place);
    CHECK(told.contains(QString::fromStdString(boat->plan.strips[4].id)));
    CHECK(told.contains(lengthText(1234.0, core::Units::Millimetres)));
    CHECK(map->scarfTextAt(place + QPointF(12.0, 0.0)).isEmpty());
    map->setBoat(boat); // another plan has other scarfs
    CHECK(map->scarfTextAt(place).isEmpty());
}

TEST_CASE("while measuring, clicks and the mark that the arrows move name places, not strips") {
    const auto boat = test::fakeBoat();
    const auto map = shownMap(boat);
    std::vector<QPointF> touched;
    QObject::connect(
        map.get(), &PlankingMap::touched, map.get(), [&](const QPointF& at) { touched.push_back(at); });
    const QSignalSpy clicked(map.get(), &PlankingMap::stripClicked);
    map->setMeasuring(true);
    QTest::mouseClick(map.get(), Qt::LeftButton, Qt::NoModifier, map->toWidget({900.0, 120.0}).toPoint());
    REQUIRE(touched.size() == 1);
    CHECK_THAT(touched[0].x(), WithinAbs(900.0, 6.0)); // a pixel
    CHECK_THAT(touched[0].y(), WithinAbs(120.0, 6.0));
    CHECK(clicked.count() == 0);
    QTest::keyClick(map.get(), Qt::Key_Right);
    QTest::keyClick(map.get(), Qt::Key_Up, Qt::ShiftModifier);
    CHECK(map->accessibleDescription().contains(placeText(touched[0].x() + 10.0, core::Units::Millimetres)));
    QTest::keyClick(map.get(), Qt::Key_Return);
    REQUIRE(touched.size() == 2);
    CHECK_THAT(touched[1].x() - touched[0].x(), WithinAbs(10.0, 1e-9));
    CHECK_THAT(touched[1].y() - touched[0].y(), WithinAbs(-100.0, 1e-9));
    for (int i = 0; i < 100; ++i)
        QTest::keyClick(map.get(), Qt::Key_Down, Qt::ShiftModifier); // no farther than the sheer
    QTest::keyClick(map.get(), Qt::Key_Space);
    CHECK_THAT(touched.back().y(), WithinAbs(boat->scene.map.halfGirth(touched.back().x()), 1e-6));

    const QPointF beside = map->toWidget({1500.0, 77.0});
    const QColor bare = colourAt(*map, beside);
    map->setTape({{1400.0, 77.0}, {1600.0, 77.0}});
    CHECK(colourAt(*map, beside) != bare);
    map->setMeasuring(false);
    CHECK(colourAt(*map, beside) == bare);
    QTest::mouseClick(map.get(), Qt::LeftButton, Qt::NoModifier, beside.toPoint());
    CHECK(clicked.count() == 1);
}

TEST_CASE("a map without a boat is empty and calm") {
    test::qtApp();
    PlankingMap map;
    map.resize(300, 200);
    map.setLaidCount(5);
    map.setSelected("S01");
    CHECK(map.stripAt({100.0, 100.0}).empty());
    CHECK(colourAt(map, {150.0, 100.0}) == QColor::fromRgb(palette::paper));
}
