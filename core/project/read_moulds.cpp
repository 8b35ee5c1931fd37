#include "core/project/read_moulds.hpp"

#include "core/project/ranged_length.hpp"
#include "core/project/ranged_number.hpp"
#include "core/words/say.hpp"

#include <string>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr LengthRange boardThickness{3.0, 80.0};
constexpr LengthRange mouldSpacing{50.0, 2000.0};
constexpr LengthRange strongbackSize{20.0, 2000.0};
constexpr LengthRange clearance{0.0, 2000.0};
constexpr LengthRange holeSize{1.0, 500.0};
constexpr LengthRange sheetSide{200.0, 6000.0};
constexpr LengthRange sheetKerf{0.5, 100.0};
constexpr int mostSheets = 1000; // far beyond any boat

void readStations(TableView& view, MouldChoices& moulds, Reading& reading) {
    constexpr std::string_view form = "stations = [x, …], where moulds stand, in the table's x and rising";
    const toml::array* list = view.array("stations", Need::Optional, form);
    if (list == nullptr)
        return;
    if (view.has("spacing"))
        reading.messages.error(lineOf(*list),
                               view.keyOf("stations"),
                               sayable("stations beside a spacing"),
                               sayable("one of the two, since each says where every mould stands"));
    std::size_t number = 0;
    for (const toml::node& node : *list) {
        const std::string key = view.keyOf("stations") + "[" + std::to_string(++number) + "]";
        const auto cell = readLengthNode(node, key, Sign::Any, reading);
        if (!cell)
            continue;
        if (!moulds.stations.empty() && cell->value <= moulds.stations.back())
            reading.messages.error(
                cell->line,
                key,
                inEnglish(sayable("{}, which does not lie abaft the one before it"), cell->printed),
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

void readSheets(TableView& view, MouldChoices& moulds, Reading& reading) {
    constexpr std::string_view form = "[[moulds.sheet]] with length, width and, if they are few, count";
    if (!view.has("sheet"))
        return;
    moulds.sheets.clear();
    view.eachTable("sheet", Need::Optional, form, [&](TableView inner) {
        SheetSize size;
        takeLength(size.length, inner, "length", Need::Required, sheetSide, reading);
        takeLength(size.width, inner, "width", Need::Required, sheetSide, reading);
        size.count =
            rangedCount(inner, "count", {1, mostSheets, sayable("a whole number of sheets")}, reading);
        inner.reportUnknown();
        if (size.length < size.width) // either side may be called the length
            std::swap(size.length, size.width);
        moulds.sheets.push_back(size);
    });
    if (moulds.sheets.empty()) {
        reading.messages.error(view.lineOfKey("sheet"),
                               view.keyOf("sheet"),
                               "an empty list",
                               std::string(form) + "; or no such key: then they are 8 by 4 ft");
        moulds.sheets.emplace_back();
    }
}

} // namespace

MouldChoices usualMoulds(Units units) {
    MouldChoices moulds;
    if (units == Units::Inches) {
        moulds.kerf = 9.525; // 3/8 in
    } else {
        moulds.thickness = 18.0;
        moulds.strongback = {200.0, 150.0, 100.0};
        moulds.sheets = {{2440.0, 1220.0, {}}};
    }
    return moulds;
}

MouldChoices readMoulds(TableView& file, Reading& reading) {
    MouldChoices moulds = usualMoulds(reading.units);
    auto view = file.table("moulds", Need::Optional, "a table [moulds]");
    if (!view)
        return moulds;
    takeLength(moulds.thickness, *view, "thickness", Need::Optional, boardThickness, reading);
    if (view->has("spacing")) {
        double spacing = 0.0;
        takeLength(spacing, *view, "spacing", Need::Optional, mouldSpacing, reading);
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
        takeLength(moulds.strongback.width, *back, "width", Need::Optional, strongbackSize, reading);
        takeLength(moulds.strongback.height, *back, "height", Need::Optional, strongbackSize, reading);
        takeLength(moulds.strongback.clear, *back, "clear", Need::Optional, clearance, reading);
        back->reportUnknown();
    }
    if (auto holes = view->table("holes", Need::Optional, "holes = { pitch = …, inset = …, diameter = … }")) {
        EdgeHoles read;
        takeLength(read.pitch, *holes, "pitch", Need::Optional, holeSize, reading);
        takeLength(read.inset, *holes, "inset", Need::Optional, holeSize, reading);
        takeLength(read.diameter, *holes, "diameter", Need::Optional, holeSize, reading);
        holes->reportUnknown();
        moulds.holes = read;
    }
    readSheets(*view, moulds, reading);
    takeLength(moulds.kerf, *view, "kerf", Need::Optional, sheetKerf, reading);
    view->reportUnknown();
    return moulds;
}

} // namespace sheerlay::core
