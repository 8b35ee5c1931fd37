#pragma once

#include "core/project/project.hpp"

#include <QString>
#include <QStringList>

#include <functional>
#include <optional>
#include <variant>
#include <vector>

namespace sheerlay::ui {

/// What a field holds: nothing (it is left out), a number (mm, kg, g/m2, or a choice's place in its list), or
/// words.
using ChoiceValue = std::variant<std::monostate, double, QString>;

/// One thing the builder decides, described once: how it is called, what it means, and where in the project
/// it stands.
struct ChoiceField {
    enum class Kind { Length, Weight, Cloth, Number, Count, OneOf, Words };

    Kind kind = Kind::Length;
    QString label;
    QString meaning;   ///< a sentence or two in the trade's words
    QString leftOut;   ///< what holds where it is left empty; empty: it can't be
    QStringList oneOf; ///< of a choice, in order
    std::function<ChoiceValue(const core::Project&)> get;
    /// @return  why it can't be; empty when it is done
    std::function<QString(core::Project&, const ChoiceValue&)> put;
};

/// Fields under one heading.
struct ChoiceGroup {
    QString title;
    std::vector<ChoiceField> fields;
    std::function<void(core::Project&)> remove; ///< takes the whole out of the project; none: it stays
};

/// Something that the project does not have yet and may have.
struct ChoiceAdder {
    QString title; ///< what comes: "A seat"
    QString meaning;
    std::function<void(core::Project&)> add;
};

struct ChoiceForm {
    std::vector<ChoiceGroup> groups;
    std::vector<ChoiceAdder> adders;
    bool folded = false; ///< groups are shut at first
};

/// The form for a project as it stands: a group for each board, seat and paddler it has.
using FormOf = std::function<ChoiceForm(const core::Project&)>;

/// Moulds, strongback, holes for clamps.
[[nodiscard]] ChoiceForm mouldForm(const core::Project& project);
/// The strip, milling, scarfs, boards, woods of single rows.
[[nodiscard]] ChoiceForm stockForm(const core::Project& project);
/// Fit-out, covering, and what she carries.
[[nodiscard]] ChoiceForm fittingOutForm(const core::Project& project);

/// The parts of fittingOutForm().
[[nodiscard]] ChoiceForm fitoutForm(const core::Project& project);
[[nodiscard]] ChoiceForm coveringForm(const core::Project& project);
[[nodiscard]] ChoiceForm afloatForm(const core::Project& project);
[[nodiscard]] ChoiceForm pricesForm(const core::Project& project);

} // namespace sheerlay::ui
