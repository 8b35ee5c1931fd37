#include "core/project/ranged_length.hpp"

#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

#include <string>

namespace sheerlay::core {

void takeLength(
    double& value, TableView& view, std::string_view key, Need need, LengthRange range, Reading& reading) {
    const auto cell = view.length(key, need, range.least > 0.0 ? Sign::Positive : Sign::NotNegative);
    if (!cell)
        return;
    if (reading.unitsKnown && (cell->value < range.least || cell->value > range.most)) {
        reading.messages.error(
            cell->line,
            view.keyOf(key),
            bothUnits(cell->value),
            inEnglish(sayable("a length between {} and {}; inches and millimetres may have been "
                              "mixed up"),
                      bothUnits(range.least),
                      bothUnits(range.most)));
        return;
    }
    value = cell->value;
}

} // namespace sheerlay::core
