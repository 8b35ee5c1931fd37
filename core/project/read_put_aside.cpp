#include "core/project/read_put_aside.hpp"

#include <utility>

namespace sheerlay::core {

namespace {

constexpr std::string_view asideForm =
    "[[put-aside]] with code, level and reason, and strip, from-bow, text and date of the finding";

PutAside putAsideEntry(TableView view, Messages& messages) {
    PutAside aside;
    aside.line = view.line();
    aside.code = view.text("code", Need::Required, "a finding's code, such as \"thin-filler\"").value_or("");
    aside.level =
        view.choice<Level>("level", Need::Required, {{"note", Level::Note}, {"caution", Level::Caution}})
            .value_or(Level::Note);
    aside.strip = view.text("strip", Need::Optional, "the name of a strip, such as \"S07\"");
    if (const auto x = view.length("from-bow", Need::Optional, Sign::Any))
        aside.x = x->value;
    aside.text = view.text("text", Need::Optional, "what the finding said").value_or("");
    constexpr std::string_view reasonForm = "why it may rest, in quotes";
    if (const auto reason = view.text("reason", Need::Required, reasonForm)) {
        aside.note.reason = *reason;
        if (reason->find_first_not_of(" \t\n") == std::string::npos)
            messages.error(
                view.lineOfKey("reason"), view.keyOf("reason"), "an empty text", std::string(reasonForm));
    }
    aside.note.date = view.text("date", Need::Optional, "a date in quotes").value_or("");
    view.reportUnknown();
    return aside;
}

} // namespace

std::vector<PutAside> readPutAside(TableView& file, Reading& reading) {
    std::vector<PutAside> asides;
    file.eachTable("put-aside", Need::Optional, asideForm, [&](TableView inner) {
        asides.push_back(putAsideEntry(std::move(inner), reading.messages));
    });
    return asides;
}

} // namespace sheerlay::core
