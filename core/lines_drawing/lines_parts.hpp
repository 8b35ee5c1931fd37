#pragma once

#include "core/hull/hull.hpp"
#include "core/lines/hull_lines.hpp"
#include "core/lines_drawing/lines_view.hpp"
#include "core/project/project.hpp"

#include <Eigen/Core>

#include <string>
#include <vector>

namespace sheerlay::core {

/// The lines of the hull as the table draws it, with what they are called: reckoned once, drawn at any scale.
/// Sections are the table's stations; the other lines stand at round figures. mm in the boat's frame.
struct DrawnLines {
    LineChoices choices;
    std::vector<std::string> names; ///< of the choices' stations
    std::vector<HullLine> lines;
    std::vector<Eigen::Vector3d> bowTransom, sternTransom; ///< edges; empty where there is none
    std::vector<Eigen::Vector3d> knuckle;                  ///< empty where there is none
    double bow = 1e9, stern = -1e9;                        ///< x of the ends
    double low = 0.0, high = -1e9;                         ///< heights; the base line at 0 is among them
    double broad = 0.0;                                    ///< largest half-breadth
    double far = 0.0;                                      ///< largest distance along a diagonal
    double widestX = 0.0; ///< sections before it stand to the right of the body plan
};

/// @param units  of the round figures
[[nodiscard]] DrawnLines drawnLines(const Project& project, const LoftedHull& hull, Units units);

/// Draws the parts of a lines drawing, each on a view of its own. Profile, half-breadths and diagonals: a is
/// x and b the height, half-breadth or distance. Body plan: a is the half-breadth to the right, b the height.
class LinesParts {
public:
    /// @param lines, pen  must outlive the parts
    LinesParts(const DrawnLines& lines, Units units, LinesPen& pen)
        : m_lines(lines), m_units(units), m_pen(pen) {}

    void profile(const LinesView& view);
    void halfBreadths(const LinesView& view);
    void diagonals(const LinesView& view);
    void bodyPlan(const LinesView& view);
    /// The stations' names in a row, their middles on `edge` mm of paper.
    void stationNames(const LinesView& view, double edge);
    /// "A", "B", … for the diagonals
    [[nodiscard]] static std::string letter(std::size_t index);

private:
    template <class A, class B>
    [[nodiscard]] PaperLine onPaper(const LinesView& view, const HullLine& line, A a, B b) const;
    [[nodiscard]] std::string length(double mm) const;
    void across(const LinesView& view, const std::vector<double>& levels, Colour colour);
    void upright(const LinesView& view, double from, double to);
    void name(const PaperLine& points, const HullLine& line, const std::string& text, Colour colour);
    /// Transoms and knuckle.
    void edges(const LinesView& view, bool fromAbove);
    void bodyGrid(const LinesView& view);
    void bodyDiagonals(const LinesView& view);
    void bodySections(const LinesView& view);
    void bodyName(const Eigen::Vector2d& head, double side, const std::string& name);

    const DrawnLines& m_lines;
    Units m_units;
    LinesPen& m_pen;
};

} // namespace sheerlay::core
