#pragma once

#include "core/offsets/table_corrections.hpp"
#include "core/offsets/table_project.hpp"
#include "core/project/message.hpp"
#include "geometry/expected.hpp"
#include "geometry/given_faces.hpp"

#include <string>
#include <vector>

namespace sheerlay::core {

/// A designer's hull surface as a project of half sections: the boat is found in the file, its skin told from
/// decks and transoms, cut at stations and lofted; how far the loft leaves the given surface is said.
/// @param corrections  units, beam, bow, up, centre, faces, half-siding and drawn-to are heeded
/// @return  the project's text, or why the file can't be used: not a hull, gaps with size and place, a size
/// that is no boat's, a loft that leaves the surface by more than 3 mm
/// @accuracy  tests/core/surfaces/surface_round_trip_test.cpp: strips planned from our own exported hulls
[[nodiscard]] Expected<ReadTable, std::vector<FileMessage>> readSurface(const geometry::GivenFaces& given,
                                                                        const std::string& file,
                                                                        const std::string& name,
                                                                        const TableCorrections& corrections);

} // namespace sheerlay::core
