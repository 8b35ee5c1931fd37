#pragma once

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <unistd.h>

namespace sheerlay::test {

/// A file name of one's own in the folder for passing things; the file is gone with this object.
class ScratchFile {
public:
    explicit ScratchFile(const std::string& name)
        : m_path(std::filesystem::temp_directory_path() /
                 ("sheerlay-" + std::to_string(::getpid()) + "-" + name)) {}
    ScratchFile(const ScratchFile&) = delete;
    ScratchFile& operator=(const ScratchFile&) = delete;
    ~ScratchFile() {
        std::error_code ignored;
        std::filesystem::remove(m_path, ignored);
    }
    [[nodiscard]] std::string path() const { return m_path.string(); }
    [[nodiscard]] std::string bytes() const {
        std::ifstream file(m_path, std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }

private:
    std::filesystem::path m_path;
};

} // namespace sheerlay::test
