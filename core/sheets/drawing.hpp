#pragma once

#include <Eigen/Core>

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace sheerlay::core {

/// Red, green, blue.
struct Colour {
    std::uint8_t red = 0, green = 0, blue = 0;
    friend bool operator==(const Colour&, const Colour&) = default;
};

/// Our paper's colours. Every meaning they carry also has a word or a line style beside it.
namespace colours {
inline constexpr Colour ink{0x23, 0x27, 0x2C};
inline constexpr Colour pencil{0x6B, 0x70, 0x78};
inline constexpr Colour lineBlue{0x2F, 0x5D, 0x8A};
inline constexpr Colour cedar{0xB5, 0x65, 0x3A};
inline constexpr Colour bench{0xF1, 0xEC, 0xE2};
inline constexpr Colour white{0xFF, 0xFF, 0xFF};
inline constexpr Colour free{0xE3, 0xD5, 0xB0};
inline constexpr Colour clamp{0xE0, 0xA3, 0x3E};
inline constexpr Colour hard{0xC4, 0x53, 0x2F};
inline constexpr Colour taper{0x6A, 0x2C, 0x47};
} // namespace colours

/// Kinds of line after ISO 128: what a line is tells how it is drawn.
enum class LineKind {
    None,    ///< a filled area without an outline
    Visible, ///< thick, what is really there
    Thin,    ///< construction, dimensions, table rules
    Centre,  ///< long-dash-dot: centreline and other lines of reference
    Hidden   ///< dashed: what lies beyond, such as a lap before it is cut back
};

/// Width of a line of this kind, mm.
[[nodiscard]] double lineWidth(LineKind kind) noexcept;

/// An open or closed polyline, mm from the sheet's top left corner, y down.
struct Path {
    std::vector<Eigen::Vector2d> points;
    bool closed = false;
    LineKind line = LineKind::Visible;
    Colour colour = colours::ink;
    std::optional<Colour> fill;
};

enum class Weight { Regular, SemiBold, Bold };
enum class Anchor { Left, Middle, Right };

/// A piece of a text. A fraction is set with a small raised numerator, a slash and a small denominator from
/// plain digits, and can still be searched for as it is written.
struct TextRun {
    enum class Kind { Plain, Fraction };
    Kind kind = Kind::Plain;
    std::string text; ///< UTF-8; of a fraction "5/16"
    friend bool operator==(const TextRun&, const TextRun&) = default;
};

/// One line of text. `at` is the anchor on the baseline; rotation turns the line about it.
struct Text {
    Eigen::Vector2d at = Eigen::Vector2d::Zero(); ///< mm
    std::vector<TextRun> runs;
    double size = 4.5; ///< mm, size of type; its capitals stand capHeight * size high
    Weight weight = Weight::Regular;
    Anchor anchor = Anchor::Left;
    double rotation = 0.0; ///< rad, clockwise on paper
    Colour colour = colours::ink;
};

using Item = std::variant<Path, Text>;

/// One page, laid out in millimetres. A value that knows of no drawing library.
struct Sheet {
    double width = 210.0;  ///< mm
    double height = 297.0; ///< mm
    std::string title;
    std::vector<Item> items; ///< painted in this order
};

} // namespace sheerlay::core
