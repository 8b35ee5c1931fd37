#pragma once

#include "core/project/project.hpp"
#include "ui/scene/boat.hpp"
#include "ui/scene/strip_colour.hpp"
#include "ui/view3d/orbit_camera.hpp"

#include <QWidget>

#include <Eigen/Core>

#include <memory>
#include <optional>
#include <string>
#include <vector>

class QLabel;
class QStackedLayout;

namespace sheerlay::ui {

class GlView;
class Legend;

/// The boat on its moulds. Where the screen offers no OpenGL through X11 it says so and the rest of the
/// window works on. Build it before the window is first shown. GUI thread only.
class BoatView : public QWidget {
    Q_OBJECT
public:
    explicit BoatView(QWidget* parent = nullptr);

    /// @param boat  none clears the view
    void setBoat(std::shared_ptr<const Boat> boat);
    /// Pieces 1 … n of the laying order are laid. Only shows and hides.
    void setLaidCount(int count);
    void setSelected(const std::string& stripId);
    /// Draws a line around the hull at a place, mm from the bow; none takes it away.
    void setPlace(std::optional<double> x);
    /// Takes away what lies before a place, mm from the bow, so that the section is seen; none: the whole.
    void setCut(std::optional<double> x);
    void setUnits(core::Units units);
    /// While a plan is worked out: the picture takes as little of the processors as it can.
    void setHurried(bool hurried);
    /// Marks the picture as the boat from before the change, until a new one is there.
    void setStale(bool stale);
    void setUpsideDown(bool upsideDown);
    void setGhostsShown(bool shown);
    /// What the strips' colours tell; the legend follows.
    void setColours(StripColours colours);
    void setMouldsShown(bool shown);
    void look(Look look);
    /// Clicks name places of the planking instead of strips.
    void setMeasuring(bool measuring);
    /// Lines of a tape on the boat, mm; none takes it away.
    void setTape(std::vector<std::vector<Eigen::Vector3d>> lines);

    /// Whether there is a real picture.
    [[nodiscard]] bool drawing() const;
    /// Picture with legend as a file, PNG or what the suffix says.
    [[nodiscard]] bool savePicture(const QString& path);
    /// The picture itself; none where there is only the sentence.
    [[nodiscard]] GlView* picture() const { return m_gl; }

Q_SIGNALS:
    void stripHovered(const QString& stripId);
    void stripClicked(const QString& stripId); ///< empty beside the strips
    /// While measuring: a place on the face of a laid strip, mm; none beside them.
    void touched(const std::optional<Eigen::Vector3d>& place);
    void drawn();

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void giveUp();
    void placeLegend();

    QStackedLayout* m_stack;
    GlView* m_gl = nullptr;
    QLabel* m_message;
    QLabel* m_stale;
    Legend* m_legend = nullptr;
};

} // namespace sheerlay::ui
