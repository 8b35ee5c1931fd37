#pragma once

#include <QString>

#include <vector>

namespace sheerlay::ui {

/// A language the window speaks.
struct Language {
    QString code; ///< as in ISO 639: "en", "de"
    QString name; ///< in itself
};

/// All there are, English first.
[[nodiscard]] std::vector<Language> languages();

/// What the builder chose; empty: as the system.
[[nodiscard]] QString chosenLanguage();
void chooseLanguage(const QString& code);

/// Where Qt's own translations are installed: names of keys, buttons and dialogs.
[[nodiscard]] QString qtTranslations();

/// Puts the chosen language, or the system's, in force for widgets made from now on. Where there is no
/// translation, English stands, and Qt's own texts stay English where `qtFolder` holds none.
/// @return  code of the language in force
QString speak(const QString& qtFolder = qtTranslations());

} // namespace sheerlay::ui
