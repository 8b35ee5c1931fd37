#pragma once

#include "core/afloat/afloat_trial.hpp"
#include "core/sheets/load_board.hpp"
#include "ui/scene/boat.hpp"
#include "ui/window/task_runner.hpp"

#include <QWidget>

#include <cstddef>
#include <memory>
#include <optional>
#include <vector>

namespace sheerlay::ui {

/// The boat in the water with her load. A weight is dragged along her, and water line, figures and curves
/// follow on a worker, the newest place first; when it is let go the project is asked to follow.
class LoadPanel : public QWidget {
    Q_OBJECT
public:
    explicit LoadPanel(TaskRunner::Mode mode, QWidget* parent = nullptr);

    void setBoat(std::shared_ptr<const Boat> boat);
    void setUnits(core::Units units);
    /// What is drawn; none while there is nothing to draw.
    [[nodiscard]] const std::optional<core::AfloatReport>& report() const noexcept { return m_report; }
    /// Where the middle of a load's mark is on the panel, pixels. @throws std::out_of_range  no such load
    [[nodiscard]] QPointF markOf(std::size_t load) const;

Q_SIGNALS:
    /// A load was let go. @param x  mm, datum of the table
    void moved(std::size_t load, double x);

protected:
    void paintEvent(QPaintEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    void prepare();
    void refloat();
    void layOut();
    [[nodiscard]] double pixelsPerMm() const;
    [[nodiscard]] std::optional<std::size_t> loadAt(const QPointF& place) const;

    std::shared_ptr<const Boat> m_boat;
    std::shared_ptr<const core::AfloatTrial> m_trial; // of m_boat
    std::vector<core::WeightItem> m_loads;
    std::optional<core::AfloatReport> m_report;
    core::LoadBoard m_board;
    core::Units m_units = core::Units::Millimetres;
    TaskRunner* m_runner;
    std::optional<std::size_t> m_held;
    bool m_floating = false, m_again = false; // on the worker; moved since
    QString m_words;                          // said where nothing can be drawn
};

} // namespace sheerlay::ui
