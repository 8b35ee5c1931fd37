#pragma once

#include "core/planking/start_table.hpp"
#include "core/project/project.hpp"

#include <QWidget>

#include <vector>

class QLabel;
class QTableWidget;
class QToolButton;

namespace sheerlay::ui {

/// Start lines side by side: what each asks of the builder. The one in use is marked; any can be taken.
class StartComparison : public QWidget {
    Q_OBJECT
public:
    explicit StartComparison(QWidget* parent = nullptr);

    /// @param text  what is being done, while there is nothing to show
    void wait(const QString& text);
    /// @param inUse  marked, where the table has it
    void show(std::vector<core::StartTableRow> rows, const core::StartLine& inUse);
    void setUnits(core::Units units);
    [[nodiscard]] QTableWidget* table() const { return m_table; }
    [[nodiscard]] QToolButton* takeButton() const { return m_take; }
    [[nodiscard]] const std::vector<core::StartTableRow>& rows() const noexcept { return m_rows; }

Q_SIGNALS:
    void chosen(const sheerlay::core::StartLine& line);
    void closed();

private:
    void refill();

    std::vector<core::StartTableRow> m_rows;
    core::StartLine m_inUse;
    core::Units m_units = core::Units::Millimetres;
    QLabel* m_head;
    QTableWidget* m_table;
    QToolButton* m_take;
};

} // namespace sheerlay::ui
