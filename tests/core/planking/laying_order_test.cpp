#include "core/planking/laying_order.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <map>
#include <set>
#include <string>

using namespace sheerlay;
using namespace sheerlay::core;
using namespace sheerlay::test;

namespace {

/// The row a strip leans against. A split bottom is laid from the centreline outward.
int leansOn(int row, const Plan& plan) {
    if (plan.splitRow && row >= *plan.splitRow)
        return row == plan.lastRow ? *plan.splitRow - 1 : row + 1;
    return row > 1 ? row - 1 : row == 1 ? 0 : row == -1 ? 1 : row + 1;
}

bool touches(const Strip& a, const Strip& b) {
    return a.middle.front().x() < b.middle.back().x() && b.middle.front().x() < a.middle.back().x();
}

Project variant(const std::string& which) {
    Project p = projectAt(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
    if (which == "geodesic")
        p = projectAt(SHEERLAY_REFERENCE "/formula_canoe_geodesic.sheerlay");
    if (which == "bilge" || which == "bilge, run over")
        p.planking.start = {StartLine::Kind::Geodesic, 255, {}};
    if (which == "run over" || which == "bilge, run over")
        p.planking.closing = ClosingMethod::RunOver;
    if (which == "split bottom")
        p.planking.closing = ClosingMethod::SplitBottom;
    if (which == "one plank")
        p.strips.coverWidth = 17.35; // leaves less than half a strip on each side
    return p;
}

} // namespace

TEST_CASE("every piece can be laid when its turn comes") {
    const std::string which = GENERATE(as<std::string>{},
                                       "sheer",
                                       "geodesic",
                                       "bilge",
                                       "run over",
                                       "bilge, run over",
                                       "split bottom",
                                       "one plank");
    INFO(which);
    const Planked b = planked(variant(which));
    const auto& strips = b.plan.strips;
    const bool runOver = b.project.planking.closing == ClosingMethod::RunOver;

    std::set<int> numbers;
    for (const Strip& s : strips)
        numbers.insert(s.order);
    REQUIRE(numbers.size() == strips.size());
    CHECK(*numbers.begin() == 1);
    CHECK(*numbers.rbegin() == static_cast<int>(strips.size()));

    // what it leans on, on its own side, lies already
    for (const Strip& s : strips)
        for (const Strip& other : strips)
            if (other.row == leansOn(s.row, b.plan) &&
                (other.side == s.side || other.side == Side::Centre || s.side == Side::Centre) &&
                touches(s, other)) {
                INFO(s.id << " leans on " << other.id);
                CHECK(other.order < s.order);
            }

    // sides take turns: the first side alternates from row to row, and none runs ahead
    const int closing =
        std::min(b.plan.marks.closingBow.value_or(1000), b.plan.marks.closingStern.value_or(1000));
    std::map<int, std::map<Side, int>> first;
    for (const Strip& s : strips)
        if (s.side != Side::Centre) {
            int& at = first[s.row].try_emplace(s.side, 1 << 20).first->second;
            at = std::min(at, s.order);
        }
    for (const auto& [row, sides] : first) {
        if (sides.size() < 2 || (runOver && row >= closing))
            continue;
        INFO("row " << row);
        const Side leads = sides.at(Side::Port) < sides.at(Side::Starboard) ? Side::Port : Side::Starboard;
        CHECK(leads == firstSide(row));
        CHECK((firstSide(row) != firstSide(row + 1)));
    }
    std::vector<const Strip*> inOrder;
    for (const Strip& s : strips)
        if (s.row > 0)
            inOrder.push_back(&s);
    std::sort(inOrder.begin(), inOrder.end(), [](auto* a, auto* c) { return a->order < c->order; });
    std::map<Side, int> reached;
    for (const Strip* s : inOrder) {
        const int m = b.plan.splitRow.value_or(1 << 20);
        const int progress = s->row < m ? s->row : m + b.plan.lastRow - s->row;
        reached[s->side] = std::max(reached[s->side], progress);
        if (s->side != Side::Centre && !(runOver && s->row >= closing))
            CHECK(std::abs(reached[Side::Port] - reached[Side::Starboard]) <= 1);
    }
    for (const Strip& s : strips)
        if (s.side == Side::Centre)
            CHECK(s.order == static_cast<int>(strips.size()));
    if (which == "one plank")
        CHECK(stripsOf(b.plan, Side::Centre).size() == 1);

    // run over: all of port's closing rows go before starboard's
    if (runOver) {
        REQUIRE(closing < 1000);
        int lastPort = 0, firstStarboard = 1 << 20;
        for (const Strip& s : strips)
            if (s.row >= closing && s.side == Side::Port)
                lastPort = std::max(lastPort, s.order);
            else if (s.row >= closing && s.side == Side::Starboard)
                firstStarboard = std::min(firstStarboard, s.order);
        CHECK(lastPort < firstStarboard);
    }
}
