#pragma once

#include "core/sheets/compose.hpp"
#include "core/sheets/drawing.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <string>
#include <utility>
#include <vector>

namespace sheerlay::test {

/// A line of text as one string, fractions written out.
inline std::string lineOf(const core::Text& text) {
    std::string line;
    for (const core::TextRun& run : text.runs)
        line += run.text;
    return line;
}

inline std::vector<core::Text> textsOf(const core::Sheet& sheet) {
    std::vector<core::Text> texts;
    for (const core::Item& item : sheet.items)
        if (const auto* text = std::get_if<core::Text>(&item))
            texts.push_back(*text);
    return texts;
}

/// All lines of a sheet, in the order they are painted, joined by spaces.
inline std::string wordsOf(const core::Sheet& sheet) {
    std::string words;
    for (const core::Text& text : textsOf(sheet))
        words += lineOf(text) + " ";
    return words;
}

/// How often some words stand in others.
inline std::size_t timesIn(const std::string& words, const std::string& wanted) {
    std::size_t count = 0;
    for (std::size_t at = words.find(wanted); at != std::string::npos; at = words.find(wanted, at + 1))
        ++count;
    return count;
}

/// What stands nearer to the edge than the margin: "" when nothing does.
inline std::string outside(const core::Sheet& sheet, double margin) {
    for (const core::Item& item : sheet.items) {
        const core::Box box = core::extentOf(item);
        const bool in = box.left >= margin && box.top >= margin && box.right <= sheet.width - margin &&
                        box.bottom <= sheet.height - margin;
        if (in)
            continue;
        const auto* text = std::get_if<core::Text>(&item);
        return (text != nullptr ? lineOf(*text) : std::string("a line")) + " at " + std::to_string(box.left) +
               " " + std::to_string(box.top) + " to " + std::to_string(box.right) + " " +
               std::to_string(box.bottom);
    }
    return {};
}

/// The first two texts of a sheet whose ink boxes overlap: "" when none do.
inline std::string overlapping(const core::Sheet& sheet) {
    const std::vector<core::Text> texts = textsOf(sheet);
    std::vector<core::Box> boxes;
    for (const core::Text& text : texts)
        boxes.push_back(core::inkBox(text));
    for (std::size_t i = 0; i < texts.size(); ++i)
        for (std::size_t j = i + 1; j < texts.size(); ++j)
            if (boxes[i].overlaps(boxes[j]))
                return lineOf(texts[i]) + " | " + lineOf(texts[j]);
    return {};
}

/// The first text whose ink a visible line runs through, its width counted: "" when none is.
inline std::string crossed(const core::Sheet& sheet) {
    constexpr double tails = 0.3; // mm, an ink box is told a little deeper than a tail is
    for (core::Text text : textsOf(sheet)) {
        const Eigen::Rotation2Dd level(-text.rotation); // turned with the text until that lies level
        text.rotation = 0.0;
        core::Box ink = core::inkBox(text);
        ink.bottom -= tails;
        for (const core::Item& item : sheet.items) {
            const auto* path = std::get_if<core::Path>(&item);
            if (path == nullptr || path->line != core::LineKind::Visible)
                continue;
            core::Path turned = *path;
            for (Eigen::Vector2d& p : turned.points)
                p = text.at + level * (p - text.at);
            const double half = core::lineWidth(path->line) / 2;
            if (core::enters(turned, {ink.left - half, ink.top - half, ink.right + half, ink.bottom + half}))
                return lineOf(text) + " at " + std::to_string(ink.left) + " " + std::to_string(ink.top);
        }
    }
    return {};
}

} // namespace sheerlay::test
