#pragma once

#include "core/project/project.hpp"

#include <QLineEdit>
#include <QString>

#include <optional>

namespace sheerlay::ui {

/// A field that a value is typed into, in the builder's notation and the units shown. Tells only of what was
/// typed and could be read.
class TypedField : public QLineEdit {
    Q_OBJECT
public:
    /// Length in mm; weight in kg; cloth in g/m2; a number as it is; a count is whole and not negative.
    enum class Kind { Length, Weight, Cloth, Number, Count };

    explicit TypedField(Kind kind, QWidget* parent = nullptr);

    /// What the field says; does not emit decided(). None empties it.
    void setValue(std::optional<double> value);
    void setUnits(core::Units units);
    /// What it said before something was typed that is not taken.
    void putBack() { refill(); }
    /// Shows what was typed and not taken, and marks the field until it is typed anew or put back.
    void refuse(const QString& typed);
    [[nodiscard]] bool isRefused() const noexcept { return m_refused; }

Q_SIGNALS:
    void decided(std::optional<double> value); ///< none where the field was emptied
    void refused(const QString& why);          ///< what was found and what would do

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void typed();
    void refill();
    [[nodiscard]] QString textOf(double value) const;

    Kind m_kind;
    core::Units m_units = core::Units::Millimetres;
    std::optional<double> m_value;
    bool m_refused = false;
};

} // namespace sheerlay::ui
