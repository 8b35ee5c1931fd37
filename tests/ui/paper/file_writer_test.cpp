#include "tests/support/catch.hpp"
#include "tests/ui/paper/paper_support.hpp"
#include "ui/paper/file_writer.hpp"

#include <QFileInfo>

using namespace sheerlay;

TEST_CASE("bytes are written as they are, over what stood there") {
    const test::Folder folder;
    const std::string path = folder.file("cut.dxf");
    const std::string bytes("0\r\nSECTION\0\n", 12);
    REQUIRE(ui::writeBytes("old and longer than the new", path));
    REQUIRE(ui::writeBytes(bytes, path));
    CHECK(test::bytesOf(path) == bytes);
}

TEST_CASE("what can't be written is told with its path and what would do") {
    const test::Folder folder;
    const std::string taken = folder.file("taken"), nowhere = folder.file("no such folder/cut.dxf");
    REQUIRE(ui::makeFolder(taken));
    for (const std::string& path : {taken, nowhere}) {
        const ui::Written result = ui::writeBytes("x", path);
        REQUIRE_FALSE(result);
        CHECK(result.error().text.find(path + " could not be written") == 0);
        CHECK(result.error().text.find("Choose a folder") != std::string::npos);
    }
    CHECK(QFileInfo(QString::fromStdString(taken)).isDir()); // it stays what it was
}

TEST_CASE("folders are made with those they lie in, but not in a file") {
    const test::Folder folder;
    CHECK(ui::makeFolder(folder.file("one/two")));
    CHECK(ui::makeFolder(folder.file("one/two"))); // it is there
    REQUIRE(ui::writeBytes("x", folder.file("file")));
    const ui::Written result = ui::makeFolder(folder.file("file/three"));
    REQUIRE_FALSE(result);
    CHECK(result.error().text.find("could not be made") != std::string::npos);
}
