#include "core/planking/taper_trade.hpp"

#include "core/planking/parallel_for.hpp"
#include "core/planking/start_line.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <functional>
#include <optional>

namespace sheerlay::core {

std::vector<TaperTrade> taperTrade(const TrimmedSurface& hull,
                                   const std::vector<geometry::MasterNode>& master,
                                   const TaperWish& wish,
                                   const std::vector<double>& limits,
                                   const std::vector<geometry::FanSide>& sides,
                                   unsigned threads,
                                   std::stop_token stop) {
    std::vector<std::optional<TaperedField>> fields(limits.size() * sides.size());
    parallelFor(fields.size(), threads, [&](std::size_t i) {
        TaperWish one = wish;
        one.limit = limits[i / sides.size()];
        one.side = sides[i % sides.size()];
        if (auto field = taperField(hull, master, one, stop))
            fields[i] = std::move(*field);
    });
    std::vector<TaperTrade> trades;
    for (std::size_t l = 0; l < limits.size(); ++l) {
        TaperTrade trade;
        trade.limit = limits[l];
        bool whole = true;
        for (std::size_t s = 0; s < sides.size() && whole; ++s) {
            const auto& field = fields[l * sides.size() + s];
            whole = field.has_value();
            if (!whole)
                break;
            trade.touched += field->touched;
            trade.wood += field->wood;
            trade.worst = std::max(trade.worst, field->worst);
            trade.metFrom = std::max(trade.metFrom, field->metFrom);
        }
        if (whole)
            trades.push_back(trade);
    }
    return trades;
}

std::vector<TaperTrade> taperTrade(const Project& project,
                                   const LoftedHull& hull,
                                   const Plan& plan,
                                   unsigned threads,
                                   std::stop_token stop) {
    using geometry::FanSide;
    if (plan.start.kind == StartLine::Kind::Knuckle) // two panels, each with tapers of its own
        return {};
    const auto master = startLine(hull.laid, plan.start, taperSpacing);
    if (!master)
        return {};
    TaperWish wish;
    wish.coverWidth = plan.coverWidth;
    wish.narrowest = narrowestAllowed(project);
    if (project.planking.taper != Taper::None)
        wish.where = project.planking.taper;
    std::vector<FanSide> sides{FanSide::TowardKeel};
    if (plan.start.kind != StartLine::Kind::Sheer || plan.start.shift > 0)
        sides.push_back(FanSide::TowardSheer);
    double plain = 0.0; // without a taper
    wish.limit = 1.0;   // 1/mm, which every edge keeps
    for (const FanSide side : sides) {
        wish.side = side;
        if (const auto field = taperField(hull.laid, *master, wish, stop))
            plain = std::max(plain, field->plainWorst);
    }
    std::vector<double> limits{plan.edgeBendLimit};
    for (const double perMetre : {1.0, 0.8, 0.6, 0.5, 0.4, 0.35, 0.3, 0.25, 0.2, 0.15, 0.12, 0.1, 0.08, 0.06})
        if (const double limit = perMetre * 1e-3; limit < 0.97 * plain && limit > 0.25 * plain)
            limits.push_back(limit);
    std::sort(limits.begin(), limits.end(), std::greater<>());
    const auto same = [](double a, double b) { return std::abs(a - b) < 0.01e-3; };
    limits.erase(std::unique(limits.begin(), limits.end(), same), limits.end());
    return taperTrade(hull.laid, *master, wish, limits, sides, threads, stop);
}

} // namespace sheerlay::core
