#include "ui/view3d/exception_text.hpp"

#include <Standard_Failure.hxx>
#include <Standard_Type.hxx>

#include <exception>

namespace sheerlay::ui {

std::string currentExceptionText() {
    try {
        throw;
    } catch (const Standard_Failure& failure) {
        const std::string text = failure.GetMessageString() != nullptr ? failure.GetMessageString() : "";
        return std::string(failure.DynamicType()->Name()) + (text.empty() ? "" : ": " + text);
    } catch (const std::exception& problem) {
        return problem.what();
    } catch (...) {
        return "something unknown";
    }
}

} // namespace sheerlay::ui
