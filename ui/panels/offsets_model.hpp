#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "core/table_edit/cell_loft.hpp"
#include "core/table_edit/paste_cells.hpp"
#include "core/table_edit/set_cells.hpp"
#include "core/table_edit/table_grid.hpp"

#include <QAbstractTableModel>
#include <QString>

#include <memory>
#include <optional>
#include <vector>

namespace sheerlay::ui {

/// The table of offsets as a grid: a row per line of the table, a column per station, each cell as it is
/// written. Holds no edits of its own but entries that can't be read: these stay in their cells, with what
/// would do, until they are mended or given up. What the loft has at a cell colours it.
class OffsetsModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role { DoubtfulRole = Qt::UserRole, CorrectedRole, RefusedRole };

    explicit OffsetsModel(QObject* parent = nullptr);

    void setProject(const core::Project& project);
    /// The loft of a project, which may be the one from before the last edit: cells that changed since then
    /// say nothing of it. Null clears.
    void setLoft(const core::Project& project, std::shared_ptr<const core::LoftedHull> hull);
    void setUnits(core::Units units);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant
    headerData(int section, Qt::Orientation orientation, int role = Qt::DisplayRole) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;

    /// Puts entries into the table; those that can't stand there are kept as refused.
    /// @param what  "Paste", for the name of an edit of several cells
    void enter(const std::vector<core::CellEntry>& entries, const QString& what);
    /// Lets go of the refused entry of a cell; the table's own number shows again.
    void giveUp(const QModelIndex& index);
    [[nodiscard]] int refusedCount() const { return static_cast<int>(m_refused.size()); }

    /// Everything there is to say of a cell, in whole sentences.
    [[nodiscard]] QString words(const QModelIndex& index) const;
    /// The doubt about a cell's number, while it is still the doubted one.
    [[nodiscard]] std::optional<core::DoubtfulCell> doubt(const QModelIndex& index) const;
    /// A number as the cell would print it.
    [[nodiscard]] QString printedAs(double millimetres, const QModelIndex& index) const;
    [[nodiscard]] QString replacedAt(const QModelIndex& index) const;
    [[nodiscard]] const core::Project& project() const noexcept { return m_project; }
    [[nodiscard]] const std::vector<core::GridLine>& lines() const noexcept { return m_lines; }

Q_SIGNALS:
    /// Some of the entries stand in this project.
    void edited(const QString& name, const sheerlay::core::Project& project);
    void refusedChanged();

private:
    /// An entry that can't stand in its cell.
    struct Refused {
        core::RefusedEntry what;
        core::GridLine line;
        double x = 0.0; ///< mm, of its station: finds it again when stations come and go
    };

    [[nodiscard]] const core::Station& station(const QModelIndex& index) const;
    [[nodiscard]] const core::GridLine& line(const QModelIndex& index) const;
    [[nodiscard]] const Refused* refusedAt(const QModelIndex& index) const;
    /// What the loft has there, if the cell is still the one it was made from.
    [[nodiscard]] const core::CellLoft* loftAt(const QModelIndex& index) const;
    [[nodiscard]] QVariant background(const QModelIndex& index) const;
    void keepBlankLines(std::vector<core::GridLine>& lines, const core::Project& project) const;
    void findRefusedAgain();
    void refreshAll();

    core::Project m_project;
    core::Units m_units = core::Units::Millimetres;
    std::vector<core::GridLine> m_lines;
    std::vector<Refused> m_refused;
    std::shared_ptr<const core::LoftedHull> m_hull;
    std::vector<core::GridLine> m_loftLines;
    std::vector<core::Station> m_loftStations;
    std::vector<std::vector<std::optional<core::CellLoft>>> m_loft; ///< by station, then line
};

} // namespace sheerlay::ui
