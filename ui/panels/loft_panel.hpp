#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"

#include <QWidget>

#include <memory>
#include <string>
#include <vector>

class QLabel;
class QTableWidget;

namespace sheerlay::ui {

struct Boat;
class FindingsList;

/// The Lines bench: how near the loft runs to the table of offsets, station by station, and what was found in
/// the table.
class LoftPanel : public QWidget {
    Q_OBJECT
public:
    explicit LoftPanel(QWidget* parent = nullptr);
    void setBoat(std::shared_ptr<const Boat> boat);
    void setUnits(core::Units units);
    [[nodiscard]] QTableWidget* table() const { return m_table; }

private:
    void refill();

    std::shared_ptr<const Boat> m_boat;
    core::Units m_units = core::Units::Millimetres;
    QLabel* m_summary;
    QTableWidget* m_table;
    QLabel* m_findingsHead;
    FindingsList* m_findings;
};

} // namespace sheerlay::ui
