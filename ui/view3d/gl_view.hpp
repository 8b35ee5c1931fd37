#pragma once

#include "ui/scene/boat.hpp"
#include "ui/scene/strip_colour.hpp"
#include "ui/view3d/orbit_camera.hpp"

#include <QOpenGLWidget>
#include <QPointF>

#include <Eigen/Core>

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::ui {

class GlViewPrivate;

/// The OpenGL picture of the boat: OpenCASCADE draws into Qt's framebuffer. Use it through BoatView, which
/// knows what to do where there is no OpenGL.
class GlView : public QOpenGLWidget {
    Q_OBJECT
public:
    explicit GlView(QWidget* parent = nullptr);
    ~GlView() override;

    /// False where OpenCASCADE has no display to draw on (no X11); then do not show the widget.
    [[nodiscard]] static bool possible();

    void setBoat(std::shared_ptr<const Boat> boat);
    void setLaidCount(int count);
    void setGhostsShown(bool shown);
    void setMouldsShown(bool shown);
    void setColours(StripColours colours);
    void select(const std::string& id);
    void showPlace(std::optional<double> x); ///< mm from the bow
    void cutAt(std::optional<double> x);     ///< mm from the bow; what lies before it goes
    void setUpsideDown(bool upsideDown);
    void look(Look look);
    void setMeasuring(bool measuring);
    /// While others need the processors software drawing leaves the edges rough.
    void setHurried(bool hurried);
    /// The next picture has smooth edges, whatever has just moved.
    void drawFinelyNow();
    void setTape(std::vector<std::vector<Eigen::Vector3d>> lines); ///< mm

    /// Asks the stage, for tests: is the strip shown as laid, as outline; presentations built so far.
    [[nodiscard]] bool laidShown(std::size_t strip) const;
    [[nodiscard]] bool ghostShown(std::size_t strip) const;
    [[nodiscard]] int computed() const;
    /// Strip under a place of the widget (logical pixels), empty for none.
    [[nodiscard]] std::string stripAt(const QPointF& place);
    /// Where on the face of a laid strip a place of the widget lies, mm; none beside them.
    [[nodiscard]] std::optional<Eigen::Vector3d> touchedAt(const QPointF& place);

Q_SIGNALS:
    void hovered(const QString& stripId); ///< empty for none
    void clicked(const QString& stripId); ///< empty beside the strips
    /// While measuring, in place of clicked().
    void touched(const std::optional<Eigen::Vector3d>& place);
    void drawn();  ///< after each full picture
    void failed(); ///< OpenGL could not be used; nothing will be drawn

protected:
    void initializeGL() override;
    void paintGL() override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    void leaveContext();
    void cameraMoved();
    void drawSoon();
    void drawFinely(bool fine);
    [[nodiscard]] Eigen::Vector2i pixelOf(const QPointF& place) const;
    template <class Work> void onStage(Work work);

    std::unique_ptr<GlViewPrivate> m_d;
};

} // namespace sheerlay::ui
