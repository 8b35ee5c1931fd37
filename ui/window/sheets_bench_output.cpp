// The part of a bench of pages that writes them to files and prints them.
#include "ui/panels/findings_list.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"
#include "ui/window/sheet_printer.hpp"
#include "ui/window/sheets_bench.hpp"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>

#include <algorithm>
#include <optional>
#include <utility>

namespace sheerlay::ui {
namespace {

/// What was written, file by file where they are few.
QString writtenText(const WrittenSet& written) {
    constexpr std::size_t few = 10;
    if (written.files.size() > few)
        return Wording::tr("%1 files written into %2")
            .arg(written.files.size())
            .arg(QFileInfo(toQString(written.files.front())).path());
    QStringList files;
    for (const std::string& file : written.files)
        files << toQString(file);
    return Wording::tr("Written:\n%1").arg(files.join(QLatin1Char('\n')));
}

} // namespace

QString SheetsBench::withFindings(QString text, const std::vector<core::Finding>& findings) const {
    for (const core::Finding& finding : findings)
        if (finding.level != core::Level::Note)
            text += QStringLiteral("\n\n") + findingText(finding, m_units);
    return text;
}

void SheetsBench::print() {
    if (m_print->isEnabled() && !m_printing->busy())
        print(Which::All);
}

void SheetsBench::askFolder() {
    const QString folder = QFileDialog::getExistingDirectory(
        this, Wording::tr("Folder for the files"), m_folder.isEmpty() ? QDir::homePath() : m_folder);
    if (!folder.isEmpty())
        write(folder);
}

void SheetsBench::write(const QString& folder) {
    if (!m_boat || m_oldBoat)
        return;
    m_status->setText(Wording::tr("Writing the sheets…"));
    m_writer->run(
        [boat = m_boat, units = m_units, size = page(), out = folder.toStdString(), write = m_set.write](
            std::stop_token, const TaskRunner::Progress&) { return write(*boat, units, size, out); },
        [this](const WrittenFiles& written) {
            m_status->setText(written ? withFindings(writtenText(*written), written->findings)
                                      : toQString(written.error().text));
        },
        [this](const QString& text) {
            m_status->setText(tr("The sheets could not be written: %1. Another folder may do.").arg(text));
        });
}

void SheetsBench::print(Which which) {
    if (m_printing->busy()) {
        m_printing->cancel();
        m_status->setText(tr("Nothing was printed."));
        return;
    }
    if (!m_boat || m_sheets.empty())
        return;
    m_status->setText(tr("Laying out the pages for the printer…"));
    const auto shown = static_cast<std::size_t>(std::max(0, m_list->currentRow()));
    m_printing->run(
        [boat = m_boat, units = m_units, size = page(), set = m_set, before = m_record, which, shown](
            std::stop_token, const TaskRunner::Progress&) {
            if (which == Which::Alone)
                return RevisedPages{set.alone(*boat, units, size, before, shown), {}, {}};
            return set.revised ? set.revised(*boat, units, size, before)
                               : RevisedPages{set.printed(*boat, units, size), {}, {}};
        },
        [this, which](const RevisedPages& pages) {
            if (which == Which::Alone && pages.all.empty())
                m_status->setText(tr("Nothing was printed."));
            else if (which == Which::Alone)
                preview(pages.all, std::nullopt);
            else if (which == Which::Changed && pages.changed.empty())
                m_status->setText(tr("No sheet says anything else than at the last printing."));
            else
                preview(which == Which::Changed ? pages.changed : pages.all, pages.record);
        },
        [this](const QString& text) {
            m_status->setText(
                tr("The pages could not be laid out: %1. Undo the last change, or choose another "
                   "paper.")
                    .arg(text));
        });
}

void SheetsBench::preview(const std::vector<core::Sheet>& pages, const std::optional<std::string>& record) {
    switch (previewAndPrint(*this, pages)) {
    case Printed::Taken:
        m_status->setText(tr("Sent %1 pages to the printer. Check the bar on the first one with a rule.")
                              .arg(pages.size()));
        if (m_set.revised && record) {
            setPrintRecord(*record);
            Q_EMIT printed(*record);
        }
        break;
    case Printed::Refused:
        m_status->setText(tr("The printer did not take the pages. Writing PDFs works without one."));
        break;
    case Printed::GivenUp:
        m_status->setText(tr("Nothing was printed."));
        break;
    }
}

} // namespace sheerlay::ui
