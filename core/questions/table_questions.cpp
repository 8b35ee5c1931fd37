#include "core/questions/table_questions.hpp"

#include "core/hull/station_names.hpp"
#include "core/questions/hard_turn.hpp"
#include "core/questions/open_bottom.hpp"
#include "core/questions/siding_scan.hpp"
#include "core/units/both_units.hpp"
#include "core/units/number_text.hpp"
#include "core/words/say.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <numbers>
#include <optional>
#include <string>

namespace sheerlay::core {
namespace {

constexpr double muchBetter = 0.85; // residual with the best siding over that without any
constexpr std::size_t enoughOfStem = 3;
constexpr double mayHang = 0.8;     // mm: less is the fit's own
constexpr double sameHeight = 12.0; // mm: nearer points of a stem tell one thing

Finding finding(Level level, const char* code, std::optional<double> x, std::string text) {
    return {level, code, std::nullopt, x, std::move(text)};
}

class Asker {
public:
    Asker(const Project& project, const LoftedHull& hull)
        : m_project(project), m_table(project.hull), m_hull(hull), m_names(stationNames(project, hull)) {}

    std::vector<Finding> ask() {
        const std::vector<OpenBottom> open = openBottoms(m_table);
        bottom(open);
        const bool bow = stem(End::Bow);
        const bool stern = stem(End::Stern);
        if (sidingUntold(m_table) && (!open.empty() || bow || stern))
            siding();
        belowKeel();
        knuckle();
        return std::move(m_findings);
    }

private:
    void bottom(const std::vector<OpenBottom>& open) {
        if (open.empty())
            return;
        const OpenBottom& most =
            *std::max_element(open.begin(), open.end(), [](const OpenBottom& a, const OpenBottom& b) {
                return a.girth < b.girth;
            });
        const double rows = most.girth / std::max(1.0, m_project.strips.coverWidth);
        const std::string where =
            open.size() == 1 ? say("At x {} the table gives nothing between the lowest point and the keel",
                                   m_names[open[0].station])
                             : say("From x {} to {} the table gives nothing between the lowest point and the "
                                   "keel, at x {}",
                                   m_names[open.front().station],
                                   m_names[open.back().station],
                                   m_names[most.station]);
        m_findings.push_back(finding(
            Level::Caution,
            "bottom-open",
            m_hull.stationX[most.station],
            say("{} over {} percent of the girth. A straight run there and the fullest round one differ by "
                "{} of girth, {} strips, and by {} litres over the boat. One buttock height there would "
                "settle it, or a point for the deadrise or where a flat floor ends; until then take girths "
                "as good to 1 percent, displacement to 5, and the shutter's width as unknown.",
                where,
                numberText(100 * most.part, 0),
                bothUnits(most.girth),
                numberText(rows, 1),
                numberText(openVolume(m_table, open) / 1e6, 0))));
    }

    /// @return whether it had to be asked for
    bool stem(End end) {
        const bool bow = end == End::Bow;
        if (std::any_of(m_table.transoms.begin(), m_table.transoms.end(), [&](const Transom& t) {
                return t.end == end;
            }))
            return false;
        const Station* inner = nullptr; // the outermost with a keel: forward of it the stem must be told
        std::string name;
        for (std::size_t i = 0; i < m_table.stations.size(); ++i)
            if (m_table.stations[i].keel && (!inner || !bow)) {
                inner = &m_table.stations[i];
                name = m_names[i];
            }
        if (!inner)
            return false; // the profile gives the keel, and with it the stem
        std::vector<double> heights;
        const auto take = [&](double x, double height) {
            if (bow ? x < inner->x : x > inner->x)
                heights.push_back(height);
        };
        for (const ProfilePoint& p : m_table.profile)
            take(p.x, p.height);
        for (const Station& s : m_table.stations)
            if (!s.keel) {
                take(s.x, s.sheer.height);
                for (const TablePoint& p : s.points)
                    take(s.x, p.height);
            }
        std::sort(heights.begin(), heights.end());
        heights.erase(std::unique(heights.begin(),
                                  heights.end(),
                                  [](double a, double b) { return b - a < sameHeight; }),
                      heights.end());
        if (heights.size() >= enoughOfStem)
            return false;
        const double gap = heights.empty() ? 0.0 : heights.front() - inner->keel->height;
        const std::string which = bow ? say("bow") : say("stern"), points = heights.empty() ? say("no point")
                                                                            : heights.size() == 1
                                                                                ? say("one point")
                                                                                : say("two points");
        m_findings.push_back(finding(
            Level::Caution,
            "stem-sparse",
            inner->x + m_hull.xShift,
            gap > 0
                ? say("The {}'s stem is told by {} beyond the station at x {}, and nothing over the lowest "
                      "{} of its height: its foot may be off by about 25 mm (1\"). Give three points of the "
                      "stem or more under [hull.profile], one of them where it turns into the keel.",
                      which,
                      points,
                      name,
                      bothUnits(gap))
                : say("The {}'s stem is told by {} beyond the station at x {}: its foot may be off by about "
                      "25 mm (1\"). Give three points of the stem or more under [hull.profile], one of them "
                      "where it turns into the keel.",
                      which,
                      points,
                      name)));
        return true;
    }

    void siding() {
        const std::optional<SidingScan> scan = scanSiding(m_table);
        if (!scan || scan->best < 1.5 || scan->bestResidual > muchBetter * scan->residualAtZero)
            return;
        m_findings.push_back(
            finding(Level::Caution,
                    "half-siding-untold",
                    std::nullopt,
                    say("Nothing says how far off the centreline the planking ends on keel and stem. The "
                        "numbers agree best with about {}: they miss the fair surface by {} mm in the mean, "
                        "by {} mm with none. Measure it on the plan and give it as half-siding under "
                        "[hull.profile]; until then the planking ends on the centreline.",
                        bothUnits(scan->best),
                        numberText(scan->bestResidual, 1),
                        numberText(scan->residualAtZero, 1))));
    }

    void knuckle() {
        const std::vector<HardTurn> turns = hardTurns(m_table);
        if (turns.empty())
            return;
        const HardTurn& most =
            *std::max_element(turns.begin(), turns.end(), [](const HardTurn& a, const HardTurn& b) {
                return a.angle < b.angle;
            });
        m_findings.push_back(
            finding(Level::Caution,
                    "knuckle-rounded",
                    m_hull.stationX[most.station],
                    say(m_table.knuckled()
                            ? sayable("From x {} to {} the sections turn all at once, at x {} by {} degrees "
                                      "at {} half-breadth: a chine, it seems. It is not the knuckle that the "
                                      "table gives; the loft turns sharply along one line only and rounds "
                                      "this one over, so that moulds and strips are wrong there.")
                            : sayable("From x {} to {} the sections turn all at once, at x {} by {} degrees "
                                      "at {} half-breadth: a chine, it seems. The loft rounds it over, so "
                                      "that moulds and strips are wrong there. Where it runs from end to "
                                      "end, give its height and half-breadth at every station as knuckle: "
                                      "sides and bottom are then lofted and planked each for itself."),
                        m_names[turns.front().station],
                        m_names[turns.back().station],
                        m_names[most.station],
                        numberText(most.angle * 180 / std::numbers::pi, 0),
                        bothUnits(most.halfBreadth))));
    }

    void belowKeel() {
        std::string names;
        std::optional<double> x;
        double most = 0;
        for (std::size_t i = 0; i < m_table.stations.size(); ++i) {
            if (!m_table.stations[i].keel)
                continue;
            const auto section = sectionAt(m_hull.drawn, m_hull.stationX[i], 120);
            if (section.size() < 2)
                continue;
            double lowest = section.back().z();
            for (const Eigen::Vector3d& p : section)
                lowest = std::min(lowest, p.z());
            const double hangs = section.back().z() - lowest;
            if (hangs < mayHang)
                continue;
            names += (names.empty() ? "" : ", ") + m_names[i];
            if (hangs > most) {
                most = hangs;
                x = m_hull.stationX[i];
            }
        }
        if (x)
            m_findings.push_back(finding(Level::Caution,
                                         "section-below-keel",
                                         x,
                                         say("The lofted section hangs below its own keel, by up to {}, at x "
                                             "{}. A buttock height near the keel there would settle it.",
                                             bothUnits(most),
                                             names)));
    }

    const Project& m_project;
    const HullTable& m_table;
    const LoftedHull& m_hull;
    std::vector<std::string> m_names;
    std::vector<Finding> m_findings;
};

} // namespace

std::vector<Finding> tableQuestions(const Project& project, const LoftedHull& hull) {
    return Asker(project, hull).ask();
}

std::vector<Finding> besideQuestions(std::vector<Finding> ofLoft, const std::vector<Finding>& questions) {
    if (std::any_of(
            questions.begin(), questions.end(), [](const Finding& f) { return f.code == "bottom-open"; }))
        std::erase_if(ofLoft, [](const Finding& f) { return f.code == "bottom-not-given"; });
    return ofLoft;
}

} // namespace sheerlay::core
