#include "core/sheets/compose.hpp"
#include "core/sheets/type.hpp"
#include "tests/support/catch.hpp"
#include "ui/paper/fonts.hpp"
#include "ui/paper/sheet_painter.hpp"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QString>

using namespace sheerlay;

TEST_CASE("the built-in typeface is what gets painted, in all three weights") {
    for (const core::Weight weight : {core::Weight::Regular, core::Weight::SemiBold, core::Weight::Bold}) {
        const QFontInfo info(ui::sheetFont(weight, 100));
        CHECK(info.family() == QStringLiteral("Inter"));
        CHECK(info.weight() == (weight == core::Weight::Regular    ? 400
                                : weight == core::Weight::SemiBold ? 600
                                                                   : 700));
    }
}

TEST_CASE("the layout's table of widths is the typeface's own, within 1 percent") {
    const char* lines[] = {"S07 P07",
                           "4890 mm",
                           "Woven at the stem, 52\u00B0 to its line.",
                           "0123456789 1-3-4+",
                           "Jagged quay, flux: (WAVE) & \"no\" \u2026 \u2013 \u00E9\u00E5\u00F8\u00FC"};
    for (const core::Weight weight : {core::Weight::Regular, core::Weight::SemiBold, core::Weight::Bold}) {
        const QFontMetricsF metrics(ui::sheetFont(weight, 1000));
        for (const char* line : lines)
            CHECK(core::plainWidth(line, 1000.0, weight) ==
                  Approx(metrics.horizontalAdvance(QString::fromUtf8(line))).epsilon(0.01));
        CHECK(metrics.capHeight() == Approx(core::capHeight * 1000.0).epsilon(0.02));
    }
}

TEST_CASE("ink lands inside its box, for every anchor and turn") {
    constexpr double pixels = 20.0; // per mm
    for (const core::Anchor anchor : {core::Anchor::Left, core::Anchor::Middle, core::Anchor::Right})
        for (const double turn : {0.0, -1.5707963267948966, 0.6}) {
            core::Sheet sheet;
            sheet.width = sheet.height = 60.0;
            const core::Text text = core::makeText(
                {30.0, 30.0},
                "4' 3 5/16\"",
                {.size = 6.0, .weight = core::Weight::Bold, .anchor = anchor, .rotation = turn});
            sheet.items = {text};
            const QImage image = ui::picture(sheet, pixels);
            const core::Box box = core::inkBox(text);
            double left = 1e9, top = 1e9, right = -1, bottom = -1;
            for (int y = 0; y < image.height(); ++y)
                for (int x = 0; x < image.width(); ++x)
                    if (qGray(image.pixel(x, y)) < 128) {
                        left = std::min(left, x / pixels);
                        right = std::max(right, (x + 1) / pixels);
                        top = std::min(top, y / pixels);
                        bottom = std::max(bottom, (y + 1) / pixels);
                    }
            REQUIRE(right > left);
            const double slack = 0.2; // quotes rise a little over the capitals
            CHECK(left >= box.left - slack);
            CHECK(top >= box.top - slack);
            CHECK(right <= box.right + slack);
            CHECK(bottom <= box.bottom + slack);
            CHECK(right - left > 0.8 * (box.right - box.left - 1.0));
        }
}

TEST_CASE("a picture needs a scale") {
    CHECK_THROWS_AS(ui::picture(core::Sheet{}, 0.0), std::invalid_argument);
}
