#include "core/project/read_stock.hpp"

#include "core/project/nominal_lumber.hpp"
#include "core/project/ranged_number.hpp"
#include "core/project/wood.hpp"
#include "core/units/length.hpp"
#include "core/units/length_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr std::string_view lotForm = "[[stock.lot]] with thickness, width and length";
constexpr std::string_view ruleForm =
    "[[stock.wood-rule]] with wood, and rows = [first, last] or girth = [from, to]";
constexpr double mostRows = 1000, mostBoards = 10000; // far beyond any boat; above it a number is a slip

std::optional<std::string> woodOf(TableView& view, Need need, Reading& reading) {
    const auto wood = view.text("wood", need, woodNames());
    if (!wood || findWood(*wood) != nullptr)
        return wood;
    reading.messages.error(
        view.lineOfKey("wood"), view.keyOf("wood"), "the text " + quoted(*wood), "one of " + woodNames());
    return std::nullopt;
}

/// "A" to "Z", then "A2", "B2", …
std::string letterOf(std::size_t index) {
    std::string name(1, static_cast<char>('A' + static_cast<char>(index % 26)));
    return index < 26 ? name : name + std::to_string(1 + index / 26);
}

void readSize(TableView& view, BoardLot& lot, Reading& reading) {
    constexpr std::string_view form = "a size of the yard such as \"1x6\", \"5/4x8\" or \"2x10\"";
    std::optional<NominalLumber> nominal;
    if (const auto size = view.text("nominal", Need::Optional, form)) {
        nominal = nominalLumber(*size);
        if (!nominal)
            reading.messages.error(view.lineOfKey("nominal"),
                                   view.keyOf("nominal"),
                                   "the text " + quoted(*size),
                                   std::string(form) + ", or the actual thickness and width");
    }
    const Need need = view.has("nominal") ? Need::Optional : Need::Required;
    const auto thickness = view.length("thickness", need, Sign::Positive);
    const auto width = view.length("width", need, Sign::Positive);
    const auto length = view.length("length", Need::Required, Sign::Positive);
    const auto charged = view.length("charged-thickness", Need::Optional, Sign::Positive);
    const NominalLumber size = nominal.value_or(NominalLumber{});
    lot.thickness = thickness ? thickness->value : size.thickness;
    lot.width = width ? width->value : size.width;
    lot.length = length ? length->value : 0.0;
    lot.chargedThickness =
        std::max(mmPerInch, charged ? charged->value : std::max(size.chargedThickness, lot.thickness));
}

/// Two lengths of which the second is the larger; what is not is reported under `key`.
std::optional<std::array<double, 2>>
risingPair(const toml::node& node, const std::string& key, std::string_view form, Reading& reading) {
    const toml::array* pair = node.as_array();
    if (pair != nullptr && pair->size() == 2) {
        const auto from = readLengthNode(*pair->get(0), key, Sign::NotNegative, reading);
        const auto to = readLengthNode(*pair->get(1), key, Sign::NotNegative, reading);
        if (!from || !to)
            return std::nullopt;
        if (from->value < to->value)
            return std::array{from->value, to->value};
    }
    reading.messages.error(lineOf(node), key, "what is not two lengths that rise", std::string(form));
    return std::nullopt;
}

void readDefects(TableView& view, BoardLot& lot, Reading& reading) {
    constexpr std::string_view form =
        "defects = [[from, to], …], from the board's first end, rising and apart, within its length";
    const toml::array* list = view.array("defects", Need::Optional, form);
    if (list == nullptr)
        return;
    std::size_t number = 0;
    for (const toml::node& node : *list) {
        const std::string key = view.keyOf("defects") + "[" + std::to_string(++number) + "]";
        const auto pair = risingPair(node, key, form, reading);
        if (!pair)
            continue;
        const bool apart = lot.defects.empty() || lot.defects.back()[1] < (*pair)[0];
        if (apart &&
            ((*pair)[1] <= lot.length || lot.length == 0.0)) // a length that is wrong is told already
            lot.defects.push_back(*pair);
        else
            reading.messages.error(lineOf(node),
                                   key,
                                   apart ? sayable("a defect beyond the board's end")
                                         : sayable("a defect that begins in the one before it"),
                                   std::string(form));
    }
}

BoardLot boardLot(TableView view, std::size_t index, const StripStock& strips, Reading& reading) {
    BoardLot lot;
    lot.line = view.line();
    lot.name = view.text("name", Need::Optional, "a short name in quotes").value_or(letterOf(index));
    lot.wood = woodOf(view, Need::Optional, reading).value_or(strips.wood);
    readSize(view, lot, reading);
    readDefects(view, lot, reading);
    if (const auto count =
            rangedCount(view, "count", {1, mostBoards, sayable("a whole number of boards")}, reading))
        lot.count = *count;
    lot.price = rangedNumber(view, "price", {0.0, 1e6, sayable("the price of one board, a number")}, reading);
    view.reportUnknown();
    return lot;
}

std::optional<WoodRule> woodRule(TableView view, Reading& reading) {
    WoodRule rule;
    rule.line = view.line();
    const auto wood = woodOf(view, Need::Required, reading);
    constexpr std::string_view rowsForm = "rows = [first, last], two rows that rise, - above the start";
    constexpr std::string_view girthForm = "girth = [from, to], lengths below the sheer, instead of rows";
    const toml::array* girth = view.array("girth", Need::Optional, girthForm);
    const toml::array* rows =
        view.array("rows", view.has("girth") ? Need::Optional : Need::Required, rowsForm);
    constexpr std::string_view everyForm = "every = 1 for each of the rows, 2 for every second, …";
    const int every = rangedCount(view, "every", {1, mostRows, everyForm}, reading).value_or(1);
    view.reportUnknown();
    if (girth != nullptr && rows != nullptr) {
        reading.messages.error(view.lineOfKey("girth"),
                               view.keyOf("girth"),
                               sayable("a girth beside rows"),
                               sayable("one of the two, since each says which rows are meant"));
        return std::nullopt;
    }
    if (!wood || (rows == nullptr && girth == nullptr))
        return std::nullopt;
    rule.wood = *wood;
    rule.every = every;
    if (girth != nullptr) {
        rule.girth = risingPair(*girth, view.keyOf("girth"), girthForm, reading);
        return rule.girth ? std::optional(rule) : std::nullopt;
    }
    std::vector<int> numbers;
    for (const toml::node& node : *rows) {
        const auto value = node.is_integer() ? node.value<int>() : std::nullopt;
        if (value && *value != 0 && std::abs(*value) <= static_cast<int>(mostRows))
            numbers.push_back(*value);
    }
    if (numbers.size() != 2 || rows->size() != 2 || numbers[0] > numbers[1]) {
        reading.messages.error(view.lineOfKey("rows"),
                               view.keyOf("rows"),
                               sayable("what is not two rows that rise"),
                               std::string(rowsForm));
        return std::nullopt;
    }
    rule.firstRow = numbers[0];
    rule.lastRow = numbers[1];
    return rule;
}

void readMilling(TableView& view, Stock& stock, Reading& reading) {
    const auto length = [&](std::string_view key, Sign sign, double& value) {
        if (const auto cell = view.length(key, Need::Optional, sign))
            value = cell->value;
    };
    length("kerf", Sign::NotNegative, stock.kerf);
    length("planing", Sign::NotNegative, stock.planing);
    length("jointing", Sign::NotNegative, stock.jointing);
    length("surfacing", Sign::NotNegative, stock.surfacing);
    length("end-trim", Sign::NotNegative, stock.endTrim);
    stock.spare =
        rangedNumber(view, "spare", {0.0, 1.0, sayable("a part of the whole, such as 0.10")}, reading)
            .value_or(stock.spare);
    stock.scarfSlope = rangedNumber(view, "scarf-slope", {1.0, 30.0, sayable("a slope, such as 8")}, reading)
                           .value_or(stock.scarfSlope);
    if (const auto longest = view.length("longest-piece", Need::Optional, Sign::Positive))
        stock.longestPiece = longest->value;
    length("shortest-piece", Sign::Positive, stock.shortestPiece);
    length("joint-worth", Sign::NotNegative, stock.jointWorth);
    stock.sides = view.choice<JointSides>("sides",
                                          Need::Optional,
                                          {{"mirror", JointSides::Mirror},
                                           {"stagger", JointSides::Stagger},
                                           {"book-matched", JointSides::BookMatched}})
                      .value_or(JointSides::Mirror);
    if (stock.longestPiece && *stock.longestPiece < stock.shortestPiece)
        reading.messages.error(view.lineOfKey("longest-piece"),
                               view.keyOf("longest-piece"),
                               sayable("a longest piece shorter than the shortest"),
                               sayable("a longest piece above shortest-piece"));
}

/// Names tell the lots apart on the sheets, so none may stand for two.
void reportTwins(const Stock& stock, Reading& reading) {
    for (std::size_t i = 0; i < stock.lots.size(); ++i)
        for (std::size_t j = 0; j < i; ++j)
            if (stock.lots[i].name == stock.lots[j].name)
                reading.messages.error(
                    stock.lots[i].line,
                    "stock.lot[" + std::to_string(i + 1) + "].name",
                    inEnglish(sayable("the name {} a second time"), quoted(stock.lots[i].name)),
                    sayable("a name of its own for every lot"));
}

} // namespace

std::optional<Stock> readStock(TableView& file, const StripStock& strips, Reading& reading) {
    auto view = file.table("stock", Need::Optional, lotForm);
    if (!view)
        return std::nullopt;
    Stock stock;
    readMilling(*view, stock, reading);
    view->eachTable("lot", Need::Optional, lotForm, [&](TableView inner) {
        stock.lots.push_back(boardLot(std::move(inner), stock.lots.size(), strips, reading));
    });
    view->eachTable("wood-rule", Need::Optional, ruleForm, [&](TableView inner) {
        if (const auto rule = woodRule(std::move(inner), reading))
            stock.woodRules.push_back(*rule);
    });
    view->reportUnknown();
    reportTwins(stock, reading);
    return stock;
}

} // namespace sheerlay::core
