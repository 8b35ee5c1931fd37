#pragma once

#include <QObject>
#include <QRect>

class QWidget;

namespace sheerlay::ui {

/// Where a window of this place goes so that it and the frame about it lie within a screen.
/// @param inner   the window without its frame; pixels
/// @param frame   with its frame; holds `inner`
/// @param screen  what the desktop leaves free
/// @return  the new `inner`: smaller where it must be, else moved only
[[nodiscard]] QRect onScreen(const QRect& inner, const QRect& frame, const QRect& screen);

/// Brings a window and its frame onto its screen, once: as soon as the desktop has framed and activated it.
class OnScreen : public QObject {
public:
    explicit OnScreen(QWidget& window);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void bring();

    QWidget& m_window;
};

} // namespace sheerlay::ui
