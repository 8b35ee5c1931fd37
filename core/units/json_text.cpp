#include "core/units/json_text.hpp"

#include <stdexcept>

namespace sheerlay::core {

std::string withMember(std::string object, std::string_view key, const std::string& value) {
    if (object.size() < 3 || object.front() != '{' || object.back() != '}')
        throw std::invalid_argument("withMember: no JSON object with members");
    object.pop_back();
    return object + ",\"" + std::string(key) + "\":" + value + "}";
}

} // namespace sheerlay::core
