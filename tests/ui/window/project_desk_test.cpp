#include "core/project/project_file.hpp"
#include "core/project/project_writer.hpp"
#include "tests/support/catch.hpp"
#include "ui/window/project_desk.hpp"

#include <QFile>
#include <QTemporaryDir>
#include <QUndoStack>

#include <chrono>
#include <random>
#include <string>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

using namespace sheerlay;
using ui::ProjectDesk;

namespace {

std::string bytesOf(const QString& path) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll().toStdString();
}

void write(const QString& path, const std::string& bytes) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
    file.write(QByteArray::fromStdString(bytes));
}

core::Project parse(const std::string& text) {
    const auto read = core::parseProject(text, "test");
    REQUIRE(read.has_value());
    return read->project;
}

/// A desk with a copy of the reference project on it.
struct Desk {
    QTemporaryDir folder;
    QString path = folder.filePath(QStringLiteral("canoe.sheerlay"));
    std::string text = "# mine\n" + bytesOf(QStringLiteral(SHEERLAY_REFERENCE "/formula_canoe.sheerlay"));
    ProjectDesk desk;

    Desk() {
        write(path, text);
        reopen();
    }
    void reopen() { desk.open(path, bytesOf(path), parse(bytesOf(path))); }
    void taper(core::Taper taper) {
        core::Project next = desk.project();
        next.planking.taper = taper;
        desk.edit(QStringLiteral("Taper"), next);
    }
    /// Works at the file in a process of its own, turn by turn, and kills it so long after a turn was done.
    /// @return  turns that were done
    template <class Turn> int killedWhile(Turn turn, unsigned turns, unsigned microseconds) const {
        int told[2];
        REQUIRE(::pipe(told) == 0);
        const std::string before = bytesOf(path);
        const pid_t child = ::fork();
        REQUIRE(child >= 0);
        if (child == 0) {
            ProjectDesk killed;
            killed.open(path, before, parse(before));
            for (int i = 0;; ++i) {
                turn(killed, i);
                (void)!::write(told[1], "t", 1);
            }
        }
        ::close(told[1]);
        int done = 0;
        char byte = 0;
        while (done < static_cast<int>(turns) && ::read(told[0], &byte, 1) == 1)
            ++done;
        REQUIRE(done == static_cast<int>(turns));
        std::this_thread::sleep_for(std::chrono::microseconds(microseconds));
        ::kill(child, SIGKILL);
        while (::read(told[0], &byte, 1) == 1)
            ++done;
        ::close(told[0]);
        int status = 0;
        REQUIRE(::waitpid(child, &status, 0) == child);
        CHECK(WIFSIGNALED(status));
        return done;
    }
    core::Taper saved() const { return parse(bytesOf(path)).planking.taper; }
};

} // namespace

TEST_CASE_METHOD(Desk, "edits are undone and done again, and the desk knows when nothing is left to save") {
    CHECK(!desk.dirty());
    taper(core::Taper::Ends);
    taper(core::Taper::Anywhere);
    CHECK(desk.dirty());
    CHECK(desk.undoStack()->undoText() == QStringLiteral("Taper"));
    desk.undoStack()->undo();
    CHECK(desk.project().planking.taper == core::Taper::Ends);
    desk.undoStack()->undo();
    CHECK(!desk.dirty());
    CHECK(desk.project() == parse(text));
    CHECK(!QFile::exists(desk.keptPath()));
    desk.undoStack()->redo();
    CHECK(desk.project().planking.taper == core::Taper::Ends);
    taper(core::Taper::Ends); // nothing new is no step
    CHECK(desk.undoStack()->count() == 2);
}

TEST_CASE_METHOD(Desk, "saving writes the file in its own words and keeps the one before it") {
    taper(core::Taper::Anywhere);
    CHECK(QFile::exists(desk.keptPath()));
    REQUIRE(desk.save() == ProjectDesk::Saved::Yes);
    CHECK(saved() == core::Taper::Anywhere);
    CHECK(bytesOf(path).starts_with("# mine\n"));
    CHECK(bytesOf(desk.backupPath()) == text);
    CHECK(!desk.dirty());
    CHECK(!QFile::exists(desk.keptPath()));
    desk.undoStack()->undo(); // back over a save is a change again
    CHECK(desk.dirty());
    REQUIRE(desk.save() == ProjectDesk::Saved::Yes);
    CHECK(core::writeProject(parse(bytesOf(path))) == core::writeProject(parse(text)));
}

TEST_CASE_METHOD(Desk, "unsaved work is found again, and makes room without being lost") {
    taper(core::Taper::Ends);
    const std::string unsaved = bytesOf(desk.keptPath());
    ProjectDesk next; // the next session, after the first was killed
    next.open(path, bytesOf(path), parse(bytesOf(path)));
    REQUIRE(next.kept().has_value());
    CHECK(next.kept()->planking.taper == core::Taper::Ends);
    core::Project other = next.project();
    other.planking.closing = core::ClosingMethod::RunOver;
    next.edit(QStringLiteral("Closing"), other);
    CHECK(bytesOf(next.keptPath() + QStringLiteral("~")) == unsaved);
    next.forgetKept();
    CHECK(!next.kept().has_value());
}

TEST_CASE_METHOD(Desk, "a file that was changed elsewhere is not written over, and both can come together") {
    taper(core::Taper::Ends);
    core::Project theirs = parse(text);
    theirs.name = "Theirs";
    theirs.planking.closing = core::ClosingMethod::RunOver;
    const std::string theirText = core::writeProject(theirs);
    write(path, theirText);
    CHECK(desk.changedOnDisk());
    CHECK(desk.save() == ProjectDesk::Saved::ChangedOnDisk);
    CHECK(bytesOf(path) == theirText);
    desk.takeGround(theirText, parse(theirText));
    CHECK(desk.dirty());
    REQUIRE(desk.save() == ProjectDesk::Saved::Yes);
    const core::Project both = parse(bytesOf(path));
    CHECK(both.name == "Theirs");
    CHECK(both.planking.closing == core::ClosingMethod::RunOver);
    CHECK(both.planking.taper == core::Taper::Ends);
    // over a file that can't be read: mine, and the other is kept
    taper(core::Taper::Anywhere);
    write(path, "broken = = 1");
    CHECK(desk.save() == ProjectDesk::Saved::ChangedOnDisk);
    desk.takeGround("broken = = 1", std::nullopt);
    REQUIRE(desk.save() == ProjectDesk::Saved::Yes);
    CHECK(saved() == core::Taper::Anywhere);
    CHECK(bytesOf(desk.backupPath()) == "broken = = 1");
}

TEST_CASE_METHOD(Desk, "saved under another name, all goes on there and the old file stays as it was") {
    const QString other = folder.filePath(QStringLiteral("other.sheerlay"));
    const core::Taper taken =
        desk.project().planking.taper == core::Taper::Ends ? core::Taper::None : core::Taper::Ends;
    taper(taken);
    REQUIRE(QFile::exists(path + QStringLiteral(".unsaved")));
    CHECK_FALSE(desk.saveAs(folder.filePath(QStringLiteral("none/other.sheerlay"))));
    CHECK_FALSE(desk.problem().isEmpty());
    CHECK(desk.path() == path);
    CHECK(desk.dirty());
    CHECK(QFile::exists(path + QStringLiteral(".unsaved")));

    write(other, "another boat");
    write(other + QStringLiteral(".unsaved"), "work on another boat");
    REQUIRE(desk.saveAs(other));
    CHECK(desk.path() == other);
    CHECK_FALSE(desk.dirty());
    CHECK(bytesOf(path) == text);
    CHECK(bytesOf(other).substr(0, 7) == "# mine\n");
    CHECK(parse(bytesOf(other)).planking.taper == taken);
    CHECK(bytesOf(other + QStringLiteral("~")) == "another boat");
    CHECK(bytesOf(other + QStringLiteral(".unsaved~")) == "work on another boat");
    CHECK_FALSE(QFile::exists(other + QStringLiteral(".unsaved")));
    CHECK_FALSE(QFile::exists(path + QStringLiteral(".unsaved")));

    desk.undoStack()->undo(); // steps back are not lost
    CHECK(desk.dirty());
    CHECK(QFile::exists(other + QStringLiteral(".unsaved")));
    REQUIRE(desk.save() == ProjectDesk::Saved::Yes);
    CHECK(bytesOf(path) == text);
    CHECK(parse(bytesOf(other)).planking.taper != taken);
}

TEST_CASE_METHOD(Desk, "what can't be written is said and stays on the desk") {
    taper(core::Taper::Ends);
    REQUIRE(QFile::remove(desk.backupPath()) == false);
    REQUIRE(QDir().mkdir(desk.backupPath())); // nothing can take the place of a folder
    CHECK(desk.save() == ProjectDesk::Saved::CannotWrite);
    CHECK(!desk.problem().isEmpty());
    CHECK(desk.dirty());
    CHECK(bytesOf(path) == text);
}

TEST_CASE_METHOD(Desk, "killed at any moment, no project is lost") {
    std::mt19937 random(7); // NOLINT: the same moments every time
    int saves = 0;
    for (int round = 0; round < 200; ++round) {
        const std::string before = bytesOf(path);
        // the killing falls into the saving after the first, second or third, however slow
        (void)killedWhile(
            [&](ProjectDesk& killed, int) {
                core::Project next = killed.project();
                next.planking.taper =
                    next.planking.taper == core::Taper::Ends ? core::Taper::Anywhere : core::Taper::Ends;
                killed.edit(QStringLiteral("Taper"), next);
                (void)killed.save();
            },
            static_cast<unsigned>(random() % 3),
            static_cast<unsigned>(random() % 5000));
        const core::Project now = parse(bytesOf(path)); // whole, whatever happened
        saves += bytesOf(path) != before ? 1 : 0;
        CHECK(now.hull == parse(text).hull);
        if (QFile::exists(desk.keptPath()))
            CHECK(parse(bytesOf(desk.keptPath())).hull == now.hull);
        if (QFile::exists(desk.backupPath()))
            CHECK(parse(bytesOf(desk.backupPath())).hull == now.hull);
    }
    CHECK(saves > 50); // the kills did fall among saves
}

TEST_CASE_METHOD(Desk, "killed during edits, every edit that was done is found again") {
    std::mt19937 random(11); // NOLINT: the same moments every time
    for (int round = 0; round < 200; ++round) {
        desk.forgetKept();
        const int done = killedWhile(
            [](ProjectDesk& killed, int turn) {
                core::Project next = killed.project();
                next.planking.start = {core::StartLine::Kind::Geodesic, 100.0 + turn, 0.0, {}};
                killed.edit(QStringLiteral("Move the start"), next);
            },
            static_cast<unsigned>(1 + random() % 3),
            static_cast<unsigned>(random() % 3000));
        CHECK(bytesOf(path) == text); // not saved, not touched
        ProjectDesk next;
        next.open(path, bytesOf(path), parse(bytesOf(path)));
        REQUIRE(next.kept().has_value());
        const auto found = static_cast<int>(next.kept()->planking.start.girth) - 100;
        // turns count from 0; the one under way may be there or not: that is the machine's affair
        CHECK(found >= done - 1);
        CHECK(found <= done);
    }
}
