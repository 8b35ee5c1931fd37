#pragma once

#include "core/project/finding.hpp"
#include "core/project/project.hpp"

#include <QListWidget>
#include <QString>

#include <vector>

namespace sheerlay::ui {

/// Findings, heaviest first: level and place in one line, the sentence below it.
class FindingsList : public QListWidget {
    Q_OBJECT
public:
    explicit FindingsList(QWidget* parent = nullptr);

    /// Sorts by level, keeping the given order within each.
    void setFindings(std::vector<core::Finding> findings);
    void setUnits(core::Units units);
    /// Goes to the next finding, round and round; none when there is none.
    void next();
    [[nodiscard]] const std::vector<core::Finding>& findings() const noexcept { return m_findings; }
    /// "2 stops, 5 cautions, 3 notes"
    [[nodiscard]] QString summary() const;

Q_SIGNALS:
    void chosen(const sheerlay::core::Finding& finding);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void refill();

    std::vector<core::Finding> m_findings;
    core::Units m_units = core::Units::Millimetres;
};

/// "caution · S12 · 1250 mm from the bow"
[[nodiscard]] QString findingHead(const core::Finding& finding, core::Units units);

} // namespace sheerlay::ui
