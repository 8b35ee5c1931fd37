#include "ui/panels/offsets_model.hpp"

#include "ui/panels/cell_words.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/words.hpp"

#include <QColor>

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlay::ui {
namespace {

using Kind = core::GridLine::Kind;

constexpr double quiet = 2.0;   // spreads of the rounding up to which a cell has no colour
constexpr double deepest = 8.0; // spreads from which it has all of it

QColor tint(QRgb colour, double strength) {
    QColor tinted = QColor::fromRgb(colour);
    tinted.setAlphaF(static_cast<float>(strength));
    return tinted;
}

} // namespace

OffsetsModel::OffsetsModel(QObject* parent) : QAbstractTableModel(parent) {}

void OffsetsModel::setProject(const core::Project& project) {
    std::vector<core::GridLine> lines = core::gridLines(project.hull);
    keepBlankLines(lines, project);
    const bool same = lines == m_lines && project.hull.stations.size() == m_project.hull.stations.size();
    if (!same)
        beginResetModel();
    m_project = project;
    m_lines = std::move(lines);
    findRefusedAgain();
    if (!same)
        endResetModel();
    refreshAll();
}

/// A line whose last number was cleared stays, so that it can be given again; not where the table was scaled
/// or another was opened.
void OffsetsModel::keepBlankLines(std::vector<core::GridLine>& lines, const core::Project& project) const {
    const auto among = [](const std::vector<core::GridLine>& list, const core::GridLine& wanted) {
        return std::ranges::any_of(list, [&](const core::GridLine& l) { return core::sameLine(l, wanted); });
    };
    if (project.name != m_project.name ||
        !std::ranges::all_of(lines, [&](const core::GridLine& l) { return among(m_lines, l); }))
        return;
    for (const core::GridLine& old : m_lines)
        if ((old.kind == Kind::Waterline || old.kind == Kind::Buttock) && !among(lines, old))
            lines.push_back(old);
    core::sortLines(lines);
}

void OffsetsModel::setLoft(const core::Project& project, std::shared_ptr<const core::LoftedHull> hull) {
    m_hull = std::move(hull);
    m_loftStations = project.hull.stations;
    m_loftLines = core::gridLines(project.hull);
    m_loft.clear();
    if (m_hull)
        m_loft = core::loftOfCells(project.hull, *m_hull, m_loftLines);
    refreshAll();
}

void OffsetsModel::setUnits(core::Units units) {
    m_units = units;
    refreshAll();
}

void OffsetsModel::refreshAll() {
    if (rowCount() == 0 || columnCount() == 0)
        return;
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    Q_EMIT headerDataChanged(Qt::Horizontal, 0, columnCount() - 1);
}

/// Lines and stations may have come or gone: entries follow theirs.
void OffsetsModel::findRefusedAgain() {
    std::vector<Refused> kept;
    for (Refused& refused : m_refused) {
        const auto at = std::ranges::find_if(
            m_lines, [&](const core::GridLine& l) { return core::sameLine(l, refused.line); });
        const auto& stations = m_project.hull.stations;
        const auto own =
            std::ranges::find_if(stations, [&](const core::Station& s) { return s.x == refused.x; });
        if (at == m_lines.end() || own == stations.end())
            continue;
        refused.what.entry.cell = {static_cast<std::size_t>(at - m_lines.begin()),
                                   static_cast<std::size_t>(own - stations.begin())};
        kept.push_back(std::move(refused));
    }
    m_refused = std::move(kept);
    Q_EMIT refusedChanged();
}

int OffsetsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int OffsetsModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_project.hull.stations.size());
}

const core::Station& OffsetsModel::station(const QModelIndex& index) const {
    return m_project.hull.stations[static_cast<std::size_t>(index.column())];
}

const core::GridLine& OffsetsModel::line(const QModelIndex& index) const {
    return m_lines[static_cast<std::size_t>(index.row())];
}

const OffsetsModel::Refused* OffsetsModel::refusedAt(const QModelIndex& index) const {
    const core::GridCell cell{static_cast<std::size_t>(index.row()),
                              static_cast<std::size_t>(index.column())};
    const auto found =
        std::ranges::find_if(m_refused, [&](const Refused& r) { return r.what.entry.cell == cell; });
    return found == m_refused.end() ? nullptr : &*found;
}

const core::CellLoft* OffsetsModel::loftAt(const QModelIndex& index) const {
    const core::Station& now = station(index);
    const auto then =
        std::ranges::find_if(m_loftStations, [&](const core::Station& s) { return s.x == now.x; });
    const auto row = std::ranges::find_if(
        m_loftLines, [&](const core::GridLine& l) { return core::sameLine(l, line(index)); });
    if (m_loft.empty() || then == m_loftStations.end() || row == m_loftLines.end() ||
        core::cellValue(*then, *row) != core::cellValue(now, *row))
        return nullptr;
    const auto& loft = m_loft[static_cast<std::size_t>(then - m_loftStations.begin())]
                             [static_cast<std::size_t>(row - m_loftLines.begin())];
    return loft ? &*loft : nullptr;
}

std::optional<core::DoubtfulCell> OffsetsModel::doubt(const QModelIndex& index) const {
    if (!m_hull || refusedAt(index) != nullptr)
        return std::nullopt;
    const core::Station& now = station(index);
    const core::GridLine& at = line(index);
    for (const core::DoubtfulCell& doubtful : m_hull->doubtful) {
        const core::Station& then = m_loftStations.at(doubtful.station);
        const core::TablePoint* point = doubtful.kind == core::PointKind::Sheer  ? &then.sheer
                                        : doubtful.kind == core::PointKind::Keel ? &*then.keel
                                        : doubtful.kind == core::PointKind::Knuckle
                                            ? &*then.knuckle
                                            : &then.points.at(doubtful.point);
        if (then.x == now.x && core::pointOf(then, at) == point && core::givesHeight(at) == doubtful.height &&
            core::cellValue(now, at) == doubtful.printed)
            return doubtful;
    }
    return std::nullopt;
}

QString OffsetsModel::printedAs(double millimetres, const QModelIndex& index) const {
    return markedText(core::textLike(millimetres,
                                     core::cellText(station(index), line(index), m_project.units),
                                     m_project.hull,
                                     m_project.units));
}

QString OffsetsModel::replacedAt(const QModelIndex& index) const {
    return markedText(core::replacedText(station(index), line(index)));
}

QVariant OffsetsModel::background(const QModelIndex& index) const {
    if (refusedAt(index) != nullptr)
        return tint(palette::hard, 0.18);
    if (doubt(index))
        return tint(palette::clamp, 0.35);
    const core::CellLoft* loft = loftAt(index);
    if (loft == nullptr || m_hull->roundingSigma <= 0.0)
        return {};
    const double spreads = std::abs(loft->normal) / m_hull->roundingSigma;
    if (spreads <= quiet)
        return {};
    const double strength = 0.08 + 0.24 * std::min(1.0, (spreads - quiet) / (deepest - quiet));
    return tint(loft->normal > 0.0 ? palette::lineBlue : palette::cedar, strength);
}

QVariant OffsetsModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid())
        return {};
    const Refused* refused = refusedAt(index);
    switch (role) {
    case Qt::DisplayRole:
        return refused != nullptr ? toQString(refused->what.entry.text)
                                  : markedText(core::cellText(station(index), line(index), m_project.units));
    case Qt::EditRole: // as the file has it: a comma before three digits could mean thousands
        return refused != nullptr ? toQString(refused->what.entry.text)
                                  : toQString(core::cellText(station(index), line(index), m_project.units));
    case Qt::TextAlignmentRole:
        return QVariant(Qt::AlignRight | Qt::AlignVCenter);
    case Qt::BackgroundRole:
        return background(index);
    case Qt::ToolTipRole:
        return words(index);
    case DoubtfulRole:
        return doubt(index).has_value();
    case CorrectedRole:
        return refused == nullptr && !core::replacedText(station(index), line(index)).empty();
    case RefusedRole:
        return refused != nullptr;
    default:
        return {};
    }
}

QVariant OffsetsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (section < 0 || section >= (orientation == Qt::Horizontal ? columnCount() : rowCount()))
        return {};
    const auto at = static_cast<std::size_t>(section);
    if (role == Qt::TextAlignmentRole)
        return QVariant((orientation == Qt::Horizontal ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role == Qt::ToolTipRole && orientation == Qt::Horizontal)
        return tr("Station %1")
            .arg(markedText(core::cellText(m_project.hull.stations[at], {}, m_project.units)));
    if (role != Qt::DisplayRole)
        return {};
    return orientation == Qt::Horizontal
               ? markedText(core::cellText(m_project.hull.stations[at], {}, m_project.units))
               : lineLabel(m_lines[at]);
}

Qt::ItemFlags OffsetsModel::flags(const QModelIndex& index) const {
    return index.isValid() ? Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable : Qt::NoItemFlags;
}

bool OffsetsModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !index.isValid())
        return false;
    if (value.toString() == data(index, Qt::EditRole).toString())
        return true; // opened and left as it was
    enter({{{static_cast<std::size_t>(index.row()), static_cast<std::size_t>(index.column())},
            value.toString().toStdString()}},
          QString());
    return true;
}

void OffsetsModel::enter(const std::vector<core::CellEntry>& entries, const QString& what) {
    std::vector<core::CellEntry> all;
    std::vector<Refused> waiting;
    for (const core::CellEntry& entry : entries) {
        // blank in place of an entry that could not stand: the table's own number again
        const Refused* old =
            refusedAt(index(static_cast<int>(entry.cell.line), static_cast<int>(entry.cell.station)));
        if (old == nullptr || !entry.text.empty())
            all.push_back(entry);
    }
    const auto among = [&](const core::GridCell& cell) {
        return std::ranges::any_of(entries, [&](const core::CellEntry& e) { return e.cell == cell; });
    };
    // entries that waited for another number of their station may stand now
    for (const Refused& old : m_refused) {
        const core::GridCell cell = old.what.entry.cell;
        if (among(cell))
            continue;
        const bool beside = std::ranges::any_of(
            entries, [&](const core::CellEntry& e) { return e.cell.station == cell.station; });
        if (beside)
            all.push_back(old.what.entry);
        else
            waiting.push_back(old);
    }
    core::EditedTable edited = core::setCells(m_project, m_lines, all);
    std::vector<core::CellEntry> taken;
    for (const core::CellEntry& entry : entries)
        if (std::ranges::none_of(edited.refused, [&](const auto& r) { return r.entry.cell == entry.cell; }))
            taken.push_back(entry);
    m_refused = std::move(waiting);
    for (core::RefusedEntry& refused : edited.refused) {
        const core::GridCell cell = refused.entry.cell;
        m_refused.push_back(
            {std::move(refused), m_lines[cell.line], m_project.hull.stations[cell.station].x});
    }
    refreshAll();
    Q_EMIT refusedChanged();
    if (edited.project == m_project)
        return;
    const std::vector<core::CellEntry>& named = taken.empty() ? all : taken;
    const QString name = named.size() == 1 ? heardText(core::cellName(m_project, m_lines, named.front().cell))
                                           : tr("%1 %2 cells", "Paste 12 cells").arg(what).arg(named.size());
    Q_EMIT this->edited(name, edited.project);
}

void OffsetsModel::giveUp(const QModelIndex& index) {
    const core::GridCell cell{static_cast<std::size_t>(index.row()),
                              static_cast<std::size_t>(index.column())};
    std::erase_if(m_refused, [&](const Refused& r) { return r.what.entry.cell == cell; });
    Q_EMIT dataChanged(index, index);
    Q_EMIT refusedChanged();
}

QString OffsetsModel::words(const QModelIndex& index) const {
    if (!index.isValid())
        return {};
    CellSaid said;
    const Refused* refused = refusedAt(index);
    if (refused != nullptr)
        said.refused = refused->what;
    if (const core::CellLoft* loft = loftAt(index))
        said.loft = *loft;
    said.doubt = doubt(index);
    const core::GridCell cell{static_cast<std::size_t>(index.row()),
                              static_cast<std::size_t>(index.column())};
    return cellWords(m_project, m_lines, cell, said, m_units);
}

} // namespace sheerlay::ui
