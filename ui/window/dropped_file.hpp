#pragma once

#include <QString>

class QMimeData;

namespace sheerlay::ui {

/// By the ending of its name, in small or capital letters.
[[nodiscard]] bool isProject(const QString& path);

/// The first file of a drag that is a project or that a boat can be begun from, else the first file of all;
/// empty where none lies on this machine.
[[nodiscard]] QString droppedFile(const QMimeData* data);

} // namespace sheerlay::ui
