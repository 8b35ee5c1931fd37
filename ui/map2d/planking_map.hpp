#pragma once

#include "core/project/project.hpp"
#include "ui/scene/boat.hpp"
#include "ui/scene/scarf_marks.hpp"
#include "ui/scene/start_preview.hpp"
#include "ui/scene/strip_colour.hpp"

#include <QLineF>
#include <QPointF>
#include <QPolygonF>
#include <QRectF>
#include <QString>
#include <QTransform>
#include <QWidget>

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace sheerlay::ui {

/// A name on the map.
struct MapLabel {
    QString text;
    QRectF box;                   ///< in the widget
    std::optional<QLineF> leader; ///< of a mark: from its box to the place that it marks
};

/// The planking rolled out flat, as one looks down on the upturned boat: bow left, port above, starboard
/// below. Lengths across are true along the girth of every station; all lengths are to one scale. GUI thread
/// only.
class PlankingMap : public QWidget {
    Q_OBJECT
public:
    explicit PlankingMap(QWidget* parent = nullptr);

    /// @param boat  none clears the map
    void setBoat(std::shared_ptr<const Boat> boat);
    void setLaidCount(int count);
    void setSelected(const std::string& stripId);
    /// Outlines a strip that is pointed at elsewhere.
    void setHovered(const std::string& stripId);
    void setUnits(core::Units units);
    void setColours(StripColours colours);
    /// The start line can be taken by its handle and moved.
    void setStartShown(bool shown);
    /// Draws a start line that is being tried, with what it does; none puts it away.
    void setStartPreview(std::optional<StartPreview> preview);
    /// Marks a place along the boat, mm from the bow, and brings it into sight; none takes the mark away.
    void setPlace(std::optional<double> x);
    [[nodiscard]] std::optional<double> place() const noexcept { return m_place; }
    /// Where the strips are scarfed; none until the boards are planned. They go with the boat.
    void setScarfs(std::vector<ScarfMark> scarfs);
    /// What the map tells of the scarf under a place of the widget; empty for none.
    [[nodiscard]] QString scarfTextAt(const QPointF& place) const;
    /// Clicks, and Enter at a mark that the arrows move, name places instead of strips.
    void setMeasuring(bool measuring);
    [[nodiscard]] bool measuring() const noexcept { return m_measuring; }
    /// The tape while measuring, in map points; one point for its first end alone.
    void setTape(std::vector<Eigen::Vector2d> line);
    /// Place of the widget where the start line is taken hold of; none when it isn't shown.
    [[nodiscard]] std::optional<QPointF> startHandle() const;
    /// The names of stations and marks that there is room for, none over another.
    [[nodiscard]] std::vector<MapLabel> labels() const;
    /// Whole planking into the widget.
    void fit();
    /// Closer (> 1) or farther about a place of the widget.
    void zoom(double factor, const QPointF& about);

    /// Strip under a place of the widget; empty for none.
    [[nodiscard]] std::string stripAt(const QPointF& place) const;
    /// Place of the widget where a point of the map (x, girth; mm) is drawn.
    [[nodiscard]] QPointF toWidget(const QPointF& mapPoint) const { return m_toWidget.map(mapPoint); }
    [[nodiscard]] QSize sizeHint() const override { return {900, 260}; }

Q_SIGNALS:
    void stripHovered(const QString& stripId);
    void stripClicked(const QString& stripId);
    void startDragged(double girth); ///< mm below the sheer, around the widest section
    void startDropped(double girth);
    void touched(const QPointF& mapPoint); ///< while measuring: x, girth from the bottom's middle; mm

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

private:
    [[nodiscard]] std::optional<std::size_t> indexAt(const QPointF& place) const;
    void paintStrips(QPainter& painter) const;
    void paintDrawing(QPainter& painter) const;
    void paintLabels(QPainter& painter) const;
    /// A word that may lie over strips.
    static void paintWord(QPainter& painter, const QRectF& box, int where, const QString& text);
    void addMarks(std::vector<MapLabel>& labels) const;
    void addStations(std::vector<MapLabel>& labels) const;
    void paintStart(QPainter& painter) const;
    void paintPlace(QPainter& painter) const;
    void paintTape(QPainter& painter) const;
    void paintScarfs(QPainter& painter) const;
    [[nodiscard]] QLineF strokeOf(const ScarfMark& scarf) const;
    void touchAt(const QPointF& mapPoint);
    void tellMark();
    [[nodiscard]] bool keepsKey(const QKeyEvent& event) const;
    [[nodiscard]] double handleX() const;
    [[nodiscard]] double girthAt(const QPointF& place) const;
    [[nodiscard]] MapLabel markOf(const core::StripEnd& end, const QString& text, bool above) const;

    std::shared_ptr<const Boat> m_boat;
    std::vector<QPolygonF> m_polygons; // map coordinates, as Plan::strips
    QTransform m_toWidget;
    core::Units m_units = core::Units::Millimetres;
    StripColours m_colours = StripColours::Bend;
    int m_laid = 0;
    std::string m_selected;
    std::string m_hovered;
    bool m_fitted = true;
    QPointF m_pressed, m_last;
    bool m_dragging = false;
    bool m_startShown = false;
    bool m_startHeld = false; ///< the start line is in the builder's hand
    std::optional<StartPreview> m_preview;
    std::optional<double> m_place; ///< mm from the bow
    std::vector<ScarfMark> m_scarfs;
    bool m_measuring = false;
    std::vector<Eigen::Vector2d> m_tape; ///< map points
    std::optional<QPointF> m_mark;       ///< map point that the keys move while measuring
};

} // namespace sheerlay::ui
