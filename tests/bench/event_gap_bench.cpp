#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/panels/planking_controls.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/planking_bench.hpp"

#include <QComboBox>
#include <QElapsedTimer>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

/// Processor time that this thread has worked so far, ms: what others take of a shared machine is not in it.
double worked() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return 1e3 * static_cast<double>(now.tv_sec) + 1e-6 * static_cast<double>(now.tv_nsec);
}

/// Times between two turns of the event loop, ms.
class GapWatch : public QObject {
public:
    GapWatch() {
        m_since.start();
        connect(&m_beat, &QTimer::timeout, this, [this] {
            m_gaps.push_back(static_cast<double>(m_since.nsecsElapsed()) * 1e-6);
            m_since.restart();
            const double until = worked();
            m_mostWorked = std::max(m_mostWorked, until - m_worked);
            m_worked = until;
        });
        m_beat.start(1);
    }
    [[nodiscard]] double worst() const { return m_gaps.empty() ? 0.0 : *std::ranges::max_element(m_gaps); }
    [[nodiscard]] double part(double quantile) const {
        std::vector<double> sorted = m_gaps;
        std::ranges::sort(sorted);
        return sorted.at(static_cast<std::size_t>(quantile * static_cast<double>(sorted.size() - 1)));
    }
    /// The most the window itself worked between two turns, ms.
    [[nodiscard]] double mostWorked() const { return m_mostWorked; }
    [[nodiscard]] std::size_t beats() const { return m_gaps.size(); }

private:
    QTimer m_beat;
    QElapsedTimer m_since;
    double m_worked = worked(), m_mostWorked = 0.0;
    std::vector<double> m_gaps;
};

} // namespace

TEST_CASE_METHOD(App, "the window answers while the easiest start is searched") {
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("canoe.sheerlay"));
    REQUIRE(QFile::copy(QStringLiteral(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"), path));
    MainWindow window(TaskRunner::Mode::Thread);
    window.resize(1280, 800);
    window.show();
    QSignalSpy loaded(&window, &MainWindow::loaded);
    window.open(path);
    REQUIRE(loaded.wait(patience));
    QTest::qWait(500); // the first picture is drawn
    QComboBox* start = window.planking()->controls()->start();
    const int easiest = static_cast<int>(core::StartLine::Kind::Easiest);
    start->setCurrentIndex(easiest);
    Q_EMIT start->activated(easiest);
    REQUIRE(window.busy());
    const GapWatch gaps;
    QSignalSpy planned(&window, &MainWindow::loaded);
    REQUIRE(planned.wait(10 * patience));
    const auto tell = [&](const char* until) {
        std::printf(
            "easiest start searched, until %s: %zu turns, worst gap %.1f ms, 99.9 of 100 below %.1f ms; "
            "the window itself worked %.1f ms of a turn at most\n",
            until,
            gaps.beats(),
            gaps.worst(),
            gaps.part(0.999),
            gaps.mostWorked());
    };
    tell("the boat is handed over");
    QTest::qWait(300);
    tell("it is drawn");
    REQUIRE(gaps.beats() > 20);
}
