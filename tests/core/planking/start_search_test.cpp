#include "core/planking/planking.hpp"
#include "core/planking/start_search.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <atomic>
#include <map>
#include <mutex>
#include <stop_token>
#include <string>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

const LoftedHull& hullOf(const char* file) {
    static std::map<std::string, LoftedHull> hulls;
    if (!hulls.contains(file))
        hulls[file] = loft(projectAt(std::string(SHEERLAY_REFERENCE) + "/" + file)).value();
    return hulls[file];
}

const StripStock covering17{.coverWidth = 17.0, .wood = "western-redcedar"};

} // namespace

TEST_CASE("the easiest start of the formula canoe bends no row harder than 0.18 per metre") {
    // issue 3: at or below 0.18 at 17 mm, against 0.43 from the sheer and 0.37 from a geodesic at the sheer
    const StartSearch search = searchStart(hullOf("formula_canoe.sheerlay"), covering17);
    REQUIRE_FALSE(search.candidates.empty());
    const StartCandidate& best = search.candidates[search.best];
    CHECK(best.worst <= 0.18e-3);
    CHECK_FALSE(search.sheerWillDo);
    CHECK_FALSE(search.cancelled);
    CHECK(search.candidates.front().line.kind == StartLine::Kind::Sheer);
    CHECK_THAT(search.candidates.front().worst, WithinAbs(0.43e-3, 0.015e-3));
    const auto& again = judgeStart(hullOf("formula_canoe.sheerlay"), best.line, covering17);
    REQUIRE(again.has_value());
    CHECK(again->worst == best.worst);
}

TEST_CASE("on a narrow hull the plain sheer will do") {
    // closing.md section 8: 0.103 from the sheer, less than hands bend, so nothing is gained by another line
    const StartSearch search = searchStart(hullOf("formula_narrow.sheerlay"), covering17);
    CHECK(search.sheerWillDo);
    CHECK(search.candidates[search.best].line.kind == StartLine::Kind::Sheer);
}

TEST_CASE("one thread and two find the same, and tell how far they are") {
    const LoftedHull& hull = hullOf("formula_skiff.sheerlay");
    std::mutex lock;
    std::vector<double> told;
    const auto progress = [&](double part) {
        const std::lock_guard hold(lock);
        told.push_back(part);
    };
    const StartSearch two = searchStart(hull, covering17, 2, progress);
    REQUIRE(told.size() > 3);
    CHECK(*std::min_element(told.begin(), told.end()) > 0);
    CHECK_THAT(*std::max_element(told.begin(), told.end()), WithinAbs(1.0, 1e-9));
    const StartSearch one = searchStart(hull, covering17, 1);
    REQUIRE(one.candidates.size() == two.candidates.size());
    CHECK(one.best == two.best);
    for (std::size_t i = 0; i < one.candidates.size(); ++i) {
        CHECK(one.candidates[i].worst == two.candidates[i].worst);
        CHECK(one.candidates[i].line == two.candidates[i].line);
    }
}

TEST_CASE("a search is stopped when asked to, and so is the planking") {
    const LoftedHull& hull = hullOf("formula_canoe.sheerlay");
    std::stop_source stop;
    std::atomic<int> calls = 0;
    const auto stopAtOnce = [&](double) {
        ++calls;
        stop.request_stop();
    };
    const StartSearch search = searchStart(hull, covering17, 2, stopAtOnce, stop.get_token());
    CHECK(search.cancelled);
    CHECK(calls < 6); // it did not go through all it had to do

    Project project = projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    project.planking.start.kind = StartLine::Kind::Easiest;
    std::stop_source other;
    PlankingWatch watch;
    watch.stop = other.get_token();
    watch.progress = [&](double) { other.request_stop(); };
    const auto plan = plank(project, hull, nullptr, watch);
    REQUIRE_FALSE(plan.has_value());
    CHECK(plan.error().text.find("stopped") != std::string::npos);
}
