#pragma once

#include "core/project/project.hpp"

#include <QPointer>
#include <QWidget>

#include <vector>

class QGridLayout;

namespace sheerlay::ui {

class TypedField;

/// The rows that are to stand out: where each runs, a button to take it out, and one to add another. Asks for
/// every change; shows what it is given back.
class AccentFields : public QWidget {
    Q_OBJECT
public:
    explicit AccentFields(QWidget* parent = nullptr);

    void setAccents(const std::vector<core::Accent>& accents);
    void setUnits(core::Units units);
    /// The field whose entry is being decided or refused; null for none.
    [[nodiscard]] TypedField* inHand() const { return m_inHand; }

Q_SIGNALS:
    void decided(const std::vector<sheerlay::core::Accent>& accents);
    void refused(const QString& why); ///< what was typed can't be read, and what would do

private:
    void rebuild();
    void addRow(std::size_t index);
    /// Asks for the accents with one of them changed.
    template <class Change> void ask(Change change);

    std::vector<core::Accent> m_accents;
    core::Units m_units = core::Units::Millimetres;
    QWidget* m_rows = nullptr;
    QPointer<TypedField> m_inHand;
};

} // namespace sheerlay::ui
