#pragma once

#include "tests/support/catch.hpp"
#include "ui/window/style.hpp"

#include <QApplication>
#include <QSettings>
#include <QStandardPaths>
#include <QSurfaceFormat>
#include <QTemporaryDir>
#include <QThread>

#include <cstdio>
#include <cstdlib>

namespace sheerlay::test {

/// A warning of Qt's fails the test that it comes in: what it complains of is a fault of ours. From another
/// thread, which Catch can't be told from, it ends the program.
inline void failOnWarning(QtMsgType type, const QMessageLogContext& context, const QString& text) {
    // What the offscreen platform can't do is no fault of ours, nor that a printer refuses, which the window
    // tells.
    for (const char* known : {"This plugin does not support", "QPainter::begin(): Returned false"})
        if (text.startsWith(QLatin1String(known)))
            return;
    if (type == QtDebugMsg || type == QtInfoMsg)
        return;
    const std::string said = std::string(context.category) + ": " + text.toStdString();
    std::fprintf(stderr, "Qt warns of %s\n", said.c_str());
    if (type == QtFatalMsg || QThread::currentThread() != QCoreApplication::instance()->thread())
        std::abort();
    FAIL_CHECK("Qt warns of " << said);
}

/// The one QApplication of a test program, made at first use; on Qt's offscreen platform unless the
/// environment names another. Never destroyed: widgets of static life would outlive it.
inline QApplication& qtApp() {
    static QApplication* application = [] {
        if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
            qputenv("QT_QPA_PLATFORM", "offscreen");
        // nobody is logged in where tests run: a runtime folder of their own, as a session has
        static const QTemporaryDir runtime;
        if (!qEnvironmentVariableIsSet("XDG_RUNTIME_DIR"))
            qputenv("XDG_RUNTIME_DIR", runtime.path().toLocal8Bit());
        QSurfaceFormat format;
        format.setDepthBufferSize(24);
        format.setStencilBufferSize(8);
        QSurfaceFormat::setDefaultFormat(format);
        QStandardPaths::setTestModeEnabled(true);
        // what the window remembers is this program's alone: others may run beside it
        static const QTemporaryDir settings;
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
        static int argc = 1;
        static char name[] = "sheerlay-test";
        static char* argv[] = {name, nullptr};
        auto* made = new QApplication(argc, argv);
        qInstallMessageHandler(failOnWarning);
        QCoreApplication::setOrganizationName(QStringLiteral("Sheerlay"));
        QCoreApplication::setApplicationName(QStringLiteral("sheerlay-test"));
        ui::dress(*made);
        return made;
    }();
    return *application;
}

} // namespace sheerlay::test
