#include "core/planking/strength.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <stdexcept>

namespace sheerlay::core {

Strength::Strength(const Wood& wood, double thickness, double width)
    : m_thickness(thickness), m_width(width), m_modulus(wood.alongModulus * 1000),
      m_allowedStrain(allowedPart * wood.bendingStrength / (wood.alongModulus * 1000)),
      m_allowedShear(allowedShearPart * wood.shearStrength) {
    if (!(thickness > 0) || !(width > 0))
        throw std::invalid_argument("Strength: thickness and width must be positive");
    // beta / alpha of Saint-Venant: tau_max = c G t theta'
    const double n = std::max(width, thickness) / std::min(width, thickness);
    double sum = 0;
    for (int k = 1; k < 60; k += 2)
        sum += 1 / (k * k * std::cosh(k * std::numbers::pi * n / 2));
    const double c = 1 - 8 / (std::numbers::pi * std::numbers::pi) * sum;
    m_shearFactor = c * wood.shearModulus * std::min(thickness, width);
}

double Strength::strain(double edgeBend, double bend, double twist) const noexcept {
    const double bending = 0.5 * (m_width * std::abs(edgeBend) + m_thickness * std::abs(bend));
    const double shear = m_shearFactor * std::abs(twist) / m_allowedShear;
    return bending / m_allowedStrain + shear * shear;
}

double Strength::edgeBendRadius() const noexcept {
    return 0.5 * m_width / m_allowedStrain;
}

double Strength::holdingForce(double edgeBend, double bay) const noexcept {
    const double inertia = m_thickness * m_width * m_width * m_width / 12;
    return 6 * m_modulus * inertia * std::abs(edgeBend) / bay;
}

} // namespace sheerlay::core
