#pragma once

#include <QLabel>
#include <QPointer>

#include <functional>

namespace sheerlay::ui {

class TypedField;

/// What is wrong with an entry of a form, and what would do. Stands below the form: there it is in sight
/// however far the form is scrolled, and moves none of its fields. The field keeps what was typed, marked.
class RefusalLine : public QLabel {
public:
    explicit RefusalLine(QWidget* parent = nullptr);

    /// What `act` has told is about this field.
    /// @param field  may be null, and may be gone when `act` comes back
    void about(TypedField* field, const std::function<void()>& act);
    /// @param text  empty when all is well; the field's name goes before it where it does not stand there
    /// @param putBack  fills the form with what holds
    void tell(const QString& text, const std::function<void()>& putBack);

private:
    QPointer<TypedField> m_field;
};

} // namespace sheerlay::ui
