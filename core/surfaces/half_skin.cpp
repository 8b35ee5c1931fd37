#include "core/surfaces/half_skin.hpp"

#include "core/surfaces/half_mesh.hpp"
#include "core/surfaces/skin_faces.hpp"
#include "core/surfaces/skin_rim.hpp"
#include "core/units/number_text.hpp"
#include "geometry/mesh_sections.hpp"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <map>

namespace sheerlay::core {
namespace {

using Eigen::Vector3d;

constexpr double onCentre = 1e-5; // of the boat's length: 0.05 mm on 5 m
constexpr double speck = 1e-4;    // of the length: a rim shorter than this is a flaw of the triangles

std::string placeOf(const Vector3d& p) {
    return numberText(p.x(), 0) + " mm from the bow, " + numberText(p.y(), 0) +
           " mm from the centreplane, height " + numberText(p.z(), 0) + " mm";
}

class SkinFinder {
public:
    SkinFinder(const geometry::GivenFaces& given,
               const BoatAxes& axes,
               const std::vector<std::size_t>& faces,
               double siding)
        : m_given(given), m_faces(faces), m_siding(siding) {
        for (Vector3d& p : m_given.mesh.points) {
            p = axes.inBoat(p);
            m_length = std::max(m_length, p.x());
        }
    }

    Expected<HalfSkin, LengthError> skin() {
        if (std::ranges::all_of(m_given.faces, &geometry::GivenFace::flat))
            return refuse("nothing but flat faces",
                          "a hull's surfaces, round somewhere; this is a box, or a drawing of one");
        if (auto problem = takeFaces())
            return unexpected(std::move(*problem));
        const double snap = onCentre * m_length;
        for (Vector3d& p : m_taken.points)
            p.y() -= m_siding;
        m_skin.mesh = halfOf(m_taken, snap);
        for (Vector3d& p : m_skin.mesh.points)
            p.y() += m_siding;
        if (m_skin.mesh.triangles.empty())
            return refuse("no face outside the centreplane", "the faces of a half hull");
        if (auto problem = checkPieces())
            return unexpected(std::move(*problem));
        const auto rims = longRims();
        if (rims.empty())
            return refuse("a closed skin with no sheer: it ends nowhere",
                          "a hull open at the sheer, or its deck as a face of its own");
        for (std::size_t i = 1; i < rims.size(); ++i)
            if (auto problem = hole(rims[i]))
                return unexpected(std::move(*problem));
        auto rim = splitRim(rims.front(), m_length);
        if (!rim)
            return unexpected(rim.error());
        m_skin.sheer = std::move(rim->sheer);
        m_skin.lower = std::move(rim->lower);
        m_skin.bow = rim->bow;
        m_skin.stern = rim->stern;
        m_skin.said.insert(m_skin.said.end(), rim->said.begin(), rim->said.end());
        return std::move(m_skin);
    }

private:
    static Unexpected<LengthError> refuse(std::string found, std::string would) {
        return {LengthError{std::move(found), std::move(would)}};
    }

    /// Takes the faces that are skin and tells which are not.
    std::optional<LengthError> takeFaces() {
        std::vector<bool> take(m_given.faces.size(), m_faces.empty());
        for (const std::size_t face : m_faces) {
            if (face >= take.size())
                return LengthError{"face " + std::to_string(face + 1) + " where the file has " +
                                       std::to_string(take.size()),
                                   "numbers of faces as they stand in the file, from 1"};
            take[face] = true;
        }
        if (m_faces.empty()) {
            const std::vector<FaceRole> roles = faceRoles(m_given);
            for (const auto& [role, words] :
                 {std::pair{FaceRole::Deck, "deck"},
                  std::pair{FaceRole::Transom, "transom"},
                  std::pair{FaceRole::InCentreplane, "lying in the centreplane"}}) {
                std::vector<std::size_t> out;
                for (std::size_t i = 0; i < roles.size(); ++i)
                    if (roles[i] == role) {
                        take[i] = false;
                        out.push_back(i);
                    }
                if (!out.empty())
                    m_skin.said.push_back("Left out as " + std::string(words) + ": " + faceList(out) +
                                          "; --take \"faces = …\" names those that count.");
            }
        }
        const auto taken = std::ranges::count(take, true);
        m_skin.said.push_back(std::to_string(taken) + " of " + std::to_string(take.size()) +
                              (take.size() == 1 ? " face" : " faces") + " in the file " +
                              (taken == 1 ? "is" : "are") + " taken as the hull's skin.");
        m_taken.points = m_given.mesh.points;
        for (std::size_t k = 0; k < m_given.mesh.triangles.size(); ++k)
            if (take[static_cast<std::size_t>(m_given.faceOf[k])])
                m_taken.triangles.push_back(m_given.mesh.triangles[k]);
        if (m_taken.triangles.empty())
            return LengthError{"no face left that is skin",
                               "--take \"faces = 1, 3\" with the numbers of the hull's faces"};
        return std::nullopt;
    }

    /// One piece; where there are several, how far they stand apart.
    std::optional<LengthError> checkPieces() {
        const std::vector<int> pieces = geometry::piecesOf(m_skin.mesh);
        const int count = *std::ranges::max_element(pieces) + 1;
        if (count == 1)
            return std::nullopt;
        std::vector<double> areas(static_cast<std::size_t>(count), 0.0);
        std::vector<geometry::Mesh> parts(static_cast<std::size_t>(count));
        for (std::size_t k = 0; k < pieces.size(); ++k) {
            const auto& t = m_skin.mesh.triangles[k];
            const auto piece = static_cast<std::size_t>(pieces[k]);
            areas[piece] += (at(t[1]) - at(t[0])).cross(at(t[2]) - at(t[0])).norm() / 2;
            parts[piece].triangles.push_back(t);
        }
        const auto largest = static_cast<std::size_t>(std::ranges::max_element(areas) - areas.begin());
        areas[largest] = 0.0;
        const auto second = static_cast<std::size_t>(std::ranges::max_element(areas) - areas.begin());
        parts[largest].points = parts[second].points = m_skin.mesh.points;
        return apart(parts[largest], parts[second], count);
    }

    /// How two pieces stand to each other along their edges.
    LengthError apart(const geometry::Mesh& one, const geometry::Mesh& other, int count) const {
        std::vector<int> edge;
        for (const auto& rim : geometry::rimsOf(one))
            edge.insert(edge.end(), rim.begin(), rim.end());
        double nearest = 1e300;
        double widest = 0.0;
        Vector3d where = Vector3d::Zero();
        Vector3d whereWidest = Vector3d::Zero();
        std::vector<std::pair<double, int>> gaps;
        for (const auto& rim : geometry::rimsOf(other))
            for (std::size_t i = 0; i < rim.size(); i += 1 + rim.size() / 400) {
                double near = 1e300;
                for (const int e : edge)
                    near = std::min(near, (at(e) - at(rim[i])).norm());
                gaps.emplace_back(near, rim[i]);
                if (near < nearest) {
                    nearest = near;
                    where = at(rim[i]);
                }
            }
        // the side that faces the other piece lies nearer than half as far again as the nearest place, or 10
        // mm
        for (const auto& [near, i] : gaps)
            if (near <= std::max(10.0, 1.5 * nearest) && near > widest) {
                widest = near;
                whereWidest = at(i);
            }
        if (nearest > 1e299)
            return {std::to_string(count) + " pieces of skin, one of them closed",
                    "the hull's skin alone, in one piece"};
        return {std::to_string(count) + " pieces of skin that do not meet: " + numberText(nearest, 2) +
                    " mm apart at " + placeOf(where) + ", " + numberText(widest, 2) + " mm at " +
                    placeOf(whereWidest),
                "faces whose edges meet within " + numberText(m_given.joinedWithin, 2) +
                    " mm; or --take \"faces = 1, 3\" where a piece is not skin"};
    }

    /// Rims that are no flaws of the triangles, the longest first.
    std::vector<std::vector<Vector3d>> longRims() const {
        std::vector<std::vector<Vector3d>> rims;
        std::vector<std::pair<double, std::size_t>> lengths;
        for (const auto& rim : geometry::rimsOf(m_skin.mesh)) {
            std::vector<Vector3d> line;
            double length = 0.0;
            for (const int i : rim) {
                if (!line.empty())
                    length += (at(i) - line.back()).norm();
                line.push_back(at(i));
            }
            if (length < speck * m_length)
                continue;
            lengths.emplace_back(-length, rims.size());
            rims.push_back(std::move(line));
        }
        std::ranges::sort(lengths);
        std::vector<std::vector<Vector3d>> sorted;
        for (const auto& entry : lengths)
            sorted.push_back(std::move(rims[entry.second]));
        return sorted;
    }

    static std::optional<LengthError> hole(const std::vector<Vector3d>& rim) {
        Vector3d low = rim.front();
        Vector3d high = rim.front();
        for (const Vector3d& p : rim) {
            low = low.cwiseMin(p);
            high = high.cwiseMax(p);
        }
        return LengthError{
            "a hole in the skin, " + numberText((high - low).x(), 1) + " mm along the boat and " +
                numberText(std::hypot((high - low).y(), (high - low).z()), 1) + " mm across, at " +
                placeOf((low + high) / 2),
            "a skin without holes: the missing face added, or its neighbours' edges made to meet"};
    }

    [[nodiscard]] const Vector3d& at(int i) const { return m_skin.mesh.points[static_cast<std::size_t>(i)]; }

    geometry::GivenFaces m_given;
    const std::vector<std::size_t>& m_faces;
    double m_siding = 0.0;
    double m_length = 0.0;
    geometry::Mesh m_taken;
    HalfSkin m_skin;
};

} // namespace

Expected<HalfSkin, LengthError> halfSkin(const geometry::GivenFaces& given,
                                         const BoatAxes& axes,
                                         const std::vector<std::size_t>& faces,
                                         double siding) {
    return SkinFinder(given, axes, faces, siding).skin();
}

} // namespace sheerlay::core
