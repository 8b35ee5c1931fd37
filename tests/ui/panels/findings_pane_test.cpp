#include "tests/support/catch.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/panels/findings_list.hpp"
#include "ui/panels/findings_pane.hpp"

#include <QDate>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>
#include <QToolButton>

#include <string>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::ui;
using core::Level;

namespace {

const std::vector<core::Finding> three{
    {Level::Stop, "fake-stop", "S12", 700.0, "The rows fold."},
    {Level::Caution, "fake-caution", "P03", 1000.0, "P03 bends hard; plane the row above."},
    {Level::Note, "fake-note", std::nullopt, std::nullopt, "Closing begins with row 11."}};

/// A pane on three findings that takes up what it asks for, as the window does.
struct Pane {
    std::vector<core::PutAside> asides;
    std::vector<QString> edits;
    FindingsPane pane;

    Pane() {
        pane.setFindings(three, {});
        QObject::connect(&pane,
                         &FindingsPane::asidesChanged,
                         &pane,
                         [this](const QString& name, const std::vector<core::PutAside>& next) {
                             edits.push_back(name);
                             asides = next;
                             pane.setFindings(three, asides);
                         });
    }
    [[nodiscard]] std::vector<std::string> codes() const {
        std::vector<std::string> shown;
        for (int row = 0; row < pane.list()->count(); ++row) {
            pane.list()->setCurrentRow(row);
            shown.push_back(pane.list()->current()->code);
        }
        return shown;
    }
};

struct App {
    App() { test::qtApp(); }
};

using Codes = std::vector<std::string>;

} // namespace

TEST_CASE_METHOD(App, "a finding names its lengths first in the units shown") {
    FindingsPane pane;
    pane.setFindings({{Level::Note, "fake-note", "C27", 2563.0, "It comes out about 6 mm (1/4\") wide."}},
                     {});
    pane.setUnits(core::Units::Inches);
    CHECK(pane.list()->item(0)->text() == QStringLiteral("It comes out about 1/4\" (6 mm) wide."));
    pane.setUnits(core::Units::Millimetres);
    CHECK(pane.list()->item(0)->text() == QStringLiteral("It comes out about 6 mm (1/4\") wide."));
}

TEST_CASE_METHOD(App, "findings are shown by level and by words") {
    const Pane p;
    CHECK(p.codes() == Codes{"fake-stop", "fake-caution", "fake-note"});
    p.pane.levelButton(Level::Caution)->click();
    CHECK(p.codes() == Codes{"fake-stop", "fake-note"});
    p.pane.levelButton(Level::Caution)->click();
    QTest::keyClicks(p.pane.words(), QStringLiteral("row plane"));
    CHECK(p.codes() == Codes{"fake-caution"}); // both words, in any order
    p.pane.words()->setText(QStringLiteral("s12"));
    CHECK(p.codes() == Codes{"fake-stop"});
    p.pane.words()->setText(QStringLiteral("nobody says this"));
    CHECK(p.codes().empty());
    p.pane.list()->next(); // nowhere to go
    CHECK(p.pane.list()->current() == nullptr);
    CHECK(p.pane.head().contains(
        QStringLiteral("1 stop, 1 caution, 1 note"))); // what there is, not what is shown
}

TEST_CASE_METHOD(App, "a finding is put aside with a reason, shown on demand and taken back") {
    Pane p;
    p.pane.show();
    p.pane.list()->setCurrentRow(1);
    CHECK(p.pane.act()->isVisible());
    p.pane.act()->click(); // without a reason
    CHECK(p.edits.empty());
    CHECK(p.pane.said().contains(QStringLiteral("reason")));
    p.pane.reason()->setText(QStringLiteral(" The stock is green. "));
    p.pane.act()->click();
    REQUIRE(p.edits.size() == 1);
    REQUIRE(p.asides.size() == 1);
    CHECK(p.asides.front().note ==
          core::AsideNote{"The stock is green.", QDate::currentDate().toString(Qt::ISODate).toStdString()});
    CHECK(p.asides.front().x == 1000.0);
    CHECK(p.codes() == Codes{"fake-stop", "fake-note"});
    CHECK(p.pane.head().contains(QStringLiteral("1 stop, 1 note")));
    CHECK(p.pane.asideButton()->isVisible());
    CHECK(p.pane.asideButton()->text() == QStringLiteral("1 put aside"));
    p.pane.asideButton()->click();
    REQUIRE(p.codes() == Codes{"fake-stop", "fake-caution", "fake-note"});
    p.pane.list()->setCurrentRow(1);
    CHECK(p.pane.list()->item(1)->text().contains(QStringLiteral("The stock is green.")));
    CHECK(findingHead(*p.pane.list()->current(), core::Units::Millimetres)
              .contains(QStringLiteral("put aside")));
    CHECK_FALSE(p.pane.reason()->isVisible());
    p.pane.act()->click();
    CHECK(p.asides.empty());
    CHECK(p.edits.size() == 2);
    CHECK_FALSE(p.pane.asideButton()->isVisible());
}

TEST_CASE_METHOD(App, "a stop can't be put aside") {
    Pane p;
    p.pane.show();
    p.pane.list()->setCurrentRow(0);
    CHECK_FALSE(p.pane.act()->isVisible());
    CHECK_FALSE(p.pane.reason()->isVisible());
    CHECK(p.pane.said().contains(QStringLiteral("stop")));
    QTest::keyClick(p.pane.reason(), Qt::Key_Return);
    CHECK(p.edits.empty());
}

TEST_CASE_METHOD(App, "an entry that covers nothing any more is shown with those put aside, and can go") {
    Pane p;
    p.asides = {{Level::Note, "mended", "S01", 100.0, "It was crooked.", {"No matter.", ""}, 0}};
    p.pane.setFindings(three, p.asides);
    CHECK(p.codes().size() == 3);
    p.pane.asideButton()->setChecked(true);
    REQUIRE(p.codes() == Codes{"fake-stop", "fake-caution", "fake-note", "mended"});
    CHECK(p.pane.list()->current()->text == "Not found any more: It was crooked.");
    p.pane.act()->click();
    CHECK(p.asides.empty());
}

TEST_CASE_METHOD(
    App, "while more may be found no entry is said to cover nothing, and the hand stays where it is") {
    Pane p;
    p.asides = {{Level::Note, "fake-later", std::nullopt, 100.0, "The gunwale bends.", {"Steamed.", ""}, 0}};
    p.pane.setFindings(three, p.asides, false);
    p.pane.asideButton()->setChecked(true);
    CHECK(p.codes() == Codes{"fake-stop", "fake-caution", "fake-note"});
    p.pane.list()->setCurrentRow(1);
    p.pane.reason()->setText(QStringLiteral("The stock is"));
    auto more = three;
    more.insert(more.begin(), {Level::Stop, "fake-more", std::nullopt, std::nullopt, "No room."});
    more.push_back({Level::Note, "fake-later", std::nullopt, 100.0, "The gunwale bends."});
    p.pane.setFindings(more, p.asides, true);
    REQUIRE(p.pane.list()->current() != nullptr);
    CHECK(p.pane.list()->current()->code == "fake-caution");
    CHECK(p.pane.reason()->text() == QStringLiteral("The stock is"));
    CHECK(p.codes() == Codes{"fake-more", "fake-stop", "fake-caution", "fake-note", "fake-later"});
    CHECK(p.pane.list()->current()->aside->reason == "Steamed.");
    p.pane.setFindings(three, p.asides, true);
    p.pane.list()->setCurrentRow(3);
    CHECK(p.pane.list()->current()->text == "Not found any more: The gunwale bends.");
}

TEST_CASE_METHOD(App, "a finding whose part is on another bench is followed there, on demand") {
    Pane p;
    p.pane.setBenchOf([](const core::Finding& finding) {
        return finding.code == "fake-note" ? QStringLiteral("Fitting out") : QString();
    });
    p.pane.show();
    std::vector<std::string> followed;
    QObject::connect(&p.pane, &FindingsPane::followed, &p.pane, [&](const core::Finding& finding) {
        followed.push_back(finding.code);
    });
    p.pane.list()->setCurrentRow(1);
    CHECK_FALSE(p.pane.goThere()->isVisible());
    Q_EMIT p.pane.list()->itemActivated(p.pane.list()->item(1));
    CHECK(followed.empty());
    p.pane.list()->setCurrentRow(2);
    CHECK(p.pane.goThere()->isVisible());
    CHECK(p.pane.goThere()->text().contains(QStringLiteral("Fitting out")));
    p.pane.goThere()->click();
    Q_EMIT p.pane.list()->itemActivated(p.pane.list()->item(2));
    CHECK(followed == Codes{"fake-note", "fake-note"});
}
