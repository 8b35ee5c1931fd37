#include "core/planking/few_strips.hpp"

#include <algorithm>
#include <cstddef>
#include <functional>

namespace sheerlay::core {
namespace {

constexpr double worthOfStrip = 0.003; // m2 of wood that a touched strip is worth, closing.md section 1
constexpr double touchedFrom = 0.3;    // mm
constexpr double move = 25.0;          // mm that edges may go during the search
constexpr int rounds = 4;              // of prices
constexpr int patience = 5;        // strips found needed, one after the other, until the rest are taken to be
constexpr double woodShare = 0.12; // more wood than so much for one strip less is a bad bargain

/// The search about one linearisation.
class Search {
public:
    Search(const TaperEdges& edges, const std::vector<char>& keep, const std::stop_token& stop)
        : m_strips(edges.count()), m_solver(edges.program(move), edges.basis()), m_keep(keep), m_stop(stop) {
        m_solver.holdFull(m_keep);
        m_alive = m_solver.solve();
        if (!m_alive)
            return;
        m_traceOfExcess = m_solver.excess() * 1e-3 + 1e-4;
        m_leastWood = m_solver.wood();
    }

    /// @param lean  price of touching strip i (of n) before anything is known
    void run(const std::function<double(double)>& lean) {
        std::vector<char> held = m_keep;
        m_solver.holdFull(held);
        std::vector<double> price(m_strips);
        for (std::size_t i = 0; i < m_strips; ++i)
            price[i] = worthOfStrip * lean((static_cast<double>(i) + 0.5) / static_cast<double>(m_strips));
        for (int round = 0; round < rounds; ++round) {
            if (!solve(price))
                return;
            for (std::size_t i = 0; i < m_strips; ++i)
                price[i] = worthOfStrip / (m_solver.narrowing(i) + touchedFrom);
        }
        // those that are hardly narrowed stay whole, if the others allow
        for (const double below : {touchedFrom, 0.1 * touchedFrom}) {
            for (std::size_t i = 0; i < m_strips; ++i)
                held[i] = m_keep[i] || m_solver.narrowing(i) < below;
            if (tryHeld(held)) {
                drop(held);
                return;
            }
        }
    }

    [[nodiscard]] std::vector<StripChoice> best() {
        std::stable_sort(m_choices.begin(), m_choices.end(), [](const StripChoice& a, const StripChoice& b) {
            return a.touched != b.touched ? a.touched < b.touched : a.wood < b.wood;
        });
        return std::move(m_choices);
    }

private:
    bool solve(const std::vector<double>& price) {
        if (!m_alive || m_stop.stop_requested())
            return false;
        m_solver.setPrices(price);
        m_alive = m_solver.solve();
        return m_alive;
    }

    bool tryHeld(const std::vector<char>& held) {
        if (m_stop.stop_requested() ||
            !m_solver.tryHeld(held, woodShare * m_leastWood + worthOfStrip, m_traceOfExcess))
            return false;
        StripChoice c;
        c.held = held;
        c.coefficients = m_solver.coefficients();
        c.touched = static_cast<int>(std::count(held.begin(), held.end(), 0));
        c.wood = m_solver.wood();
        m_choices.push_back(std::move(c));
        return true;
    }

    /// Leaves one strip after the other full, the least narrowed first.
    void drop(std::vector<char> held) {
        std::vector<char> done = held; // or found needed
        for (int inVain = 0; inVain < patience;) {
            std::size_t least = m_strips;
            for (std::size_t i = 0; i < m_strips; ++i)
                if (!done[i] && (least == m_strips || m_solver.narrowing(i) < m_solver.narrowing(least)))
                    least = i;
            if (least == m_strips)
                return;
            done[least] = held[least] = 1;
            if (tryHeld(held)) {
                inVain = 0;
            } else {
                held[least] = 0;
                ++inVain;
            }
        }
    }

    std::size_t m_strips;
    TaperSolver m_solver;
    std::vector<char> m_keep; // strips that stay full in any case
    std::stop_token m_stop;
    bool m_alive = false;
    double m_traceOfExcess = 0.0, m_leastWood = 0.0;
    std::vector<StripChoice> m_choices;
};

} // namespace

std::vector<StripChoice>
fewStrips(const TaperEdges& edges, const std::vector<char>& keep, const std::stop_token& stop) {
    Search search(edges, keep, stop);
    search.run([](double) { return 0.0; });
    search.run([](double t) { return 0.4 * t; });
    return search.best();
}

} // namespace sheerlay::core
