#include "core/afloat/after_json.hpp"

#include "core/fitout/fitout_json.hpp"
#include "core/units/json_text.hpp"

#include <nlohmann/json.hpp>

#include <cmath>
#include <numbers>
#include <utility>

namespace sheerlay::core {

namespace {

using Json = nlohmann::ordered_json;

constexpr double degrees = 180.0 / std::numbers::pi;

/// To 0.0001: finer says nothing here.
double tidy(double value) {
    return rounded(value, 4);
}

Json point(const Eigen::Vector3d& p) {
    return {tidy(p.x()), tidy(p.y()), tidy(p.z())};
}

const char* endName(End end) {
    return end == End::Bow ? "bow" : "stern";
}

Json faceJson(const FaceCovering& f) {
    Json pieces = Json::array(), slits = Json::array(), coats = Json::array();
    for (const ClothPiece& p : f.pieces)
        pieces.push_back(
            {{"what", p.what}, {"count", p.count}, {"width", tidy(p.width)}, {"length", tidy(p.length)}});
    for (const ClothSlit& s : f.slits)
        slits.push_back({{"end", endName(s.end)},
                         {"along_stem", s.alongStem},
                         {"from_x", tidy(s.fromX)},
                         {"angle_deg", tidy(s.angle * degrees)}});
    for (const ResinCoat& c : f.coats)
        coats.push_back({{"name", c.name},
                         {"litres", tidy(c.litres)},
                         {"batches", c.batches ? Json(*c.batches) : Json(nullptr)},
                         {"batch", c.batches ? Json(tidy(c.batch)) : Json(nullptr)}});
    return {{"face", f.name},
            {"area", tidy(f.face.area)},
            {"overlaps", tidy(f.overlaps)},
            {"lay",
             f.bulkheads                ? "flat"
             : f.lay == ClothLay::Drape ? "drape"
                                        : "centre-overlap"},
            {"pieces", std::move(pieces)},
            {"from_roll", tidy(f.fromRoll)},
            {"slits", std::move(slits)},
            {"coats", std::move(coats)},
            {"litres", tidy(f.litres)},
            {"varnish", tidy(f.varnish)},
            {"glass_kg", tidy(f.glassMass)},
            {"resin_kg", tidy(f.resinMass)},
            {"varnish_kg", tidy(f.varnishMass)}};
}

Json coveringJson(const CoveringPlan& c) {
    Json faces = Json::array();
    for (const FaceCovering& f : c.faces)
        faces.push_back(faceJson(f));
    return {{"faces", std::move(faces)},
            {"litres", tidy(c.litres)},
            {"varnish", tidy(c.varnish)},
            {"added_kg", tidy(c.mass)}};
}

Json glueJson(const std::vector<GlueUse>& glue) {
    Json list = Json::array();
    for (const GlueUse& g : glue)
        list.push_back({{"what", g.what},
                        {"epoxy", g.epoxy},
                        {"area", tidy(g.area)},
                        {"litres", tidy(g.litres)},
                        {"kg", tidy(g.mass)}});
    return list;
}

Json fasteningsJson(const std::vector<Fastening>& fastenings) {
    Json list = Json::array();
    for (const Fastening& f : fastenings)
        list.push_back({{"kind", f.kind == Fastening::Kind::Screw ? "screw" : "bolt"},
                        {"what", f.what},
                        {"diameter", tidy(f.diameter)},
                        {"length", tidy(f.length)},
                        {"count", f.count},
                        {"kg", tidy(f.mass)}});
    return list;
}

Json weightsJson(const WeightSheet& w) {
    Json items = Json::array();
    for (const WeightItem& i : w.items)
        items.push_back({{"name", i.name},
                         {"kg", tidy(i.mass)},
                         {"plus_minus_kg", tidy(i.plusMinus)},
                         {"centre", point(i.centre)}});
    return {{"kg", tidy(w.mass)},
            {"plus_minus_kg", tidy(w.plusMinus)},
            {"weighed", w.weighed},
            {"centre", point(w.centre)},
            {"items", std::move(items)}};
}

Json onMouldsJson(const OnMoulds& on) {
    Json loads = Json::array();
    for (const MouldLoad& m : on.loads)
        loads.push_back(
            {{"mould", m.mould}, {"x", tidy(m.x)}, {"carries_kg", tidy(m.hull)}, {"own_kg", tidy(m.board)}});
    return {{"hull_kg", tidy(on.hull.mass)},
            {"plus_minus_kg", tidy(on.hull.plusMinus)},
            {"centre", point(on.hull.centre)},
            {"strongback_kg", tidy(on.strongback())},
            {"moulds", std::move(loads)}};
}

Json curveJson(const RightingCurve& curve) {
    Json arms = Json::array();
    for (const RightingArm& a : curve.arms)
        arms.push_back({tidy(std::abs(a.heel) * degrees), tidy(a.arm)});
    return {{"arms_deg_mm", std::move(arms)},
            {"floods", curve.floods},
            {"largest_arm", tidy(curve.largest.arm)},
            {"largest_at_deg", tidy(std::abs(curve.largest.heel) * degrees)},
            {"vanishes_deg", curve.vanishes ? Json(tidy(*curve.vanishes * degrees)) : Json(nullptr)}};
}

Json restJson(const Rest& rest, const FormFigures& form) {
    const Submerged& u = rest.under;
    return {{"level", tidy(rest.water.level)},
            {"trim_deg", tidy(rest.water.trim * degrees)},
            {"heel_deg", tidy(rest.water.heel * degrees)},
            {"draught", tidy(rest.draught)},
            {"freeboard", tidy(rest.freeboard)},
            {"freeboard_at", point(rest.freeboardAt)},
            {"waterline_length", tidy(u.length)},
            {"waterline_beam", tidy(u.beam)},
            {"volume", tidy(u.volume)},
            {"centre_of_buoyancy", point(u.centre)},
            {"waterplane", tidy(u.plane)},
            {"centre_of_flotation", point(u.planeCentre)},
            {"wetted", tidy(u.wettedSkin)},
            {"wetted_transom", tidy(u.wettedTransom)},
            {"bm", tidy(rest.bm)},
            {"gm", tidy(rest.gm)},
            {"block", tidy(form.block)},
            {"prismatic", tidy(form.prismatic)},
            {"midship", tidy(form.midship)},
            {"waterplane_coefficient", tidy(form.waterplane)},
            {"kg_per_mm", tidy(form.massPerMm)}};
}

Json afloatJson(const AfloatReport& a) {
    Json levels = Json::array();
    for (const FloatLevel& l : a.levels)
        levels.push_back({tidy(l.draught), tidy(l.mass)});
    const auto curve = [](const std::optional<RightingCurve>& c) {
        return c ? curveJson(*c) : Json(nullptr);
    };
    return {{"boat_kg", tidy(a.boat.mass)},
            {"load_kg", tidy(a.load.mass)},
            {"density", tidy(a.density)},
            {"rest", a.rest ? restJson(*a.rest, a.form) : Json(nullptr)},
            {"righting_starboard", curve(a.toStarboard)},
            {"righting_port", curve(a.toPort)},
            {"draught_mass", std::move(levels)},
            {"freeboard_wanted", tidy(a.freeboard)},
            {"largest_load_kg", tidy(a.largestLoad)}};
}

} // namespace

std::string withAfterPlanking(std::string planJson, const AfterPlanking& after) {
    const auto add = [&](const char* key, const Json& value) {
        planJson =
            withMember(std::move(planJson), key, value.dump(-1, ' ', false, Json::error_handler_t::replace));
    };
    if (after.weights)
        add("weights", weightsJson(*after.weights));
    if (after.onMoulds)
        add("on_moulds", onMouldsJson(*after.onMoulds));
    if (after.covering)
        add("covering", coveringJson(*after.covering));
    if (!after.glue.empty())
        add("glue", glueJson(after.glue));
    if (!after.fastenings.empty())
        add("fastenings", fasteningsJson(after.fastenings));
    if (after.afloat)
        add("afloat", afloatJson(*after.afloat));
    if (after.fitout)
        planJson = withMember(std::move(planJson), "fitout", fitoutToJson(*after.fitout));
    return planJson;
}

} // namespace sheerlay::core
