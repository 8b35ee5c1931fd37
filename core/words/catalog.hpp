#pragma once

#include "core/words/language.hpp"
#include "geometry/expected.hpp"

#include <map>
#include <string>
#include <string_view>

namespace sheerlay::core {

/// English texts with what is said for them in one other language. Both have places to fill in: `{}` one
/// behind the other, or `{0}`, `{1}` where the order differs.
using Catalog = std::map<std::string, std::string, std::less<>>;

/// Reads a catalog: TOML, tables of `"English" = "other"`; the tables' names only keep it in order.
/// @return  or what is wrong, with its line
[[nodiscard]] Expected<Catalog, std::string> parseCatalog(std::string_view text);

/// The catalog that was built in (resources/words); empty for English.
/// @throws std::logic_error  the one that was built in can't be read
[[nodiscard]] const Catalog& catalogOf(Language language);

} // namespace sheerlay::core
