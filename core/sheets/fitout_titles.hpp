#pragma once

#include "core/afloat/afloat.hpp"
#include "core/project/project.hpp"

#include <string>

namespace sheerlay::core {

/// What heads the pages after the planking, in the language in force; a part's pages are found by it.
namespace fitoutTitles {

[[nodiscard]] std::string sheer(const Project& project);
[[nodiscard]] std::string gunwales(const Project& project);
[[nodiscard]] std::string bulkhead(const Project& project, End end);
[[nodiscard]] std::string deck(const Project& project, End end);
/// @param name  as the project has it
[[nodiscard]] std::string seat(const Project& project, const std::string& name);
[[nodiscard]] std::string bars(const Project& project);
[[nodiscard]] std::string covering(const Project& project);
[[nodiscard]] std::string afloat(const Project& project, const AfterPlanking& after);

} // namespace fitoutTitles

/// Title of the pages about the part that a finding is of, in the project's language. Where the part could
/// not be drawn, or none is meant: of the page that lists all findings of the fit-out.
/// @param finding  of `after`; marked as put aside or not
[[nodiscard]] std::string
titleFor(const Project& project, const AfterPlanking& after, const Finding& finding);

} // namespace sheerlay::core
