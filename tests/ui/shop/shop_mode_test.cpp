#include "core/journal/planned_girth.hpp"
#include "core/journal/replan.hpp"
#include "core/project/laid_strips.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/scene/words.hpp"
#include "ui/shop/girth_panel.hpp"
#include "ui/shop/shop_mode.hpp"
#include "ui/shop/shop_text.hpp"

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

TEST_CASE("the measured girth is typed station by station, by keys and by targets") {
    Shop shop;
    std::vector<core::RowReading> told;
    QObject::connect(
        shop.mode.get(), &ShopMode::measured, shop.mode.get(), [&](const core::RowReading& round) {
            told.push_back(round);
            shop.mode->tellMeasured(told.size() == 1 ? QStringLiteral("not like this") : QString());
        });
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
    QTest::keyClicks(panel.field(), QStringLiteral("12 1/2 in"));
    QTest::keyClick(panel.field(), Qt::Key_Return);
    CHECK(panel.station() != first);
    CHECK(panel.field()->text().isEmpty());
    QTest::keyClicks(panel.field(), QStringLiteral("soon"));
    QTest::keyClick(panel.field(), Qt::Key_Return); // can't be read: says so and stays
    CHECK_FALSE(panel.said().isEmpty());
    panel.field()->clear();
    for (const char* key : {"3", "4", "8", "\u232b", "7"})
        for (QToolButton* button : panel.findChildren<QToolButton*>())
            if (button->text() == QString::fromUtf8(key))
                button->click();
    CHECK(panel.field()->text() == QStringLiteral("347"));
    panel.writeTarget()->click();
    REQUIRE(told.size() == 1);
    CHECK(panel.isVisible()); // refused: the words stay
    CHECK(panel.said() == QStringLiteral("not like this"));
    panel.writeTarget()->click();
    REQUIRE(told.size() == 2);
    CHECK_FALSE(panel.isVisible());
    CHECK(told[1].row == 5);
    CHECK(told[1].side == core::ReadSide::Port);
    REQUIRE(told[1].girthLeft.size() == 2);
    CHECK_THAT(told[1].girthLeft[0].girth, WithinAbs(12.5 * 25.4, 1e-9));
    CHECK_THAT(told[1].girthLeft[1].girth, WithinAbs(347.0, 1e-9));
    std::size_t asked = 0;
    while (!planned(asked) || planned(asked)->left < 1.0)
        ++asked; // the first station where anything is left
    CHECK(told[1].girthLeft[0].x == boat.project.hull.stations[asked].x);

    shop.press(Qt::Key_G);
    QTest::keyClick(panel.field(), Qt::Key_Escape); // only the panel is left, not the shop
    CHECK_FALSE(panel.isVisible());
    CHECK(shop.mode->isVisible());
    CHECK(shop.mode->inHand() == "P05");
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
