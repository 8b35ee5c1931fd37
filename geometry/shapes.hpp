#pragma once

#include "geometry/board.hpp"
#include "geometry/mesh.hpp"
#include "geometry/ruled_bar.hpp"
#include "geometry/tensor_surface.hpp"

#include <Eigen/Core>

#include <string>
#include <variant>
#include <vector>

namespace sheerlay::geometry {

/// sRGB, 0 to 1.
struct Colour {
    double red = 0.5, green = 0.5, blue = 0.5;
};

/// A part of a surface inside lines of its parameter plane; `mirror` is its image in the centreplane.
struct TrimmedFace {
    TensorSurface surface;
    /// (u, v), mm: lines that follow each other end to end round the part, the surface on their left or right
    std::vector<std::vector<Eigen::Vector2d>> boundary;
    bool mirror = false;
};

/// One thing to be written to a solid file.
struct NamedShape {
    std::string name;
    Colour colour;
    std::variant<TrimmedFace, Board, RuledBar> shape;
};

/// One thing to be written to a mesh file.
struct NamedMesh {
    std::string name;
    Colour colour;
    Mesh mesh;
};

} // namespace sheerlay::geometry
