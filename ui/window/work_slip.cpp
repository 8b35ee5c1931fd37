#include "ui/window/work_slip.hpp"

#include "ui/scene/palette.hpp"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

#include <algorithm>

namespace sheerlay::ui {
namespace {

constexpr int roomForText = 250; // pixels; a percentage that grows must not move the slip

} // namespace

WorkSlip::WorkSlip(QWidget* over, QWidget* above)
    : QFrame(over), m_above(above), m_text(new QLabel(this)), m_stop(new QToolButton(this)) {
    setStyleSheet(
        QStringLiteral("sheerlay--ui--WorkSlip { background: %1; border: 1px solid %2; border-top: none; "
                       "border-bottom-left-radius: 6px; border-bottom-right-radius: 6px; }")
            .arg(QColor::fromRgb(palette::bench).name(), QColor::fromRgb(palette::cedar).name()));
    m_text->setMinimumWidth(roomForText);
    m_stop->setObjectName(QStringLiteral("stopPlanning"));
    m_stop->setText(tr("Stop"));
    m_stop->setToolTip(tr("Gives up this plan and takes back the change that asked for it (Esc)"));
    m_stop->setFocusPolicy(Qt::NoFocus);
    connect(m_stop, &QToolButton::clicked, this, &WorkSlip::stopped);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(14, 3, 6, 3);
    layout->addWidget(m_text, 1);
    layout->addWidget(m_stop);
    over->installEventFilter(this);
    hide();
}

void WorkSlip::setText(const QString& text) {
    m_text->setText(text);
}

QString WorkSlip::text() const {
    return m_text->text();
}

void WorkSlip::hang(bool canStop) {
    m_stop->setVisible(canStop);
    place();
    show();
    raise();
}

void WorkSlip::place() {
    const int wide = std::min(sizeHint().width(), parentWidget()->width());
    resize(wide, sizeHint().height());
    move((parentWidget()->width() - wide) / 2, m_above->geometry().bottom());
}

bool WorkSlip::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize && isVisible())
        place();
    return QFrame::eventFilter(watched, event);
}

} // namespace sheerlay::ui
