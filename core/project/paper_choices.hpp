#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace sheerlay::core {

/// Paper for the shop's sheets.
enum class PageSize { A4, Letter, A3, Tabloid };

/// Papers by the names they are chosen by, in the order they are offered.
inline constexpr std::array<std::pair<std::string_view, PageSize>, 4> papers{
    {{"A4", PageSize::A4},
     {"Letter", PageSize::Letter},
     {"A3", PageSize::A3},
     {"Tabloid", PageSize::Tabloid}}};

/// How the shop's sheets are printed; never changes a plan.
struct PaperChoices {
    std::optional<PageSize> size; ///< none: the one that goes with the units
    bool severalRows = false;     ///< small rows share a cut sheet

    friend bool operator==(const PaperChoices&, const PaperChoices&) = default;
};

} // namespace sheerlay::core
