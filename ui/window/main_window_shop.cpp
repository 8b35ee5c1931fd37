// The part of the main window that goes into shop mode and writes down what is laid there.
#include "core/project/laid_strips.hpp"
#include "ui/panels/laying_bar.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"
#include "ui/shop/shop_mode.hpp"
#include "ui/window/journal_bench.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/project_memory.hpp"

#include <QDate>
#include <QScreen>
#include <QSettings>

namespace sheerlay::ui {
namespace {

const QString nightKey = QStringLiteral("shop/night");

} // namespace

void MainWindow::connectShop() {
    connect(m_shop, &ShopMode::laid, this, [this](const QString& id) {
        if (!m_desk->isOpen())
            return;
        const std::string day = QDate::currentDate().toString(Qt::ISODate).toStdString();
        editJournal(Wording::tr("%1 laid").arg(id),
                    core::markLaid(m_desk->project().journal, id.toStdString(), day));
    });
    connect(m_journal, &JournalBench::accepted, this, &MainWindow::editJournal);
    connect(m_shop, &ShopMode::notLaid, this, [this](const QString& id) {
        if (m_desk->isOpen())
            editJournal(Wording::tr("%1 not laid").arg(id),
                        core::unmarkLaid(m_desk->project().journal, id.toStdString()));
    });
    connect(m_shop, &ShopMode::measured, this, [this](const core::RowReading& round) {
        if (const QString problem = m_journal->take(round); !problem.isEmpty())
            m_shop->tellRefused(problem);
        else
            m_journal->workOut();
    });
    connect(m_journal, &JournalBench::weighed, m_shop, &ShopMode::tellTrial);
    connect(m_journal, &JournalBench::refused, m_shop, &ShopMode::tellRefused);
    connect(m_shop, &ShopMode::trialTaken, m_journal, &JournalBench::accept);
    connect(m_shop, &ShopMode::placeChanged, this, [this](const QString& id) {
        rememberShopPlace(m_path, id);
        if (const core::Strip* strip = m_boat ? m_boat->strip(id.toStdString()) : nullptr)
            m_planking->bar()->setLaid(strip->order - 1); // the benches stand where the shop stands
    });
    connect(m_shop, &ShopMode::nightChanged, this, [](bool night) { QSettings().setValue(nightKey, night); });
    connect(m_shop, &ShopMode::left, this, [this] {
        show();
        activateWindow();
    });
}

void MainWindow::editJournal(const QString& name, const core::Journal& journal) {
    if (!m_desk->isOpen())
        return;
    core::Project next = m_desk->project();
    next.journal = journal;
    m_desk->edit(name, std::move(next));
}

void MainWindow::enterShop() {
    m_shop->setNight(QSettings().value(nightKey, false).toBool());
    // where the work stands, not at what was looked at on a bench: the biggest button writes "laid"
    const std::string place = shopPlaceOf(m_path).toStdString();
    const bool down = core::laidEntry(m_desk->project().journal, place) != nullptr;
    m_shop->goTo(down ? std::string() : place);
    m_shop->resize(screen()->size()); // where there is no window manager to do it
    m_shop->showFullScreen();
    m_shop->activateWindow();
    m_shop->setFocus();
}

} // namespace sheerlay::ui
