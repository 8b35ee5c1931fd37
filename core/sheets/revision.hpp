#pragma once

#include "core/planking/plan.hpp"
#include "core/project/finding.hpp"
#include "core/project/journal.hpp"
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

/// Sheets that nothing is cut by any more, by their place.
using DoneSheets = std::vector<bool>;

/// Which cut sheets tell of nothing but strips that are on the boat: entered in the journal as laid, or of a
/// row that the tape was put to, or of one between the start and that.
[[nodiscard]] DoneSheets
doneSheets(const std::vector<Sheet>& sheets, const Journal& journal, const Plan& plan);

/// The record of these sheets after the one before: a new revision where any of them is new or changed or
/// gone, else the same one.
/// @param done  these stay as they were recorded, whatever is on them now: a new plan cuts the boards anew
///              and gives laid pieces other names; empty: none
[[nodiscard]] SheetRecord
recordOf(const std::vector<Sheet>& sheets, const SheetRecord& before, const DoneSheets& done = {});

/// Marks every sheet that changed since the first revision with "revision 3" in its foot.
/// @param record  of these sheets, in their order
/// @throws std::invalid_argument  the record is of other sheets
[[nodiscard]] std::vector<Sheet>
withRevisions(std::vector<Sheet> sheets, const SheetRecord& record, PageSize size);

/// Which sheets came to be as they are in the record's own revision; none in the first.
[[nodiscard]] std::vector<std::size_t> changedIn(const SheetRecord& record);

/// Tells that the record of the set before is lost, so that this set counts as the first.
/// @param name  of the record's file
[[nodiscard]] Finding recordLost(const std::string& name);

/// As a text to keep beside the sheets, and back. A text that isn't such a record reads as none.
[[nodiscard]] std::string toText(const SheetRecord& record);
[[nodiscard]] SheetRecord recordFrom(const std::string& text);

} // namespace sheerlay::core
