#include "core/planking/laying_order.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/planked.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <stdexcept>
#include <string>
#include <vector>

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
    if (which == "herringbone")
        p.planking.closing = ClosingMethod::Herringbone;
    if (which == "mitred")
        p.planking.bowEnds = p.planking.sternEnds = EndStyle::Mitre;
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
                                       "herringbone",
                                       "mitred",
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

    for (const Dependency& d : dependencies(b.plan, b.project.planking.closing)) {
        INFO(strips[d.then].id << " waits for " << strips[d.first].id);
        CHECK(strips[d.first].order < strips[d.then].order);
    }
    // the side that passes the stem lies before the other is fitted against it
    for (const Strip& s : strips)
        for (const Strip& other : strips)
            if (s.row == other.row && touches(s, other) && s.ends[0].weave == Weave::Fitted &&
                other.ends[0].weave == Weave::Passes) {
                INFO(s.id << " is fitted against " << other.id);
                CHECK(s.side != other.side);
                CHECK(other.order < s.order);
            }

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

    // the shutter last of all, or one on each side; in a split bottom too
    for (const Strip& s : strips)
        if (s.kind == StripKind::Shutter && !runOver)
            CHECK(s.order > static_cast<int>(strips.size()) - (s.side == Side::Centre ? 1 : 2));

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
        // and the one shutter is starboard's: port's last strip is laid whole and planed back (closing.md 4
        // (a))
        for (const Strip& s : strips) {
            INFO(s.id);
            CHECK((s.kind == StripKind::Shutter) ==
                  (s.side == Side::Starboard && s.order == static_cast<int>(strips.size())));
            CHECK(s.planedBack == (s.side == Side::Port && s.row == b.plan.lastRow));
            if (s.planedBack) {
                CHECK(s.order == lastPort);
                CHECK(s.kind == StripKind::Tapered);
                for (const Eigen::Vector3d& p : s.lowerEdge)
                    CHECK(std::abs(p.y()) < 0.05);
            }
        }
    } else
        CHECK(std::none_of(strips.begin(), strips.end(), [](const Strip& s) { return s.planedBack; }));
}

namespace {

/// A piece along the boat from one place to another.
Strip piece(Side side, int row, StripKind kind, double from, double to) {
    Strip s;
    s.side = side;
    s.row = row;
    s.kind = kind;
    s.middle = {{from, 0, 0}, {to, 0, 0}};
    s.id = std::string(side == Side::Port ? "P" : "S") + std::to_string(row) + "@" +
           std::to_string(static_cast<int>(from)) + (kind == StripKind::Stealer ? "s" : "");
    return s;
}

Plan planOf(std::vector<Strip> pieces) {
    Plan plan;
    for (const Strip& s : pieces) {
        plan.strips.push_back(s);
        plan.strips.push_back(s);
        plan.strips.back().side = Side::Port;
        plan.strips.back().id.front() = 'P';
        plan.firstRow = std::min(plan.firstRow, s.row);
        plan.lastRow = std::max(plan.lastRow, s.row);
    }
    return plan;
}

const Strip& named(const Plan& plan, const std::string& id) {
    for (const Strip& s : plan.strips)
        if (s.id == id)
            return s;
    throw std::runtime_error("no strip " + id);
}

bool waits(const Plan& plan, const std::string& then, const std::string& first, Waits why) {
    for (const Dependency& d : dependencies(plan, ClosingMethod::BothSides))
        if (plan.strips[d.first].id == first && plan.strips[d.then].id == then && d.why == why)
            return true;
    return false;
}

} // namespace

TEST_CASE("a stealer goes down before the strip that is notched to it") {
    using enum StripKind;
    const Side S = Side::Starboard;
    // in a row of its own, or sharing its row with the strip beside it
    struct Case {
        int beside;
        std::string strip, next;
    };
    for (const auto& [beside, strip, next] : {Case{2, "S2@0", "S3@0"}, Case{3, "S3@0", "S4@0"}}) {
        Plan plan = planOf({piece(S, beside, Tapered, 0, 4000),
                            piece(S, 1, Full, 0, 4000),
                            piece(S, 2, Stealer, 1000, 3000),
                            piece(S, beside + 1, Full, 0, 4000)});
        orderStrips(plan, ClosingMethod::BothSides);
        INFO(strip);
        CHECK(named(plan, "S1@0").order < named(plan, "S2@1000s").order);
        CHECK(named(plan, "S2@1000s").order < named(plan, strip).order);
        CHECK(named(plan, strip).order < named(plan, next).order);
        CHECK(waits(plan, strip, "S2@1000s", beside == 2 ? Waits::ForItsStealer : Waits::ForNeighbour));
        // beyond the stealer's points it lies against the row above
        CHECK(waits(plan, strip, "S1@0", Waits::ForNeighbour));
        std::set<int> numbers;
        for (const Strip& s : plan.strips)
            numbers.insert(s.order);
        CHECK(numbers.size() == plan.strips.size());
        CHECK(*numbers.begin() == 1);
    }
}

TEST_CASE("what waits for what, and why") {
    using enum StripKind;
    const Side S = Side::Starboard;
    Plan plan = planOf({piece(S, 1, Full, 0, 4000),
                        piece(S, 2, Full, 0, 4000),
                        piece(S, -1, Filler, 0, 1500),
                        piece(S, -1, Filler, 2500, 4000),
                        piece(S, -2, Filler, 0, 600)});
    CHECK(waits(plan, "P1@0", "S1@0", Waits::ForPassing));
    CHECK(waits(plan, "S2@0", "P2@0", Waits::ForPassing)); // even rows port first
    CHECK(waits(plan, "P2@0", "P1@0", Waits::ForNeighbour));
    CHECK(waits(plan, "P2@0", "S1@0", Waits::ForBothSides));
    CHECK(waits(plan, "S2@0", "S1@0", Waits::ForNeighbour));
    CHECK_FALSE(waits(plan, "S2@0", "P1@0", Waits::ForBothSides)); // it waits for port's anyway
    // fillers wait for the piece below only, bow and stern stacks apart
    CHECK(waits(plan, "S-1@0", "S1@0", Waits::ForNeighbour));
    CHECK(waits(plan, "S-2@0", "S-1@0", Waits::ForNeighbour));
    int ofFiller = 0;
    for (const Dependency& d : dependencies(plan, ClosingMethod::BothSides))
        ofFiller += plan.strips[d.then].id == "S-2@0";
    CHECK(ofFiller == 1);
    // but where they are woven the second side waits for the first
    for (Strip& s : plan.strips)
        s.ends[0].weave = s.side == firstSide(s.row) ? Weave::Passes : Weave::Fitted;
    CHECK(waits(plan, "S-2@0", "P-2@0", Waits::ForPassing));
}

TEST_CASE("run over begins where nothing is woven any more") {
    Plan plan;
    CHECK_FALSE(runOverFrom(plan, ClosingMethod::RunOver));
    plan.marks.closingBow = 12;
    plan.marks.weaveStern = RowRange{1, 15};
    plan.marks.closingStern = 16;
    CHECK_FALSE(runOverFrom(plan, ClosingMethod::BothSides));
    CHECK(runOverFrom(plan, ClosingMethod::RunOver) == 16);
    CHECK(firstSide(plan, ClosingMethod::RunOver, 15) == Side::Starboard);
    CHECK(firstSide(plan, ClosingMethod::RunOver, 17) == Side::Port);
    CHECK(firstSide(plan, ClosingMethod::BothSides, 17) == Side::Starboard);
    plan.marks.closingStern.reset(); // a transom
    plan.marks.weaveStern.reset();
    CHECK(runOverFrom(plan, ClosingMethod::RunOver) == 12);
}
