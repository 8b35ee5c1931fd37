#include "ui/window/notice.hpp"

#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace sheerlay::ui {
namespace {

constexpr qsizetype mostLines = 8;

} // namespace

Notice::Notice(QWidget* parent)
    : QFrame(parent), m_layout(new QHBoxLayout(this)), m_text(new QLabel(this)),
      m_close(new QToolButton(this)) {
    m_text->setTextFormat(Qt::PlainText);
    m_text->setWordWrap(true);
    m_text->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_text->setFocusPolicy(Qt::NoFocus);
    m_close->setText(Wording::tr("Put away"));
    m_close->setToolTip(Wording::tr("Read; the window goes on as it is"));
    m_close->setFocusPolicy(Qt::TabFocus);
    connect(m_close, &QToolButton::clicked, this, &QWidget::hide);
    m_layout->setContentsMargins(16, 8, 12, 8);
    m_layout->addWidget(m_text, 1);
    m_layout->addWidget(m_close, 0, Qt::AlignTop);
    hide();
}

void Notice::dropAnswers() {
    for (QToolButton* answer : m_answers)
        answer->deleteLater(); // one of them may be the one that was pressed
    m_answers.clear();
}

void Notice::say(const QStringList& lines, Weight weight, const Answers& answers) {
    dropAnswers();
    for (const auto& [text, act] : answers) {
        auto* button = new QToolButton(this);
        button->setText(text);
        button->setFocusPolicy(Qt::TabFocus);
        connect(button, &QToolButton::clicked, this, [this, act = act] {
            clear();
            act();
        });
        m_layout->insertWidget(m_layout->count() - 1, button, 0, Qt::AlignTop);
        m_answers.push_back(button);
    }
    retell(lines);
    const QRgb edge = weight == Weight::Trouble ? palette::hard : palette::clamp;
    setStyleSheet(
        QStringLiteral("sheerlay--ui--Notice { background: %1; border: none; border-left: 6px solid %2; "
                       "border-bottom: 1px solid %3; }")
            .arg(QColor::fromRgb(palette::paper).name(),
                 QColor::fromRgb(edge).name(),
                 QColor::fromRgb(palette::rule).name()));
    m_close->setVisible(weight == Weight::Remark &&
                        answers.empty()); // trouble stays in sight until it is mended
    show();
}

void Notice::retell(const QStringList& lines) {
    QStringList shown = lines;
    if (shown.size() > mostLines + 1) {
        const qsizetype left = shown.size() - mostLines - 1;
        shown = shown.mid(0, mostLines + 1);
        shown << Wording::tr("… and %1 more").arg(left);
    }
    m_text->setText(shown.join(QLatin1Char('\n')));
}

void Notice::clear() {
    dropAnswers();
    m_text->clear();
    hide();
}

QString Notice::text() const {
    return m_text->text();
}

} // namespace sheerlay::ui
