#include "geometry/occt/step_file.hpp"

#include "geometry/occt/make_shape.hpp"

#include <Quantity_Color.hxx>

#include <APIHeaderSection_MakeHeader.hxx>
#include <IFSelect_ReturnStatus.hxx>
#include <Interface_HArray1OfHAsciiString.hxx>
#include <Interface_Static.hxx>
#include <Message.hxx>
#include <Message_Messenger.hxx>
#include <STEPConstruct_Styles.hxx>
#include <STEPControl_Controller.hxx>
#include <STEPControl_Writer.hxx>
#include <Standard_Failure.hxx>
#include <StepBasic_Product.hxx>
#include <StepData_StepModel.hxx>
#include <StepRepr_RepresentationContext.hxx>
#include <StepRepr_RepresentationItem.hxx>
#include <StepShape_ShapeRepresentation.hxx>
#include <StepShape_ShellBasedSurfaceModel.hxx>
#include <StepShape_SolidModel.hxx>
#include <StepVisual_Colour.hxx>
#include <StepVisual_MechanicalDesignGeometricPresentationRepresentation.hxx>
#include <StepVisual_PresentationStyleAssignment.hxx>
#include <StepVisual_StyledItem.hxx>
#include <TCollection_HAsciiString.hxx>
#include <XSControl_WorkSession.hxx>

namespace sheerlay::geometry {
namespace {

Handle(TCollection_HAsciiString) ascii(const std::string& text) {
    return new TCollection_HAsciiString(text.c_str());
}

Handle(Interface_HArray1OfHAsciiString) oneLine(const std::string& text) {
    Handle(Interface_HArray1OfHAsciiString) lines = new Interface_HArray1OfHAsciiString(1, 1);
    lines->SetValue(1, ascii(text));
    return lines;
}

/// STEP's own alphabet is plain ASCII; other letters of a name are written as its escapes.
std::string inStepLetters(const std::string& utf8) {
    std::string text;
    std::string hex;
    constexpr const char* digits = "0123456789ABCDEF";
    const auto flush = [&] {
        if (!hex.empty())
            text += "\\X4\\" + hex + "\\X0\\";
        hex.clear();
    };
    for (std::size_t i = 0; i < utf8.size();) {
        const auto lead = static_cast<unsigned char>(utf8[i]);
        const std::size_t length = lead < 0x80 ? 1 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
        unsigned long code = length == 1 ? lead : lead & (0xFFU >> (length + 1));
        for (std::size_t k = 1; k < length && i + k < utf8.size(); ++k)
            code = (code << 6U) | (static_cast<unsigned char>(utf8[i + k]) & 0x3FU);
        i += length;
        if (code >= 0x20 && code < 0x7F) {
            flush();
            text += static_cast<char>(code);
            if (code == '\\')
                text += '\\';
        } else {
            for (int shift = 28; shift >= 0; shift -= 4)
                hex += digits[(code >> static_cast<unsigned>(shift)) & 0xFU];
        }
    }
    flush();
    return text;
}

void setHeader(const Handle(StepData_StepModel) & model,
               const std::string& title,
               const std::string& program) {
    APIHeaderSection_MakeHeader header(model);
    header.SetName(ascii(inStepLetters(title)));
    header.SetTimeStamp(ascii("2000-01-01T00:00:00")); // the same project makes the same file
    header.SetAuthor(oneLine(""));
    header.SetOrganization(oneLine(""));
    header.SetPreprocessorVersion(ascii("Open CASCADE Technology"));
    header.SetOriginatingSystem(ascii(program));
    header.SetAuthorisation(ascii(""));
    header.SetDescription(oneLine("Planking of a strip-built boat, millimetres"));
    header.Apply(model);
}

/// What one transfer added to the model.
struct Added {
    Handle(StepBasic_Product) product;
    Handle(StepRepr_RepresentationItem) item; ///< the solid, or the surface
    Handle(StepRepr_RepresentationContext) context;
};

Added addedAfter(const Handle(StepData_StepModel) & model, int before) {
    Added added;
    for (int i = before + 1; i <= model->NbEntities(); ++i) {
        const Handle(Standard_Transient) entity = model->Value(i);
        if (const auto product = Handle(StepBasic_Product)::DownCast(entity); !product.IsNull())
            added.product = product;
        const auto shapes = Handle(StepShape_ShapeRepresentation)::DownCast(entity);
        if (shapes.IsNull())
            continue;
        for (int k = 1; k <= shapes->NbItems(); ++k) {
            const Handle(StepRepr_RepresentationItem) item = shapes->ItemsValue(k);
            if (item->IsKind(STANDARD_TYPE(StepShape_SolidModel)) ||
                item->IsKind(STANDARD_TYPE(StepShape_ShellBasedSurfaceModel))) {
                added.item = item;
                added.context = shapes->ContextOfItems();
            }
        }
    }
    return added;
}

/// The writer numbers its products through the life of the program; ours are called what they are.
void setName(const Added& added, const std::string& name) {
    if (added.product.IsNull())
        return;
    added.product->SetId(ascii(inStepLetters(name)));
    added.product->SetName(ascii(inStepLetters(name)));
}

void setColour(STEPControl_Writer& writer, const Added& added, const Colour& colour) {
    if (added.item.IsNull())
        return;
    STEPConstruct_Styles styles(writer.WS());
    const Quantity_Color paint(colour.red, colour.green, colour.blue, Quantity_TOC_sRGB);
    const Handle(StepVisual_Colour) encoded = STEPConstruct_Styles::EncodeColor(paint);
    const Handle(StepVisual_PresentationStyleAssignment) style =
        styles.MakeColorPSA(added.item, encoded, encoded, encoded, 0.0);
    styles.AddStyle(added.item, style, Handle(StepVisual_StyledItem)());
    Handle(StepVisual_MechanicalDesignGeometricPresentationRepresentation) drawing;
    if (styles.CreateMDGPR(added.context, drawing))
        writer.Model()->AddWithRefs(drawing); // the tool knows of another model than the writer
}

} // namespace

Expected<int, std::string> writeStep(const std::vector<NamedShape>& shapes,
                                     const std::string& title,
                                     const std::string& program,
                                     const std::string& path) {
    try {
        Message::DefaultMessenger()->ChangePrinters().Clear(); // it reports on standard output
        STEPControl_Controller::Init();
        Interface_Static::SetCVal("write.step.schema", "AP214IS");
        Interface_Static::SetCVal("write.step.unit", "MM");
        STEPControl_Writer writer;
        int count = 0;
        for (const NamedShape& shape : shapes) {
            const TopoDS_Shape made = makeShape(shape);
            const int before = writer.Model()->NbEntities();
            if (writer.Transfer(made, STEPControl_AsIs) != IFSelect_RetDone)
                return unexpected(shape.name + " can't be put into a STEP file.");
            const Added added = addedAfter(writer.Model(), before);
            setName(added, shape.name);
            setColour(writer, added, shape.colour);
            ++count;
        }
        setHeader(writer.Model(), title, program);
        if (writer.Write(path.c_str()) != IFSelect_RetDone)
            return unexpected(path + ": it can't be written. A folder that you may write to would do.");
        return count;
    } catch (const Standard_Failure& failure) {
        const char* text = failure.GetMessageString();
        return unexpected(
            "The STEP file can't be made: " + std::string(text != nullptr ? text : "no reason given") + ".");
    } catch (const std::exception& failure) {
        return unexpected(std::string(failure.what()) + ".");
    }
}

} // namespace sheerlay::geometry
