#include "core/project/put_aside.hpp"

#include "core/units/both_units.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>
#include <string_view>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr double mostChange = 0.05; // of a figure in the text; a twentieth
constexpr std::string_view digits = "0123456789";
constexpr auto none = std::numeric_limits<std::size_t>::max();

/// Takes what stands before the next figure off a text.
std::string_view takeWords(std::string_view& text) {
    const std::string_view words = text.substr(0, text.find_first_of(digits));
    text.remove_prefix(words.size());
    return words;
}

/// Takes the figure off that a text begins with; 0 where it begins with none.
double takeFigure(std::string_view& text) {
    double figure = 0.0;
    const auto read =
        std::from_chars(text.data(), text.data() + text.size(), figure, std::chars_format::fixed);
    text.remove_prefix(static_cast<std::size_t>(read.ptr - text.data()));
    return figure;
}

/// Same words, figures alike to a twentieth.
bool saysTheSame(std::string_view a, std::string_view b) {
    while (!a.empty() && !b.empty()) {
        if (takeWords(a) != takeWords(b))
            return false;
        const double one = takeFigure(a);
        const double other = takeFigure(b);
        if (std::abs(one - other) > mostChange * std::max(one, other))
            return false;
    }
    return a.empty() && b.empty();
}

/// Typed off a sheet in feet and inches, a sentence names them first; as it is kept, millimetres.
std::string inOneOrder(const std::string& text) {
    return unitsFirst(text, Units::Inches);
}

bool samePlace(const std::optional<double>& a, const std::optional<double>& b) {
    return a && b ? std::abs(*a - *b) <= asideReach : a.has_value() == b.has_value();
}

bool covers(const PutAside& aside, const Finding& finding) {
    return finding.level != Level::Stop && finding.level <= aside.level && finding.code == aside.code &&
           finding.strip == aside.strip && samePlace(finding.x, aside.x) &&
           (aside.text.empty() || saysTheSame(inOneOrder(finding.text), inOneOrder(aside.text)));
}

/// For each finding the entry that covers it, or none. Findings that say what they said go first.
std::vector<std::size_t> coverOf(const std::vector<Finding>& findings, const std::vector<PutAside>& asides) {
    std::vector<std::size_t> cover(findings.size(), none);
    std::vector<bool> used(asides.size(), false);
    for (const bool toTheLetter : {true, false})
        for (std::size_t a = 0; a < asides.size(); ++a)
            for (std::size_t f = 0; f < findings.size() && !used[a]; ++f) {
                if (cover[f] != none || !covers(asides[a], findings[f]) ||
                    (toTheLetter && findings[f].text != asides[a].text))
                    continue;
                cover[f] = a;
                used[a] = true;
            }
    return cover;
}

std::string unmetText(const PutAside& aside) {
    return "Nothing is found any more of what was put aside as " + aside.code +
           (aside.strip ? " on " + *aside.strip : "") + " (" + aside.note.reason +
           "): it is mended, or says something else now and is open again; take the entry out.";
}

} // namespace

std::vector<Finding> withAsides(std::vector<Finding> findings, const std::vector<PutAside>& asides) {
    const std::vector<std::size_t> cover = coverOf(findings, asides);
    for (std::size_t f = 0; f < findings.size(); ++f) {
        findings[f].aside.reset();
        if (cover[f] != none)
            findings[f].aside = asides[cover[f]].note;
    }
    return findings;
}

std::vector<PutAside> unmetAsides(const std::vector<Finding>& findings, const std::vector<PutAside>& asides) {
    const std::vector<std::size_t> cover = coverOf(findings, asides);
    std::vector<PutAside> unmet;
    for (std::size_t a = 0; a < asides.size(); ++a)
        if (std::ranges::find(cover, a) == cover.end())
            unmet.push_back(asides[a]);
    return unmet;
}

std::vector<Finding> toldWithAsides(std::vector<Finding> findings, const std::vector<PutAside>& asides) {
    std::vector<Finding> told = withAsides(std::move(findings), asides);
    for (const PutAside& aside : unmetAsides(told, asides))
        told.push_back({Level::Note, "put-aside-unmet", aside.strip, aside.x, unmetText(aside)});
    return told;
}

Expected<std::vector<PutAside>, std::string>
putAside(std::vector<PutAside> asides, const Finding& finding, AsideNote note) {
    if (finding.level == Level::Stop)
        return unexpected(std::string("She can't be built as planned with this, so it can't be put aside; "
                                      "change what it names."));
    if (note.reason.find_first_not_of(" \t\n") == std::string::npos)
        return unexpected(std::string("A reason is needed, so that you know later why it may rest."));
    asides.push_back({finding.level, finding.code, finding.strip, finding.x, finding.text, std::move(note)});
    return asides;
}

std::vector<PutAside>
takeBack(std::vector<PutAside> asides, const std::vector<Finding>& findings, const Finding& finding) {
    const std::vector<std::size_t> cover = coverOf(findings, asides);
    for (std::size_t f = 0; f < findings.size(); ++f) {
        Finding bare = findings[f];
        bare.aside = finding.aside;
        if (cover[f] == none || !(bare == finding))
            continue;
        asides.erase(asides.begin() + static_cast<std::ptrdiff_t>(cover[f]));
        break;
    }
    return asides;
}

} // namespace sheerlay::core
