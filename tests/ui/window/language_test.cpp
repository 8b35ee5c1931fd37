#include "core/table_edit/scale_table.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/panels/card_text.hpp"
#include "ui/panels/landmarks.hpp"
#include "ui/panels/offsets_grid.hpp"
#include "ui/panels/offsets_model.hpp"
#include "ui/panels/planking_controls.hpp"
#include "ui/panels/typed_field.hpp"
#include "ui/scene/strip_colour.hpp"
#include "ui/scene/words.hpp"
#include "ui/shop/shop_text.hpp"
#include "ui/window/keys_card.hpp"
#include "ui/window/language.hpp"
#include "ui/window/lines_bench.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/sheets_bench.hpp"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFile>
#include <QFileDialog>
#include <QKeySequence>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTest>
#include <QToolButton>
#include <QUndoStack>
#include <QXmlStreamReader>

#include <algorithm>
#include <memory>
#include <optional>
#include <string>
#include <tuple>
#include <utility>
#include <variant>
#include <vector>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

/// What stands for what is put in: %1, %2, … in any order.
QStringList placesIn(const QString& text) {
    static const QRegularExpression place(QStringLiteral("%(\\d)"));
    QStringList found;
    for (auto it = place.globalMatch(text); it.hasNext();)
        found << it.next().captured(1);
    found.sort();
    return found;
}

bool hasButton(const QWidget& window, const char* text) {
    const auto buttons = window.findChildren<QToolButton*>();
    return std::ranges::any_of(buttons,
                               [&](const QToolButton* b) { return b->text() == QString::fromUtf8(text); });
}

/// Puts English back, whatever a test did.
struct English {
    ~English() {
        chooseLanguage(QStringLiteral("en"));
        speak();
    }
};

/// All that a builder can read on the widgets of a window, shown or not: their words, tips, what stands in
/// fields, lists and tables, and names for screen readers.
QStringList readable(const QWidget& window) {
    QStringList said;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        said << widget->toolTip() << widget->accessibleName();
        if (const auto* label = qobject_cast<const QLabel*>(widget))
            said << label->text();
        if (const auto* button = qobject_cast<const QAbstractButton*>(widget))
            said << button->text();
        if (const auto* line = qobject_cast<const QLineEdit*>(widget))
            said << line->text() << line->placeholderText();
        if (const auto* box = qobject_cast<const QComboBox*>(widget))
            for (int i = 0; i < box->count(); ++i)
                said << box->itemText(i);
        const auto* view = qobject_cast<const QAbstractItemView*>(widget);
        const QAbstractItemModel* model = view != nullptr ? view->model() : nullptr;
        for (int row = 0; model != nullptr && row < model->rowCount(); ++row) {
            said << model->headerData(row, Qt::Vertical).toString();
            for (int column = 0; column < model->columnCount(); ++column)
                for (const int role : {Qt::DisplayRole, Qt::ToolTipRole})
                    said << model->index(row, column).data(role).toString()
                         << model->headerData(column, Qt::Horizontal, role).toString();
        }
    }
    for (const QAction* action : window.findChildren<QAction*>())
        said << action->text() << action->toolTip();
    said.removeDuplicates();
    return said;
}

/// Words with a decimal point. Not one are names of strips ("S-03.2"), the file's keys as a text editor wants
/// them (behind a line "["), and a comma that may mean two things, which only a point can settle.
QStringList withPoints(const QStringList& said) {
    static const QRegularExpression number(QStringLiteral("\\d\\.\\d"));
    static const QRegularExpression name(QStringLiteral("^\\W*[SPC]-?\\d+\\.\\d"));
    QStringList found;
    for (const QString& text : said) {
        if (text.contains(QStringLiteral("\n[")))
            continue;
        for (const QString& word : text.split(QRegularExpression(QStringLiteral("\\s+"))))
            if (word.contains(number) && !word.contains(name))
                found << word + QStringLiteral(" in: ") + text.left(120);
    }
    return found;
}

/// What stands in words on a sheet.
std::vector<std::string> texts(const core::Sheet& sheet) {
    std::vector<std::string> found;
    for (const core::Item& item : sheet.items)
        if (const auto* text = std::get_if<core::Text>(&item))
            for (const core::TextRun& run : text->runs)
                found.push_back(run.text);
    return found;
}

} // namespace

TEST_CASE("every text of the window has its German, with the same places to fill in") {
    for (const Language& language : languages()) {
        if (language.code == QStringLiteral("en"))
            continue;
        QFile file(QStringLiteral(SHEERLAY_TRANSLATIONS "/sheerlay_%1.ts").arg(language.code));
        REQUIRE(file.open(QIODevice::ReadOnly));
        QXmlStreamReader xml(&file);
        QString source;
        int texts = 0;
        while (!xml.atEnd()) {
            xml.readNext();
            if (xml.isStartElement() && xml.name() == QStringLiteral("source"))
                source = xml.readElementText();
            if (!xml.isStartElement() || xml.name() != QStringLiteral("translation"))
                continue;
            INFO(source.toStdString());
            CHECK_FALSE(xml.attributes().hasAttribute(QStringLiteral("type"))); // unfinished, vanished
            const QString said = xml.readElementText();
            INFO(said.toStdString());
            CHECK_FALSE(said.isEmpty());
            CHECK(placesIn(said) == placesIn(source));
            CHECK(said.startsWith(u' ') == source.startsWith(u' '));
            CHECK(said.endsWith(u' ') == source.endsWith(u' '));
            ++texts;
        }
        CHECK_FALSE(xml.hasError());
        CHECK(texts > 700);
    }
}

TEST_CASE_METHOD(App, "the window fits a screen of 1280 by 800 in every language") {
    const English after;
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("canoe.sheerlay"));
    REQUIRE(QFile::copy(referenceProject(), path));
    for (const Language& language : languages()) {
        INFO(language.code.toStdString());
        chooseLanguage(language.code);
        speak();
        MainWindow window(TaskRunner::Mode::SameThread);
        window.open(path);
        window.show();
        CHECK(window.minimumSizeHint().width() <= 1280);
        CHECK(window.minimumSizeHint().height() <= 800);
        REQUIRE(window.boat() != nullptr);
        const auto* says = window.planking()->bar()->findChild<QLabel*>();
        REQUIRE(says != nullptr);
        for (int laid = 0; laid <= window.boat()->pieces(); ++laid) {
            const QString text = layingText(*window.boat(), laid);
            INFO(text.toStdString());
            CHECK(says->fontMetrics().horizontalAdvance(text) <= says->width());
        }
    }
}

TEST_CASE_METHOD(App, "a window speaks the language that is chosen, and English again") {
    const English back;
    chooseLanguage(QStringLiteral("de"));
    REQUIRE(speak().toStdString() == "de");
    {
        const Workshop shop;
        CHECK(hasButton(shop.window, "Beplankung"));
        CHECK(hasButton(shop.window, "Mallen"));
        CHECK_FALSE(hasButton(shop.window, "Planking"));
        CHECK(layingText(*shop.window.boat(), 1000).contains(QStringLiteral("liegen")));
        const auto marks = landmarks(*shop.window.boat());
        CHECK(std::ranges::any_of(
            marks, [](const Landmark& m) { return m.name == QStringLiteral("Schlussleiste"); }));
    }
    chooseLanguage(QStringLiteral("en"));
    REQUIRE(speak().toStdString() == "en");
    const Workshop shop;
    CHECK(hasButton(shop.window, "Planking"));
    CHECK_FALSE(hasButton(shop.window, "Beplankung"));
}

TEST_CASE_METHOD(App, "keys, buttons and dialogs of Qt's own speak German too") {
    const English back;
    chooseLanguage(QStringLiteral("de"));
    // without Qt's translations they stay English, and nothing fails or warns
    REQUIRE(speak(QStringLiteral("/nowhere")).toStdString() == "de");
    const auto undo = [] {
        return QKeySequence(Qt::CTRL | Qt::Key_Z).toString(QKeySequence::NativeText).toStdString();
    };
    CHECK(undo() == "Ctrl+Z");
    REQUIRE(speak().toStdString() == "de"); // resources/scripts/packages.sh asks for qt6-translations-l10n
    CHECK(undo() == "Strg+Z");

    const Workshop shop;
    QStringList said;
    for (const QLabel* label : shop.window.keys()->findChildren<QLabel*>())
        said << label->text();
    const QString card = said.join(u'\n');
    INFO(card.toStdString());
    CHECK(card.contains(QStringLiteral("Strg+Z")));
    CHECK_FALSE(card.contains(
        QRegularExpression(QStringLiteral("\\b(Ctrl|Shift|Space|Home|End|Left|Right|Return|Del|PgUp)\\b"))));

    const QDialogButtonBox buttons(QDialogButtonBox::Cancel | QDialogButtonBox::Close |
                                   QDialogButtonBox::Yes);
    QStringList names;
    for (const QAbstractButton* button : buttons.buttons())
        names << button->text().remove(u'&');
    names.sort();
    CHECK(names ==
          QStringList{QStringLiteral("Abbrechen"), QStringLiteral("Ja"), QStringLiteral("Schließen")});

    QLineEdit line(QStringLiteral("12,5"));
    const std::unique_ptr<QMenu> menu(line.createStandardContextMenu());
    QStringList acts;
    for (const QAction* action : menu->actions())
        acts << action->text().remove(u'&').section(u'\t', 0, 0);
    INFO(acts.join(u'\n').toStdString());
    CHECK(acts.contains(QStringLiteral("Kopieren")));
    CHECK_FALSE(acts.contains(QStringLiteral("Copy")));

    QFileDialog files;
    files.setOption(QFileDialog::DontUseNativeDialog);
    QStringList labels;
    for (const QAbstractButton* button : files.findChildren<QAbstractButton*>())
        labels << button->text().remove(u'&');
    CHECK(labels.contains(QStringLiteral("Abbrechen")));
    CHECK_FALSE(labels.contains(QStringLiteral("Cancel")));
}

TEST_CASE_METHOD(App, "what is read in a German window has a decimal comma") {
    const English back;
    chooseLanguage(QStringLiteral("de"));
    REQUIRE(speak().toStdString() == "de");
    for (const char* name : {"brindlewick", "marsh-hen", "sedgewren", "tanglepike"}) {
        INFO(name);
        QTemporaryDir folder;
        const QString path = folder.filePath(QStringLiteral("boat.sheerlay"));
        REQUIRE(QFile::copy(QStringLiteral(SHEERLAY_EXAMPLES "/%1/%1.sheerlay").arg(QString::fromUtf8(name)),
                            path));
        MainWindow window(TaskRunner::Mode::SameThread);
        window.open(path);
        REQUIRE(window.boat() != nullptr);
        const Boat& boat = *window.boat();
        REQUIRE_FALSE(boat.shop().plan.strips.empty());
        window.planking()->setBoat(window.boat()); // with all that is found
        for (const core::Units units : {core::Units::Millimetres, core::Units::Inches}) {
            window.planking()->setUnits(units);
            window.lines()->setUnits(units);
            for (SheetsBench* pages : {window.moulds(), window.stock(), window.fittingOut()})
                pages->setUnits(units);
            QStringList said = readable(window);
            for (const core::Strip& strip : boat.plan.strips) {
                const CardText card = cardText(boat, strip, units);
                for (const CardLine& line : card.lines)
                    said << line.figure << line.detail << line.meaning;
                said << card.subtitle << card.advice << shopText(boat, strip, units).watch;
            }
            for (int colours = 0; colours <= static_cast<int>(StripColours::Laid); ++colours)
                for (const ColourLine& line : colourLines(&boat, static_cast<StripColours>(colours), units))
                    said << line.word << line.limit;
            CHECK(said.size() > 500);
            for (const QString& word : withPoints(said))
                FAIL_CHECK(word.toStdString());
        }
    }
}

TEST_CASE_METHOD(App, "numbers are typed with a comma or a point, and read the same") {
    const English back;
    chooseLanguage(QStringLiteral("de"));
    REQUIRE(speak().toStdString() == "de");
    using Kind = TypedField::Kind;
    const auto typed = [](Kind kind, const char* text) {
        TypedField field(kind);
        std::optional<double> value;
        QObject::connect(
            &field, &TypedField::decided, &field, [&](const std::optional<double>& v) { value = v; });
        QTest::keyClicks(&field, QString::fromUtf8(text));
        QTest::keyClick(&field, Qt::Key_Return);
        REQUIRE(value);
        field.setValue(value);
        return std::pair(*value, field.text().toStdString());
    };
    for (const auto& [kind, comma, point, shown] : {std::tuple{Kind::Length, "12,5 mm", "12.5 mm", "12,5 mm"},
                                                    std::tuple{Kind::Weight, "7,5 kg", "7.5 kg", "7,5 kg"},
                                                    std::tuple{Kind::Cloth, "163,5 g", "163.5 g", "163,5 g"},
                                                    std::tuple{Kind::Number, "0,25", "0.25", "0,25"}}) {
        INFO(comma);
        CHECK(typed(kind, comma) == typed(kind, point));
        CHECK(typed(kind, point).second == shown);
    }
}

TEST_CASE_METHOD(App, "edits have their names in the window's language") {
    const English back;
    chooseLanguage(QStringLiteral("de"));
    REQUIRE(speak().toStdString() == "de");
    Workshop shop;
    const QUndoStack& undo = *shop.window.desk()->undoStack();
    Q_EMIT shop.bench().startMoved({core::StartLine::Kind::Geodesic, 200.0, {}});
    CHECK(undo.undoText().toStdString() == "Anfang auf einer ungebogenen Linie");
    OffsetsModel& table = *shop.window.lines()->grid()->offsets();
    int sheer = 0;
    while (table.headerData(sheer, Qt::Vertical).toString() != QStringLiteral("Höhe · Sprung"))
        REQUIRE(++sheer < table.rowCount());
    REQUIRE(table.setData(table.index(sheer, 6), QStringLiteral("1-0-4+")));
    CHECK(undo.undoText().toStdString() == "Spant 6-0-0, Höhe des Sprungs");
}

TEST_CASE_METHOD(App, "what is refused is told in the window's language") {
    const English back;
    chooseLanguage(QStringLiteral("de"));
    REQUIRE(speak().toStdString() == "de");
    Workshop shop;
    shop.window.showBench(MainWindow::Bench::Lines);
    LinesBench& bench = *shop.window.lines();
    OffsetsModel& table = *bench.grid()->offsets();
    REQUIRE(table.setData(table.index(1, 6), QStringLiteral("one foot")));
    bench.grid()->setCurrentIndex(table.index(1, 6));
    const auto labels = bench.findChildren<QLabel*>();
    CHECK(std::ranges::any_of(labels, [](const QLabel* label) {
        return label->text().contains(
            QStringLiteral("\"one foot\" ist keine Länge; möglich wäre: eine Länge wie"));
    }));
    // a decision that the file's own rules refuse
    core::Planking planking = shop.window.desk()->project().planking;
    planking.narrowest = 900.0;
    Q_EMIT shop.bench().controls()->changed(planking);
    const QString problem = shop.bench().controls()->said();
    INFO(problem.toStdString());
    CHECK(problem.contains(QStringLiteral("möglich wäre")));
    CHECK_FALSE(problem.contains(QRegularExpression(QStringLiteral("\\b(the|between|length|number)\\b"))));
}

TEST_CASE_METHOD(App,
                 "what core draws for a bench is said in the window's language, whatever the paper's is") {
    const English back;
    chooseLanguage(QStringLiteral("de"));
    REQUIRE(speak().toStdString() == "de");
    const Workshop shop;
    REQUIRE(shop.window.boat()->project.language == core::Language::English);
    const Boat& boat = *shop.window.boat();
    const auto drawn = texts(shopDrawing(boat, boat.plan.strips.front(), 400.0, 100.0, false));
    CHECK(std::ranges::count(drawn, "Bug") == 1);
    CHECK(std::ranges::count(drawn, "bow") == 0);
    CHECK(core::languageSpoken() == core::Language::English); // and nothing else is
    CHECK(heardText(core::measuresText(core::measuresOf(boat.project.hull), core::Units::Millimetres))
              .contains(QStringLiteral("mm breit")));
}

TEST_CASE_METHOD(App, "the language is chosen in the Edit menu, once") {
    const English back;
    chooseLanguage(QStringLiteral("en"));
    speak();
    const MainWindow window(TaskRunner::Mode::SameThread);
    const QSignalSpy chosen(&window, &MainWindow::languageChosen);
    QAction* german = nullptr;
    for (const QMenu* menu : window.findChildren<QMenu*>())
        for (QAction* action : menu->actions())
            if (action->text() == QStringLiteral("Deutsch"))
                german = action;
    REQUIRE(german != nullptr);
    CHECK_FALSE(german->isChecked());
    german->trigger();
    CHECK(chosen.count() == 1);
    CHECK(chosenLanguage().toStdString() == "de");
    german->trigger();
    CHECK(chosen.count() == 1);
}

TEST_CASE_METHOD(App, "a language that is not spoken here leaves English") {
    const English back;
    chooseLanguage(QStringLiteral("tlh"));
    CHECK(speak().toStdString() == "en");
}
