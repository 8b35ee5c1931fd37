// The part of the main window that greets a new user: an example to try, and three short steps in the notice.
#include "ui/begin/file_output.hpp"
#include "ui/begin/starter.hpp"
#include "ui/scene/words.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/notice.hpp"

#include <QDir>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>

namespace sheerlay::ui {
namespace {

constexpr auto welcomedKey = "welcomed";

/// The example to try, written once where the user's own data lies; empty where it can't be.
QString exampleToTry() {
    const QDir folder(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    const QString path = folder.filePath(QStringLiteral("brindlewick.sheerlay"));
    if (QFileInfo::exists(path))
        return path;
    if (!folder.mkpath(QStringLiteral(".")) ||
        writeNewFile(path.toStdString(), starterProject("Brindlewick")))
        return {};
    return path;
}

} // namespace

void MainWindow::welcome() {
    if (QSettings().value(QLatin1String(welcomedKey)).toBool())
        return;
    const QString path = exampleToTry();
    if (path.isEmpty())
        return; // the start page says how to begin
    connect(
        this, &MainWindow::loaded, this, [this] { showWelcome(0); }, Qt::SingleShotConnection);
    open(path);
}

void MainWindow::showWelcome(int step) {
    const QList<QStringList> steps{
        {tr("Welcome. This is Brindlewick, an example to try out."),
         tr("The benches above follow the work: her lines, moulds, planking, boards, sheets for the wall, "
            "the "
            "journal, and fitting out.")},
        {tr("Lay her strip by strip."),
         tr("Arrow right lays the next strip, arrow left lifts it. The card beside the boat says how long to "
            "cut "
            "it and how hard it bends; click any strip, on the boat or on the map.")},
        {tr("Then make her yours."),
         tr("P shows where the planking starts, tapers and ends: change it, and undo it. F11 shows one strip "
            "at a "
            "time for the shop, F1 all the keys. Project, Begin a boat starts with your own table.")}};
    const auto done = [] { QSettings().setValue(QLatin1String(welcomedKey), true); };
    const bool last = step + 1 == steps.size();
    Notice::Answers answers;
    if (!last)
        answers.emplace_back(tr("Next, %1 of %2").arg(step + 2).arg(steps.size()),
                             [this, step] { showWelcome(step + 1); });
    answers.emplace_back(last ? tr("Go to work") : tr("Skip, and never again"), done);
    m_notice->say(steps[step], Notice::Weight::Remark, answers);
}

} // namespace sheerlay::ui
