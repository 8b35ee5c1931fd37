#define CATCH_CONFIG_RUNNER
#include "tests/support/catch.hpp"

#include <QGuiApplication>

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen"); // no display needed, and fonts work there
    const QGuiApplication application(argc, argv);
    return Catch::Session().run(argc, argv);
}
