#include "core/project/ten_strips.hpp"

namespace sheerlay::core {

double tenStripsMeasure(const StripStock& strip) noexcept {
    return (testStrips - 1) * strip.coverWidth + strip.width;
}

std::optional<double> coverByTenStrips(double measured, const StripStock& strip) noexcept {
    const double cover = (measured - strip.width) / (testStrips - 1);
    if (!(cover > 0.0 && cover <= strip.width))
        return std::nullopt;
    return cover;
}

} // namespace sheerlay::core
