#include "ui/paper/pdf_writer.hpp"

#include "ui/paper/fonts.hpp"
#include "ui/paper/sheet_painter.hpp"

#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include <charconv>
#include <cstdio>
#include <exception>

namespace sheerlay::ui {

namespace {

constexpr int dotsPerInch = 1200;

QPageLayout layoutOf(const core::Sheet& sheet) {
    const QPageSize size(
        QSizeF(sheet.width, sheet.height), QPageSize::Millimeter, QString(), QPageSize::ExactMatch);
    return {size, QPageLayout::Portrait, QMarginsF(0, 0, 0, 0), QPageLayout::Millimeter};
}

std::size_t numberAt(const std::string& text, std::size_t at) {
    std::size_t value = 0;
    std::from_chars(text.data() + at, text.data() + text.size(), value);
    return value;
}

} // namespace

std::string withFixedDate(std::string pdf) {
    constexpr std::string_view key = "/CreationDate (", fixed = "D:20000101000000Z";
    const std::size_t found = pdf.find(key);
    const std::size_t tail = pdf.rfind("startxref");
    if (found == std::string::npos || tail == std::string::npos)
        return pdf;
    const std::size_t begin = found + key.size(), end = pdf.find(')', begin);
    const std::size_t table = numberAt(pdf, tail + std::string_view("startxref").size() + 1);
    if (end == std::string::npos || table >= pdf.size() || pdf.compare(table, 4, "xref") != 0)
        return pdf;

    // the zone's length differs from place to place, so what follows moves
    const std::size_t old = end - begin;
    const auto movedTo = [&](std::size_t offset) {
        return offset > begin ? offset + fixed.size() - old : offset;
    };
    std::size_t line = pdf.find('\n', table + 5) + 1; // past "xref" and "0 n"
    constexpr std::size_t entry = 20; // "0000000017 00000 n" and two more, by the format's rule
    for (; line + entry <= tail && (pdf[line + 17] == 'n' || pdf[line + 17] == 'f'); line += entry) {
        if (pdf[line + 17] == 'f')
            continue;
        std::size_t offset = 0;
        std::from_chars(pdf.data() + line, pdf.data() + line + 10, offset);
        char digits[16];
        std::snprintf(digits, sizeof digits, "%010zu", movedTo(offset));
        pdf.replace(line, 10, digits, 10);
    }
    const std::size_t at = tail + std::string_view("startxref").size() + 1;
    pdf.replace(at, std::to_string(table).size(), std::to_string(movedTo(table)));
    pdf.replace(begin, old, fixed);
    return pdf;
}

Written writePdf(const std::vector<core::Sheet>& sheets, const std::string& path) {
    if (sheets.empty())
        return unexpected(cannotWrite(path, "there is no sheet to write"));
    try {
        loadFonts();
    } catch (const std::exception& problem) {
        return unexpected(cannotWrite(path, problem.what()));
    }
    QBuffer buffer;
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(dotsPerInch);
        writer.setTitle(QString::fromStdString(sheets.front().title));
        writer.setCreator(QStringLiteral("Sheerlay"));
        writer.setPageLayout(layoutOf(sheets.front()));
        QPainter painter(&writer);
        for (std::size_t i = 0; i < sheets.size(); ++i) {
            if (i > 0) {
                writer.setPageLayout(layoutOf(sheets[i]));
                writer.newPage();
            }
            painter.save();
            // never from the page's width in dots: Qt rounds it to whole points
            painter.scale(dotsPerInch / 25.4, dotsPerInch / 25.4);
            paint(painter, sheets[i]);
            painter.restore();
        }
    }
    return writeBytes(withFixedDate(buffer.data().toStdString()), path);
}

} // namespace sheerlay::ui
