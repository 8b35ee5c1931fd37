#include "ui/view3d/gl_bridge.hpp"

#include <Aspect_NeutralWindow.hxx>
#include <OpenGl_Context.hxx>
#include <OpenGl_FrameBuffer.hxx>
#include <OpenGl_GlCore20.hxx>
#include <OpenGl_GraphicDriver.hxx>
#include <OpenGl_View.hxx>
#include <OpenGl_Window.hxx>

namespace sheerlay::ui {
namespace {

/// Qt's framebuffer is not sRGB; told otherwise, OpenCASCADE leaves the last conversion to it and colours
/// come out dark.
class QtFrameBuffer : public OpenGl_FrameBuffer {
    DEFINE_STANDARD_RTTI_INLINE(QtFrameBuffer, OpenGl_FrameBuffer)
public:
    void BindBuffer(const Handle(OpenGl_Context) & context) override {
        OpenGl_FrameBuffer::BindBuffer(context);
        context->SetFrameBufferSRGB(true, false);
    }
    void BindDrawBuffer(const Handle(OpenGl_Context) & context) override {
        OpenGl_FrameBuffer::BindDrawBuffer(context);
        context->SetFrameBufferSRGB(true, false);
    }
};

Handle(OpenGl_Context) contextOf(const Handle(V3d_View) & view) {
    const Handle(OpenGl_View) inner = Handle(OpenGl_View)::DownCast(view->View());
    if (inner.IsNull() || inner->GlWindow().IsNull())
        return {};
    return inner->GlWindow()->GetGlContext();
}

} // namespace

Handle(Graphic3d_GraphicDriver) GlBridge::makeDriver(void* xDisplay) {
    const Handle(Aspect_DisplayConnection) display =
        new Aspect_DisplayConnection(static_cast<Aspect_XDisplay*>(xDisplay));
    Handle(OpenGl_GraphicDriver) driver = new OpenGl_GraphicDriver(display, false);
    driver->ChangeOptions().buffersNoSwap = true;
    driver->ChangeOptions().buffersOpaqueAlpha = true;
    driver->ChangeOptions().useSystemBuffer = false;
    // light is reckoned in the screen's own values: Qt's framebuffer, drawn to straight while the boat moves,
    // takes no others, and the boat must not change her colours when she stops
    driver->ChangeOptions().sRGBDisable = true;
    return Handle(Graphic3d_GraphicDriver)(driver);
}

bool GlBridge::attach(const Handle(V3d_View) & view,
                      Aspect_Drawable topLevelWindow,
                      const Eigen::Vector2i& pixels) {
    const Handle(OpenGl_Context) context = new OpenGl_Context();
    if (!context->Init(false))
        return false;
    Handle(Aspect_NeutralWindow) window = Handle(Aspect_NeutralWindow)::DownCast(view->Window());
    if (window.IsNull()) {
        window = new Aspect_NeutralWindow();
        window->SetVirtual(true);
    }
    window->SetNativeHandle(topLevelWindow);
    window->SetSize(pixels.x(), pixels.y());
    view->SetWindow(window, context->RenderingContext());
    view->MustBeResized();
    view->Invalidate();
    return true;
}

Eigen::Vector2i GlBridge::followFramebuffer(const Handle(V3d_View) & view) {
    const Handle(OpenGl_Context) context = contextOf(view);
    Standard_Integer width = 0;
    Standard_Integer height = 0;
    view->Window()->Size(width, height);
    if (context.IsNull())
        return {width, height};
    Handle(OpenGl_FrameBuffer) buffer = context->DefaultFrameBuffer();
    if (buffer.IsNull()) {
        buffer = new QtFrameBuffer();
        context->SetDefaultFrameBuffer(buffer);
    }
    if (!buffer->InitWrapper(context))
        return {width, height};
    const Eigen::Vector2i size{buffer->GetVPSizeX(), buffer->GetVPSizeY()};
    if (size != Eigen::Vector2i(width, height)) {
        Handle(Aspect_NeutralWindow)::DownCast(view->Window())->SetSize(size.x(), size.y());
        view->MustBeResized();
        view->Invalidate();
    }
    return size;
}

void GlBridge::drawStraight(const Handle(V3d_View) & view, bool straight) {
    const Handle(OpenGl_GraphicDriver) driver =
        Handle(OpenGl_GraphicDriver)::DownCast(view->Viewer()->Driver());
    driver->ChangeOptions().useSystemBuffer = straight;
    view->View()->SetImmediateModeDrawToFront(!straight);
}

void GlBridge::restoreState(const Handle(V3d_View) & view) {
    const Handle(OpenGl_Context) context = contextOf(view);
    if (context.IsNull())
        return;
    context->BindProgram(Handle(OpenGl_ShaderProgram)());
    context->core11fwd->glDisable(GL_DEPTH_TEST);
    context->core11fwd->glDisable(GL_CULL_FACE);
    context->core11fwd->glPixelStorei(GL_UNPACK_ALIGNMENT, 4);
    context->core11fwd->glPixelStorei(GL_PACK_ALIGNMENT, 4);
    if (context->core15fwd != nullptr)
        context->core15fwd->glActiveTexture(GL_TEXTURE0);
}

} // namespace sheerlay::ui
