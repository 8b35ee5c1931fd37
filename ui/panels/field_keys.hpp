#pragma once

#include <QObject>
#include <QPointer>
#include <QWidget>

class QKeyEvent;
class QLineEdit;

namespace sheerlay::ui {

/// What keys do in the fields of a window, so that a typed value never holds the window's keys back. Undo and
/// redo are the field's while something is being typed there, else the project's. Enter on a value that is
/// taken, and Esc, which puts back what stood there, give the keys back to the window; Tab then goes on from
/// that field. Watches the whole application for as long as it lives; dialogs and other windows are left
/// alone.
class FieldKeys : public QObject {
public:
    /// @param window  owns this, and takes the keys
    explicit FieldKeys(QWidget* window);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    bool passOn(QWidget* field, QLineEdit* line, QKeyEvent& key) const;
    bool press(QWidget* field, QLineEdit* line, QKeyEvent& key);
    void enter(QWidget* field, QLineEdit* line, QKeyEvent& key);
    bool goOn(QKeyEvent& key);

    QWidget* m_window;
    QPointer<QWidget> m_left; ///< field that Tab goes on from
    bool m_entering = false;
};

} // namespace sheerlay::ui
