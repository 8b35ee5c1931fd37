#include "ui/window/main_window.hpp"

#include "ui/choices/choices_panel.hpp"
#include "ui/panels/laying_bar.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"
#include "ui/shop/shop_mode.hpp"
#include "ui/view3d/boat_view.hpp"
#include "ui/window/file_watch.hpp"
#include "ui/window/journal_bench.hpp"
#include "ui/window/keys_card.hpp"
#include "ui/window/lines_bench.hpp"
#include "ui/window/new_boat.hpp"
#include "ui/window/notice.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/sheets_bench.hpp"
#include "ui/window/style.hpp"
#include "ui/window/work_slip.hpp"

#include <QButtonGroup>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QStackedWidget>
#include <QTimer>
#include <QToolButton>
#include <QUndoStack>
#include <QVBoxLayout>

#include <array>
#include <functional>

namespace sheerlay::ui {
namespace {

constexpr int tellAfter = 300; // ms of planning until it is told of and can be given up

} // namespace

MainWindow::MainWindow(TaskRunner::Mode mode, QWidget* parent)
    : QMainWindow(parent), m_mode(mode), m_runner(new TaskRunner(mode, this)), m_watch(new FileWatch(this)),
      m_desk(new ProjectDesk(this)), m_notice(new Notice), m_pages(new QStackedWidget),
      m_lines(new LinesBench(mode)), m_planking(new PlankingBench(mode)),
      m_moulds(new SheetsBench(mode, mouldPages())), m_stock(new SheetsBench(mode, stockPages())),
      m_sheets(new SheetsBench(mode, wallPages())), m_fittingOut(new SheetsBench(mode, fittingOutPages())),
      m_journal(new JournalBench(mode)), m_shop(new ShopMode(this)), m_keys(new KeysCard(this)),
      m_shopKeys(new KeysCard(m_shop)), m_newBoat(new NewBoat(mode, this)),
      m_benchButtons(new QButtonGroup(this)), m_unitsButton(new QToolButton), m_unsaved(new QLabel),
      m_recent(new QMenu(this)), m_edit(new QMenu(this)), m_saveAction(new QAction(this)),
      m_saveAsAction(new QAction(this)), m_pictureAction(new QAction(this)),
      m_exportAction(new QAction(this)), m_exporting(new TaskRunner(mode, this)) {
    setWindowTitle(QStringLiteral("Sheerlay"));
    setAcceptDrops(true);
    resize(1360, 880);

    m_start = makeStartPage();
    m_pages->addWidget(m_lines);
    m_pages->addWidget(m_planking);
    for (QWidget* pages : {m_moulds, m_stock, m_sheets, m_fittingOut})
        m_pages->addWidget(pages);
    m_pages->addWidget(m_journal);
    m_pages->addWidget(m_start);
    auto* middle = new QWidget(this);
    auto* layout = new QVBoxLayout(middle);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    QWidget* strip = makeBenchStrip();
    layout->addWidget(strip);
    layout->addWidget(m_notice);
    layout->addWidget(m_pages, 1);
    setCentralWidget(middle);
    m_slip = new WorkSlip(middle, strip);
    connect(m_slip, &WorkSlip::stopped, this, &MainWindow::stopPlanning);
    m_pages->setCurrentWidget(m_start);
    setFocus(); // in no control's hands: Space plays
    makeKeys();

    connect(m_runner, &TaskRunner::progress, m_slip, &WorkSlip::setText);
    connect(m_runner, &TaskRunner::busyChanged, this, [this](bool busy) {
        m_planking->boatView()->setHurried(busy);
        if (!busy)
            m_slip->hide();
        else // most plans are there before anyone could read it
            QTimer::singleShot(tellAfter, this, [this] {
                if (m_runner->busy())
                    m_slip->hang(m_boat && m_desk->isOpen());
            });
    });
    connect(m_exporting, &TaskRunner::progress, this, [this](const QString& text) {
        if (m_notice->text() == m_exportTold) { // something more urgent may stand there by now
            m_notice->retell({text});
            m_exportTold = text;
        }
    });
    connect(m_watch, &FileWatch::changed, this, &MainWindow::fileChanged);
    connect(m_watch, &FileWatch::gone, this, &MainWindow::fileGone);
    connectEdits();
    connect(m_desk, &ProjectDesk::projectChanged, this, &MainWindow::replan);
    connect(m_desk, &ProjectDesk::dirtyChanged, this, [this](bool dirty) {
        setWindowModified(dirty);
        m_unsaved->setVisible(dirty);
        m_saveAction->setEnabled(dirty);
        m_saveAsAction->setEnabled(m_desk->isOpen());
    });
    connect(m_desk, &ProjectDesk::keepingFailed, this, [this](const QString& why) {
        m_notice->say({Wording::tr("Your changes are not kept beside the file. %1").arg(why)},
                      Notice::Weight::Remark);
    });
    connectShop();
    connect(m_newBoat, &NewBoat::begun, this, &MainWindow::open);
    setUnits(core::Units::Millimetres);
}

MainWindow::~MainWindow() = default;

QWidget* MainWindow::makeBenchStrip() {
    auto* strip = new QWidget;
    strip->setObjectName(QStringLiteral("benchStrip"));
    strip->setAttribute(Qt::WA_StyledBackground);
    auto* layout = new QHBoxLayout(strip);
    layout->setContentsMargins(8, 7, 8, 7);
    layout->setSpacing(3);
    const auto bench = [&](const QString& text, Icon sign, Bench which, const QString& tip) {
        auto* made = new QToolButton(strip);
        made->setText(text);
        made->setIcon(icon(sign));
        made->setIconSize({20, 20});
        made->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
        made->setCheckable(true);
        made->setProperty("bench", true);
        made->setFocusPolicy(Qt::NoFocus);
        made->setToolTip(QStringLiteral("%1 (%2)").arg(tip).arg(static_cast<int>(which) + 1));
        m_benchButtons->addButton(made, static_cast<int>(which));
        layout->addWidget(made);
    };
    bench(Wording::tr("Lines"),
          Icon::Lines,
          Bench::Lines,
          tr("The hull's lines over the table of offsets, to judge and to correct"));
    bench(Wording::tr("Moulds"),
          Icon::Moulds,
          Bench::Moulds,
          tr("What she is built over: strongback, moulds and stem forms"));
    bench(Wording::tr("Planking"),
          Icon::Planking,
          Bench::Planking,
          tr("Strip by strip from the start to the shutter"));
    bench(Wording::tr("Stock"),
          Icon::Stock,
          Bench::Stock,
          tr("Boards to buy, strips to mill, and where they are scarfed"));
    bench(Wording::tr("Sheets"),
          Icon::Sheets,
          Bench::Sheets,
          tr("What hangs on the shop's wall: a sheet for every row"));
    bench(Wording::tr("Journal"),
          Icon::Journal,
          Bench::Journal,
          tr("What was really laid and measured, and what it does to the rows to come"));
    bench(Wording::tr("Fitting out"),
          Icon::FittingOut,
          Bench::FittingOut,
          tr("After the planking: gunwales, seats, cloth, and how she floats"));
    connect(m_benchButtons, &QButtonGroup::idClicked, this, [this](int id) {
        showBench(static_cast<Bench>(id));
    });
    layout->addStretch(1);

    const auto action = [&](QToolButton* made, const QString& text, const QString& tip) {
        made->setText(text);
        made->setToolTip(tip);
        made->setFocusPolicy(Qt::NoFocus);
        layout->addWidget(made);
    };
    makeMenus(strip, layout);
    action(m_unitsButton, QString(), Wording::tr("Millimetres, or feet and inches (U)"));
    auto* keys = new QToolButton(strip);
    action(keys, tr("Keys"), tr("What the keys do (F1)"));
    connect(keys, &QToolButton::clicked, this, [this] { m_keys->turn(); });
    connect(m_unitsButton, &QToolButton::clicked, this, [this] {
        m_unitsChosen = true;
        setUnits(m_units == core::Units::Inches ? core::Units::Millimetres : core::Units::Inches);
    });
    return strip;
}

QWidget* MainWindow::makeStartPage() {
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    auto* head = new QLabel(Wording::tr("Every strip of the boat, before a board is milled"));
    head->setStyleSheet(QStringLiteral("font-size: 24px; font-weight: 600;"));
    head->setAlignment(Qt::AlignCenter);
    auto* text =
        new QLabel(tr("Open a project file, or drop one here. Edit it in any text editor beside this "
                      "window: the boat follows when you save.\nThere is no project yet? Begin one from "
                      "a table of offsets, half sections as drawn or a hull's surfaces: drop the file "
                      "here."));
    text->setAlignment(Qt::AlignCenter);
    text->setWordWrap(true);
    auto* button = new QPushButton(Wording::tr("Open a project…"));
    button->setFixedSize(220, 46);
    button->setFocusPolicy(Qt::TabFocus);
    button->setToolTip(tr("A file that ends in .sheerlay (Ctrl+O)"));
    connect(button, &QPushButton::clicked, this, &MainWindow::askOpen);
    layout->addStretch(2);
    layout->addWidget(head);
    layout->addSpacing(8);
    layout->addWidget(text);
    layout->addSpacing(16);
    auto* begin = new QPushButton(tr("Begin a boat…"));
    begin->setFixedSize(220, 46);
    begin->setFocusPolicy(Qt::TabFocus);
    begin->setToolTip(tr("From the starter, or from a table, drawing or surfaces of yours (Ctrl+N)"));
    connect(begin, &QPushButton::clicked, this, [this] { beginBoat(); });
    layout->addWidget(button, 0, Qt::AlignHCenter);
    layout->addSpacing(8);
    layout->addWidget(begin, 0, Qt::AlignHCenter);
    layout->addStretch(3);
    return page;
}

void MainWindow::showBench(Bench bench) {
    m_benchButtons->button(static_cast<int>(bench))->setChecked(true);
    switch (bench) {
    case Bench::Lines:
        m_pages->setCurrentWidget(m_lines);
        break;
    case Bench::Planking:
        m_pages->setCurrentWidget(m_boat || m_runner->busy() ? m_planking : m_start);
        break;
    case Bench::Moulds:
        m_pages->setCurrentWidget(m_moulds);
        break;
    case Bench::FittingOut:
        m_pages->setCurrentWidget(m_fittingOut);
        break;
    case Bench::Stock:
        m_pages->setCurrentWidget(m_stock);
        break;
    case Bench::Sheets:
        m_pages->setCurrentWidget(m_sheets);
        break;
    case Bench::Journal:
        m_pages->setCurrentWidget(m_boat ? static_cast<QWidget*>(m_journal) : m_start);
        break;
    }
    setFocus(); // in no control's hands: keys are the bench's, Tab begins at its start
}

void MainWindow::setUnits(core::Units units) {
    m_units = units;
    m_unitsButton->setText(units == core::Units::Inches ? Wording::tr("feet and inches")
                                                        : Wording::tr("millimetres"));
    m_lines->setUnits(units);
    m_planking->setUnits(units);
    for (SheetsBench* pages : {m_moulds, m_stock, m_sheets, m_fittingOut})
        pages->setUnits(units);
    m_shop->setUnits(units);
    m_journal->setUnits(units);
}

void MainWindow::open(const QString& path) {
    if (!mayLeave())
        return;
    m_desk->close();
    m_path = QFileInfo(path).absoluteFilePath();
    m_unitsChosen = false;
    showPaper();
    m_watch->watch(m_path);
    m_journal->setPath(m_path);
    if (m_boat) {
        // another boat: nothing of the old one may pass for it
        m_boat.reset();
        m_exportAction->setEnabled(false);
        m_exporting->cancel();
        m_staleBoat = false;
        m_planking->setStale(false);
        for (SheetsBench* pages : {m_moulds, m_stock, m_sheets, m_fittingOut})
            pages->setStale(false);
        m_planking->bar()->first();
        m_lines->setBoat(nullptr);
        for (const SheetsBench* pages : {m_moulds, m_stock, m_fittingOut})
            pages->choices()->setProject(std::nullopt);
        m_planking->setBoat(nullptr);
        for (SheetsBench* pages : {m_moulds, m_stock, m_sheets, m_fittingOut})
            pages->setBoat(nullptr);
        m_shop->setBoat(nullptr);
        m_journal->setBoat(nullptr);
    }
    setWindowTitle(QStringLiteral("%1[*] · Sheerlay").arg(QFileInfo(m_path).fileName()));
    remember(m_path);
    load();
    showBench(Bench::Planking);
}

void MainWindow::load() {
    m_runner->run(
        [path = m_path.toStdString()](std::stop_token stop, const TaskRunner::Progress& progress) {
            return loadBoat(path, stop, progress);
        },
        [this](const LoadedBoat& loaded) {
            if (loaded.project) {
                m_desk->open(m_path, loaded.text, *loaded.project);
                showProject();
            }
            take(loaded);
            tellKept();
        },
        [this](const QString& text) {
            tellFault(text);
            Q_EMIT loaded();
        });
}

void MainWindow::tellTrouble(const QStringList& lines) {
    QStringList said = lines;
    if (m_boat) {
        m_staleBoat = true;
        said.front() += Wording::tr(" The boat below is the one from before the change.");
    }
    m_planking->setStale(m_staleBoat);
    for (SheetsBench* pages : {m_moulds, m_stock, m_sheets, m_fittingOut})
        pages->setStale(m_staleBoat);
    if (!m_boat)
        m_pages->setCurrentWidget(m_start); // nothing to show on a bench
    m_notice->say(said, Notice::Weight::Trouble);
}

void MainWindow::tellFault(const QString& what) {
    tellTrouble({tr("Something went wrong inside the program: %1.").arg(what),
                 tr("Nothing of yours is lost. Undo the last change, or open the project again; what was not "
                    "saved is "
                    "offered then.")});
}

void MainWindow::take(const LoadedBoat& result) {
    const QString file = QFileInfo(m_path).fileName();
    if (!result.boat) {
        QStringList lines;
        if (!result.problems.empty()) {
            const auto count = result.problems.size();
            lines << (count == 1
                          ? Wording::tr("One thing in %1 can't be used as it stands.").arg(file)
                          : Wording::tr("%1 things in %2 can't be used as they stand.").arg(count).arg(file));
            for (const core::FileMessage& message : result.problems)
                lines << messageLine(message);
        } else {
            lines << Wording::tr("The hull of %1 can't be %2.").arg(file, result.stage) << result.failure;
        }
        tellTrouble(lines);
        Q_EMIT loaded();
        return;
    }
    m_boat = result.boat;
    m_plannedAt = m_desk->undoStack()->index();
    m_staleBoat = false;
    if (!m_unitsChosen && m_boat->project.units != m_units)
        setUnits(m_boat->project.units);
    if (result.warnings.empty()) {
        m_notice->clear();
    } else {
        QStringList lines{Wording::tr("%1 was read, with this left out or odd:").arg(file)};
        for (const core::FileMessage& message : result.warnings)
            lines << messageLine(message);
        m_notice->say(lines, Notice::Weight::Remark);
    }
    m_planking->setStale(false);
    for (SheetsBench* pages : {m_moulds, m_stock, m_sheets, m_fittingOut})
        pages->setStale(false);
    m_pictureAction->setEnabled(m_planking->boatView()->drawing());
    m_exportAction->setEnabled(true);
    if (!m_boat->project.name.empty())
        setWindowTitle(QStringLiteral("%1[*] · Sheerlay").arg(toQString(m_boat->project.name)));
    handOver(0);
}

void MainWindow::handOver(std::size_t turn) {
    const std::array<std::function<void()>, 5> turns{
        [this] { m_planking->setBoat(m_boat); },
        [this] { m_lines->setBoat(m_boat); },
        [this] {
            for (SheetsBench* pages : {m_moulds, m_stock, m_sheets, m_fittingOut})
                pages->setBoat(m_boat);
        },
        [this] { m_shop->setBoat(m_boat); },
        [this] { m_journal->setBoat(m_boat); },
    };
    if (turn == turns.size()) {
        Q_EMIT loaded();
        return;
    }
    turns.at(turn)();
    if (m_mode == TaskRunner::Mode::SameThread)
        handOver(turn + 1);
    else
        QTimer::singleShot(0, this, [this, turn, boat = m_boat] {
            if (boat == m_boat) // else another one is being handed over
                handOver(turn + 1);
        });
}

} // namespace sheerlay::ui
