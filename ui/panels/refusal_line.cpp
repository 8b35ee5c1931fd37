#include "ui/panels/refusal_line.hpp"

#include "ui/panels/typed_field.hpp"
#include "ui/scene/palette.hpp"

namespace sheerlay::ui {

RefusalLine::RefusalLine(QWidget* parent) : QLabel(parent) {
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
    setContentsMargins(14, 8, 12, 8);
    setStyleSheet(QStringLiteral("color: %1;").arg(QColor::fromRgb(palette::hard).name()));
    hide();
}

void RefusalLine::about(TypedField* field, const std::function<void()>& act) {
    m_field = field;
    act();
    m_field.clear();
}

void RefusalLine::tell(const QString& text, const std::function<void()>& putBack) {
    if (text.isEmpty()) {
        clear();
        hide();
        return;
    }
    const QString name = m_field ? m_field->accessibleName() : QString();
    const QString typed = m_field ? m_field->text() : QString();
    setText(text.startsWith(name) ? text : QStringLiteral("%1: %2").arg(name, text));
    show();
    putBack();
    if (m_field)
        m_field->refuse(typed);
}

} // namespace sheerlay::ui
