#include "app/sheets_command.hpp"

#include "ui/paper/sheet_set.hpp"

#include <QGuiApplication>

#include <array>
#include <filesystem>
#include <iostream>
#include <system_error>
#include <unistd.h>
#include <utility>

namespace sheerlay::app {

namespace {

namespace fs = std::filesystem;

/// A folder beside the files to be, so that they come into being all together or not at all.
class Staging {
public:
    explicit Staging(const fs::path& out) : m_out(out) {
        std::error_code problem;
        m_made = !fs::exists(out, problem);
        fs::create_directories(out, problem);
        m_folder = out / (".sheets-" + std::to_string(::getpid()));
        if (!problem)
            fs::create_directory(m_folder, problem);
        m_problem = problem;
    }
    Staging(const Staging&) = delete;
    Staging& operator=(const Staging&) = delete;
    ~Staging() {
        std::error_code ignored;
        fs::remove_all(m_folder, ignored);
        if (m_made)
            fs::remove(m_out, ignored); // goes only when it is empty
    }

    [[nodiscard]] const std::error_code& problem() const { return m_problem; }
    [[nodiscard]] std::string folder() const { return m_folder.string(); }

private:
    fs::path m_out;
    fs::path m_folder;
    bool m_made = false;
    std::error_code m_problem;
};

/// Qt remarks on the session (no runtime folder, no fonts folder) mean nothing to a command that only paints.
void keepQtQuiet(QtMsgType type, const QMessageLogContext& /*context*/, const QString& text) {
    if (type == QtCriticalMsg || type == QtFatalMsg)
        std::cerr << text.toStdString() << '\n';
}

std::string cannot(const fs::path& path, const std::error_code& problem) {
    return path.string() + ": it can't be written: " + problem.message() +
           ". A folder that you may write to would do.";
}

} // namespace

Expected<std::vector<std::string>, std::string> writeSheets(const Request& request,
                                                            const core::Project& project,
                                                            const core::LoftedHull& hull,
                                                            const core::Plan& plan) {
    const fs::path out(request.out);
    const Staging staging(out);
    if (staging.problem())
        return unexpected(cannot(out, staging.problem()));

    qputenv("QT_QPA_PLATFORM", "offscreen"); // the only platform that paints type without a display
    qputenv("LC_ALL", "C.UTF-8");            // file names are UTF-8 whatever the session speaks
    std::array<char, 9> name{"sheerlay"};
    std::array<char*, 2> arguments{name.data(), nullptr};
    int count = 1;
    qInstallMessageHandler(keepQtQuiet);
    const QGuiApplication application(count, arguments.data());

    const core::PageSize page = request.page.value_or(
        project.units == core::Units::Inches ? core::PageSize::Letter : core::PageSize::A4);
    const auto staged = ui::writeSheetSet(project, hull, plan, project.units, page, staging.folder());
    if (!staged) {
        std::string text = staged.error().text; // names the place the builder knows of
        if (const auto at = text.find(staging.folder()); at != std::string::npos)
            text.replace(at, staging.folder().size(), request.out);
        return unexpected(text);
    }

    std::vector<std::string> written;
    for (const std::string& path : *staged) {
        const fs::path target = out / fs::path(path).filename();
        std::error_code problem;
        fs::rename(path, target, problem);
        if (problem)
            return unexpected(cannot(target, problem));
        written.push_back(target.string());
    }
    return written;
}

} // namespace sheerlay::app
