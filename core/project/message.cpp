#include "core/project/message.hpp"

namespace sheerlay::core {

std::string toText(const FileMessage& message) {
    return message.file + (message.line > 0 ? ":" + std::to_string(message.line) : "") + ": " + message.key +
           ": " + message.found + "; " + message.would;
}

} // namespace sheerlay::core
