#pragma once

#include <Quantity_Color.hxx>

#include <BRepCheck_Analyzer.hxx>
#include <BRepGProp.hxx>
#include <GProp_GProps.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <STEPCAFControl_Reader.hxx>
#include <TCollection_AsciiString.hxx>
#include <TDF_LabelSequence.hxx>
#include <TDataStd_Name.hxx>
#include <TDocStd_Document.hxx>
#include <TopExp_Explorer.hxx>
#include <TopoDS_Shape.hxx>
#include <XCAFApp_Application.hxx>
#include <XCAFDoc_ColorTool.hxx>
#include <XCAFDoc_DocumentTool.hxx>
#include <XCAFDoc_ShapeTool.hxx>

#include <optional>
#include <stdexcept>
#include <string>
#include <vector>

namespace sheerlay::test {

/// One thing of a STEP file, as OpenCASCADE's own reader sees it; mm.
struct StepThing {
    std::string name;
    bool valid = false;
    int solids = 0;
    int faces = 0;
    double volume = 0.0; ///< + when it faces outward
    double area = 0.0;
    std::optional<Quantity_Color> colour;
    TopoDS_Shape shape;
};

[[nodiscard]] inline int countOf(const TopoDS_Shape& shape, TopAbs_ShapeEnum kind) {
    int count = 0;
    for (TopExp_Explorer e(shape, kind); e.More(); e.Next())
        ++count;
    return count;
}

[[nodiscard]] inline std::vector<StepThing> readStepFile(const std::string& path) {
    Message::DefaultMessenger()->ChangePrinters().Clear();
    const Handle(XCAFApp_Application) application = XCAFApp_Application::GetApplication();
    Handle(TDocStd_Document) document;
    application->NewDocument("BinXCAF", document);
    STEPCAFControl_Reader reader;
    if (reader.ReadFile(path.c_str()) != IFSelect_RetDone || !reader.Transfer(document))
        throw std::runtime_error("OpenCASCADE can't read " + path);
    const Handle(XCAFDoc_ShapeTool) shapes = XCAFDoc_DocumentTool::ShapeTool(document->Main());
    const Handle(XCAFDoc_ColorTool) colours = XCAFDoc_DocumentTool::ColorTool(document->Main());
    TDF_LabelSequence labels;
    shapes->GetFreeShapes(labels);
    std::vector<StepThing> things;
    for (const TDF_Label& label : labels) {
        StepThing thing;
        thing.shape = XCAFDoc_ShapeTool::GetShape(label);
        Handle(TDataStd_Name) name;
        if (label.FindAttribute(TDataStd_Name::GetID(), name))
            thing.name = TCollection_AsciiString(name->Get(), '?').ToCString();
        Quantity_Color colour;
        if (colours->GetColor(label, XCAFDoc_ColorSurf, colour) ||
            colours->GetColor(thing.shape, XCAFDoc_ColorSurf, colour))
            thing.colour = colour;
        thing.valid = BRepCheck_Analyzer(thing.shape).IsValid();
        thing.solids = countOf(thing.shape, TopAbs_SOLID);
        thing.faces = countOf(thing.shape, TopAbs_FACE);
        GProp_GProps properties;
        // to a stated accuracy: the plain call integrates each face by one rule, far off for long thin bars;
        // by Gauss and Kronrod, since the other call with an accuracy doesn't keep it for round edges of
        // boards
        BRepGProp::VolumePropertiesGK(thing.shape, properties, 1e-6, true);
        thing.volume = properties.Mass();
        BRepGProp::SurfaceProperties(thing.shape, properties, 1e-6);
        thing.area = properties.Mass();
        things.push_back(std::move(thing));
    }
    application->Close(document);
    return things;
}

} // namespace sheerlay::test
