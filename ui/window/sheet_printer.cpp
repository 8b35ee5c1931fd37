#include "ui/window/sheet_printer.hpp"

#include "ui/paper/sheet_painter.hpp"
#include "ui/scene/wording.hpp"

#include <QPageLayout>
#include <QPainter>
#include <QPrintPreviewDialog>
#include <QPrinter>
#include <QProgressDialog>

namespace sheerlay::ui {
namespace {

constexpr double mmPerInch = 25.4;

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
        printer.setPageSize(QPageSize(QSizeF(sheet.width, sheet.height), QPageSize::Millimeter));
        if (done == 0 ? !painter.begin(&printer) : !printer.newPage())
            return Printed::Refused;
        painter.resetTransform();
        painter.scale(printer.resolution() / mmPerInch, printer.resolution() / mmPerInch);
        paint(painter, sheet);
        ++done;
    }
    return done > 0 && painter.end() ? Printed::Taken : Printed::Refused;
}

Printed previewAndPrint(QWidget& over, const std::vector<core::Sheet>& sheets) {
    QPrinter printer(QPrinter::HighResolution);
    QPrintPreviewDialog preview(&printer, &over);
    preview.setWindowTitle(Wording::tr("Print at full size"));
    preview.resize(over.window()->size().boundedTo(QSize(1100, 780)));
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
