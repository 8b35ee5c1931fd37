#pragma once

#include <QFrame>
#include <QKeySequence>
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
    /// "F1 this card", one line a key.
    [[nodiscard]] const QStringList& lines() const noexcept { return m_lines; }

protected:
    void mousePressEvent(QMouseEvent* event) override;

private:
    QGridLayout* m_grid;
    QStringList m_lines;
};

} // namespace sheerlay::ui
