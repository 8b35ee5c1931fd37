#pragma once

#include <QEvent>
#include <QObject>
#include <QWidget>

namespace sheerlay::ui {

/// A wheel that scrolls a panel must not turn a choice it happens to pass over.
class QuietWheel : public QObject {
public:
    using QObject::QObject;

    void guard(QWidget* field) {
        field->setFocusPolicy(Qt::StrongFocus);
        field->installEventFilter(this);
    }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        const auto* widget = qobject_cast<QWidget*>(watched);
        if (event->type() != QEvent::Wheel || (widget != nullptr && widget->hasFocus()))
            return QObject::eventFilter(watched, event);
        event->ignore();
        return true;
    }
};

} // namespace sheerlay::ui
