#include "core/project/wood.hpp"
#include "core/stock/cutting_search.hpp"
#include "core/stock/joint_places.hpp"
#include "core/stock/stock_job.hpp"
#include "core/stock/stock_plan.hpp"
#include "core/stock/stock_words.hpp"
#include "core/units/both_units.hpp"
#include "core/units/length.hpp"

#include <algorithm>
#include <cmath>
#include <map>
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
        : m_project(project), m_stock(*project.stock), m_hull(hull), m_plan(plan) {}

    StockPlan make() {
        m_out.scarf = m_stock.scarfSlope * m_project.strips.thickness;
        for (const BoardLot& lot : m_stock.lots) {
            LotUse use;
            use.lot = lot;
            use.milling = mill(lot, m_stock, m_project.strips);
            m_out.lots.push_back(use);
            if (!use.milling.problem.empty())
                tell(Level::Caution, "stock-lot-gives-no-strips", std::nullopt, use.milling.problem);
        }
        for (const Strip& strip : m_plan.strips) {
            m_out.strips.push_back({strip.id, woodOfRow(m_project, strip.row), {}, {}});
            m_indexOf[&strip] = m_out.strips.size() - 1;
        }
        m_jobs = gatherJobs(m_plan, m_stock.sides == JointSides::Mirror);
        std::map<std::string, std::vector<std::size_t>> byWood; // alphabetical: the same on every run
        for (std::size_t j = 0; j < m_jobs.size(); ++j)
            byWood[woodOfRow(m_project, m_jobs[j].strips.front()->row)].push_back(j);
        for (const auto& [wood, jobs] : byWood)
            planWood(wood, jobs);
        nameSticks();
        m_out.weight = weight();
        m_out.findings = heaviestFirst(std::move(m_out.findings));
        return std::move(m_out);
    }

private:
    void tell(Level level, const char* code, std::optional<std::string> strip, std::string text) {
        m_out.findings.push_back({level, code, std::move(strip), std::nullopt, std::move(text)});
    }

    /// Kinds of milled strips of a wood; a lot of which there are few comes a second time, dear, so that what
    /// is missing can be told.
    CuttingProblem problemOf(const std::string& wood, bool& inMoney, std::vector<std::size_t>& lotOfKind) {
        CuttingProblem problem;
        problem.grid = mmPerInch / 4; // told in whole quarters of an inch, or rounded up to a millimetre
        problem.scarf = m_out.scarf;
        problem.cut = static_cast<int>(std::ceil((m_stock.kerf + toldTo) / problem.grid));
        problem.shortestPiece = m_stock.shortestPiece;
        problem.longestPiece = m_stock.longestPiece.value_or(unlimited);
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
            StickKind kind;
            kind.capacity =
                static_cast<int>(std::floor(use.milling.stripLength / problem.grid + 1e-9)) + problem.cut;
            kind.cost = inMoney ? *use.lot.price / use.milling.strips() : use.lot.length;
            const double each = kind.cost / use.lot.length;
            perLength = perLength == 0.0 ? each : std::min(perLength, each);
            if (use.lot.count)
                kind.limit = static_cast<int>(
                    std::floor(*use.lot.count * use.milling.strips() / (1 + m_stock.spare) + 1e-9));
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

    void planWood(const std::string& wood, const std::vector<std::size_t>& jobs) {
        bool inMoney = false;
        std::vector<std::size_t> lotOfKind;
        CuttingProblem problem = problemOf(wood, inMoney, lotOfKind);
        if (problem.kinds.empty()) {
            tell(Level::Stop,
                 "stock-no-boards",
                 std::nullopt,
                 "No boards of " + spoken(wood) + " are described that give strips, and " +
                     std::to_string(jobs.size()) +
                     " rows or pieces need it; a [[stock.lot]] of it would do.");
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
        for (const RuleKept rules : {RuleKept::All, RuleKept::NotHardBends}) {
            job.placed = placeJoints(job.strips, m_hull.stationX, rules);
            UnitPieces pieces(problem, job.placed.unit);
            if (!canBeCut(problem, pieces))
                continue;
            if (rules != RuleKept::All)
                tell(Level::Caution,
                     "stock-scarf-in-bend",
                     job.strips.front()->id,
                     "From these boards " + job.strips.front()->id +
                         " can be made only with a scarf where it is bent or twisted hardest; longer boards "
                         "would do without, or bend it dry before it is glued.");
            return pieces;
        }
        tellTooLong(problem, job);
        return std::nullopt;
    }

    void tellTooLong(const CuttingProblem& problem, const StockJob& job) {
        const double need =
            std::ceil(leastLongestPiece(problem, job.placed.unit) / problem.grid) * problem.grid;
        const std::string id = job.strips.front()->id;
        if (need > unlimited / 2) {
            tell(Level::Stop,
                 "stock-boards-too-short",
                 id,
                 id + " can't be cut into pieces as long as the shortest that is allowed; a smaller "
                      "shortest-piece would do.");
            return;
        }
        const std::string shop =
            need > problem.longestPiece ? "a longest-piece of that, and boards of " : "boards of ";
        tell(Level::Stop,
             "stock-boards-too-short",
             id,
             id +
                 " can't be made from these boards: its scarfs belong in the middle third of a mould bay, "
                 "and then its longest piece is " +
                 bothUnits(need) + " at best; " + shop + bothUnits(need + 2 * m_stock.endTrim) +
                 " would do.");
    }

    void linkNeighbours(CuttingProblem& problem, const std::vector<std::size_t>& able) {
        for (std::size_t a = 0; a < able.size(); ++a)
            for (std::size_t b = 0; b < able.size(); ++b)
                if (a != b && areNeighbours(m_jobs[able[a]], m_jobs[able[b]], stagger()))
                    problem.units[a].neighbours.push_back(b);
    }

    [[nodiscard]] bool stagger() const { return m_stock.sides == JointSides::Stagger; }

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
                tellSideBySide(*job.strips.front());
                continue;
            }
            problem.units[a] = fewer.unit;
            job.placed = std::move(fewer);
            pieces[a] = std::move(left);
        }
    }

    void tellSideBySide(const Strip& strip) {
        tell(Level::Caution,
             "stock-scarfs-side-by-side",
             strip.id,
             "A scarf of " + strip.id +
                 " lies in the same mould bay as one of the row beside it; longer boards would keep them "
                 "apart.");
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
                        tellSideBySide(*m_jobs[able[b]].strips.front());
        for (const CutStick& stick : cutting.sticks) {
            Stick out;
            out.lot = lotOfKind[stick.kind];
            for (const PlacedPiece& piece : stick.pieces) {
                const Strip* strip = m_jobs[able[piece.unit]].strips[piece.member];
                out.parts.push_back({strip->id,
                                     static_cast<int>(piece.piece) + 1,
                                     (piece.steps - problem.cut) * problem.grid});
            }
            out.left = std::max(0, stick.left - problem.cut) * problem.grid;
            m_out.sticks.push_back(std::move(out));
        }
        m_out.woods.push_back(use);
    }

    static bool shareBay(const StockJob& a, const StockJob& b) {
        const std::set<int> bays = b.bays();
        return std::ranges::any_of(a.bays(), [&](int bay) { return bays.contains(bay); });
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
            piece.toCut = (stepsOf(problem, length) - problem.cut) * problem.grid;
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

    /// Boards are filled in the order of laying, so that strips from one board lie near each other in the
    /// boat and those of a pair come side by side.
    void nameSticks() {
        std::map<std::string, std::pair<int, std::string>> orderOf;
        for (const Strip& strip : m_plan.strips)
            orderOf[strip.id] = {strip.row > 0 ? strip.row - 1 : strip.row, strip.id.substr(1) + strip.id};
        const auto key = [&](const Stick& stick) {
            auto first = orderOf.at(stick.parts.front().strip);
            for (const Stick::Part& part : stick.parts)
                first = std::min(first, orderOf.at(part.strip));
            return std::tuple(stick.lot, first.first, first.second);
        };
        std::ranges::stable_sort(m_out.sticks, {}, key);
        std::map<std::string, StockStrip*> stripOf;
        for (StockStrip& strip : m_out.strips)
            stripOf[strip.strip] = &strip;
        for (Stick& stick : m_out.sticks) {
            LotUse& use = m_out.lots[stick.lot];
            const int each = use.milling.strips();
            stick.board = use.sticks / each + 1;
            stick.number = use.sticks % each + 1;
            ++use.sticks;
            stick.name = use.lot.name + std::to_string(stick.board) + "-" + (stick.number < 10 ? "0" : "") +
                         std::to_string(stick.number);
            for (const Stick::Part& part : stick.parts)
                stripOf.at(part.strip)->pieces[static_cast<std::size_t>(part.number) - 1].stick = stick.name;
        }
        for (LotUse& use : m_out.lots)
            if (use.sticks > 0)
                buy(use);
    }

    void buy(LotUse& use) {
        const int each = use.milling.strips();
        const double wanted = use.sticks * (1 + m_stock.spare);
        use.boards = static_cast<int>(std::ceil(wanted / each - 1e-9));
        use.spares = use.boards * each - use.sticks;
        use.boardFeet =
            use.boards * talliedBoardFeet(use.lot.chargedThickness, use.lot.width, use.lot.length);
        if (use.lot.price)
            use.cost = *use.lot.price * use.boards;
        use.missing = use.lot.count ? std::max(0, use.boards - *use.lot.count) : 0;
        if (use.missing > 0)
            tell(Level::Stop,
                 "stock-not-enough-boards",
                 std::nullopt,
                 "Lot " + use.lot.name + " has " + std::to_string(*use.lot.count) + " boards of " +
                     spoken(use.lot.wood) + " and " + std::to_string(use.boards) + " are needed; " +
                     std::to_string(use.missing) + " more would do, or another lot of the same wood.");
    }

    [[nodiscard]] double weight() const {
        double kilograms = 0.0;
        for (const Strip& strip : m_plan.strips) {
            double area = 0.0; // mm2 of the laid surface: at mid-thickness, so times thickness is the volume
            for (std::size_t i = 1; i < strip.samples.size(); ++i)
                area += (strip.samples[i].s - strip.samples[i - 1].s) *
                        (strip.samples[i].width + strip.samples[i - 1].width) / 2;
            if (const Wood* wood = findWood(woodOfRow(m_project, strip.row)))
                kilograms += area * m_project.strips.thickness * wood->density * 1e-9;
        }
        return kilograms;
    }

    const Project& m_project;
    const Stock& m_stock;
    const LoftedHull& m_hull;
    const Plan& m_plan;
    StockPlan m_out;
    std::vector<StockJob> m_jobs;
    std::map<const Strip*, std::size_t> m_indexOf;
};

} // namespace

std::string woodOfRow(const Project& project, int row) {
    std::string wood = project.strips.wood;
    if (!project.stock)
        return wood;
    for (const WoodRule& rule : project.stock->woodRules) {
        if (row < rule.firstRow || row > rule.lastRow)
            continue;
        const int gap = rule.firstRow < 0 && row > 0 ? 1 : 0; // there is no row 0
        if ((row - rule.firstRow - gap) % std::max(1, rule.every) == 0)
            wood = rule.wood;
    }
    return wood;
}

std::optional<StockPlan> planStock(const Project& project, const LoftedHull& hull, const Plan& plan) {
    if (!project.stock)
        return std::nullopt;
    return Planner(project, hull, plan).make();
}

} // namespace sheerlay::core
