#include "core/project/read_journal.hpp"

#include <cmath>

namespace sheerlay::core {

namespace {

constexpr std::string_view readingForm =
    "[[journal.reading]] with row and girth-left = [{ x = …, girth = … }, …]";
constexpr std::string_view laidForm = "[[journal.laid]] with strip, and date and note if wanted";
constexpr double mostRows = 1000; // far beyond any boat; above it a number is a slip

std::optional<GirthLeft> girthLeft(TableView view) {
    const auto x = view.length("x", Need::Required, Sign::Any);
    const auto girth = view.length("girth", Need::Required, Sign::NotNegative);
    view.reportUnknown();
    if (!x || !girth)
        return std::nullopt;
    return GirthLeft{x->value, girth->value, x->printed, girth->printed, view.line()};
}

RowReading rowReading(TableView view, Reading& reading) {
    RowReading round;
    round.line = view.line();
    constexpr std::string_view rowForm =
        "the number of a row, from the start toward the keel; 0 for the bare moulds";
    if (const auto row = view.number("row", Need::Required, rowForm)) {
        if (*row >= 0 && *row <= mostRows && *row == std::floor(*row))
            round.row = static_cast<int>(*row);
        else
            reading.messages.error(
                view.lineOfKey("row"), view.keyOf("row"), "a number that no row has", std::string(rowForm));
    }
    round.side =
        view.choice<ReadSide>(
                "side",
                Need::Optional,
                {{"both", ReadSide::Both}, {"starboard", ReadSide::Starboard}, {"port", ReadSide::Port}})
            .value_or(ReadSide::Both);
    if (const auto sd = view.length("sd", Need::Optional, Sign::Positive))
        round.sd = sd->value;
    round.date = view.text("date", Need::Optional, "a date in quotes").value_or("");
    bool empty = view.has("girth-left");
    view.eachTable("girth-left", Need::Required, readingForm, [&](TableView inner) {
        empty = false;
        if (const auto girth = girthLeft(std::move(inner)))
            round.girthLeft.push_back(*girth);
    });
    if (empty)
        reading.messages.warning(view.lineOfKey("girth-left"),
                                 view.keyOf("girth-left"),
                                 "no girth stands here yet, so nothing is taken from it",
                                 "{ x = …, girth = … } for every station that was read");
    view.reportUnknown();
    return round;
}

LaidStrip laidStrip(TableView view) {
    LaidStrip laid;
    laid.line = view.line();
    laid.strip = view.text("strip", Need::Required, "the name of a strip, such as \"S07\"").value_or("");
    laid.date = view.text("date", Need::Optional, "a date in quotes").value_or("");
    laid.note = view.text("note", Need::Optional, "a note in quotes").value_or("");
    view.reportUnknown();
    return laid;
}

} // namespace

Journal readJournal(TableView& file, Reading& reading) {
    Journal journal;
    auto view = file.table("journal", Need::Optional, readingForm);
    if (!view)
        return journal;
    view->eachTable("reading", Need::Optional, readingForm, [&](TableView inner) {
        journal.readings.push_back(rowReading(std::move(inner), reading));
    });
    view->eachTable("laid", Need::Optional, laidForm, [&](TableView inner) {
        journal.laid.push_back(laidStrip(std::move(inner)));
    });
    view->reportUnknown();
    return journal;
}

} // namespace sheerlay::core
