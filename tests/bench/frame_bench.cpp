// How fast the picture is: a frame, a strip laid or lifted, a pick, and the start line dragged. Run on a
// quiet machine: QT_QPA_PLATFORM=xcb xvfb-run -s "-screen 0 1280x800x24"
// build-release/tests/bench/frame_bench
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/scene/start_preview.hpp"
#include "ui/view3d/boat_view.hpp"
#include "ui/view3d/gl_view.hpp"

#include <QElapsedTimer>
#include <QMouseEvent>
#include <QOpenGLContext>
#include <QOpenGLFunctions>
#include <QSignalSpy>
#include <QTest>

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <functional>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

double clockMs(clockid_t clock) {
    timespec now{};
    clock_gettime(clock, &now);
    return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

double load() {
    double one = 0.0;
    if (getloadavg(&one, 1) != 1)
        one = -1.0;
    return one;
}

/// Does something many times and tells how long it took on the clock, and of the processor in all threads.
void tell(const char* what, int times, const std::function<void(int)>& act) {
    std::vector<double> wall, worked;
    for (int i = 0; i < times; ++i) {
        const double w = clockMs(CLOCK_MONOTONIC), c = clockMs(CLOCK_PROCESS_CPUTIME_ID);
        act(i);
        wall.push_back(clockMs(CLOCK_MONOTONIC) - w);
        worked.push_back(clockMs(CLOCK_PROCESS_CPUTIME_ID) - c);
    }
    std::ranges::sort(wall);
    std::ranges::sort(worked);
    const std::size_t middle = wall.size() / 2;
    std::printf(
        "%-44s median %7.2f ms, worst %7.2f ms, least %7.2f ms; of processors median %7.2f ms, worst %7.2f "
        "ms (load %.1f)\n",
        what,
        wall[middle],
        wall.back(),
        wall.front(),
        worked[middle],
        worked.back(),
        load());
    CHECK(wall.front() >= 0.0);
}

/// A view of about 160 solid strips over the whole screen.
struct Drawn {
    std::shared_ptr<const Boat> boat;
    BoatView view;

    Drawn() {
        core::Project project = projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
        project.strips.coverWidth = 7.6; // less than half as wide as hers, twice as many
        project.strips.width = 10.8;
        Planked narrow = planked(std::move(project));
        boat = makeBoat(narrow.project, narrow.hull, narrow.plan);
        REQUIRE(boat->pieces() >= 150);
        std::printf("%d pieces\n", boat->pieces());
        view.resize(1280, 800);
        view.setBoat(boat);
        view.setLaidCount(boat->pieces());
        view.show();
        REQUIRE(QTest::qWaitForWindowExposed(&view));
        QTest::qWait(1500);
        REQUIRE(view.drawing());
    }
    GlView& gl() { return *view.picture(); }
    void finish() {
        gl().makeCurrent();
        gl().context()->functions()->glFinish();
        gl().doneCurrent();
    }
    void frame() { (void)gl().grabFramebuffer(); } // drawn now, and read back
    /// Drawn and put on the screen: what the window's other parts and the screen take is in it.
    void shown() {
        QSignalSpy swapped(&gl(), &QOpenGLWidget::frameSwapped);
        gl().update();
        REQUIRE(swapped.wait(5000));
    }
    void drag(const QPointF& to) {
        QMouseEvent move(
            QEvent::MouseMove, to, gl().mapToGlobal(to), Qt::NoButton, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(&gl(), &move);
    }
};

} // namespace

TEST_CASE_METHOD(App, "frames of 160 solid strips at 1280 x 800, strips laid and lifted, picks") {
    Drawn drawn;
    QTest::mousePress(&drawn.gl(), Qt::LeftButton, Qt::NoModifier, QPoint(400, 400));
    drawn.drag({420, 400});
    drawn.frame();
    tell("frame while she is turned", 60, [&](int i) {
        drawn.drag({420.0 + 3.0 * i, 400.0 + i});
        drawn.frame();
    });
    tell("the same, put on the screen", 60, [&](int i) {
        drawn.drag({600.0 - 3.0 * i, 460.0 - i});
        drawn.shown();
    });
    QTest::mouseRelease(&drawn.gl(), Qt::LeftButton, Qt::NoModifier, QPoint(420, 400));
    QTest::qWait(1000);
    tell("frame at rest, as it was kept", 20, [&](int) { drawn.frame(); });
    tell("frame at rest, smooth edges drawn anew", 10, [&](int i) {
        drawn.drag({420.0 + 9.0 * (i % 2), 400.0});
        drawn.gl().drawFinelyNow();
        drawn.frame();
    });
    tell("strip selected, frame and all", 20, [&](int i) {
        drawn.view.setSelected(i % 2 == 0 ? "S03" : "P05");
        drawn.frame();
    });
    tell("strip laid or lifted, beyond its frame", 60, [&](int i) {
        drawn.view.setLaidCount(i % 2 == 0 ? 100 : 101);
        drawn.finish();
    });
    tell("strip laid or lifted, frame and all", 60, [&](int i) {
        drawn.view.setLaidCount(i % 2 == 0 ? 100 : 101);
        drawn.frame();
    });
    drawn.view.setLaidCount(drawn.boat->pieces());
    drawn.view.look(Look::Profile);
    drawn.frame();
    (void)drawn.gl().stripAt({640.0, 400.0}); // the first one sorts what can be picked
    std::size_t hit = 0;
    tell("pick", 200, [&](int i) {
        const QPointF at(200.0 + 4.3 * i, 330.0 + (i * 37) % 100);
        hit += drawn.gl().stripAt(at).empty() ? 0 : 1;
    });
    CHECK(hit > 20);
}

TEST_CASE_METHOD(App, "the start line dragged: its rows judged anew") {
    Workshop shop;
    const Boat& boat = *shop.window.boat();
    tell("start dragged by some millimetres", 20, [&](int i) {
        core::StartLine line;
        line.kind = core::StartLine::Kind::Geodesic;
        line.girth = 120.0 + 7.0 * i;
        CHECK(previewStart(boat, line).judged);
    });
}
