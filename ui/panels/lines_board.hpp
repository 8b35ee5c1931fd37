#pragma once

#include "core/lines_drawing/lines_picture.hpp"
#include "core/project/project.hpp"

#include <QPointF>
#include <QWidget>

#include <Eigen/Core>

#include <memory>
#include <optional>
#include <vector>

namespace sheerlay::ui {

/// The lines drawing as a view: the wheel draws the boat larger or smaller about the pointer, dragging moves
/// the board, a double click shows all of it again. Type and pens keep their size.
class LinesBoard : public QWidget {
    Q_OBJECT
public:
    explicit LinesBoard(QWidget* parent = nullptr);

    /// Null empties the board.
    void setLines(std::shared_ptr<const core::DrawnLines> lines);
    [[nodiscard]] const core::DrawnLines* lines() const noexcept { return m_lines.get(); }
    void setUnits(core::Units units);
    void setPart(core::LinesPart part);
    /// A point to ring on every view, mm in the boat's frame; starboard.
    void setMark(const std::optional<Eigen::Vector3d>& mark);
    /// Draws the boat `by` times as large, the place under `about` (in widget pixels) staying where it is.
    void zoomBy(double by, const QPointF& about);
    void zoomIn() { zoomBy(step, rect().center()); }
    void zoomOut() { zoomBy(1 / step, rect().center()); }
    void showAll();

    [[nodiscard]] core::LinesPart part() const noexcept { return m_part; }
    [[nodiscard]] double zoom() const noexcept { return m_zoom; }
    /// Where the mark's rings stand, in widget pixels; for tests.
    [[nodiscard]] std::vector<QPointF> rings() const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;

private:
    static constexpr double step = 1.25;

    using View = std::optional<core::LinesView> core::LinesPicture::*;

    [[nodiscard]] View viewAt(const Eigen::Vector2d& paper) const;
    [[nodiscard]] Eigen::Vector2d onPaper(const QPointF& place) const;
    void lay();
    void keepOnBoard();
    [[nodiscard]] QPointF onWidget(const Eigen::Vector2d& paper) const;

    std::shared_ptr<const core::DrawnLines> m_lines;
    core::LinesPicture m_picture;
    core::LinesPart m_part = core::LinesPart::Whole;
    core::Units m_units = core::Units::Millimetres;
    std::optional<Eigen::Vector3d> m_mark;
    double m_zoom = 1.0;
    QPointF m_origin; ///< pixels of the picture's upper left corner
    QPointF m_held;   ///< where the board was taken hold of
};

} // namespace sheerlay::ui
