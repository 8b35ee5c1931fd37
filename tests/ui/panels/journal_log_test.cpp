#include "core/project/laid_strips.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/panels/journal_log.hpp"
#include "ui/scene/words.hpp"

#include <QLabel>
#include <QPushButton>
#include <QTableWidget>

using namespace sheerlay;
using namespace sheerlay::ui;

namespace {

/// Two strips laid and a round on starboard, and the journal that the log asks for.
struct Log {
    core::Journal journal = core::markLaid(core::markLaid({}, "S01", "2026-05-01"), "P01", "2026-05-02");
    JournalLog log;
    QStringList edits;

    Log() {
        journal.readings.push_back({5,
                                    core::ReadSide::Starboard,
                                    {{900.0, 300.0, "3-0-0", "11 13/16 in", 0}, {1200.0, 310.0, "", "", 0}},
                                    0.5,
                                    "2026-05-03",
                                    0});
        log.setJournal(journal);
        QObject::connect(
            &log, &JournalLog::changed, &log, [this](const QString& name, const core::Journal& next) {
                edits << name;
                journal = next;
                log.setJournal(next); // as the window does
            });
    }
    [[nodiscard]] std::string text(int line, int column) const {
        return log.lines()->item(line, column)->text().toStdString();
    }
};

} // namespace

TEST_CASE("the journal is listed, strips first, then what the tape said") {
    test::qtApp();
    Log l;
    REQUIRE(l.log.lines()->rowCount() == 3);
    CHECK(l.text(0, 0) == "S01 laid");
    CHECK(l.text(1, 1) == "2026-05-02");
    CHECK(l.text(2, 0) == "below row 5, starboard");
    const auto mm = [](double length) { return lengthText(length, core::Units::Millimetres).toStdString(); };
    CHECK(l.text(2, 2) == "3-0-0: 11 13/16 in, " + mm(1200.0) + ": " + mm(310.0)); // as written, if it is
    CHECK_FALSE(l.log.takeOutButton()->isEnabled());
    l.log.setJournal({});
    CHECK(l.log.lines()->rowCount() == 0);
    CHECK(l.log.lines()->isHidden());
}

TEST_CASE("a note typed on a strip is an edit; what the tape said is none to be typed") {
    test::qtApp();
    Log l;
    l.log.lines()->item(1, 2)->setText(QStringLiteral(" split at the stern "));
    CHECK(l.edits == QStringList{QStringLiteral("Note on P01")});
    CHECK(core::laidEntry(l.journal, "P01")->note == "split at the stern");
    CHECK(l.text(1, 2) == "split at the stern");
    l.log.lines()->item(1, 2)->setText(QStringLiteral("split at the stern")); // the same again
    CHECK(l.edits.size() == 1);
    CHECK((l.log.lines()->item(1, 2)->flags() & Qt::ItemIsEditable) != 0);
    for (const auto& [line, column] : {std::pair{0, 0}, std::pair{0, 1}, std::pair{2, 2}})
        CHECK((l.log.lines()->item(line, column)->flags() & Qt::ItemIsEditable) == 0);
}

TEST_CASE("a long line is told whole") {
    test::qtApp();
    Log l;
    l.log.resize(500, 400);
    l.log.show();
    const QString longNote =
        QStringLiteral("split at the stern, glued and held overnight ").repeated(4).trimmed();
    const int one = l.log.lines()->rowHeight(1);
    l.log.lines()->item(1, 2)->setText(longNote);
    CHECK(l.log.lines()->rowHeight(1) >= 2 * one - 8); // wrapped
    CHECK(l.log.lines()->item(1, 2)->toolTip() == longNote);
    CHECK(l.log.lines()->rowHeight(0) == one);
}

TEST_CASE("a reading that was left out is marked, and why is told as the line's tip") {
    test::qtApp();
    Log l;
    const std::string before = l.text(2, 2);
    l.log.setLeftOut([](const core::RowReading&, const core::GirthLeft& girth) {
        return girth.x == 1200.0 ? QStringLiteral("too far off") : QString();
    });
    CHECK(l.text(2, 2) == before + " (left out)"); // the last of the two
    CHECK(l.log.lines()->item(2, 2)->toolTip() == QStringLiteral("too far off"));
    l.log.setLeftOut({});
    CHECK(l.text(2, 2) == before);
}

TEST_CASE("an entry in hand can be taken out") {
    test::qtApp();
    Log l;
    l.log.lines()->selectRow(2);
    REQUIRE(l.log.takeOutButton()->isEnabled());
    l.log.takeOutButton()->click();
    CHECK(l.journal.readings.empty());
    CHECK_FALSE(l.log.takeOutButton()->isEnabled()); // nothing is in hand any more
    l.log.lines()->selectRow(0);
    l.log.takeOutButton()->click();
    CHECK(core::laidEntry(l.journal, "S01") == nullptr);
    CHECK(l.journal.laid.size() == 1);
    CHECK(l.edits ==
          QStringList{QStringLiteral("Without the reading below row 5"), QStringLiteral("S01 not laid")});
}

TEST_CASE("while the journal is empty, its sentence stands at the top") {
    test::qtApp();
    JournalLog log;
    log.resize(400, 400);
    log.show();
    const auto* says = log.findChild<QLabel*>();
    REQUIRE(says != nullptr);
    CHECK(says->isVisible());
    CHECK(says->y() == 0);
    CHECK((says->alignment() & Qt::AlignTop) != 0);
}
