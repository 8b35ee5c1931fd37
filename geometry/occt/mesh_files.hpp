#pragma once

#include "geometry/expected.hpp"
#include "geometry/shapes.hpp"

#include <optional>
#include <string>
#include <vector>

namespace sheerlay::geometry {

/// Triangles of a face, within `tolerance` mm of it. Points of its rim are shared by the triangles there.
/// @return the mesh, or one sentence about why there is none
[[nodiscard]] Expected<Mesh, std::string> faceMesh(const TrimmedFace& face, double tolerance);

/// Writes a binary glTF 2.0 file (.glb): metres, y up, as the format asks; one node per mesh with its name
/// and colour, in the order given. The same meshes make the same file byte for byte.
/// @return  nothing when done, else one sentence about what stood in the way
[[nodiscard]] std::optional<std::string> writeGlb(const std::vector<NamedMesh>& meshes,
                                                  const std::string& path);

/// Writes one mesh as a binary STL file, mm (the format has no unit of its own).
/// @return  nothing when done, else one sentence about what stood in the way
[[nodiscard]] std::optional<std::string> writeStl(const Mesh& mesh, const std::string& path);

} // namespace sheerlay::geometry
