#pragma once

#include "core/project/finding.hpp"
#include "geometry/expected.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// A finding that the builder has read and put aside, as it was then. It stays aside as long as it says the
/// same; when it grows heavier, moves or says something else it is open again.
struct PutAside {
    Level level = Level::Note; ///< a note or a caution; a stop can't be put aside
    std::string code;
    std::optional<std::string> strip;
    std::optional<double> x; ///< mm from the bow
    std::string text;        ///< what it said; empty (left out by hand): whatever it says there
    AsideNote note;          ///< the reason is never empty
    int line = 0;            ///< of the project file, from 1

    friend bool operator==(const PutAside&, const PutAside&) = default;
};

/// How far, mm, a finding may move along the boat and still be the one that was put aside.
inline constexpr double asideReach = 50.0;

/// The findings, those put aside marked with the reason. An entry covers one finding at most: of the same
/// code and strip, no heavier, at the same place to within asideReach, in the same words, with no figure in
/// them changed by more than a twentieth.
[[nodiscard]] std::vector<Finding> withAsides(std::vector<Finding> findings,
                                              const std::vector<PutAside>& asides);

/// The entries that cover none of these findings: mended since, changed since, or of a code nobody knows.
[[nodiscard]] std::vector<PutAside> unmetAsides(const std::vector<Finding>& findings,
                                                const std::vector<PutAside>& asides);

/// As withAsides(), and a note for each entry that covers none of them; for a list that is complete.
[[nodiscard]] std::vector<Finding> toldWithAsides(std::vector<Finding> findings,
                                                  const std::vector<PutAside>& asides);

/// The entries with one more, for this finding.
/// @return  or, in a sentence, why it can't be put aside: it is a stop, or no reason was given
[[nodiscard]] Expected<std::vector<PutAside>, std::string>
putAside(std::vector<PutAside> asides, const Finding& finding, AsideNote note);

/// The entries without the one that covers this finding among these; all of them where none does.
[[nodiscard]] std::vector<PutAside>
takeBack(std::vector<PutAside> asides, const std::vector<Finding>& findings, const Finding& finding);

} // namespace sheerlay::core
