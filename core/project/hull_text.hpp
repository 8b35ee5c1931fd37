#pragma once

#include "core/project/project_source.hpp"

#include <vector>

namespace sheerlay::core {

/// What differs between the [hull] of two canonical texts, as changes of the file's own text: numbers are
/// replaced where they stand, points and stations come and go without touching their neighbours; comments and
/// unknown keys stay with what they belong to.
/// @param unsaidToo  adds rounded-to where the file leaves it to be taken from the digits
/// @return  false where it can't be done in place
[[nodiscard]] bool changeHull(const Three& all, bool unsaidToo, std::vector<Change>& changes);

/// The new value of a key; keys of an inline table that the program does not know are carried over.
/// @return  none where the file has a table under a header of its own
[[nodiscard]] std::optional<std::string>
newValue(const Three& all, const toml::node& inFile, const toml::node* before, const toml::node& after);

} // namespace sheerlay::core
