#include "core/planking/planking.hpp"

#include "core/planking/accent_rows.hpp"
#include "core/planking/herringbone.hpp"
#include "core/planking/landing.hpp"
#include "core/planking/laying_order.hpp"
#include "core/planking/plan_findings.hpp"
#include "core/planking/row_layer.hpp"
#include "core/planking/split_bottom.hpp"
#include "core/planking/start_line.hpp"
#include "core/planking/start_search.hpp"
#include "core/planking/stealer_findings.hpp"
#include "core/planking/strip_ends.hpp"
#include "core/planking/taper_field.hpp"
#include "core/units/both_units.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>

namespace sheerlay::core {
namespace {

using geometry::FanSide;

constexpr double shortScrap = 300; // mm

double medianBay(const LoftedHull& hull) {
    std::vector<double> gaps;
    for (std::size_t i = 1; i < hull.stationX.size(); ++i)
        gaps.push_back(hull.stationX[i] - hull.stationX[i - 1]);
    if (gaps.empty())
        return 304.8;
    std::nth_element(gaps.begin(), gaps.begin() + static_cast<std::ptrdiff_t>(gaps.size() / 2), gaps.end());
    return gaps[gaps.size() / 2];
}

void markRows(const Project& project, Plan& plan) {
    const auto see =
        [&](End which, EndStyle style, std::optional<RowRange>& weave, std::optional<int>& closing) {
            for (const Strip& s : plan.strips) {
                const StripEnd& e = s.ends[which == End::Bow ? 0 : 1];
                if (e.on == EndsOn::Stem && style == EndStyle::Weave) {
                    if (!weave)
                        weave = RowRange{s.row, s.row};
                    weave->first = std::min(weave->first, s.row);
                    weave->last = std::max(weave->last, s.row);
                }
                if (e.on == EndsOn::Keel && (!closing || s.row < *closing))
                    closing = s.row;
            }
        };
    see(End::Bow, project.planking.bowEnds, plan.marks.weaveBow, plan.marks.closingBow);
    see(End::Stern, project.planking.sternEnds, plan.marks.weaveStern, plan.marks.closingStern);
}

/// Widths of the rows on both sides of the start.
struct Widths {
    std::vector<RowWidth> below, above;
    std::vector<Band> bands;                            ///< below
    std::optional<TaperedField> fieldBelow, fieldAbove; ///< that they come from
};

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

/// Lays down to the measured row, whose width takes up what its edge was found off the plan, and goes on from
/// there with strips of their real cover width; tapers are solved anew from that edge.
void layMeasured(const geometry::EvenMaster& even,
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

    Project rest = *context.project;
    rest.strips.coverWidth = measured.coverWidth;
    LayingContext restContext = context;
    restContext.project = &rest;
    std::vector<RowWidth> below;
    bands.clear();
    if (rest.planking.taper != Taper::None)
        if (auto field = taperField(context.hull->laid,
                                    geometry::masterAlong(edge, taperSpacing).nodes,
                                    taperWish(restContext, plan, FanSide::TowardKeel))) {
            below = std::move(field->rows);
            bands = std::move(field->bands);
        }
    RowLayer next(restContext, plan);
    next.rows(geometry::masterAlong(edge, columnSpacing),
              FanSide::TowardKeel,
              below,
              mostRows,
              measured.row + 1,
              bands);
    next.finish();
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
    const auto master = startLine(context.hull->laid, start, taperSpacing);
    if (!master)
        return unexpected(PlanError{master.error()});
    Tapers tapers;
    bool allFound = true;
    for (const FanSide side : {FanSide::TowardKeel, FanSide::TowardSheer}) {
        if (side == FanSide::TowardSheer && start.kind == StartLine::Kind::Sheer)
            continue;
        TaperWish wish = taperWish(context, plan, side);
        wish.limit *= tighter;
        wish.keepFull = onSide(plan.accentRows, side == FanSide::TowardKeel);
        tapers.narrowest = wish.narrowest;
        const bool below = side == FanSide::TowardKeel;
        const std::optional<TaperedField>* last = !before ? nullptr
                                                  : below ? &before->fieldBelow
                                                          : &before->fieldAbove;
        auto field = taperField(context.hull->laid, *master, wish, {}, last && *last ? &**last : nullptr);
        if (!field) { // a boat without tapers is still a boat
            allFound = false;
            tellNoTapers(below ? "below" : "above", field.error(), plan);
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

/// The boat planked from one given line.
Expected<Plan, PlanError> layFrom(const StartLine& start,
                                  const Widths& widths,
                                  const LayingContext& context,
                                  Plan plan,
                                  const MeasuredRow* measured = nullptr) {
    plan.start = start;
    plan.coverWidth = context.project->strips.coverWidth;
    auto master = startLine(context.hull->laid, start, columnSpacing);
    if (!master)
        return unexpected(PlanError{master.error()});
    if (master->size() < 8)
        return unexpected(PlanError{"the start line is too short to plank from"});
    const geometry::EvenMaster even{*master, columnSpacing};
    RowLayer layer(context, plan);
    std::optional<SplitChoice> split;
    if (context.project->planking.closing == ClosingMethod::SplitBottom) {
        split = laySplit(even, widths.below, widths.bands, context, plan);
        tellSplit(split, plan);
    }
    if (!split && measured)
        layMeasured(even, widths, *measured, context, plan);
    else if (!split)
        layer.rows(even, FanSide::TowardKeel, widths.below, mostRows, 1, widths.bands);
    if (start.kind != StartLine::Kind::Sheer || start.shift > 0)
        layer.rows(even, FanSide::TowardSheer, widths.above);
    layer.finish();
    if (plan.strips.empty())
        return unexpected(PlanError{"no strip of this width lies on the hull from this start line"});
    return plan;
}

constexpr double letPass = 1.02; // of the limit: a strip this close has met it

/// What strips as laid are over the limit, as a factor, in the rows whose both edges the tapers were to bring
/// within it. The bend of short scraps is not worth another round.
double overLimit(const Plan& plan) {
    double most = 0.0;
    for (const Strip& s : plan.strips)
        if (plan.tapers && s.length > shortScrap &&
            (s.row > 0 ? s.row > plan.tapers->metFromBelow : -s.row > plan.tapers->metFromAbove))
            most = std::max(most, s.edgeBend.maxAbs / plan.edgeBendLimit);
    return most;
}

/// How well the boat as laid keeps the limit; less is better.
struct LaidScore {
    int metFrom = 0;    ///< first rows from which on strips keep it, below and above together
    double slack = 0.0; ///< what strips are over, summed, in limits
    [[nodiscard]] auto operator<=>(const LaidScore&) const = default;
};

/// Notes in the plan from which rows on the strips as laid keep the limit, which is what the builder bends.
LaidScore scoreLaid(Plan& plan) {
    LaidScore score;
    if (!plan.tapers)
        return score;
    int below = 1, above = 1;
    for (const Strip& s : plan.strips) {
        if (s.length <= shortScrap || s.edgeBend.maxAbs <= letPass * plan.edgeBendLimit)
            continue;
        (s.row > 0 ? below : above) = std::max(s.row > 0 ? below : above, std::abs(s.row) + 1);
        score.slack += s.edgeBend.maxAbs / plan.edgeBendLimit - 1;
    }
    plan.tapers->metFromBelow = below;
    plan.tapers->metFromAbove = above;
    score.metFrom = below + above;
    return score;
}

struct LaidBoat {
    Plan base; // what is known before a strip is laid, tapers included
    Widths widths;
    Plan plan;
};

/// Solves for the tapers and lays the boat. The program knows the edges by splines in the start's chart;
/// where the true strips then come out over the limit it is asked for more, and the better boat is kept.
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
        auto laid = layFrom(start, *widths, context, base, measured);
        if (!laid)
            return unexpected(laid.error());
        const double over = overLimit(*laid);
        const LaidScore score = scoreLaid(*laid);
        if (!best || score < bestScore) {
            bestScore = score;
            best = LaidBoat{std::move(base), *widths, std::move(*laid)};
        }
        if (over <= letPass)
            break;
        tighter /= over;
        last = *widths;
    }
    return std::move(*best);
}

/// Moves the start, and as a last resort planes every strip a little, until the shutter has the wanted width.
/// The midship arithmetic only proposes; each try is laid and judged by what comes out.
/// The tapers stay as they were solved: the start moves by a fraction of a strip.
void aimShutter(const Widths& widths, const LayingContext& context, const Plan& empty, Plan& plan) {
    const Project& project = *context.project;
    const auto& wanted = *project.planking.shutter;
    const bool sheer = plan.start.kind == StartLine::Kind::Sheer;
    const bool joinable = project.planking.closing == ClosingMethod::BothSides;
    const double before = shutterRemainder(plan);
    if (landsWell(before, plan.coverWidth, wanted, joinable) && topIsSound(plan))
        return;
    constexpr std::size_t mostTries = 12;
    const double above = sheer ? 0.0 : plan.start.girth;
    const std::vector<LandingChange> changes = landingChanges(
        {(plan.lastRow - 1) * plan.coverWidth + before, above, plan.coverWidth, wanted, joinable, !sheer});
    std::optional<Plan> secondBest;
    LandingChange secondChange;
    for (std::size_t i = 0; i < std::min(mostTries, changes.size()); ++i) {
        StartLine start = plan.start;
        (sheer ? start.shift : start.girth) += changes[i].shift;
        Project trialProject = project;
        trialProject.strips.coverWidth -= changes[i].planed;
        LayingContext trialContext = context;
        trialContext.project = &trialProject;
        auto trial = layFrom(start, widths, trialContext, empty);
        if (!trial || !landsWell(shutterRemainder(*trial), trial->coverWidth, wanted, joinable))
            continue;
        if (topIsSound(*trial)) {
            plan = std::move(*trial);
            tellLanding(changes[i], before, shutterRemainder(plan), plan);
            return;
        }
        if (!secondBest) {
            secondBest = std::move(*trial);
            secondChange = changes[i];
        }
    }
    if (secondBest) { // a thin piece at the sheer stays, and has its own finding
        plan = std::move(*secondBest);
        tellLanding(secondChange, before, shutterRemainder(plan), plan);
        return;
    }
    plan.findings.push_back(
        {Level::Caution,
         "shutter-not-met",
         std::nullopt,
         std::nullopt,
         "No small move of the start line and no light planing gives the shutter the wanted "
         "width; change the cover width a little, or the wanted width."});
}

/// The boat from one given line, with the tapers it wants and the shutter that was asked for.
Expected<Plan, PlanError> layWhole(const StartLine& start,
                                   const LayingContext& context,
                                   const Plan& empty,
                                   const MeasuredRow* measured) {
    auto boat = layTapered(start, context, empty, measured);
    if (!boat)
        return unexpected(boat.error());
    Plan plan = std::move(boat->plan);
    if (context.project->planking.shutter && !measured)
        aimShutter(boat->widths, context, boat->base, plan);
    scoreLaid(plan);
    return plan;
}

} // namespace

Expected<Plan, PlanError> plank(const Project& project, const LoftedHull& hull, const MeasuredRow* measured) {
    const auto begin = std::chrono::steady_clock::now();
    const Wood* wood = findWood(project.strips.wood);
    if (!wood)
        return unexpected(PlanError{"the wood \"" + project.strips.wood + "\" is not known"});
    const Strength strength(*wood, project.strips.thickness, project.strips.width);
    Plan empty;
    empty.mouldBay = medianBay(hull);
    empty.edgeBendLimit = 1 / project.planking.edgeBendRadius.value_or(strength.edgeBendRadius());
    const LayingContext context{&project, &hull, &hull.laid, &strength, empty.mouldBay};

    StartLine start = project.planking.start;
    if (start.kind == StartLine::Kind::Easiest) {
        StartSearch search = searchStart(hull, project.strips.coverWidth);
        if (search.candidates.empty())
            return unexpected(PlanError{"no start line could be found on this hull"});
        start = search.candidates[search.best].line;
        tellStart(search, empty);
        empty.candidates = std::move(search.candidates);
    }
    if (!project.planking.shutter && !measured) // the last plank's wish moves the start, too
        start = aimAtAccent(project, hull, start);
    empty.accentRows = accentRows(project, hull, start, empty.findings);
    auto laid = layWhole(start, context, empty, measured);
    if (laid)
        if (const auto fault = stealerFault(*laid)) {
            LayingContext without = context;
            without.stealers = false;
            laid = layWhole(start, without, empty, measured);
            if (laid)
                tellNoStealers(*fault, *laid);
        }
    if (!laid)
        return unexpected(laid.error());
    Plan plan = std::move(*laid);
    std::stable_sort(plan.strips.begin(), plan.strips.end(), [](const Strip& a, const Strip& b) {
        return a.row != b.row ? a.row < b.row : a.side == Side::Starboard && b.side == Side::Port;
    });
    markRows(project, plan);
    markAccents(hull, plan);
    weaveEnds(plan, project, hull);
    if (project.planking.closing == ClosingMethod::Herringbone)
        layHerringbone(plan, project);
    orderStrips(plan, project.planking.closing);
    tellStealers(hull, plan);
    findInPlan(project, plan);
    plan.milliseconds =
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
    return plan;
}

} // namespace sheerlay::core
