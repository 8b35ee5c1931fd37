#include "core/planking/strength.hpp"

#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <stdexcept>

namespace sheerlay::core {

Strength::Strength(const Wood& wood, double thickness, double width)
    : m_thickness(thickness), m_width(width), m_modulus(wood.alongModulus * 1000),
      m_shearModulus(wood.shearModulus),
      m_allowedStrain(allowedPart * wood.bendingStrength / (wood.alongModulus * 1000)),
      m_allowedShear(allowedShearPart * wood.shearStrength) {
    if (!(thickness > 0) || !(width > 0))
        throw std::invalid_argument("Strength: thickness and width must be positive");
    // beta / alpha of Saint-Venant: tau_max = c G t theta'; J = beta w t^3
    constexpr double pi = std::numbers::pi;
    const double wide = std::max(width, thickness), thin = std::min(width, thickness), n = wide / thin;
    double ofShear = 0, ofStiffness = 0;
    for (int k = 1; k < 60; k += 2) {
        ofShear += 1 / (k * k * std::cosh(k * pi * n / 2));
        ofStiffness += std::tanh(k * pi * n / 2) / std::pow(k, 5);
    }
    m_shearFactor = (1 - 8 / (pi * pi) * ofShear) * wood.shearModulus * thin;
    m_torsion = (1 - 192 / std::pow(pi, 5) / n * ofStiffness) / 3 * wide * thin * thin * thin;
}

double Strength::strain(double edgeBend, double bend, double twist) const noexcept {
    const double bending = 0.5 * (m_width * std::abs(edgeBend) + m_thickness * std::abs(bend));
    const double shear = m_shearFactor * std::abs(twist) / m_allowedShear;
    return bending / m_allowedStrain + shear * shear;
}

double Strength::edgeBendRadius() const noexcept {
    return 0.5 * m_width / m_allowedStrain;
}

WoodUse Strength::woodUse(double strain) noexcept {
    constexpr double elasticPart = 0.65; // of the modulus of rupture, dry
    if (strain <= 1)
        return WoodUse::ByHand;
    return strain <= elasticPart / allowedPart ? WoodUse::PickStraight : WoodUse::SteamIt;
}

const char* Strength::advice(WoodUse use) noexcept {
    switch (use) {
    case WoodUse::ByHand:
        return sayable("it bends dry, by hand");
    case WoodUse::PickStraight:
        return sayable("pick straight-grained stock and expect some of it to break");
    case WoodUse::SteamIt:
        break;
    }
    return sayable(
        "past 65 percent of its strength clear wood won't do this dry: steam it, laminate it, or mill "
        "it thinner or narrower");
}

double Strength::holdingForce(double edgeBend, double bay) const noexcept {
    return 6 * edgeCouple(edgeBend) / bay;
}

double Strength::edgeCouple(double edgeBend) const noexcept {
    return m_modulus * m_thickness * m_width * m_width * m_width / 12 * std::abs(edgeBend);
}

double Strength::twistingCouple(double twist) const noexcept {
    return m_shearModulus * m_torsion * std::abs(twist);
}

double Strength::rollingEdgeBend(double bay) const noexcept {
    if (m_width <= m_thickness)
        return std::numeric_limits<double>::infinity();
    const double edge = m_modulus * m_thickness * m_width * m_width * m_width / 12;
    const double flat = m_modulus * m_width * m_thickness * m_thickness * m_thickness / 12;
    return std::numbers::pi / bay * std::sqrt(flat * m_shearModulus * m_torsion) / edge;
}

double Strength::rolling(double edgeBend, double bay) const noexcept {
    return std::abs(edgeBend) / rollingEdgeBend(bay);
}

} // namespace sheerlay::core
