#include "core/journal/planned_girth.hpp"
#include "core/journal/replan.hpp"
#include "core/journal/what_was_laid.hpp"
#include "core/project/laid_strips.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/scene/words.hpp"
#include "ui/shop/girth_panel.hpp"
#include "ui/shop/shop_mode.hpp"
#include "ui/shop/shop_text.hpp"

#include <QApplication>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>

#include <algorithm>
#include <cmath>
#include <utility>
#include <variant>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::ui;

namespace {

std::shared_ptr<const Boat> referenceBoat() {
    static const std::shared_ptr<const Boat> boat = [] {
        const auto read = core::readProject(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
        REQUIRE(read.has_value());
        const auto hull = core::loft(read->project);
        REQUIRE(hull.has_value());
        const auto plan = core::plankAsLaid(read->project, *hull);
        REQUIRE(plan.has_value());
        return makeBoat(read->project, *hull, plan->plan);
    }();
    return boat;
}

/// Shop mode with a journal behind it, as the window keeps it.
struct Shop {
    core::Journal journal;
    std::unique_ptr<ShopMode> mode;

    explicit Shop(const QSize& size = {1280, 800}) {
        test::qtApp();
        mode = std::make_unique<ShopMode>();
        mode->setBoat(referenceBoat());
        mode->resize(size);
        mode->show();
        QObject::connect(mode.get(), &ShopMode::laid, mode.get(), [this](const QString& id) {
            journal = core::markLaid(journal, id.toStdString(), "2026-05-01");
            mode->setJournal(journal);
        });
        QObject::connect(mode.get(), &ShopMode::notLaid, mode.get(), [this](const QString& id) {
            journal = core::unmarkLaid(journal, id.toStdString());
            mode->setJournal(journal);
        });
        mode->goTo("");
    }
    std::string piece(int order) const {
        const Boat& boat = *referenceBoat();
        return boat.plan.strips[boat.byOrder[static_cast<std::size_t>(order)]].id;
    }
    void press(Qt::Key key) { QTest::keyClick(mode.get(), key); }
};

/// Rows of the picture that hold the colour of the name, from the first to the last; logical pixels.
double heightOfName(const ShopMode& mode, QImage picture) {
    const QColor cedar(0xB5, 0x65, 0x3A);
    int first = -1, last = -1;
    for (int y = 0; y < picture.height() / 3; ++y) {
        for (int x = 0; x < picture.width() * 2 / 5; ++x) {
            if (picture.pixelColor(x, y) == cedar) {
                first = first < 0 ? y : first;
                last = y;
            }
        }
    }
    CHECK(!mode.night());
    return (last - first + 1) / picture.devicePixelRatio();
}

} // namespace

TEST_CASE("the drawing keeps to its room on screens of every shape") {
    const Boat& boat = *referenceBoat();
    for (const auto& [wide, high] : {std::pair{1244.0, 144.0}, // 16 to 9
                                     std::pair{1240.0, 160.0}, // 16 to 10
                                     std::pair{980.0, 154.0},  // 4 to 3
                                     std::pair{2500.0, 216.0}}) {
        INFO(wide << " by " << high);
        const double width = shopDrawingWidth(wide, high), height = width * high / wide;
        for (const core::Strip& strip : boat.plan.strips) {
            INFO(strip.id);
            double lowest = 0.0;
            for (const core::Item& item : shopDrawing(boat, strip, width, height, false).items)
                if (const auto* path = std::get_if<core::Path>(&item))
                    for (const Eigen::Vector2d& p : path->points)
                        lowest = std::max(lowest, p.y());
            CHECK(lowest > 0.5 * height); // and takes it
            CHECK(lowest <= height);
        }
    }
}

TEST_CASE("keys and big targets go through the work and mark what is laid") {
    Shop shop;
    CHECK(shop.mode->inHand() == shop.piece(0));
    CHECK(!shop.mode->backTarget()->isEnabled());
    shop.press(Qt::Key_Return);
    CHECK(core::laidEntry(shop.journal, shop.piece(0)) != nullptr);
    CHECK(shop.mode->inHand() == shop.piece(1));
    shop.press(Qt::Key_Right); // only looking
    CHECK(core::laidEntry(shop.journal, shop.piece(1)) == nullptr);
    shop.mode->backTarget()->click();
    CHECK(shop.mode->inHand() == shop.piece(1));
    shop.mode->nextTarget()->click();
    CHECK(shop.journal.laid.size() == 2);
    shop.press(Qt::Key_Left);
    shop.press(Qt::Key_Left);
    CHECK(shop.mode->nextTarget()->text() == QStringLiteral("Next")); // it is down already
    shop.press(Qt::Key_Space);
    CHECK(shop.journal.laid.size() == 2);
    shop.press(Qt::Key_Backspace);
    CHECK(core::laidEntry(shop.journal, shop.piece(1)) == nullptr);
    // coming back, the first that is not laid is in hand
    shop.mode->goTo("");
    CHECK(shop.mode->inHand() == shop.piece(1));
    shop.mode->goTo(shop.piece(30));
    CHECK(shop.mode->inHand() == shop.piece(30));
}

TEST_CASE("every strip is told with its length and one to three things to watch") {
    Shop shop;
    for (int i = 0; i < referenceBoat()->pieces(); ++i) {
        const core::Strip& strip = *referenceBoat()->strip(shop.piece(i));
        shop.mode->goTo(strip.id);
        const ShopText& text = shop.mode->text();
        CHECK(text.name.toStdString() == strip.id);
        CHECK(text.length == cutLengthText(strip.cutLength, core::Units::Millimetres));
        CHECK(text.watch.size() >= 1);
        CHECK(text.watch.size() <= 3);
    }
    shop.press(Qt::Key_Return); // the last one
    CHECK(shop.journal.laid.size() == 1);
    CHECK(!shop.mode->nextTarget()->isEnabled());
    shop.press(Qt::Key_Return);
    CHECK(shop.journal.laid.size() == 1);
}

TEST_CASE("the name is a sixth of the screen high and the targets can be hit with a gloved hand") {
    for (const QSize& size : {QSize(1280, 800), QSize(1920, 1080)}) {
        Shop shop(size);
        const double name = heightOfName(*shop.mode, shop.mode->grab().toImage());
        CHECK(std::abs(name - size.height() / 6.0) < 0.025 * size.height());
        CHECK(shop.mode->backTarget()->height() >= size.height() / 10);
        CHECK(shop.mode->backTarget()->width() >= size.width() / 4);
        CHECK(shop.mode->nextTarget()->geometry().intersected(shop.mode->backTarget()->geometry()).isEmpty());
        CHECK(shop.mode->rect().contains(shop.mode->nextTarget()->geometry()));
    }
}

TEST_CASE("what the work asks care for is written as large as two lines allow") {
    for (const QSize& size : {QSize(1280, 800), QSize(1920, 1080)}) {
        Shop shop(size);
        const QImage picture = shop.mode->grab().toImage();
        const double scale = picture.devicePixelRatio();
        const int bottom = shop.mode->backTarget()->y();
        int inked = 0; // rows of the picture with letters on them, in the band over the targets
        for (int y = bottom - size.height() / 14; y < bottom - 2; ++y) {
            bool any = false;
            for (int x = size.width() / 20; x < size.width() * 9 / 10; ++x)
                any =
                    any ||
                    picture.pixelColor(static_cast<int>(x * scale), static_cast<int>(y * scale)).lightness() <
                        160;
            inked += any ? 1 : 0;
        }
        INFO(size.width() << ": " << inked);
        CHECK(inked > 0.035 * size.height()); // one small line has a third of that
    }
}

TEST_CASE("the measured girth is typed station by station, by keys and by targets") {
    Shop shop;
    std::vector<core::RowReading> told;
    QObject::connect(
        shop.mode.get(), &ShopMode::measured, shop.mode.get(), [&](const core::RowReading& round) {
            told.push_back(round);
            if (told.size() == 1)
                shop.mode->tellRefused(QStringLiteral("not like this"));
        });
    QSignalSpy taken(shop.mode.get(), &ShopMode::trialTaken);
    const Boat& boat = *referenceBoat();
    shop.mode->goTo("P05");
    shop.press(Qt::Key_G);
    GirthPanel& panel = *shop.mode->girths();
    REQUIRE(panel.isVisible());
    const auto planned = [&](std::size_t station) {
        const core::Station& at = boat.project.hull.stations[station];
        return core::plannedGirthLeft(boat.plan, boat.hull, 5, at.x + boat.hull.xShift);
    };
    panel.writeDown();
    CHECK(told.empty()); // nothing is typed
    CHECK_FALSE(panel.said().isEmpty());
    const QString first = panel.station();
    std::size_t asked = 0;
    while (!planned(asked) || planned(asked)->left < 1.0)
        ++asked; // the first station where anything is left
    const auto typed = [&](std::size_t station, double off) {
        return QString::number(std::lround(planned(station)->left + off));
    };
    QTest::keyClicks(panel.field(), typed(asked, -4.0));
    QTest::keyClick(panel.field(), Qt::Key_Return);
    CHECK(panel.station() != first);
    CHECK(
        panel.said().contains(QStringLiteral("%1 less than planned")
                                  .arg(lengthText(4.0, core::Units::Millimetres)))); // of the station before
    CHECK(panel.field()->text().isEmpty());
    QTest::keyClicks(panel.field(), QStringLiteral("soon"));
    QTest::keyClick(panel.field(), Qt::Key_Return); // can't be read: says so and stays
    CHECK_FALSE(panel.said().isEmpty());
    panel.field()->clear();
    for (const QChar key : QStringLiteral("9\u232b") + typed(asked + 1, 0.0))
        for (QToolButton* button : panel.findChildren<QToolButton*>())
            if (button->text() == QString(key))
                button->click();
    CHECK(panel.field()->text() == typed(asked + 1, 0.0));
    panel.writeTarget()->click();
    REQUIRE(told.size() == 1);
    CHECK(panel.isVisible()); // refused: the words stay, and so do the readings
    CHECK(panel.said() == QStringLiteral("not like this"));
    CHECK(panel.field()->isVisible());
    panel.writeTarget()->click();
    REQUIRE(told.size() == 2);
    CHECK(told[1].row == 5);
    CHECK(told[1].side == core::ReadSide::Port);
    REQUIRE(told[1].girthLeft.size() == 2);
    CHECK_THAT(told[1].girthLeft[0].girth, WithinAbs(planned(asked)->left - 4.0, 0.5));
    CHECK_THAT(told[1].girthLeft[1].girth, WithinAbs(planned(asked + 1)->left, 0.5));
    CHECK(told[1].girthLeft[0].x == boat.project.hull.stations[asked].x);

    // being weighed: an Enter too many neither takes the plan nor lays a strip
    const auto enters = [&] {
        for (int i = 0; i < 3; ++i)
            QTest::keyClick(QApplication::focusWidget() != nullptr ? QApplication::focusWidget() : &panel,
                            Qt::Key_Return);
        CHECK(panel.isVisible());
        CHECK(taken.isEmpty());
        CHECK(told.size() == 2);
        CHECK(shop.journal.laid.empty());
        CHECK(shop.mode->inHand() == "P05");
    };
    enters();
    CHECK_FALSE(panel.takeTarget()->isVisible());
    TrialText trial;
    trial.planned = true;
    trial.change = QStringLiteral("81 pieces instead of 79");
    trial.leftOut = QStringList{QStringLiteral("one"), QStringLiteral("two"), QStringLiteral("three")};
    shop.mode->tellTrial(trial);
    REQUIRE(panel.takeTarget()->isVisible());
    CHECK(panel.laterTarget()->isVisible());
    CHECK_FALSE(panel.field()->isVisible());
    CHECK(panel.takeTarget()->height() >= shop.mode->height() / 15);
    CHECK(panel.accessibleDescription().contains(trial.change));
    CHECK(panel.said().contains(QStringLiteral("two")));
    CHECK_FALSE(panel.said().contains(QStringLiteral("three"))); // counted
    enters();
    panel.takeTarget()->click();
    CHECK(taken.count() == 1);
    CHECK_FALSE(panel.isVisible());

    shop.press(Qt::Key_G);
    QTest::keyClick(panel.field(), Qt::Key_Escape); // only the panel is left, not the shop
    CHECK_FALSE(panel.isVisible());
    CHECK(shop.mode->isVisible());
    CHECK(shop.mode->inHand() == "P05");
}

TEST_CASE("a girth that is far off the plan is asked for once more, and kept if it stays") {
    Shop shop;
    const Boat& boat = *referenceBoat();
    shop.mode->goTo("S20");
    std::vector<core::RowReading> told;
    QObject::connect(shop.mode.get(),
                     &ShopMode::measured,
                     shop.mode.get(),
                     [&](const core::RowReading& round) { told.push_back(round); });
    shop.press(Qt::Key_G);
    GirthPanel& panel = *shop.mode->girths();
    const QString first = panel.station();
    QTest::keyClicks(panel.field(), QStringLiteral("12 mm"));
    const auto enter = [&] { QTest::keyClick(panel.field(), Qt::Key_Return); };
    enter();
    CHECK(panel.station() == first);
    CHECK(panel.said().contains(first));
    CHECK(panel.said().contains(lengthText(12.0, core::Units::Millimetres)));
    CHECK(panel.field()->text() == QStringLiteral("12 mm"));
    QTest::keyClicks(panel.field(), QStringLiteral("13 mm")); // read again, in its place, and as far off
    CHECK(panel.field()->text() == QStringLiteral("13 mm"));
    enter();
    CHECK(panel.station() == first);
    enter();
    CHECK(panel.station() != first);
    panel.writeTarget()->click();
    REQUIRE(told.size() == 1);
    REQUIRE(told[0].girthLeft.size() == 1);
    CHECK(told[0].girthLeft[0].girth == 13.0);
    CHECK_FALSE(core::doubtsAbout(told[0], boat.project.journal, boat.hull, boat.plan).empty());
    // decided later: only the panel goes, and a plan that comes meanwhile asks for it anew
    shop.mode->tellTrial({});
    QTest::keyClick(&panel, Qt::Key_Escape);
    CHECK_FALSE(panel.isVisible());
    CHECK(shop.mode->isVisible());
    shop.press(Qt::Key_G);
    QTest::keyClicks(panel.field(), QStringLiteral("14 mm"));
    enter();
    panel.writeTarget()->click();
    REQUIRE(panel.weighing());
    shop.mode->setBoat(referenceBoat());
    CHECK_FALSE(panel.weighing());
    CHECK(panel.field()->isVisible());
    CHECK(panel.field()->text() == QStringLiteral("14 mm"));
}

TEST_CASE("no girth is asked where nothing is left to measure") {
    Shop shop;
    const Boat& boat = *referenceBoat();
    for (const core::Strip& strip : boat.plan.strips) {
        shop.mode->goTo(strip.id);
        CHECK(shop.mode->girthTarget()->isEnabled() == (strip.row > 0 && strip.row < boat.plan.lastRow));
    }
    shop.mode->setBoat(nullptr);
    shop.press(Qt::Key_G);
    CHECK_FALSE(shop.mode->girths()->isVisible());
}

TEST_CASE("dark is light on dark, and leaving says so") {
    Shop shop;
    const auto lightness = [&] { return shop.mode->grab().toImage().pixelColor(2, 2).lightness(); };
    CHECK(lightness() > 200);
    shop.press(Qt::Key_L);
    CHECK(lightness() < 60);
    QSignalSpy left(shop.mode.get(), &ShopMode::left);
    shop.press(Qt::Key_Escape);
    CHECK(left.count() == 1);
    CHECK(!shop.mode->isVisible());
}

TEST_CASE("without a boat shop mode says so and lays nothing") {
    Shop shop;
    shop.mode->setBoat(nullptr);
    shop.press(Qt::Key_Return);
    shop.press(Qt::Key_Right);
    CHECK(shop.journal.laid.empty());
    CHECK(shop.mode->inHand().empty());
    CHECK(!shop.mode->grab().isNull());
}
