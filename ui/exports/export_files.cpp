#include "ui/exports/export_files.hpp"

#include "core/lines_drawing/lines_sheet.hpp"
#include "core/materials/materials_table.hpp"
#include "core/moulds/mould_set.hpp"
#include "core/patterns/pattern_set.hpp"
#include "core/sheets/sheet_svg.hpp"
#include "core/solids/boat_shapes.hpp"
#include "core/stock/stock_plan.hpp"
#include "core/tables/hull_tables.hpp"
#include "core/tables/offset_lines.hpp"
#include "core/tables/stock_table.hpp"
#include "core/tables/strip_table.hpp"
#include "geometry/occt/mesh_files.hpp"
#include "geometry/occt/step_file.hpp"
#include "ui/begin/file_output.hpp"

#include <optional>
#include <utility>

namespace sheerlay::ui {

namespace {

constexpr const char* program = "Sheerlay " SHEERLAY_VERSION;
constexpr double hullTolerance = 0.2; // mm, of the hull's triangles
// The rim's points this near the centreplane are taken onto it; the loft may lead the keel line round a
// corner at up to 0.4 mm of half-siding.
constexpr double onCentre = 0.45; // mm

using Problem = std::optional<std::string>;

/// The files of one export, staged one by one; the first problem, or the watch, ends it.
class Exporter {
public:
    Exporter(std::string folder, const ExportWatch& watch) : m_folder(std::move(folder)), m_watch(watch) {}

    template <class Write> void add(const std::string& name, const Write& write) {
        if (!m_problem && m_watch && !m_watch(name))
            m_problem = std::string();
        if (m_problem)
            return;
        const std::string path = m_folder + "/" + name;
        m_problem = write(path);
        m_staged.push_back(path);
    }
    /// @param shapes  makes them, which takes its time too
    template <class Shapes>
    void step(const std::string& name, const Shapes& shapes, const std::string& title) {
        add(name, [&](const std::string& path) -> Problem {
            const auto written = geometry::writeStep(shapes(), title, program, path);
            return written ? Problem() : Problem(written.error());
        });
    }
    void bodies(const std::string& name, const std::vector<geometry::NamedMesh>& meshes) {
        geometry::Mesh all;
        for (const geometry::NamedMesh& one : meshes)
            all = geometry::together(std::move(all), one.mesh);
        add(name, [&](const std::string& path) { return geometry::writeStl(all, path); });
    }
    void table(const std::string& name, const std::string& text) {
        add(name, [&](const std::string& path) { return writeFile(path, text); });
    }

    [[nodiscard]] const Problem& problem() const { return m_problem; }
    [[nodiscard]] const std::vector<std::string>& staged() const { return m_staged; }

private:
    std::string m_folder;
    const ExportWatch& m_watch;
    Problem m_problem;
    std::vector<std::string> m_staged;
};

} // namespace

Outcome writeExports(const std::string& folder,
                     const core::Project& project,
                     const core::LoftedHull& hull,
                     const core::Plan& plan,
                     const ExportLevels& levels,
                     const ExportWatch& watch) {
    core::OffsetLines lines;
    for (const auto& [given, taken] : {std::pair{&levels.stations, &lines.stations},
                                       std::pair{&levels.waterlines, &lines.waterlines},
                                       std::pair{&levels.buttocks, &lines.buttocks}}) {
        if (given->empty())
            continue;
        const auto read = core::parseLevels(*given, project.units);
        if (!read)
            return unexpected("Lines for the offsets: " + read.error().found + "; " + read.error().would +
                              " would do.");
        *taken = *read;
    }
    const Staging staging(folder);
    if (staging.problem())
        return unexpected(staging.problemText());
    const auto half = geometry::faceMesh(core::hullFace(hull.drawn, false), hullTolerance);
    if (!half)
        return unexpected(half.error());
    const std::vector<geometry::NamedShape> hullShapes = core::hullShapes(hull);
    const std::vector<geometry::NamedMesh> strips = core::stripMeshes(project, hull, plan);
    std::vector<core::Finding> findings;
    const auto frame = core::mouldsOf(project, hull);
    if (!frame)
        findings.push_back(core::withoutMoulds(frame.error()));
    const std::vector<geometry::NamedMesh> moulds =
        frame ? core::mouldMeshes(*frame) : std::vector<geometry::NamedMesh>{};
    std::vector<geometry::NamedMesh> boat = moulds;
    boat.insert(boat.end(), strips.begin(), strips.end());

    Exporter files(staging.folder(), watch);
    files.step(
        "hull.step", [&] { return hullShapes; }, project.name + ", hull");
    if (frame)
        files.step(
            "moulds.step", [&] { return core::mouldShapes(*frame); }, project.name + ", moulds");
    files.step(
        "strips.step", [&] { return core::stripShapes(project, hull, plan); }, project.name + ", strips");
    files.add("hull.glb", [&](const std::string& path) {
        return geometry::writeGlb({{hullShapes[0].name, hullShapes[0].colour, *half},
                                   {hullShapes[1].name, hullShapes[1].colour, geometry::mirrored(*half)}},
                                  path);
    });
    files.add("boat.glb", [&](const std::string& path) { return geometry::writeGlb(boat, path); });
    files.add("hull.stl", [&](const std::string& path) {
        return geometry::writeStl(geometry::closedAcrossCentre(*half, onCentre), path);
    });
    if (frame)
        files.bodies("moulds.stl", moulds);
    files.bodies("strips.stl", strips);
    files.table("lines.svg", core::toSvg(core::linesSheet(project, hull, project.units)));
    files.table("strips.csv", core::stripTable(plan, project.units));
    files.table("offsets.csv", core::offsetTable(project, hull, project.units, lines));
    files.table("moulds.csv", core::mouldTable(project, hull, project.units));
    core::ShopPlan shop;
    shop.plan = plan;
    shop.stock = core::planStock(project, hull, plan);
    shop.after = core::afterPlanking(project, hull, plan);
    if (const auto& stock = shop.stock) {
        files.table("boards.csv", core::boardTable(*stock, project.units));
        files.table("pieces.csv", core::pieceTable(*stock, project.units));
        files.table("scarfs.csv", core::scarfTable(plan, *stock, project.units));
    }
    files.table("materials.csv", core::materialsTable(core::materialsOf(project, hull, shop, project.units)));
    if (files.problem())
        return unexpected(staging.inBuildersWords(*files.problem()));
    return staging.moveOut({files.staged(), std::move(findings)});
}

} // namespace sheerlay::ui
