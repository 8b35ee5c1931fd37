#pragma once

#include <QFrame>

class QLabel;
class QToolButton;

namespace sheerlay::ui {

/// A slip of paper that hangs from the bench strip while something takes long: what is being done, and a
/// button that gives it up. It lies over the window, so that nothing below is laid out or drawn anew when it
/// comes and goes.
class WorkSlip : public QFrame {
    Q_OBJECT
public:
    /// @param above  the slip hangs from its lower edge, in the middle; both lie in `over`
    WorkSlip(QWidget* over, QWidget* above);

    void setText(const QString& text);
    [[nodiscard]] QString text() const;
    /// @param canStop  there is something to go back to
    void hang(bool canStop);

Q_SIGNALS:
    void stopped();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void place();

    QWidget* m_above;
    QLabel* m_text;
    QToolButton* m_stop;
};

} // namespace sheerlay::ui
