#include "core/project/finding.hpp"

#include <algorithm>
#include <array>
#include <cstdio>

namespace sheerlay::core {

std::vector<Finding> heaviestFirst(std::vector<Finding> findings) {
    std::ranges::stable_sort(findings, [](const Finding& a, const Finding& b) { return a.level > b.level; });
    return findings;
}

const char* toText(Level level) noexcept {
    switch (level) {
    case Level::Note:
        return "note";
    case Level::Caution:
        return "caution";
    case Level::Stop:
        return "stop";
    }
    return "note";
}

std::string toText(const Finding& finding) {
    std::string text = toText(finding.level);
    text += " " + finding.code;
    if (finding.strip)
        text += " " + *finding.strip;
    if (finding.x) {
        std::array<char, 64> place{};
        std::snprintf(place.data(), place.size(), " x=%.0f", *finding.x);
        text += place.data();
    }
    text += ": " + finding.text;
    return finding.aside ? text + " (put aside: " + finding.aside->reason + ")" : text;
}

} // namespace sheerlay::core
