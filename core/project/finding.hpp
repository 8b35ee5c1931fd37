#pragma once

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// note: good to know; caution: will be hard or wasteful; stop: can't be built as planned.
enum class Level { Note, Caution, Stop };

/// Why the builder put a finding aside, and when.
struct AsideNote {
    std::string reason;
    std::string date;

    friend bool operator==(const AsideNote&, const AsideNote&) = default;
};

/// One thing the builder should know about the table, the loft or the plan.
struct Finding {
    Level level = Level::Note;
    std::string code;                              ///< kebab-case, stable
    std::optional<std::string> strip;              ///< id as in Strip::id
    std::optional<double> x;                       ///< mm from the bow
    std::string text;                              ///< one sentence: what, where, what to do
    std::optional<AsideNote> aside = std::nullopt; ///< set by withAsides() where the builder put it aside

    friend bool operator==(const Finding&, const Finding&) = default;
};

/// Stops before cautions before notes; those of equal weight keep their order.
[[nodiscard]] std::vector<Finding> heaviestFirst(std::vector<Finding> findings);

[[nodiscard]] const char* toText(Level level) noexcept;

/// `LEVEL CODE [STRIP] [x=…]: text`, and the reason behind it where it was put aside.
[[nodiscard]] std::string toText(const Finding& finding);

} // namespace sheerlay::core
