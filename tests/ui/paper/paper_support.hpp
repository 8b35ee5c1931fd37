#pragma once

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QString>
#include <QStringList>
#include <QTemporaryDir>

#include <Eigen/Core>

#include <sstream>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace sheerlay::test {

/// Runs one of poppler's tools and gives back what it prints.
/// @throws std::runtime_error  it is not installed or fails
inline std::string run(const char* tool, const QStringList& arguments) {
    QProcess process;
    process.start(QString::fromUtf8(tool), arguments);
    if (!process.waitForStarted() || !process.waitForFinished(60000) || process.exitCode() != 0)
        throw std::runtime_error(std::string(tool) +
                                 " did not run; the tests need the Debian package poppler-utils");
    return process.readAllStandardOutput().toStdString();
}

inline std::string bytesOf(const std::string& path) {
    QFile file(QString::fromStdString(path));
    if (!file.open(QIODevice::ReadOnly))
        throw std::runtime_error("cannot read " + path);
    return file.readAll().toStdString();
}

/// One page of a PDF, as poppler draws it; points, 72 to the inch.
inline std::string svgOf(const std::string& pdf, int page = 1) {
    const QString number = QString::number(page);
    return run("pdftocairo",
               {QStringLiteral("-svg"),
                QStringLiteral("-f"),
                number,
                QStringLiteral("-l"),
                number,
                QString::fromStdString(pdf),
                QStringLiteral("-")});
}

/// Every open or closed polyline of such a page, mm on paper, y down.
inline std::vector<std::vector<Eigen::Vector2d>> polylines(const std::string& svg) {
    std::vector<std::vector<Eigen::Vector2d>> lines;
    const std::string path = " d=\"", matrix = "matrix(";
    for (std::size_t at = svg.find(path); at != std::string::npos; at = svg.find(path, at)) {
        at += path.size();
        const std::size_t end = svg.find('"', at), tag = svg.find('>', end);
        const std::size_t scaled = svg.find(matrix, end);
        const double scale = scaled < tag ? std::stod(svg.substr(scaled + matrix.size())) : 1.0;
        std::istringstream words(svg.substr(at, end - at));
        std::vector<Eigen::Vector2d> line;
        for (std::string word; words >> word;) { // "M x y L x y … Z"; curves are letters, and not of interest
            if (word == "Z" && line.size() > 2)
                line.push_back(line.front());
            if (word == "M" && !line.empty())
                lines.push_back(std::exchange(line, {}));
            if (double x = 0, y = 0; (word == "M" || word == "L") && words >> x >> y)
                line.emplace_back(Eigen::Vector2d(x, y) * scale * 25.4 / 72.0);
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

/// A folder that goes when the test ends.
struct Folder {
    QTemporaryDir dir;
    [[nodiscard]] std::string file(const char* name) const {
        return dir.filePath(QString::fromUtf8(name)).toStdString();
    }
};

} // namespace sheerlay::test
