#include "ui/panels/landmarks.hpp"

#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <algorithm>
#include <utility>

namespace sheerlay::ui {
namespace {

const core::Strip& pieceAt(const Boat& boat, int order) {
    return boat.plan.strips[boat.byOrder[static_cast<std::size_t>(order)]];
}

/// How many pieces are laid when the last of a row is down; 0 when the row has none.
int laidThroughRow(const Boat& boat, int row) {
    for (int i = boat.pieces(); i > 0; --i) {
        if (pieceAt(boat, i - 1).row == row)
            return i;
    }
    return 0;
}

int laidBeforeRow(const Boat& boat, int row) {
    for (int i = 0; i < boat.pieces(); ++i) {
        if (pieceAt(boat, i).row == row)
            return i;
    }
    return -1;
}

} // namespace

std::vector<Landmark> landmarks(const Boat& boat) {
    enum class What { Weave, Closing, Shutter };
    struct Found {
        Landmark mark;
        What what;
    };
    std::vector<Found> found;
    const core::Marks& marks = boat.plan.marks;
    const auto weave = [&](const std::optional<core::RowRange>& rows, const QString& name) {
        if (!rows)
            return;
        if (const int laid = laidThroughRow(boat, rows->last); laid > 0)
            found.push_back({{name, laid}, What::Weave});
    };
    const auto closing = [&](const std::optional<int>& row, const QString& name) {
        if (!row)
            return;
        if (const int laid = laidBeforeRow(boat, *row); laid >= 0)
            found.push_back({{name, laid}, What::Closing});
    };
    weave(marks.weaveBow, Wording::tr("bow weave ends"));
    weave(marks.weaveStern, Wording::tr("stern weave ends"));
    closing(marks.closingBow, Wording::tr("bow closing begins"));
    closing(marks.closingStern, Wording::tr("stern closing begins"));
    for (int i = 0; i < boat.pieces(); ++i) {
        if (pieceAt(boat, i).kind == core::StripKind::Shutter) {
            found.push_back({{Wording::tr("shutter"), i}, What::Shutter});
            break;
        }
    }
    std::ranges::stable_sort(found, {}, [](const Found& f) { return f.mark.laid; });
    // a bow and a stern that meet their landmark together need one word for both
    for (std::size_t i = 1; i < found.size(); ++i) {
        const What what = found[i].what;
        if (found[i].mark.laid != found[i - 1].mark.laid || what != found[i - 1].what ||
            what == What::Shutter)
            continue;
        found[i - 1].mark.name =
            what == What::Weave ? Wording::tr("weave ends") : Wording::tr("closing begins");
        found.erase(found.begin() + static_cast<std::ptrdiff_t>(i));
        --i;
    }
    std::vector<Landmark> named;
    for (Found& f : found)
        named.push_back(std::move(f.mark));
    return named;
}

QString layingText(const Boat& boat, int laid) {
    const int pieces = boat.pieces();
    if (pieces == 0)
        return Wording::tr("There is nothing to lay");
    if (laid >= pieces)
        return Wording::tr("All %1 pieces are laid").arg(pieces);
    const core::Strip& next = pieceAt(boat, laid);
    const QString name = toQString(next.id);
    QString side = Wording::tr("over both sides");
    if (next.side != core::Side::Centre)
        side = next.side == core::Side::Port ? Wording::tr("port") : Wording::tr("starboard");
    if (next.kind == core::StripKind::Shutter)
        return Wording::tr("The shutter next: %1, %2").arg(name, side);
    if (next.row < 0)
        return Wording::tr("Row %1 above the start: %2 next").arg(-next.row).arg(name);
    return Wording::tr("Row %1 of %2, %3 next (%4)").arg(next.row).arg(boat.plan.lastRow).arg(side, name);
}

int afterRow(const Boat& boat, int laid, bool forward) {
    const int pieces = boat.pieces();
    if (forward) {
        if (laid >= pieces)
            return pieces;
        const int row = pieceAt(boat, laid).row;
        while (laid < pieces && pieceAt(boat, laid).row == row)
            ++laid;
        return laid;
    }
    if (laid <= 0)
        return 0;
    const int row = pieceAt(boat, laid - 1).row;
    while (laid > 0 && pieceAt(boat, laid - 1).row == row)
        --laid;
    return laid;
}

} // namespace sheerlay::ui
