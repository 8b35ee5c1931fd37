#include "app/table_command.hpp"

#include "ui/begin/begin_project.hpp"
#include "ui/begin/file_output.hpp"

#include <string>
#include <utility>

namespace sheerlay::app {

namespace {

std::pair<ui::SourceKind, std::string> sourceOf(const Request& request) {
    return !request.surface.empty()    ? std::pair{ui::SourceKind::Surface, request.surface}
           : !request.sections.empty() ? std::pair{ui::SourceKind::Sections, request.sections}
                                       : std::pair{ui::SourceKind::Table, request.table};
}

} // namespace

int writeFromTable(const Request& request, const Console& console) {
    const auto corrections = core::readCorrections(request.takes);
    if (!corrections) {
        for (const std::string& complaint : corrections.error())
            console.err << "--take " << complaint << '\n';
        return exitWrongUsage;
    }
    const auto [kind, source] = sourceOf(request);
    const auto read = ui::beginProject(kind, source, request.name, *corrections);
    if (!read) {
        for (const core::FileMessage& message : read.error())
            console.err << toText(message) << '\n';
        return exitUnusable;
    }
    if (const auto problem = ui::writeNewFile(request.out, read->projectText)) {
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
    console.err << "Look it over; what is wrong is put right with --take, such as --take \""
                << ui::correctionExample(kind, read->reading) << "\".\nThe project is in " << request.out
                << ".\n";
    return exitDone;
}

} // namespace sheerlay::app
