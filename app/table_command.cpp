#include "app/table_command.hpp"

#include "app/file_output.hpp"
#include "core/offsets/table_project.hpp"
#include "core/outlines/drawn_sections.hpp"
#include "core/project/project_file.hpp"

namespace sheerlay::app {

int writeFromTable(const Request& request, const Console& console) {
    const auto corrections = core::readCorrections(request.takes);
    if (!corrections) {
        for (const std::string& complaint : corrections.error())
            console.err << "--take " << complaint << '\n';
        return exitWrongUsage;
    }
    const bool drawn = !request.sections.empty();
    const std::string& source = drawn ? request.sections : request.table;
    const auto text = core::readProjectText(source);
    if (!text) {
        for (core::FileMessage message : text.error()) {
            message.would = drawn ? "a DXF or SVG file that you may read"
                                  : "a table of offsets as plain text, CSV say, that you may read";
            console.err << toText(message) << '\n';
        }
        return exitUnusable;
    }
    const auto read = drawn ? core::readSections(*text, source, request.name, *corrections)
                            : core::readTable(*text, source, request.name, *corrections);
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
                << (drawn ? "\"beam = 33 in\"" : "\"row 5 = waterline 6 in\"") << ".\nThe project is in "
                << request.out << ".\n";
    return exitDone;
}

} // namespace sheerlay::app
