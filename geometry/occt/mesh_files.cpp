#include "geometry/occt/mesh_files.hpp"

#include "geometry/occt/make_shape.hpp"

#include <Quantity_Color.hxx>

#include <BRepMesh_IncrementalMesh.hxx>
#include <BRep_Builder.hxx>
#include <BRep_Tool.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <Message_ProgressRange.hxx>
#include <OSD_Path.hxx>
#include <Poly_Triangulation.hxx>
#include <RWGltf_CafWriter.hxx>
#include <RWStl.hxx>
#include <Standard_Failure.hxx>
#include <TColStd_IndexedDataMapOfStringString.hxx>
#include <TDataStd_Name.hxx>
#include <TDocStd_Document.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <XCAFApp_Application.hxx>
#include <XCAFDoc_ColorTool.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>

namespace sheerlay::geometry {
namespace {

constexpr double meshAngle = 0.15; // rad between neighbouring triangles of a hull

std::string wordsOf(const Standard_Failure& failure) {
    const char* text = failure.GetMessageString();
    return text != nullptr && *text != 0 ? text : "no reason given";
}

Handle(Poly_Triangulation) triangulationOf(const Mesh& mesh) {
    Handle(Poly_Triangulation) made = new Poly_Triangulation(
        static_cast<int>(mesh.points.size()), static_cast<int>(mesh.triangles.size()), false);
    int i = 0;
    for (const Eigen::Vector3d& p : mesh.points)
        made->SetNode(++i, gp_Pnt(p.x(), p.y(), p.z()));
    i = 0;
    for (const auto& t : mesh.triangles)
        made->SetTriangle(++i, Poly_Triangle(t[0] + 1, t[1] + 1, t[2] + 1));
    return made;
}

/// A document of OpenCASCADE's that is closed again, or its shapes stay in memory.
class Document {
public:
    Document() : m_application(XCAFApp_Application::GetApplication()) {
        m_application->NewDocument("BinXCAF", m_document);
    }
    Document(const Document&) = delete;
    Document& operator=(const Document&) = delete;
    ~Document() { m_application->Close(m_document); }

    [[nodiscard]] const Handle(TDocStd_Document) & get() const { return m_document; }

private:
    Handle(XCAFApp_Application) m_application;
    Handle(TDocStd_Document) m_document;
};

} // namespace

Expected<Mesh, std::string> faceMesh(const TrimmedFace& face, double tolerance) {
    try {
        const TopoDS_Shape shape = makeShape({"The hull's surface", {}, face});
        const BRepMesh_IncrementalMesh mesher(shape, tolerance, false, meshAngle, false);
        TopLoc_Location place;
        const Handle(Poly_Triangulation) found = BRep_Tool::Triangulation(TopoDS::Face(shape), place);
        if (found.IsNull())
            return unexpected(std::string("The hull's surface can't be turned into triangles."));
        Mesh mesh;
        for (int i = 1; i <= found->NbNodes(); ++i) {
            const gp_Pnt p = found->Node(i);
            mesh.points.emplace_back(p.X(), p.Y(), p.Z());
        }
        const bool reversed = shape.Orientation() == TopAbs_REVERSED;
        for (int i = 1; i <= found->NbTriangles(); ++i) {
            int a = 0;
            int b = 0;
            int c = 0;
            found->Triangle(i).Get(a, b, c);
            if (reversed)
                std::swap(b, c);
            mesh.triangles.push_back({a - 1, b - 1, c - 1});
        }
        return mesh;
    } catch (const Standard_Failure& failure) {
        return unexpected("The hull's surface can't be turned into triangles: " + wordsOf(failure) + ".");
    } catch (const std::exception& failure) {
        return unexpected(std::string(failure.what()) + ".");
    }
}

std::optional<std::string> writeGlb(const std::vector<NamedMesh>& meshes, const std::string& path) {
    try {
        Message::DefaultMessenger()->ChangePrinters().Clear();
        const Document document;
        const Handle(XCAFDoc_ShapeTool) shapes = XCAFDoc_DocumentTool::ShapeTool(document.get()->Main());
        const Handle(XCAFDoc_ColorTool) colours = XCAFDoc_DocumentTool::ColorTool(document.get()->Main());
        for (const NamedMesh& named : meshes) {
            TopoDS_Face face;
            const BRep_Builder builder;
            builder.MakeFace(face, triangulationOf(named.mesh));
            const TDF_Label label = shapes->AddShape(face, false);
            TDataStd_Name::Set(label, TCollection_ExtendedString(named.name.c_str(), true));
            const Colour& c = named.colour;
            colours->SetColor(
                label, Quantity_Color(c.red, c.green, c.blue, Quantity_TOC_sRGB), XCAFDoc_ColorSurf);
        }
        RWGltf_CafWriter writer(path.c_str(), true);
        writer.ChangeCoordinateSystemConverter().SetInputLengthUnit(0.001);
        writer.ChangeCoordinateSystemConverter().SetInputCoordinateSystem(RWMesh_CoordinateSystem_Zup);
        if (writer.Perform(document.get(), TColStd_IndexedDataMapOfStringString(), Message_ProgressRange()))
            return std::nullopt;
        return path + ": it can't be written. A folder that you may write to would do.";
    } catch (const Standard_Failure& failure) {
        return "The glTF file can't be made: " + wordsOf(failure) + ".";
    }
}

std::optional<std::string> writeStl(const Mesh& mesh, const std::string& path) {
    try {
        if (RWStl::WriteBinary(triangulationOf(mesh), OSD_Path(path.c_str()), Message_ProgressRange()))
            return std::nullopt;
        return path + ": it can't be written. A folder that you may write to would do.";
    } catch (const Standard_Failure& failure) {
        return "The STL file can't be made: " + wordsOf(failure) + ".";
    }
}

} // namespace sheerlay::geometry
