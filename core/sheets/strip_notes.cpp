#include "core/sheets/strip_notes.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::core {

namespace {

constexpr double leastEdgeBend = 0.01e-3; // 1/mm: what the plan can tell from straight

Note edgeBendNote(const Strip& strip, const Places& places, Units units) {
    Note note;
    note.difficulty = difficultyOf(strip);
    note.heading = std::string("Edge bend: ") + toText(*note.difficulty);
    const EdgeBend& bend = strip.edgeBend;
    if (bend.maxAbs < leastEdgeBend) {
        note.paragraphs.emplace_back("Straight, as far as the plan can tell.");
    } else {
        const bool towardKeel = bend.signedMax >= -bend.signedMin;
        std::string text = "At its hardest about " + sagText(bend.maxAbs, units) + ", toward the " +
                           (towardKeel ? "keel" : "sheer") + ", " + places.at(bend.atX) + " (radius about " +
                           radiusText(1.0 / bend.maxAbs, units) + ").";
        const double other = towardKeel ? -bend.signedMin : bend.signedMax;
        if (other > bendLimits(strip.milledWidth).free / 2)
            text += " Elsewhere it bends the other way, about " + sagText(other, units) + ".";
        if (bend.force >= 1.0)
            text += " It takes about " + forceText(bend.force, units) + " a mould bay to hold.";
        note.paragraphs.push_back(text);
    }
    note.paragraphs.emplace_back(holdingAdvice(*note.difficulty));
    return note;
}

Note shapeNote(const Strip& strip, const Places& places, Units units) {
    Note note;
    note.heading = "Twist, and bend over the moulds";
    constexpr double leastTwist = std::numbers::pi / 180.0 / 304.8; // rad/mm, a degree in a foot
    std::string text = "Hardly twists.";
    if (strip.twistMax >= leastTwist)
        text = "Twists at most " + twistText(strip.twistMax, units) + ", " + places.at(strip.twistAtX) + ".";
    constexpr double nearlyFlat = 30000.0; // mm
    if (strip.bendMinRadius && *strip.bendMinRadius < nearlyFlat)
        text += " Bends to a radius of about " + radiusText(*strip.bendMinRadius, units) + ", " +
                places.at(strip.bendAtX) + ".";
    else
        text += " Lies nearly flat over the moulds.";
    note.paragraphs.push_back(text);
    return note;
}

// None while the wood has plenty in hand.
std::optional<Note> woodNote(const Strip& strip, const Places& places) {
    const int percent = static_cast<int>(std::lround(strip.strainMax * 20.0)) * 5;
    constexpr int worthAWord = 60, all = 100;
    if (percent < worthAWord)
        return std::nullopt;
    Note note;
    note.heading = "Wood";
    note.paragraphs.push_back("Bend and twist take about " + std::to_string(percent) +
                              " percent of what the wood allows, " + places.at(strip.strainAtX) + ". " +
                              (percent > all ? "Bend it hot there, and choose straight grain."
                                             : "Choose straight grain without knots."));
    return note;
}

/// Where along a strip, from its bow end, a place of the boat lies, mm.
double alongTo(const Strip& strip, double x) {
    for (const StripSample& sample : strip.samples)
        if (sample.x >= x)
            return sample.s;
    return strip.length;
}

/// The joint of a stealer and the strip it is let in to, on the sheet of either.
std::optional<Note> stealerNote(const Piece& piece, const Plan& plan, Units units) {
    const Strip& strip = *piece.strip;
    Note note;
    std::string places;
    double depth = 0;
    int notches = 0;
    std::vector<std::string> names;
    for (const Strip& s : plan.strips) {
        const bool one = strip.kind == StripKind::Stealer;
        const Strip& stealer = one ? strip : s;
        const Strip& beside = one ? s : strip;
        if (s.row != strip.row || s.side != strip.side || stealer.kind != StripKind::Stealer ||
            beside.kind == StripKind::Stealer || stealer.samples.empty() ||
            stealer.ends[0].x < beside.ends[0].x || stealer.ends[1].x > beside.ends[1].x)
            continue;
        names.push_back(piece.mirror == nullptr
                            ? s.id
                            : s.id + " (on port " + (piece.mirror->id.substr(0, 1) + s.id.substr(1)) + ")");
        for (const StripEnd& end : stealer.ends)
            if (end.on == EndsOn::Nib) {
                places += (places.empty() ? "" : " and ") + placeText(alongTo(strip, end.x), units);
                depth = (end.end == End::Bow ? stealer.samples.front() : stealer.samples.back()).width;
                ++notches;
            }
    }
    if (names.empty())
        return std::nullopt;
    if (strip.kind == StripKind::Stealer) {
        note.heading = "Stealer";
        note.paragraphs.push_back("Let in to strip " + names.front() + ", which is laid after it. Its " +
                                  (notches == 1 ? "nib is" : "nibs are") + " cut square, about " +
                                  widthText(depth, units) +
                                  " wide; its edge away from that strip is left as milled.");
        return note;
    }
    if (notches == 0)
        return std::nullopt;
    note.heading = notches == 1 ? "Notch" : "Notches";
    std::string list = names.front();
    for (std::size_t i = 1; i < names.size(); ++i)
        list += " and " + names[i];
    note.paragraphs.push_back(
        "Stealer " + list + " is let in to this strip: " + (notches == 1 ? "a notch" : "notches") +
        " about " + widthText(depth, units) + " deep in the edge against it, " + places +
        " along its middle from the bow end. Cut " + (notches == 1 ? "it" : "them") +
        " after a dry fit, to the stealer's real " + (notches == 1 ? "end." : "ends."));
    return note;
}

const char* levelWord(Level level) noexcept {
    switch (level) {
    case Level::Stop:
        return "Stop";
    case Level::Caution:
        return "Caution";
    case Level::Note:
        break;
    }
    return "Note";
}

} // namespace

std::string toSentence(const Finding& finding) {
    const std::string text = std::string(levelWord(finding.level)) + ": " + finding.text;
    return finding.aside ? text + " Put aside: " + finding.aside->reason + "." : text;
}

std::string neighbourSentence(const Piece& piece, const Plan& plan) {
    const auto beside = [&](int step, const char* edge) {
        const std::string names = namesInRow(plan, nextRow(piece.row(), step), piece);
        return names.empty() ? std::string(edge) : names;
    };
    if (piece.strip->side == Side::Centre)
        return "Between " + beside(-1, "the sheer") + ".";
    // "above" would be the keel side while the boat lies on the moulds
    return "Next to it: toward the sheer " + beside(-1, "its edge") + ", toward the keel " +
           beside(1, "the centreline") + ".";
}

std::vector<Note> notesOn(const Piece& piece, const Plan& plan, const Places& places, Units units) {
    const Strip& strip = *piece.strip;
    std::vector<Note> notes{edgeBendNote(strip, places, units)};

    Note watch;
    watch.heading = "Watch";
    for (const Finding& finding : plan.findings) {
        const bool ofStrip = finding.strip && *finding.strip == strip.id;
        const bool ofMirror = finding.strip && piece.mirror != nullptr && *finding.strip == piece.mirror->id;
        const std::string sentence = toSentence(finding);
        const bool told =
            std::find(watch.paragraphs.begin(), watch.paragraphs.end(), sentence) != watch.paragraphs.end();
        if ((ofStrip || ofMirror) && !told)
            watch.paragraphs.push_back(sentence);
    }
    if (!watch.paragraphs.empty())
        notes.push_back(watch);
    if (const std::optional<Note> stealer = stealerNote(piece, plan, units))
        notes.push_back(*stealer);
    notes.push_back(shapeNote(strip, places, units));
    if (const std::optional<Note> wood = woodNote(strip, places))
        notes.push_back(*wood);
    return notes;
}

std::vector<std::string> cautionsFor(const Project& project) {
    std::vector<std::string> cautions{"Ripping and routing thin strips: splitter and feather-boards in "
                                      "place, push blocks, feed against the cutter."};
    if (project.strips.wood.find("redcedar") != std::string::npos)
        cautions.emplace_back("Redcedar dust can bring on asthma for good: draw it off at the tool and wear "
                              "a fitted dust mask.");
    else
        cautions.emplace_back(
            "Wood dust harms the lungs: draw it off at the tool and wear a fitted dust mask.");
    return cautions;
}

} // namespace sheerlay::core
