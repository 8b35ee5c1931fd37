#include "core/outlines/svg_path.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>
#include <numbers>
#include <optional>
#include <string>
#include <utility>

namespace sheerlay::core {

namespace {

constexpr int perCurve = 24; // chords of one Bézier curve

bool isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r' || c == '\f' || c == ',';
}
bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// Takes numbers and letters off the front of a text.
class Scanner {
public:
    explicit Scanner(std::string_view text) : m_text(text) {}

    void skipBlanks() {
        while (!m_text.empty() && isBlank(m_text.front()))
            m_text.remove_prefix(1);
    }
    [[nodiscard]] bool atEnd() {
        skipBlanks();
        return m_text.empty();
    }
    std::optional<char> letter() {
        skipBlanks();
        if (m_text.empty() ||
            std::string_view("MmZzLlHhVvCcSsQqTtAa").find(m_text.front()) == std::string_view::npos)
            return std::nullopt;
        const char c = m_text.front();
        m_text.remove_prefix(1);
        return c;
    }
    /// A flag of an arc: one digit, which may touch the next.
    std::optional<double> flag() {
        skipBlanks();
        if (m_text.empty() || (m_text.front() != '0' && m_text.front() != '1'))
            return std::nullopt;
        const double value = m_text.front() - '0';
        m_text.remove_prefix(1);
        return value;
    }
    std::optional<double> number() {
        skipBlanks();
        std::size_t n = 0;
        const auto at = [this](std::size_t i) { return i < m_text.size() ? m_text[i] : '\0'; };
        if (at(n) == '-' || at(n) == '+')
            ++n;
        bool digits = false;
        while (isDigit(at(n))) {
            ++n;
            digits = true;
        }
        if (at(n) == '.') {
            ++n;
            while (isDigit(at(n))) {
                ++n;
                digits = true;
            }
        }
        if (!digits)
            return std::nullopt;
        if (at(n) == 'e' || at(n) == 'E') {
            std::size_t e = n + 1;
            if (at(e) == '-' || at(e) == '+')
                ++e;
            if (isDigit(at(e))) {
                while (isDigit(at(e)))
                    ++e;
                n = e;
            }
        }
        const double value = std::strtod(std::string(m_text.substr(0, n)).c_str(), nullptr);
        m_text.remove_prefix(n);
        constexpr double largest = 1e9;
        return std::isfinite(value) && std::abs(value) < largest ? std::optional(value) : std::nullopt;
    }

private:
    std::string_view m_text;
};

DrawnPoint between(DrawnPoint a, DrawnPoint b, double part) {
    return {a.x + part * (b.x - a.x), a.y + part * (b.y - a.y)};
}

/// The far end of an arm mirrored at a point, for the smooth commands.
DrawnPoint mirrored(DrawnPoint arm, DrawnPoint at) {
    return {2 * at.x - arm.x, 2 * at.y - arm.y};
}

/// An elliptic arc from where the pen is, SVG 1.1 F.6.5 and F.6.6.
std::vector<DrawnPoint>
ellipticArc(DrawnPoint from, double rx, double ry, double turn, bool large, bool sweep, DrawnPoint to) {
    rx = std::abs(rx);
    ry = std::abs(ry);
    if (rx == 0.0 || ry == 0.0 || from == to)
        return {to};
    const double c = std::cos(turn);
    const double s = std::sin(turn);
    const double dx = (from.x - to.x) / 2;
    const double dy = (from.y - to.y) / 2;
    const double x = c * dx + s * dy;
    const double y = -s * dx + c * dy;
    const double reach = x * x / (rx * rx) + y * y / (ry * ry);
    if (reach > 1.0) { // too small to reach: grown just enough
        rx *= std::sqrt(reach);
        ry *= std::sqrt(reach);
    }
    const double below = rx * rx * y * y + ry * ry * x * x;
    const double factor =
        std::sqrt(std::max(0.0, (rx * rx * ry * ry - below) / below)) * (large == sweep ? -1 : 1);
    const DrawnPoint centre{factor * rx * y / ry, -factor * ry * x / rx}; // in the ellipse's own directions
    const double first = std::atan2((y - centre.y) / ry, (x - centre.x) / rx);
    double angle = std::atan2((-y - centre.y) / ry, (-x - centre.x) / rx) - first;
    if (sweep && angle < 0.0)
        angle += 2 * std::numbers::pi;
    if (!sweep && angle > 0.0)
        angle -= 2 * std::numbers::pi;
    auto points = arcPoints(centre, rx, ry, first, angle);
    for (DrawnPoint& p : points)
        p = {c * p.x - s * p.y + (from.x + to.x) / 2, s * p.x + c * p.y + (from.y + to.y) / 2};
    points.erase(points.begin());
    points.back() = to;
    return points;
}

class PathReader {
public:
    explicit PathReader(std::string_view d) : m_scanner(d) {}

    std::vector<std::vector<DrawnPoint>> curves() {
        std::optional<char> command = m_scanner.letter();
        while (command && step(*command)) {
            const auto next = m_scanner.letter();
            if (!next && m_scanner.atEnd())
                break;
            // Numbers alone repeat the command; after a move they are lines.
            if (next)
                command = next;
            else if (*command == 'M')
                command = 'L';
            else if (*command == 'm')
                command = 'l';
            else if (*command == 'Z' || *command == 'z')
                break;
        }
        finish();
        return std::move(m_curves);
    }

private:
    void finish() {
        if (m_points.size() >= 2)
            m_curves.push_back(m_points);
        m_points.clear();
    }
    void to(DrawnPoint point) {
        if (m_points.empty())
            m_points.push_back(m_pen);
        m_points.push_back(point);
        m_pen = point;
    }
    /// A point of the command, told from where the pen is for small letters.
    std::optional<DrawnPoint> point(bool relative) {
        const auto x = m_scanner.number();
        const auto y = m_scanner.number();
        if (!x || !y)
            return std::nullopt;
        return relative ? DrawnPoint{m_pen.x + *x, m_pen.y + *y} : DrawnPoint{*x, *y};
    }
    template <class Curve> void sampled(Curve curve, DrawnPoint end) {
        for (int i = 1; i < perCurve; ++i)
            m_next.push_back(curve(static_cast<double>(i) / perCurve));
        m_next.push_back(end);
        for (const DrawnPoint& p : m_next)
            to(p);
        m_next.clear();
    }
    void cubic(DrawnPoint b, DrawnPoint c, DrawnPoint end) {
        const DrawnPoint a = m_pen;
        sampled(
            [=](double t) {
                const DrawnPoint ab = between(a, b, t);
                const DrawnPoint bc = between(b, c, t);
                const DrawnPoint cd = between(c, end, t);
                return between(between(ab, bc, t), between(bc, cd, t), t);
            },
            end);
        m_cubicArm = c;
    }
    void quadratic(DrawnPoint b, DrawnPoint end) {
        const DrawnPoint a = m_pen;
        sampled([=](double t) { return between(between(a, b, t), between(b, end, t), t); }, end);
        m_quadraticArm = b;
    }

    /// One command with its numbers. @return whether they were all there
    bool step(char command) {
        const bool relative = command >= 'a';
        const char what = relative ? static_cast<char>(command - 'a' + 'A') : command;
        const auto cubicArm = std::exchange(m_cubicArm, std::nullopt);
        const auto quadraticArm = std::exchange(m_quadraticArm, std::nullopt);
        if (what == 'Z') {
            if (!m_points.empty() && m_points.front() != m_pen)
                to(m_points.front());
            else if (!m_points.empty())
                m_pen = m_points.front();
            finish();
            return true;
        }
        if (what == 'H' || what == 'V') {
            const auto number = m_scanner.number();
            if (!number)
                return false;
            const bool across = what == 'H';
            const double base = relative ? (across ? m_pen.x : m_pen.y) : 0.0;
            to(across ? DrawnPoint{base + *number, m_pen.y} : DrawnPoint{m_pen.x, base + *number});
            return true;
        }
        if (what == 'A')
            return arc(relative);
        std::array<DrawnPoint, 3> read{};
        const std::size_t wanted = what == 'C' ? 3 : what == 'S' || what == 'Q' ? 2 : 1;
        for (std::size_t i = 0; i < wanted; ++i) {
            const auto p = point(relative);
            if (!p)
                return false;
            read[i] = *p;
        }
        if (what == 'M') {
            finish();
            m_pen = read[0];
        } else if (what == 'L') {
            to(read[0]);
        } else if (what == 'C') {
            cubic(read[0], read[1], read[2]);
        } else if (what == 'S') {
            cubic(cubicArm ? mirrored(*cubicArm, m_pen) : m_pen, read[0], read[1]);
        } else if (what == 'Q') {
            quadratic(read[0], read[1]);
        } else {
            quadratic(quadraticArm ? mirrored(*quadraticArm, m_pen) : m_pen, read[0]);
        }
        return true;
    }
    bool arc(bool relative) {
        const auto rx = m_scanner.number();
        const auto ry = m_scanner.number();
        const auto turn = m_scanner.number();
        const auto large = m_scanner.flag();
        const auto sweep = m_scanner.flag();
        const auto end = point(relative);
        if (!rx || !ry || !turn || !large || !sweep || !end)
            return false;
        for (const DrawnPoint& p :
             ellipticArc(m_pen, *rx, *ry, *turn * std::numbers::pi / 180, *large > 0, *sweep > 0, *end))
            to(p);
        return true;
    }

    Scanner m_scanner;
    DrawnPoint m_pen;
    std::optional<DrawnPoint> m_cubicArm;
    std::optional<DrawnPoint> m_quadraticArm;
    std::vector<DrawnPoint> m_points;
    std::vector<DrawnPoint> m_next;
    std::vector<std::vector<DrawnPoint>> m_curves;
};

} // namespace

std::vector<std::vector<DrawnPoint>> svgPath(std::string_view d) {
    return PathReader(d).curves();
}

std::vector<double> svgNumbers(std::string_view text) {
    Scanner scanner(text);
    std::vector<double> numbers;
    while (const auto number = scanner.number())
        numbers.push_back(*number);
    return numbers;
}

} // namespace sheerlay::core
