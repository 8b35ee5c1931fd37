#pragma once

#include "core/outlines/drawing.hpp"
#include "core/project/message.hpp"
#include "geometry/expected.hpp"

#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::core {

/// A group code with its value: two lines of a DXF text.
struct DxfPair {
    int code = 0;
    std::string value;
    int line = 0; ///< of the file, of the value

    /// The value as a number; 0 where it is none.
    [[nodiscard]] double number() const;
};

/// One entity: its name and everything that follows.
struct DxfEntity {
    std::string name;
    std::vector<DxfPair> pairs;
    int line = 0;

    [[nodiscard]] double first(int code, double otherwise = 0.0) const;
    [[nodiscard]] std::string text(int code) const; ///< empty where it is not given
    [[nodiscard]] int flags() const;
    [[nodiscard]] std::string layer() const { return text(8); }
    [[nodiscard]] DrawnPoint point(int code) const { return {first(code), first(code + 10)}; }
};

/// Entities drawn once, to be inserted in many places.
struct DxfBlock {
    DrawnPoint base; ///< the point that comes to lie where it is inserted
    std::vector<DxfEntity> entities;
};

/// A DXF text taken apart.
struct DxfFile {
    std::optional<double> millimetres; ///< of one unit, where the file says it
    std::set<std::string> hidden;      ///< layers that were off or frozen
    std::map<std::string, DxfBlock> blocks;
    std::vector<DxfEntity> entities;
};

/// @param file  only for messages
/// @return      or why the text is no DXF text: binary, or broken pairs
[[nodiscard]] Expected<DxfFile, FileMessage> dxfEntities(std::string_view text, const std::string& file);

} // namespace sheerlay::core
