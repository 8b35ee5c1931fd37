#include "core/hull/hull.hpp"
#include "tests/support/project_text.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/panels/table_tools.hpp"

#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>

#include <memory>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

TEST_CASE("stations are put in only while the hull is the table's own") {
    qtApp();
    core::Project project = parsed(fileText(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"));
    const auto hull = core::loft(project);
    REQUIRE(hull.has_value());
    TableTools tools;
    const QSignalSpy edits(&tools, &TableTools::edited);
    tools.setProject(project);
    tools.place()->setText(QStringLiteral("5-6-0"));
    CHECK_FALSE(tools.putInButton()->isEnabled());
    tools.setLoft(project, std::make_shared<const core::LoftedHull>(*hull));
    CHECK(tools.putInButton()->isEnabled());
    project.hull.stations[3].sheer.height += 1.0; // not lofted yet
    tools.setProject(project);
    CHECK_FALSE(tools.putInButton()->isEnabled());
    tools.putIn();
    CHECK(edits.count() == 0);
}

TEST_CASE("the station in hand is the one that is taken out") {
    qtApp();
    TableTools tools;
    const QSignalSpy edits(&tools, &TableTools::edited);
    CHECK_FALSE(tools.takeOutButton()->isEnabled());
    const core::Project project = parsed(fileText(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"));
    tools.setProject(project);
    tools.setStation(1);
    CHECK(tools.takeOutButton()->text() == QStringLiteral("Take out station 1-0-0"));
    tools.takeOut();
    REQUIRE(edits.count() == 1);
    CHECK(edits.front().front().toString() == QStringLiteral("Station 1-0-0 taken out"));
    tools.setStation(400); // none such
    CHECK_FALSE(tools.takeOutButton()->isEnabled());
    tools.setProject(parsed(smallProject())); // three have to stay
    tools.setStation(1);
    CHECK_FALSE(tools.takeOutButton()->isEnabled());
}
