#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/choices/choices_panel.hpp"
#include "ui/shop/shop_mode.hpp"
#include "ui/window/journal_bench.hpp"
#include "ui/window/keys_card.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/new_boat.hpp"
#include "ui/window/notice.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/project_memory.hpp"
#include "ui/window/sheets_bench.hpp"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDropEvent>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QLineEdit>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QPrintPreviewDialog>
#include <QPushButton>
#include <QSet>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QToolButton>
#include <QUndoStack>
#include <QUrl>
#include <QWindow>

#include <algorithm>
#include <array>
#include <functional>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

/// Answers modal dialogs while it lives; whoever presses the key that opens one waits for the answer.
class Answers : public QTimer {
public:
    explicit Answers(std::function<void(QWidget&)> answer) {
        connect(this, &QTimer::timeout, this, [this, answer = std::move(answer)] {
            QWidget* dialog = QApplication::activeModalWidget();
            if (dialog == nullptr)
                return;
            ++asked;
            answer(*dialog);
        });
        start(20);
    }
    int asked = 0;
};

void pressIn(QWidget& dialog, const char* text) {
    for (QPushButton* button : dialog.findChildren<QPushButton*>())
        if (button->text() == QString::fromUtf8(text))
            button->click();
}

/// As by hand; after a dialog the window comes forward again first.
void press(MainWindow& window, Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
    window.activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(&window, patience)); // a shortcut wants an active window
    QTest::keyClick(window.windowHandle(), key, with);
}

void turnTapers(core::Project& project) {
    project.planking.taper =
        project.planking.taper == core::Taper::None ? core::Taper::Ends : core::Taper::None;
}

} // namespace

TEST_CASE_METHOD(App,
                 "a new user is shown an example in three steps, and never again once they are skipped") {
    const auto answer = [](const MainWindow& window) { return window.notice()->answers(); };
    QSettings().remove(QStringLiteral("welcomed"));
    {
        MainWindow window(TaskRunner::Mode::SameThread);
        window.welcome();
        REQUIRE(window.boat() != nullptr);
        CHECK(window.boat()->project.name == "Brindlewick");
        REQUIRE(answer(window).size() == 2);
        QStringList said;
        for (int step = 0; step < 2; ++step) {
            said << window.notice()->text();
            answer(window).front()->click();
        }
        said << window.notice()->text();
        CHECK(QSet<QString>(said.begin(), said.end()).size() == 3);
        CHECK(answer(window).size() == 1); // the last step has no next one
    }
    {
        MainWindow window(TaskRunner::Mode::SameThread); // left before the end: it is shown again
        window.welcome();
        REQUIRE(answer(window).size() == 2);
        answer(window).back()->click();
    }
    MainWindow window(TaskRunner::Mode::SameThread);
    window.welcome();
    CHECK(window.boat() == nullptr);
    CHECK(answer(window).empty());
}

TEST_CASE_METHOD(App, "the boat is written for other programs, and what stands in the way is told") {
    Workshop shop;
    QTemporaryDir out;
    shop.window.exportTo(out.path());
    for (const char* name : {"boat.glb", "strips.step", "hull.stl", "strips.csv", "offsets.csv"}) {
        INFO(name);
        CHECK(QFileInfo(out.filePath(QString::fromLatin1(name))).size() > 1000);
        CHECK(shop.window.notice()->text().contains(QString::fromLatin1(name)));
    }
    // a file where the folder should be
    write(out.filePath(QStringLiteral("taken")), "x");
    shop.window.exportTo(out.filePath(QStringLiteral("taken")));
    CHECK(shop.window.notice()->text().contains(QStringLiteral("can't be written")));
    CHECK(bytesOf(out.filePath(QStringLiteral("taken"))) == "x");
    CHECK_FALSE(shop.window.notice()->text().contains(QStringLiteral("Moulds and strongback are left out")));
    shop.rewrite(shop.good + "\n[moulds]\nstations = [-5000]\n"); // all before the bow
    QTemporaryDir without;
    shop.window.exportTo(without.path());
    CHECK(QFileInfo(without.filePath(QStringLiteral("boat.glb"))).size() > 1000);
    CHECK_FALSE(QFileInfo::exists(without.filePath(QStringLiteral("moulds.step"))));
    CHECK(shop.window.notice()->text().contains(QStringLiteral("Moulds and strongback are left out")));
}

TEST_CASE_METHOD(App, "writing for other programs tells how far it is, and can be given up") {
    MainWindow window(TaskRunner::Mode::Thread);
    QSignalSpy loaded(&window, &MainWindow::loaded);
    window.open(referenceProject());
    REQUIRE(loaded.wait(patience));
    QTemporaryDir out;
    window.exportTo(out.path());
    REQUIRE(
        QTest::qWaitFor([&] { return window.notice()->text().contains(QStringLiteral(".step")); }, patience));
    REQUIRE(window.notice()->answers().size() == 1);
    window.notice()->answers()[0]->click();
    CHECK(window.notice()->text() == QStringLiteral("No file was written."));
    QTest::qWait(500); // what still runs leaves nothing behind and says nothing
    CHECK(window.notice()->text() == QStringLiteral("No file was written."));
    CHECK(QTest::qWaitFor(
        [&] { return QDir(out.path()).isEmpty(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot); },
        patience));
}

TEST_CASE_METHOD(App, "a project file that is dropped on the window is opened, and remembered") {
    Workshop shop;
    const QString other = shop.folder.filePath(QStringLiteral("other.sheerlay"));
    write(other, shop.good);
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(other)});
    QDragEnterEvent enter({50, 50}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&shop.window, &enter);
    CHECK(enter.isAccepted());
    QDropEvent drop({50, 50}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&shop.window, &drop);
    CHECK(shop.window.desk()->path() == other);
    CHECK(QSettings().value(QStringLiteral("recent")).toStringList().value(0) == other);
    QStringList listed;
    for (QMenu* menu : shop.window.findChildren<QMenu*>()) {
        Q_EMIT menu->aboutToShow();
        for (const QAction* action : menu->actions())
            listed << action->text();
    }
    CHECK(listed.contains(QStringLiteral("other.sheerlay")));
    CHECK(listed.contains(QStringLiteral("canoe.sheerlay")));

    QMimeData picture;
    picture.setUrls({QUrl::fromLocalFile(shop.folder.filePath(QStringLiteral("boat.png")))});
    QDragEnterEvent asked({50, 50}, Qt::CopyAction, &picture, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&shop.window, &asked);
    CHECK(asked.isAccepted()); // to be told why not
    QDropEvent useless({50, 50}, Qt::CopyAction, &picture, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&shop.window, &useless);
    CHECK(shop.window.notice()->text().contains(QStringLiteral("boat.png")));
    CHECK(shop.window.notice()->text().contains(QStringLiteral(".sheerlay")));
    CHECK(shop.window.desk()->path() == other);
    CHECK_FALSE(shop.window.newBoat()->isVisible());

    QMimeData words;
    words.setText(QStringLiteral("boat"));
    QDragEnterEvent refused({50, 50}, Qt::CopyAction, &words, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&shop.window, &refused);
    CHECK_FALSE(refused.isAccepted());
}

TEST_CASE_METHOD(App, "paper chosen by hand goes for all benches of pages, and is an edit of the project") {
    Workshop shop;
    const std::array benches{
        shop.window.moulds(), shop.window.stock(), shop.window.sheets(), shop.window.fittingOut()};
    const auto on = [&](core::PageSize size) {
        return std::ranges::all_of(benches, [&](const SheetsBench* bench) { return bench->page() == size; });
    };
    CHECK(on(core::PageSize::A4)); // with millimetres
    for (QComboBox* box : shop.window.stock()->findChildren<QComboBox*>())
        if (box->accessibleName() == QStringLiteral("Paper")) {
            box->setCurrentText(QStringLiteral("Tabloid"));
            Q_EMIT box->activated(box->currentIndex());
        }
    CHECK(on(core::PageSize::Tabloid));
    CHECK(shop.window.desk()->project().paper.size == core::PageSize::Tabloid);
    shop.window.desk()->undoStack()->undo();
    CHECK(on(core::PageSize::A4));
    shop.window.desk()->undoStack()->redo();
    CHECK(on(core::PageSize::Tabloid));
}

TEST_CASE_METHOD(App,
                 "rows that share a sheet are an edit of the project, and nothing is planned anew for it") {
    Workshop shop;
    const auto planked = shop.window.boat()->planned;
    const auto boxes = shop.window.sheets()->findChildren<QCheckBox*>();
    REQUIRE(boxes.size() == 1);
    CHECK_FALSE(boxes.front()->isChecked());
    boxes.front()->click();
    CHECK(shop.window.desk()->project().paper.severalRows);
    CHECK(shop.window.boat()->project.paper.severalRows);
    CHECK(shop.window.boat()->planned == planked);
    shop.window.desk()->undoStack()->undo();
    CHECK_FALSE(shop.window.boat()->project.paper.severalRows);
    CHECK_FALSE(boxes.front()->isChecked());
}

TEST_CASE_METHOD(App, "the language of the paper is an edit, and nothing is planned anew for it") {
    Workshop shop;
    const auto planked = shop.window.boat()->planned;
    QComboBox* language = nullptr;
    for (QComboBox* box : shop.window.sheets()->findChildren<QComboBox*>())
        if (box->accessibleName() == QStringLiteral("Language of the paper"))
            language = box;
    REQUIRE(language != nullptr);
    CHECK(language->currentText() == QStringLiteral("English"));
    language->setCurrentText(QStringLiteral("Deutsch"));
    Q_EMIT language->activated(language->currentIndex());
    CHECK(shop.window.desk()->project().language == core::Language::German);
    CHECK(shop.window.boat()->project.language == core::Language::German);
    CHECK(shop.window.boat()->planned == planked);
    shop.window.desk()->undoStack()->undo();
    CHECK(shop.window.desk()->project().language == core::Language::English);
    CHECK(shop.window.boat()->project.language == core::Language::English);
    CHECK(language->currentText() == QStringLiteral("English"));
}

TEST_CASE_METHOD(App, "F1 says what the keys do") {
    Workshop shop;
    shop.window.show();
    REQUIRE(QTest::qWaitForWindowActive(&shop.window, patience)); // a shortcut wants an active window
    KeysCard& card = *shop.window.keys();
    CHECK_FALSE(card.isVisible());
    QTest::keyClick(&shop.window, Qt::Key_F1);
    CHECK(card.isVisible());
    CHECK(card.geometry().center().x() == shop.window.rect().center().x());
    CHECK(shop.window.rect().contains(card.geometry()));
    for (const char* key :
         {"F11 ", "Esc ", "Space ", "Ctrl+S ", "Ctrl+Shift+S ", "Ctrl+P ", "Ctrl+Q ", "Ctrl+Z ", "F1 ", "7 "})
        CHECK(std::ranges::any_of(
            card.lines(), [&](const QString& line) { return line.startsWith(QString::fromUtf8(key)); }));
    QTest::keyClick(&shop.window, Qt::Key_Escape);
    CHECK_FALSE(card.isVisible());
}

TEST_CASE_METHOD(App, "in the shop F1 says shop mode's keys, and the next key only puts the card away") {
    Workshop shop;
    shop.window.enterShop();
    ShopMode& mode = *shop.window.shop();
    REQUIRE(QTest::qWaitForWindowActive(&mode, patience));
    KeysCard& card = *shop.window.shopKeys();
    const auto press = [&](Qt::Key key) { QTest::keyClick(mode.windowHandle(), key); };
    press(Qt::Key_F1);
    CHECK(card.isVisible());
    CHECK_FALSE(shop.window.keys()->isVisible());
    CHECK(mode.rect().contains(card.geometry()));
    for (const char* key : {"Return ", "G ", "Backspace ", "Left ", "Right ", "L ", "Esc ", "F1 "})
        CHECK(std::ranges::any_of(
            card.lines(), [&](const QString& line) { return line.startsWith(QString::fromUtf8(key)); }));
    press(Qt::Key_Return);
    CHECK_FALSE(card.isVisible());
    CHECK(shop.window.desk()->project().journal.laid.empty()); // nothing was marked behind it
    press(Qt::Key_F1);
    press(Qt::Key_F1);
    CHECK_FALSE(card.isVisible());
    press(Qt::Key_F1);
    press(Qt::Key_Escape);
    CHECK_FALSE(card.isVisible());
    CHECK(mode.isVisible());
    press(Qt::Key_Return); // the keys are the shop's again
    CHECK(shop.window.desk()->project().journal.laid.size() == 1);
    press(Qt::Key_Escape);
    CHECK_FALSE(mode.isVisible());
}

TEST_CASE_METHOD(App, "Ctrl+Shift+S writes the project under another name and goes on there") {
    Workshop shop;
    shop.window.show();
    core::Project next = shop.window.desk()->project();
    turnTapers(next);
    shop.window.desk()->edit(QStringLiteral("Tapers"), next);
    CHECK(QFileInfo::exists(shop.path + QStringLiteral(".unsaved")));
    rememberShopPlace(shop.path, QStringLiteral("S-07"));
    rememberPrintRecord(shop.path, "printed");
    shop.window.showBench(MainWindow::Bench::Journal);
    QTest::keyClicks(shop.window.journal()->fields().at(2), QStringLiteral("300")); // waits to be accepted
    REQUIRE(openRoundOf(shop.path));
    const QString other = shop.folder.filePath(QStringLiteral("other.sheerlay"));
    const auto pressSaveAs = [&] { press(shop.window, Qt::Key_S, Qt::ControlModifier | Qt::ShiftModifier); };
    const char* replacing = "Leave it";
    Answers answers([&](QWidget& dialog) {
        if (auto* files = qobject_cast<QFileDialog*>(&dialog)) {
            files->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))
                ->setText(shop.folder.filePath(QStringLiteral("other"))); // the ending comes by itself
            QMetaObject::invokeMethod(files, "accept");
        } else {
            pressIn(dialog, replacing);
        }
    });
    pressSaveAs();
    CHECK(answers.asked == 1);
    CHECK(shop.window.desk()->path() == other);
    CHECK_FALSE(shop.window.isWindowModified());
    CHECK(bytesOf(shop.path) == shop.good); // as it was saved last
    CHECK_FALSE(bytesOf(other) == shop.good);
    CHECK_FALSE(QFileInfo::exists(shop.path + QStringLiteral(".unsaved")));
    CHECK(shopPlaceOf(other) == QStringLiteral("S-07"));
    CHECK(printRecordOf(other) == "printed");
    REQUIRE(openRoundOf(other));
    CHECK(openRoundOf(other)->girthLeft.front().printedGirth.starts_with("300"));
    CHECK_FALSE(openRoundOf(shop.path));
    CHECK(QSettings().value(QStringLiteral("recent")).toStringList().value(0) == other);
    CHECK(shop.window.notice()->text().contains(QStringLiteral("other.sheerlay")));

    // unsaved work, saving and steps back go on there
    shop.window.desk()->undoStack()->undo();
    CHECK(shop.window.desk()->project().planking.taper != next.planking.taper);
    CHECK(QFileInfo::exists(other + QStringLiteral(".unsaved")));
    REQUIRE(shop.window.save());
    CHECK(bytesOf(shop.path) == shop.good);

    // a file that stands there is replaced only when asked to be
    shop.window.open(shop.path);
    write(other, "another boat");
    answers.asked = 0;
    pressSaveAs();
    CHECK(answers.asked == 2); // the name, and whether
    CHECK(bytesOf(other) == "another boat");
    CHECK(shop.window.desk()->path() == shop.path);
    replacing = "Replace it";
    pressSaveAs();
    CHECK(shop.window.desk()->path() == other);
    CHECK(bytesOf(other + QStringLiteral("~")) == "another boat");

    // where nothing can be written all stays
    CHECK_FALSE(shop.window.saveAs(shop.folder.filePath(QStringLiteral("none/boat.sheerlay"))));
    CHECK(shop.window.desk()->path() == other);
    CHECK(shop.window.notice()->text().contains(QStringLiteral("not saved")));
}

TEST_CASE_METHOD(App, "Ctrl+P prints the pages of the bench in hand, or goes to the sheets") {
    Workshop shop;
    shop.window.show();
    bool previewed = false;
    Answers answers([&](QWidget& dialog) {
        previewed = qobject_cast<QPrintPreviewDialog*>(&dialog) != nullptr;
        dialog.close();
    });
    press(shop.window, Qt::Key_3);
    press(shop.window, Qt::Key_P, Qt::ControlModifier);
    CHECK(shop.window.sheets()->isVisible());
    CHECK(answers.asked == 0);
    press(shop.window, Qt::Key_2);
    press(shop.window, Qt::Key_P, Qt::ControlModifier);
    CHECK(shop.window.moulds()->isVisible());
    CHECK(previewed);
}

TEST_CASE_METHOD(App, "Ctrl+Q closes, and asks first when something would be lost") {
    Workshop shop;
    shop.window.show();
    const auto quit = [&] { press(shop.window, Qt::Key_Q, Qt::ControlModifier); };
    core::Project next = shop.window.desk()->project();
    turnTapers(next);
    shop.window.desk()->edit(QStringLiteral("Tapers"), next);
    Answers answers([](QWidget& dialog) { pressIn(dialog, "Go on working"); });
    quit();
    CHECK(answers.asked == 1);
    CHECK(shop.window.isVisible());
    REQUIRE(shop.window.save());
    quit();
    CHECK(answers.asked == 1);
    CHECK_FALSE(shop.window.isVisible());
}

TEST_CASE_METHOD(App,
                 "what is decided beside the pages is one edit, lays out the pages and leaves the strips") {
    Workshop shop;
    shop.window.show();
    shop.window.showBench(MainWindow::Bench::Moulds);
    SheetsBench& bench = *shop.window.moulds();
    bench.showChoices(true);
    const auto before = bench.sheets().size();
    const auto boat = shop.window.boat();
    auto* spacing =
        qobject_cast<QLineEdit*>(bench.choices()->field(QStringLiteral("Moulds"), QStringLiteral("Spacing")));
    REQUIRE(spacing != nullptr);
    QTest::keyClicks(spacing, QStringLiteral("6 in"));
    QTest::keyClick(spacing, Qt::Key_Return);
    CHECK(shop.window.desk()->undoStack()->undoText() == QStringLiteral("Moulds: spacing"));
    CHECK(bench.sheets().size() > before); // moulds at every 6 in
    CHECK_FALSE(shop.window.stale());
    CHECK(shop.window.boat()->plan.milliseconds == boat->plan.milliseconds); // the same plan, not a new one
    // one that core refuses is told in place
    spacing->selectAll();
    QTest::keyClicks(spacing, QStringLiteral("1 mm"));
    QTest::keyClick(spacing, Qt::Key_Return);
    CHECK_FALSE(bench.choices()->said().isEmpty());
    CHECK(shop.window.desk()->undoStack()->count() == 1);
    REQUIRE(shop.window.save());
    CHECK(bytesOf(shop.path).startsWith(shop.good));
    CHECK(bytesOf(shop.path).contains("[moulds]"));
    shop.window.desk()->undoStack()->undo();
    CHECK(bench.sheets().size() == before);
    CHECK(spacing->text().isEmpty());
    REQUIRE(shop.window.save());
    CHECK_FALSE(bytesOf(shop.path).contains("[moulds]"));
}
