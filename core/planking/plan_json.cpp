#include "core/planking/plan_json.hpp"

#include "core/hull/knuckle.hpp"
#include "core/planking/plan_findings.hpp"
#include "core/planking/plan_words.hpp"
#include "core/units/json_text.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace sheerlay::core {
namespace {

using Json = nlohmann::ordered_json;

constexpr double degrees = 180.0 / std::numbers::pi;

/// Rounded to a millionth of a mm: what is beyond is noise, and files stay readable.
double tidy(double value) {
    return rounded(value, 6);
}

Json points(const std::vector<Eigen::Vector3d>& line) {
    Json list = Json::array();
    for (const Eigen::Vector3d& p : line)
        list.push_back({tidy(p.x()), tidy(p.y()), tidy(p.z())});
    return list;
}

Json points(const std::vector<Eigen::Vector2d>& line) {
    Json list = Json::array();
    for (const Eigen::Vector2d& p : line)
        list.push_back({tidy(p.x()), tidy(p.y())});
    return list;
}

template <class T> Json orNull(const std::optional<T>& value) {
    return value ? Json(*value) : Json(nullptr);
}

Json rangeOrNull(const std::optional<RowRange>& range) {
    return range ? Json::array({range->first, range->last}) : Json(nullptr);
}

const char* toText(PlanedEdge edge) {
    return edge == PlanedEdge::Upper ? "upper" : edge == PlanedEdge::Lower ? "lower" : "none";
}
const char* toText(Weave weave) {
    return weave == Weave::Passes ? "passes" : weave == Weave::Fitted ? "fitted" : "none";
}

Json surface(const geometry::TensorSurface& s) {
    Json poles = Json::array();
    for (int i = 0; i < s.knotsU().poles(); ++i) {
        Json row = Json::array();
        for (int j = 0; j < s.knotsV().poles(); ++j) {
            const Eigen::Vector3d& p = s.pole(i, j);
            row.push_back({tidy(p.x()), tidy(p.y()), tidy(p.z())});
        }
        poles.push_back(std::move(row));
    }
    return {{"degree", {geometry::TensorSurface::degree, geometry::TensorSurface::degree}},
            {"knots_u", s.knotsU().fullVector()},
            {"knots_v", s.knotsV().fullVector()},
            {"poles", std::move(poles)}};
}

Json finding(const Finding& f) {
    Json json = {{"level", toText(f.level)},
                 {"code", f.code},
                 {"strip", orNull(f.strip)},
                 {"x", orNull(f.x)},
                 {"text", f.text}};
    if (f.aside)
        json["put_aside"] = {{"reason", f.aside->reason}, {"date", f.aside->date}};
    return json;
}

Json startLine(const StartLine& line) {
    const char* name = line.kind == StartLine::Kind::Sheer      ? "sheer"
                       : line.kind == StartLine::Kind::Geodesic ? "geodesic"
                       : line.kind == StartLine::Kind::Knuckle  ? "knuckle"
                                                                : "bent";
    Json json = {{"line", name}};
    if (line.kind == StartLine::Kind::Geodesic || line.kind == StartLine::Kind::Bent)
        json["girth"] = tidy(line.girth);
    if (line.shift != 0.0)
        json["shift"] = tidy(line.shift);
    if (line.kind == StartLine::Kind::Bent)
        json["edge-bend"] = {tidy(line.edgeBend[0]), tidy(line.edgeBend[1]), tidy(line.edgeBend[2])};
    return json;
}

Json strip(const Strip& s) {
    Json widths = Json::array();
    for (const auto& w : s.widths)
        widths.push_back({tidy(w[0]), tidy(w[1])});
    Json ends = Json::array();
    for (const StripEnd& e : s.ends)
        ends.push_back({{"end", e.end == End::Bow ? "bow" : "stern"},
                        {"on", toText(e.on)},
                        {"x", tidy(e.x)},
                        {"z", tidy(e.z)},
                        {"cut_deg", tidy(e.cut * degrees)},
                        {"bevel_deg", tidy(e.bevel * degrees)},
                        {"dihedral_deg", tidy(e.dihedral * degrees)},
                        {"lap_inner", tidy(e.lapInner)},
                        {"lap_outer", tidy(e.lapOuter)},
                        {"lap", tidy(e.lap)},
                        {"weave", toText(e.weave)},
                        {"run_inner", tidy(e.runInner)},
                        {"run_outer", tidy(e.runOuter)},
                        {"landing", tidy(e.landing)}});
    return {{"id", s.id},
            {"side", toText(s.side)},
            {"row", s.row},
            {"kind", toText(s.kind)},
            {"planed", toText(s.planed)},
            {"upper_edge", points(s.upperEdge)},
            {"lower_edge", points(s.lowerEdge)},
            {"length", tidy(s.length)},
            {"cut_length", tidy(s.cutLength)},
            {"widths", std::move(widths)},
            {"edge_bend",
             {{"max_abs", s.edgeBend.maxAbs},
              {"signed_min", s.edgeBend.signedMin},
              {"signed_max", s.edgeBend.signedMax},
              {"min_radius", orNull(s.edgeBend.minRadius)},
              {"at_x", tidy(s.edgeBend.atX)},
              {"force_n", tidy(s.edgeBend.force)}}},
            {"twist", {{"max_deg_per_m", tidy(s.twistMax * degrees * 1000)}, {"at_x", tidy(s.twistAtX)}}},
            {"bend", {{"min_radius", orNull(s.bendMinRadius)}, {"at_x", tidy(s.bendAtX)}}},
            {"strain", {{"max", tidy(s.strainMax)}, {"at_x", tidy(s.strainAtX)}}},
            {"ends", std::move(ends)},
            {"outline", points(s.outline)},
            {"accent", s.accent},
            {"planed_back", s.planedBack},
            {"order", s.order}};
}

/// The half-breadth where the planking ends; 0 where it reaches the centreplane.
double largestSiding(const TrimmedSurface& laid) {
    double most = 0;
    for (const Eigen::Vector3d& p : laid.profile)
        most = std::max(most, laid.trims.siding.at(p.x()));
    return most;
}

/// One standard deviation each.
Json uncertainty(const PlanUncertainty& u) {
    Json rows = Json::array();
    for (const RowUncertainty& r : u.rows)
        rows.push_back({{"row", r.row},
                        {"edge_bend", r.edgeBend},
                        {"twist_deg_per_m", tidy(r.twist * degrees * 1000)},
                        {"length", tidy(r.length)}});
    Json json = {{"draws", u.draws},
                 {"edge_bend", u.edgeBend},
                 {"twist_deg_per_m", tidy(u.twist * degrees * 1000)},
                 {"length", tidy(u.length)},
                 {"length_typical", tidy(u.lengthTypical)},
                 {"half_girth", tidy(u.halfGirth)}};
    if (u.shutterWidth)
        json["shutter_width"] = tidy(*u.shutterWidth);
    json["rows"] = std::move(rows);
    return json;
}

Json tapers(const Tapers& t) {
    return {{"touched", t.touched},
            {"wood_mm2", tidy(t.wood)},
            {"plain_worst_edge_bend", t.plainWorst},
            {"narrowest", t.narrowest},
            {"met_from_below", t.metFromBelow},
            {"met_from_above", t.metFromAbove}};
}

} // namespace

std::string planToJson(const Project& project, const LoftedHull& hull, const Plan& plan) {
    Json strips = Json::array();
    for (const Strip& s : plan.strips)
        strips.push_back(strip(s));
    Json findings = Json::array();
    for (const Finding& f : toldWithAsides(allFindings(hull, plan), project.putAside))
        findings.push_back(finding(f));
    Json candidates = Json::array();
    for (const StartCandidate& c : plan.candidates)
        candidates.push_back({{"line", startLine(c.line)},
                              {"worst_edge_bend", c.worst},
                              {"row", c.worstRow},
                              {"x", tidy(c.worstX)},
                              {"rows_to_keel", c.rowsToKeel},
                              {"rows_to_sheer", c.rowsToSheer},
                              {"rows_over_free", c.rowsOverFree},
                              {"rows_over_clamp", c.rowsOverClamp}});
    const TrimmedSurface& laid = hull.laid;
    Json json = {
        {"format", "sheerlay-plan"},
        {"version", 1},
        {"project", project.name},
        {"program", "sheerlay " SHEERLAY_VERSION},
        {"stock",
         {{"thickness", project.strips.thickness},
          {"width", project.strips.width},
          {"cover_width", plan.coverWidth}}},
        {"hull",
         {{"length", tidy(laid.length)},
          {"beam", tidy(laid.beam)},
          {"half_area", tidy(laid.halfArea)},
          {"half_girth_max", tidy(laid.halfGirthMax)},
          {"half_girth_max_x", tidy(laid.halfGirthMaxX)},
          {"keel_half_breadth", tidy(largestSiding(laid))},
          {"surface", surface(laid.surface)},
          {"sheer", points(laid.sheer)},
          {"profile", points(laid.profile)}}},
        {"start", startLine(plan.start)},
        {"start_candidates", std::move(candidates)},
        {"edge_bend_limit", plan.edgeBendLimit},
        {"strips", std::move(strips)},
        {"marks",
         {{"weave",
           {{"bow", rangeOrNull(plan.marks.weaveBow)}, {"stern", rangeOrNull(plan.marks.weaveStern)}}},
          {"closing", {{"bow", orNull(plan.marks.closingBow)}, {"stern", orNull(plan.marks.closingStern)}}},
          {"split_row", orNull(plan.splitRow)},
          {"herringbone_row", orNull(plan.herringboneFrom)}}},
        {"coverage",
         {{"strips_area", tidy(plan.coverage.stripsArea)},
          {"hull_area", tidy(plan.coverage.hullArea)},
          {"largest_gap", plan.coverage.largestGap},
          {"largest_overlap", plan.coverage.largestOverlap}}},
        {"findings", std::move(findings)},
        {"timing_ms", {{"loft", hull.milliseconds}, {"plan", plan.milliseconds}}}};
    if (const auto line = knuckleLine(laid); !line.empty()) {
        std::vector<Eigen::Vector3d> places;
        Json turns = Json::array();
        for (const KnucklePlace& k : line) {
            places.push_back(k.p);
            turns.push_back(tidy(k.turn * degrees));
        }
        json["hull"]["knuckle"] = {{"points", points(places)}, {"turn_deg", std::move(turns)}};
    }
    if (plan.tapers)
        json["tapers"] = tapers(*plan.tapers);
    if (plan.uncertainty)
        json["uncertainty"] = uncertainty(*plan.uncertainty);
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string findingsToJson(const std::vector<Finding>& findings) {
    Json list = Json::array();
    for (const Finding& f : findings)
        list.push_back(finding(f));
    const Json json = {{"format", "sheerlay-check"}, {"version", 1}, {"findings", std::move(list)}};
    return json.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace sheerlay::core
