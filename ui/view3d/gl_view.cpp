#include "ui/view3d/gl_view.hpp"

#include "ui/view3d/boat_stage.hpp"
#include "ui/view3d/gl_bridge.hpp"

#include <QGuiApplication>
#include <QMouseEvent>
#include <QOpenGLContext>
#include <QOpenGLFunctions>
#include <QTimer>
#include <QWheelEvent>
#include <QWindow>

#include <Standard_Failure.hxx>

#include <spdlog/spdlog.h>

#include <cmath>
#include <string_view>

namespace sheerlay::ui {
namespace {

constexpr double radiansPerPixel = 0.007;
constexpr double zoomPerNotch = 1.2;
constexpr int restTime = 220; // ms without movement until the picture is drawn finely
constexpr int fineSamples = 4;
constexpr double coarsePixel = 1.0 / 3.0; // part of a pixel the edges may be off in the picture at rest
constexpr double coarseMoving = 1.5;      // and in software drawing while the boat moves
constexpr int clickSlack = 4;             // logical pixels the hand may shake in a click

void* xDisplay() {
    const auto* x11 = qGuiApp->nativeInterface<QNativeInterface::QX11Application>();
    return x11 == nullptr ? nullptr : static_cast<void*>(x11->display());
}

} // namespace

class GlViewPrivate {
public:
    std::unique_ptr<BoatStage> stage; // none between two OpenGL contexts
    std::shared_ptr<const Boat> boat;
    int laid = 0;
    bool ghosts = true, moulds = true;
    StripColours colours = StripColours::Bend;
    std::string selected;
    std::optional<double> place, cut; // mm from the bow
    std::vector<std::vector<Eigen::Vector3d>> tape;
    bool measuring = false;

    void makeStage() {
        stage = std::make_unique<BoatStage>(GlBridge::makeDriver(xDisplay()));
        stage->setGhostsShown(ghosts);
        stage->setMouldsShown(moulds);
        stage->setColours(colours);
        stage->setLaidCount(laid);
        stage->setBoat(boat);
        stage->select(selected);
        stage->showPlace(place);
        stage->showTape(tape);
        stage->cutAt(cut);
        stage->applyCamera(camera.pose());
        size.setZero();
    }

    /// What has to be in the picture: the boat, and the building frame where it is shown.
    void fitShape() {
        if (!boat)
            return;
        std::vector<Eigen::Vector3d> shape = boat->scene.shape;
        if (moulds)
            shape.insert(shape.end(), boat->scene.frame.begin(), boat->scene.frame.end());
        camera.setShape(std::move(shape));
    }

    /// How the next picture is drawn. The whole of it is, when it is drawn straight: nothing is kept then.
    void chooseDetail() {
        stage->view()->ChangeRenderingParams().NbMsaaSamples = fine ? fineSamples : 0;
        GlBridge::drawStraight(stage->view(), !fine);
        wholePicture = wholePicture || !fine;
        const double pixel = camera.pose().height / std::max(size.y(), 1); // mm
        const bool coarse = coarseThinning < pixel * (fine ? coarsePixel : coarseMoving);
        stage->setDetail(coarse ? MeshObject::Detail::Coarse : MeshObject::Detail::Fine);
    }

    OrbitCamera camera;
    Eigen::Vector2i size{0, 0}; // device pixels
    bool attached = false;
    bool broken = false;
    bool software = false;    // OpenGL is worked out by the processor
    bool fine = true;         // with smooth edges
    bool hurried = false;     // others need the processors
    bool wholePicture = true; // else only what is highlighted
    QPointF pressed, last;
    bool dragging = false;
    std::string hovered;
    QTimer rest;
};

GlView::GlView(QWidget* parent) : QOpenGLWidget(parent), m_d(std::make_unique<GlViewPrivate>()) {
    setMouseTracking(true);
    setFocusPolicy(Qt::ClickFocus);
    setUpdateBehavior(QOpenGLWidget::NoPartialUpdate);
    setMinimumSize(240, 160);
    m_d->camera.look(Look::ThreeQuarter);
    m_d->makeStage();
    m_d->rest.setSingleShot(true);
    m_d->rest.setInterval(restTime);
    connect(&m_d->rest, &QTimer::timeout, this, [this] { drawFinely(true); });
}

GlView::~GlView() {
    if (context() != nullptr)
        disconnect(context(), nullptr, this, nullptr); // it dies in the base class, when nothing is left here
    leaveContext();
}

void GlView::leaveContext() {
    // what OpenCASCADE holds in this context must go while the context is there
    makeCurrent();
    m_d->stage.reset();
    m_d->attached = false;
    doneCurrent();
}

bool GlView::possible() {
    const QByteArray way = qgetenv("QT_XCB_GL_INTEGRATION"); // or "xcb_egl", or "none"
    return QGuiApplication::platformName() == QStringLiteral("xcb") && xDisplay() != nullptr &&
           (way.isEmpty() || way == "xcb_glx");
}

template <class Work> void GlView::onStage(Work work) {
    if (m_d->stage) {
        if (m_d->attached)
            makeCurrent();
        work(*m_d->stage);
        if (m_d->attached)
            doneCurrent();
    }
    drawSoon();
}

void GlView::drawSoon() {
    m_d->wholePicture = true;
    drawFinely(false);
    m_d->rest.start();
    update();
}

void GlView::setBoat(std::shared_ptr<const Boat> boat) {
    m_d->boat = std::move(boat);
    m_d->fitShape();
    onStage([&](BoatStage& stage) { stage.setBoat(m_d->boat); });
    cameraMoved();
}

void GlView::setLaidCount(int count) {
    m_d->laid = count;
    onStage([&](BoatStage& stage) { stage.setLaidCount(count); });
}

void GlView::setGhostsShown(bool shown) {
    m_d->ghosts = shown;
    onStage([&](BoatStage& stage) { stage.setGhostsShown(shown); });
}

void GlView::setColours(StripColours colours) {
    m_d->colours = colours;
    onStage([&](BoatStage& stage) { stage.setColours(colours); });
}

void GlView::setMouldsShown(bool shown) {
    m_d->moulds = shown;
    m_d->fitShape();
    onStage([&](BoatStage& stage) { stage.setMouldsShown(shown); });
    cameraMoved();
}

void GlView::select(const std::string& id) {
    m_d->selected = id;
    onStage([&](BoatStage& stage) { stage.select(id); });
}

void GlView::showPlace(std::optional<double> x) {
    m_d->place = x;
    onStage([&](BoatStage& stage) { stage.showPlace(x); });
}

void GlView::cutAt(std::optional<double> x) {
    m_d->cut = x;
    onStage([&](BoatStage& stage) { stage.cutAt(x); });
}

void GlView::setUpsideDown(bool upsideDown) {
    m_d->camera.setUpsideDown(upsideDown);
    cameraMoved();
}

void GlView::look(Look look) {
    m_d->camera.look(look);
    cameraMoved();
}

bool GlView::laidShown(std::size_t strip) const {
    return m_d->stage && m_d->stage->laidShown(strip);
}

bool GlView::ghostShown(std::size_t strip) const {
    return m_d->stage && m_d->stage->ghostShown(strip);
}

int GlView::computed() const {
    return m_d->stage ? m_d->stage->computed() : 0;
}

std::string GlView::stripAt(const QPointF& place) {
    if (!m_d->attached)
        return {};
    makeCurrent();
    const auto id = m_d->stage->hover(pixelOf(place));
    m_d->stage->view()->InvalidateImmediate();
    doneCurrent();
    return id.value_or(std::string());
}

std::optional<Eigen::Vector3d> GlView::touchedAt(const QPointF& place) {
    if (!m_d->attached)
        return std::nullopt;
    makeCurrent();
    const auto touched = m_d->stage->touch(pixelOf(place));
    doneCurrent();
    return touched;
}

Eigen::Vector2i GlView::pixelOf(const QPointF& place) const {
    const double ratio = devicePixelRatioF();
    return {static_cast<int>(std::lround(place.x() * ratio)),
            static_cast<int>(std::lround(place.y() * ratio))};
}

void GlView::setMeasuring(bool measuring) {
    m_d->measuring = measuring;
    setCursor(measuring ? Qt::CrossCursor : Qt::ArrowCursor);
}

void GlView::setTape(std::vector<std::vector<Eigen::Vector3d>> lines) {
    m_d->tape = std::move(lines);
    onStage([&](BoatStage& stage) { stage.showTape(m_d->tape); });
}

void GlView::cameraMoved() {
    if (!m_d->stage)
        return;
    m_d->stage->applyCamera(m_d->camera.pose());
    drawSoon();
}

void GlView::drawFinely(bool fine) {
    // smooth edges cost software drawing several times as long: there they wait until the boat stands still
    if (m_d->software && fine && m_d->hurried)
        return;
    fine = fine || !m_d->software;
    if (!m_d->stage || m_d->fine == fine)
        return;
    m_d->fine = fine;
    m_d->wholePicture = true;
    update();
}

void GlView::setHurried(bool hurried) {
    m_d->hurried = hurried;
    if (!hurried && !m_d->fine)
        m_d->rest.start();
}

void GlView::drawFinelyNow() {
    m_d->rest.stop();
    m_d->fine = true;
    m_d->wholePicture = true;
}

void GlView::initializeGL() {
    const double ratio = devicePixelRatioF();
    const Eigen::Vector2i pixels{static_cast<int>(std::lround(width() * ratio)),
                                 static_cast<int>(std::lround(height() * ratio))};
    try {
        if (!m_d->stage)
            m_d->makeStage();
        m_d->attached =
            GlBridge::attach(m_d->stage->view(), static_cast<Aspect_Drawable>(window()->winId()), pixels);
    } catch (const Standard_Failure& failure) {
        spdlog::warn("the boat can't be drawn: {}", failure.GetMessageString());
        m_d->attached = false;
    }
    m_d->broken = !m_d->attached;
    m_d->wholePicture = true;
    makeCurrent();
    const auto* renderer = reinterpret_cast<const char*>(context()->functions()->glGetString(GL_RENDERER));
    m_d->software =
        renderer != nullptr && std::string_view(renderer).find("llvmpipe") != std::string_view::npos;
    // another window means another context: the stage is set up anew in it
    connect(
        context(), &QOpenGLContext::aboutToBeDestroyed, this, &GlView::leaveContext, Qt::UniqueConnection);
    if (m_d->broken)
        QMetaObject::invokeMethod(this, &GlView::failed, Qt::QueuedConnection);
}

void GlView::paintGL() {
    if (!m_d->attached)
        return;
    const Handle(V3d_View)& view = m_d->stage->view();
    const Eigen::Vector2i size = GlBridge::followFramebuffer(view);
    if (size != m_d->size) {
        m_d->size = size;
        m_d->camera.setAspect(static_cast<double>(size.x()) / std::max(size.y(), 1));
        m_d->stage->applyCamera(m_d->camera.pose());
        m_d->wholePicture = true;
    }
    m_d->chooseDetail();
    const bool whole = m_d->wholePicture;
    if (whole)
        view->Redraw();
    else
        view->RedrawImmediate();
    m_d->wholePicture = false;
    GlBridge::restoreState(view);
    if (whole)
        Q_EMIT drawn();
}

void GlView::mousePressEvent(QMouseEvent* event) {
    m_d->pressed = m_d->last = event->position();
    m_d->dragging = false;
    event->accept();
}

void GlView::mouseMoveEvent(QMouseEvent* event) {
    event->accept();
    const QPointF at = event->position();
    if (event->buttons() == Qt::NoButton) {
        const std::string id = stripAt(at);
        update();
        if (id != m_d->hovered) {
            m_d->hovered = id;
            Q_EMIT hovered(QString::fromStdString(id));
        }
        return;
    }
    if (!m_d->dragging && (at - m_d->pressed).manhattanLength() < clickSlack)
        return;
    m_d->dragging = true;
    const QPointF by = at - m_d->last;
    m_d->last = at;
    const bool shift = event->modifiers().testFlag(Qt::ShiftModifier);
    if (event->buttons().testFlag(Qt::LeftButton) && !shift)
        m_d->camera.turn(by.x() * radiansPerPixel, by.y() * radiansPerPixel);
    else
        m_d->camera.pan({by.x() / height(), -by.y() / height()});
    cameraMoved();
}

void GlView::mouseReleaseEvent(QMouseEvent* event) {
    event->accept();
    if (!m_d->dragging && event->button() == Qt::LeftButton && m_d->measuring)
        Q_EMIT touched(touchedAt(event->position()));
    else if (!m_d->dragging && event->button() == Qt::LeftButton)
        Q_EMIT clicked(QString::fromStdString(stripAt(event->position())));
    m_d->dragging = false;
}

void GlView::mouseDoubleClickEvent(QMouseEvent* event) {
    event->accept();
    m_d->camera.fit();
    cameraMoved();
}

void GlView::wheelEvent(QWheelEvent* event) {
    event->accept();
    const double notches = event->angleDelta().y() / 120.0;
    const QPointF at = event->position();
    const double h = height();
    m_d->camera.zoom(std::pow(zoomPerNotch, notches), {(at.x() - 0.5 * width()) / h, (0.5 * h - at.y()) / h});
    cameraMoved();
}

void GlView::leaveEvent(QEvent* event) {
    QOpenGLWidget::leaveEvent(event);
    if (!m_d->attached)
        return;
    makeCurrent();
    m_d->stage->leave();
    doneCurrent();
    update();
    if (!m_d->hovered.empty()) {
        m_d->hovered.clear();
        Q_EMIT hovered(QString());
    }
}

} // namespace sheerlay::ui
