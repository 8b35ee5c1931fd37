#include "app/offscreen.hpp"

#include <QGuiApplication>
#include <QHashFunctions>

#include <iostream>

namespace sheerlay::app {

namespace {

/// Qt remarks on the session (no runtime folder, no fonts folder) mean nothing to a command that only paints.
void keepQtQuiet(QtMsgType type, const QMessageLogContext& /*context*/, const QString& text) {
    if (type == QtCriticalMsg || type == QtFatalMsg)
        std::cerr << text.toStdString() << '\n';
}

} // namespace

Offscreen::Offscreen() {
    qputenv("QT_QPA_PLATFORM", "offscreen"); // the only platform that paints type without a display
    qputenv("LC_ALL", "C.UTF-8");            // file names are UTF-8 whatever the session speaks
    QHashSeed::setDeterministicGlobalSeed(); // Qt writes a PDF's fonts in the order of a hash: the same each
                                             // time
    qInstallMessageHandler(keepQtQuiet);
    m_application = std::make_unique<QGuiApplication>(m_count, m_arguments.data());
}

Offscreen::~Offscreen() = default;

} // namespace sheerlay::app
