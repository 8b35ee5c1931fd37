#include "core/offsets/said_profile.hpp"

#include "core/units/length_text.hpp"

#include <cstddef>
#include <string>

namespace sheerlay::core {

namespace {

constexpr std::string_view form = "points such as profile = 0 in at 14 in; 1 in at 8 in; 5 in at 2 in, each "
                                  "along the boat at its height";

} // namespace

Expected<std::vector<ProfilePoint>, LengthError>
saidProfile(std::string_view text, const Notation& notation, std::optional<double> fold) {
    std::vector<ProfilePoint> points;
    const auto said = [&](std::string_view words) { return readSaid(trimmed(words), notation); };
    while (!text.empty()) {
        const std::size_t end = text.find(';');
        const std::string one = trimmed(text.substr(0, end));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        if (one.empty())
            continue;
        const std::size_t at = one.find(" at ");
        if (at == std::string::npos)
            return unexpected(LengthError{quoted(one) + " without \"at\"", std::string(form)});
        const auto x = said(std::string_view(one).substr(0, at)),
                   height = said(std::string_view(one).substr(at + 4));
        for (const auto* length : {&x, &height})
            if (!*length)
                return unexpected(
                    LengthError{length->error().found + " in " + quoted(one), length->error().would});
        points.push_back({x->millimetres, height->millimetres, std::nullopt, 0});
        if (fold)
            points.push_back({2 * *fold - x->millimetres, height->millimetres, std::nullopt, 0});
    }
    if (points.empty())
        return unexpected(LengthError{"no point", std::string(form)});
    return points;
}

} // namespace sheerlay::core
