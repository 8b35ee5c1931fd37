#include "ui/window/on_screen.hpp"

#include <QEvent>
#include <QScreen>
#include <QTimer>
#include <QWidget>

#include <algorithm>

namespace sheerlay::ui {

QRect onScreen(const QRect& inner, const QRect& frame, const QRect& screen) {
    const QSize framing = frame.size() - inner.size();
    const QSize size = inner.size().boundedTo(screen.size() - framing);
    const QSize whole = size + framing;
    const int left = std::max(screen.left(), std::min(frame.left(), screen.right() + 1 - whole.width()));
    const int top = std::max(screen.top(), std::min(frame.top(), screen.bottom() + 1 - whole.height()));
    return {QPoint(left, top) + (inner.topLeft() - frame.topLeft()), size};
}

OnScreen::OnScreen(QWidget& window) : QObject(&window), m_window(window) {
    m_window.installEventFilter(this);
}

bool OnScreen::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::WindowActivate) {
        m_window.removeEventFilter(this);
        QTimer::singleShot(0, this, [this] { bring(); });
    }
    return QObject::eventFilter(watched, event);
}

void OnScreen::bring() {
    if (m_window.isMaximized() || m_window.isFullScreen())
        return;
    const QRect inner = m_window.geometry();
    const QRect place = onScreen(inner, m_window.frameGeometry(), m_window.screen()->availableGeometry());
    if (place != inner)
        m_window.setGeometry(place);
}

} // namespace sheerlay::ui
