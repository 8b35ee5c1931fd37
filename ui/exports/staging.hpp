#pragma once

#include "geometry/expected.hpp"
#include "ui/paper/written_set.hpp"

#include <filesystem>
#include <string>
#include <system_error>

namespace sheerlay::ui {

/// The files a command wrote, or one sentence about what stood in the way.
using Outcome = Expected<WrittenSet, std::string>;

/// A folder beside the files to be, so that they come into being all together or not at all. Gone with this
/// object, and `out` too where it was made for nothing.
class Staging {
public:
    /// @param out  the folder the files are meant for; made when it is not there
    explicit Staging(const std::filesystem::path& out);
    Staging(const Staging&) = delete;
    Staging& operator=(const Staging&) = delete;
    ~Staging();

    /// Set when the folder can't be made.
    [[nodiscard]] const std::error_code& problem() const { return m_problem; }
    /// One sentence about it.
    [[nodiscard]] std::string problemText() const;
    [[nodiscard]] std::string folder() const { return m_folder.string(); }
    /// The same text, naming the place the builder knows of instead of this folder.
    [[nodiscard]] std::string inBuildersWords(std::string text) const;
    /// Moves the staged files to where they belong, and takes away what they make out of date. @return the
    /// set with their new paths, or one sentence
    [[nodiscard]] Outcome moveOut(WrittenSet staged) const;

private:
    std::filesystem::path m_out;
    std::filesystem::path m_folder;
    bool m_made = false;
    std::error_code m_problem;
};

} // namespace sheerlay::ui
