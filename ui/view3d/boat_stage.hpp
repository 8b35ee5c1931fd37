#pragma once

#include "ui/scene/boat.hpp"
#include "ui/scene/strip_colour.hpp"
#include "ui/view3d/orbit_camera.hpp"
#include "ui/view3d/scene_objects.hpp"

#include <AIS_InteractiveContext.hxx>
#include <Graphic3d_ClipPlane.hxx>
#include <V3d_View.hxx>
#include <V3d_Viewer.hxx>

#include <Eigen/Core>

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::ui {

/// What stands on the stage and how it is lit: moulds, strongback, strips. Shows and hides; never draws by
/// itself. Every call may touch OpenGL and needs the view's context to be current. GUI thread only.
class BoatStage {
public:
    explicit BoatStage(const Handle(Graphic3d_GraphicDriver) & driver);
    ~BoatStage();
    BoatStage(const BoatStage&) = delete;
    BoatStage& operator=(const BoatStage&) = delete;

    void setBoat(std::shared_ptr<const Boat> boat);
    /// Pieces 1 … n of the laying order are laid, the next one is outlined, the rest are ghosts. Shows and
    /// hides only.
    void setLaidCount(int count);
    void setGhostsShown(bool shown);
    void setMouldsShown(bool shown);
    void setColours(StripColours colours);
    /// @param id  empty for none
    void select(const std::string& id);
    /// Draws a line around the hull at a place, mm from the bow; none takes it away.
    void showPlace(std::optional<double> x);
    /// Takes away all that lies before a place, mm from the bow, so that the section there is seen; none
    /// shows the whole boat.
    void cutAt(std::optional<double> x);
    /// Draws the lines of a tape, mm; none takes it away.
    void showTape(const std::vector<std::vector<Eigen::Vector3d>>& lines);
    void applyCamera(const CameraPose& pose);
    /// How finely the strips are drawn. Takes longer the first time, as meshes go over to OpenGL.
    void setDetail(MeshObject::Detail detail);

    /// Highlights what is under the place, in device pixels, and names the strip there.
    std::optional<std::string> hover(const Eigen::Vector2i& pixel);
    /// Where on the face of a laid strip the place, in device pixels, lies; mm.
    std::optional<Eigen::Vector3d> touch(const Eigen::Vector2i& pixel);
    void leave();

    [[nodiscard]] const Handle(V3d_View) & view() const noexcept { return m_view; }
    [[nodiscard]] bool laidShown(std::size_t strip) const;
    [[nodiscard]] bool ghostShown(std::size_t strip) const;
    /// Presentations built so far, over all strips.
    [[nodiscard]] int computed() const;

private:
    struct Piece {
        Handle(MeshObject) solid;
        Handle(LineObject) outline;
    };
    void clear();
    void arrange(std::size_t strip);
    void show(const Handle(AIS_InteractiveObject) & object, bool shown, bool pickable, int mode = 0);

    Handle(V3d_Viewer) m_viewer;
    Handle(AIS_InteractiveContext) m_context;
    Handle(V3d_View) m_view;
    std::shared_ptr<const Boat> m_boat;
    std::vector<Piece> m_pieces;
    std::vector<Handle(MeshObject)> m_frame;
    Handle(LineObject) m_lines, m_ring, m_tape;
    Handle(Graphic3d_ClipPlane) m_cut;
    std::optional<double> m_place;
    int m_laid = 0;
    bool m_ghosts = true;
    bool m_moulds = true;
    MeshObject::Detail m_detail = MeshObject::Detail::Fine;
    StripColours m_colours = StripColours::Bend;
    std::string m_selected;
};

} // namespace sheerlay::ui
