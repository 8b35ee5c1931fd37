#include "ui/view3d/scene_objects.hpp"

#include "ui/scene/palette.hpp"

#include <Graphic3d_ArrayOfPolylines.hxx>
#include <Graphic3d_ArrayOfTriangles.hxx>
#include <Graphic3d_AspectFillArea3d.hxx>
#include <Graphic3d_Group.hxx>
#include <Poly_Triangulation.hxx>
#include <Prs3d_Drawer.hxx>
#include <Prs3d_ShadingAspect.hxx>
#include <Select3D_SensitiveTriangulation.hxx>
#include <SelectMgr_EntityOwner.hxx>
#include <SelectMgr_Selection.hxx>
#include <TopLoc_Location.hxx>

namespace sheerlay::ui {
namespace {

constexpr Standard_Integer outlineMode = 1;

gp_Pnt toPnt(const Eigen::Vector3d& p) {
    return {p.x(), p.y(), p.z()};
}

Handle(Graphic3d_ArrayOfPolylines) polylines(const std::vector<std::vector<Eigen::Vector3d>>& lines) {
    int vertices = 0;
    int bounds = 0;
    for (const auto& line : lines) {
        if (line.size() < 2)
            continue;
        vertices += static_cast<int>(line.size());
        ++bounds;
    }
    if (bounds == 0)
        return {};
    Handle(Graphic3d_ArrayOfPolylines) array = new Graphic3d_ArrayOfPolylines(vertices, bounds);
    for (const auto& line : lines) {
        if (line.size() < 2)
            continue;
        array->AddBound(static_cast<int>(line.size()));
        for (const Eigen::Vector3d& p : line)
            array->AddVertex(toPnt(p));
    }
    return array;
}

/// Dull and light, as paper models are: shape by shading, no gloss that could be read as a colour.
Graphic3d_MaterialAspect matt() {
    Graphic3d_MaterialAspect material(Graphic3d_NOM_UserDefined);
    material.SetAmbientColor(Quantity_Color(0.73, 0.73, 0.73, Quantity_TOC_sRGB));
    material.SetDiffuseColor(Quantity_Color(0.35, 0.35, 0.35, Quantity_TOC_sRGB));
    material.SetSpecularColor(Quantity_Color(0.0, 0.0, 0.0, Quantity_TOC_RGB));
    material.SetEmissiveColor(Quantity_Color(0.0, 0.0, 0.0, Quantity_TOC_RGB));
    material.SetMaterialType(Graphic3d_MATERIAL_ASPECT);
    return material;
}

} // namespace

Quantity_Color toOcct(const QColor& colour) {
    return {colour.redF(), colour.greenF(), colour.blueF(), Quantity_TOC_sRGB};
}

MeshObject::MeshObject(const Shape& fine, const Shape& coarse, const QColor& colour, const QColor& loopColour)
    : m_fine(fine), m_coarse(coarse),
      m_loopAspect(new Graphic3d_AspectLine3d(toOcct(loopColour), Aspect_TOL_SOLID, 1.0)) {
    myDrawer->SetShadingAspect(new Prs3d_ShadingAspect());
    const Handle(Prs3d_ShadingAspect)& aspect = myDrawer->ShadingAspect();
    aspect->SetMaterial(matt());
    aspect->SetColor(toOcct(colour));
    aspect->Aspect()->SetShadingModel(Graphic3d_TOSM_VERTEX);
    aspect->Aspect()->SetFaceCulling(
        Graphic3d_TypeOfBackfacingModel_Auto); // draws both sides where it is cut
    // under the pointer a strip gets its outline drawn boldly, as on the map; its colour keeps its meaning
    const Handle(Prs3d_Drawer) marked = new Prs3d_Drawer();
    marked->SetDisplayMode(outlineMode);
    marked->SetMethod(Aspect_TOHM_COLOR);
    marked->SetColor(toOcct(QColor::fromRgb(palette::cedar)));
    SetDynamicHilightAttributes(marked);
}

void MeshObject::paint(const QColor& colour) {
    myDrawer->ShadingAspect()->SetColor(toOcct(colour));
    SynchronizeAspects();
}

void MeshObject::Compute(const Handle(PrsMgr_PresentationManager) &,
                         const Handle(Prs3d_Presentation) & prs,
                         Standard_Integer mode) {
    if (mode == outlineMode) {
        if (const Handle(Graphic3d_ArrayOfPolylines) lines = polylines({m_fine.loop}); !lines.IsNull()) {
            const Handle(Graphic3d_Group) group = prs->NewGroup();
            group->SetGroupPrimitivesAspect(
                new Graphic3d_AspectLine3d(toOcct(QColor::fromRgb(palette::cedar)), Aspect_TOL_SOLID, 3.0));
            group->AddPrimitiveArray(lines);
        }
        return;
    }
    const Shape& shape = mode == static_cast<Standard_Integer>(Detail::Coarse) ? m_coarse : m_fine;
    const TriangleMesh& mesh = shape.mesh;
    if (mesh.triangles.empty())
        return;
    ++m_computed;
    const int points = static_cast<int>(mesh.points.size());
    const int triangles = static_cast<int>(mesh.triangles.size());
    Handle(Graphic3d_ArrayOfTriangles) array =
        new Graphic3d_ArrayOfTriangles(points, triangles * 3, Graphic3d_ArrayFlags_VertexNormal);
    for (std::size_t i = 0; i < mesh.points.size(); ++i) {
        const Eigen::Vector3f& p = mesh.points[i];
        const Eigen::Vector3f& n = mesh.normals[i];
        array->AddVertex(p.x(), p.y(), p.z(), n.x(), n.y(), n.z());
    }
    for (const auto& t : mesh.triangles)
        array->AddEdges(t[0] + 1, t[1] + 1, t[2] + 1);
    const Handle(Graphic3d_Group) group = prs->NewGroup();
    group->SetGroupPrimitivesAspect(myDrawer->ShadingAspect()->Aspect());
    group->AddPrimitiveArray(array);
    group->SetClosed(true); // its back faces are never seen, so they need not be drawn
    if (const Handle(Graphic3d_ArrayOfPolylines) lines = polylines({shape.loop}); !lines.IsNull()) {
        const Handle(Graphic3d_Group) seams = prs->NewGroup();
        seams->SetGroupPrimitivesAspect(m_loopAspect);
        seams->AddPrimitiveArray(lines);
    }
}

void MeshObject::ComputeSelection(const Handle(SelectMgr_Selection) & selection, Standard_Integer mode) {
    const TriangleMesh& mesh = m_fine.mesh;
    if (mode != 0 || mesh.triangles.empty())
        return;
    Handle(Poly_Triangulation) triangulation = new Poly_Triangulation(
        static_cast<int>(mesh.points.size()), static_cast<int>(mesh.triangles.size()), false);
    for (std::size_t i = 0; i < mesh.points.size(); ++i) {
        const Eigen::Vector3d p = mesh.points[i].cast<double>();
        triangulation->SetNode(static_cast<int>(i) + 1, toPnt(p));
    }
    for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
        const auto& t = mesh.triangles[i];
        triangulation->SetTriangle(static_cast<int>(i) + 1, Poly_Triangle(t[0] + 1, t[1] + 1, t[2] + 1));
    }
    const Handle(SelectMgr_EntityOwner) owner = new SelectMgr_EntityOwner(this, 5);
    selection->Add(new Select3D_SensitiveTriangulation(owner, triangulation, TopLoc_Location(), true));
}

LineObject::LineObject(std::vector<std::vector<Eigen::Vector3d>> lines, const QColor& colour, double width)
    : m_lines(std::move(lines)),
      m_aspect(new Graphic3d_AspectLine3d(toOcct(colour), Aspect_TOL_SOLID, width)) {}

void LineObject::paint(const QColor& colour, double width) {
    m_aspect->SetColor(toOcct(colour));
    m_aspect->SetWidth(static_cast<Standard_ShortReal>(width));
    SynchronizeAspects();
}

void LineObject::Compute(const Handle(PrsMgr_PresentationManager) &,
                         const Handle(Prs3d_Presentation) & prs,
                         Standard_Integer mode) {
    if (mode != 0)
        return;
    const Handle(Graphic3d_ArrayOfPolylines) array = polylines(m_lines);
    if (array.IsNull())
        return;
    ++m_computed;
    const Handle(Graphic3d_Group) group = prs->NewGroup();
    group->SetGroupPrimitivesAspect(m_aspect);
    group->AddPrimitiveArray(array);
}

} // namespace sheerlay::ui
