#include "ui/begin/begin_project.hpp"

#include "core/outlines/drawn_sections.hpp"
#include "core/project/project_file.hpp"
#include "core/surfaces/read_surface.hpp"
#include "geometry/occt/surface_file.hpp"
#include "ui/begin/starter.hpp"

#include <algorithm>
#include <cctype>
#include <utility>

namespace sheerlay::ui {

std::optional<SourceKind> sourceKind(std::string_view path) {
    const auto dot = path.find_last_of("./");
    if (dot == std::string_view::npos || path[dot] != '.')
        return std::nullopt;
    std::string ending(path.substr(dot + 1));
    std::ranges::transform(ending, ending.begin(), [](unsigned char c) { return std::tolower(c); });
    for (const auto& [known, kind] : {std::pair{"csv", SourceKind::Table},
                                      std::pair{"tsv", SourceKind::Table},
                                      std::pair{"txt", SourceKind::Table},
                                      std::pair{"dxf", SourceKind::Sections},
                                      std::pair{"svg", SourceKind::Sections},
                                      std::pair{"step", SourceKind::Surface},
                                      std::pair{"stp", SourceKind::Surface},
                                      std::pair{"iges", SourceKind::Surface},
                                      std::pair{"igs", SourceKind::Surface}})
        if (ending == known)
            return kind;
    return std::nullopt;
}

const char* correctionExample(SourceKind kind, const std::vector<std::string>& reading) {
    const bool columns =
        std::ranges::any_of(reading, [](const std::string& told) { return told.starts_with("column "); });
    return kind == SourceKind::Surface    ? "bow = -x"
           : kind == SourceKind::Sections ? "beam = 33 in"
           : columns                      ? "column E = waterline 6 in"
                                          : "row 5 = waterline 6 in";
}

BegunProject beginProject(SourceKind kind,
                          const std::string& path,
                          const std::string& name,
                          const core::TableCorrections& corrections,
                          std::stop_token stop) {
    if (kind == SourceKind::Surface) {
        const auto given = geometry::readSurfaceFile(path, std::move(stop));
        if (!given)
            return unexpected(std::vector<core::FileMessage>{
                {path, 0, "the file", given.error().found, given.error().would}});
        return core::readSurface(*given, path, name, corrections);
    }
    const bool drawn = kind == SourceKind::Sections;
    auto text = core::readProjectText(path);
    if (!text) {
        std::vector<core::FileMessage> messages = text.error();
        for (core::FileMessage& message : messages)
            message.would = drawn ? "a DXF or SVG file that you may read"
                                  : "a table of offsets as plain text, CSV say, that you may read";
        return unexpected(std::move(messages));
    }
    return drawn ? core::readSections(*text, path, name, corrections)
                 : core::readTable(*text, path, name, corrections);
}

std::optional<std::string> checkedStarter(const std::string& name) {
    std::string text = starterProject(name);
    if (!core::parseProject(text, name))
        return std::nullopt;
    return text;
}

} // namespace sheerlay::ui
