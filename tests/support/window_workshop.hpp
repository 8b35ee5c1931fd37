#pragma once

#include "tests/support/catch.hpp"
#include "tests/support/qt_app.hpp"
#include "ui/panels/laying_bar.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/planking_bench.hpp"

#include <QByteArray>
#include <QFile>
#include <QSignalSpy>
#include <QString>
#include <QTemporaryDir>

namespace sheerlay::test {

using ui::MainWindow;
using ui::PlankingBench;
using ui::TaskRunner;

inline constexpr int patience = 20000; // ms; a loaded machine takes its time over a plan

inline QString referenceProject() {
    return QStringLiteral(SHEERLAY_REFERENCE "/formula_canoe.sheerlay");
}

inline QByteArray bytesOf(const QString& path) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

inline void write(const QString& path, const QByteArray& bytes) {
    QFile file(path);
    REQUIRE(file.open(QIODevice::WriteOnly | QIODevice::Truncate));
    file.write(bytes);
}

/// A window on a copy of the reference project that a test may spoil.
struct Workshop {
    QTemporaryDir folder;
    QString path = folder.filePath(QStringLiteral("canoe.sheerlay"));
    QByteArray good = bytesOf(referenceProject());
    MainWindow window{TaskRunner::Mode::SameThread};

    Workshop() {
        write(path, good);
        window.open(path);
        REQUIRE(window.boat() != nullptr);
        REQUIRE(window.boat()->pieces() > 60);
    }
    PlankingBench& bench() { return *window.planking(); }

    void rewrite(const QByteArray& bytes) {
        QSignalSpy loaded(&window, &MainWindow::loaded);
        write(path, bytes);
        REQUIRE(loaded.wait(patience));
    }
};

struct App {
    App() { qtApp(); }
};

} // namespace sheerlay::test
