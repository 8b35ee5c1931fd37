#pragma once

#include <BRepBuilderAPI_Transform.hxx>
#include <BRep_Builder.hxx>
#include <IGESControl_Controller.hxx>
#include <IGESControl_Writer.hxx>
#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <STEPControl_Controller.hxx>
#include <STEPControl_Writer.hxx>
#include <TopoDS_Compound.hxx>
#include <TopoDS_Shape.hxx>
#include <gp_Trsf.hxx>

#include <stdexcept>
#include <string>
#include <vector>

/// Files as a designer's program would write them, through OpenCASCADE's own writers.
namespace sheerlay::test {

/// @param unit  "MM", "INCH", "M" as OpenCASCADE names them
inline void writeSurfaces(const std::vector<TopoDS_Shape>& shapes,
                          const std::string& path,
                          const std::string& unit = "MM") {
    Message::DefaultMessenger()->ChangePrinters().Clear();
    STEPControl_Controller::Init();
    Interface_Static::SetCVal("write.step.unit", unit.c_str());
    STEPControl_Writer writer;
    for (const TopoDS_Shape& shape : shapes)
        writer.Transfer(shape, STEPControl_AsIs);
    const bool done = writer.Write(path.c_str()) == IFSelect_RetDone;
    Interface_Static::SetCVal("write.step.unit", "MM");
    if (!done)
        throw std::runtime_error("OpenCASCADE can't write " + path);
}

inline void
writeIges(const std::vector<TopoDS_Shape>& shapes, const std::string& path, const std::string& unit = "MM") {
    Message::DefaultMessenger()->ChangePrinters().Clear();
    IGESControl_Controller::Init();
    IGESControl_Writer writer(unit.c_str(), 0);
    for (const TopoDS_Shape& shape : shapes)
        writer.AddShape(shape);
    writer.ComputeModel();
    if (!writer.Write(path.c_str()))
        throw std::runtime_error("OpenCASCADE can't write " + path);
}

[[nodiscard]] inline TopoDS_Shape moved(const TopoDS_Shape& shape, const gp_Trsf& move) {
    return BRepBuilderAPI_Transform(shape, move, true).Shape();
}

} // namespace sheerlay::test
