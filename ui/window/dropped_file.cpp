#include "ui/window/dropped_file.hpp"

#include "ui/begin/begin_project.hpp"

#include <QMimeData>
#include <QUrl>

namespace sheerlay::ui {

bool isProject(const QString& path) {
    return path.endsWith(QStringLiteral(".sheerlay"), Qt::CaseInsensitive);
}

QString droppedFile(const QMimeData* data) {
    QString first;
    for (const QUrl& url : data->urls()) {
        if (!url.isLocalFile())
            continue;
        const QString path = url.toLocalFile();
        if (isProject(path) || sourceKind(path.toStdString()))
            return path;
        if (first.isEmpty())
            first = path;
    }
    return first;
}

} // namespace sheerlay::ui
