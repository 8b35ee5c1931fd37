#include "core/surfaces/read_surface.hpp"

#include "core/hull/hull.hpp"
#include "core/project/project_file.hpp"
#include "core/surfaces/boat_axes.hpp"
#include "core/surfaces/half_skin.hpp"
#include "core/surfaces/skin_deviation.hpp"
#include "core/surfaces/skin_table.hpp"
#include "core/surfaces/surface_scale.hpp"
#include "core/units/number_text.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlay::core {
namespace {

using Eigen::Vector3d;
using Messages = std::vector<FileMessage>;

constexpr double mostDeviation = 3.0;  // mm, as a loft may miss its table at most
constexpr double nearDatum = 1.0;      // mm: a file whose bow stands at 0 keeps its x
constexpr double sameBeam = 0.02;      // of the beam the builder says
constexpr double writtenMm = 0.01;     // mm: the table's last digit, far finer than anyone builds
constexpr double writtenInch = 0.0004; // in

class Reader {
public:
    Reader(const geometry::GivenFaces& given, const TableCorrections& corrections, const std::string& file)
        : m_given(given), m_said(corrections), m_file(file) {}

    Expected<ReadTable, Messages> read(const std::string& name) {
        const auto scale = surfaceScale(m_given, m_said);
        if (!scale)
            return refuse("the size", scale.error());
        for (Vector3d& p : m_given.mesh.points)
            p *= scale->factor;
        m_given.joinedWithin *= scale->factor;
        m_given.chord *= scale->factor;
        say(scale->said);
        auto axes = boatAxes(m_given.mesh, m_said);
        if (!axes)
            return refuse("the faces", axes.error());
        axes = onDatum(*axes);
        say(axes->said);
        const auto siding = saidLength(m_said.halfSiding);
        if (!siding || *siding < 0.0)
            return refuse("half-siding", {*m_said.halfSiding, "a length such as half-siding = 3/8 in"});
        const auto skin = halfSkin(m_given, *axes, m_said.faces, *siding);
        if (!skin)
            return refuse("the faces", skin.error());
        say(skin->said);
        m_made.notes.push_back("Edges of faces within " + numberText(m_given.joinedWithin, 2) +
                               " mm of each other were joined.");
        if (auto problem = checkBeam(*skin))
            return refuse("beam", *problem);
        auto table = skinTable(*skin, scale->units);
        if (!table)
            return refuse("the sections", table.error());
        table->halfSiding = *siding;
        project(std::move(*table), scale->units, name);
        return lofted(*skin);
    }

private:
    Unexpected<Messages> refuse(const std::string& where, const LengthError& error) const {
        return {Messages{{m_file, 0, where, error.found, error.would}}};
    }
    void say(const std::vector<std::string>& sentences) {
        m_made.notes.insert(m_made.notes.end(), sentences.begin(), sentences.end());
    }

    /// A length as the builder says it: 0 unsaid, none where it can't be read.
    std::optional<double> saidLength(const std::optional<std::string>& said) const {
        if (!said)
            return 0.0;
        Notation notation;
        notation.plain = m_said.units.value_or(PlainUnit::Millimetres);
        const auto read = readCell(*said, notation);
        return read ? std::optional(read->millimetres) : std::nullopt;
    }

    /// A file that has its bow at 0 and its base below the keel keeps both, so that round figures stay round.
    BoatAxes onDatum(BoatAxes axes) const {
        if (std::abs(axes.foremost) <= nearDatum)
            axes.foremost = 0.0;
        return axes;
    }

    std::optional<LengthError> checkBeam(const HalfSkin& skin) const {
        if (!m_said.beam)
            return std::nullopt;
        const auto said = saidLength(m_said.beam);
        if (!said || *said <= 0.0)
            return LengthError{"beam = " + *m_said.beam, "a length, such as beam = 33 in"};
        double half = 0.0;
        for (const Vector3d& p : skin.mesh.points)
            half = std::max(half, p.y());
        if (std::abs(2 * half - *said) <= sameBeam * *said)
            return std::nullopt;
        return LengthError{
            "a hull " + numberText(2 * half, 0) + " mm wide where you say " + numberText(*said, 0) + " mm",
            "the true width of the widest section, or another unit of the file: --take \"units = …\""};
    }

    void project(HullTable table, Units units, const std::string& name) {
        Project& project = m_made.project;
        project.name = name;
        project.units = units;
        project.hull = std::move(table);
        project.hull.roundedTo = units == Units::Inches ? writtenInch * mmPerInch : writtenMm;
        project.hull.drawnTo = m_said.drawnTo;
        project.moulds.spacing = units == Units::Inches ? 12 * mmPerInch : 300.0;
    }

    /// Lofts the project as anyone who opens it will, and measures that against the given surface.
    Expected<ReadTable, Messages> lofted(const HalfSkin& skin) {
        auto made = asProjectText(m_made, {}, m_file);
        if (!made)
            return unexpected(made.error());
        const auto back = parseProject(made->projectText, m_file);
        if (!back)
            return unexpected(back.error());
        const auto hull = loft(back->project);
        if (!hull)
            return refuse("the loft",
                          {"a hull that can't be lofted: " + hull.error().text,
                           "a smooth hull with stems or flat transoms"});
        const SkinDeviation d = skinDeviation(skin, *hull);
        const std::string place = numberText(d.where.x(), 0) + " mm from the bow, " +
                                  numberText(d.where.y(), 0) + " mm from the centreplane, height " +
                                  numberText(d.where.z(), 0) + " mm";
        if (!(std::abs(d.most) <= mostDeviation))
            return refuse(
                "the loft",
                {"a surface that the loft leaves by " + numberText(std::abs(d.most), 1) + " mm at " + place +
                     " (" + numberText(d.rms, 2) + " mm rms)",
                 "a hull without chines, knuckles or bluff ends, which one smooth surface can't follow"});
        made->notes.push_back("The loft lies within " + numberText(std::abs(d.most), 3) +
                              " mm of the given surface (" + numberText(d.rms, 3) + " mm rms over " +
                              std::to_string(d.points) + " points), farthest " + place +
                              "; its sheer within " + numberText(d.sheer, 3) + " mm, stem and keel within " +
                              numberText(d.lower, 3) + " mm.");
        return std::move(made).value();
    }

    geometry::GivenFaces m_given;
    const TableCorrections& m_said;
    const std::string& m_file;
    TableProject m_made;
};

} // namespace

Expected<ReadTable, std::vector<FileMessage>> readSurface(const geometry::GivenFaces& given,
                                                          const std::string& file,
                                                          const std::string& name,
                                                          const TableCorrections& corrections) {
    if (given.mesh.triangles.empty())
        return unexpected(Messages{{file, 0, "the faces", "no face", "a file with the hull's faces"}});
    return Reader(given, corrections, file).read(name);
}

} // namespace sheerlay::core
