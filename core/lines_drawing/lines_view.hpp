#pragma once

#include "core/sheets/compose.hpp"
#include "core/sheets/drawing.hpp"

#include <Eigen/Core>

#include <string>
#include <vector>

namespace sheerlay::core {

using PaperLine = std::vector<Eigen::Vector2d>; ///< mm on paper

/// A part of the drawing: (a, b) in the boat, mm, b up, onto paper.
struct LinesView {
    Eigen::Vector2d origin = Eigen::Vector2d::Zero(); ///< mm on paper of (0, 0)
    double scale = 1.0;
    double up = 1.0; ///< -1 where b runs down the paper
    [[nodiscard]] Eigen::Vector2d at(double a, double b) const {
        return origin + scale * Eigen::Vector2d(a, -up * b);
    }
};

/// Items of a drawing whose labels keep out of one another's way.
class LinesPen {
public:
    explicit LinesPen(std::vector<Item>& items) : m_items(&items) {}

    void line(const PaperLine& points, LineKind kind, Colour colour = colours::ink);
    /// A label where it is clear of other labels and of the visible lines drawn before, else none. @return
    /// whether it stands
    bool label(const Eigen::Vector2d& at, const std::string& text, const Lettering& lettering);
    /// A label on a white plate upon the line, as near to part `wanted` (0 to 1) of it as there is room:
    /// clear of other labels and of the visible lines drawn before.
    void labelOn(const PaperLine& points, const std::string& text, double wanted, Colour colour);

private:
    [[nodiscard]] bool taken(const Box& box) const;
    [[nodiscard]] bool crossesBold(const PaperLine& own, const Box& box) const;
    bool plate(const Eigen::Vector2d& middle, const std::string& text, Colour colour, const PaperLine& own);
    void lead(const Eigen::Vector2d& to, double length, Colour colour);

    std::vector<Item>* m_items;
    std::vector<Box> m_taken;
};

} // namespace sheerlay::core
