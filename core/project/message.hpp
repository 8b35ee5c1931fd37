#pragma once

#include <string>

namespace sheerlay::core {

/// What is wrong or odd at one place of a file.
struct FileMessage {
    std::string file;
    int line = 0;      ///< from 1; 0 when no line can be named
    std::string key;   ///< dotted key, e.g. "hull.station[3].sheer.height"; counted from 1
    std::string found; ///< what was found
    std::string would; ///< what would do

    friend bool operator==(const FileMessage&, const FileMessage&) = default;
};

/// `FILE:LINE: KEY: what was found; what would do`; without :LINE where none can be named
[[nodiscard]] std::string toText(const FileMessage& message);

} // namespace sheerlay::core
