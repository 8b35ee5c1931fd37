#include "core/planking/tapered_boat.hpp"

#include "core/planking/accent_rows.hpp"
#include "core/planking/plan_findings.hpp"
#include "core/planking/row_layer.hpp"
#include "core/planking/split_bottom.hpp"
#include "core/planking/start_line.hpp"
#include "core/planking/taper_findings.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>

namespace sheerlay::core {
namespace {

using geometry::FanSide;

constexpr double letPass = 1.02; // of the limit: a strip this close has met it
constexpr double easedTo = 0.75; // of the worst without tapers: what is asked where the limit is out of reach
constexpr double hopeless = 1.5; // of the limit: so far off the chart no asking for more helps

/// The sides and the bottom of a knuckled hull, each smooth and running on past the knuckle.
struct Panels {
    TrimmedSurface sides, bottom;

    [[nodiscard]] const TrimmedSurface& on(FanSide side) const {
        return side == FanSide::TowardKeel ? bottom : sides;
    }
};

/// None where the rows lie on the hull in one.
std::optional<Panels> panelsOf(const StartLine& start, const LayingContext& context) {
    if (start.kind != StartLine::Kind::Knuckle)
        return std::nullopt;
    Panels panels{*context.part, *context.part};
    panels.sides.surface = context.part->surface.oneSide(-1);
    panels.bottom.surface = context.part->surface.oneSide(+1);
    return panels;
}

TaperWish taperWish(const LayingContext& context, const Plan& plan, FanSide side) {
    const Project& project = *context.project;
    TaperWish wish;
    wish.coverWidth = project.strips.coverWidth;
    wish.narrowest = narrowestAllowed(project);
    wish.limit = plan.edgeBendLimit;
    wish.where = project.planking.taper;
    wish.side = side;
    wish.stealers = context.stealers &&
                    side == FanSide::TowardKeel; // above, rows are cut by the sheer before they bend much
    return wish;
}

/// Solves for the tapers the project asks for and notes in the plan what they reach.
/// @param tighter  the program is asked to keep so much of the limit
/// @param before   from the same start with another limit; null at first
Expected<Widths, PlanError> solveTapers(
    const StartLine& start, double tighter, const Widths* before, const LayingContext& context, Plan& plan) {
    const Project& project = *context.project;
    Widths widths;
    if (project.planking.taper == Taper::None)
        return widths;
    const std::optional<Panels> panels = panelsOf(start, context);
    Tapers tapers;
    bool allFound = true;
    for (const FanSide side : {FanSide::TowardKeel, FanSide::TowardSheer}) {
        if (side == FanSide::TowardSheer && start.kind == StartLine::Kind::Sheer)
            continue;
        const TrimmedSurface& part = panels ? panels->on(side) : *context.part;
        const auto master = startLine(part, start, taperSpacing);
        if (!master)
            return unexpected(PlanError{master.error()});
        TaperWish wish = taperWish(context, plan, side);
        wish.limit *= tighter;
        wish.keepFull = onSide(plan.accentRows, side == FanSide::TowardKeel);
        tapers.narrowest = wish.narrowest;
        const bool below = side == FanSide::TowardKeel;
        const std::optional<TaperedField>* last = !before ? nullptr
                                                  : below ? &before->fieldBelow
                                                          : &before->fieldAbove;
        auto field = taperField(part, *master, wish, context.stop, last && *last ? &**last : nullptr);
        if (!field) { // a boat without tapers is still a boat
            allFound = false;
            tellNoTapers(below ? sayable("below") : sayable("above"), field.error(), plan);
            continue;
        }
        tapers.touched += field->touched;
        tapers.wood += field->wood;
        tapers.plainWorst = std::max(tapers.plainWorst, field->plainWorst);
        (below ? tapers.metFromBelow : tapers.metFromAbove) = field->metFrom;
        (below ? widths.below : widths.above) = field->rows;
        if (below)
            widths.bands = field->bands;
        (below ? widths.fieldBelow : widths.fieldAbove) = std::move(*field);
    }
    if (allFound || tapers.touched > 0)
        plan.tapers = tapers;
    return widths;
}

/// What is still to lay below the start.
struct Below {
    Project project; // its strips cover what they really do
    geometry::EvenMaster master;
    std::vector<RowWidth> widths;
    std::vector<Band> bands;
    int first = 1; // row
};

/// Lays down to the measured row, whose width takes up what its edge was found off the plan. The rest goes on
/// from there with strips of their real cover width; tapers are solved anew from that edge.
Below layMeasured(const geometry::EvenMaster& even,
                  const Widths& widths,
                  const MeasuredRow& measured,
                  const LayingContext& context,
                  Plan& plan) {
    std::vector<RowWidth> above = widths.below;
    const auto k = static_cast<std::size_t>(measured.row);
    above.resize(k);
    std::vector<Band> bands = widths.bands;
    const auto band = std::find_if(bands.begin(), bands.end(), [&](const Band& b) { return b.row == k - 1; });
    const RowWidth& base = band == bands.end() ? above[k - 1] : band->width;
    std::vector<double> u;
    std::vector<double> width;
    const auto& knots = context.hull->laid.surface.knotsU();
    for (double x = knots.first; x <= knots.last(); x += taperSpacing) {
        u.push_back(x);
        width.push_back((base.full() ? context.project->strips.coverWidth : base.at(x)) +
                        measured.offset.at(x));
    }
    (band == bands.end() ? above[k - 1] : band->width) = RowWidth(std::move(u), std::move(width));
    RowLayer laid(context, plan);
    laid.takeAsMeasured(measured.row);
    const auto edge = laid.rows(even, FanSide::TowardKeel, above, measured.row, 1, bands);
    laid.finish();

    Below rest{*context.project, geometry::masterAlong(edge, columnSpacing), {}, {}, measured.row + 1};
    rest.project.strips.coverWidth = measured.coverWidth;
    LayingContext restContext = context;
    restContext.project = &rest.project;
    if (rest.project.planking.taper != Taper::None) {
        TaperWish wish = taperWish(restContext, plan, FanSide::TowardKeel);
        for (const std::size_t place : onSide(plan.accentRows, true))
            if (place >= k)
                wish.keepFull.push_back(place - k);
        if (auto field = taperField(
                *context.part, geometry::masterAlong(edge, taperSpacing).nodes, wish, context.stop)) {
            rest.widths = std::move(field->rows);
            rest.bands = std::move(field->bands);
        }
    }
    return rest;
}

/// First rows from which on strips keep the limit, and what others are over, summed, in limits.
struct Met {
    int below = 1, above = 1;
    double slack = 0.0;
    [[nodiscard]] LaidScore score() const { return {below + above, slack}; }
};

Met metOf(const Plan& plan) {
    Met met;
    for (const Strip& s : plan.strips) {
        if (!overLimit(s, plan.edgeBendLimit))
            continue;
        int& from = s.row > 0 ? met.below : met.above;
        from = std::max(from, std::abs(s.row) + 1);
        met.slack += s.edgeBend.maxAbs / plan.edgeBendLimit - 1;
    }
    return met;
}

/// What strips as laid are over the limit, as a factor, in the rows whose both edges the tapers were to bring
/// within it. The bend of short scraps is not worth another round.
double mostOver(const Plan& plan) {
    double most = 0.0;
    for (const Strip& s : plan.strips)
        if (plan.tapers && s.length > shortScrap &&
            (s.row > 0 ? s.row > plan.tapers->metFromBelow : -s.row > plan.tapers->metFromAbove))
            most = std::max(most, s.edgeBend.maxAbs / plan.edgeBendLimit);
    return most;
}

bool isHopeless(const Widths& widths) {
    return (widths.fieldBelow && widths.fieldBelow->hopeless) ||
           (widths.fieldAbove && widths.fieldAbove->hopeless);
}

/// The hardest bend of a strip that is tapered for.
double hardest(const Plan& plan) {
    double most = 0.0;
    for (const Strip& s : plan.strips)
        if (s.length > shortScrap)
            most = std::max(most, s.edgeBend.maxAbs);
    return most;
}

/// Tapers that leave the limit unmet are worth planing if more rows keep it, or the rest come clearly nearer
/// to it, and the hardest strip is none the harder for it.
bool worthPlaning(const Plan& tapered, const Plan& plain) {
    constexpr double muchLess = 0.9;
    const LaidScore with = metOf(tapered).score(), without = metOf(plain).score();
    return hardest(tapered) <= letPass * hardest(plain) &&
           (with.metFrom < without.metFrom || with.slack < muchLess * without.slack);
}

/// The boat without tapers, where those that were found are worse than none.
std::optional<LaidBoat> betterPlain(const StartLine& start,
                                    const LaidBoat& tapered,
                                    const LayingContext& context,
                                    const Plan& empty,
                                    const MeasuredRow* measured) {
    if (!tapered.plan.tapers || tapered.plan.tapers->touched == 0 || metOf(tapered.plan).slack == 0.0)
        return std::nullopt;
    Plan base = empty;
    base.tapers = tapered.base.tapers;
    base.tapers->touched = 0;
    base.tapers->wood = 0.0;
    Project project = *context.project;
    project.planking.taper = Taper::None; // below a measured edge, too
    LayingContext untapered = context;
    untapered.project = &project;
    // what was read on the moulds was laid as planned, so it changes nothing here
    const auto planned = measured ? layFrom(start, tapered.widths, context, tapered.base)
                                  : Expected<Plan, PlanError>(tapered.plan);
    const auto plain = layFrom(start, {}, untapered, base);
    if (!planned || !plain || worthPlaning(*planned, *plain))
        return std::nullopt;
    tellTapersGivenUp(hardest(*planned), hardest(*plain), base);
    auto laid = layFrom(start, {}, untapered, base, measured);
    if (!laid)
        return std::nullopt;
    noteMet(*laid);
    return LaidBoat{std::move(base), {}, std::move(*laid)};
}

} // namespace

Expected<Plan, PlanError> layFrom(const StartLine& start,
                                  const Widths& widths,
                                  const LayingContext& whole,
                                  Plan plan,
                                  const MeasuredRow* measured) {
    plan.start = start;
    plan.coverWidth = whole.project->strips.coverWidth;
    const std::optional<Panels> panels = panelsOf(start, whole);
    LayingContext context = whole; // of the rows toward the keel
    LayingContext aboveContext = whole;
    if (panels) {
        context.part = &panels->bottom;
        aboveContext.part = &panels->sides;
    }
    const auto masterOn = [&](const TrimmedSurface& part) -> Expected<geometry::EvenMaster, PlanError> {
        auto master = startLine(part, start, columnSpacing);
        if (!master)
            return unexpected(PlanError{master.error()});
        if (master->size() < 8)
            return unexpected(PlanError{"the start line is too short to plank from"});
        return geometry::EvenMaster{*master, columnSpacing};
    };
    const auto even = masterOn(*context.part);
    if (!even)
        return unexpected(even.error());
    RowLayer layer(context, plan);
    std::optional<SplitChoice> split;
    const bool splits = context.project->planking.closing == ClosingMethod::SplitBottom;
    const auto splitBelow = [&](const Below& below, const LayingContext& belowContext, Plan& into) {
        return laySplit(below.master, below.widths, below.bands, belowContext, into, below.first);
    };
    const Below planned{*context.project, *even, widths.below, widths.bands, 1};
    if (splits && measured) { // rows of the bottom lie by the centreline, not by the row above
        Plan asPlanned = plan;
        const auto choice = splitBelow(planned, context, asPlanned);
        if (choice && measured->row >= choice->row)
            measured = nullptr;
    }
    const Below below = measured ? layMeasured(*even, widths, *measured, context, plan) : planned;
    LayingContext belowContext = context;
    belowContext.project = &below.project;
    if (splits) {
        split = splitBelow(below, belowContext, plan);
        tellSplit(split, plan);
    }
    if (!split) {
        RowLayer rest(belowContext, plan);
        RowLayer& here = measured ? rest : layer;
        here.rows(below.master, FanSide::TowardKeel, below.widths, mostRows, below.first, below.bands);
        rest.finish();
    }
    if (start.kind != StartLine::Kind::Sheer || start.shift > 0) {
        const auto evenAbove = masterOn(*aboveContext.part);
        if (!evenAbove)
            return unexpected(evenAbove.error());
        RowLayer sides(aboveContext, plan);
        RowLayer& above = panels ? sides : layer;
        above.rows(*evenAbove, FanSide::TowardSheer, widths.above);
        sides.finish();
    }
    layer.finish();
    if (plan.strips.empty())
        return unexpected(PlanError{"no strip of this width lies on the hull from this start line"});
    return plan;
}

bool overLimit(const Strip& strip, double limit) noexcept {
    return strip.length > shortScrap && strip.edgeBend.maxAbs > letPass * limit;
}

LaidScore scoreOf(const Plan& plan) {
    return plan.tapers ? metOf(plan).score() : LaidScore{};
}

LaidScore noteMet(Plan& plan) {
    if (!plan.tapers)
        return {};
    const Met met = metOf(plan);
    plan.tapers->metFromBelow = met.below;
    plan.tapers->metFromAbove = met.above;
    return met.score();
}

Expected<LaidBoat, PlanError> layTapered(const StartLine& start,
                                         const LayingContext& context,
                                         const Plan& empty,
                                         const MeasuredRow* measured) {
    constexpr int mostRounds = 5;
    std::optional<LaidBoat> best;
    LaidScore bestScore;
    double tighter = 1.0;
    std::optional<Widths> last;
    for (int round = 0; round < mostRounds; ++round) {
        Plan base = empty;
        const auto widths = solveTapers(start, tighter, last ? &*last : nullptr, context, base);
        if (!widths)
            return unexpected(widths.error());
        if (tighter == 1.0 && base.tapers && isHopeless(*widths)) {
            tighter = std::max(1.0, easedTo * base.tapers->plainWorst / base.edgeBendLimit);
            continue;
        }
        if (tighter > 1.0)
            tellEasedLimit(tighter * base.edgeBendLimit, base);
        auto laid = layFrom(start, *widths, context, base, measured);
        if (!laid)
            return unexpected(laid.error());
        const double over = mostOver(*laid);
        const LaidScore score = noteMet(*laid);
        if (!best || score < bestScore) {
            bestScore = score;
            best = LaidBoat{std::move(base), *widths, std::move(*laid)};
        }
        if (over <= letPass || over > hopeless || context.stop.stop_requested())
            break;
        tighter /= over;
        last = *widths;
    }
    if (!context.stop.stop_requested())
        if (auto plain = betterPlain(start, *best, context, empty, measured))
            return std::move(*plain);
    return std::move(*best);
}

} // namespace sheerlay::core
