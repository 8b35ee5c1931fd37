#include "core/fitout/seats.hpp"

#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>

namespace sheerlay::core {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double wideGap = 0.5;      // mm between an end and the hull that is worth a word; judged
constexpr double boltEdge = 12.0;    // mm of rail beyond the bolt's middle; common practice, no source
constexpr double sideClear = 40.0;   // mm between a side rail and the hull; common practice, no source
constexpr double widestSeat = 430.0; // mm, opening that is wanted at most; common practice, no source

Finding finding(Level level, const char* code, double x, std::string text) {
    return {level, code, std::nullopt, x, std::move(text)};
}

/// The inner gunwale's underside at x, `inset` from its inner edge: (y, z).
struct Underside {
    Vector2d at = Vector2d::Zero();
    double along = 0.0; // mm of sheer
    double slope = 0.0; // rad
};
Underside undersideAt(const InnerGunwale& gunwale, double x, double inset) {
    const double in = gunwale.size.width - inset;
    // the point sought is off the sheer's own x where the run is not square to the plane
    double at = x;
    Vector3d p = Vector3d::Zero();
    SheerPoint sheer;
    for (int i = 0; i < 10; ++i) {
        sheer = sheerPointAt(gunwale.line, at);
        p = sheer.point - in * sheer.out - gunwale.size.height * sheer.up;
        at += x - p.x();
    }
    return {{p.y(), p.z()}, sheer.s, std::asin(sheer.along.z())};
}

/// A bolt through the middle of a cross piece's width.
GunwaleBolt boltThrough(const InnerGunwale& gunwale, const CrossPiece& piece, double inset) {
    GunwaleBolt bolt;
    const double a = 0.5 * piece.width;
    const Vector2d top = piece.at(a, 0.0);
    const Underside under = undersideAt(gunwale, top.x(), inset);
    bolt.x = top.x();
    bolt.inset = inset;
    bolt.halfBreadth = under.at.x();
    bolt.alongSheer = under.along;
    bolt.hangerSlope = under.slope;
    bolt.hanger = under.at.y() - top.y();
    bolt.fromEnd = piece.halfAt(a, 0.0) - bolt.halfBreadth;
    return bolt;
}

void checkBolt(const std::string& name, const BoltedPiece& rail, std::vector<Finding>& findings) {
    if (!rail.bolt)
        return;
    const GunwaleBolt& bolt = *rail.bolt;
    if (bolt.hanger < 0.0)
        findings.push_back(finding(Level::Stop,
                                   "seat-above-gunwale",
                                   bolt.x,
                                   say("The {} stands {} into the inner gunwale; a lower place would do.",
                                       name,
                                       bothUnitsFine(-bolt.hanger))));
    if (bolt.fromEnd < boltEdge)
        findings.push_back(finding(Level::Caution,
                                   "bolt-near-end",
                                   bolt.x,
                                   say("The bolt of the {} comes within {} of its end; a larger bolt-inset, "
                                       "a narrower gunwale or cleats would do.",
                                       name,
                                       bothUnits(std::max(0.0, bolt.fromEnd)))));
}

void checkGap(const std::string& name, const CrossPiece& piece, std::vector<Finding>& findings) {
    if (piece.gap > wideGap)
        findings.push_back(finding(Level::Note,
                                   "end-gap",
                                   piece.front.x(),
                                   say("A flat cut leaves up to {} under the ends of the {}; scribe them to "
                                       "the hull, or fill with thickened glue.",
                                       bothUnitsFine(piece.gap),
                                       name)));
}

} // namespace

SeatPlan planSeat(const SeatChoice& choice,
                  const HullFaces& faces,
                  double xShift,
                  const std::optional<InnerGunwale>& gunwale) {
    SeatPlan plan;
    Seat seat;
    seat.choice = choice;
    seat.x = choice.x + xShift;
    const auto sheer = sheerAt(faces.inside, seat.x);
    const auto bottom = bottomAt(faces.inside, seat.x);
    if (!sheer || !bottom) {
        plan.findings.push_back(finding(
            Level::Stop,
            "seat-outside",
            seat.x,
            say("The {} lies beyond the hull's ends; an x between bow and stern would do.", choice.name)));
        return plan;
    }
    seat.top = choice.aboveBottom ? *bottom + *choice.aboveBottom
                                  : sheer->point.z() - choice.belowSheer.value_or(0.0);
    seat.aboveBottom = seat.top - *bottom;
    seat.belowSheer = sheer->point.z() - seat.top;

    const double cosine = std::cos(choice.tilt), sine = std::sin(choice.tilt);
    const auto alongTop = [&](double a) { return Vector2d(seat.x + a * cosine, seat.top + a * sine); };
    const auto railAt = [&](double a) {
        return fitAcross(faces.inside, {alongTop(a), choice.tilt, choice.rail.width, choice.rail.height});
    };
    auto front = railAt(-choice.depth / 2);
    auto back = railAt(choice.depth / 2 - choice.rail.width);
    if (!front || !back) {
        plan.findings.push_back(finding(
            Level::Stop,
            "seat-outside",
            seat.x,
            say("The {} does not lie inside the hull with both rails; another height or place would do.",
                choice.name)));
        return plan;
    }
    seat.front.piece = *front;
    seat.back.piece = *back;
    const auto widthAt = [&](double a) {
        const Vector2d at = alongTop(a);
        const auto p = acrossAt(faces.inside, at.x(), at.y());
        return p ? 2 * p->point.y() : 0.0;
    };
    seat.widthFront = widthAt(-choice.depth / 2);
    seat.widthBack = widthAt(choice.depth / 2);

    const auto room = [&](const CrossPiece& rail) {
        double least = 1e300;
        for (const double a : {0.0, rail.width}) {
            const Vector2d under = rail.at(a, -rail.height);
            least = std::min(least, under.y() - bottomAt(faces.inside, under.x()).value_or(under.y()));
        }
        return least;
    };
    seat.footRoom = std::min(room(*front), room(*back));
    const double narrowest = std::min({front->frontTop, front->backTop, back->frontTop, back->backTop});
    seat.opening =
        choice.opening.value_or(std::min(widestSeat, narrowest - 2 * (choice.rail.width + sideClear)));
    seat.sideRail = choice.depth - 2 * choice.rail.width;
    if (seat.opening + 2 * choice.rail.width > narrowest)
        plan.findings.push_back(finding(
            Level::Caution,
            "seat-opening",
            seat.x,
            say("The hull leaves no room beside the side rails of the {}; a smaller opening would do.",
                choice.name)));
    if (choice.caning && seat.opening > 0.0)
        seat.caning = planCaning(*choice.caning, seat.opening, seat.sideRail);

    if (choice.on == SeatChoice::On::Hangers && gunwale) {
        const double inset = choice.boltInset.value_or(gunwale->size.width / 2);
        seat.front.bolt = boltThrough(*gunwale, *front, inset);
        seat.back.bolt = boltThrough(*gunwale, *back, inset);
        checkBolt(say("front rail of the {}", choice.name), seat.front, plan.findings);
        checkBolt(say("back rail of the {}", choice.name), seat.back, plan.findings);
    } else if (choice.on == SeatChoice::On::Hangers) {
        plan.findings.push_back(finding(Level::Caution,
                                        "seat-hangs-from-nothing",
                                        seat.x,
                                        say("The {} hangs from gunwales that the file does not describe; a "
                                            "table [fitout.gunwales], or on = \"cleats\", would do.",
                                            choice.name)));
    }
    if (choice.on == SeatChoice::On::Cleats) {
        const Vector2d f = front->at(0.0, -front->height), b = back->at(back->width, -back->height);
        seat.cleatFront = girthDownTo(faces.inside, f.x(), f.y());
        seat.cleatBack = girthDownTo(faces.inside, b.x(), b.y());
        const auto pf = acrossAt(faces.inside, f.x(), f.y()), pb = acrossAt(faces.inside, b.x(), b.y());
        seat.cleatLength = pf && pb ? (pb->point - pf->point).norm() : choice.depth;
    }
    checkGap(say("front rail of the {}", choice.name), *front, plan.findings);
    checkGap(say("back rail of the {}", choice.name), *back, plan.findings);
    if (seat.footRoom < choice.footRoom)
        plan.findings.push_back(
            finding(Level::Note,
                    "foot-room",
                    seat.x,
                    say("Under the {} there are {}, less than the {} wanted for a kneeling paddler's feet to "
                        "come free; a higher seat would do, at the price of steadiness.",
                        choice.name,
                        bothUnits(seat.footRoom),
                        bothUnits(choice.footRoom))));
    plan.seat = std::move(seat);
    return plan;
}

ThwartPlan
planThwart(const ThwartChoice& choice, double x, const HullFaces& faces, const InnerGunwale& gunwale) {
    ThwartPlan plan;
    const double half = choice.size.width / 2;
    if (!sheerAt(faces.inside, x - half) || !sheerAt(faces.inside, x + half)) {
        plan.findings.push_back(finding(
            Level::Stop,
            "thwart-outside",
            x,
            say("The {} lies beyond the hull's ends; an x between bow and stern would do.", choice.name)));
        return plan;
    }
    // under the gunwale it follows its slope, so that it lies flat against it
    const double inset = choice.boltInset.value_or(gunwale.size.width / 2);
    const Underside middle = undersideAt(gunwale, x, inset);
    const double tilt = middle.slope;
    const Vector2d front(x - half * std::cos(tilt), middle.at.y() - half * std::sin(tilt));
    auto piece = fitAcross(faces.inside, {front, tilt, choice.size.width, choice.size.height});
    if (!piece) {
        plan.findings.push_back(
            finding(Level::Stop,
                    "thwart-outside",
                    x,
                    say("The {} does not lie inside the hull; another place would do.", choice.name)));
        return plan;
    }
    Thwart thwart;
    thwart.name = choice.name;
    thwart.x = x;
    thwart.bar.piece = *piece;
    thwart.bar.bolt = boltThrough(gunwale, *piece, inset);
    thwart.bar.bolt->hanger = 0.0; // it lies against the underside
    thwart.kneeRoom = middle.at.y() - choice.size.height - bottomAt(faces.inside, x).value_or(middle.at.y());
    checkBolt(choice.name, thwart.bar, plan.findings);
    if (thwart.kneeRoom < choice.kneeRoom)
        plan.findings.push_back(
            finding(Level::Note,
                    "knee-room",
                    x,
                    say("Under the {} there are {}, less than the {} wanted for knees and feet to pass; a "
                        "flatter bar, or a place where she is deeper, would do.",
                        choice.name,
                        bothUnits(thwart.kneeRoom),
                        bothUnits(choice.kneeRoom))));
    checkGap(choice.name, *piece, plan.findings);
    plan.thwart = std::move(thwart);
    return plan;
}

} // namespace sheerlay::core
