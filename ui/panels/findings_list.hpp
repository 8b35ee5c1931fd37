#pragma once

#include "core/project/finding.hpp"
#include "core/project/project.hpp"

#include <QListWidget>
#include <QString>

#include <cstddef>
#include <vector>

namespace sheerlay::ui {

/// Which findings a list shows.
struct FindingFilter {
    bool stops = true, cautions = true, notes = true;
    bool asides = true; ///< those put aside
    QString words;      ///< all of them in a finding's text, code, strip or reason; case does not matter

    [[nodiscard]] bool passes(const core::Finding& finding) const;
};

/// Findings, heaviest first: level and place in one line, the sentence below it. Those put aside are grey,
/// with the reason.
class FindingsList : public QListWidget {
    Q_OBJECT
public:
    explicit FindingsList(QWidget* parent = nullptr);

    /// Sorts by level, keeping the given order within each.
    void setFindings(std::vector<core::Finding> findings);
    void setUnits(core::Units units);
    void setFilter(FindingFilter filter);
    [[nodiscard]] const FindingFilter& filter() const noexcept { return m_filter; }
    /// Goes to the next finding shown, round and round; none when there is none.
    void next();
    /// The finding in hand; none where no row is.
    [[nodiscard]] const core::Finding* current() const;
    [[nodiscard]] const std::vector<core::Finding>& findings() const noexcept { return m_findings; }
    /// "2 stops, 5 cautions, 3 notes"; those put aside are not counted.
    [[nodiscard]] QString summary() const;

    /// Goes back to a finding, as it was put aside or not; to none where it is not shown any more.
    void returnTo(const core::Finding& finding);

Q_SIGNALS:
    void chosen(const sheerlay::core::Finding& finding);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void refill();

    [[nodiscard]] const core::Finding& at(int row) const;

    std::vector<core::Finding> m_findings;
    std::vector<std::size_t> m_shown; ///< index of the finding in each row
    FindingFilter m_filter;
    core::Units m_units = core::Units::Millimetres;
};

/// "caution · S12 · 1250 mm from the bow"
[[nodiscard]] QString findingHead(const core::Finding& finding, core::Units units);

/// What it says, and on a line below the reason where it was put aside.
[[nodiscard]] QString findingText(const core::Finding& finding, core::Units units);

} // namespace sheerlay::ui
