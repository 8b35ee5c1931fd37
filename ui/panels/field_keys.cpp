#include "ui/panels/field_keys.hpp"

#include "ui/panels/typed_field.hpp"

#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QFocusEvent>
#include <QKeyEvent>
#include <QLineEdit>

namespace sheerlay::ui {
namespace {

/// Where a field's text is typed; null where it takes none.
QLineEdit* lineOf(QWidget* field) {
    if (auto* line = qobject_cast<QLineEdit*>(field))
        return line;
    if (qobject_cast<QAbstractSpinBox*>(field) != nullptr)
        return field->findChild<QLineEdit*>();
    if (const auto* box = qobject_cast<QComboBox*>(field))
        return box->lineEdit();
    return nullptr;
}

/// A cell's editor: what it holds goes into the model by its view.
bool inTable(const QWidget* field) {
    for (const QWidget* parent = field->parentWidget(); parent != nullptr; parent = parent->parentWidget())
        if (qobject_cast<const QAbstractItemView*>(parent) != nullptr)
            return true;
    return false;
}

bool isEscape(const QKeyEvent& key) {
    return key.key() == Qt::Key_Escape && key.modifiers() == Qt::NoModifier;
}

/// What stands there is what undo begins at.
void settle(QLineEdit* line) {
    const bool modified = line->isModified();
    line->setText(line->text());
    line->setModified(modified);
}

void putBack(QLineEdit* line) {
    if (auto* typed = qobject_cast<TypedField*>(line)) {
        typed->putBack();
        return;
    }
    while (line->isUndoAvailable())
        line->undo();
    line->setText(line->text());
}

/// The focus comes from another field, not from another window or a menu.
bool isEntered(const QFocusEvent& focus) {
    const Qt::FocusReason why = focus.reason();
    return why != Qt::ActiveWindowFocusReason && why != Qt::PopupFocusReason && why != Qt::MenuBarFocusReason;
}

} // namespace

FieldKeys::FieldKeys(QWidget* window) : QObject(window), m_window(window) {
    QApplication::instance()->installEventFilter(this);
}

bool FieldKeys::eventFilter(QObject* watched, QEvent* event) {
    const QEvent::Type type = event->type();
    if (type != QEvent::ShortcutOverride && type != QEvent::KeyPress && type != QEvent::FocusIn)
        return false;
    auto* field = qobject_cast<QWidget*>(watched);
    if (field == nullptr || field->window() != m_window)
        return false;
    if (field == m_window)
        return type == QEvent::KeyPress && goOn(*static_cast<QKeyEvent*>(event));
    QLineEdit* line = lineOf(field);
    if (line == nullptr)
        return false;
    if (type == QEvent::FocusIn) {
        if (isEntered(*static_cast<QFocusEvent*>(event)) && qobject_cast<TypedField*>(line) == nullptr)
            settle(line);
        return false;
    }
    auto& key = *static_cast<QKeyEvent*>(event);
    return type == QEvent::ShortcutOverride ? passOn(field, line, key) : press(field, line, key);
}

bool FieldKeys::passOn(QWidget* field, QLineEdit* line, QKeyEvent& key) const {
    const bool table = inTable(field);
    if (isEscape(key) && !table) {
        key.accept(); // not yet the window's
        return true;
    }
    const bool idleUndo = key.matches(QKeySequence::Undo) && !line->isUndoAvailable();
    const bool idleRedo = key.matches(QKeySequence::Redo) && !line->isRedoAvailable();
    if (!idleUndo && !idleRedo)
        return false;
    if (table) { // else it would write the number of before the step back into its cell
        QKeyEvent shut(QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier);
        QCoreApplication::sendEvent(field, &shut);
    }
    key.ignore();
    return true;
}

bool FieldKeys::press(QWidget* field, QLineEdit* line, QKeyEvent& key) {
    if (m_entering || inTable(field))
        return false;
    if (isEscape(key)) {
        putBack(line);
        m_left = field;
        m_window->setFocus();
        return true;
    }
    if (key.key() != Qt::Key_Return && key.key() != Qt::Key_Enter)
        return false;
    enter(field, line, key);
    return true;
}

void FieldKeys::enter(QWidget* field, QLineEdit* line, QKeyEvent& key) {
    const auto* spin = qobject_cast<QAbstractSpinBox*>(field);
    const auto* typed = qobject_cast<TypedField*>(line);
    const bool asked = line->isModified();
    const bool takes = typed != nullptr || (spin != nullptr && !spin->keyboardTracking());
    const QPointer<QWidget> still = field; // a form may be made anew for what is typed
    m_entering = true;
    QCoreApplication::sendEvent(field, &key);
    m_entering = false;
    if (!still) {
        m_window->setFocus();
        return;
    }
    if (spin != nullptr)
        settle(line);
    // a field that was emptied waits for the next one
    const bool taken = takes || (asked && !line->isModified() && !line->text().isEmpty());
    if (!taken || (typed != nullptr && typed->isRefused()))
        return;
    m_left = field;
    m_window->setFocus();
}

bool FieldKeys::goOn(QKeyEvent& key) {
    const bool tab = key.key() == Qt::Key_Tab || key.key() == Qt::Key_Backtab;
    QWidget* from = m_left;
    if (!tab || from == nullptr || !from->isVisible() || from->window() != m_window)
        return false;
    m_left.clear();
    from->setFocus(Qt::TabFocusReason);
    QCoreApplication::sendEvent(from, &key);
    return true;
}

} // namespace sheerlay::ui
