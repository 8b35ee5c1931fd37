#include "ui/window/sheets_bench.hpp"

#include "ui/choices/choices_panel.hpp"
#include "ui/paper/sheet_painter.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"
#include "ui/window/load_panel.hpp"

#include <QButtonGroup>
#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QTimer>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <utility>

namespace sheerlay::ui {
namespace {

constexpr int sideWidth = 300; // pixels

/// The paper that goes with the units, as on the command line.
core::PageSize paperFor(core::Units units) {
    return units == core::Units::Inches ? core::PageSize::Letter : core::PageSize::A4;
}

} // namespace

SheetsBench::SheetsBench(TaskRunner::Mode mode, PageSet set, QWidget* parent)
    : QWidget(parent), m_set(std::move(set)), m_layout(new TaskRunner(mode, this)),
      m_writer(new TaskRunner(mode, this)), m_printing(new TaskRunner(mode, this)),
      m_list(new QListWidget(this)), m_page(new QComboBox(this)),
      m_write(new QPushButton(Wording::tr("Write files…"), this)),
      m_print(new QPushButton(m_set.print, this)),
      m_printChanged(new QPushButton(tr("Print the changed ones…"), this)),
      m_printAlone(new QPushButton(tr("Print this page…"), this)), m_status(new QLabel(this)),
      m_preview(new QLabel), m_scroll(new QScrollArea(this)), m_view(new QStackedWidget(this)) {
    for (const auto& [name, size] : core::papers)
        m_page->addItem(QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())),
                        static_cast<int>(size));
    m_page->setFocusPolicy(Qt::TabFocus);
    m_page->setAccessibleName(tr("Paper"));
    m_page->setToolTip(tr("Size of the pages, on all benches; kept in the project"));
    m_list->setFocusPolicy(Qt::StrongFocus);
    m_list->setFrameShape(QFrame::NoFrame);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_list->setAccessibleName(m_set.name);
    m_status->setWordWrap(true);
    m_status->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_preview->setAlignment(Qt::AlignCenter);
    m_scroll->setWidget(m_preview);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);

    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(12, 12, 12, 12);
    layout->addWidget(makeSide());
    m_view->addWidget(m_scroll);
    layout->addWidget(m_view, 1);
    if (m_set.floats)
        makeLoad(mode);

    connect(m_list, &QListWidget::currentRowChanged, this, &SheetsBench::showSheet);
    connect(m_page, &QComboBox::currentIndexChanged, this, [this] {
        m_dirty = true;
        layOut();
    });
    connect(m_page, &QComboBox::activated, this, [this] {
        m_paperChosen = true;
        Q_EMIT paperChosen(page());
    });
    m_write->setToolTip(
        tr("Everything of this bench into a folder: PDF, with drawings and tables for other programs"));
    m_print->setToolTip(tr("Lays the pages out and shows them before they go to the printer"));
    connect(m_write, &QPushButton::clicked, this, &SheetsBench::askFolder);
    m_printChanged->setToolTip(tr("Only the sheets that say something else than at the last printing, marked "
                                  "with their revision"));
    m_printChanged->setObjectName(QStringLiteral("printChanged"));
    m_printChanged->hide();
    m_printAlone->setToolTip(tr("The page shown here by itself; one larger than the paper goes out in pages "
                                "to be joined"));
    m_printAlone->setObjectName(QStringLiteral("printAlone"));
    connect(m_print, &QPushButton::clicked, this, [this] { print(Which::All); });
    connect(m_printChanged, &QPushButton::clicked, this, [this] { print(Which::Changed); });
    connect(m_printAlone, &QPushButton::clicked, this, [this] { print(Which::Alone); });
    connect(m_printing, &TaskRunner::busyChanged, this, [this](bool busy) {
        m_print->setText(busy ? tr("Stop") : m_set.print);
        refreshButtons();
    });
    setBoat(nullptr);
}

QWidget* SheetsBench::makePages() {
    auto* pages = new QWidget(this);
    auto* layout = new QVBoxLayout(pages);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* pageRow = new QHBoxLayout;
    pageRow->addWidget(new QLabel(Wording::tr("Paper"), this));
    pageRow->addWidget(m_page, 1);
    layout->addLayout(pageRow);
    if (m_set.speaks) {
        layout->addLayout(makeLanguage());
        layout->addWidget(makeRows());
    }
    layout->addWidget(m_write);
    layout->addWidget(m_print);
    layout->addWidget(m_printChanged);
    layout->addWidget(m_printAlone);
    layout->addWidget(m_status);
    layout->addWidget(m_list, 1);
    return pages;
}

QLayout* SheetsBench::makeLanguage() {
    m_language = new QComboBox(this);
    for (const core::LanguageName& name : core::allLanguages())
        m_language->addItem(QString::fromUtf8(name.name.data(), static_cast<qsizetype>(name.name.size())),
                            static_cast<int>(name.language));
    m_language->setFocusPolicy(Qt::TabFocus);
    m_language->setAccessibleName(Wording::tr("Language of the paper"));
    m_language->setToolTip(
        Wording::tr("What all sheets and patterns are printed in; kept in the project. The window's own "
                    "language is chosen in the Edit menu."));
    connect(m_language, &QComboBox::activated, this, [this] {
        Q_EMIT languageChosen(static_cast<core::Language>(m_language->currentData().toInt()));
    });
    auto* row = new QHBoxLayout;
    row->addWidget(new QLabel(Wording::tr("Its language"), this));
    row->addWidget(m_language, 1);
    return row;
}

QWidget* SheetsBench::makeRows() {
    m_rows = new QCheckBox(Wording::tr("Small rows share a cut sheet"), this);
    m_rows->setFocusPolicy(Qt::TabFocus);
    m_rows->setToolTip(
        Wording::tr("On A3 and Tabloid two or three rows stand on a page where there is room, in "
                    "the order of laying; A4 and Letter are too small for two. Kept in the "
                    "project."));
    connect(m_rows, &QCheckBox::clicked, this, &SheetsBench::rowsChosen);
    return m_rows;
}

QWidget* SheetsBench::makeSide() {
    QWidget* pages = makePages();
    auto* side = new QWidget(this);
    side->setFixedWidth(sideWidth);
    auto* layout = new QVBoxLayout(side);
    layout->setContentsMargins(0, 0, 0, 0);
    m_side = new QStackedWidget(this);
    m_side->addWidget(pages);
    if (m_set.form) {
        m_choices = new ChoicesPanel(m_set.form);
        m_side->addWidget(m_choices);
        auto* strip = new QWidget(this);
        strip->setObjectName(QStringLiteral("viewBar"));
        auto* bar = new QHBoxLayout(strip);
        bar->setContentsMargins(10, 4, 10, 4);
        auto* which = new QButtonGroup(this);
        const auto page = [&](const QString& text, const QString& tip) {
            auto* button = new QToolButton(this);
            button->setText(text);
            button->setToolTip(tip);
            button->setCheckable(true);
            button->setFocusPolicy(Qt::TabFocus);
            which->addButton(button);
            bar->addWidget(button);
            return button;
        };
        page(tr("Pages"), tr("The pages one by one, to print or to write"))->setChecked(true);
        m_choicesButton = page(m_set.choices, tr("What the pages are made from, to be changed here"));
        if (m_set.floats)
            m_afloatButton =
                page(tr("Afloat"), tr("The boat in the water with her load, to be shifted with the mouse"));
        bar->addStretch(1);
        layout->addWidget(strip);
        connect(m_choicesButton, &QToolButton::toggled, this, [this](bool on) {
            m_side->setCurrentIndex(on ? 1 : 0);
        });
    }
    layout->addWidget(m_side, 1);
    return side;
}

void SheetsBench::makeLoad(TaskRunner::Mode mode) {
    m_load = new LoadPanel(mode, this);
    m_view->addWidget(m_load);
    connect(m_afloatButton, &QToolButton::toggled, this, [this](bool on) {
        m_view->setCurrentIndex(on ? 1 : 0);
    });
    connect(m_load, &LoadPanel::moved, this, &SheetsBench::loadMoved);
}

void SheetsBench::showAfloat(bool shown) {
    if (m_afloatButton == nullptr)
        return;
    (shown ? m_afloatButton : static_cast<QToolButton*>(m_afloatButton->group()->buttons().front()))
        ->setChecked(true);
}

void SheetsBench::showChoices(bool shown) {
    if (m_choicesButton == nullptr)
        return;
    if (shown)
        m_choicesButton->setChecked(true);
    else
        m_choicesButton->group()->buttons().front()->setChecked(true);
}

core::PageSize SheetsBench::page() const {
    return static_cast<core::PageSize>(m_page->currentData().toInt());
}

QString SheetsBench::status() const {
    return m_status->text();
}

void SheetsBench::setBoat(std::shared_ptr<const Boat> boat) {
    m_boat = std::move(boat);
    if (m_load != nullptr)
        m_load->setBoat(m_boat);
    m_dirty = true;
    m_layout->cancel();
    m_printing->cancel(); // of a boat that is no more
    m_status->setText(m_boat ? QString() : m_set.invitation);
    if (!m_boat) {
        m_sheets.clear();
        m_list->clear();
        m_preview->clear();
    }
    refreshButtons();
    if (isVisible())
        layOut();
}

void SheetsBench::setStale(bool stale) {
    m_oldBoat = stale;
    if (stale)
        m_status->setText(
            Wording::tr("These are the sheets from before the change. They can be written and printed "
                        "again once the file is mended."));
    if (stale)
        m_printing->cancel();
    refreshButtons();
}

void SheetsBench::refreshButtons() {
    m_write->setEnabled(m_boat != nullptr && !m_oldBoat && (m_dirty || !m_sheets.empty()));
    m_print->setEnabled(!m_sheets.empty() && !m_oldBoat);
    for (QPushButton* part : {m_printChanged, m_printAlone})
        part->setEnabled(m_print->isEnabled() && !m_printing->busy());
}

void SheetsBench::setPrintRecord(std::string record) {
    m_record = std::move(record);
    m_printChanged->setVisible(m_set.revised && !m_record.empty());
}

void SheetsBench::setUnits(core::Units units) {
    if (units == m_units)
        return;
    m_units = units;
    m_dirty = true;
    if (m_choices != nullptr)
        m_choices->setUnits(units);
    if (m_load != nullptr)
        m_load->setUnits(units);
    if (!m_paperChosen)
        showPaper(paperFor(units));
    if (isVisible())
        layOut();
}

void SheetsBench::setPaper(std::optional<core::PageSize> paper) {
    m_paperChosen = paper.has_value();
    showPaper(paper.value_or(paperFor(m_units)));
}

void SheetsBench::setLanguage(core::Language language) {
    if (m_language != nullptr)
        m_language->setCurrentIndex(m_language->findData(static_cast<int>(language)));
}

void SheetsBench::setSeveralRows(bool several) {
    if (m_rows != nullptr)
        m_rows->setChecked(several);
}

void SheetsBench::showPaper(core::PageSize paper) {
    m_page->setCurrentIndex(m_page->findData(static_cast<int>(paper)));
}

void SheetsBench::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    layOut();
}

void SheetsBench::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    QTimer::singleShot(0, this, &SheetsBench::showSheet); // once what is inside has its new size too
}

void SheetsBench::layOut() {
    if (!m_boat || !m_dirty)
        return;
    m_dirty = false;
    m_status->setText(Wording::tr("Laying out the sheets…"));
    m_layout->run(
        [boat = m_boat, units = m_units, size = page(), show = m_set.show](
            std::stop_token, const TaskRunner::Progress&) { return show(*boat, units, size); },
        [this](BenchPages pages) {
            const int row = std::max(0, m_list->currentRow());
            m_sheets = std::move(pages.sheets);
            m_list->clear();
            const QString boatsName = toQString(m_boat->project.name) + QStringLiteral(", ");
            for (std::size_t i = 0; i < m_sheets.size(); ++i) {
                const bool goesOn = i > 0 && m_sheets[i].title == m_sheets[i - 1].title;
                QString title = toQString(m_sheets[i].title);
                if (title.startsWith(boatsName)) // the window's title says it already
                    title = title.mid(boatsName.size());
                if (!title.isEmpty())
                    title[0] = title[0].toUpper();
                m_list->addItem(title + (goesOn ? Wording::tr(", continued") : QString()));
            }
            m_list->setCurrentRow(std::min(row, m_list->count() - 1));
            showWanted();
            if (m_sheets.empty())
                m_preview->setText(
                    m_choices == nullptr
                        ? QString()
                        : tr("There are no pages yet. What they are made from is added under “%1”.")
                              .arg(m_set.choices));
            const bool looksAtPages =
                m_choices != nullptr && m_side->currentIndex() == 0 && m_view->currentIndex() == 0;
            if (m_sheets.empty() && pages.findings.empty() && looksAtPages &&
                !std::exchange(m_formOffered, true))
                showChoices(
                    true); // the one thing that can be done here; once, then it is the builder's choice
            m_status->setText(withFindings(
                m_sheets.empty() && pages.findings.empty() ? m_set.nothing : m_set.status(m_sheets),
                pages.findings));
            refreshButtons();
        },
        [this](const QString& text) {
            m_status->setText(
                tr("The sheets could not be laid out: %1. Undo the last change, or choose another paper.")
                    .arg(text));
        });
}

void SheetsBench::showPages(const std::string& title) {
    m_wanted = title;
    showAfloat(false);
    showChoices(false);
    if (!m_dirty && !m_layout->busy())
        showWanted();
}

void SheetsBench::showWanted() {
    const auto page = std::ranges::find(m_sheets, m_wanted, &core::Sheet::title);
    if (page != m_sheets.end() && !m_wanted.empty())
        m_list->setCurrentRow(static_cast<int>(page - m_sheets.begin()));
    m_wanted.clear();
}

void SheetsBench::showSheet() {
    const int row = m_list->currentRow();
    if (row < 0 || static_cast<std::size_t>(row) >= m_sheets.size())
        return;
    const core::Sheet& sheet = m_sheets[static_cast<std::size_t>(row)];
    const QSize room = m_scroll->viewport()->size() - QSize(8, 8);
    const double fit = std::min(room.width() / sheet.width, room.height() / sheet.height);
    const double ratio = devicePixelRatioF();
    QImage image = picture(sheet, std::max(fit, 0.3) * ratio);
    image.setDevicePixelRatio(ratio);
    m_preview->setPixmap(QPixmap::fromImage(image));
}

} // namespace sheerlay::ui
