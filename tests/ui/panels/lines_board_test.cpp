#include "core/hull/hull.hpp"
#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/panels/lines_board.hpp"

#include <QImage>
#include <QTest>
#include <QWheelEvent>

#include <cmath>
#include <memory>

using namespace sheerlay;
using namespace sheerlay::ui;

namespace {

std::shared_ptr<const core::DrawnLines> skiff() {
    static const auto lines = [] {
        const core::Project project =
            core::readProject(SHEERLAY_EXAMPLES "/sedgewren/sedgewren.sheerlay").value().project;
        return std::make_shared<const core::DrawnLines>(
            core::drawnLines(project, core::loft(project).value(), project.units));
    }();
    return lines;
}

/// Pixels that are not paper.
int inked(const QImage& image) {
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            count += image.pixelColor(x, y).lightness() < 200 ? 1 : 0;
    return count;
}

} // namespace

TEST_CASE("the board draws every part, and nothing where there is no boat") {
    test::qtApp();
    LinesBoard board;
    board.resize(900, 300);
    CHECK(inked(board.grab().toImage()) == 0);
    board.setLines(skiff());
    for (const core::LinesPart part : {core::LinesPart::Whole,
                                       core::LinesPart::Profile,
                                       core::LinesPart::HalfBreadths,
                                       core::LinesPart::BodyPlan}) {
        board.setPart(part);
        CHECK(inked(board.grab().toImage()) > 1500);
    }
    board.setLines(nullptr);
    CHECK(inked(board.grab().toImage()) == 0);
}

TEST_CASE("zooming keeps the place under the pointer, dragging moves, a double click shows all") {
    test::qtApp();
    LinesBoard board;
    board.resize(900, 300);
    board.setLines(skiff());
    board.setPart(core::LinesPart::Profile);
    board.setMark(Eigen::Vector3d(1800, 0, 300));
    REQUIRE(board.rings().size() == 1);
    const QPointF at = board.rings().front();
    board.zoomBy(4.0, at);
    CHECK(board.zoom() == 4.0);
    CHECK(std::hypot(board.rings().front().x() - at.x(), board.rings().front().y() - at.y()) < 1e-6);
    const QPointF before = board.rings().front();
    QTest::mousePress(&board, Qt::LeftButton, Qt::NoModifier, {400, 150});
    QMouseEvent move(QEvent::MouseMove,
                     QPointF(370, 150),
                     QPointF(370, 150),
                     Qt::NoButton,
                     Qt::LeftButton,
                     Qt::NoModifier);
    QCoreApplication::sendEvent(&board, &move);
    CHECK(std::abs(board.rings().front().x() - (before.x() - 30)) < 1e-6);
    QTest::mouseDClick(&board, Qt::LeftButton, Qt::NoModifier, {400, 150});
    CHECK(board.zoom() == 1.0);
    CHECK(std::abs(board.rings().front().x() - at.x()) < 1e-6);
    QWheelEvent wheel(
        {400, 150}, {400, 150}, {}, {0, 120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&board, &wheel);
    CHECK(board.zoom() > 1.2);
    board.zoomOut();
    board.zoomOut();
    CHECK(board.zoom() == 1.0); // never smaller than the room
}
