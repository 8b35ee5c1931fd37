#pragma once

#include <string>
#include <utility>
#include <vector>

/// DXF files in a few words.
namespace sheerlay::test {

using DxfPairs = std::vector<std::pair<int, std::string>>;

[[nodiscard]] inline std::string dxfText(const DxfPairs& pairs) {
    std::string text;
    for (const auto& [code, value] : pairs)
        text += std::to_string(code) + "\n" + value + "\n";
    return text;
}

/// A file with these entities; `unit` as $INSUNITS counts, none where it is 0.
[[nodiscard]] inline std::string dxfFile(const std::string& entities, int unit = 0) {
    std::string text;
    if (unit != 0)
        text = dxfText(
            {{0, "SECTION"}, {2, "HEADER"}, {9, "$INSUNITS"}, {70, std::to_string(unit)}, {0, "ENDSEC"}});
    return text + dxfText({{0, "SECTION"}, {2, "ENTITIES"}}) + entities +
           dxfText({{0, "ENDSEC"}, {0, "EOF"}});
}

} // namespace sheerlay::test
