#pragma once

#include "core/sheets/pieces.hpp"
#include "core/sheets/words.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::core {

/// A heading with sentences under it; a difficulty shows as a patch of colour before the heading.
struct Note {
    std::string heading;
    std::optional<Difficulty> difficulty;
    std::vector<std::string> paragraphs;
};

/// Everything a strip asks of its builder besides its ends, most pressing first: edge bend and how to hold
/// it, findings, twist and bend over the moulds, what they ask of the wood.
[[nodiscard]] std::vector<Note>
notesOn(const Piece& piece, const Plan& plan, const Places& places, Units units);

/// After the length in large: "to cut, 10 mm at each end to trim; about 4845 mm of it stays on the boat. P21
/// needs only 4830 mm." The last where the sides differ by 5 mm or more, as a weave has them.
[[nodiscard]] std::string cutSentence(const Piece& piece, Units units);

/// "Next to it: toward the sheer S06 and P06, toward the keel S08 and P08."
[[nodiscard]] std::string neighbourSentence(const Piece& piece, const Plan& plan);

/// What shop work on these strips asks care for, short, for the foot of a sheet.
[[nodiscard]] std::vector<std::string> cautionsFor(const Project& project);

/// "Caution: Plane the lower edge …", and the reason behind it where it was put aside.
[[nodiscard]] std::string toSentence(const Finding& finding, Units units);

/// The same without its level.
[[nodiscard]] std::string toldPlainly(const Finding& finding, Units units);

} // namespace sheerlay::core
