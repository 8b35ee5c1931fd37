#include "tests/support/catch.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/window/task_runner.hpp"

#include <QSignalSpy>
#include <QTest>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <semaphore>
#include <stdexcept>
#include <thread>

#ifdef __linux__
#include <sys/resource.h>
#endif

using namespace sheerlay;
using namespace sheerlay::ui;
using Progress = TaskRunner::Progress;

namespace {

constexpr int patience = 5000; // ms

const TaskRunner::Failed noFailure = [](const QString& text) {
    FAIL("not expected: " << text.toStdString());
};

} // namespace

TEST_CASE("both runners bring a result back to their own thread") {
    test::qtApp();
    for (const TaskRunner::Mode mode : {TaskRunner::Mode::SameThread, TaskRunner::Mode::Thread}) {
        TaskRunner runner(mode);
        const QSignalSpy progress(&runner, &TaskRunner::progress);
        std::thread::id worked;
        std::thread::id delivered;
        int result = 0;
        runner.run(
            [&worked](std::stop_token, const Progress& tell) {
                worked = std::this_thread::get_id();
                tell(QStringLiteral("half"));
                return 42;
            },
            [&](int value) {
                delivered = std::this_thread::get_id();
                result = value;
            },
            noFailure);
        REQUIRE(QTest::qWaitFor([&] { return result != 0; }, patience));
        CHECK(result == 42);
        CHECK(delivered == std::this_thread::get_id());
        CHECK((worked == std::this_thread::get_id()) == (mode == TaskRunner::Mode::SameThread));
        REQUIRE(progress.count() == 1);
        CHECK(progress.at(0).at(0).toString().toStdString() == "half");
        CHECK(!runner.busy());
    }
}

#ifdef __linux__
TEST_CASE("work beside the window, and what that starts, lets the window go first") {
    test::qtApp();
    const int own = getpriority(PRIO_PROCESS, 0);
    TaskRunner runner(TaskRunner::Mode::Thread);
    int worker = own;
    int started = own;
    bool done = false;
    runner.run(
        [&](std::stop_token, const Progress&) {
            worker = getpriority(PRIO_PROCESS, 0);
            std::jthread([&started] { started = getpriority(PRIO_PROCESS, 0); }).join();
            return true;
        },
        [&](bool value) { done = value; },
        noFailure);
    REQUIRE(QTest::qWaitFor([&] { return done; }, patience));
    CHECK(getpriority(PRIO_PROCESS, 0) == own);
    CHECK(worker == std::min(19, own + 10));
    CHECK(started == worker);
}
#endif

TEST_CASE("exceptions arrive as text") {
    test::qtApp();
    for (const TaskRunner::Mode mode : {TaskRunner::Mode::SameThread, TaskRunner::Mode::Thread}) {
        TaskRunner runner(mode);
        QString said;
        runner.run(
            [](std::stop_token, const Progress&) -> int { throw std::runtime_error("the batten broke"); },
            [](int) { FAIL("no result was made"); },
            [&](const QString& text) { said = text; });
        REQUIRE(QTest::qWaitFor([&] { return !said.isEmpty(); }, patience));
        CHECK(said.toStdString() == "the batten broke");
        CHECK(!runner.busy());
    }
}

TEST_CASE("a newer run makes the older one stale") {
    test::qtApp();
    TaskRunner runner(TaskRunner::Mode::Thread);
    std::vector<int> results;
    const QSignalSpy progress(&runner, &TaskRunner::progress);
    std::binary_semaphore go(0);
    std::atomic<bool> olderDone = false;
    std::atomic<bool> olderWasAsked = false;
    runner.run(
        [&](std::stop_token stop, const Progress& tell) {
            go.acquire(); // until the newer one is through
            olderWasAsked = stop.stop_requested();
            tell(QStringLiteral("late"));
            olderDone = true;
            return 1;
        },
        [&](int value) { results.push_back(value); },
        noFailure);
    runner.run([](std::stop_token, const Progress&) { return 2; },
               [&](int value) { results.push_back(value); },
               noFailure);
    REQUIRE(QTest::qWaitFor([&] { return !results.empty(); }, patience));
    go.release();
    REQUIRE(QTest::qWaitFor([&] { return olderDone.load(); }, patience));
    QTest::qWait(50);
    CHECK(results == std::vector<int>{2});
    CHECK(olderWasAsked);
    CHECK(progress.count() == 0);
}

TEST_CASE("a stale run's failure is dropped too") {
    test::qtApp();
    TaskRunner runner(TaskRunner::Mode::Thread);
    std::binary_semaphore go(0);
    std::atomic<bool> threw = false;
    runner.run(
        [&](std::stop_token, const Progress&) -> int {
            go.acquire();
            threw = true;
            throw std::runtime_error("too late to matter");
        },
        [](int) { FAIL("no result was made"); },
        noFailure);
    runner.cancel();
    go.release();
    REQUIRE(QTest::qWaitFor([&] { return threw.load(); }, patience));
    QTest::qWait(50);
    CHECK(!runner.busy());
}

TEST_CASE("cancel asks the work to stop and drops its result") {
    test::qtApp();
    TaskRunner runner(TaskRunner::Mode::Thread);
    std::atomic<bool> stopped = false;
    bool delivered = false;
    runner.run(
        [&](std::stop_token stop, const Progress&) {
            while (!stop.stop_requested())
                std::this_thread::sleep_for(std::chrono::milliseconds(1));
            stopped = true;
            return 1;
        },
        [&](int) { delivered = true; },
        noFailure);
    CHECK(runner.busy());
    runner.cancel();
    CHECK(!runner.busy());
    REQUIRE(QTest::qWaitFor([&] { return stopped.load(); }, patience));
    QTest::qWait(50);
    CHECK(!delivered);
}

TEST_CASE("destroying the runner stops its work and waits for it") {
    test::qtApp();
    std::atomic<bool> ended = false;
    {
        TaskRunner runner(TaskRunner::Mode::Thread);
        runner.run(
            [&](std::stop_token stop, const Progress&) {
                while (!stop.stop_requested())
                    std::this_thread::sleep_for(std::chrono::milliseconds(1));
                ended = true;
                return 1;
            },
            [](int) { FAIL("nobody is left to hear this"); },
            noFailure);
    }
    CHECK(ended);
    QTest::qWait(20);
}

TEST_CASE("the window's thread is free while work is done") {
    test::qtApp();
    TaskRunner runner(TaskRunner::Mode::Thread);
    bool delivered = false;
    runner.run(
        [](std::stop_token, const Progress&) {
            std::this_thread::sleep_for(std::chrono::milliseconds(200));
            return 1;
        },
        [&](int) { delivered = true; },
        noFailure);
    int turns = 0;
    while (!delivered && turns < patience) {
        QTest::qWait(1);
        ++turns;
    }
    CHECK(delivered);
    CHECK(turns > 5);
}
