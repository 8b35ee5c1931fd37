#include "tests/support/window_workshop.hpp"
#include "ui/window/load_panel.hpp"
#include "ui/window/sheets_bench.hpp"

#include <QTest>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

const QByteArray aboard = "\n[afloat]\n[[afloat.load]]\nname = \"paddler\"\nweight = \"170 lb\"\n"
                          "x = \"9-0-0\"\nheight = \"15 in\"\n";

struct Loaded {
    Workshop shop;
    LoadPanel* panel = nullptr;

    Loaded() {
        shop.rewrite(shop.good + aboard);
        shop.window.resize(1280, 800);
        shop.window.show();
        shop.window.showBench(MainWindow::Bench::FittingOut);
        shop.window.fittingOut()->showAfloat(true);
        panel = shop.window.fittingOut()->load();
        REQUIRE(panel != nullptr);
        REQUIRE(panel->isVisible());
        REQUIRE(panel->report());
        REQUIRE(panel->report()->rest);
    }
    [[nodiscard]] double paddlerAt() const { return shop.window.boat()->project.afloat->loads[0].x; }
};

} // namespace

TEST_CASE_METHOD(App,
                 "a paddler dragged aft puts the stern down at once, and the project follows when let go") {
    Loaded loaded;
    LoadPanel& panel = *loaded.panel;
    const double trim = panel.report()->rest->water.trim, before = loaded.paddlerAt();
    const QPoint from = panel.markOf(0).toPoint(), to = from + QPoint(60, 0);
    QTest::mousePress(&panel, Qt::LeftButton, {}, from);
    QTest::mouseMove(&panel, to);
    CHECK(panel.report()->rest->water.trim > trim); // before it is let go
    CHECK(loaded.paddlerAt() == before);
    CHECK(std::abs(panel.markOf(0).x() - to.x()) < 2); // it stays under the pointer
    QTest::mouseRelease(&panel, Qt::LeftButton, {}, to);
    CHECK(loaded.paddlerAt() > before + 100);
    CHECK(loaded.shop.window.isWindowModified());
}

TEST_CASE_METHOD(App, "a paddler goes no further than the boat; a touch beside the marks moves nothing") {
    Loaded loaded;
    LoadPanel& panel = *loaded.panel;
    const double before = loaded.paddlerAt();
    const QPoint from = panel.markOf(0).toPoint();
    QTest::mousePress(&panel, Qt::LeftButton, {}, from + QPoint(0, 80));
    QTest::mouseMove(&panel, from + QPoint(60, 80));
    QTest::mouseRelease(&panel, Qt::LeftButton, {}, from + QPoint(60, 80));
    CHECK(loaded.paddlerAt() == before);
    QTest::mousePress(&panel, Qt::LeftButton, {}, from);
    QTest::mouseMove(&panel, QPoint(panel.width() - 1, from.y()));
    double stern = 0.0;
    for (const Eigen::Vector3d& p : panel.report()->profile)
        stern = std::max(stern, p.x());
    CHECK(panel.report()->loads[0].centre.x() <= stern + 1e-9);
    QTest::mouseRelease(&panel, Qt::LeftButton, {}, QPoint(panel.width() - 1, from.y()));
}

TEST_CASE_METHOD(App, "a boat that asks nothing afloat has words in the picture's place") {
    Workshop shop;
    shop.window.show();
    shop.window.showBench(MainWindow::Bench::FittingOut);
    shop.window.fittingOut()->showAfloat(true);
    CHECK_FALSE(shop.window.fittingOut()->load()->report());
    CHECK_FALSE(shop.window.fittingOut()->load()->grab().isNull());
}
