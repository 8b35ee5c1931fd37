#include "core/sheets/strip_notes.hpp"

#include "core/planking/strip_ends.hpp"
#include "core/units/both_units.hpp"
#include "core/units/rounded_text.hpp"
#include "core/words/heard.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::core {

namespace {

constexpr double leastEdgeBend = 0.01e-3; // 1/mm: what the plan can tell from straight

Note edgeBendNote(const Strip& strip, const Places& places, Units units) {
    Note note;
    note.difficulty = difficultyOf(strip);
    note.heading = say("Edge bend: {}", say(toText(*note.difficulty)));
    const EdgeBend& bend = strip.edgeBend;
    if (bend.maxAbs < leastEdgeBend) {
        note.paragraphs.emplace_back(say("Straight, as far as the plan can tell."));
    } else {
        const bool towardKeel = bend.signedMax >= -bend.signedMin;
        const std::string sag = sagText(bend.maxAbs, units), place = places.at(bend.atX),
                          radius = radiusText(1.0 / bend.maxAbs, units);
        std::string text =
            towardKeel
                ? say("At its hardest about {}, toward the keel, {} (radius about {}).", sag, place, radius)
                : say("At its hardest about {}, toward the sheer, {} (radius about {}).", sag, place, radius);
        const double other = towardKeel ? -bend.signedMin : bend.signedMax;
        if (other > bendLimits(strip.milledWidth).free / 2)
            text += " " + say("Elsewhere it bends the other way, about {}.", sagText(other, units));
        if (bend.force >= 1.0)
            text += " " + say("It takes about {} a mould bay to hold.", forceText(bend.force, units));
        note.paragraphs.push_back(text);
    }
    note.paragraphs.push_back(say(holdingAdvice(*note.difficulty)));
    return note;
}

Note shapeNote(const Strip& strip, const Places& places, Units units) {
    Note note;
    note.heading = say("Twist, and bend over the moulds");
    constexpr double leastTwist = std::numbers::pi / 180.0 / 304.8; // rad/mm, a degree in a foot
    std::string text = say("Hardly twists.");
    if (strip.twistMax >= leastTwist)
        text = say("Twists at most {}, {}.", twistText(strip.twistMax, units), places.at(strip.twistAtX));
    constexpr double nearlyFlat = 30000.0; // mm
    if (strip.bendMinRadius && *strip.bendMinRadius < nearlyFlat)
        text += " " + say("Bends to a radius of about {}, {}.",
                          radiusText(*strip.bendMinRadius, units),
                          places.at(strip.bendAtX));
    else
        text += " " + say("Lies nearly flat over the moulds.");
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
    note.heading = say("Wood");
    note.paragraphs.push_back(say("Bend and twist take about {} percent of what the wood allows, {}.",
                                  percent,
                                  places.at(strip.strainAtX)) +
                              " " +
                              (percent > all ? say("Bend it hot there, and choose straight grain.")
                                             : say("Choose straight grain without knots.")));
    return note;
}

/// Where along a strip, from its bow end, a place of the boat lies, mm.
double alongTo(const Strip& strip, double x) {
    for (const StripSample& sample : strip.samples)
        if (sample.x >= x)
            return sample.s;
    return strip.length;
}

std::string joinedByAnd(const std::vector<std::string>& names) {
    std::string list = names.front();
    for (std::size_t i = 1; i < names.size(); ++i)
        list = say("{} and {}", list, names[i]);
    return list;
}

/// The joint of a stealer and the strip it is let in to, on the sheet of either.
std::optional<Note> stealerNote(const Piece& piece, const Plan& plan, Units units) {
    const Strip& strip = *piece.strip;
    Note note;
    std::vector<std::string> places;
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
                            : say("{} (on port {})", s.id, piece.mirror->id.substr(0, 1) + s.id.substr(1)));
        for (const StripEnd& end : stealer.ends)
            if (end.on == EndsOn::Nib) {
                places.push_back(placeText(alongTo(strip, end.x), units));
                depth = (end.end == End::Bow ? stealer.samples.front() : stealer.samples.back()).width;
                ++notches;
            }
    }
    if (names.empty())
        return std::nullopt;
    if (strip.kind == StripKind::Stealer) {
        note.heading = say("Stealer");
        const std::string wide = widthText(depth, units);
        note.paragraphs.push_back(
            notches == 1
                ? say("Let in to strip {}, which is laid after it. Its nib is cut square, about {} wide; its "
                      "edge away from that strip is left as milled.",
                      names.front(),
                      wide)
                : say("Let in to strip {}, which is laid after it. Its nibs are cut square, about {} wide; "
                      "its edge away from that strip is left as milled.",
                      names.front(),
                      wide));
        return note;
    }
    if (notches == 0)
        return std::nullopt;
    note.heading = notches == 1 ? say("Notch") : say("Notches");
    const std::string list = joinedByAnd(names), deep = widthText(depth, units);
    note.paragraphs.push_back(
        notches == 1
            ? say("Stealer {} is let in to this strip: a notch about {} deep in the edge against it, {} "
                  "along "
                  "its middle from the bow end. Cut it after a dry fit, to the stealer's real end.",
                  list,
                  deep,
                  places.front())
            : say("Stealer {} is let in to this strip: notches about {} deep in the edge against it, {} "
                  "along "
                  "its middle from the bow end. Cut them after a dry fit, to the stealer's real ends.",
                  list,
                  deep,
                  joinedByAnd(places)));
    return note;
}

std::string withLevel(const Finding& finding, Units units) {
    const std::string text = unitsFirst(heard(finding.text), units);
    switch (finding.level) {
    case Level::Stop:
        return say("Stop: {}", text);
    case Level::Caution:
        return say("Caution: {}", text);
    case Level::Note:
        break;
    }
    return say("Note: {}", text);
}

std::string withReason(const std::string& text, const Finding& finding) {
    return finding.aside ? text + " " + say("Put aside: {}.", finding.aside->reason) : text;
}

} // namespace

std::string toSentence(const Finding& finding, Units units) {
    return withReason(withLevel(finding, units), finding);
}

std::string toldPlainly(const Finding& finding, Units units) {
    return withReason(unitsFirst(heard(finding.text), units), finding);
}

std::string cutSentence(const Piece& piece, Units units) {
    std::string words = say("to cut, {} at each end to trim; about {} of it stays on the boat.",
                            placeText(trimAllowance, units),
                            placeText(piece.strip->length, units));
    if (piece.mirror == nullptr)
        return words;
    constexpr double worthTelling = 5.0; // mm
    const bool longer = piece.strip->cutLength > piece.mirror->cutLength;
    const Strip& shorter = longer ? *piece.mirror : *piece.strip;
    if (std::abs(piece.strip->cutLength - piece.mirror->cutLength) > worthTelling)
        words += " " + say("{} needs only {}.", shorter.id, cutLengthText(shorter.cutLength, units));
    return words;
}

std::string neighbourSentence(const Piece& piece, const Plan& plan) {
    const auto beside = [&](int step, const std::string& edge) {
        const std::string names = namesInRow(plan, nextRow(piece.row(), step), piece);
        return names.empty() ? edge : names;
    };
    if (piece.strip->side == Side::Centre)
        return say("Between {}.", beside(-1, say("the sheer|between it")));
    // "above" would be the keel side while the boat lies on the moulds
    return say("Next to it: toward the sheer {}, toward the keel {}.",
               beside(-1, say("its edge")),
               beside(1, say("the centreline|beside it")));
}

std::vector<Note> notesOn(const Piece& piece, const Plan& plan, const Places& places, Units units) {
    const Strip& strip = *piece.strip;
    std::vector<Note> notes{edgeBendNote(strip, places, units)};

    Note watch;
    watch.heading = say("Watch");
    for (const Finding& finding : plan.findings) {
        const bool ofStrip = finding.strip && *finding.strip == strip.id;
        const bool ofMirror = finding.strip && piece.mirror != nullptr && *finding.strip == piece.mirror->id;
        if (!ofStrip && !ofMirror)
            continue;
        const std::string sentence = toSentence(finding, units);
        const bool told =
            std::find(watch.paragraphs.begin(), watch.paragraphs.end(), sentence) != watch.paragraphs.end();
        if (!told)
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
    std::vector<std::string> cautions{say("Ripping and routing thin strips: splitter and feather-boards in "
                                          "place, push blocks, feed against the cutter.")};
    if (project.strips.wood.find("redcedar") != std::string::npos)
        cautions.push_back(say("Redcedar dust can bring on asthma for good: draw it off at the tool and wear "
                               "a fitted dust mask."));
    else
        cautions.push_back(
            say("Wood dust harms the lungs: draw it off at the tool and wear a fitted dust mask."));
    return cautions;
}

} // namespace sheerlay::core
