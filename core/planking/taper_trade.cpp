#include "core/planking/taper_trade.hpp"

#include "core/planking/parallel_for.hpp"

#include <algorithm>
#include <cstddef>
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

} // namespace sheerlay::core
