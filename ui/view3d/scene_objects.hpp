#pragma once

#include "ui/scene/triangle_mesh.hpp"

#include <QColor>
#include <Quantity_Color.hxx>

#include <AIS_InteractiveObject.hxx>
#include <Graphic3d_AspectLine3d.hxx>

#include <Eigen/Core>

#include <vector>

namespace sheerlay::ui {

/// sRGB colour of the palette for OpenCASCADE, which reckons in linear light.
[[nodiscard]] Quantity_Color toOcct(const QColor& colour);

/// A closed mesh with a colour, and optionally thin lines on it. Pickable as a whole.
class MeshObject : public AIS_InteractiveObject {
    DEFINE_STANDARD_RTTI_INLINE(MeshObject, AIS_InteractiveObject)
public:
    /// How finely it is drawn; a display mode.
    enum class Detail { Fine = 0, Coarse = 2 };

    /// What is drawn; both must outlive the object.
    struct Shape {
        const TriangleMesh& mesh;                 ///< closed
        const std::vector<Eigen::Vector3d>& loop; ///< a line on it, may be empty
    };
    MeshObject(const Shape& fine, const Shape& coarse, const QColor& colour, const QColor& loopColour);

    /// Changes the colour without computing anything anew.
    void paint(const QColor& colour);
    /// How often the presentation was built: stepping through the strips must not raise it.
    [[nodiscard]] int computed() const noexcept { return m_computed; }

private:
    void Compute(const Handle(PrsMgr_PresentationManager) & manager,
                 const Handle(Prs3d_Presentation) & prs,
                 Standard_Integer mode) override;
    void ComputeSelection(const Handle(SelectMgr_Selection) & selection, Standard_Integer mode) override;
    [[nodiscard]] Standard_Boolean AcceptDisplayMode(Standard_Integer mode) const override {
        return mode <= static_cast<Standard_Integer>(Detail::Coarse);
    }

    Shape m_fine, m_coarse;
    Handle(Graphic3d_AspectLine3d) m_loopAspect;
    int m_computed = 0;
};

/// Polylines in one colour; not pickable.
class LineObject : public AIS_InteractiveObject {
    DEFINE_STANDARD_RTTI_INLINE(LineObject, AIS_InteractiveObject)
public:
    LineObject(std::vector<std::vector<Eigen::Vector3d>> lines, const QColor& colour, double width);

    /// Changes colour and width without computing anything anew.
    void paint(const QColor& colour, double width);
    [[nodiscard]] int computed() const noexcept { return m_computed; }

private:
    void Compute(const Handle(PrsMgr_PresentationManager) & manager,
                 const Handle(Prs3d_Presentation) & prs,
                 Standard_Integer mode) override;
    void ComputeSelection(const Handle(SelectMgr_Selection) &, Standard_Integer) override {}

    std::vector<std::vector<Eigen::Vector3d>> m_lines;
    Handle(Graphic3d_AspectLine3d) m_aspect;
    int m_computed = 0;
};

} // namespace sheerlay::ui
