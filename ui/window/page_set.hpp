#pragma once

#include "core/sheets/drawing.hpp"
#include "core/sheets/page.hpp"
#include "ui/choices/choice_form.hpp"
#include "ui/paper/written_set.hpp"
#include "ui/scene/boat.hpp"

#include <QString>

#include <cstddef>
#include <functional>
#include <string>
#include <vector>

namespace sheerlay::ui {

/// Pages of a bench, with what could not be drawn or asks for care.
struct BenchPages {
    std::vector<core::Sheet> sheets;
    std::vector<core::Finding> findings; ///< heaviest first
};

/// Pages for the printer, told apart from what was printed before.
struct RevisedPages {
    std::vector<core::Sheet> all;     ///< those that changed since the first printing bear their revision
    std::vector<core::Sheet> changed; ///< by themselves; none at the first printing
    std::string record;               ///< of what these say, for the next printing
};

/// What a bench of pages shows, prints and writes. The functions are called on a worker.
struct PageSet {
    using Pages = std::vector<core::Sheet>;
    QString name;       ///< of the bench
    QString invitation; ///< said while no boat is open
    QString nothing;    ///< said where a boat has no such pages
    QString print;      ///< on the button
    std::function<BenchPages(const Boat&, core::Units, core::PageSize)> show;
    std::function<Pages(const Boat&, core::Units, core::PageSize)> printed; ///< that go through a printer
    /// The same against the record of the last printing, empty before the first; none where a set has no
    /// revisions.
    std::function<RevisedPages(const Boat&, core::Units, core::PageSize, const std::string& record)> revised;
    /// What is shown at this place of the list, by itself and as a printer takes it: in pages to be joined
    /// where it is larger than the paper.
    std::function<Pages(const Boat&, core::Units, core::PageSize, const std::string& record, std::size_t)>
        alone;
    /// As the command of the same name does. @param folder  UTF-8
    std::function<WrittenFiles(const Boat&, core::Units, core::PageSize, const std::string& folder)> write;
    std::function<QString(const Pages&)> status;
    QString choices; ///< heading of the form beside the pages; empty: none
    FormOf form;
    bool speaks = false; ///< the language of the paper is chosen here
    bool floats = false; ///< the boat in the water can stand in the pages' place, her loads to be dragged
};

/// What hangs on the shop's wall: cut sheets, board lists, lines drawing, wall map.
[[nodiscard]] PageSet wallPages();
/// The building frame: set-out of the strongback, moulds on sheets of plywood, each mould, stem form and
/// transom and all pointed strips whole; patterns are printed in tiles.
[[nodiscard]] PageSet mouldPages();
/// From boards to strips: what to buy, milling, scarfs, labels.
[[nodiscard]] PageSet stockPages();
/// After the planking: gunwales, decks, bulkheads and seats, cloth and resin, and how she floats.
[[nodiscard]] PageSet fittingOutPages();

} // namespace sheerlay::ui
