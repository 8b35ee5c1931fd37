#pragma once

#include "core/sheets/drawing.hpp"

#include <functional>
#include <vector>

class QPrinter;
class QWidget;

namespace sheerlay::ui {

enum class Printed {
    Taken,   ///< by the printer
    Refused, ///< the printer did not take the pages
    GivenUp, ///< by the builder, in the preview or under way
};

/// Asked before each page with the number of pages done. @return  go on
using GoOn = std::function<bool(int)>;

/// Paints sheets true to scale, one a page: positions come from millimetres and resolution alone, never from
/// the page's size. The first sheet's paper is taken for all; one that lies across it is turned.
[[nodiscard]] Printed
printSheets(QPrinter& printer, const std::vector<core::Sheet>& sheets, const GoOn& goOn = {});

/// Shows the pages as they will be printed and prints them where that is asked for; while pages are painted
/// the window says how far it is, and can be told to stop. Returns when the preview is closed.
[[nodiscard]] Printed previewAndPrint(QWidget& over, const std::vector<core::Sheet>& sheets);

} // namespace sheerlay::ui
