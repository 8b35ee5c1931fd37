#pragma once

#include "geometry/surface.hpp"
#include "geometry/tensor_surface.hpp"

#include <Eigen/Core>

#include <cmath>
#include <functional>
#include <utility>

/// Surfaces whose points and derivatives are closed forms, oriented as a starboard half hull is: X_u x X_v
/// points outward, and a line's D = n x T. On a surface of revolution (axis x, u along the meridian, v
/// around) a line running toward falling v has its D toward growing u.
namespace sheerlay::test {

/// A value with two derivatives.
struct Jet1 {
    double value = 0.0, first = 0.0, second = 0.0;
};

/// o + u a + v b.
class PlaneSurface final : public geometry::Surface {
public:
    PlaneSurface(Eigen::Vector3d o, Eigen::Vector3d a, Eigen::Vector3d b)
        : m_o(std::move(o)), m_a(std::move(a)), m_b(std::move(b)) {}
    [[nodiscard]] geometry::SurfaceJet jet(double u, double v) const override {
        const Eigen::Vector3d zero = Eigen::Vector3d::Zero();
        return {m_o + u * m_a + v * m_b, m_a, m_b, zero, zero, zero};
    }

private:
    Eigen::Vector3d m_o, m_a, m_b;
};

/// Circular cylinder about the x axis; u along the axis, v arc length around it, downward at v = 0: so it is
/// like a hull's side, and an isometry of the (u, v) plane.
class CylinderSurface final : public geometry::Surface {
public:
    explicit CylinderSurface(double radius) : m_r(radius) {}
    [[nodiscard]] geometry::SurfaceJet jet(double u, double v) const override {
        const double c = std::cos(v / m_r), s = std::sin(v / m_r);
        return {{u, m_r * c, -m_r * s}, {1, 0, 0}, {0, -s, -c}, {0, 0, 0}, {0, 0, 0}, {0, -c / m_r, s / m_r}};
    }

private:
    double m_r;
};

/// (h(u), rho(u) cos v, -rho(u) sin v).
class RevolutionSurface final : public geometry::Surface {
public:
    struct Profile {
        Jet1 h, rho;
    };
    explicit RevolutionSurface(std::function<Profile(double)> profile) : m_profile(std::move(profile)) {}

    [[nodiscard]] geometry::SurfaceJet jet(double u, double v) const override {
        const Profile p = m_profile(u);
        const double c = std::cos(v), s = std::sin(v);
        return {{p.h.value, p.rho.value * c, -p.rho.value * s},
                {p.h.first, p.rho.first * c, -p.rho.first * s},
                {0, -p.rho.value * s, -p.rho.value * c},
                {p.h.second, p.rho.second * c, -p.rho.second * s},
                {0, -p.rho.first * s, -p.rho.first * c},
                {0, -p.rho.value * c, p.rho.value * s}};
    }
    [[nodiscard]] double rho(double u) const { return m_profile(u).rho.value; }

private:
    std::function<Profile(double)> m_profile;
};

/// (semi-axis b along x, a across; u reduced latitude). A sphere for a = b.
[[nodiscard]] inline RevolutionSurface ellipsoid(double a, double b) {
    return RevolutionSurface([a, b](double u) -> RevolutionSurface::Profile {
        const double c = std::cos(u), s = std::sin(u);
        return {{b * s, b * c, -b * s}, {a * c, -a * s, -a * c}};
    });
}
[[nodiscard]] inline RevolutionSurface sphere(double radius) {
    return ellipsoid(radius, radius);
}

/// Right cone with its apex at the origin, opening toward +x; u slant distance from the apex.
[[nodiscard]] inline RevolutionSurface cone(double halfAngle) {
    return RevolutionSurface(
        [c = std::cos(halfAngle), s = std::sin(halfAngle)](double u) -> RevolutionSurface::Profile {
            return {{u * c, c, 0}, {u * s, s, 0}};
        });
}

/// Torus about the x axis: R to the tube's middle, r the tube; u angle around the tube, 0 on the outer
/// equator.
[[nodiscard]] inline RevolutionSurface torus(double R, double r) {
    return RevolutionSurface([R, r](double u) -> RevolutionSurface::Profile {
        const double c = std::cos(u), s = std::sin(u);
        return {{r * s, r * c, -r * s}, {R + r * c, -r * s, -r * c}};
    });
}

/// Tractroid, K = -1/a^2 everywhere: rho = a exp(-u/a), u > 0 arc length along the meridian.
[[nodiscard]] inline RevolutionSurface tractroid(double a) {
    return RevolutionSurface([a](double u) -> RevolutionSurface::Profile {
        const double e = std::exp(-u / a), h1 = std::sqrt(1 - e * e);
        return {{a * (std::acosh(1 / e) - h1), h1, e * e / (a * h1)}, {a * e, -e, e / a}};
    });
}

/// Least squares through a fine grid of exact points; the error falls as the sixth power of the spans'
/// length.
[[nodiscard]] geometry::TensorSurface splineOf(const std::function<Eigen::Vector3d(double, double)>& point,
                                               const geometry::UniformKnots& ku,
                                               const geometry::UniformKnots& kv);

} // namespace sheerlay::test
