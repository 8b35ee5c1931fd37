#pragma once

#include "core/journal/smooth_readings.hpp"

#include <cmath>
#include <numbers>
#include <random>
#include <vector>

namespace sheerlay::test {

/// How boats differ from their plans: the error model of the journal's design study.
struct BoatErrors {
    double commonSd = 0.10;      ///< mm a strip, bias of all boards alike
    double boardSd = 0.08;       ///< mm a strip, of the strips of one board
    int stripsPerBoard = 9;      ///< boards are used up one after the other
    double wavinessSd = 0.15;    ///< mm a strip, local along the boat
    double wavinessLength = 700; ///< mm, over which local errors stay alike
    double mouldSd = 1.0;        ///< mm, girth of the moulds; cancels out of the girth left
};

constexpr double stationSpacing = 304.8; // mm
constexpr int stationCount = 15;
constexpr int midStation = 7;

/// A boat of `rows` rows laid with errors: by how much every strip covers more than planned, everywhere.
class SimulatedBoat {
public:
    /// @param common  mm, bias of all boards; drawn when it is not given
    SimulatedBoat(unsigned seed, int rows, const BoatErrors& errors, const double* common = nullptr)
        : m_random(seed), m_errors(errors) {
        const double drawn = errors.commonSd * normal();
        m_common = common != nullptr ? *common : drawn;
        for (int row = 0; row < rows; ++row) {
            if (row % errors.stripsPerBoard == 0)
                m_board = errors.boardSd * normal();
            m_width.push_back(m_common + m_board);
            m_waves.push_back(wave());
        }
    }

    /// mm, by how much the lower edge of `row` (1, 2, …) lies nearer the keel than planned.
    [[nodiscard]] double edge(int row, double x) const {
        double sum = 0;
        for (int i = 0; i < row; ++i)
            sum += m_width[index(i)] + at(m_waves[index(i)], x);
        return sum;
    }
    /// mm, mean excess of the strips up to `row`, local errors apart.
    [[nodiscard]] double widthExcess(int row) const {
        double sum = 0;
        for (int i = 0; i < row; ++i)
            sum += m_width[index(i)];
        return sum / row;
    }
    /// A round with the tape at every station.
    [[nodiscard]] std::vector<core::OffsetReading> read(int row, double sd) {
        std::vector<core::OffsetReading> readings;
        for (int i = 0; i < stationCount; ++i)
            readings.push_back({i * stationSpacing, edge(row, i * stationSpacing) + sd * normal(), sd});
        return readings;
    }
    double normal() { return m_normal(m_random); }

private:
    struct Ripple {
        double frequency = 0.0;
        double phase = 0.0;
    };
    using Wave = std::vector<Ripple>;

    static std::size_t index(int i) { return static_cast<std::size_t>(i); }
    /// A smooth random function of unit spread by random frequencies.
    Wave wave() {
        Wave w(24);
        for (Ripple& r : w)
            r = {normal() / m_errors.wavinessLength, 2 * std::numbers::pi * m_even(m_random)};
        return w;
    }
    [[nodiscard]] double at(const Wave& w, double x) const {
        double sum = 0;
        for (const Ripple& r : w)
            sum += std::cos(r.frequency * x + r.phase);
        return m_errors.wavinessSd * std::sqrt(2.0 / static_cast<double>(w.size())) * sum;
    }

    std::mt19937 m_random;
    std::normal_distribution<double> m_normal;
    std::uniform_real_distribution<double> m_even;
    BoatErrors m_errors;
    double m_common = 0.0;
    double m_board = 0.0;
    std::vector<double> m_width;
    std::vector<Wave> m_waves;
};

} // namespace sheerlay::test
