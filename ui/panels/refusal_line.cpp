#include "ui/panels/refusal_line.hpp"

#include "ui/panels/typed_field.hpp"
#include "ui/scene/palette.hpp"

#include <QScrollArea>
#include <QTimer>

namespace sheerlay::ui {
namespace {

void bringIntoSight(TypedField* field) {
    for (QWidget* parent = field->parentWidget(); parent != nullptr; parent = parent->parentWidget())
        if (auto* scroll = qobject_cast<QScrollArea*>(parent)) {
            scroll->ensureWidgetVisible(field, 0, 4);
            return;
        }
}

} // namespace

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
    if (!m_field)
        return;
    m_field->refuse(typed);
    // the words may have taken its place; left by a click, it must not move what is clicked next
    TypedField* field = m_field;
    if (field->window()->focusWidget() == field)
        QTimer::singleShot(0, field, [field] { bringIntoSight(field); });
}

} // namespace sheerlay::ui
