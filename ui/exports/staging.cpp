#include "ui/exports/staging.hpp"

#include <unistd.h>

namespace sheerlay::ui {

namespace fs = std::filesystem;

namespace {

std::string cannot(const fs::path& path, const std::error_code& problem) {
    return path.string() + ": it can't be written: " + problem.message() +
           ". A folder that you may write to would do.";
}

} // namespace

Staging::Staging(const fs::path& out) : m_out(out) {
    std::error_code problem;
    m_made = !fs::exists(out, problem);
    fs::create_directories(out, problem);
    m_folder = out / (".staged-" + std::to_string(::getpid()));
    if (!problem)
        fs::create_directory(m_folder, problem);
    m_problem = problem;
}

Staging::~Staging() {
    std::error_code ignored;
    fs::remove_all(m_folder, ignored);
    if (m_made)
        fs::remove(m_out, ignored); // goes only when it is empty
}

std::string Staging::problemText() const {
    return cannot(m_out, m_problem);
}

std::string Staging::inBuildersWords(std::string text) const {
    if (const auto at = text.find(folder()); at != std::string::npos)
        text.replace(at, folder().size(), m_out.string());
    return text;
}

Outcome Staging::moveOut(WrittenSet staged) const {
    for (std::string& path : staged.files) {
        const fs::path target = m_out / fs::path(path).filename();
        std::error_code problem;
        fs::rename(path, target, problem);
        if (problem)
            return unexpected(cannot(target, problem));
        path = target.string();
    }
    for (const std::string& name : staged.outOfDate) {
        std::error_code ignored; // it may never have been there
        fs::remove(m_out / name, ignored);
    }
    return staged;
}

} // namespace sheerlay::ui
