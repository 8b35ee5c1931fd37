#include "core/project/messages.hpp"

#include <algorithm>

namespace sheerlay::core {

void Messages::error(int line, std::string key, std::string found, std::string would) {
    m_said.push_back({m_file, line, std::move(key), std::move(found), std::move(would)});
    m_anyError = true;
}

void Messages::warning(int line, std::string key, std::string found, std::string would) {
    m_said.push_back({m_file, line, std::move(key), std::move(found), std::move(would)});
}

std::vector<FileMessage> Messages::inOrder() const {
    std::vector<FileMessage> sorted = m_said;
    std::stable_sort(sorted.begin(), sorted.end(), [](const FileMessage& a, const FileMessage& b) {
        return a.line < b.line;
    });
    return sorted;
}

} // namespace sheerlay::core
