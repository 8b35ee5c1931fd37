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
    CHECK(shopPlaceOf(one).isEmpty());
    rememberShopPlace(one, QStringLiteral("S07"));
    CHECK(shopPlaceOf(one) == QStringLiteral("S07"));
    CHECK(printRecordOf(one).empty());
    rememberPrintRecord(one, "two sheets\nof many signs = [1]; \xC3\xA4\n");
    CHECK(printRecordOf(one) == "two sheets\nof many signs = [1]; \xC3\xA4\n");
    CHECK(printRecordOf(other).empty());
    CHECK(shopPlaceOf(other).isEmpty());
    CHECK_FALSE(openRoundOf(one));
    core::RowReading round;
    round.row = 7;
    round.side = core::ReadSide::Port;
    round.girthLeft = {{914.4, 0.0, "", "12 1/2 in", 0}, {1000.0 / 3.0, 0.0, "", "abou\"", 0}};
    rememberOpenRound(one, round);
    CHECK(openRoundOf(one) == round);
    CHECK_FALSE(openRoundOf(other));
    rememberOpenRound(one, {});
    CHECK_FALSE(openRoundOf(one));
}
