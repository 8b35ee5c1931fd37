#pragma once

#include <algorithm>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace sheerlay::test {

/// A table read back: a header and rows of cells.
struct CsvTable {
    std::vector<std::vector<std::string>> rows; ///< the header is the first
    [[nodiscard]] std::size_t column(std::string_view name) const {
        const auto found = std::find(rows.front().begin(), rows.front().end(), name);
        if (found == rows.front().end())
            throw std::runtime_error("no column " + std::string(name));
        return static_cast<std::size_t>(found - rows.front().begin());
    }
    [[nodiscard]] const std::string& cell(std::size_t row, std::string_view name) const {
        return rows.at(row).at(column(name));
    }
    [[nodiscard]] double number(std::size_t row, std::string_view name) const {
        return std::stod(cell(row, name));
    }
};

/// RFC 4180, written apart from the product's writer.
[[nodiscard]] inline CsvTable readCsv(const std::string& text) {
    CsvTable table;
    std::vector<std::string> row;
    std::string cell;
    bool quoted = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (quoted) {
            if (c == '"' && i + 1 < text.size() && text[i + 1] == '"')
                cell += text[++i];
            else if (c == '"')
                quoted = false;
            else
                cell += c;
        } else if (c == '"') {
            quoted = true;
        } else if (c == ',' || c == '\n') {
            row.push_back(cell);
            cell.clear();
            if (c == '\n') {
                table.rows.push_back(row);
                row.clear();
            }
        } else if (c != '\r') {
            cell += c;
        }
    }
    return table;
}

} // namespace sheerlay::test
