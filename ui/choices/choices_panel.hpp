#pragma once

#include "core/project/project.hpp"
#include "ui/choices/choice_form.hpp"

#include <QString>
#include <QWidget>

#include <optional>
#include <set>
#include <vector>

class QScrollArea;

namespace sheerlay::ui {

class QuietWheel;
class RefusalLine;

/// A form beside the pages it changes: fields under headings that fold, and buttons for what may be added.
/// Every change is one edit with a name; the panel itself changes nothing.
class ChoicesPanel : public QWidget {
    Q_OBJECT
public:
    explicit ChoicesPanel(FormOf form, QWidget* parent = nullptr);

    /// What the project says; none empties the panel. Does not emit changed().
    void setProject(const std::optional<core::Project>& project);
    void setUnits(core::Units units);
    /// What is wrong with the last entry, and what would do, told below the form, where it moves no field;
    /// empty when all is well. What was typed stays in its field, marked; any other choice goes back to what
    /// the project says.
    void say(const QString& text);
    [[nodiscard]] QString said() const;
    /// Name of the edit asked for last, "Strongback: width".
    [[nodiscard]] const QString& asked() const noexcept { return m_asked; }

    /// The widget of a field; null where there is none.
    [[nodiscard]] QWidget* field(const QString& group, const QString& label) const;
    [[nodiscard]] QStringList groups() const;
    /// Folds a group up or down.
    void fold(const QString& group, bool folded);

Q_SIGNALS:
    /// The builder decided something. @param name  of the edit
    void changed(const QString& name, const sheerlay::core::Project& next);

private:
    struct Shown {
        QString group;
        ChoiceField field;
        QWidget* widget = nullptr;
    };

    void rebuild();
    void refill();
    QWidget* makeGroup(const ChoiceGroup& group);
    QWidget* makeAdders();
    QWidget* makeField(const QString& group, const ChoiceField& field);
    void decide(const QString& group, const ChoiceField& field, const ChoiceValue& value);
    void ask(const QString& name, core::Project next);

    FormOf m_formOf;
    ChoiceForm m_form;
    std::optional<core::Project> m_project;
    core::Units m_units = core::Units::Millimetres;
    RefusalLine* m_problem;
    QScrollArea* m_scroll;
    QuietWheel* m_wheel;
    std::vector<Shown> m_shown;
    std::set<QString> m_turned; ///< groups folded or unfolded by hand
    QString m_asked;
    bool m_filling = false;
};

} // namespace sheerlay::ui
