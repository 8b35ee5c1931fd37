#pragma once

#include "ui/window/style.hpp"

#include <QApplication>
#include <QSettings>
#include <QStandardPaths>
#include <QSurfaceFormat>
#include <QTemporaryDir>

#include <cstdlib>

namespace sheerlay::test {

/// The one QApplication of a test program, made at first use; on Qt's offscreen platform unless the
/// environment names another. Never destroyed: widgets of static life would outlive it.
inline QApplication& qtApp() {
    static QApplication* application = [] {
        if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
            qputenv("QT_QPA_PLATFORM", "offscreen");
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
        QCoreApplication::setOrganizationName(QStringLiteral("Sheerlay"));
        QCoreApplication::setApplicationName(QStringLiteral("sheerlay-test"));
        ui::dress(*made);
        return made;
    }();
    return *application;
}

} // namespace sheerlay::test
