#include "core/covering/covering.hpp"

#include "core/fitout/rings.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>

namespace sheerlay::core {

namespace {

constexpr double squareMm = 1e6; // in a square metre
constexpr double degree = std::numbers::pi / 180;

/// Pieces side by side that span `need` from rolls of one width.
int piecesAcross(double need, double roll, double overlap) {
    return need <= roll || roll <= overlap
               ? 1
               : static_cast<int>(std::ceil((need - overlap) / (roll - overlap) - 1e-9));
}

/// mm of roll for flat pieces laid side by side, the longest first, turned where they are wider than the
/// roll.
double alongRoll(std::vector<ClothPiece> pieces, double roll) {
    std::ranges::sort(pieces, std::greater{}, [](const ClothPiece& p) { return p.length; });
    double left = 0.0, sum = 0.0;
    for (const ClothPiece& p : pieces)
        for (int i = 0; i < p.count; ++i) {
            const bool turned = p.width > roll && p.length <= roll;
            const double wide = turned ? p.length : p.width, run = turned ? p.width : p.length;
            if (wide > left) {
                sum += run;
                left = roll;
            }
            left -= wide;
        }
    return sum;
}

class FacePlanner {
public:
    FacePlanner(const CoveringChoices& choices, std::vector<Finding>& findings)
        : m_choices(choices), m_findings(findings) {}

    FaceCovering over(const BulkheadCloth& cloth, const std::vector<Bulkhead>& bulkheads) {
        FaceCovering f;
        f.name = sayable("bulkheads");
        f.bulkheads = true;
        f.choices.cloth = cloth.cloth;
        f.choices.roll = cloth.roll;
        f.choices.overlap = cloth.lap;
        f.choices.overhang = 0.0;
        f.choices.coats = cloth.coats;
        const int faces = cloth.faces == BulkheadCloth::Faces::Both ? 2 : 1;
        double x = 0.0, z = 0.0;
        for (const Bulkhead& b : bulkheads) {
            const double area = faces * ringArea(b.outline), lap = faces * cloth.lap * b.edgeLength;
            double height = 0.0;
            for (const EdgePoint& p : b.edge)
                height += p.at.y() / static_cast<double>(b.edge.size());
            f.face.area += area;
            f.overlaps += lap;
            x += (area + lap) * b.x;
            z += (area + lap) * height;
            f.pieces.push_back({b.choice.end == End::Bow ? say("bow bulkhead") : say("stern bulkhead"),
                                faces,
                                b.width + 2 * cloth.lap,
                                b.height + cloth.lap});
        }
        f.face.centre = {x / f.covered(), 0.0, z / f.covered()};
        if (std::ranges::any_of(
                f.pieces, [&](const ClothPiece& p) { return std::min(p.width, p.length) > cloth.roll; }))
            tell(Level::Caution,
                 "cloth-too-narrow",
                 say("The roll is narrower than a bulkhead with its laps either way; a seam in the cloth, or "
                     "a wider roll, would do."));
        f.fromRoll = alongRoll(f.pieces, cloth.roll) * (1 + m_choices.clothSpare);
        coats(f);
        if (faces == 2) // nobody varnishes the void's side
            f.varnish /= 2;
        weigh(f);
        if (faces == 2)
            f.varnishMass /= 2;
        return f;
    }

    FaceCovering plan(const std::string& name, const ClothFace& cloth, const CoveredFace& face) {
        FaceCovering f;
        f.name = name;
        f.choices = cloth;
        f.face = face;
        layOut(f);
        slit(f);
        coats(f);
        weigh(f);
        return f;
    }

private:
    void tell(Level level, const char* code, std::string text) {
        m_findings.push_back({level, code, std::nullopt, std::nullopt, std::move(text)});
    }

    void layOut(FaceCovering& f) {
        const ClothFace& c = f.choices;
        const double length = f.face.length + 2 * c.overhang;
        const double whole = 2 * (f.face.halfGirth + c.overhang);
        const double side = f.face.halfGirth + c.overhang + c.overlap / 2;
        const bool drapes = whole <= c.roll;
        f.lay = c.lay == ClothLay::CentreOverlap || !drapes ? ClothLay::CentreOverlap : ClothLay::Drape;
        if (c.lay == ClothLay::Drape && !drapes)
            tell(Level::Caution,
                 "cloth-too-narrow",
                 say("The roll is too narrow to drape the {} in one piece; it is laid out a piece to a side "
                     "with an overlap along the keel.",
                     f.name));
        if (f.lay == ClothLay::Drape) {
            f.pieces.push_back({say("over the keel, sheer to sheer"), 1, whole, length});
        } else {
            const int across = piecesAcross(side, c.roll, c.overlap);
            const double width = (side + (across - 1) * c.overlap) / across;
            f.pieces.push_back({across == 1 ? say("one to a side, sheer to keel")
                                            : say("{} to a side, one below the other", across),
                                2 * across,
                                width,
                                length});
            f.overlaps = c.overlap * (f.face.keelLength + 2 * (across - 1) * f.face.length);
        }
        for (const ClothPiece& piece : f.pieces) { // narrow ones lie side by side on the roll
            const int beside = std::max(1, static_cast<int>(std::floor(c.roll / piece.width + 1e-9)));
            const int lengths = (piece.count + beside - 1) / beside;
            f.fromRoll += lengths * piece.length * (1 + m_choices.clothSpare);
        }
    }

    /// Where the weave would have to slide farther than it can, the cloth is slit.
    void slit(FaceCovering& f) {
        const double give = m_choices.give * degree;
        for (const End end : {End::Bow, End::Stern}) {
            const auto& turns = f.face.turns[end == End::Bow ? 0 : 1];
            if (turns.empty())
                continue;
            const bool drape = f.lay == ClothLay::Drape;
            const auto total = [&](const WeaveTurn& t) { return t.surface + (drape ? t.keel : 0.0); };
            const auto first = std::find_if(
                turns.begin(), turns.end(), [&](const WeaveTurn& t) { return std::abs(total(t)) > give; });
            if (first == turns.end())
                continue;
            const WeaveTurn& last = turns.back();
            const double rest = total(last);
            ClothSlit slit;
            slit.end = end;
            slit.fromX = first->x;
            slit.alongStem = drape && std::abs(last.keel) >= std::abs(last.surface);
            const double over = std::max(0.0, std::abs(rest) - give);
            slit.angle = std::copysign(slit.alongStem ? 2 * over : over, rest);
            f.slits.push_back(slit);
        }
    }

    void add(FaceCovering& f, std::string name, double litres) {
        ResinCoat coat{std::move(name), litres, std::nullopt, 0.0};
        if (m_choices.potLife && litres > 0.0) {
            const double perSquareM = litres / (f.covered() / squareMm);
            const double most = m_choices.pace * *m_choices.potLife * perSquareM;
            coat.batches = std::max(1, static_cast<int>(std::ceil(litres / most - 1e-9)));
            coat.batch = litres / *coat.batches;
        }
        f.litres += litres;
        f.coats.push_back(std::move(coat));
    }

    void coats(FaceCovering& f) {
        const double area = f.covered() / squareMm, waste = 1 + m_choices.waste;
        if (m_choices.seal)
            add(f, say("seal"), area * m_choices.sealCoat);
        add(f, say("wet-out"), area * f.choices.cloth / 1000 * m_choices.wetOut * waste);
        for (int i = 1; i <= f.choices.coats; ++i)
            add(f, say("coat {}", i), area * m_choices.fillCoat * waste);
        f.varnish = m_choices.varnishCoats * f.face.area / squareMm / m_choices.varnishSpread;
    }

    void weigh(FaceCovering& f) const {
        const double area = f.covered() / squareMm;
        f.glassMass = area * f.choices.cloth / 1000;
        const double litres = f.glassMass * m_choices.wetOut +
                              area * m_choices.fillCoat * f.choices.coats * (1 - m_choices.sanded) +
                              (m_choices.seal ? area * m_choices.sealCoat : 0.0);
        f.resinMass = litres * m_choices.curedDensity;
        f.varnishMass = m_choices.varnishCoats * f.face.area / squareMm * m_choices.varnishFilm / 1000;
    }

    const CoveringChoices& m_choices;
    std::vector<Finding>& m_findings;
};

void sum(CoveringPlan& plan, const FaceCovering& f) {
    plan.litres += f.litres;
    plan.varnish += f.varnish;
    plan.mass += f.glassMass + f.resinMass + f.varnishMass;
}

} // namespace

std::optional<CoveringPlan::Parts> CoveringPlan::litresOf(double mixed) const {
    if (!mix || mix->byWeight)
        return std::nullopt;
    const double all = mix->resin + mix->hardener;
    return Parts{mixed * mix->resin / all, mixed * mix->hardener / all};
}

std::optional<CoveringPlan::Parts> CoveringPlan::kilogramsOf(double mixed, double liquidDensity) const {
    if (!mix || !mix->byWeight)
        return std::nullopt;
    const double all = mix->resin + mix->hardener, kilograms = mixed * liquidDensity;
    return Parts{kilograms * mix->resin / all, kilograms * mix->hardener / all};
}

CoveringPlan
coverFaces(const CoveringChoices& choices, const CoveredFace& outside, const CoveredFace& inside) {
    CoveringPlan plan;
    plan.mix = choices.mix;
    FacePlanner planner(choices, plan.findings);
    if (choices.outside)
        plan.faces.push_back(planner.plan("outside", *choices.outside, outside));
    if (choices.inside)
        plan.faces.push_back(planner.plan("inside", *choices.inside, inside));
    for (const FaceCovering& f : plan.faces)
        sum(plan, f);
    plan.liquidMass = plan.litres * choices.liquidDensity;
    const bool any = !plan.faces.empty() || choices.bulkheads;
    const auto ask = [&](const char* code, const std::string& text) {
        plan.findings.push_back({Level::Note, code, std::nullopt, std::nullopt, text});
    };
    if (!any)
        ask("no-face-told",
            say("Nothing is covered, because no face is described; a table [covering.outside] or "
                "[covering.inside] with its cloth would do."));
    if (any && !choices.mix)
        ask("mix-not-told",
            say("How resin and hardener are mixed is not told; give mix under [covering] as the maker prints "
                "it."));
    if (any && !choices.potLife)
        ask("pot-life-not-told",
            say("The pot life is not told, so no batches are reckoned; give pot-life under [covering] in "
                "minutes."));
    return plan;
}

void coverBulkheads(CoveringPlan& plan,
                    const CoveringChoices& choices,
                    const std::vector<Bulkhead>& bulkheads) {
    if (!choices.bulkheads)
        return;
    if (bulkheads.empty()) {
        plan.findings.push_back({Level::Note,
                                 "no-bulkhead-to-cover",
                                 std::nullopt,
                                 std::nullopt,
                                 say("There is cloth for bulkheads, but no bulkhead stands in her; one under "
                                     "[[fitout.bulkhead]] would do.")});
        return;
    }
    FacePlanner planner(choices, plan.findings);
    plan.faces.push_back(planner.over(*choices.bulkheads, bulkheads));
    sum(plan, plan.faces.back());
    plan.liquidMass = plan.litres * choices.liquidDensity;
}

std::optional<CoveringPlan>
planCovering(const Project& project, const LoftedHull& hull, const TrimmedSurface& outside) {
    if (!project.covering)
        return std::nullopt;
    const CoveringChoices& c = *project.covering;
    return coverFaces(c,
                      c.outside ? measureFace(outside) : CoveredFace{},
                      c.inside ? measureFace(hull.moulds) : CoveredFace{});
}

} // namespace sheerlay::core
