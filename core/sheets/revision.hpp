#pragma once

#include "core/sheets/drawing.hpp"
#include "core/sheets/page.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace sheerlay::core {

/// What was printed last: of every sheet what stood on it, and since which revision.
struct SheetRecord {
    struct Entry {
        std::string title; ///< with "#2" for the second sheet of the same title, and so on
        std::string print; ///< tells two contents apart; page numbers don't count
        int since = 1;     ///< revision in which it came to be as it is
    };
    int revision = 0; ///< 0: nothing was printed yet
    std::vector<Entry> entries;
};

/// The record of these sheets after the one before: a new revision where any of them is new or changed or
/// gone, else the same one.
[[nodiscard]] SheetRecord recordOf(const std::vector<Sheet>& sheets, const SheetRecord& before);

/// Marks every sheet that changed since the first revision with "revision 3" in its foot.
/// @param record  of these sheets, in their order
/// @throws std::invalid_argument  the record is of other sheets
[[nodiscard]] std::vector<Sheet>
withRevisions(std::vector<Sheet> sheets, const SheetRecord& record, PageSize size);

/// Which sheets came to be as they are in the record's own revision; none in the first.
[[nodiscard]] std::vector<std::size_t> changedIn(const SheetRecord& record);

/// As a text to keep beside the sheets, and back. A text that isn't such a record reads as none.
[[nodiscard]] std::string toText(const SheetRecord& record);
[[nodiscard]] SheetRecord recordFrom(const std::string& text);

} // namespace sheerlay::core
