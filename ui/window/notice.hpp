#pragma once

#include <QFrame>
#include <QStringList>

#include <functional>
#include <utility>
#include <vector>

class QHBoxLayout;
class QLabel;
class QToolButton;

namespace sheerlay::ui {

/// A calm strip below the benches that says what is the matter with the file, in place; hidden when all is
/// well.
class Notice : public QFrame {
    Q_OBJECT
public:
    enum class Weight { Trouble, Remark };

    /// What can be done about it: a button each. The notice goes away when one is pressed.
    using Answers = std::vector<std::pair<QString, std::function<void()>>>;

    explicit Notice(QWidget* parent = nullptr);
    /// @param lines  the first is the head; at most eight more are shown, the rest counted
    void say(const QStringList& lines, Weight weight, const Answers& answers = {});
    /// Other words for what is going on; what can be done about it stays.
    void retell(const QStringList& lines);
    void clear();
    [[nodiscard]] QString text() const;
    [[nodiscard]] const std::vector<QToolButton*>& answers() const noexcept { return m_answers; }

private:
    void dropAnswers();

    QHBoxLayout* m_layout;
    std::vector<QToolButton*> m_answers;
    QLabel* m_text;
    QToolButton* m_close;
};

} // namespace sheerlay::ui
