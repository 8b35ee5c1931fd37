#include "app/table_command.hpp"

#include "app/file_output.hpp"
#include "core/offsets/table_project.hpp"
#include "core/outlines/drawn_sections.hpp"
#include "core/project/project_file.hpp"
#include "core/surfaces/read_surface.hpp"
#include "geometry/occt/surface_file.hpp"

#include <utility>

namespace sheerlay::app {

namespace {

using ReadSource = Expected<core::ReadTable, std::vector<core::FileMessage>>;

/// A table or a drawing, which are text.
ReadSource readText(const Request& request, const core::TableCorrections& corrections) {
    const bool drawn = !request.sections.empty();
    const std::string& source = drawn ? request.sections : request.table;
    auto text = core::readProjectText(source);
    if (!text) {
        std::vector<core::FileMessage> messages = text.error();
        for (core::FileMessage& message : messages)
            message.would = drawn ? "a DXF or SVG file that you may read"
                                  : "a table of offsets as plain text, CSV say, that you may read";
        return unexpected(std::move(messages));
    }
    return drawn ? core::readSections(*text, source, request.name, corrections)
                 : core::readTable(*text, source, request.name, corrections);
}

ReadSource readSource(const Request& request, const core::TableCorrections& corrections) {
    if (request.surface.empty())
        return readText(request, corrections);
    const auto given = geometry::readSurfaceFile(request.surface);
    if (!given)
        return unexpected(std::vector<core::FileMessage>{
            {request.surface, 0, "the file", given.error().found, given.error().would}});
    return core::readSurface(*given, request.surface, request.name, corrections);
}

/// How a reading is put right, by an example.
const char* exampleOf(const Request& request) {
    return !request.surface.empty()    ? "\"bow = -x\""
           : !request.sections.empty() ? "\"beam = 33 in\""
                                       : "\"row 5 = waterline 6 in\"";
}

} // namespace

int writeFromTable(const Request& request, const Console& console) {
    const auto corrections = core::readCorrections(request.takes);
    if (!corrections) {
        for (const std::string& complaint : corrections.error())
            console.err << "--take " << complaint << '\n';
        return exitWrongUsage;
    }
    const auto read = readSource(request, *corrections);
    if (!read) {
        for (const core::FileMessage& message : read.error())
            console.err << toText(message) << '\n';
        return exitUnusable;
    }
    if (const auto problem = writeNewFile(request.out, read->projectText)) {
        console.err << *problem << '\n';
        return exitUnusable;
    }
    for (const std::string& sentence : read->reading)
        console.out << sentence << '\n';
    for (const std::string& note : read->notes)
        console.out << note << '\n';
    console.out.flush();
    for (const core::FileMessage& message : read->warnings)
        console.err << toText(message) << '\n';
    console.err << "Look it over; what is wrong is put right with --take, such as --take "
                << exampleOf(request) << ".\nThe project is in " << request.out << ".\n";
    return exitDone;
}

} // namespace sheerlay::app
