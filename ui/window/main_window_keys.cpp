// The part of the main window that listens to the keyboard, and the card that says what it hears.
#include "ui/panels/field_keys.hpp"
#include "ui/panels/laying_bar.hpp"
#include "ui/scene/wording.hpp"
#include "ui/shop/shop_mode.hpp"
#include "ui/window/keys_card.hpp"
#include "ui/window/main_window.hpp"
#include "ui/window/planking_bench.hpp"
#include "ui/window/project_desk.hpp"
#include "ui/window/work_slip.hpp"

#include <QAbstractButton>
#include <QAction>
#include <QShortcut>
#include <QStackedWidget>
#include <QToolButton>

namespace sheerlay::ui {

void MainWindow::makeKeys() {
    new FieldKeys(this);
    const auto key = [this](const QKeySequence& keys, const QString& does, auto act) {
        auto* shortcut = new QShortcut(keys, this);
        connect(shortcut, &QShortcut::activated, this, act);
        m_keys->add(keys, does);
    };
    // the work goes on only where it can be seen
    const auto laying = [this, key](const QKeySequence& keys, void (LayingBar::*act)(), const QString& does) {
        key(keys, does, [this, act] {
            if (m_pages->currentWidget() == m_planking)
                (m_planking->bar()->*act)();
        });
    };
    const auto atPlanking = [this, key](const QKeySequence& keys, auto act, const QString& does) {
        key(keys, does, [this, act] {
            if (m_pages->currentWidget() == m_planking)
                (m_planking->*act)();
        });
    };
    m_keys->head(tr("Laying, on the Planking bench"));
    laying(Qt::Key_Right, &LayingBar::lay, tr("lay the next strip"));
    laying(Qt::Key_Left, &LayingBar::lift, tr("lift the last one"));
    laying(Qt::SHIFT | Qt::Key_Right, &LayingBar::layRow, tr("lay a row"));
    laying(Qt::SHIFT | Qt::Key_Left, &LayingBar::liftRow, tr("lift a row"));
    laying(Qt::Key_Home, &LayingBar::first, tr("bare moulds"));
    laying(Qt::Key_End, &LayingBar::last, tr("all laid"));
    key(Qt::Key_Space, tr("play, or press the button in hand"), [this] {
        if (auto* button = qobject_cast<QAbstractButton*>(focusWidget()))
            button->click();
        else if (m_pages->currentWidget() == m_planking)
            m_planking->bar()->play();
    });
    atPlanking(Qt::Key_F, &PlankingBench::nextFinding, tr("next finding"));
    atPlanking(Qt::Key_M, &PlankingBench::mapAlone, tr("map alone, and back"));
    atPlanking(Qt::Key_B, &PlankingBench::boatAlone, tr("boat alone, and back"));
    key(Qt::Key_T, tr("tape: measure along the planking"), [this] {
        if (m_pages->currentWidget() == m_planking)
            m_planking->measure(!m_planking->measuring());
    });
    key(Qt::Key_P, tr("how she is planked"), [this] {
        m_planking->showControls(!m_planking->controlsShown());
    });
    m_keys->head(tr("Anywhere"));
    for (const auto& [bench, name] : {std::pair{Bench::Lines, tr("Lines")},
                                      std::pair{Bench::Moulds, tr("Moulds")},
                                      std::pair{Bench::Planking, tr("Planking")},
                                      std::pair{Bench::Stock, tr("Stock")},
                                      std::pair{Bench::Sheets, tr("Sheets")},
                                      std::pair{Bench::Journal, tr("Journal")},
                                      std::pair{Bench::FittingOut, tr("Fitting out")}})
        key(Qt::Key_1 + static_cast<int>(bench), tr("%1 bench").arg(name), [this, bench = bench] {
            showBench(bench);
        });
    key(Qt::Key_U, tr("millimetres, or feet and inches"), [this] { m_unitsButton->click(); });
    key(Qt::Key_F11, tr("shop mode"), [this] { enterShop(); });
    key(Qt::Key_Escape, tr("give up a long plan, or let go of tape or strip in hand"), [this] {
        if (m_keys->isVisible())
            m_keys->hide();
        else if (m_planking->measuring() && m_pages->currentWidget() == m_planking)
            m_planking->measure(false);
        else if (m_slip->isVisible() && m_boat && m_desk->isOpen())
            stopPlanning();
        else
            m_planking->select(std::string());
    });
    key(QKeySequence::Open, tr("open a project"), [this] { askOpen(); });
    key(QKeySequence::New, tr("begin a boat"), [this] { beginBoat(); });
    m_keys->add(QKeySequence::Save, tr("save"));
    m_keys->add(m_saveAsAction->shortcut(), tr("save under another name"));
    key(Qt::CTRL | Qt::Key_P, tr("print the bench's pages, or go to the sheets"), [this] { printPages(); });
    key(Qt::CTRL | Qt::Key_Q, tr("quit"), [this] { close(); });
    m_keys->add(QKeySequence::Undo, tr("undo"));
    m_keys->add(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z), tr("do again"));
    key(Qt::Key_F1, tr("this card"), [this] { m_keys->turn(); });
    makeShopKeys();
}

/// The keys themselves are heard by shop mode.
void MainWindow::makeShopKeys() {
    const auto add = [this](const QKeySequence& keys, const QString& does) { m_shopKeys->add(keys, does); };
    m_shopKeys->head(Wording::tr("Shop mode"));
    add(Qt::Key_Return, tr("mark the strip as laid, and go on"));
    add(Qt::Key_Backspace, tr("not laid after all"));
    add(Qt::Key_Left, tr("look at the strip before"));
    add(Qt::Key_Right, tr("look at the next strip"));
    add(Qt::Key_G, tr("write down what the tape says below this row"));
    add(Qt::Key_L, tr("light or dark"));
    add(Qt::Key_Escape, tr("back to the benches"));
    add(Qt::Key_F1, tr("this card; any key puts it away"));
    auto* turn = new QShortcut(Qt::Key_F1, m_shop);
    connect(turn, &QShortcut::activated, m_shopKeys, &KeysCard::turnInHand);
}

} // namespace sheerlay::ui
