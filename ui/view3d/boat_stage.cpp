#include "ui/view3d/boat_stage.hpp"

#include "ui/scene/palette.hpp"

#include <Graphic3d_GraphicDriver.hxx>
#include <StdSelect_ViewerSelector3d.hxx>
#include <V3d_AmbientLight.hxx>
#include <V3d_DirectionalLight.hxx>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::ui {
namespace {

constexpr double ghostWidth = 1.0;
constexpr double markedWidth = 3.0;
constexpr double ringAir = 4.0; // mm between the outer face and the line around a place
const QColor ghostColour(0xDD, 0xD4, 0xC2);

const std::vector<Eigen::Vector3d> noLoop;

QColor mixed(const QColor& a, const QColor& b, double part) {
    const auto mix = [part](int x, int y) {
        return static_cast<int>(std::lround((1.0 - part) * x + part * y));
    };
    return {mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue())};
}

void addLight(const Handle(V3d_Viewer) & viewer, const Handle(V3d_Light) & light, double intensity) {
    light->SetIntensity(static_cast<Standard_ShortReal>(intensity));
    viewer->AddLight(light);
    viewer->SetLightOn(light);
}

} // namespace

BoatStage::BoatStage(const Handle(Graphic3d_GraphicDriver) & driver) {
    m_viewer = new V3d_Viewer(driver);
    addLight(m_viewer, new V3d_AmbientLight(Quantity_NOC_WHITE), 1.0);
    // one lamp over the builder's left shoulder: it goes with the eye, so no side of the boat is ever in the
    // dark
    Handle(V3d_DirectionalLight) lamp =
        new V3d_DirectionalLight(gp_Dir(0.35, -0.55, -0.75), Quantity_NOC_WHITE);
    lamp->SetHeadlight(true);
    addLight(m_viewer, lamp, 1.0);

    m_context = new AIS_InteractiveContext(m_viewer);
    m_context->SetPixelTolerance(2);

    m_view = m_viewer->CreateView();
    m_view->SetImmediateUpdate(false);
    m_view->SetBgGradientColors(toOcct(QColor::fromRgb(palette::paper)),
                                toOcct(QColor::fromRgb(palette::bench)),
                                Aspect_GradientFillMethod_Vertical);
}

BoatStage::~BoatStage() {
    m_pieces.clear();
    m_frame.clear();
    m_lines.Nullify();
    m_ring.Nullify();
    m_tape.Nullify();
    m_context->RemoveAll(false);
    m_context.Nullify();
    cutAt(std::nullopt);
    m_view->Remove();
    m_view.Nullify();
    m_viewer.Nullify();
}

void BoatStage::clear() {
    m_context->RemoveAll(false);
    m_pieces.clear();
    m_frame.clear();
    m_lines.Nullify();
    m_ring.Nullify();
    m_tape.Nullify();
}

void BoatStage::setBoat(std::shared_ptr<const Boat> boat) {
    clear();
    m_boat = std::move(boat); // the old one goes only now: its meshes were still referred to
    if (!m_boat)
        return;
    const QColor seam = QColor::fromRgb(palette::seam);
    for (std::size_t i = 0; i < m_boat->plan.strips.size(); ++i) {
        const SceneStrip& scene = m_boat->scene.strips[i];
        Piece piece;
        piece.solid = new MeshObject({scene.fine.solid, scene.fine.loop},
                                     {scene.coarse.solid, scene.coarse.loop},
                                     stripColour(*m_boat, i, m_colours),
                                     seam);
        piece.outline = new LineObject({scene.fine.loop}, ghostColour, ghostWidth);
        m_pieces.push_back(piece);
    }
    const QColor plywood = QColor::fromRgb(palette::plywood);
    const auto addFrame = [&](const TriangleMesh& mesh, const QColor& colour) {
        m_frame.push_back(new MeshObject({mesh, noLoop}, {mesh, noLoop}, colour, plywood));
    };
    for (const TriangleMesh& mould : m_boat->scene.moulds)
        addFrame(mould, plywood);
    addFrame(m_boat->scene.strongback, QColor::fromRgb(palette::timber));
    m_lines = new LineObject(m_boat->scene.lines, QColor::fromRgb(palette::lineBlue), 1.5);
    m_context->Display(m_lines, 0, -1, false);
    setMouldsShown(m_moulds);
    if (!m_boat->strip(m_selected))
        m_selected.clear();
    setLaidCount(m_laid);
    showPlace(m_place);
}

void BoatStage::show(const Handle(AIS_InteractiveObject) & object, bool shown, bool pickable, int mode) {
    const bool is = m_context->IsDisplayed(object);
    if (shown && !is)
        m_context->Display(object, mode, pickable ? 0 : -1, false);
    else if (!shown && is)
        m_context->Erase(object, false);
}

void BoatStage::arrange(std::size_t strip) {
    const core::Strip& data = m_boat->plan.strips[strip];
    Piece& piece = m_pieces[strip];
    const bool laid = data.order <= m_laid;
    const bool next = data.order == m_laid + 1;
    const bool selected = data.id == m_selected;
    const QColor own = stripColour(*m_boat, strip, m_colours);
    const QColor blue = QColor::fromRgb(palette::lineBlue);

    show(piece.solid, laid, true, static_cast<int>(m_detail));
    piece.solid->paint(selected ? mixed(own, blue, 0.85) : own);
    show(piece.outline, selected || (!laid && (next || m_ghosts)), false);
    if (selected)
        piece.outline->paint(blue, markedWidth);
    else if (next)
        piece.outline->paint(QColor::fromRgb(palette::cedar), markedWidth);
    else
        piece.outline->paint(ghostColour, ghostWidth);
}

void BoatStage::setColours(StripColours colours) {
    m_colours = colours;
    for (std::size_t i = 0; i < m_pieces.size(); ++i)
        arrange(i);
}

void BoatStage::setLaidCount(int count) {
    m_laid = count;
    if (!m_boat)
        return;
    m_context->ClearDetected(false); // what was under the pointer may just have gone
    for (std::size_t i = 0; i < m_pieces.size(); ++i)
        arrange(i);
}

void BoatStage::setDetail(MeshObject::Detail detail) {
    if (m_detail == detail)
        return;
    m_detail = detail;
    for (const Piece& piece : m_pieces) {
        if (m_context->IsDisplayed(piece.solid))
            m_context->SetDisplayMode(piece.solid, static_cast<int>(detail), false);
    }
}

void BoatStage::setGhostsShown(bool shown) {
    m_ghosts = shown;
    setLaidCount(m_laid);
}

void BoatStage::setMouldsShown(bool shown) {
    m_moulds = shown;
    for (const Handle(MeshObject) & part : m_frame)
        show(part, shown, false);
}

void BoatStage::select(const std::string& id) {
    m_selected = id;
    setLaidCount(m_laid);
}

void BoatStage::showPlace(std::optional<double> x) {
    m_place = x;
    if (!m_ring.IsNull())
        m_context->Remove(m_ring, false);
    m_ring.Nullify();
    if (!m_boat || !x)
        return;
    const double outside = m_boat->project.strips.thickness - m_boat->hull.laidHeight;
    std::vector<Eigen::Vector3d> ring = m_boat->scene.map.ring(*x, outside + ringAir);
    if (ring.empty())
        return;
    m_ring = new LineObject({std::move(ring)}, QColor::fromRgb(palette::cedar), markedWidth);
    m_context->Display(m_ring, 0, -1, false);
}

void BoatStage::showTape(const std::vector<std::vector<Eigen::Vector3d>>& lines) {
    if (!m_tape.IsNull())
        m_context->Remove(m_tape, false);
    m_tape.Nullify();
    if (lines.empty())
        return;
    m_tape = new LineObject(lines, QColor::fromRgb(palette::lineBlue), markedWidth);
    m_context->Display(m_tape, 0, -1, false);
}

void BoatStage::cutAt(std::optional<double> x) {
    if (!m_cut.IsNull())
        m_view->RemoveClipPlane(m_cut);
    m_cut.Nullify();
    if (x) {
        m_cut = new Graphic3d_ClipPlane(gp_Pln(gp_Pnt(*x, 0.0, 0.0), gp_Dir(1.0, 0.0, 0.0)));
        m_cut->SetCapping(true); // bars are solid: the cut shows their sections
        m_cut->SetCappingColor(toOcct(QColor::fromRgb(palette::timber)));
        m_view->AddClipPlane(m_cut);
    }
    m_view->Invalidate();
}

void BoatStage::applyCamera(const CameraPose& pose) {
    const Handle(Graphic3d_Camera)& camera = m_view->Camera();
    const auto pnt = [](const Eigen::Vector3d& p) { return gp_Pnt(p.x(), p.y(), p.z()); };
    camera->SetProjectionType(pose.parallel ? Graphic3d_Camera::Projection_Orthographic
                                            : Graphic3d_Camera::Projection_Perspective);
    camera->SetFOVy(OrbitCamera::fieldOfView * 180.0 / std::numbers::pi);
    camera->SetEyeAndCenter(pnt(pose.eye), pnt(pose.target));
    camera->SetUp(gp_Dir(pose.up.x(), pose.up.y(), pose.up.z()));
    if (pose.parallel)
        camera->SetScale(pose.height);
    m_view->Invalidate();
}

std::optional<std::string> BoatStage::hover(const Eigen::Vector2i& pixel) {
    m_context->MoveTo(pixel.x(), pixel.y(), m_view, false);
    if (!m_boat || !m_context->HasDetected())
        return std::nullopt;
    const Handle(AIS_InteractiveObject) found = m_context->DetectedInteractive();
    for (std::size_t i = 0; i < m_pieces.size(); ++i) {
        if (m_pieces[i].solid == found)
            return m_boat->plan.strips[i].id;
    }
    return std::nullopt;
}

std::optional<Eigen::Vector3d> BoatStage::touch(const Eigen::Vector2i& pixel) {
    if (!hover(pixel) || m_context->MainSelector()->NbPicked() < 1)
        return std::nullopt;
    const gp_Pnt p = m_context->MainSelector()->PickedPoint(1);
    return Eigen::Vector3d(p.X(), p.Y(), p.Z());
}

void BoatStage::leave() {
    m_context->ClearDetected(false);
}

bool BoatStage::laidShown(std::size_t strip) const {
    return m_context->IsDisplayed(m_pieces.at(strip).solid);
}

bool BoatStage::ghostShown(std::size_t strip) const {
    return m_context->IsDisplayed(m_pieces.at(strip).outline);
}

int BoatStage::computed() const {
    int sum = 0;
    for (const Piece& piece : m_pieces)
        sum += piece.solid->computed() + piece.outline->computed();
    return sum;
}

} // namespace sheerlay::ui
