#include "core/project/read_afloat.hpp"

#include "core/project/ranged_length.hpp"
#include "core/units/length_text.hpp"
#include "core/units/weight.hpp"

#include <string>
#include <string_view>

namespace sheerlay::core {

namespace {

constexpr LengthRange freeboards{0.0, 1500.0};
constexpr double heaviest = 5000.0; // kg; far beyond any strip-built boat, above it a number is a slip
constexpr double saltWater = 1025.0;

std::optional<double> weightOf(TableView& view, std::string_view key, Need need, Reading& reading) {
    constexpr std::string_view form = "a weight such as \"170 lb\" or \"77 kg\"";
    const toml::node* node = view.find(key, need, form);
    if (node == nullptr)
        return std::nullopt;
    const auto refuse = [&](std::string found, std::string would) {
        reading.messages.error(lineOf(*node), view.keyOf(key), std::move(found), std::move(would));
        return std::nullopt;
    };
    double kilograms = 0.0;
    if (const auto* text = node->as_string()) {
        const auto read = parseWeight(text->get(), reading.units);
        if (!read)
            return refuse(read.error().found, read.error().would);
        kilograms = *read;
    } else if (const auto number = node->is_number() ? node->value<double>() : std::nullopt) {
        kilograms = *number * (reading.units == Units::Inches ? kgPerPound : 1.0);
    } else {
        return refuse(describe(*node, reading.source), std::string(form));
    }
    if (!(kilograms > 0.0 && kilograms <= heaviest))
        return refuse(describe(*node, reading.source) + ", out of range", std::string(form));
    return kilograms;
}

PlacedWeight placedWeight(TableView view, std::string_view otherwise, std::size_t number, Reading& reading) {
    PlacedWeight placed;
    placed.line = view.line();
    placed.name = view.text("name", Need::Optional, "a name in quotes")
                      .value_or(std::string(otherwise) + " " + std::to_string(number));
    placed.mass = weightOf(view, "weight", Need::Required, reading).value_or(0.0);
    const auto length = [&](std::string_view key, Need need) {
        const auto cell = view.length(key, need, Sign::Any);
        return cell ? cell->value : 0.0;
    };
    placed.x = length("x", Need::Required);
    placed.y = length("off-centre", Need::Optional);
    placed.height = length("height", Need::Required);
    view.reportUnknown();
    return placed;
}

/// "fresh", "salt", or a density in kg/m3.
void readWater(TableView& view, AfloatChoices& choices, Reading& reading) {
    constexpr std::string_view form = "\"fresh\", \"salt\", or kilograms to the cubic metre from 950 to 1250";
    const toml::node* node = view.find("water", Need::Optional, form);
    if (node == nullptr)
        return;
    const auto* word = node->as_string();
    const auto number = node->is_number() ? node->value<double>() : std::nullopt;
    if (word != nullptr && (word->get() == "fresh" || word->get() == "salt"))
        choices.density = word->get() == "salt" ? saltWater : choices.density;
    else if (number && *number >= 950.0 && *number <= 1250.0)
        choices.density = *number;
    else
        reading.messages.error(
            lineOf(*node), view.keyOf("water"), describe(*node, reading.source), std::string(form));
}

} // namespace

std::optional<AfloatChoices> readAfloat(TableView& file, Reading& reading) {
    auto view = file.table("afloat", Need::Optional, "a table [afloat]");
    if (!view)
        return std::nullopt;
    AfloatChoices choices;
    readWater(*view, choices, reading);
    takeLength(choices.freeboard, *view, "freeboard", Need::Optional, freeboards, reading);
    choices.boatMass = weightOf(*view, "boat-weight", Need::Optional, reading);
    const auto all = [&](std::string_view key, std::vector<PlacedWeight>& list) {
        const std::string form = "[[afloat." + std::string(key) + "]] with weight, x and height";
        view->eachTable(key, Need::Optional, form, [&](TableView inner) {
            list.push_back(placedWeight(std::move(inner), key, list.size() + 1, reading));
        });
    };
    all("load", choices.loads);
    all("part", choices.parts);
    view->reportUnknown();
    return choices;
}

} // namespace sheerlay::core
