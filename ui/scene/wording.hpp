#pragma once

#include <QCoreApplication>
#include <QString>

namespace sheerlay::ui {

/// The window's texts in the language in use: `Wording::tr("Length to cut")`. Not for constants of static
/// life, which are made before a language is chosen.
struct Wording {
    Q_DECLARE_TR_FUNCTIONS(Window)
};

} // namespace sheerlay::ui
