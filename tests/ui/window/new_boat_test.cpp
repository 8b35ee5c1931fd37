#include "core/project/project_file.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/window_workshop.hpp"
#include "ui/view3d/boat_view.hpp"
#include "ui/window/language.hpp"
#include "ui/window/new_boat.hpp"

#include <QDragEnterEvent>
#include <QDropEvent>
#include <QLineEdit>
#include <QMimeData>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QTest>
#include <QUrl>

using namespace sheerlay;
using namespace sheerlay::ui;
using namespace sheerlay::test;

namespace {

/// A table whose waterlines are numbered: their spacing has to be said.
const QByteArray table = "Half-breadths mm,0,600,1200,1800,2400\n"
                         "Sheer height,400,350,330,350,400\n"
                         "Keel height,60,10,0,10,60\n"
                         "Sheer half-breadth,60,300,380,300,60\n"
                         "WL 1,30,230,340,230,30\n"
                         "WL 2,45,270,370,270,45\n";

struct Bench {
    QTemporaryDir folder;
    NewBoat begin{TaskRunner::Mode::SameThread};
    QString source = folder.filePath(QStringLiteral("mallard.csv"));
    QString project = folder.filePath(QStringLiteral("mallard"));
    Bench() { write(source, table); }
};

} // namespace

TEST_CASE_METHOD(App, "a boat is begun from a table, put right by a line, and written where no file is") {
    Bench bench;
    bench.begin.takeFile(bench.source);
    CHECK(bench.begin.name()->text() == QStringLiteral("mallard"));
    INFO(bench.begin.said().toStdString());
    CHECK_FALSE(bench.begin.writeButton()->isEnabled());
    CHECK(bench.begin.said().contains(QStringLiteral("waterline-spacing")));
    CHECK_FALSE(bench.begin.said().contains(QStringLiteral("--take")));

    bench.begin.corrections()->setPlainText(QStringLiteral("waterline-spacing = 100 mm"));
    CHECK(bench.begin.said().isEmpty()); // what stood there was of before
    bench.begin.read();
    CHECK(bench.begin.writeButton()->isEnabled());
    QSignalSpy begun(&bench.begin, &NewBoat::begun);
    bench.begin.writeTo(bench.project);
    REQUIRE(begun.count() == 1);
    const QString written = begun.front().front().toString();
    CHECK(written == bench.project + QStringLiteral(".sheerlay"));
    const auto read = core::parseProject(bytesOf(written).toStdString(), "");
    REQUIRE(read.has_value());
    CHECK(read->project.hull.stations.size() == 5);

    bench.begin.read();
    bench.begin.writeTo(bench.project);
    CHECK(begun.count() == 1);
    CHECK(bench.begin.said().contains(QStringLiteral("Choose another name")));
}

TEST_CASE_METHOD(App, "without a file she begins as the starter; without a name not at all") {
    Bench bench;
    bench.begin.read();
    CHECK_FALSE(bench.begin.writeButton()->isEnabled());
    CHECK(bench.begin.said().contains(QStringLiteral("name")));
    bench.begin.name()->setText(QStringLiteral("Mallard"));
    bench.begin.read();
    CHECK(bench.begin.writeButton()->isEnabled());
    // typed, she is ready at once: there is nothing to read
    bench.begin.name()->clear();
    QTest::keyClick(bench.begin.name(), Qt::Key_M);
    CHECK(bench.begin.writeButton()->isEnabled());
    CHECK(bench.begin.said().contains(QStringLiteral("table")));
    QTest::keyClick(bench.begin.name(), Qt::Key_Backspace);
    CHECK_FALSE(bench.begin.writeButton()->isEnabled());
    CHECK(bench.begin.said().isEmpty());
}

TEST_CASE_METHOD(App, "what can't be read is told, and leaves nothing to write") {
    Bench bench;
    const QString other = bench.folder.filePath(QStringLiteral("mallard.pdf"));
    write(other, "hello");
    bench.begin.takeFile(other);
    CHECK(bench.begin.said().contains(QStringLiteral(".csv")));
    const QString drawing = bench.folder.filePath(QStringLiteral("mallard.dxf"));
    write(drawing, "hello\nworld\n");
    bench.begin.takeFile(drawing);
    CHECK(bench.begin.said().contains(QStringLiteral("group code")));
    bench.begin.takeFile(bench.source);
    bench.begin.corrections()->setPlainText(QStringLiteral("waterlines"));
    bench.begin.read();
    CHECK(bench.begin.said().contains(QStringLiteral("KEY = VALUE")));
    CHECK_FALSE(bench.begin.writeButton()->isEnabled());
}

TEST_CASE_METHOD(App, "a reading that is given up writes nothing") {
    Bench bench;
    NewBoat begin(TaskRunner::Mode::Thread);
    begin.takeFile(bench.source);
    REQUIRE(begin.busy());
    begin.stop();
    CHECK_FALSE(begin.busy());
    CHECK(begin.said().contains(QStringLiteral("Given up")));
    QTest::qWait(100);
    CHECK_FALSE(begin.writeButton()->isEnabled());
}

TEST_CASE_METHOD(App, "a table dropped on the window is read; the project then stands on the desk") {
    Bench bench;
    MainWindow window(TaskRunner::Mode::SameThread);
    QMimeData dropped;
    dropped.setUrls({QUrl::fromLocalFile(bench.source)});
    QDragEnterEvent enter({10, 10}, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&window, &enter);
    CHECK(enter.isAccepted());
    QDropEvent drop({10, 10}, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&window, &drop);
    REQUIRE(window.newBoat()->isVisible());
    CHECK(window.newBoat()->source()->text() == bench.source);
    window.newBoat()->corrections()->setPlainText(QStringLiteral("waterline-spacing = 100 mm"));
    window.newBoat()->read();
    window.newBoat()->writeTo(bench.project);
    CHECK_FALSE(window.newBoat()->isVisible());
    CHECK(window.windowTitle().contains(QStringLiteral("mallard")));
}

TEST_CASE_METHOD(App, "a file dropped on the form is taken up there; a name typed by hand stays") {
    Bench bench;
    const QString other = bench.folder.filePath(QStringLiteral("teal.csv"));
    write(other, table);
    const auto drop = [&bench](QWidget* on, const QString& path) {
        QMimeData dropped;
        dropped.setUrls({QUrl::fromLocalFile(path)});
        QDragEnterEvent enter({5, 5}, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(on, &enter);
        if (!enter.isAccepted()) // goes on to the form, as Qt has it for a widget that takes nothing
            on = &bench.begin;
        QDropEvent event({5, 5}, Qt::CopyAction, &dropped, Qt::LeftButton, Qt::NoModifier);
        QCoreApplication::sendEvent(on, &event);
    };
    drop(bench.begin.source(), bench.source);
    CHECK(bench.begin.source()->text() == bench.source);
    CHECK(bench.begin.name()->text() == QStringLiteral("mallard"));
    drop(bench.begin.corrections()->viewport(), other);
    CHECK(bench.begin.source()->text() == other);
    CHECK(bench.begin.name()->text() == QStringLiteral("teal"));
    CHECK(bench.begin.corrections()->toPlainText().isEmpty());

    bench.begin.name()->clear();
    QTest::keyClicks(bench.begin.name(), QStringLiteral("Grey Teal"));
    drop(bench.begin.name(), bench.source);
    CHECK(bench.begin.source()->text() == bench.source);
    CHECK(bench.begin.name()->text() == QStringLiteral("Grey Teal"));
}

TEST_CASE_METHOD(App, "in a German window a table's reading and its faults are told in German") {
    const struct English {
        ~English() {
            chooseLanguage(QStringLiteral("en"));
            speak();
        }
    } back;
    chooseLanguage(QStringLiteral("de"));
    REQUIRE(speak().toStdString() == "de");
    // words of English sentences; the keys of corrections are typed in English
    const QRegularExpression english(QStringLiteral(
        "\\b(the|of|and|that|which|with|without|stand|stands|cells|length|can't|read|such|points|"
        "lengths|numbers|no|not|is|are|by)\\b"));
    Bench bench;
    bench.begin.takeFile(bench.source);
    CHECK(bench.begin.said().toStdString().find("nummeriert") != std::string::npos);
    INFO(bench.begin.said().toStdString());
    CHECK_FALSE(bench.begin.said().contains(english));

    bench.begin.corrections()->setPlainText(QStringLiteral("waterline-spacing = 100 mm"));
    bench.begin.read();
    const QString read = bench.begin.said();
    INFO(read.toStdString());
    CHECK(read.contains(QStringLiteral("halbe Breiten auf der Wasserlinie")));
    CHECK(read.contains(QStringLiteral("Spanten stehen in Spalten")));
    CHECK_FALSE(read.contains(english));

    for (const char* faulty : {"",
                               "hello",
                               "PK\x03\x04",
                               "Half-breadths,0,600,1200\n",
                               "mm,0,600,1200\nSheer height,400,350,330\nKeel height,60,10,0\n",
                               "mm,0,600,1200\nSheer height,400,350,330\nSheer half-breadth,60,-300,380\n"
                               "Keel height,60,10,0\nWL 100 mm,30,230,340\n",
                               "mm,0,600,1200\nSheer height,400,,330\nSheer half-breadth,60,300,380\n"
                               "Keel height,60,10,0\nWL 100 mm,30,230,340\n",
                               "mm,0,600,1200\nSheer height,400,350,330\nSheer half-breadth,60,300,380\n"
                               "Keel height,60,390,0\nWL 100 mm,30,230,340\n",
                               "mm,0,600,600\nSheer height,400,350,330\nSheer half-breadth,60,300,380\n"
                               "Keel height,60,10,0\nWL 100 mm,30,230,340\n",
                               "mm,0,600,1200\nSheer height,400,350,330\nSheer half-breadth,60,300,380\n"
                               "WL 100 mm,30,230,340\n"}) {
        write(bench.source, faulty);
        bench.begin.takeFile(bench.source);
        INFO(faulty << "\n-> " << bench.begin.said().toStdString());
        CHECK_FALSE(bench.begin.said().isEmpty());
        CHECK_FALSE(bench.begin.said().contains(english));
    }
    write(bench.source, table);
    for (const char* line :
         {"waterlines", "bow = 3", "labels = none", "row 99 = unused", "column 2 = unused"}) {
        bench.begin.corrections()->setPlainText(QString::fromUtf8(line));
        bench.begin.read();
        INFO(line << " -> " << bench.begin.said().toStdString());
        CHECK_FALSE(bench.begin.said().isEmpty());
        CHECK_FALSE(bench.begin.said().contains(english));
    }
}
