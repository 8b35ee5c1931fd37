#pragma once

#include "core/hull/hull.hpp"
#include "core/planking/plan.hpp"

#include <optional>
#include <vector>

namespace sheerlay::core {

/// A tape along the mould at one station, from anywhere on the planking to where it ends at the bottom (the
/// centreline, or the side of a keel batten).
class MouldTape {
public:
    MouldTape(const LoftedHull& hull, double x); ///< x in mm from the bow

    [[nodiscard]] double x() const noexcept { return m_x; }                     ///< mm from the bow
    [[nodiscard]] bool misses() const noexcept { return m_section.size() < 2; } ///< no mould there
    [[nodiscard]] double whole() const noexcept;                                ///< mm, from the sheer
    /// mm from the foot of `point` on the mould; `point` in or near the station's plane, starboard.
    [[nodiscard]] double leftFrom(const Eigen::Vector3d& point) const;
    /// Unit direction of the mould at the foot of `point`, toward the keel.
    [[nodiscard]] Eigen::Vector3d directionAt(const Eigen::Vector3d& point) const;

private:
    struct Foot {
        std::size_t cell = 0;
        double part = 0.0;
    };
    [[nodiscard]] Foot footOf(const Eigen::Vector3d& point) const;

    double m_x = 0.0;
    std::vector<Eigen::Vector3d> m_section; ///< sheer to keel
    std::vector<double> m_girth;            ///< mm from the first point
};

/// What a reading would say if everything were laid as planned.
struct PlannedGirth {
    double left = 0.0;   ///< mm along the mould, from the row's lower edge to the centreline
    double square = 1.0; ///< mm square to the edge for 1 mm along the mould: cosine of the angle between them
};

/// Planned girth left below `row` at x; row 0 is the line the planking starts from. None where the edge does
/// not pass: beyond its ends, or rows the plan does not have.
/// @accuracy  tests/core/journal/planned_girth_test.cpp: pipe within 0.01 mm, canoe against the design
/// figures
[[nodiscard]] std::optional<PlannedGirth>
plannedGirthLeft(const Plan& plan, const LoftedHull& hull, int row, double x);

/// The same for several rows at one station.
[[nodiscard]] std::optional<PlannedGirth> plannedGirthLeft(const Plan& plan, int row, const MouldTape& tape);

/// The last plank by the plan.
struct PlannedLastPlank {
    int lastRow = 0;    ///< last row before it
    double x = 0.0;     ///< mm from the bow, where it is widest
    double width = 0.0; ///< mm there; over both sides when sides is 2
    int sides = 1;      ///< 2 when one plank closes both sides at once
};

/// None where rows do not close on the centreline: a bottom planked by itself, or a plan that stopped.
[[nodiscard]] std::optional<PlannedLastPlank> plannedLastPlank(const Plan& plan, const LoftedHull& hull);

/// Reach of the row's lower edge along the boat, mm from the bow; none when the plan has no such row.
struct Reach {
    double from = 0.0;
    double to = 0.0;
};
[[nodiscard]] std::optional<Reach> reachOf(const Plan& plan, int row);

} // namespace sheerlay::core
