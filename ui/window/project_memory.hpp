#pragma once

#include "core/project/journal.hpp"
#include "core/sheets/page.hpp"

#include <QString>

#include <optional>
#include <string>

namespace sheerlay::ui {

// What the window remembers of a project outside its file, on this machine. `path` is the file's whole path.

/// The strip that shop mode stood at last; empty where it was never entered.
[[nodiscard]] QString shopPlaceOf(const QString& path);
void rememberShopPlace(const QString& path, const QString& strip);

/// The paper last chosen by hand for its pages; none where the one that goes with the units was good enough.
[[nodiscard]] std::optional<core::PageSize> paperOf(const QString& path);

/// What was printed last of its cut sheets; empty before the first printing.
[[nodiscard]] std::string printRecordOf(const QString& path);
void rememberPrintRecord(const QString& path, const std::string& record);

/// A round with the tape that was typed and is not accepted yet; each girth as it was typed, readable or not
/// (GirthLeft::printedGirth). None where nothing waits.
[[nodiscard]] std::optional<core::RowReading> openRoundOf(const QString& path);
void rememberOpenRound(const QString& path, const core::RowReading& round);

} // namespace sheerlay::ui
