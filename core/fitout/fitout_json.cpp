#include "core/fitout/fitout_json.hpp"

#include "core/units/json_text.hpp"
#include "core/units/weight.hpp"

#include <nlohmann/json.hpp>

#include <cmath>
#include <numbers>
#include <utility>

namespace sheerlay::core {

namespace {

using Json = nlohmann::ordered_json;

/// To 0.001: finer says nothing of wood.
double tidy(double value) {
    return rounded(value, 3);
}
double degrees(double radians) {
    return tidy(radians * 180.0 / std::numbers::pi);
}
const char* word(End end) {
    return end == End::Bow ? "bow" : "stern";
}
Json list(const std::vector<double>& values) {
    Json all = Json::array();
    for (const double v : values)
        all.push_back(tidy(v));
    return all;
}
Json points(const std::vector<Eigen::Vector2d>& line) {
    Json all = Json::array();
    for (const auto& p : line)
        all.push_back({tidy(p.x()), tidy(p.y())});
    return all;
}
template <class Part, class Write> Json each(const std::vector<Part>& parts, Write write) {
    Json all = Json::array();
    for (const Part& part : parts)
        all.push_back(write(part));
    return all;
}

Json sheerMark(const SheerMark& m) {
    return {{"mould", m.mould},
            {"x", tidy(m.x)},
            {"half_breadth", tidy(m.halfBreadth)},
            {"height", tidy(m.height)},
            {"above_strongback", tidy(m.aboveStrongback)},
            {"along_outside", tidy(m.alongOutside)},
            {"up_from_start", m.fromStart ? Json(tidy(*m.fromStart)) : Json(nullptr)}};
}
Json facet(const Facet& f) {
    return {{"strip", f.strip},
            {"x", tidy(f.x)},
            {"height", tidy(f.height)},
            {"hollow", f.across < 0.0},
            {"width", tidy(f.width)},
            {"thickness_left", tidy(f.left)}};
}
Json gunwale(const Gunwale& g) {
    Json pieces = Json::array();
    for (const GunwalePiece& p : g.pieces)
        pieces.push_back({{"from", tidy(p.from)}, {"to", tidy(p.to)}, {"length", tidy(p.length())}});
    return {{"width", g.size.width},
            {"height", g.size.height},
            {"sheer_length", tidy(g.sheerLength)},
            {"far_length", tidy(g.farLength)},
            {"cut_length", tidy(g.cutLength)},
            {"scarf_length", tidy(g.scarf)},
            {"scarfs", list(g.scarfs)},
            {"pieces", std::move(pieces)},
            {"strain", {{"max", g.strain}, {"at_x", tidy(g.strainAtX)}}},
            {"bend_across", g.bend},
            {"bend_up_and_down", g.edge},
            {"use",
             g.use == WoodUse::ByHand         ? "by-hand"
             : g.use == WoodUse::PickStraight ? "pick-straight"
                                              : "steam"}};
}
Json gunwales(const Gunwales& g) {
    Json json = {{"inner", gunwale(g.inner)},
                 {"outer", gunwale(g.outer)},
                 {"bevels",
                  each(g.bevels,
                       [](const GunwaleBevel& b) -> Json {
                           return {{"station", b.name},
                                   {"x", tidy(b.x)},
                                   {"along_inner", tidy(b.alongInner)},
                                   {"along_outer", tidy(b.alongOuter)},
                                   {"bevel_deg", degrees(b.flare)}};
                       })},
                 {"rabbet", tidy(g.rabbet)},
                 {"screws", list(g.screws)},
                 {"screw_spacing", tidy(g.screwSpacing)},
                 {"screw_count", g.screwCount},
                 {"plug_count", g.plugCount},
                 {"scuppers", nullptr}};
    if (g.scuppers)
        json["scuppers"] = {{"count", g.scuppers->count},
                            {"first", tidy(g.scuppers->first)},
                            {"opening", tidy(g.scuppers->opening)},
                            {"block", tidy(g.scuppers->block)}};
    return json;
}
Json bulkhead(const Bulkhead& b) {
    Json bevels = Json::array();
    for (std::size_t i = 0; i < b.edge.size(); i += std::max<std::size_t>(1, b.edge.size() / 40))
        bevels.push_back({tidy(b.edge[i].at.x()), tidy(b.edge[i].at.y()), degrees(b.edge[i].bevel)});
    return {{"end", word(b.choice.end)},
            {"x", tidy(b.x)},
            {"thickness", b.choice.thickness},
            {"width", tidy(b.width)},
            {"height", tidy(b.height)},
            {"crown", tidy(b.crown)},
            {"edge_length", tidy(b.edgeLength)},
            {"bevel_deg", {degrees(b.bevelLeast), degrees(b.bevelMost)}},
            {"bevels", std::move(bevels)}, // [y, z, deg]
            {"outline", points(b.outline)},
            {"void_litres", tidy(b.litres())},
            {"buoyancy_lb", tidy(b.litres() / kgPerPound)}}; // of fresh water, a kilogram to the litre
}
Json deck(const Deck& d) {
    return {{"end", word(d.choice.end)},
            {"inner_x", tidy(d.innerX)},
            {"thickness", d.choice.thickness},
            {"crown", tidy(d.choice.crown)},
            {"radius", d.radius > 0.0 ? Json(tidy(d.radius)) : Json(nullptr)},
            {"places",
             each(d.places,
                  [](const DeckPlace& p) -> Json {
                      return {{"x", tidy(p.x)},
                              {"half_breadth", tidy(p.halfBreadth)},
                              {"height", tidy(p.height)},
                              {"rise", tidy(p.rise)},
                              {"along", tidy(p.along)},
                              {"girth", tidy(p.girth)},
                              {"bevel_deg", degrees(p.bevel)}};
                  })},
            {"plan", points(d.plan)},
            {"flat", points(d.flat)},
            {"misfit", tidy(d.misfit)},
            {"area", tidy(d.area)}};
}
Json bolted(const BoltedPiece& part) {
    const CrossPiece& p = part.piece;
    Json json = {{"front_edge", {tidy(p.front.x()), tidy(p.front.y())}}, // [x, z]
                 {"width", p.width},
                 {"height", p.height},
                 {"tilt_deg", degrees(p.tilt)},
                 {"front_top", tidy(p.frontTop)},
                 {"back_top", tidy(p.backTop)},
                 {"front_bottom", tidy(p.frontBottom)},
                 {"back_bottom", tidy(p.backBottom)},
                 {"plan_deg", degrees(p.plan)},
                 {"section_deg", degrees(p.section)},
                 {"end_gap", tidy(p.gap)},
                 {"bolt", nullptr}};
    if (part.bolt)
        json["bolt"] = {{"x", tidy(part.bolt->x)},
                        {"half_breadth", tidy(part.bolt->halfBreadth)},
                        {"from_inner_edge", tidy(part.bolt->inset)},
                        {"along_sheer", tidy(part.bolt->alongSheer)},
                        {"hanger", tidy(part.bolt->hanger)},
                        {"hanger_top_deg", degrees(part.bolt->hangerSlope)},
                        {"from_end", tidy(part.bolt->fromEnd)}};
    return json;
}
Json seat(const Seat& s) {
    Json json = {{"name", s.choice.name},
                 {"x", tidy(s.x)},
                 {"top", tidy(s.top)},
                 {"above_bottom", tidy(s.aboveBottom)},
                 {"below_sheer", tidy(s.belowSheer)},
                 {"foot_room", tidy(s.footRoom)},
                 {"depth", s.choice.depth},
                 {"width_front", tidy(s.widthFront)},
                 {"width_back", tidy(s.widthBack)},
                 {"front_rail", bolted(s.front)},
                 {"back_rail", bolted(s.back)},
                 {"opening", tidy(s.opening)},
                 {"side_rail", tidy(s.sideRail)},
                 {"caning", nullptr},
                 {"cleats", nullptr}};
    if (s.caning)
        json["caning"] = {{"holes_front", s.caning->front},
                          {"holes_side", s.caning->side},
                          {"holes", s.caning->holes},
                          {"spacing_across", tidy(s.caning->spacingAcross)},
                          {"spacing_along", tidy(s.caning->spacingAlong)},
                          {"cane", tidy(s.caning->cane)}};
    if (s.choice.on == SeatChoice::On::Cleats)
        json["cleats"] = {{"front_below_sheer", tidy(s.cleatFront)},
                          {"back_below_sheer", tidy(s.cleatBack)},
                          {"length", tidy(s.cleatLength)}};
    return json;
}
Json thwart(const Thwart& t) {
    return {{"name", t.name}, {"x", tidy(t.x)}, {"bar", bolted(t.bar)}, {"room_below", tidy(t.kneeRoom)}};
}

} // namespace

std::string fitoutToJson(const Fitout& f) {
    const Json json = {{"sheer_marks", each(f.sheerMarks, sheerMark)},
                       {"facets", each(f.fairing.facets, facet)},
                       {"gunwales", f.gunwales ? gunwales(*f.gunwales) : Json(nullptr)},
                       {"bulkheads", each(f.bulkheads, bulkhead)},
                       {"decks", each(f.decks, deck)},
                       {"seats", each(f.seats, seat)},
                       {"thwarts", each(f.thwarts, thwart)},
                       {"yoke", f.yoke ? thwart(*f.yoke) : Json(nullptr)}};
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace sheerlay::core
