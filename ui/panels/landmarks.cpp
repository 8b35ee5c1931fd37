#include "ui/panels/landmarks.hpp"

#include "ui/scene/words.hpp"

#include <algorithm>

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
    std::vector<Landmark> found;
    const core::Marks& marks = boat.plan.marks;
    const auto weave = [&](const std::optional<core::RowRange>& rows, const QString& name) {
        if (!rows)
            return;
        if (const int laid = laidThroughRow(boat, rows->last); laid > 0)
            found.push_back({name, laid});
    };
    const auto closing = [&](const std::optional<int>& row, const QString& name) {
        if (!row)
            return;
        if (const int laid = laidBeforeRow(boat, *row); laid >= 0)
            found.push_back({name, laid});
    };
    weave(marks.weaveBow, QStringLiteral("bow weave ends"));
    weave(marks.weaveStern, QStringLiteral("stern weave ends"));
    closing(marks.closingBow, QStringLiteral("bow closing begins"));
    closing(marks.closingStern, QStringLiteral("stern closing begins"));
    for (int i = 0; i < boat.pieces(); ++i) {
        if (pieceAt(boat, i).kind == core::StripKind::Shutter) {
            found.push_back({QStringLiteral("shutter"), i});
            break;
        }
    }
    std::stable_sort(
        found.begin(), found.end(), [](const Landmark& a, const Landmark& b) { return a.laid < b.laid; });
    // a bow and a stern that meet their landmark together need one word for both
    for (std::size_t i = 1; i < found.size(); ++i) {
        if (found[i].laid != found[i - 1].laid)
            continue;
        const bool bothWeave = found[i].name.contains(QStringLiteral("weave")) &&
                               found[i - 1].name.contains(QStringLiteral("weave"));
        const bool bothClosing = found[i].name.contains(QStringLiteral("closing")) &&
                                 found[i - 1].name.contains(QStringLiteral("closing"));
        if (!bothWeave && !bothClosing)
            continue;
        found[i - 1].name = bothWeave ? QStringLiteral("weave ends") : QStringLiteral("closing begins");
        found.erase(found.begin() + static_cast<std::ptrdiff_t>(i));
        --i;
    }
    return found;
}

QString layingText(const Boat& boat, int laid) {
    const int pieces = boat.pieces();
    if (pieces == 0)
        return QStringLiteral("There is nothing to lay");
    if (laid >= pieces)
        return QStringLiteral("All %1 pieces are laid").arg(pieces);
    const core::Strip& next = pieceAt(boat, laid);
    const QString name = toQString(next.id);
    QString side = QStringLiteral("over both sides");
    if (next.side != core::Side::Centre)
        side = next.side == core::Side::Port ? QStringLiteral("port") : QStringLiteral("starboard");
    if (next.kind == core::StripKind::Shutter)
        return QStringLiteral("The shutter next: %1, %2").arg(name, side);
    if (next.row < 0)
        return QStringLiteral("Row %1 above the start: %2 next").arg(-next.row).arg(name);
    return QStringLiteral("Row %1 of %2, %3 next (%4)").arg(next.row).arg(boat.plan.lastRow).arg(side, name);
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
