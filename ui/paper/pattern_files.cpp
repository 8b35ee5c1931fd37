#include "ui/paper/pattern_files.hpp"

#include "core/patterns/pattern_files.hpp"
#include "ui/paper/pdf_writer.hpp"

#include <optional>
#include <utility>
#include <vector>

namespace sheerlay::ui {

namespace {

constexpr const char* partsName = "parts";

/// Files in one folder, one after the other; after the first that can't be written nothing more is.
class Files {
public:
    explicit Files(std::string folder) : m_folder(std::move(folder)) {
        if (const Written made = makeFolder(m_folder); !made)
            m_problem = made.error();
    }
    void pdf(const std::string& name, const std::vector<core::Sheet>& sheets) {
        if (!sheets.empty())
            add(name, [&](const std::string& path) { return writePdf(sheets, path); });
    }
    /// As tiles, on roll paper, and for machines.
    void everyWay(const std::string& name,
                  const std::vector<core::Pattern>& patterns,
                  core::PageSize page,
                  const std::string& boat) {
        pdf(name + "-tiled.pdf", core::tiledPages(patterns, page, boat));
        pdf(name + "-roll.pdf", core::rollPages(patterns, boat));
        machineFiles(patterns);
    }
    void machineFiles(const std::vector<core::Pattern>& patterns) {
        for (const core::Pattern& pattern : patterns) {
            text(pattern.file + "-mm.dxf", core::toDxf(pattern));
            text(pattern.file + "-mm.svg", core::toSvg(pattern));
        }
    }
    [[nodiscard]] const std::optional<PaperError>& problem() const { return m_problem; }
    [[nodiscard]] std::vector<std::string> take() { return std::move(m_written); }

private:
    void text(const std::string& name, const std::string& bytes) {
        add(name, [&](const std::string& path) { return writeBytes(bytes, path); });
    }
    template <class Write> void add(const std::string& name, const Write& write) {
        if (m_problem)
            return;
        m_written.push_back(m_folder + "/" + name);
        if (const Written done = write(m_written.back()); !done)
            m_problem = done.error();
    }

    std::string m_folder;
    std::vector<std::string> m_written;
    std::optional<PaperError> m_problem;
};

} // namespace

WrittenFiles writePatternFiles(const core::Project& project,
                               const core::PatternSet& set,
                               core::Units units,
                               core::PageSize page,
                               const std::string& folder) {
    Files files(folder);
    for (const auto& [name, patterns] :
         {std::pair{"moulds", &set.moulds}, {"strips", &set.strips}, {partsName, &set.parts}})
        files.everyWay(name, *patterns, page, project.name);
    files.pdf("moulds-on-sheets.pdf", core::nestedPages(project, set.boards, units, page));
    files.machineFiles(core::nestedPatterns(set.boards));
    if (files.problem())
        return unexpected(*files.problem());
    return WrittenSet{files.take(), set.findings};
}

Expected<std::vector<std::string>, PaperError> writePartPatterns(const std::vector<core::Pattern>& parts,
                                                                 core::PageSize page,
                                                                 const std::string& boat,
                                                                 const std::string& folder) {
    Files files(folder);
    files.everyWay(partsName, parts, page, boat);
    if (files.problem())
        return unexpected(*files.problem());
    return files.take();
}

} // namespace sheerlay::ui
