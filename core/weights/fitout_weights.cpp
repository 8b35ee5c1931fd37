#include "core/weights/fitout_weights.hpp"

#include "core/fitout/rings.hpp"
#include "core/project/wood.hpp"
#include "core/words/say.hpp"

#include <string>
#include <utility>

namespace sheerlay::core {

namespace {

using Eigen::Vector3d;

constexpr double cubicMm = 1e-9; // m3

/// Gathers pieces of one kind.
class Kind {
public:
    explicit Kind(std::string name) : m_item{std::move(name), 0.0, 0.0, Vector3d::Zero()} {}

    void add(double volume, double density, double x, double z) {
        const double mass = volume * density * cubicMm;
        m_item.mass += mass;
        m_item.centre += mass * Vector3d(x, 0.0, z);
    }
    void addTo(std::vector<WeightItem>& items) {
        if (!(m_item.mass > 0.0))
            return;
        m_item.centre /= m_item.mass;
        m_item.plusMinus = woodSpread * m_item.mass;
        items.push_back(std::move(m_item));
    }

private:
    WeightItem m_item;
};

/// Both sticks of a pair; they hang from the sheer by half their height.
void addStick(Kind& kind, const std::vector<SheerPoint>& line, const StickSize& size, double density) {
    for (std::size_t i = 1; i < line.size(); ++i) {
        const Vector3d middle =
            0.5 * (line[i].point + line[i - 1].point) - 0.25 * size.height * (line[i].up + line[i - 1].up);
        kind.add(2 * size.width * size.height * (line[i].s - line[i - 1].s), density, middle.x(), middle.z());
    }
}

void addAcross(Kind& kind, const CrossPiece& piece, double density) {
    const double length = 0.25 * (piece.frontTop + piece.backTop + piece.frontBottom + piece.backBottom);
    const Eigen::Vector2d middle = piece.at(piece.width / 2, -piece.height / 2);
    kind.add(length * piece.width * piece.height, density, middle.x(), middle.y());
}

/// Everything in a list as one part.
template <class Part>
void addTogether(std::vector<WeightItem>& items,
                 const std::string& name,
                 const std::vector<Part>& parts,
                 double spread) {
    WeightItem item{name, 0.0, 0.0, Vector3d::Zero()};
    for (const Part& part : parts) {
        item.mass += part.mass;
        item.centre += part.mass * part.centre;
    }
    if (!(item.mass > 0.0))
        return;
    item.centre /= item.mass;
    item.plusMinus = spread * item.mass;
    items.push_back(std::move(item));
}

} // namespace

void addWeight(std::vector<WeightItem>& items, const std::vector<Fastening>& fastenings) {
    addTogether(items, say("screws and bolts"), fastenings, 0.1); // another make weighs another tenth; judged
}

void addWeight(std::vector<WeightItem>& items, const std::vector<GlueUse>& glue) {
    addTogether(items, say("glue and fillets"), glue, 0.3);
}

std::vector<WeightItem> fitoutWeights(const Project& project, const Fitout& fitout) {
    const FitoutChoices choices = project.fitout.value_or(FitoutChoices{});
    const Wood* found = findWood(choices.wood);
    const double wood = found != nullptr ? found->density : plywoodDensity;
    std::vector<WeightItem> items;

    Kind gunwales(say("gunwales"));
    if (fitout.gunwales) {
        addStick(gunwales, fitout.gunwales->innerLine, fitout.gunwales->inner.size, wood);
        addStick(gunwales, fitout.gunwales->outerLine, fitout.gunwales->outer.size, wood);
    }
    gunwales.addTo(items);
    Kind bulkheads(say("bulkheads"));
    for (const Bulkhead& b : fitout.bulkheads) {
        double z = 0.0;
        for (const EdgePoint& p : b.edge)
            z += p.at.y() / static_cast<double>(b.edge.size());
        bulkheads.add(ringArea(b.outline) * b.choice.thickness, plywoodDensity, b.x, z);
    }
    bulkheads.addTo(items);
    Kind decks(say("decks"));
    for (const Deck& d : fitout.decks)
        for (std::size_t i = 1; i < d.places.size(); ++i) {
            const DeckPlace &a = d.places[i - 1], &b = d.places[i];
            decks.add((a.girth + b.girth) * (b.along - a.along) * d.choice.thickness,
                      plywoodDensity,
                      0.5 * (a.x + b.x),
                      0.5 * (a.height + b.height));
        }
    decks.addTo(items);
    Kind seats(say("seats"));
    for (const Seat& s : fitout.seats) {
        addAcross(seats, s.front.piece, wood);
        addAcross(seats, s.back.piece, wood);
        const double section = s.choice.rail.width * s.choice.rail.height;
        seats.add(2 * s.sideRail * section, wood, s.x, s.top - s.choice.rail.height / 2);
    }
    seats.addTo(items);
    Kind thwarts(say("thwarts and yoke"));
    for (const Thwart& t : fitout.thwarts)
        addAcross(thwarts, t.bar.piece, wood);
    if (fitout.yoke)
        addAcross(thwarts, fitout.yoke->bar.piece, wood);
    thwarts.addTo(items);
    return items;
}

} // namespace sheerlay::core
