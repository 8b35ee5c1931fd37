#include "core/project/wood.hpp"
#include "core/stock/board_order.hpp"
#include "core/stock/cutting_search.hpp"
#include "core/stock/joint_places.hpp"
#include "core/stock/row_woods.hpp"
#include "core/stock/stock_findings.hpp"
#include "core/stock/stock_job.hpp"
#include "core/stock/stock_plan.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/both_units.hpp"
#include "core/units/length.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <numeric>
#include <set>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr double unlimited = 1e9;    // mm, longer than any piece
constexpr double toldTo = 1.0;       // mm, lengths of pieces are rounded up to it
constexpr double beyondPrice = 20.0; // a board that isn't there, in boards: taken only where it must be
constexpr int searchRounds = 5000;

/// Works one wood after the other; rows of another wood that are decided already keep their bays.
class Planner {
public:
    Planner(const Project& project, const LoftedHull& hull, const Plan& plan)
        : m_project(project), m_stock(*project.stock), m_hull(hull), m_plan(plan),
          m_woods(rowWoods(project, plan)) {}

    StockPlan make() {
        m_out.scarf = m_stock.scarfSlope * m_project.strips.thickness;
        for (const BoardLot& lot : m_stock.lots) {
            LotUse use;
            use.lot = lot;
            use.milling = mill(lot, m_stock, m_project.strips);
            if (bookMatched() && use.milling.problem.empty() && use.milling.pairs() == 0)
                use.milling.problem = say("The boards of lot {} give no two strips side by side, as matched "
                                          "sides need; wider boards would do, or sides = \"mirror\".",
                                          lot.name);
            m_out.lots.push_back(use);
            if (!use.milling.problem.empty())
                tell({Level::Caution,
                      "stock-lot-gives-no-strips",
                      std::nullopt,
                      std::nullopt,
                      use.milling.problem});
        }
        for (const Strip& strip : m_plan.strips) {
            m_out.strips.push_back({strip.id, m_woods.at(strip.row), {}, {}});
            m_indexOf[&strip] = m_out.strips.size() - 1;
        }
        m_jobs = gatherJobs(m_plan, !stagger());
        std::map<std::string, std::vector<std::size_t>> byWood; // alphabetical: the same on every run
        for (std::size_t j = 0; j < m_jobs.size(); ++j)
            byWood[m_woods.at(m_jobs[j].strips.front()->row)].push_back(j);
        for (const auto& [wood, jobs] : byWood)
            planWood(wood, jobs);
        m_out.weight = weight();
        StockPlan made = withBoardsFilled(m_stock, m_plan, std::move(m_out));
        made.findings = heaviestFirst(std::move(made.findings));
        return made;
    }

private:
    void tell(Finding finding) { m_out.findings.push_back(std::move(finding)); }

    /// Kinds of milled strips of a wood; a lot of which there are few comes a second time, dear, so that what
    /// is missing can be told.
    CuttingProblem problemOf(const std::string& wood, bool& inMoney, std::vector<std::size_t>& lotOfKind) {
        CuttingProblem problem;
        problem.grid = mmPerInch / 4; // told in whole quarters of an inch, or rounded up to a millimetre
        problem.scarf = m_out.scarf;
        problem.cut = static_cast<int>(std::ceil((m_stock.kerf + toldTo) / problem.grid));
        problem.shortestPiece = m_stock.shortestPiece;
        problem.longestPiece = m_stock.longestPiece.value_or(unlimited);
        problem.matched = bookMatched();
        std::vector<std::size_t> lots;
        for (std::size_t l = 0; l < m_out.lots.size(); ++l)
            if (m_out.lots[l].lot.wood == wood && m_out.lots[l].milling.problem.empty())
                lots.push_back(l);
        inMoney = !lots.empty() && std::ranges::all_of(lots, [this](std::size_t l) {
            return m_out.lots[l].lot.price.value_or(0.0) > 0.0;
        });
        double perLength = 0.0;
        for (const std::size_t l : lots) {
            const LotUse& use = m_out.lots[l];
            StickKind kind = kindOf(use, problem);
            // a matched pair is planned as one stick
            const int each = bookMatched() ? use.milling.pairs() : use.milling.strips();
            kind.cost = inMoney ? *use.lot.price / each : use.lot.length * (bookMatched() ? 2 : 1);
            const double whole = kind.cost / use.lot.length;
            perLength = perLength == 0.0 ? whole : std::min(perLength, whole);
            if (use.lot.count)
                kind.limit = static_cast<int>(std::floor(*use.lot.count * each / (1 + m_stock.spare) + 1e-9));
            problem.kinds.push_back(kind);
            lotOfKind.push_back(l);
            if (kind.limit) {
                kind.limit.reset();
                kind.cost *= beyondPrice;
                problem.kinds.push_back(kind);
                lotOfKind.push_back(l);
            }
        }
        problem.jointCost = m_stock.jointWorth * perLength;
        return problem;
    }

    /// Its clear lengths, the longest first.
    static StickKind kindOf(const LotUse& use, const CuttingProblem& problem) {
        StickKind kind;
        for (const std::size_t c : clearByLength(use.milling)) {
            const auto& [from, to] = use.milling.clear[c];
            const int capacity =
                static_cast<int>(std::floor((to - from) / problem.grid + 1e-9)) + problem.cut;
            if (kind.capacity == 0)
                kind.capacity = capacity;
            else
                kind.more.push_back(capacity);
        }
        return kind;
    }

    /// Indices of the clear lengths of a lot's boards, the longest first.
    static std::vector<std::size_t> clearByLength(const Milling& milling) {
        std::vector<std::size_t> order(milling.clear.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::ranges::stable_sort(
            order, std::greater(), [&](std::size_t c) { return milling.clear[c][1] - milling.clear[c][0]; });
        return order;
    }

    void planWood(const std::string& wood, const std::vector<std::size_t>& jobs) {
        bool inMoney = false;
        std::vector<std::size_t> lotOfKind;
        CuttingProblem problem = problemOf(wood, inMoney, lotOfKind);
        if (problem.kinds.empty()) {
            tell(noBoardsOf(wood, jobs.size()));
            return;
        }
        std::vector<std::size_t> able;
        std::vector<UnitPieces> pieces;
        for (const std::size_t j : jobs)
            if (auto ways = place(problem, m_jobs[j])) {
                able.push_back(j);
                pieces.push_back(std::move(*ways));
                problem.units.push_back(m_jobs[j].placed.unit);
            }
        if (able.empty())
            return;
        linkNeighbours(problem, able);
        keepClearOfOtherWoods(problem, able, pieces);
        CuttingBound bound = boundCutting(problem, pieces);
        const Cutting cutting = searchCutting(problem, pieces, bound, searchRounds);
        take(wood, problem, able, cutting, lotOfKind);
        if (cutting.conflicts > 0) { // the bound of what keeps the rule says nothing of what doesn't
            for (CutUnit& unit : problem.units)
                unit.neighbours.clear();
            bound = boundCutting(problem, pieces);
        }
        WoodCutting& use = m_out.woods.back();
        use.inMoney = inMoney;
        use.cost = cutting.cost;
        use.bound = bound.cost;
        use.closed = bound.closed;
        use.rounds = bound.rounds;
    }

    /// Joint places by the rules; by fewer rules where it can't be helped. @return none where nothing helps
    std::optional<UnitPieces> place(const CuttingProblem& problem, StockJob& job) {
        const std::string& id = job.strips.front()->id;
        const std::vector<double> nibs = nibsAt(*job.strips.front(), m_plan);
        std::optional<CutUnit> byTheRules;
        for (const RuleKept rules : {RuleKept::All, RuleKept::NotHardBends, RuleKept::NotNibs}) {
            job.placed = placeJoints(job.strips, m_hull.stationX, nibs, problem.scarf, rules);
            if (!byTheRules)
                byTheRules = job.placed.unit;
            UnitPieces pieces(problem, job.placed.unit);
            if (!canBeCut(problem, pieces))
                continue;
            if (rules != RuleKept::All)
                tell(scarfAgainstRule(id, rules, problem, *byTheRules, m_stock.endTrim));
            return pieces;
        }
        tell(boardsTooShort(id, problem, job.placed.unit, m_stock.endTrim));
        return std::nullopt;
    }

    void linkNeighbours(CuttingProblem& problem, const std::vector<std::size_t>& able) {
        for (std::size_t a = 0; a < able.size(); ++a)
            for (std::size_t b = 0; b < able.size(); ++b)
                if (a != b && areNeighbours(m_jobs[able[a]], m_jobs[able[b]], stagger()))
                    problem.units[a].neighbours.push_back(b);
    }

    [[nodiscard]] bool stagger() const { return m_stock.sides == JointSides::Stagger; }
    [[nodiscard]] bool bookMatched() const { return m_stock.sides == JointSides::BookMatched; }

    /// Takes away the places in bays where a neighbour of another wood is joined, unless nothing is left
    /// then.
    void keepClearOfOtherWoods(CuttingProblem& problem,
                               const std::vector<std::size_t>& able,
                               std::vector<UnitPieces>& pieces) {
        for (std::size_t a = 0; a < able.size(); ++a) {
            StockJob& job = m_jobs[able[a]];
            std::set<int> taken;
            for (const StockJob& other : m_jobs)
                if (other.decided && areNeighbours(job, other, stagger()))
                    taken.merge(other.bays());
            if (taken.empty())
                continue;
            job.placed.unit.neighbours = problem.units[a].neighbours;
            PlacedUnit fewer = withoutBays(job.placed, taken);
            UnitPieces left(problem, fewer.unit);
            if (!canBeCut(problem, left)) {
                tell(scarfsSideBySide(job.strips.front()->id));
                continue;
            }
            problem.units[a] = fewer.unit;
            job.placed = std::move(fewer);
            pieces[a] = std::move(left);
        }
    }

    void take(const std::string& wood,
              const CuttingProblem& problem,
              const std::vector<std::size_t>& able,
              const Cutting& cutting,
              const std::vector<std::size_t>& lotOfKind) {
        WoodCutting use;
        use.wood = wood;
        for (std::size_t a = 0; a < able.size(); ++a) {
            StockJob& job = m_jobs[able[a]];
            job.joints = cutting.joints[a];
            job.decided = true;
            for (std::size_t m = 0; m < job.strips.size(); ++m)
                takeStrip(problem, job, m, use);
        }
        if (cutting.conflicts > 0)
            for (std::size_t a = 0; a < able.size(); ++a)
                for (const std::size_t b : problem.units[a].neighbours)
                    if (b > a && shareBay(m_jobs[able[a]], m_jobs[able[b]]))
                        tell(scarfsSideBySide(m_jobs[able[b]].strips.front()->id));
        takeSticks(problem, able, cutting, lotOfKind);
        m_out.woods.push_back(use);
    }

    void takeSticks(const CuttingProblem& problem,
                    const std::vector<std::size_t>& able,
                    const Cutting& cutting,
                    const std::vector<std::size_t>& lotOfKind) {
        const std::size_t sides = bookMatched() ? 2 : 1;
        std::map<int, std::vector<const CutStick*>> lengthsOf; // by stick, in the order they were begun
        for (const CutStick& length : cutting.sticks)
            lengthsOf[length.stick].push_back(&length);
        for (const auto& [number, lengths] : lengthsOf)
            for (std::size_t side = 0; side < sides; ++side) {
                Stick out;
                out.lot = lotOfKind[lengths.front()->kind];
                const std::vector<std::size_t> clear = clearByLength(m_out.lots[out.lot].milling);
                for (const CutStick* length : lengths) {
                    int left = length->left;
                    for (const PlacedPiece& piece : length->pieces) {
                        const StockJob& job = m_jobs[able[piece.unit]];
                        if (sides == 2 && side >= job.strips.size()) {
                            left += piece.steps; // a strip without a twin
                            continue;
                        }
                        out.parts.push_back({job.strips[std::max(side, piece.member)]->id,
                                             static_cast<int>(piece.piece) + 1,
                                             (piece.steps - problem.cut) * problem.grid,
                                             clear[length->length]});
                    }
                    out.left = std::max(out.left, std::max(0, left - problem.cut) * problem.grid);
                }
                std::ranges::stable_sort(out.parts, {}, &Stick::Part::clear);
                m_out.sticks.push_back(std::move(out));
            }
    }

    static bool shareBay(const StockJob& a, const StockJob& b) {
        const std::set<int> bays = b.bays();
        return std::ranges::any_of(a.bays(), [&](int bay) { return bays.contains(bay); });
    }

    /// Of a matched pair both pieces are marked as long as the longer: their laps differ.
    static int stepsToMark(const CuttingProblem& problem,
                           const CutUnit& unit,
                           std::size_t member,
                           std::size_t from,
                           std::size_t to) {
        int steps = stepsOf(problem, pieceLength(problem, unit, member, from, to));
        for (std::size_t m = 0; m < unit.members.size() && problem.matched; ++m)
            steps = std::max(steps, stepsOf(problem, pieceLength(problem, unit, m, from, to)));
        return steps;
    }

    void takeStrip(const CuttingProblem& problem, const StockJob& job, std::size_t m, WoodCutting& use) {
        const CutUnit& unit = job.placed.unit;
        StockStrip& out = m_out.strips[m_indexOf.at(job.strips[m])];
        std::vector<std::size_t> nodes{0};
        nodes.insert(nodes.end(), job.joints.begin(), job.joints.end());
        nodes.push_back(unit.places() + 1);
        for (std::size_t i = 1; i < nodes.size(); ++i) {
            const std::size_t from = nodes[i - 1], to = nodes[i];
            const double length = pieceLength(problem, unit, m, from, to);
            StockPiece piece;
            piece.number = static_cast<int>(i);
            piece.from = unit.members[m].at[from] - (from > 0 ? problem.scarf / 2 : 0.0);
            piece.to = piece.from + length;
            piece.toCut = (stepsToMark(problem, unit, m, from, to) - problem.cut) * problem.grid;
            out.pieces.push_back(piece);
            use.needed += length;
            ++use.pieces;
            if (i + 1 < nodes.size()) {
                out.joints.push_back({unit.members[m].at[to] - bowAllowance(*job.strips[m]),
                                      job.placed.x[to - 1],
                                      unit.bay[to - 1]});
                ++use.joints;
            }
        }
        ++use.strips;
    }

    [[nodiscard]] double weight() const {
        double kilograms = 0.0;
        for (const Strip& strip : m_plan.strips) {
            double area = 0.0; // mm2 of the laid surface: at mid-thickness, so times thickness is the volume
            for (std::size_t i = 1; i < strip.samples.size(); ++i)
                area += (strip.samples[i].s - strip.samples[i - 1].s) *
                        (strip.samples[i].width + strip.samples[i - 1].width) / 2;
            if (const Wood* wood = findWood(m_woods.at(strip.row)))
                kilograms += area * m_project.strips.thickness * wood->density * 1e-9;
        }
        return kilograms;
    }

    const Project& m_project;
    const Stock& m_stock;
    const LoftedHull& m_hull;
    const Plan& m_plan;
    std::map<int, std::string> m_woods; // by row
    StockPlan m_out;
    std::vector<StockJob> m_jobs;
    std::map<const Strip*, std::size_t> m_indexOf;
};

} // namespace

std::optional<StockPlan> planStock(const Project& project, const LoftedHull& hull, const Plan& plan) {
    if (!project.stock)
        return std::nullopt;
    return Planner(project, hull, plan).make();
}

} // namespace sheerlay::core
