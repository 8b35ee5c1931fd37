#pragma once

#include <Aspect_DisplayConnection.hxx>
#include <Aspect_Drawable.hxx>
#include <Graphic3d_GraphicDriver.hxx>
#include <V3d_View.hxx>

#include <Eigen/Core>

namespace sheerlay::ui {

/// OpenCASCADE's side of drawing into a framebuffer that Qt owns. Kept apart from the widget, so that its
/// OpenGL headers and Qt's never meet.
/// @source  design/platform.md section 2, measured on OCCT 7.6.3 with Qt 6.4
struct GlBridge {
    /// Driver on the X display that Qt has open; swaps nothing, owns no context.
    /// @throws Standard_Failure  no display
    [[nodiscard]] static Handle(Graphic3d_GraphicDriver) makeDriver(void* xDisplay);

    /// Wraps the current OpenGL context for the view.
    /// @return  false when this build of OpenCASCADE can't use such a context (EGL, no GLX)
    [[nodiscard]] static bool
    attach(const Handle(V3d_View) & view, Aspect_Drawable topLevelWindow, const Eigen::Vector2i& pixels);

    /// Makes the framebuffer that is bound now the view's target, and follows its size.
    /// @return  its size in device pixels
    static Eigen::Vector2i followFramebuffer(const Handle(V3d_View) & view);

    /// Draws into the target at once, or first into a framebuffer of its own and from there into the target.
    /// The second is what smooth edges and redrawing the highlight alone need; each costs software drawing
    /// two pictures' worth of copying.
    static void drawStraight(const Handle(V3d_View) & view, bool straight);

    /// Leaves OpenGL the way Qt expects to find it.
    static void restoreState(const Handle(V3d_View) & view);
};

} // namespace sheerlay::ui
