#include "core/project/read_moulds.hpp"

#include "core/units/both_units.hpp"

#include <string>

namespace sheerlay::core {

namespace {

/// Ranges that tell a slip of units from a board, mm.
struct Range {
    double least = 0.0;
    double most = 0.0;
};
constexpr Range boardThickness{3.0, 80.0};
constexpr Range mouldSpacing{50.0, 2000.0};
constexpr Range strongbackSize{20.0, 2000.0};
constexpr Range clearance{0.0, 2000.0};
constexpr Range holeSize{1.0, 500.0};

void take(double& value, TableView& view, std::string_view key, Need need, Range range, Reading& reading) {
    const auto cell = view.length(key, need, range.least > 0.0 ? Sign::Positive : Sign::NotNegative);
    if (!cell)
        return;
    if (reading.unitsKnown && (cell->value < range.least || cell->value > range.most)) {
        reading.messages.error(cell->line,
                               view.keyOf(key),
                               bothUnits(cell->value),
                               "a length between " + bothUnits(range.least) + " and " +
                                   bothUnits(range.most) + "; inches and millimetres may have been mixed up");
        return;
    }
    value = cell->value;
}

void readStations(TableView& view, MouldChoices& moulds, Reading& reading) {
    constexpr std::string_view form = "stations = [x, …], where moulds stand, in the table's x and rising";
    const toml::array* list = view.array("stations", Need::Optional, form);
    if (list == nullptr)
        return;
    if (view.has("spacing"))
        reading.messages.error(lineOf(*list),
                               view.keyOf("stations"),
                               "stations beside a spacing",
                               "one of the two, since each says where every mould stands");
    std::size_t number = 0;
    for (const toml::node& node : *list) {
        const std::string key = view.keyOf("stations") + "[" + std::to_string(++number) + "]";
        const auto cell = readLengthNode(node, key, Sign::Any, reading);
        if (!cell)
            continue;
        if (!moulds.stations.empty() && cell->value <= moulds.stations.back())
            reading.messages.error(cell->line,
                                   key,
                                   cell->printed + ", which does not lie abaft the one before it",
                                   std::string(form));
        else
            moulds.stations.push_back(cell->value);
    }
    if (list->empty())
        reading.messages.error(lineOf(*list),
                               view.keyOf("stations"),
                               "an empty list",
                               "at least one x, or no such key: then a mould stands at every station");
}

} // namespace

MouldChoices readMoulds(TableView& file, Reading& reading) {
    MouldChoices moulds;
    auto view = file.table("moulds", Need::Optional, "a table [moulds]");
    if (!view)
        return moulds;
    take(moulds.thickness, *view, "thickness", Need::Optional, boardThickness, reading);
    if (view->has("spacing")) {
        double spacing = 0.0;
        take(spacing, *view, "spacing", Need::Optional, mouldSpacing, reading);
        if (spacing > 0.0)
            moulds.spacing = spacing;
    }
    readStations(*view, moulds, reading);
    moulds.shape = view->choice<MouldChoices::Shape>(
                           "shape",
                           Need::Optional,
                           {{"half", MouldChoices::Shape::Half}, {"whole", MouldChoices::Shape::Whole}})
                       .value_or(MouldChoices::Shape::Half);
    if (auto back =
            view->table("strongback", Need::Optional, "strongback = { width = …, height = …, clear = … }")) {
        take(moulds.strongback.width, *back, "width", Need::Optional, strongbackSize, reading);
        take(moulds.strongback.height, *back, "height", Need::Optional, strongbackSize, reading);
        take(moulds.strongback.clear, *back, "clear", Need::Optional, clearance, reading);
        back->reportUnknown();
    }
    if (auto holes = view->table("holes", Need::Optional, "holes = { pitch = …, inset = …, diameter = … }")) {
        EdgeHoles read;
        take(read.pitch, *holes, "pitch", Need::Optional, holeSize, reading);
        take(read.inset, *holes, "inset", Need::Optional, holeSize, reading);
        take(read.diameter, *holes, "diameter", Need::Optional, holeSize, reading);
        holes->reportUnknown();
        moulds.holes = read;
    }
    view->reportUnknown();
    return moulds;
}

} // namespace sheerlay::core
