#pragma once

#include "core/project/finding.hpp"
#include "core/project/project.hpp"
#include "core/project/put_aside.hpp"

#include <QString>
#include <QWidget>

#include <functional>
#include <utility>
#include <vector>

class QLabel;
class QLineEdit;
class QPushButton;
class QToolButton;

namespace sheerlay::ui {

class FindingsList;

/// The findings with what can be done about them: show some levels or some words only, put one aside with a
/// reason, look at those put aside and take one back.
class FindingsPane : public QWidget {
    Q_OBJECT
public:
    explicit FindingsPane(QWidget* parent = nullptr);

    /// Keeps the finding in hand and the reason being typed where it is still there.
    /// @param findings  of the boat shown
    /// @param asides    of the project; those that cover no finding are shown with the ones put aside
    /// @param all       more may be found yet where false, and then no entry is said to cover none
    void
    setFindings(std::vector<core::Finding> findings, std::vector<core::PutAside> asides, bool all = true);
    /// @param name  of the bench where a finding's part is, other than this one; empty: none
    void setBenchOf(std::function<QString(const core::Finding&)> name) { m_benchOf = std::move(name); }
    void setUnits(core::Units units);

    [[nodiscard]] FindingsList* list() const { return m_list; }
    [[nodiscard]] QLineEdit* words() const { return m_words; }
    [[nodiscard]] QLineEdit* reason() const { return m_reason; }
    [[nodiscard]] QPushButton* act() const { return m_act; }            ///< puts aside, or takes back
    [[nodiscard]] QToolButton* asideButton() const { return m_asides; } ///< shows those put aside
    [[nodiscard]] QPushButton* goThere() const { return m_goThere; }    ///< to the bench of its part
    [[nodiscard]] QToolButton* levelButton(core::Level level) const;
    [[nodiscard]] QString head() const;
    [[nodiscard]] QString said() const; ///< about the finding in hand

Q_SIGNALS:
    void chosen(const sheerlay::core::Finding& finding);
    /// The builder wants to see its part on the bench that setBenchOf() names.
    void followed(const sheerlay::core::Finding& finding);
    /// The builder put a finding aside or took one back. @param name  of the edit
    void asidesChanged(const QString& name, const std::vector<sheerlay::core::PutAside>& asides);

private:
    QWidget* makeHead();
    QWidget* makeFilter();
    QWidget* makeFoot();
    void filter();
    void refreshFoot();
    void actOnCurrent();
    void follow();

    std::vector<core::Finding> m_findings; ///< of the boat, as given
    std::vector<core::PutAside> m_entries; ///< of the project
    FindingsList* m_list;
    QLabel *m_head, *m_said;
    QLineEdit *m_words, *m_reason;
    QToolButton *m_asides, *m_stops, *m_cautions, *m_notes;
    QWidget* m_foot = nullptr;
    QPushButton *m_act, *m_goThere;
    std::function<QString(const core::Finding&)> m_benchOf;
};

} // namespace sheerlay::ui
