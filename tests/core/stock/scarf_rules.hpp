#pragma once

#include "core/stock/stock_plan.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace sheerlay::test {

/// Checks a stock plan from the plan's own geometry, sharing no code with core/stock: what the rules are is
/// written down here a second time. @return what is broken, one sentence each
inline std::vector<std::string> brokenRules(const core::Project& project,
                                            const core::LoftedHull& hull,
                                            const core::Plan& plan,
                                            const core::StockPlan& stock) {
    std::vector<std::string> broken;
    const core::Stock& asked = *project.stock;
    const double scarf = asked.scarfSlope * project.strips.thickness;
    const std::vector<double>& st = hull.stationX;
    std::set<std::string> excused, excusedNib; // told to the builder
    for (const core::Finding& f : stock.findings) {
        if (f.strip && (f.code == "stock-scarf-in-bend" || f.code == "stock-scarf-at-nib"))
            excused.insert(*f.strip);
        if (f.strip && f.code == "stock-scarf-at-nib")
            excusedNib.insert(*f.strip);
    }
    const auto down = [](int row) { return row == -1 ? 1 : row + 1; };
    const auto bayAt = [&](double x) {
        for (std::size_t i = 0; i + 1 < st.size(); ++i)
            if (x >= st[i] && x < st[i + 1])
                return static_cast<int>(i);
        return -1;
    };
    std::map<std::string, std::set<int>> baysOf;
    std::map<std::string, int> cut; // "S07/2" -> times
    for (std::size_t i = 0; i < plan.strips.size(); ++i) {
        const core::Strip& strip = plan.strips[i];
        const core::StockStrip& made = stock.strips[i];
        if (made.strip != strip.id)
            broken.push_back(strip.id + " stands in another's place");
        if (made.pieces.empty())
            continue;
        if (made.pieces.size() != made.joints.size() + 1)
            broken.push_back(strip.id + " has pieces and joints that do not match");
        if (std::abs(made.pieces.front().from) > 1e-6 ||
            std::abs(made.pieces.back().to - strip.cutLength) > 1e-6)
            broken.push_back(strip.id + " is not cut over its whole length");
        const std::string starboard = "S" + strip.id.substr(1);
        for (std::size_t j = 0; j < made.joints.size(); ++j) {
            const core::StripJoint& joint = made.joints[j];
            const int bay = bayAt(joint.x);
            if (bay < 0 || bay != joint.bay) {
                broken.push_back(strip.id + " is joined outside the moulds");
                continue;
            }
            const auto b = static_cast<std::size_t>(bay);
            const double part = (joint.x - st[b]) / (st[b + 1] - st[b]);
            if (part < 1.0 / 3 - 1e-6 || part > 2.0 / 3 + 1e-6)
                broken.push_back(strip.id + " is joined too near a mould");
            if (!excused.contains(strip.id) && !excused.contains(starboard))
                for (const double hardest : {strip.edgeBend.atX, strip.twistAtX, strip.bendAtX})
                    if (bayAt(hardest) == bay)
                        broken.push_back(strip.id + " is joined where it is bent or twisted hardest");
            baysOf[strip.id].insert(bay);
            // x of the joint on the strip itself, between its samples
            double x = strip.samples.front().x;
            for (std::size_t k = 1; k < strip.samples.size(); ++k)
                if (strip.samples[k - 1].s <= joint.along && joint.along <= strip.samples[k].s) {
                    const double t = (joint.along - strip.samples[k - 1].s) /
                                     (strip.samples[k].s - strip.samples[k - 1].s);
                    x = strip.samples[k - 1].x + t * (strip.samples[k].x - strip.samples[k - 1].x);
                }
            if (std::abs(x - joint.x) > 1e-3)
                broken.push_back(strip.id + " has a joint whose x is not on it");
            // along a fair strip x changes no faster than the distance, so what is far in x is far in wood
            for (const core::Strip& other : plan.strips)
                for (const core::StripEnd& end : other.ends)
                    if (end.on == core::EndsOn::Nib && other.side == strip.side &&
                        (other.row == strip.row || other.row == down(strip.row)) &&
                        !excusedNib.contains(strip.id) && !excusedNib.contains(starboard) &&
                        std::abs(end.x - joint.x) < 0.95 * (scarf / 2 + 30.0))
                        broken.push_back(strip.id + " is joined beside a stealer's nib");
            const double overlap = made.pieces[j].to - made.pieces[j + 1].from;
            if (std::abs(overlap - scarf) > 1e-6)
                broken.push_back(strip.id + " has a scarf of the wrong length");
        }
        for (const core::StockPiece& piece : made.pieces) {
            const double length = piece.to - piece.from;
            double longest = length; // of a matched pair both are cut as long as the longer
            for (std::size_t k = 0; k < plan.strips.size() && asked.sides == core::JointSides::BookMatched;
                 ++k)
                if (plan.strips[k].id != strip.id && plan.strips[k].id.substr(1) == strip.id.substr(1))
                    for (const core::StockPiece& twin : stock.strips[k].pieces)
                        if (twin.number == piece.number)
                            longest = std::max(longest, twin.to - twin.from);
            if (piece.toCut < length - 1e-6 || piece.toCut > longest + 6.36)
                broken.push_back(strip.id + " has a piece cut to the wrong length");
            if (made.pieces.size() > 1 && length < asked.shortestPiece - 1e-6)
                broken.push_back(strip.id + " has a piece shorter than allowed");
            if (asked.longestPiece && length > *asked.longestPiece + 1e-6)
                broken.push_back(strip.id + " has a piece longer than can be worked");
            cut[strip.id + "/" + std::to_string(piece.number)] = 0;
        }
    }
    const bool told = std::ranges::any_of(
        stock.findings, [](const core::Finding& f) { return f.code == "stock-scarfs-side-by-side"; });
    for (const core::Strip& a : plan.strips)
        for (const core::Strip& b : plan.strips) {
            const bool oneSide =
                a.side == b.side || a.side == core::Side::Centre || b.side == core::Side::Centre;
            const bool opposite =
                asked.sides == core::JointSides::Stagger && a.row == b.row && a.side != b.side;
            const bool letIn = a.side == b.side && a.row == b.row && a.kind == core::StripKind::Stealer &&
                               b.kind != core::StripKind::Stealer;
            if (!((oneSide && b.row == down(a.row)) || opposite || letIn) || told)
                continue;
            for (const int bay : baysOf[a.id])
                if (baysOf[b.id].contains(bay))
                    broken.push_back(a.id + " and " + b.id + " are joined in one mould bay");
        }
    if (asked.sides != core::JointSides::Stagger)
        for (std::size_t i = 0; i < plan.strips.size(); ++i)
            for (std::size_t j = 0; j < plan.strips.size(); ++j)
                if (plan.strips[i].id[0] == 'S' && plan.strips[j].id == "P" + plan.strips[i].id.substr(1) &&
                    std::abs(plan.strips[i].length - plan.strips[j].length) < 0.5 &&
                    baysOf[plan.strips[i].id] != baysOf[plan.strips[j].id])
                    broken.push_back(plan.strips[i].id + " is not joined as its mirror image is");
    std::map<std::string, std::string> woodOf;
    for (const core::StockStrip& made : stock.strips)
        woodOf[made.strip] = made.wood;
    for (const core::Stick& stick : stock.sticks) {
        const core::BoardLot& lot = stock.lots[stick.lot].lot;
        const double first = asked.endTrim, last = lot.length - asked.endTrim;
        double used = 0.0, within = 0.0;
        for (std::size_t i = 0; i < stick.parts.size(); ++i) {
            const core::Stick::Part& part = stick.parts[i];
            used += part.toCut + asked.kerf;
            const bool next = i == 0 || part.clear != stick.parts[i - 1].clear;
            within = (next ? -asked.kerf : within) + part.toCut + asked.kerf;
            // the clear length it is cut from lies inside the trimmed board and meets no defect
            const auto& [from, to] = stock.lots[stick.lot].milling.clear.at(part.clear);
            if (from < first - 1e-6 || to > last + 1e-6 || within > to - from + 1e-6)
                broken.push_back(part.strip + " is cut past a clear length of " + stick.name);
            for (const auto& [begins, ends] : lot.defects)
                if (begins < to - 1e-6 && ends > from + 1e-6)
                    broken.push_back(part.strip + " is cut through a defect of " + stick.name);
            ++cut[part.strip + "/" + std::to_string(part.number)];
            if (woodOf[part.strip] != lot.wood)
                broken.push_back(part.strip + " is cut from another wood");
        }
        if (used - asked.kerf > lot.length - 2 * asked.endTrim + 1e-6)
            broken.push_back(stick.name + " holds more than its length");
        if (used + stick.left > lot.length - 2 * asked.endTrim + asked.kerf + 1e-6)
            broken.push_back(stick.name + " has less left than it says");
    }
    if (asked.sides == core::JointSides::BookMatched) {
        std::map<std::string, const core::Stick*> stickOf; // "S07/2" -> where it is cut from
        for (const core::Stick& stick : stock.sticks)
            for (const core::Stick::Part& part : stick.parts)
                stickOf[part.strip + "/" + std::to_string(part.number)] = &stick;
        for (const auto& [piece, stick] : stickOf) {
            const auto twin = stickOf.find("P" + piece.substr(1));
            if (piece[0] != 'S' || twin == stickOf.end())
                continue;
            const core::Stick& port = *twin->second;
            const int across = stock.lots[stick->lot].milling.sideBySide;
            if (port.lot != stick->lot || port.board != stick->board || port.number != stick->number + 1 ||
                (port.number - 1) / across != (stick->number - 1) / across)
                broken.push_back(piece + " and its twin did not lie side by side");
        }
    }
    for (const core::LotUse& use : stock.lots)
        for (const core::Stick& stick : stock.sticks)
            if (stock.lots[stick.lot].lot.name == use.lot.name &&
                (stick.board > use.boards || stick.number > use.milling.strips()))
                broken.push_back(stick.name + " is on no board that is bought");
    for (const auto& [piece, times] : cut)
        if (times != 1)
            broken.push_back(piece + " is cut " + std::to_string(times) + " times");
    return broken;
}

} // namespace sheerlay::test
