#pragma once

#include "core/project/project.hpp"

#include <string>
#include <string_view>

namespace sheerlay::core {

/// What the journal says about a strip that was laid; none while it was not.
[[nodiscard]] const LaidStrip* laidEntry(const Journal& journal, std::string_view strip);

/// The journal with a strip laid on a day; a strip that is down already stays as it was entered.
[[nodiscard]] Journal markLaid(Journal journal, std::string_view strip, std::string date);

/// The journal without the entry of a strip.
[[nodiscard]] Journal unmarkLaid(Journal journal, std::string_view strip);

/// The journal with a note on a strip; one that is not laid takes none. An empty note takes it away.
[[nodiscard]] Journal noteOn(Journal journal, std::string_view strip, std::string note);

/// True where the plan can't differ: only which strips are down, what was put aside, and language and size of
/// the paper do.
[[nodiscard]] bool plansAlike(const Project& a, const Project& b);

/// True where the strips can't differ, though boards, moulds and fit-out may.
[[nodiscard]] bool stripsAlike(const Project& a, const Project& b);

/// True where the lofted hull can't differ.
[[nodiscard]] bool hullsAlike(const Project& a, const Project& b);

} // namespace sheerlay::core
