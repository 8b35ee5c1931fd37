#pragma once

#include "core/project/message.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// Gathers what is wrong and what is odd while a file is read, so that one run reports everything.
class Messages {
public:
    explicit Messages(std::string file) : m_file(std::move(file)) {}

    void error(int line, std::string key, std::string found, std::string would);
    void warning(int line, std::string key, std::string found, std::string would);

    [[nodiscard]] bool anyError() const noexcept { return m_anyError; }

    /// Everything said so far, in the order of the file's lines.
    [[nodiscard]] std::vector<FileMessage> inOrder() const;

private:
    std::string m_file;
    std::vector<FileMessage> m_said;
    bool m_anyError = false;
};

} // namespace sheerlay::core
