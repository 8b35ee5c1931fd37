#include "ui/window/sheet_printer.hpp"

#include "ui/paper/sheet_painter.hpp"
#include "ui/scene/wording.hpp"

#include <QAction>
#include <QPageLayout>
#include <QPainter>
#include <QPrintPreviewDialog>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QProgressDialog>
#include <QScreen>

#include <cmath>

namespace sheerlay::ui {
namespace {

constexpr double mmPerInch = 25.4;
constexpr double alike = 0.5; // mm: a page is a page, whatever its whole points are

/// A sheet on the paper in the printer, which can't be changed between two pages: one that lies across is
/// turned.
void place(QPainter& painter, const core::Sheet& sheet, const core::Sheet& first) {
    const bool across = std::abs(sheet.width - first.height) < alike &&
                        std::abs(sheet.height - first.width) < alike &&
                        std::abs(sheet.width - first.width) >= alike;
    if (!across)
        return;
    painter.translate(first.width, 0.0);
    painter.rotate(90.0);
}

/// As wide as the screen has room and the page as wide as that: raised and lowered digits of a whole page in
/// a small window are blots.
void openLarge(QPrintPreviewDialog& preview, const QWidget& over) {
    preview.setWindowState(preview.windowState() | Qt::WindowMaximized);
    preview.resize(over.screen()->availableSize()); // where nothing manages windows
    if (auto* fit = preview.findChild<QAction*>(QStringLiteral("fitWidthAction")))
        fit->trigger(); // its button shows it
    for (QPrintPreviewWidget* pages : preview.findChildren<QPrintPreviewWidget*>())
        pages->fitToWidth();
}

} // namespace

Printed printSheets(QPrinter& printer, const std::vector<core::Sheet>& sheets, const GoOn& goOn) {
    printer.setFullPage(true);
    QPainter painter;
    int done = 0;
    for (const core::Sheet& sheet : sheets) {
        if (goOn && !goOn(done)) {
            if (done > 0)
                printer.abort();
            return Printed::GivenUp;
        }
        if (done == 0)
            printer.setPageSize(QPageSize(QSizeF(sheet.width, sheet.height), QPageSize::Millimeter));
        if (done == 0 ? !painter.begin(&printer) : !printer.newPage())
            return Printed::Refused;
        painter.resetTransform();
        painter.scale(printer.resolution() / mmPerInch, printer.resolution() / mmPerInch);
        place(painter, sheet, sheets.front());
        paint(painter, sheet);
        ++done;
    }
    return done > 0 && painter.end() ? Printed::Taken : Printed::Refused;
}

Printed previewAndPrint(QWidget& over, const std::vector<core::Sheet>& sheets) {
    QPrinter printer(QPrinter::HighResolution);
    QPrintPreviewDialog preview(&printer, &over);
    preview.setWindowTitle(Wording::tr("Print at full size"));
    openLarge(preview, over);
    Printed last = Printed::GivenUp;
    QObject::connect(&preview, &QPrintPreviewDialog::paintRequested, &preview, [&](QPrinter* paper) {
        QProgressDialog progress(Wording::tr("Painting the pages…"),
                                 Wording::tr("Stop"),
                                 0,
                                 static_cast<int>(sheets.size()),
                                 &over);
        progress.setWindowModality(Qt::ApplicationModal); // lets the window be drawn between two pages
        last = printSheets(*paper, sheets, [&](int done) {
            progress.setValue(done);
            return !progress.wasCanceled();
        });
    });
    const bool sent = preview.exec() == QDialog::Accepted;
    return sent || last == Printed::Refused ? last : Printed::GivenUp;
}

} // namespace sheerlay::ui
