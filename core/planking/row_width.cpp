#include "core/planking/row_width.hpp"

#include <algorithm>
#include <functional>
#include <stdexcept>
#include <utility>

namespace sheerlay::core {

RowWidth::RowWidth(std::vector<double> u, std::vector<double> width)
    : m_u(std::move(u)), m_width(std::move(width)), m_second(m_u.size(), 0.0) {
    const std::size_t n = m_u.size();
    if (n < 2 || m_width.size() != n ||
        std::adjacent_find(m_u.begin(), m_u.end(), std::greater_equal<>()) != m_u.end())
        throw std::invalid_argument("RowWidth: two or more widths at increasing u");
    // natural cubic spline: one tridiagonal sweep
    std::vector<double> right(n, 0.0);
    for (std::size_t i = 1; i + 1 < n; ++i) {
        const double h0 = m_u[i] - m_u[i - 1];
        const double h1 = m_u[i + 1] - m_u[i];
        const double pivot = 2 * (h0 + h1) - h0 * right[i - 1];
        right[i] = h1 / pivot;
        const double bend = 6 * ((m_width[i + 1] - m_width[i]) / h1 - (m_width[i] - m_width[i - 1]) / h0);
        m_second[i] = (bend - h0 * m_second[i - 1]) / pivot;
    }
    for (std::size_t i = n - 1; i-- > 1;)
        m_second[i] -= right[i] * m_second[i + 1];
}

double RowWidth::at(double u) const {
    if (u <= m_u.front())
        return m_width.front();
    if (u >= m_u.back())
        return m_width.back();
    const auto i = static_cast<std::size_t>(std::upper_bound(m_u.begin(), m_u.end(), u) - m_u.begin()) - 1;
    const double h = m_u[i + 1] - m_u[i];
    const double b = (u - m_u[i]) / h;
    const double a = 1 - b;
    return a * m_width[i] + b * m_width[i + 1] +
           h * h / 6 * ((a * a * a - a) * m_second[i] + (b * b * b - b) * m_second[i + 1]);
}

} // namespace sheerlay::core
