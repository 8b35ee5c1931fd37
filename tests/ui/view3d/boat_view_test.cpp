#include "tests/support/catch.hpp"
#include "tests/support/fake_boat.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/scene/palette.hpp"
#include "ui/view3d/boat_view.hpp"
#include "ui/view3d/gl_view.hpp"

#include <QImage>
#include <QLabel>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QVBoxLayout>

#include <cmath>
#include <memory>
#include <optional>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::ui;

namespace {

struct Shown {
    std::shared_ptr<const Boat> boat;
    QWidget window;
    BoatView* view = nullptr;

    Shown() {
        view = new BoatView(&window);
        auto* layout = new QVBoxLayout(&window);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(view);
        boat = test::fakeBoat();
        view->setBoat(boat);
        view->look(Look::Profile);
        window.resize(600, 420);
        QSignalSpy drawn(view, &BoatView::drawn);
        window.show();
        REQUIRE(QTest::qWaitForWindowExposed(&window));
        REQUIRE((drawn.count() > 0 || drawn.wait(10000)));
        REQUIRE(view->drawing());
    }
    GlView& gl() const { return *view->picture(); }
    void settle() const {
        QSignalSpy drawn(view, &BoatView::drawn);
        view->picture()->update();
        QTest::qWait(350); // longer than the rest after which the picture is drawn finely
    }
    QColor colourAt(const QPointF& place) const {
        const QImage image = view->picture()->grabFramebuffer();
        return image.pixelColor((place * view->picture()->devicePixelRatioF()).toPoint());
    }
};

struct App {
    App() { test::qtApp(); }
};

double difference(const QColor& a, const QColor& b) {
    return std::max(
        {std::abs(a.redF() - b.redF()), std::abs(a.greenF() - b.greenF()), std::abs(a.blueF() - b.blueF())});
}

/// Over all pixels, 0 to 1.
double meanDifference(const QImage& a, const QImage& b) {
    double sum = 0.0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            sum += difference(a.pixelColor(x, y), b.pixelColor(x, y));
    return sum / (static_cast<double>(a.width()) * a.height());
}

} // namespace

TEST_CASE_METHOD(App, "marking the picture as the old one moves nothing and draws no strip anew") {
    Shown shown;
    shown.settle();
    const auto* mark = shown.view->findChild<QLabel*>(QStringLiteral("staleMark"));
    REQUIRE(mark != nullptr);
    CHECK_FALSE(mark->isVisible());
    const QRect place = shown.gl().geometry();
    QSignalSpy drawn(shown.view, &BoatView::drawn);
    shown.view->setStale(true);
    QTest::qWait(100);
    CHECK(mark->isVisible());
    CHECK(mark->width() >= mark->sizeHint().width());
    CHECK(shown.gl().rect().contains(mark->geometry()));
    CHECK(shown.gl().geometry() == place);
    shown.view->setStale(false);
    QTest::qWait(100);
    CHECK_FALSE(mark->isVisible());
    CHECK(drawn.count() == 0);
}

TEST_CASE_METHOD(App,
                 "edges wait to be smooth while a plan is worked out; a saved picture has them at once") {
    Shown shown;
    shown.settle();
    const auto picture = [&] { return shown.gl().grabFramebuffer(); };
    const QImage smooth = picture();
    shown.view->setHurried(true);
    shown.view->setColours(StripColours::Twist);
    shown.view->setColours(StripColours::Bend);
    QTest::qWait(400);
    const QImage rough = picture();
    CHECK(rough != smooth);
    CHECK(meanDifference(rough, smooth) < 0.01); // edges alone: she keeps her colours when she moves
    shown.gl().drawFinelyNow();
    CHECK(picture() == smooth);
    shown.view->setColours(StripColours::Twist);
    shown.view->setColours(StripColours::Bend);
    QTest::qWait(400);
    CHECK(picture() == rough);
    shown.view->setHurried(false);
    QTest::qWait(400);
    CHECK(picture() == smooth);
}

TEST_CASE_METHOD(App, "stepping shows and hides, and computes nothing anew") {
    Shown shown;
    const int pieces = shown.boat->pieces();
    for (const int laid : {pieces, 0})
        shown.view->setLaidCount(laid); // now everything has been seen once
    const int computed = shown.gl().computed();
    CHECK(computed > 0);
    for (const int laid : {0, 1, 7, pieces - 1, pieces, 3, 0, 12}) {
        shown.view->setLaidCount(laid);
        for (std::size_t i = 0; i < shown.boat->plan.strips.size(); ++i) {
            const int order = shown.boat->plan.strips[i].order;
            CHECK(shown.gl().laidShown(i) == (order <= laid));
            CHECK(shown.gl().ghostShown(i) == (order > laid));
        }
    }
    shown.view->setGhostsShown(false);
    for (std::size_t i = 0; i < shown.boat->plan.strips.size(); ++i)
        CHECK(shown.gl().ghostShown(i) == (shown.boat->plan.strips[i].order == 13)); // only the next one
    CHECK(shown.gl().computed() == computed);
}

TEST_CASE_METHOD(App, "a cut takes away what lies before it, and is undone") {
    Shown shown;
    shown.view->setMouldsShown(false);
    shown.view->setGhostsShown(false);
    shown.view->setLaidCount(shown.boat->pieces());
    shown.settle();
    // profile: somewhere on the verticals a third from either end lie strips
    const auto strips = [&](double part) {
        int found = 0;
        for (double y = 2.0; y < shown.gl().height(); y += 2.0)
            found += shown.gl().stripAt({part * shown.gl().width(), y}).empty() ? 0 : 1;
        return found;
    };
    const int left = strips(0.3), right = strips(0.7);
    REQUIRE(left > 3);
    REQUIRE(right > 3);
    const auto picture = [&] {
        shown.settle();
        return shown.gl().grabFramebuffer();
    };
    const QImage whole = picture();
    shown.view->setCut(0.5 * shown.boat->hull.laid.length);
    const QImage cut = picture();
    // one end of the boat is gone, in the picture and under the pointer; the other stands
    CHECK(std::min(strips(0.3), strips(0.7)) == 0);
    CHECK(std::max(strips(0.3), strips(0.7)) > 3);
    CHECK(cut != whole);
    shown.view->setCut(std::nullopt);
    CHECK(strips(0.3) == left);
    CHECK(strips(0.7) == right);
    CHECK(picture() == whole);
}

TEST_CASE_METHOD(App, "a strip lies under the pointer only when it is laid, and a click names it") {
    Shown shown;
    shown.view->setMouldsShown(false);
    shown.view->setLaidCount(0);
    shown.settle();
    const QPointF middle(0.5 * shown.gl().width(), 0.5 * shown.gl().height());
    CHECK(shown.gl().stripAt(middle).empty());

    shown.view->setLaidCount(shown.boat->pieces());
    shown.settle();
    // profile, upside down: the eye is to starboard; somewhere on the vertical through the middle lies each
    // row's side
    QStringList found;
    for (double y = 2.0; y < shown.gl().height(); y += 1.0) {
        const QString id = QString::fromStdString(shown.gl().stripAt({middle.x(), y}));
        if (!id.isEmpty() && !found.contains(id))
            found << id;
    }
    CHECK(found.size() >=
          shown.boat->plan.lastRow - 3); // the flattest rows next to the keel are seen edge on
    for (const QString& id : found)
        CHECK(id.startsWith(QLatin1Char('S')));
    for (qsizetype i = 1; i < found.size(); ++i)
        CHECK(found[i] < found[i - 1]); // rows count from the sheer, which is down

    QSignalSpy clicked(shown.view, &BoatView::stripClicked);
    QPointF onFirst;
    for (double y = 2.0; y < shown.gl().height(); y += 1.0) {
        if (shown.gl().stripAt({middle.x(), y}) == "S02")
            onFirst = {middle.x(), y};
    }
    REQUIRE(!onFirst.isNull());
    QTest::mouseClick(&shown.gl(), Qt::LeftButton, Qt::NoModifier, onFirst.toPoint());
    REQUIRE(clicked.count() == 1);
    CHECK(clicked.at(0).at(0).toString().toStdString() == "S02");
    QTest::mouseClick(&shown.gl(), Qt::LeftButton, Qt::NoModifier, QPoint(3, 3));
    REQUIRE(clicked.count() == 2);
    CHECK(clicked.at(1).at(0).toString().isEmpty());
}

TEST_CASE_METHOD(App, "while measuring a click names the place on the strip, and the tape is drawn") {
    Shown shown;
    shown.view->setMouldsShown(false);
    shown.view->setLaidCount(shown.boat->pieces());
    shown.settle();
    QPointF onFirst;
    for (double y = 2.0; y < shown.gl().height(); y += 1.0)
        if (shown.gl().stripAt({0.5 * shown.gl().width(), y}) == "S02")
            onFirst = {0.5 * shown.gl().width(), y};
    REQUIRE(!onFirst.isNull());
    std::vector<std::optional<Eigen::Vector3d>> touched;
    QObject::connect(shown.view,
                     &BoatView::touched,
                     shown.view,
                     [&](const std::optional<Eigen::Vector3d>& at) { touched.push_back(at); });
    const QSignalSpy clicked(shown.view, &BoatView::stripClicked);
    shown.view->setMeasuring(true);
    QTest::mouseClick(&shown.gl(), Qt::LeftButton, Qt::NoModifier, onFirst.toPoint());
    QTest::mouseClick(&shown.gl(), Qt::LeftButton, Qt::NoModifier, QPoint(3, 3));
    CHECK(clicked.count() == 0);
    REQUIRE(touched.size() == 2);
    CHECK_FALSE(touched[1]);
    REQUIRE(touched[0]);
    // on the outer face of the second row: a little outside the spheroid, that girth below the sheer
    const test::Spheroid hull;
    const Eigen::Vector3d p = *touched[0];
    const double radius = hull.radiusAt(p.x());
    const double outside = shown.boat->project.strips.thickness - shown.boat->hull.laidHeight;
    CHECK_THAT(std::hypot(p.y(), p.z()) - radius, WithinAbs(outside, 1.0)); // flat bars on a round hull
    const double girth = std::atan2(-p.z(), p.y()) * radius;
    CHECK(girth > hull.cover - 1.0);
    CHECK(girth < 2.0 * hull.cover + 1.0);
    CHECK_THAT(p.x(), WithinAbs(hull.halfLength, 0.02 * hull.halfLength));

    shown.settle();
    const QImage without = shown.gl().grabFramebuffer();
    const Eigen::Vector3d aft = hull.at(p.x() + 500.0, girth);
    shown.view->setTape({{p + Eigen::Vector3d(0, 5, 0), aft + Eigen::Vector3d(0, 5, 0)}});
    shown.settle();
    CHECK(shown.gl().grabFramebuffer() != without);
    shown.view->setTape({});
    shown.settle();
    CHECK(shown.gl().grabFramebuffer() == without);
}

TEST_CASE_METHOD(App, "laid strips are drawn, and selecting one changes its colour there") {
    Shown shown;
    shown.view->setMouldsShown(false);
    shown.view->setGhostsShown(false);
    shown.view->setLaidCount(0);
    shown.settle();
    // a place on a strip of row 3
    shown.view->setLaidCount(shown.boat->pieces());
    shown.settle();
    QPointF place;
    int run = 0;
    for (double y = 2.0; y < shown.gl().height() && run < 5; y += 1.0) {
        const bool on = shown.gl().stripAt({0.5 * shown.gl().width(), y}) == "S03";
        run = on ? run + 1 : 0;
        if (on)
            place = {0.5 * shown.gl().width(), y - 2.0};
    }
    REQUIRE(run == 5);
    QTest::mouseMove(&shown.gl(), QPoint(3, 3)); // nothing is highlighted
    CHECK(shown.gl().stripAt({3.0, 3.0}).empty());
    shown.settle();
    const QColor laid = shown.colourAt(place);
    const auto third = static_cast<std::size_t>(shown.boat->strip("S03") - shown.boat->plan.strips.data());
    const QColor own = difficultyColour(shown.boat->difficulty[third]);
    CHECK(difference(laid, own) < 0.12); // shaded, but that colour: not dark, not blue
    CHECK(laid.redF() > laid.blueF() + 0.05);

    shown.view->setSelected("S03");
    shown.settle();
    const QColor selected = shown.colourAt(place);
    CHECK(selected.blueF() - selected.redF() > laid.blueF() - laid.redF() + 0.1);
    shown.view->setSelected(std::string());
    shown.view->setLaidCount(0);
    shown.settle();
    const QColor bare = shown.colourAt(place);
    CHECK(difference(bare, QColor::fromRgb(palette::paper)) < 0.06); // background between paper and bench
}

TEST_CASE_METHOD(App, "the picture is saved in the view's size") {
    Shown shown;
    shown.view->setLaidCount(shown.boat->pieces());
    shown.settle();
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("boat.png"));
    REQUIRE(shown.view->savePicture(path));
    const QImage image(path);
    CHECK(image.size() == shown.view->size() * shown.view->devicePixelRatioF());
    CHECK(!shown.view->savePicture(folder.filePath(QStringLiteral("no/such/folder.png"))));
}

TEST_CASE_METHOD(App, "a new boat takes the old one's place, and none clears the view") {
    Shown shown;
    shown.view->setLaidCount(6);
    test::Spheroid coarse;
    coarse.cover = 60.0;
    const auto other = test::fakeBoat(coarse);
    shown.view->setBoat(other);
    shown.settle();
    for (std::size_t i = 0; i < other->plan.strips.size(); ++i)
        CHECK(shown.gl().laidShown(i) == (other->plan.strips[i].order <= 6));
    shown.view->setBoat(nullptr);
    shown.settle();
    CHECK(shown.gl().stripAt({300.0, 200.0}).empty());
}

TEST_CASE_METHOD(App, "the view survives being moved to another window") {
    Shown shown;
    shown.view->setLaidCount(shown.boat->pieces());
    QWidget other;
    auto* layout = new QVBoxLayout(&other);
    layout->addWidget(shown.view);
    other.resize(500, 400);
    other.show();
    REQUIRE(QTest::qWaitForWindowExposed(&other));
    QTest::qWait(400);
    QString found;
    for (double y = 2.0; y < shown.gl().height() && found.isEmpty(); y += 2.0)
        found = QString::fromStdString(shown.gl().stripAt({0.5 * shown.gl().width(), y}));
    CHECK(found.startsWith(QLatin1Char('S')));
    shown.view->setParent(&shown.window); // goes down with its first home
}
