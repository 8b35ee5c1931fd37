#pragma once

#include "core/sheets/drawing.hpp"
#include "core/sheets/type.hpp"
#include "core/words/language.hpp"

#include <Eigen/Core>

#include <string>
#include <vector>

namespace sheerlay::core {

/// What a line of a pattern is for: to be sawn along, to be marked on the wood, or to be read.
enum class Layer { Cut, Mark, Text };

/// A polyline at true scale; mm, first coordinate to the right, second up.
struct PatternLine {
    Layer layer = Layer::Cut;
    std::vector<Eigen::Vector2d> points;
    bool closed = false;
    LineKind kind = LineKind::Visible;
    std::string name; ///< written beside the line on every page that shows much of it; none: empty
};

/// One line of text; `at` is the middle of its baseline.
struct PatternText {
    Eigen::Vector2d at = Eigen::Vector2d::Zero(); ///< mm
    std::string text;
    double size = 6.0; ///< mm, size of type
};

/// One piece to be sawn, at true scale.
struct Pattern {
    std::string file;  ///< name of its files, without folder and ending
    std::string title; ///< for people
    std::vector<PatternLine> lines;
    std::vector<PatternText> texts;
    Language language = languageSpoken(); ///< that its words are in
};

/// Box around a pattern's lines, mm; `top` is the larger second coordinate.
[[nodiscard]] Box extentOf(const Pattern& pattern);

} // namespace sheerlay::core
