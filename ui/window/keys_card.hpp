#pragma once

#include <QFrame>
#include <QKeySequence>
#include <QPointer>
#include <QString>
#include <QStringList>

class QGridLayout;

namespace sheerlay::ui {

/// A card over the window that says what the keys do; a click or Esc puts it away.
class KeysCard : public QFrame {
    Q_OBJECT
public:
    explicit KeysCard(QWidget* window);

    void head(const QString& text);
    void add(const QKeySequence& keys, const QString& does);
    /// Shows the card in the window's middle, or puts it away.
    void turn();
    /// The same, with the keyboard held as long as it shows: the next key puts it away and does nothing else.
    void turnInHand();
    /// "F1 this card", one line a key.
    [[nodiscard]] const QStringList& lines() const noexcept { return m_lines; }

protected:
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    QPointer<QWidget> m_before; ///< what had the keyboard
    QGridLayout* m_grid;
    QStringList m_lines;
};

} // namespace sheerlay::ui
