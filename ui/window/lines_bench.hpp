#pragma once

#include "core/hull/hull.hpp"
#include "core/lines_drawing/lines_picture.hpp"
#include "core/project/project.hpp"
#include "ui/scene/boat.hpp"
#include "ui/window/task_runner.hpp"

#include <QWidget>

#include <Eigen/Core>

#include <memory>
#include <optional>
#include <vector>

class QLabel;
class QToolButton;

namespace sheerlay::ui {

class LinesBoard;
class LoftPanel;
class OffsetsGrid;
class TableTools;

/// The Lines bench: the lines drawing over the table of offsets as a grid to work in, what there is to say of
/// the cell in hand, and beside them how near the loft runs to the table and what was found in it.
class LinesBench : public QWidget {
    Q_OBJECT
public:
    explicit LinesBench(TaskRunner::Mode mode = TaskRunner::Mode::Thread, QWidget* parent = nullptr);

    /// The project on the desk, edits and all.
    void setProject(const core::Project& project);
    /// A hull that was lofted from a project on the desk, before it is planked.
    void setLoft(const core::Project& project, std::shared_ptr<const core::LoftedHull> hull);
    /// Null empties the bench.
    void setBoat(const std::shared_ptr<const Boat>& boat);
    void setUnits(core::Units units);
    void showPart(core::LinesPart part);

    [[nodiscard]] OffsetsGrid* grid() const { return m_grid; }
    [[nodiscard]] LoftPanel* loft() const { return m_loft; }
    [[nodiscard]] LinesBoard* board() const { return m_board; }
    [[nodiscard]] TableTools* tools() const { return m_tools; }
    /// What stands below the grid of the cell in hand.
    [[nodiscard]] QString told() const;
    /// What could not be done, below that; empty where all was.
    [[nodiscard]] QString said() const;
    [[nodiscard]] QToolButton* fairButton() const { return m_fair; }
    [[nodiscard]] QToolButton* likelyButton() const { return m_likely; }

Q_SIGNALS:
    /// The table was edited into this project.
    void edited(const QString& name, const sheerlay::core::Project& project);

private:
    QWidget* makeBoard();
    QWidget* makeTable();
    void tell();
    void say(const QString& text);
    void draw();
    void askFairing(double fairing);
    void goTo(const core::Finding& finding);
    [[nodiscard]] std::optional<Eigen::Vector3d> cellInHand() const;

    TaskRunner* m_drawing;
    core::Project m_loftedProject;
    std::shared_ptr<const core::LoftedHull> m_hull;
    core::Units m_units = core::Units::Millimetres;
    LinesBoard* m_board;
    OffsetsGrid* m_grid;
    TableTools* m_tools;
    LoftPanel* m_loft;
    QLabel *m_told, *m_said;
    QToolButton *m_fair, *m_likely;
    std::vector<QToolButton*> m_parts;
};

} // namespace sheerlay::ui
