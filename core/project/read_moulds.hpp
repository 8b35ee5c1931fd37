#pragma once

#include "core/project/mould_choices.hpp"
#include "core/project/table_view.hpp"

namespace sheerlay::core {

/// Reads [moulds]; what is left out keeps the value it has in MouldChoices.
[[nodiscard]] MouldChoices readMoulds(TableView& file, Reading& reading);

/// What stands where a project says nothing about moulds: lengths that read well in its units.
[[nodiscard]] MouldChoices usualMoulds(Units units);

} // namespace sheerlay::core
