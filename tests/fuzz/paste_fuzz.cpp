#include "core/project/project_file.hpp"
#include "core/project/project_writer.hpp"
#include "core/table_edit/paste_cells.hpp"
#include "tests/fuzz/promise.hpp"

#include <cstddef>
#include <cstdint>
#include <string_view>

using namespace sheerlay::core;
using sheerlay::test::promise;

namespace {

constexpr std::string_view boat = R"(format = 1
name = "Trial"
units = "mm"
[hull]
[[hull.station]]
x = 0
sheer = { height = 355, half-breadth = 76 }
keel = { height = 51 }
waterlines = [{ height = 200, half-breadth = 51 }]
[[hull.station]]
x = "3-0-0"
sheer = { height = 305, half-breadth = 279 }
keel = { height = 0 }
buttocks = [{ half-breadth = 100, height = 40 }]
diagonals = [{ height = 300, angle = 40, distance = 250 }]
[[hull.station]]
x = 1700
sheer = { height = 343, half-breadth = 89 }
keel = { height = 38 }
points = [{ half-breadth = 70, height = 120 }]
[strips]
thickness = 6
width = 19
cover-width = 16
wood = "western-redcedar"
)";

} // namespace

/// The first two bytes choose the corner, the rest is pasted.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const Project project = parseProject(boat, "").value().project;
    static const std::vector<GridLine> lines = gridLines(project.hull);
    if (size < 2)
        return 0;
    const GridCell corner{data[0] % lines.size(), data[1] % project.hull.stations.size()};
    // NOLINTNEXTLINE(cppcoreguidelines-pro-type-reinterpret-cast): what libFuzzer hands over
    const std::string_view text(reinterpret_cast<const char*>(data) + 2, size - 2);
    const auto rows = pastedRows(text);
    if (!rows) {
        promise(!rows.error().found.empty() && !rows.error().would.empty(), "a refusal says why");
        return 0;
    }
    const LaidRows laid = layRows(*rows, {corner, corner}, lines.size(), project.hull.stations.size());
    const EditedTable edited = setCells(project, lines, laid.entries);
    promise(edited.refused.size() <= laid.entries.size(), "an entry is refused once");
    for (const RefusedEntry& refused : edited.refused)
        promise(!refused.found.empty() && !refused.would.empty(), "a refused entry says why");
    const auto read = parseProject(writeProject(edited.project), "");
    promise(read.has_value(), "what was pasted can be written and read again");
    promise(writeProject(read->project) == writeProject(edited.project), "and says the same");
    return 0;
}
