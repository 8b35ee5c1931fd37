#include "tests/support/catch.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/window/project_memory.hpp"

#include <QTemporaryDir>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

TEST_CASE("what is remembered of a project is its own") {
    qtApp();
    const QTemporaryDir folder; // paths that no other run has used
    const QString one = folder.filePath(QStringLiteral("one boat.sheerlay")),
                  other = folder.filePath(QStringLiteral("other.sheerlay"));
    CHECK_FALSE(paperOf(one));
    CHECK(shopPlaceOf(one).isEmpty());
    for (const core::PageSize size :
         {core::PageSize::A4, core::PageSize::Letter, core::PageSize::A3, core::PageSize::Tabloid}) {
        rememberPaper(one, size);
        CHECK(paperOf(one) == size);
    }
    rememberShopPlace(one, QStringLiteral("S07"));
    CHECK(shopPlaceOf(one) == QStringLiteral("S07"));
    CHECK(printRecordOf(one).empty());
    rememberPrintRecord(one, "two sheets\nof many signs = [1]; \xC3\xA4\n");
    CHECK(printRecordOf(one) == "two sheets\nof many signs = [1]; \xC3\xA4\n");
    CHECK(printRecordOf(other).empty());
    CHECK_FALSE(paperOf(other));
    CHECK(shopPlaceOf(other).isEmpty());
}
