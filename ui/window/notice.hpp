#pragma once

#include <QFrame>
#include <QStringList>

class QLabel;
class QToolButton;

namespace sheerlay::ui {

/// A calm strip below the benches that says what is the matter with the file, in place; hidden when all is
/// well.
class Notice : public QFrame {
    Q_OBJECT
public:
    enum class Weight { Trouble, Remark };

    explicit Notice(QWidget* parent = nullptr);
    /// @param lines  the first is the head; at most eight more are shown, the rest counted
    void say(const QStringList& lines, Weight weight);
    void clear();
    [[nodiscard]] QString text() const;

private:
    QLabel* m_text;
    QToolButton* m_close;
};

} // namespace sheerlay::ui
