#pragma once

#include <Eigen/Core>
#include <Eigen/Geometry>

#include <vector>

namespace sheerlay::ui {

/// Ways to look at the boat.
enum class Look { ThreeQuarter, Plan, Profile, Body };

/// Where the eye stands, in the boat's frame, mm.
struct CameraPose {
    Eigen::Vector3d eye, target, up;
    bool parallel = false;  ///< drawing-like (no perspective)
    double height = 1000.0; ///< mm seen from bottom to top of the picture at the target
};

/// Turns, shifts and zooms the eye about the boat. Knows nothing of screens: movements are parts of the
/// picture's height. The room's vertical stays vertical in the picture; upside down turns the boat about x,
/// not the eye.
class OrbitCamera {
public:
    static constexpr double fieldOfView = 0.42; ///< rad, bottom to top; mild, so that lines stay believable

    /// Points that fill the picture when the boat is fitted into it, mm.
    void setShape(std::vector<Eigen::Vector3d> shape);
    /// Width of the picture over its height; refits as long as nobody moved the eye by hand.
    void setAspect(double aspect);
    void setUpsideDown(bool upsideDown);
    [[nodiscard]] bool upsideDown() const noexcept { return m_upsideDown; }

    /// Takes a standard view and fits the boat into it.
    void look(Look look);
    /// Fits the boat into the picture without turning.
    void fit();
    /// @param around, over  rad; + around turns the near side of the boat to the right, + over tips it toward
    /// the eye
    void turn(double around, double over);
    /// Moves the boat in the picture; parts of its height, right and up.
    void pan(const Eigen::Vector2d& by);
    /// @param factor  > 1 comes closer
    /// @param about   place that stays put: parts of the height from the picture's middle, right and up
    void zoom(double factor, const Eigen::Vector2d& about);

    [[nodiscard]] CameraPose pose() const;

private:
    [[nodiscard]] Eigen::Vector3d toBoat(const Eigen::Vector3d& room) const;
    [[nodiscard]] Eigen::Vector3d toRoom(const Eigen::Vector3d& boat) const { return toBoat(boat); }
    [[nodiscard]] Eigen::Vector3d right() const;
    [[nodiscard]] Eigen::Vector3d towardEye() const;
    [[nodiscard]] Eigen::Vector3d up() const;

    std::vector<Eigen::Vector3d> m_shape{{0, -500, -300}, {5000, 500, 300}};
    Eigen::AlignedBox3d m_bounds;
    double m_aspect = 1.5;
    bool m_upsideDown = true;
    bool m_parallel = false;
    bool m_movedByHand = false;
    double m_around = 0.0, m_over = 0.0;  // rad
    Eigen::Vector3d m_target{2500, 0, 0}; // in the room
    double m_height = 2000.0;
};

} // namespace sheerlay::ui
