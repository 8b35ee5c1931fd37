#include "ui/view3d/orbit_camera.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::ui {
namespace {

constexpr double margin = 1.06; // air around a fitted boat
constexpr double steepest = 0.5 * std::numbers::pi;
constexpr double nearest = 20.0;     // mm of picture height
constexpr double farthest = 60000.0; // mm of picture height

} // namespace

Eigen::Vector3d OrbitCamera::toBoat(const Eigen::Vector3d& room) const {
    return m_upsideDown ? Eigen::Vector3d(room.x(), -room.y(), -room.z()) : room;
}

Eigen::Vector3d OrbitCamera::right() const {
    return {std::cos(m_around), -std::sin(m_around), 0.0};
}

Eigen::Vector3d OrbitCamera::towardEye() const {
    return {-std::sin(m_around) * std::cos(m_over), -std::cos(m_around) * std::cos(m_over), std::sin(m_over)};
}

Eigen::Vector3d OrbitCamera::up() const {
    return towardEye().cross(right());
}

void OrbitCamera::setShape(std::vector<Eigen::Vector3d> shape) {
    if (shape.empty())
        return;
    m_shape = std::move(shape);
    if (!m_movedByHand)
        fit();
}

void OrbitCamera::setAspect(double aspect) {
    m_aspect = std::max(aspect, 0.05);
    if (!m_movedByHand)
        fit();
}

void OrbitCamera::setUpsideDown(bool upsideDown) {
    if (upsideDown == m_upsideDown)
        return;
    const Eigen::Vector3d target = toBoat(m_target);
    m_upsideDown = upsideDown;
    m_target = toRoom(target);
    if (!m_movedByHand)
        fit();
}

void OrbitCamera::look(Look look) {
    m_parallel = look != Look::ThreeQuarter;
    m_around = look == Look::Body ? steepest : look == Look::ThreeQuarter ? 0.5 : 0.0;
    m_over = look == Look::Plan ? steepest : look == Look::ThreeQuarter ? 0.42 : 0.0;
    m_movedByHand = false;
    fit();
}

void OrbitCamera::fit() {
    m_bounds.setEmpty();
    for (const Eigen::Vector3d& p : m_shape)
        m_bounds.extend(p);
    m_target = toRoom(m_bounds.center());
    const double lens = 1.0 / std::tan(0.5 * fieldOfView);
    double height = m_bounds.diagonal().norm();
    // with perspective the size depends on the distance and the distance on the size: a few rounds settle
    // both
    for (int round = 0; round < (m_parallel ? 1 : 12); ++round) {
        Eigen::Vector2d low{1e30, 1e30};
        Eigen::Vector2d high{-1e30, -1e30};
        const double distance = 0.5 * height * lens;
        for (const Eigen::Vector3d& p : m_shape) {
            const Eigen::Vector3d from = toRoom(p) - m_target;
            const double nearer =
                m_parallel ? 1.0 : distance / std::max(distance - from.dot(towardEye()), 0.05 * distance);
            const Eigen::Vector2d seen{from.dot(right()) * nearer, from.dot(up()) * nearer};
            low = low.cwiseMin(seen);
            high = high.cwiseMax(seen);
        }
        const Eigen::Vector2d offset = 0.5 * (low + high);
        m_target += offset.x() * right() + offset.y() * up();
        const Eigen::Vector2d size = high - low;
        const double wanted = margin * std::max(size.y(), size.x() / m_aspect);
        height = m_parallel || round == 0 ? wanted : 0.5 * (height + wanted);
    }
    m_height = std::clamp(height, nearest, farthest);
}

void OrbitCamera::turn(double around, double over) {
    m_movedByHand = true;
    m_parallel = false;
    m_around = std::remainder(m_around + around, 2.0 * std::numbers::pi);
    m_over = std::clamp(m_over + over, -steepest, steepest);
}

void OrbitCamera::pan(const Eigen::Vector2d& by) {
    m_movedByHand = true;
    m_target -= m_height * (by.x() * right() + by.y() * up());
}

void OrbitCamera::zoom(double factor, const Eigen::Vector2d& about) {
    m_movedByHand = true;
    const double height = std::clamp(m_height / factor, nearest, farthest);
    const double shift = m_height - height;
    m_target += shift * (about.x() * right() + about.y() * up());
    m_height = height;
}

CameraPose OrbitCamera::pose() const {
    CameraPose pose;
    const double distance = 0.5 * m_height / std::tan(0.5 * fieldOfView);
    pose.target = toBoat(m_target);
    // a parallel eye stands well outside the boat; how far makes no difference to the picture
    const double back = m_parallel ? std::max(distance, 2.0 * m_bounds.diagonal().norm()) : distance;
    pose.eye = toBoat(m_target + back * towardEye());
    pose.up = toBoat(up());
    pose.parallel = m_parallel;
    pose.height = m_height;
    return pose;
}

} // namespace sheerlay::ui
