#include "tests/support/catch.hpp"
#include "tests/support/fake_boat.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/panels/card_text.hpp"
#include "ui/panels/findings_list.hpp"
#include "ui/panels/laying_bar.hpp"
#include "ui/panels/loft_panel.hpp"
#include "ui/panels/strip_card.hpp"

#include <QLabel>
#include <QSignalSpy>
#include <QSlider>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>

#include <memory>

using namespace sheerlay;
using namespace sheerlay::ui;

namespace {

QToolButton* buttonNamed(const QWidget& bar, const char* start) {
    for (QToolButton* button : bar.findChildren<QToolButton*>()) {
        if (button->accessibleName().startsWith(QString::fromUtf8(start)) ||
            button->text().startsWith(QString::fromUtf8(start)))
            return button;
    }
    return nullptr;
}

std::unique_ptr<LayingBar> shownBar() {
    test::qtApp();
    auto bar = std::make_unique<LayingBar>();
    bar->resize(1300, 64);
    bar->setBoat(test::fakeBoat());
    bar->show();
    REQUIRE(QTest::qWaitForWindowExposed(bar.get()));
    return bar;
}

} // namespace

TEST_CASE("the laying bar lays, lifts and stops at both ends") {
    test::qtApp();
    LayingBar bar;
    bar.setBoat(test::fakeBoat());
    const QSignalSpy changed(&bar, &LayingBar::laidChanged);
    bar.lift();
    CHECK(bar.laid() == 0);
    CHECK(changed.count() == 0);
    bar.lay();
    bar.layRow();
    bar.layRow();
    CHECK(bar.laid() == 4);
    bar.last();
    CHECK(bar.laid() == 30);
    bar.lay();
    CHECK(bar.laid() == 30);
    bar.liftRow();
    CHECK(bar.laid() == 28);
    bar.first();
    CHECK(bar.laid() == 0);
    CHECK(changed.count() == 6);
    CHECK(bar.text().toStdString() == "Row 1 of 15, starboard next (S01)");
}

TEST_CASE("slider, buttons and landmarks all move the one count") {
    test::qtApp();
    LayingBar bar;
    bar.resize(1300, 60);
    bar.setBoat(test::fakeBoat());
    auto* slider = bar.findChild<QSlider*>();
    REQUIRE(slider != nullptr);
    CHECK(slider->maximum() == 30);
    slider->setValue(11);
    CHECK(bar.laid() == 11);
    REQUIRE(buttonNamed(bar, "Lay the next") != nullptr);
    buttonNamed(bar, "Lay the next")->click();
    CHECK(bar.laid() == 12);
    CHECK(slider->value() == 12);
    buttonNamed(bar, "Lift the last")->click();
    CHECK(bar.laid() == 11);
    REQUIRE(buttonNamed(bar, "shutter") != nullptr);
    buttonNamed(bar, "shutter")->click();
    CHECK(bar.laid() == 28);
    CHECK(buttonNamed(bar, "Lay the next")->size().height() >= 44); // big enough for dusty hands
}

TEST_CASE("landmarks stand side by side in their order, inside the bar") {
    const auto shown = shownBar();
    LayingBar& bar = *shown;
    int right = 0;
    for (const char* name : {"weave ends", "closing begins", "shutter"}) {
        const QToolButton* button = buttonNamed(bar, name);
        REQUIRE(button != nullptr);
        CHECK(button->isVisible());
        CHECK(button->geometry().left() >= right); // two landmarks have one place here and may not overlap
        right = button->geometry().right();
    }
    CHECK(right < buttonNamed(bar, "shutter")->parentWidget()->width());
    bar.resize(760, 64); // too narrow for all: those that remain are whole
    QTest::qWait(20);
    for (const QToolButton* button : bar.findChildren<QToolButton*>()) {
        if (button->isVisible())
            CHECK(button->parentWidget()->rect().contains(button->geometry()));
    }
}

TEST_CASE("a hand on the slider stops playing") {
    const auto shown = shownBar();
    LayingBar& bar = *shown;
    bar.play();
    REQUIRE(bar.playing());
    auto* slider = bar.findChild<QSlider*>();
    REQUIRE(slider != nullptr);
    const QPoint handle(4, slider->height() / 2);
    QTest::mousePress(slider, Qt::LeftButton, Qt::NoModifier, handle);
    CHECK_FALSE(bar.playing());
    QTest::mouseRelease(slider, Qt::LeftButton, Qt::NoModifier, handle);
}

TEST_CASE("playing lays piece after piece and stops at the last") {
    test::qtApp();
    LayingBar bar;
    bar.setBoat(test::fakeBoat());
    bar.setLaid(28);
    bar.play();
    CHECK(bar.playing());
    CHECK(QTest::qWaitFor([&] { return !bar.playing(); }, 5000));
    CHECK(bar.laid() == 30);
    bar.play(); // from the end it starts over
    CHECK(bar.laid() == 0);
    bar.play();
    CHECK(!bar.playing());
}

TEST_CASE("a new boat keeps the place as far as it has one") {
    test::qtApp();
    LayingBar bar;
    bar.setBoat(test::fakeBoat());
    bar.setLaid(25);
    test::Spheroid coarse;
    coarse.cover = 60.0; // 10 rows, 20 pieces
    bar.setBoat(test::fakeBoat(coarse));
    CHECK(bar.laid() == 20);
    bar.setBoat(nullptr);
    CHECK(bar.laid() == 0);
    bar.lay();
    CHECK(bar.laid() == 0);
}

TEST_CASE("findings are sorted heaviest first and jump round and round") {
    test::qtApp();
    FindingsList list;
    list.setFindings(test::fakeBoat()->plan.findings); // given as note, caution, stop
    REQUIRE(list.count() == 3);
    CHECK(list.findings()[0].level == core::Level::Stop);
    CHECK(list.findings()[2].level == core::Level::Note);
    CHECK(list.summary().toStdString() == "1 stop, 1 caution, 1 note");
    std::vector<std::string> codes;
    QObject::connect(
        &list, &FindingsList::chosen, &list, [&](const core::Finding& f) { codes.push_back(f.code); });
    for (int i = 0; i < 4; ++i)
        list.next();
    CHECK(codes == std::vector<std::string>{"fake-stop", "fake-caution", "fake-note", "fake-stop"});
    CHECK(findingHead(list.findings()[0], core::Units::Millimetres) ==
          QStringLiteral("stop · S12 · 700%1mm from the bow").arg(QChar(0x00A0)));
    list.setFindings({});
    list.next();
    CHECK(codes.size() == 4);
}

TEST_CASE("a finding grows tall enough for its sentence") {
    test::qtApp();
    FindingsList list;
    list.resize(260, 400);
    core::Finding brief{core::Level::Note, "a", std::nullopt, std::nullopt, "Short."};
    core::Finding lengthy = brief;
    for (int i = 0; i < 12; ++i)
        lengthy.text += " Plane the lower edge between stations 3 and 5.";
    list.setFindings({brief, lengthy});
    list.show();
    REQUIRE(QTest::qWaitForWindowExposed(&list));
    CHECK(list.visualItemRect(list.item(1)).height() > 4 * list.visualItemRect(list.item(0)).height());
}

TEST_CASE("the strip card shows the strip it is given, and a hint without one") {
    test::qtApp();
    StripCard card;
    CHECK(card.text().title.isEmpty());
    card.setBoat(test::fakeBoat());
    card.setStrip("S05");
    CHECK(card.text().title.toStdString() == "S05");
    const QString metric = card.text().lines.front().figure;
    card.setUnits(core::Units::Inches);
    CHECK(card.text().lines.front().figure != metric);
    bool shown = false;
    for (const QLabel* label : card.findChildren<QLabel*>())
        shown = shown || label->text() == card.text().lines.front().figure;
    CHECK(shown);
    card.setStrip("S99");
    CHECK(card.text().title.isEmpty());
}

TEST_CASE("the card says how far rounding moves a strip's figures, where that is known") {
    Boat boat = *test::fakeBoat();
    const core::Strip& strip = boat.plan.strips.front();
    const auto told = [&] {
        QStringList list;
        for (const CardLine& line : cardText(boat, strip, core::Units::Millimetres).lines)
            if (line.meaning.contains(QStringLiteral("Rounding of the table")))
                list << line.caption + QStringLiteral(": ") +
                            line.meaning.mid(line.meaning.indexOf(QStringLiteral("+/-")));
        return list;
    };
    CHECK(told().isEmpty());
    boat.plan.uncertainty.emplace();
    CHECK(told().isEmpty());
    boat.plan.uncertainty->rows = {{strip.row, 0.02e-3, 0.0, 2.2}};
    CHECK(told() == QStringList{QStringLiteral("Length to cut: +/- 5 mm."),
                                QStringLiteral("Edge bend: +/- 0.04 per metre (20 mm over 2 m)."),
                                QStringLiteral("Twist: +/- 1 degree in a metre.")});
    const CardText card = cardText(boat, strip, core::Units::Millimetres); // and beside the figures, unasked
    CHECK(card.lines[0].detail.endsWith(QStringLiteral("; ±\u00A05\u00A0mm")));
    CHECK(card.lines[2].detail.endsWith(QStringLiteral("; ±\u00A020\u00A0mm"))); // 2 * 0.02 /m * (2 m)^2 / 8
}

TEST_CASE("the loft's table has a line per station") {
    test::qtApp();
    core::LoftedHull hull = test::fakeBoat()->hull;
    hull.roundingSigma = 0.3;
    hull.residuals = {{"1-0-0", 304.8, 0.2, -0.4, 9}, {"2-0-0", 609.6, 0.9, 2.5, 10}};
    LoftPanel panel;
    panel.setHull(std::make_shared<const core::LoftedHull>(hull));
    REQUIRE(panel.table()->rowCount() == 2);
    CHECK(panel.table()->item(0, 0)->text().toStdString() == "1-0-0");
    CHECK(panel.table()->item(0, 4)->text() == QStringLiteral("−0.4 mm"));
    CHECK(panel.table()->item(1, 4)->text() == QStringLiteral("+2.5 mm"));
    // more than four times what rounding explains is shown in another colour
    CHECK(panel.table()->item(1, 4)->foreground() != panel.table()->item(0, 4)->foreground());
    panel.setUnits(core::Units::Inches);
    CHECK(panel.table()->item(1, 4)->text() == QStringLiteral("+0.098 in"));
    panel.setHull(nullptr);
    CHECK(panel.table()->rowCount() == 0);
}
