#include "tests/support/catch.hpp"
#include "tests/support/full_project.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/choices/choices_panel.hpp"
#include "ui/panels/typed_field.hpp"

#include <QComboBox>
#include <QPushButton>
#include <QTest>

#include <vector>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

struct App {
    App() { qtApp(); }
};

/// A panel on a project that takes up what it asks for, as the window does.
struct Panel {
    core::Project project;
    ChoicesPanel panel;
    std::vector<QString> edits;

    Panel(FormOf form, core::Project start) : project(std::move(start)), panel(std::move(form)) {
        panel.setProject(project);
        QObject::connect(
            &panel, &ChoicesPanel::changed, &panel, [this](const QString& name, const core::Project& next) {
                if (const auto judged = core::checked(next); !judged) {
                    panel.say(QString::fromStdString(judged.error().front().found));
                    return;
                }
                edits.push_back(name);
                project = next;
                panel.setProject(project);
            });
    }
    [[nodiscard]] QWidget* field(const char* group, const char* label) const {
        return panel.field(QString::fromUtf8(group), QString::fromUtf8(label));
    }
    void type(const char* group, const char* label, const char* text) const {
        auto* field = qobject_cast<QLineEdit*>(this->field(group, label));
        REQUIRE(field != nullptr);
        field->clear();
        QTest::keyClicks(field, QString::fromUtf8(text));
        QTest::keyClick(field, Qt::Key_Return);
    }
    [[nodiscard]] QString shown(const char* group, const char* label) const {
        return qobject_cast<QLineEdit*>(field(group, label))->text();
    }
    [[nodiscard]] QPushButton* button(const QString& name) const {
        for (auto* made : panel.findChildren<QPushButton*>())
            if (made->accessibleName() == name)
                return made;
        return nullptr;
    }
};

} // namespace

TEST_CASE_METHOD(App, "a length is typed as a builder writes it, and is one edit with a name") {
    Panel p(mouldForm, parsed(smallProject()));
    p.type("Strongback", "Width", "7 1/2 in");
    REQUIRE(p.edits == std::vector<QString>{QStringLiteral("Strongback: width")});
    CHECK_THAT(p.project.moulds.strongback.width, WithinAbs(190.5, 1e-9));
    CHECK(p.shown("Strongback", "Width") == QStringLiteral("190.5 mm"));
    p.panel.setUnits(core::Units::Inches);
    CHECK(p.shown("Strongback", "Width") == QStringLiteral("7 1/2\""));
    p.type("Moulds", "Spacing", "11 3/4");
    CHECK_THAT(p.project.moulds.spacing.value(), WithinAbs(298.45, 1e-9));
    p.type("Moulds", "Spacing", "");
    CHECK_FALSE(p.project.moulds.spacing);
    CHECK(p.edits.size() == 3);
    // what is shown rounded is not written back when nothing was typed
    const double before = p.project.moulds.strongback.clear;
    QTest::keyClick(p.field("Strongback", "Clear"), Qt::Key_Return);
    CHECK(p.project.moulds.strongback.clear == before);
    CHECK(p.edits.size() == 3);
}

TEST_CASE_METHOD(App, "what can't be is told in place and changes nothing") {
    Panel p(mouldForm, parsed(smallProject()));
    const core::Project before = p.project;
    const QString shown = p.shown("Moulds", "Board");
    p.type("Moulds", "Board", "thick");
    CHECK(p.panel.said().startsWith(QStringLiteral("Board: ")));
    CHECK(p.shown("Moulds", "Board") == QStringLiteral("thick")); // to be mended
    CHECK(qobject_cast<TypedField*>(p.field("Moulds", "Board"))->isRefused());
    p.type("Moulds", "Board", "");
    CHECK(p.panel.said() == QStringLiteral("Board can't be left empty."));
    p.type("Moulds", "Board", "900 mm"); // beyond any board
    CHECK(p.panel.said().startsWith(QStringLiteral("Board: ")));
    CHECK(p.shown("Moulds", "Board") == QStringLiteral("900 mm"));
    CHECK(qobject_cast<TypedField*>(p.field("Moulds", "Board"))->isRefused());
    CHECK(p.edits.empty());
    CHECK(p.project == before);
    // another entry that is taken puts it back
    p.type("Strongback", "Width", "190 mm");
    CHECK(p.shown("Moulds", "Board") == shown);
    CHECK_FALSE(qobject_cast<TypedField*>(p.field("Moulds", "Board"))->isRefused());
    CHECK(p.panel.said().isEmpty());
    p.type("Moulds", "Board", "18 mm");
    CHECK(p.panel.said().isEmpty());
}

TEST_CASE_METHOD(App, "weights, cloth, counts and choices") {
    Panel p(fittingOutForm, fullProject());
    p.type("Aboard 1", "Weight", "170 lb");
    CHECK_THAT(p.project.afloat->loads[0].mass, WithinAbs(77.1107, 1e-4));
    p.type("Cloth outside", "Cloth", "4 oz");
    CHECK_THAT(p.project.covering->outside->cloth, WithinAbs(135.6, 0.1));
    p.type("Cloth outside", "Cloth", "6"); // ounces or grams?
    CHECK_FALSE(p.panel.said().isEmpty());
    p.type("Cloth outside", "Fill coats", "2.5");
    CHECK(p.panel.said().contains(QStringLiteral("whole number")));
    p.type("Resin", "Waste, percent", "20");
    CHECK_THAT(p.project.covering->waste, WithinAbs(0.2, 1e-12));
    auto* stand = qobject_cast<QComboBox*>(p.field("Gunwales", "They stand"));
    REQUIRE(stand != nullptr);
    stand->setCurrentIndex(1);
    Q_EMIT stand->activated(1);
    CHECK(p.project.fitout->gunwales->stand == core::GunwaleChoices::Stand::Side);
    CHECK(p.edits.back() == QStringLiteral("Gunwales: they stand"));
}

TEST_CASE_METHOD(App, "paddlers and seats come and go") {
    Panel p(fittingOutForm, parsed(smallProject()));
    const QString prices = QStringLiteral("Prices"); // asked of every boat: planking costs, too
    CHECK(p.panel.groups() == QStringList{prices});
    p.button(QStringLiteral("Add: A paddler"))->click();
    p.button(QStringLiteral("Add: A paddler"))->click();
    CHECK(p.panel.groups() ==
          QStringList{
              QStringLiteral("Afloat"), QStringLiteral("Aboard 1"), QStringLiteral("Aboard 2"), prices});
    CHECK(p.edits.back() == QStringLiteral("A paddler"));
    p.type("Aboard 2", "Name", "bow paddler");
    CHECK(p.project.afloat->loads[1].name == "bow paddler");
    p.button(QStringLiteral("Take out: Aboard 1"))->click();
    REQUIRE(p.project.afloat->loads.size() == 1);
    CHECK(p.project.afloat->loads[0].name == "bow paddler");
    CHECK(p.edits.back() == QStringLiteral("Without aboard 1"));
    // groups of a long form are shut at first; what was just added stands open
    p.panel.show();
    CHECK(p.field("Aboard 1", "Name")->isVisible());
    p.panel.fold(QStringLiteral("Aboard 1"), true);
    CHECK_FALSE(p.field("Aboard 1", "Name")->isVisible());
    p.panel.setProject(std::nullopt);
    CHECK(p.panel.groups().empty());
}

TEST_CASE_METHOD(App, "defects of boards stand in their order, clear of one another, and come and go") {
    Panel p(stockForm, fullProject());
    const auto defects = [&] { return p.project.stock->lots[0].defects; };
    REQUIRE(defects().size() == 2);
    p.type("Defect 1 of boards 1", "To", "2'");
    CHECK_THAT(defects()[0][1], WithinAbs(609.6, 1e-9));
    p.type("Defect 1 of boards 1", "To", "4'"); // into the next one
    CHECK_FALSE(p.panel.said().isEmpty());
    CHECK_THAT(defects()[0][1], WithinAbs(609.6, 1e-9));
    p.button(QStringLiteral("Add: A defect of boards 1"))->click();
    REQUIRE(defects().size() == 3);
    CHECK_THAT(0.5 * (defects()[2][0] + defects()[2][1]),
               WithinAbs(0.5 * (1230.0 + 3657.6), 1e-9)); // longest clear length
    p.button(QStringLiteral("Take out: Defect 1 of boards 1"))->click();
    CHECK(defects().size() == 2);
    CHECK(defects()[0] == std::array{1200.0, 1230.0});
}

TEST_CASE_METHOD(App, "every control has a name for those who hear the window") {
    Panel p(fittingOutForm, fullProject());
    for (const QWidget* widget : p.panel.findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || widget->inherits("QScrollArea") ||
            widget->inherits("QAbstractScrollArea") || widget->objectName().startsWith(QStringLiteral("qt_")))
            continue;
        INFO(widget->metaObject()->className());
        CHECK_FALSE(widget->accessibleName().isEmpty());
    }
}
