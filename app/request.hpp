#pragma once

#include "core/project/project.hpp"
#include "core/sheets/page.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::app {

/// What the program was asked to do.
enum class Command { Window, Check, Plan, Sheets, Patterns, Export, New };

/// One call of the program, as read from its command line.
struct Request {
    Command command = Command::Window;
    std::string project;             ///< path as given; empty: none (window only)
    std::optional<std::string> json; ///< path as given; "-" is standard output
    std::string out;                 ///< folder (sheets, patterns, export) or file (new), as given
    bool taperTrade = false;         ///< plan: what tapers cost at each limit, too
    bool battens = false;            ///< check: the battens in numbers, too
    /// export: where offsets are re-read, as given; empty: where the table or a round figure has them
    std::string stations, waterlines, buttocks;
    std::string name;                   ///< of a new project
    std::string table;                  ///< new: a table of offsets to start from, as given; empty: none
    std::string sections;               ///< new: a drawing of half sections to start from; empty: none
    std::string surface;                ///< new: a file of surfaces to start from; empty: none
    std::vector<std::string> takes;     ///< new: how the table, drawing or surface is to be read
    std::optional<core::Units> units;   ///< of what is printed; none: the project's
    std::optional<core::PageSize> page; ///< none: the project's, or Letter for inches, A4 for millimetres
    std::optional<bool> severalRows;    ///< sheets: small rows share a cut sheet; none: as the project has it
};

/// The paper that was asked for, or the project's, or the one that goes with its units.
[[nodiscard]] inline core::PageSize paperOf(const Request& request, const core::Project& project) {
    const bool inches = project.units == core::Units::Inches;
    const auto size = request.page ? request.page : project.paper.size;
    return size.value_or(inches ? core::PageSize::Letter : core::PageSize::A4);
}

/// Exit codes of the contract.
inline constexpr int exitDone = 0;
inline constexpr int exitUnusable = 1; ///< the input can't be used; nothing was written
inline constexpr int exitWrongUsage = 2;

} // namespace sheerlay::app
