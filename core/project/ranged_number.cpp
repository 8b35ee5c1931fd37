#include "core/project/ranged_number.hpp"

#include "core/words/say.hpp"

#include <array>
#include <charconv>
#include <cmath>
#include <string>

namespace sheerlay::core {

namespace {

/// As few digits as tell the number.
std::string plain(double value) {
    std::array<char, 32> digits;
    const auto end = std::to_chars(digits.begin(), digits.end(), value, std::chars_format::fixed).ptr;
    return {digits.begin(), end};
}

std::string whatWouldDo(const NumberRange& range) {
    return inEnglish(sayable("{}; from {} to {}"), range.form, plain(range.least), plain(range.most));
}

void refuse(TableView& view,
            std::string_view key,
            std::string_view fault,
            const NumberRange& range,
            Reading& reading) {
    const toml::node& node = *view.find(key, Need::Optional);
    reading.messages.error(
        lineOf(node), view.keyOf(key), inEnglish(fault, describe(node, reading.source)), whatWouldDo(range));
}

} // namespace

std::optional<double>
rangedNumber(TableView& view, std::string_view key, const NumberRange& range, Reading& reading) {
    const auto value = view.number(key, Need::Optional, whatWouldDo(range));
    if (!value || (*value >= range.least && *value <= range.most))
        return value;
    refuse(view, key, sayable("{}, out of range"), range, reading);
    return std::nullopt;
}

std::optional<int>
rangedCount(TableView& view, std::string_view key, const NumberRange& range, Reading& reading) {
    const auto value = rangedNumber(view, key, range, reading);
    if (!value)
        return std::nullopt;
    if (*value == std::floor(*value))
        return static_cast<int>(*value);
    refuse(view, key, sayable("{}, not whole"), range, reading);
    return std::nullopt;
}

} // namespace sheerlay::core
