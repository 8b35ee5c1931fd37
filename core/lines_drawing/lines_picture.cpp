#include "core/lines_drawing/lines_picture.hpp"

#include <algorithm>
#include <stdexcept>

namespace sheerlay::core {
namespace {

constexpr double lane = 17.0, margin = 5.0; // mm at the left for names of levels; all round
constexpr double labelRow = 7.0, gap = 3.0; // mm below a view for its stations; between views
constexpr double bodyPart = 0.3;            // of the width at least, beside the other views
constexpr double nameRoom = 12.0; // mm at the right of the body plan for the foremost sections' names
constexpr double tipRoom = 10.0;  // mm above the body plan for its sections' names
constexpr double least = 20.0;    // mm of room a view needs at all

/// The largest scale at which `size` mm of boat have room.
double scaleFor(const Eigen::Vector2d& size, const Eigen::Vector2d& room, double zoom) {
    return zoom * std::min(std::max(room.x(), least) / size.x(), std::max(room.y(), least) / size.y());
}

class Layout {
public:
    Layout(const DrawnLines& lines, const Eigen::Vector2d& room, double zoom)
        : m_lines(lines), m_room(room), m_zoom(zoom), m_length(lines.stern - lines.bow),
          m_deep(lines.high - lines.low) {
        m_picture.widestX = lines.widestX;
    }

    LinesPicture whole() {
        const double left = (1 - bodyPart) * m_room.x();
        const double rows = 2 * margin + labelRow + gap;
        const double k = scaleFor(
            {m_length, m_deep + m_lines.broad}, {left - lane - 2 * margin, m_room.y() - rows}, m_zoom);
        side(k, margin);
        above(k, margin + m_deep * k + labelRow + gap);
        const double from = margin + lane + m_length * k + margin;
        // what the others leave: they may be held by the height
        const double taken = 2 * margin + lane + m_length * k / m_zoom;
        const double kb = scaleFor(
            {2 * m_lines.broad, m_deep},
            {m_room.x() - taken - lane - nameRoom - margin, m_room.y() - 2 * margin - labelRow - tipRoom},
            m_zoom);
        end(kb, from, margin + tipRoom);
        size(from + lane + 2 * m_lines.broad * kb + nameRoom + margin,
             std::max(rows + (m_deep + m_lines.broad) * k, 2 * margin + tipRoom + labelRow + m_deep * kb));
        return std::move(m_picture);
    }

    LinesPicture alone(LinesPart part) {
        const double below = 2 * margin + labelRow;
        if (part == LinesPart::BodyPlan) {
            const double k = scaleFor({2 * m_lines.broad, m_deep},
                                      m_room - Eigen::Vector2d(lane + nameRoom + 2 * margin, below + tipRoom),
                                      m_zoom);
            end(k, margin, margin + tipRoom);
            size(lane + nameRoom + 2 * margin + 2 * m_lines.broad * k, below + tipRoom + m_deep * k);
            return std::move(m_picture);
        }
        const double across = part == LinesPart::Profile ? m_deep : m_lines.broad + m_lines.far;
        const double k =
            scaleFor({m_length, across}, m_room - Eigen::Vector2d(lane + 2 * margin, below), m_zoom);
        if (part == LinesPart::Profile)
            side(k, margin);
        else
            above(k, margin);
        size(lane + 2 * margin + m_length * k, below + across * k);
        return std::move(m_picture);
    }

private:
    void side(double k, double top) {
        m_picture.side = LinesView{{margin + lane - m_lines.bow * k, top + m_lines.high * k}, k};
    }
    void above(double k, double top) {
        m_picture.above = LinesView{{margin + lane - m_lines.bow * k, top + m_lines.broad * k}, k};
    }
    void end(double k, double left, double top) {
        m_picture.end = LinesView{{left + lane + m_lines.broad * k, top + m_lines.high * k}, k};
    }
    void size(double width, double height) {
        m_picture.sheet.width = width;
        m_picture.sheet.height = height;
    }

    const DrawnLines& m_lines;
    Eigen::Vector2d m_room;
    double m_zoom;
    double m_length, m_deep; ///< mm
    LinesPicture m_picture;
};

} // namespace

std::vector<Eigen::Vector2d> LinesPicture::placesOf(const Eigen::Vector3d& p) const {
    std::vector<Eigen::Vector2d> places;
    if (side)
        places.push_back(side->at(p.x(), p.z()));
    if (above)
        places.push_back(above->at(p.x(), p.y()));
    if (end)
        places.push_back(end->at(p.x() <= widestX ? p.y() : -p.y(), p.z()));
    return places;
}

LinesPicture
linesPicture(const DrawnLines& lines, LinesPart part, Units units, const Eigen::Vector2d& room, double zoom) {
    if (!(room.x() > 0.0) || !(room.y() > 0.0) || !(zoom > 0.0))
        throw std::invalid_argument("linesPicture: room and zoom must be positive");
    Layout layout(lines, room, zoom);
    LinesPicture picture = part == LinesPart::Whole ? layout.whole() : layout.alone(part);
    LinesPen pen(picture.sheet.items);
    LinesParts parts(lines, units, pen);
    if (picture.side) {
        parts.profile(*picture.side);
        parts.stationNames(*picture.side, picture.side->at(0, lines.low).y() + labelRow - 2.0);
    }
    if (picture.above) {
        parts.halfBreadths(*picture.above);
        if (part == LinesPart::HalfBreadths) {
            LinesView other = *picture.above;
            other.up = -1.0;
            parts.diagonals(other);
            parts.stationNames(other, other.at(0, lines.far).y() + labelRow - 2.0);
        }
    }
    if (picture.end)
        parts.bodyPlan(*picture.end);
    return picture;
}

} // namespace sheerlay::core
