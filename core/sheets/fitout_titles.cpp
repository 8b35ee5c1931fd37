#include "core/sheets/fitout_titles.hpp"

#include "core/sheets/words.hpp"
#include "core/words/heard.hpp"
#include "core/words/language.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <string_view>
#include <vector>

namespace sheerlay::core {

namespace fitoutTitles {

std::string sheer(const Project& project) {
    return say("{}, sheer and fairing", project.name);
}

std::string gunwales(const Project& project) {
    return say("{}, gunwales", project.name);
}

std::string bulkhead(const Project& project, End end) {
    return say("{}, {} bulkhead", project.name, toText(end));
}

std::string deck(const Project& project, End end) {
    return say("{}, {} deck", project.name, toText(end));
}

std::string seat(const Project& project, const std::string& name) {
    return project.name + ", " + heard(name);
}

std::string bars(const Project& project) {
    return say("{}, thwarts and yoke", project.name);
}

std::string covering(const Project& project) {
    return say("{}, cloth and resin", project.name);
}

std::string afloat(const Project& project, const AfterPlanking& after) {
    return after.afloat ? say("{}, how she floats", project.name) : say("{}, what she weighs", project.name);
}

} // namespace fitoutTitles

namespace {

bool holds(const std::vector<Finding>& findings, const Finding& finding) {
    return std::ranges::any_of(findings, [&](const Finding& f) {
        return f.code == finding.code && f.x == finding.x && f.text == finding.text;
    });
}

bool startsWith(const Finding& finding, std::string_view word) {
    return finding.code.starts_with(word);
}

/// The part that stands where the finding is; none where it could not be drawn.
template <class Part>
const Part* partAt(const std::vector<Part>& parts, const Finding& finding, double Part::*place) {
    for (const Part& part : parts)
        if (finding.x && std::abs(part.*place - *finding.x) < 1.0)
            return &part;
    return nullptr;
}

/// Where a text names a part; npos where it does not.
std::size_t nameAt(const std::string& text, const std::string& name) {
    for (const std::string article : {"The ", "the "})
        if (const std::size_t at = text.find(article + name); at != std::string::npos) {
            const std::size_t after = at + article.size() + name.size();
            if (after == text.size() || std::isalnum(static_cast<unsigned char>(text[after])) == 0)
                return at;
        }
    return std::string::npos;
}

std::string titleInFitout(const Project& project, const Fitout& fitout, const Finding& finding) {
    if (fitout.gunwales && (startsWith(finding, "gunwale-") || startsWith(finding, "scuppers-") ||
                            finding.code == "screw-length"))
        return fitoutTitles::gunwales(project);
    if (startsWith(finding, "bulkhead-"))
        if (const Bulkhead* part = partAt(fitout.bulkheads, finding, &Bulkhead::x))
            return fitoutTitles::bulkhead(project, part->choice.end);
    if (startsWith(finding, "deck-"))
        if (const Deck* part = partAt(fitout.decks, finding, &Deck::innerX))
            return fitoutTitles::deck(project, part->choice.end);
    // the others name the seat, thwart or yoke; the first named is the one that the finding is about
    std::string title = fitoutTitles::sheer(project);
    std::size_t first = std::string::npos, longest = 0;
    const auto named = [&](const std::string& name, const std::string& itsTitle) {
        const std::size_t at = nameAt(finding.text, name);
        if (at == std::string::npos || at > first || (at == first && name.size() < longest))
            return;
        first = at;
        longest = name.size();
        title = itsTitle;
    };
    for (const Seat& seat : fitout.seats)
        named(seat.choice.name, fitoutTitles::seat(project, seat.choice.name));
    for (const Thwart& thwart : fitout.thwarts)
        named(thwart.name, fitoutTitles::bars(project));
    if (fitout.yoke)
        named(fitout.yoke->name, fitoutTitles::bars(project));
    return title;
}

} // namespace

std::string titleFor(const Project& project, const AfterPlanking& after, const Finding& finding) {
    const Speaking speaking(project.language);
    if (after.covering && holds(after.covering->findings, finding))
        return fitoutTitles::covering(project);
    if ((after.weights && holds(after.weights->findings, finding)) ||
        (after.afloat && holds(after.afloat->findings, finding)))
        return fitoutTitles::afloat(project, after);
    return after.fitout ? titleInFitout(project, *after.fitout, finding) : fitoutTitles::sheer(project);
}

} // namespace sheerlay::core
