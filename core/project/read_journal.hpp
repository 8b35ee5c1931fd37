#pragma once

#include "core/project/table_view.hpp"

namespace sheerlay::core {

/// Reads [journal], which may be left out: rounds with the tape and the strips that are laid.
[[nodiscard]] Journal readJournal(TableView& file, Reading& reading);

} // namespace sheerlay::core
