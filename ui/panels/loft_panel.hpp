#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"

#include <QWidget>

#include <memory>
#include <string>
#include <vector>

class QLabel;
class QLayout;
class QTableWidget;

namespace sheerlay::ui {

class FindingsList;
class TypedField;

/// How near the loft runs to the table of offsets, station by station, and what was found in the table.
class LoftPanel : public QWidget {
    Q_OBJECT
public:
    explicit LoftPanel(QWidget* parent = nullptr);
    /// Null: no boat is open.
    void setHull(std::shared_ptr<const core::LoftedHull> hull);
    /// Findings that the project has put aside are shown as such.
    void setAsides(std::vector<core::PutAside> asides);
    void setUnits(core::Units units);
    [[nodiscard]] QTableWidget* table() const { return m_table; }
    [[nodiscard]] FindingsList* findings() const { return m_findings; }
    [[nodiscard]] TypedField* fairing() const { return m_fairing; }
    /// As the project on the desk has it.
    void setFairing(double fairing);

Q_SIGNALS:
    /// The loft is to follow the table that closely; judged by whoever hears it.
    void fairingAsked(double fairing);
    void refused(const QString& why);

private:
    [[nodiscard]] QLayout* makeFairing();
    void refill();

    std::shared_ptr<const core::LoftedHull> m_hull;
    std::vector<core::PutAside> m_asides;
    core::Units m_units = core::Units::Millimetres;
    QLabel* m_summary;
    TypedField* m_fairing;
    QTableWidget* m_table;
    QLabel* m_findingsHead;
    FindingsList* m_findings;
};

} // namespace sheerlay::ui
