#include "ui/choices/form_builder.hpp"

#include "core/project/wood.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <algorithm>
#include <iterator>

namespace sheerlay::ui {

ChoiceField woodField(const QString& meaning) {
    ChoiceField field{ChoiceField::Kind::OneOf, Wording::tr("Wood"), meaning, {}, {}, {}, {}};
    for (const core::Wood& wood : core::allWoods()) {
        std::string words(wood.id); // as the paper has them, where the window speaks another language
        std::ranges::replace(words, '-', ' ');
        const QString heard = heardText(words);
        field.oneOf << (heard == toQString(words) ? toQString(wood.commonName) : heard);
    }
    return field;
}

double woodIndex(const std::string& id) {
    const auto woods = core::allWoods();
    const auto found = std::ranges::find(woods, id, &core::Wood::id);
    return static_cast<double>(found == woods.end() ? 0 : found - woods.begin());
}

std::string woodAt(const ChoiceValue& index) {
    return std::string(core::allWoods()[static_cast<std::size_t>(std::get<double>(index))].id);
}

std::vector<ChoiceField> joined(std::vector<ChoiceField> first, std::vector<ChoiceField> second) {
    std::ranges::move(second, std::back_inserter(first));
    return first;
}

double middleOf(const core::Project& project) {
    const auto& stations = project.hull.stations;
    return stations.empty() ? 0.0 : 0.5 * (stations.front().x + stations.back().x);
}

} // namespace sheerlay::ui
