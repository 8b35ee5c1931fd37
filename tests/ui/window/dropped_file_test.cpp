#include "tests/support/catch.hpp"
#include "ui/window/dropped_file.hpp"

#include <QMimeData>
#include <QUrl>

using namespace sheerlay::ui;

namespace {

QString dropped(const QList<QUrl>& urls) {
    QMimeData data;
    data.setUrls(urls);
    return droppedFile(&data);
}

} // namespace

TEST_CASE("a project is known by its ending, in any case") {
    CHECK(isProject(QStringLiteral("/boats/mallard.sheerlay")));
    CHECK(isProject(QStringLiteral("/boats/MALLARD.SHEERLAY")));
    CHECK_FALSE(isProject(QStringLiteral("/boats/mallard.sheerlay~")));
    CHECK_FALSE(isProject(QStringLiteral("/boats/mallard.csv")));
}

TEST_CASE("of several files the first that can be used is taken, else the first of all") {
    const QUrl picture = QUrl::fromLocalFile(QStringLiteral("/boats/mallard.png"));
    const QUrl page = QUrl::fromLocalFile(QStringLiteral("/boats/mallard.pdf"));
    const QUrl table = QUrl::fromLocalFile(QStringLiteral("/boats/mallard.CSV"));
    const QUrl project = QUrl::fromLocalFile(QStringLiteral("/boats/mallard.sheerlay"));
    CHECK(dropped({picture, table, project}) == QStringLiteral("/boats/mallard.CSV"));
    CHECK(dropped({picture, project, table}) == QStringLiteral("/boats/mallard.sheerlay"));
    CHECK(dropped({picture, page}) == QStringLiteral("/boats/mallard.png"));
    // what lies elsewhere is never fetched
    CHECK(dropped({QUrl(QStringLiteral("https://example.org/mallard.sheerlay"))}).isEmpty());
    QMimeData words;
    words.setText(QStringLiteral("mallard.sheerlay"));
    CHECK(droppedFile(&words).isEmpty());
}
