#include "geometry/occt/surface_file.hpp"

#include "geometry/occt/face_triangles.hpp"
#include "geometry/occt/own_process.hpp"

#include <BRepBndLib.hxx>
#include <BRepBuilderAPI_Sewing.hxx>
#include <BRep_Builder.hxx>
#include <Bnd_Box.hxx>
#include <IFSelect_ReturnStatus.hxx>
#include <IGESControl_Controller.hxx>
#include <IGESControl_Reader.hxx>
#include <IGESData_GlobalSection.hxx>
#include <IGESData_IGESModel.hxx>
#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <STEPControl_Controller.hxx>
#include <STEPControl_Reader.hxx>
#include <Standard_Failure.hxx>
#include <TColStd_SequenceOfAsciiString.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS_Compound.hxx>

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <cstring>
#include <exception>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <optional>
#include <type_traits>
#include <utility>

namespace sheerlay::geometry {
namespace {

constexpr double joins = 2e-5; // of the size: 0.1 mm on a boat of 5 m
constexpr std::size_t largestFile = 256U << 20U;
constexpr unsigned longestRead = 600; // seconds

using Problem = SurfaceFileProblem;

/// What the file holds, mm, and how it counts.
struct Held {
    TopoDS_Shape shape;
    double unit = 1.0;
    std::string unitName = "millimetre";
};

struct NamedUnit {
    std::string_view name;
    double millimetres;
};
// "met" last of its kind: the others hold it
constexpr std::array<NamedUnit, 9> units{{{"millimet", 1.0},
                                          {"centimet", 10.0},
                                          {"decimet", 100.0},
                                          {"kilomet", 1e6},
                                          {"micromet", 1e-3},
                                          {"met", 1000.0},
                                          {"inch", 25.4},
                                          {"foot", 304.8},
                                          {"feet", 304.8}}};

std::optional<double> millimetresOf(std::string name) {
    std::ranges::transform(
        name, name.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    for (const NamedUnit& unit : units)
        if (name.find(unit.name) != std::string::npos)
            return unit.millimetres;
    return std::nullopt;
}

Problem unreadable(const std::string& kind) {
    return {"a " + kind + " file that can't be read as one",
            "the file exported anew by the program that made it"};
}

/// What the text of the file is by its first and last lines.
enum class Kind { Step, Iges };

Expected<Kind, Problem> kindOf(const std::string& path) {
    std::error_code ignored;
    std::ifstream stream(path, std::ios::binary);
    if (!stream || std::filesystem::is_directory(path, ignored))
        return unexpected(Problem{"no file that can be opened", "a STEP or IGES file that you may read"});
    const std::string text(std::istreambuf_iterator<char>(stream), {});
    if (text.empty())
        return unexpected(Problem{"an empty file", "a STEP or IGES file with the hull's faces"});
    if (text.size() > largestFile)
        return unexpected(Problem{"a file of more than 256 MB", "a file with the hull's faces alone"});
    const auto first = text.find_first_not_of(" \t\r\n\xEF\xBB\xBF");
    if (first != std::string::npos && std::string_view(text).substr(first).starts_with("ISO-10303-21")) {
        if (text.find("END-ISO-10303-21", first + 1) == std::string::npos)
            return unexpected(Problem{"a STEP file without its last line",
                                      "the whole file: this one was cut short on its way"});
        return Kind::Step;
    }
    // every line of an IGES file is 80 signs, the 73rd the letter of its section: S first, T last
    constexpr std::size_t letter = 72;
    const auto line = text.substr(0, text.find('\n'));
    if (line.size() > letter && line[letter] == 'S') {
        const auto end = text.find_last_not_of(" \r\n\t");
        const auto begin = text.rfind('\n', end) + 1;
        if (end == std::string::npos || end - begin < letter || text[begin + letter] != 'T')
            return unexpected(Problem{"an IGES file without its last line",
                                      "the whole file: this one was cut short on its way"});
        return Kind::Iges;
    }
    return unexpected(Problem{"neither STEP nor IGES by its first line",
                              "the hull's surfaces exported as STEP (.stp, .step) or IGES (.igs, .iges)"});
}

template <class Reader>
Expected<TopoDS_Shape, Problem>
transferred(Reader& reader, const std::string& path, const std::string& kind) {
    if (reader.ReadFile(path.c_str()) != IFSelect_RetDone)
        return unexpected(unreadable(kind));
    reader.TransferRoots();
    const TopoDS_Shape shape = reader.NbShapes() > 0 ? reader.OneShape() : TopoDS_Shape();
    if (shape.IsNull())
        return unexpected(Problem{"a " + kind + " file without any shape that can be used",
                                  "a file with the hull's faces"});
    return shape;
}

Expected<Held, Problem> step(const std::string& path) {
    STEPControl_Controller::Init();
    Interface_Static::SetCVal("xstep.cascade.unit", "MM");
    STEPControl_Reader reader;
    auto shape = transferred(reader, path, "STEP");
    if (!shape)
        return unexpected(shape.error());
    Held held{*shape};
    TColStd_SequenceOfAsciiString lengths;
    TColStd_SequenceOfAsciiString angles;
    TColStd_SequenceOfAsciiString solid;
    reader.FileUnits(lengths, angles, solid);
    if (!lengths.IsEmpty()) {
        held.unitName = lengths.First().ToCString();
        held.unit = millimetresOf(held.unitName).value_or(1.0);
    }
    return held;
}

Expected<Held, Problem> iges(const std::string& path) {
    IGESControl_Controller::Init();
    Interface_Static::SetCVal("xstep.cascade.unit", "MM");
    IGESControl_Reader reader;
    auto shape = transferred(reader, path, "IGES");
    if (!shape)
        return unexpected(shape.error());
    Held held{*shape};
    const IGESData_GlobalSection& global = reader.IGESModel()->GlobalSection();
    if (const double unit = global.UnitValue(); unit > 0.0 && std::isfinite(unit))
        held.unit = unit;
    if (const auto name = global.UnitName(); !name.IsNull())
        held.unitName = name->ToCString();
    return held;
}

int countOf(const TopoDS_Shape& shape, TopAbs_ShapeEnum kind) {
    int count = 0;
    for (TopExp_Explorer e(shape, kind); e.More(); e.Next())
        ++count;
    return count;
}

double sizeOf(const TopoDS_Shape& shape) {
    Bnd_Box box;
    BRepBndLib::AddOptimal(shape, box, false, false);
    return box.IsVoid() || box.IsOpen() ? 0.0 : std::sqrt(box.SquareExtent());
}

Expected<GivenFaces, Problem> facesOf(const Held& held) {
    GivenFaces given;
    given.unit = held.unit;
    given.unitName = held.unitName;
    given.solids = countOf(held.shape, TopAbs_SOLID);
    if (countOf(held.shape, TopAbs_FACE) == 0)
        return unexpected(
            Problem{"no face, only curves or points",
                    "the hull's surfaces, not its lines; lines as DXF are read with --sections"});
    const double size = sizeOf(held.shape);
    if (!(size > 0.0) || !std::isfinite(size))
        return unexpected(
            Problem{"faces without a size", "the hull's faces, bounded by its sheer and centreline"});
    given.joinedWithin = joins * size;
    BRepBuilderAPI_Sewing sewing(given.joinedWithin, true, true, true, true);
    for (TopExp_Explorer e(held.shape, TopAbs_FACE); e.More(); e.Next())
        sewing.Add(e.Current());
    sewing.Perform();
    if (sewing.SewedShape().IsNull() || !addTriangles(sewing.SewedShape(), size, given))
        return unexpected(Problem{"faces that can't be turned into triangles",
                                  "the file exported anew, every face bounded by its edges"});
    return given;
}

Expected<GivenFaces, Problem> readAs(Kind kind, const std::string& path) {
    try {
        Message::DefaultMessenger()->ChangePrinters().Clear();
        const auto held = kind == Kind::Step ? step(path) : iges(path);
        if (!held)
            return unexpected(held.error());
        return facesOf(*held);
    } catch (const Standard_Failure&) {
        return unexpected(unreadable(kind == Kind::Step ? "STEP" : "IGES"));
    } catch (const std::exception&) {
        return unexpected(unreadable(kind == Kind::Step ? "STEP" : "IGES"));
    }
}

/// Puts values into bytes, to be taken out in the same order by the same program.
class Packer {
public:
    template <class T> void value(const T& v) {
        static_assert(std::is_trivially_copyable_v<T>);
        m_bytes.append(reinterpret_cast<const char*>(&v), sizeof(T)); // NOLINT: bytes of a plain value
    }
    void text(const std::string& t) {
        value(t.size());
        m_bytes += t;
    }
    template <class T> void list(const std::vector<T>& values) {
        value(values.size());
        m_bytes.append(reinterpret_cast<const char*>(values.data()), values.size() * sizeof(T)); // NOLINT
    }
    [[nodiscard]] std::string bytes() && { return std::move(m_bytes); }

private:
    std::string m_bytes;
};

class Unpacker {
public:
    explicit Unpacker(const std::string& bytes) : m_rest(bytes) {}
    template <class T> T value() {
        T v{};
        std::memcpy(&v, m_rest.data(), sizeof(T));
        m_rest.remove_prefix(sizeof(T));
        return v;
    }
    std::string text() {
        const auto size = value<std::size_t>();
        std::string t(m_rest.substr(0, size));
        m_rest.remove_prefix(size);
        return t;
    }
    template <class T> std::vector<T> list() {
        std::vector<T> values(value<std::size_t>());
        std::memcpy(static_cast<void*>(values.data()), m_rest.data(), values.size() * sizeof(T));
        m_rest.remove_prefix(values.size() * sizeof(T));
        return values;
    }

private:
    std::string_view m_rest;
};

std::string packed(const Expected<GivenFaces, Problem>& read) {
    Packer packer;
    packer.value(read.has_value());
    if (!read) {
        packer.text(read.error().found);
        packer.text(read.error().would);
        return std::move(packer).bytes();
    }
    const GivenFaces& given = *read;
    packer.value(given.mesh.points.size());
    for (const Eigen::Vector3d& p : given.mesh.points)
        for (const double c : {p.x(), p.y(), p.z()})
            packer.value(c);
    packer.list(given.mesh.triangles);
    packer.list(given.faceOf);
    packer.list(given.faces);
    packer.value(given.unit);
    packer.text(given.unitName);
    packer.value(given.joinedWithin);
    packer.value(given.chord);
    packer.value(given.solids);
    return std::move(packer).bytes();
}

Expected<GivenFaces, Problem> unpacked(const std::string& bytes) {
    Unpacker unpacker(bytes);
    if (!unpacker.value<bool>()) {
        Problem problem{unpacker.text(), {}};
        problem.would = unpacker.text();
        return unexpected(std::move(problem));
    }
    GivenFaces given;
    given.mesh.points.resize(unpacker.value<std::size_t>());
    for (Eigen::Vector3d& p : given.mesh.points)
        for (int i = 0; i < 3; ++i)
            p[i] = unpacker.value<double>();
    given.mesh.triangles = unpacker.list<std::array<int, 3>>();
    given.faceOf = unpacker.list<int>();
    given.faces = unpacker.list<GivenFace>();
    given.unit = unpacker.value<double>();
    given.unitName = unpacker.text();
    given.joinedWithin = unpacker.value<double>();
    given.chord = unpacker.value<double>();
    given.solids = unpacker.value<int>();
    return given;
}

} // namespace

Expected<GivenFaces, SurfaceFileProblem> readSurfaceFile(const std::string& path, std::stop_token stop) {
    const auto kind = kindOf(path);
    if (!kind)
        return unexpected(kind.error());
    // a broken file can bring OpenCASCADE's readers down, or keep them for ever
    const auto bytes =
        inOwnProcess([&] { return packed(readAs(*kind, path)); }, longestRead, std::move(stop));
    if (!bytes)
        return unexpected(unreadable(*kind == Kind::Step ? "STEP" : "IGES"));
    return unpacked(*bytes);
}

} // namespace sheerlay::geometry
