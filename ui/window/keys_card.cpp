#include "ui/window/keys_card.hpp"

#include "ui/scene/palette.hpp"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QMouseEvent>

namespace sheerlay::ui {

KeysCard::KeysCard(QWidget* window) : QFrame(window), m_grid(new QGridLayout(this)) {
    setAccessibleName(tr("What the keys do"));
    setStyleSheet(
        QStringLiteral("sheerlay--ui--KeysCard { background: %1; border: 2px solid %2; border-radius: 8px; }")
            .arg(QColor::fromRgb(palette::paper).name(), QColor::fromRgb(palette::cedar).name()));
    m_grid->setContentsMargins(28, 18, 28, 20);
    m_grid->setHorizontalSpacing(18);
    m_grid->setVerticalSpacing(4);
    hide();
}

void KeysCard::head(const QString& text) {
    auto* label = new QLabel(text);
    label->setStyleSheet(QStringLiteral("font-size: 15px; font-weight: 600; padding-top: 6px;"));
    m_grid->addWidget(label, m_grid->rowCount(), 0, 1, 2);
}

void KeysCard::add(const QKeySequence& keys, const QString& does) {
    const QString name = keys.toString(QKeySequence::NativeText);
    auto* key = new QLabel(name);
    key->setStyleSheet(QStringLiteral("font-weight: 600;"));
    const int row = m_grid->rowCount();
    m_grid->addWidget(key, row, 0);
    m_grid->addWidget(new QLabel(does), row, 1);
    m_lines << name + u' ' + does;
}

void KeysCard::turn() {
    if (isVisible()) {
        hide();
        return;
    }
    adjustSize();
    move((parentWidget()->width() - width()) / 2, (parentWidget()->height() - height()) / 2);
    show();
    raise();
}

void KeysCard::turnInHand() {
    if (!isVisible())
        m_before = window()->focusWidget() != nullptr ? window()->focusWidget() : window();
    turn();
    if (isVisible())
        setFocus();
}

void KeysCard::keyPressEvent(QKeyEvent* event) {
    event->accept();
    hide();
}

void KeysCard::hideEvent(QHideEvent* event) {
    QFrame::hideEvent(event);
    if (m_before)
        m_before->setFocus();
    m_before.clear();
}

void KeysCard::mousePressEvent(QMouseEvent* event) {
    event->accept();
    hide();
}

} // namespace sheerlay::ui
