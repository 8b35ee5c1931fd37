#include "ui/begin/starter.hpp"

#include <spdlog/fmt/fmt.h>

#include "starter_text.hpp"
#include <sstream>
#include <string_view>

namespace sheerlay::ui {

namespace {

/// A TOML basic string.
std::string quoted(const std::string& text) {
    std::string result = "\"";
    for (const char c : text) {
        const auto code = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\')
            result += {'\\', c};
        else if (code < 0x20 || code == 0x7f)
            result += fmt::format("\\u{:04X}", code);
        else
            result += c;
    }
    return result + "\"";
}

bool isNameLine(std::string_view line) {
    if (!line.starts_with("name"))
        return false;
    const std::size_t next = line.find_first_not_of(" \t", 4);
    return next != std::string_view::npos && line[next] == '=';
}

} // namespace

std::string starterProject(const std::string& name) {
    std::string result = "# A boat to start from: put your own table in place of this one, then run\n"
                         "#     sheerlay check  on this file, to see what the table and the loft say, and\n"
                         "#     sheerlay plan   to lay the strips.\n"
                         "# Lengths stand in quotes as you write them: \"1-3-4+\" is 1 ft 3 9/16 in "
                         "(feet-inches-eighths, a + for a\n"
                         "# sixteenth more); \"15 3/4 in\" and \"400 mm\" do as well.\n\n";
    std::istringstream example(starterText);
    bool opening = true; // the example's own story stands in the comments at its head
    bool named = false;
    for (std::string line; std::getline(example, line);) {
        opening = opening && (line.empty() || line.starts_with('#'));
        if (opening)
            continue;
        if (!named && isNameLine(line)) {
            line = "name   = " + quoted(name);
            named = true;
        }
        result += line + "\n";
    }
    return result;
}

} // namespace sheerlay::ui
