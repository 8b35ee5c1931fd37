#include "core/planking/accent_rows.hpp"

#include "core/hull/trimmed_surface.hpp"
#include "core/units/both_units.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace sheerlay::core {
namespace {

double startGirth(const StartLine& start) noexcept {
    return start.kind == StartLine::Kind::Sheer ? start.shift : start.girth;
}

/// Height of the strip's middle at the widest section; none where it does not pass there.
std::optional<double> heightAt(const Strip& strip, double x) {
    for (std::size_t i = 1; i < strip.middle.size(); ++i) {
        const Eigen::Vector3d &a = strip.middle[i - 1], &b = strip.middle[i];
        if ((a.x() - x) * (b.x() - x) <= 0 && a.x() != b.x())
            return a.z() + (x - a.x()) / (b.x() - a.x()) * (b.z() - a.z());
    }
    return std::nullopt;
}

/// "the accent row", or where there are more of them the one asked for at its place.
std::string accentName(const Project& project, const Accent& accent) {
    if (project.planking.accents.size() < 2)
        return say("the accent row");
    return accent.by == Accent::By::Girth
               ? say("the accent row asked for {} below the sheer", bothUnits(accent.at))
               : say("the accent row asked for at a height of {}", bothUnits(accent.at));
}

} // namespace

Expected<double, std::string> accentGirth(const LoftedHull& hull, const Accent& accent) {
    const TrimmedSurface& laid = hull.laid;
    const double x = laid.halfGirthMaxX;
    if (accent.by == Accent::By::Girth) {
        if (accent.at < laid.halfGirthMax)
            return accent.at;
        return unexpected(say("the accent row is asked for {} below the sheer, but the widest section has "
                              "only {} of girth down to the keel",
                              bothUnits(accent.at),
                              bothUnits(laid.halfGirthMax)));
    }
    const auto height = [&](double girth) {
        const Eigen::Vector2d uv = parametersAtGirth(laid, x, girth);
        return laid.surface.point(uv.x(), uv.y()).z();
    };
    double above = 0.0, below = laid.halfGirthMax;
    const double top = height(above), bottom = height(below);
    if (accent.at > top || accent.at < bottom)
        return unexpected(
            say("the accent row is asked for at a height of {}, but the widest section reaches from {} to {}",
                bothUnits(accent.at),
                bothUnits(bottom),
                bothUnits(top)));
    while (below - above > 0.01) { // heights fall from sheer to keel
        const double middle = (above + below) / 2;
        (height(middle) > accent.at ? above : below) = middle;
    }
    return (above + below) / 2;
}

int accentRow(const StartLine& start, double girth, double coverWidth) noexcept {
    const int k = static_cast<int>(std::floor((girth - startGirth(start)) / coverWidth));
    return k >= 0 ? k + 1 : k;
}

StartLine aimAtAccent(const Project& project, const LoftedHull& hull, const StartLine& start) {
    if (project.planking.accents.empty() || start.kind == StartLine::Kind::Sheer)
        return start;
    const auto girth = accentGirth(hull, project.planking.accents.front());
    if (!girth)
        return start;
    const double w = project.strips.coverWidth;
    const double k = std::floor((*girth - start.girth) / w);
    StartLine moved = start;
    moved.girth = *girth - (k + 0.5) * w;
    return moved.girth > 0 ? moved : start;
}

std::vector<int> accentRows(const Project& project,
                            const LoftedHull& hull,
                            const StartLine& start,
                            std::vector<Finding>& findings) {
    std::vector<int> rows;
    for (const Accent& accent : project.planking.accents) {
        if (const auto girth = accentGirth(hull, accent))
            rows.push_back(accentRow(start, *girth, project.strips.coverWidth));
        else
            findings.push_back({Level::Caution,
                                "accent-off-hull",
                                std::nullopt,
                                std::nullopt,
                                say("There is no accent row: {}.", girth.error())});
    }
    return rows;
}

std::vector<std::size_t> onSide(const std::vector<int>& rows, bool towardKeel) {
    std::vector<std::size_t> places;
    for (const int row : rows)
        if ((row > 0) == towardKeel)
            places.push_back(static_cast<std::size_t>(std::abs(row) - 1));
    return places;
}

void markAccents(const Project& project, const LoftedHull& hull, Plan& plan) {
    std::vector<const Accent*> onHull; // in the order of accentRows()
    for (const Accent& accent : project.planking.accents)
        if (accentGirth(hull, accent))
            onHull.push_back(&accent);
    for (std::size_t k = 0; k < std::min(plan.accentRows.size(), onHull.size()); ++k) {
        const int row = plan.accentRows[k];
        const std::string accent = accentName(project, *onHull[k]);
        std::vector<const Strip*> pieces; // of one side
        for (Strip& s : plan.strips)
            if (s.row == row) {
                s.accent = true;
                if (s.side != Side::Port)
                    pieces.push_back(&s);
            }
        if (pieces.empty()) {
            plan.findings.push_back({Level::Caution,
                                     "accent-off-hull",
                                     std::nullopt,
                                     std::nullopt,
                                     say("Row {} would be {}, but it is not on the hull, so there is none. "
                                         "Move it away from the keel or the sheer.",
                                         row,
                                         accent)});
            continue;
        }
        const Strip& first = *pieces.front();
        if (pieces.size() > 1 || first.kind == StripKind::Filler || first.kind == StripKind::Shutter) {
            plan.findings.push_back(
                {Level::Caution,
                 "accent-broken",
                 first.id,
                 first.ends[0].x,
                 say(row < 0 ? sayable("Row {} would be {}, but {}; an accent wants one strip from end to "
                                       "end, so ask for it further down.")
                             : sayable("Row {} would be {}, but {}; an accent wants one strip from end to "
                                       "end, so ask for it further up."),
                     row,
                     accent,
                     first.kind == StripKind::Shutter ? say("it is the last plank")
                     : row < 0                        ? say("the sheer cuts it short")
                                                      : say("it is laid in several pieces"))});
            continue;
        }
        const auto height = heightAt(first, hull.laid.halfGirthMaxX);
        plan.findings.push_back(
            {Level::Note,
             "accent-row",
             first.id,
             hull.laid.halfGirthMaxX,
             height ? say("Row {} is {}, one strip from end to end and never tapered; its middle stands {} "
                          "above the base line at the widest section.",
                          row,
                          accent,
                          bothUnits(*height))
                    : say("Row {} is {}, one strip from end to end and never tapered.", row, accent)});
    }
}

} // namespace sheerlay::core
