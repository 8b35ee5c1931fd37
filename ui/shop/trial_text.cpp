#include "ui/shop/trial_text.hpp"

#include "core/journal/compare_plans.hpp"
#include "core/journal/planned_girth.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

namespace sheerlay::ui {
namespace {

QString piecesText(const core::PlanChange& change) {
    if (change.piecesAfter == change.piecesBefore)
        return Wording::tr("%1 pieces as before").arg(change.piecesAfter);
    return Wording::tr("%1 pieces instead of %2").arg(change.piecesAfter).arg(change.piecesBefore);
}

QString lastPlankText(const Boat& before, const core::Plan& after, core::Units units) {
    const auto was = core::plannedLastPlank(before.plan, before.hull);
    const auto now = core::plannedLastPlank(after, before.hull);
    if (!now)
        return {};
    const QString wide = lengthText(now->width, units);
    if (!was)
        return Wording::tr("last plank %1").arg(wide);
    const QString wideBefore = lengthText(was->width, units);
    return wide == wideBefore ? Wording::tr("last plank %1 as before").arg(wide)
                              : Wording::tr("last plank %1 instead of %2").arg(wide, wideBefore);
}

QString bendText(const core::PlanChange& change, core::Units units) {
    if (change.hardestAfter.empty())
        return {};
    const QString bend = sagText(change.bendAfter, units), strip = toQString(change.hardestAfter);
    const QString bendBefore = sagText(change.bendBefore, units);
    if (bend == bendBefore || change.hardestBefore.empty())
        return Wording::tr("hardest edge bend %1 as before (%2)").arg(bend, strip);
    return Wording::tr("hardest edge bend %1 instead of %2 (%3)").arg(bend, bendBefore, strip);
}

} // namespace

TrialText trialText(const Boat& before, const core::PlanAsLaid& tried, int row, core::Units units) {
    TrialText text;
    text.planned = tried.laid.has_value();
    for (const core::Finding& finding : tried.plan.findings) {
        if (!finding.code.starts_with("journal-"))
            continue;
        text.told << heardText(finding.text, units);
        if (finding.code == "journal-left-out")
            text.leftOut << text.told.back();
    }
    if (!text.planned) {
        text.change = Wording::tr("The reading is kept, but the rows to come stay as they were planned.");
        return text;
    }
    const core::PlanChange change = core::changeOf(before.plan, tried.plan, row);
    QStringList parts{piecesText(change), lastPlankText(before, tried.plan, units), bendText(change, units)};
    parts.removeAll(QString());
    text.change = parts.join(QStringLiteral(" · "));
    return text;
}

} // namespace sheerlay::ui
