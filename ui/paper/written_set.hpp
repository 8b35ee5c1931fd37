#pragma once

#include "core/project/finding.hpp"
#include "ui/paper/file_writer.hpp"

#include <string>
#include <vector>

namespace sheerlay::ui {

/// A set of files as it was written.
struct WrittenSet {
    std::vector<std::string> files;
    /// What could not be drawn or asks for care, heaviest first: no paper is left out without a word.
    std::vector<core::Finding> findings;
    /// Names of files an earlier set may have left in the folder that would mislead beside this one: they go.
    std::vector<std::string> outOfDate = {};
};

using WrittenFiles = Expected<WrittenSet, PaperError>;

} // namespace sheerlay::ui
