#include "ui/window/language.hpp"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QSettings>
#include <QTranslator>

static void initTranslations() {
    Q_INIT_RESOURCE(sheerlay_translations); // must stand outside any namespace
}

namespace sheerlay::ui {
namespace {

const QString key = QStringLiteral("language");

/// Our texts, and Qt's own (those of its dialogs, where its translations are installed).
struct Spoken {
    QTranslator window, qt;
};

Spoken& spoken() {
    static Spoken both;
    return both;
}

} // namespace

std::vector<Language> languages() {
    return {{QStringLiteral("en"), QStringLiteral("English")},
            {QStringLiteral("de"), QStringLiteral("Deutsch")}};
}

QString chosenLanguage() {
    return QSettings().value(key).toString();
}

void chooseLanguage(const QString& code) {
    QSettings().setValue(key, code);
}

QString qtTranslations() {
    return QLibraryInfo::path(QLibraryInfo::TranslationsPath);
}

QString speak(const QString& qtFolder) {
    initTranslations();
    Spoken& both = spoken();
    QCoreApplication::removeTranslator(&both.window);
    QCoreApplication::removeTranslator(&both.qt);
    const QString chosen = chosenLanguage();
    const QString wanted = chosen.isEmpty() ? QLocale::system().name().section(u'_', 0, 0) : chosen;
    const QString english = QStringLiteral("en");
    QLocale::setDefault(QLocale(english)); // numbers and dates go with the words
    if (wanted == english ||
        !both.window.load(QStringLiteral(":/sheerlay/translations/sheerlay_%1.qm").arg(wanted)))
        return english;
    QCoreApplication::installTranslator(&both.window);
    QLocale::setDefault(QLocale(wanted));
    if (both.qt.load(QStringLiteral("qtbase_%1").arg(wanted), qtFolder))
        QCoreApplication::installTranslator(&both.qt);
    return wanted;
}

} // namespace sheerlay::ui
