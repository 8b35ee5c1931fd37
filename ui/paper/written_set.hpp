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
};

using WrittenFiles = Expected<WrittenSet, PaperError>;

} // namespace sheerlay::ui
