// The bar over the boat on the planking bench: from where she is seen, what is shown of her, and in what
// colours.
#include "ui/map2d/planking_map.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"
#include "ui/view3d/boat_view.hpp"
#include "ui/window/planking_bench.hpp"

#include <QActionGroup>
#include <QHBoxLayout>
#include <QMenu>
#include <QToolButton>

namespace sheerlay::ui {

QWidget* PlankingBench::makeViewBar() {
    auto* bar = new QWidget;
    bar->setObjectName(QStringLiteral("viewBar"));
    bar->setAttribute(Qt::WA_StyledBackground);
    auto* layout = new QHBoxLayout(bar);
    layout->setContentsMargins(8, 3, 8, 3);
    layout->setSpacing(2);
    const auto button = [&](const QString& text, const QString& tip) {
        auto* made = new QToolButton(bar);
        made->setText(text);
        made->setToolTip(tip);
        made->setFocusPolicy(Qt::TabFocus);
        layout->addWidget(made);
        return made;
    };
    const auto lookButton = [&](const QString& text, Look look, const QString& tip) {
        connect(button(text, tip), &QToolButton::clicked, this, [this, look] { m_view->look(look); });
    };
    lookButton(Wording::tr("Three-quarter"), Look::ThreeQuarter, Wording::tr("From the bow quarter, above"));
    lookButton(Wording::tr("Profile"), Look::Profile, Wording::tr("Square from the side"));
    lookButton(Wording::tr("Plan"), Look::Plan, Wording::tr("Straight down"));
    lookButton(Wording::tr("Body"), Look::Body, Wording::tr("Square from the bow"));
    layout->addStretch(1);
    QToolButton* rightWay = button(Wording::tr("Right way up"), Wording::tr("Turn the boat over"));
    rightWay->setCheckable(true);
    QToolButton* moulds = button(Wording::tr("Moulds"), Wording::tr("Show moulds and strongback"));
    moulds->setCheckable(true);
    moulds->setChecked(true);
    connect(moulds, &QToolButton::toggled, m_view, &BoatView::setMouldsShown);
    // a boat that is turned over has come off its moulds
    connect(rightWay, &QToolButton::toggled, this, [this, moulds](bool on) {
        m_view->setUpsideDown(!on);
        moulds->setChecked(!on);
    });
    QToolButton* ghosts =
        button(Wording::tr("Strips to come"), Wording::tr("Outline the strips not yet laid"));
    ghosts->setCheckable(true);
    ghosts->setChecked(true);
    connect(ghosts, &QToolButton::toggled, m_view, &BoatView::setGhostsShown);
    QToolButton* scarfs =
        button(Wording::tr("Scarfs"), Wording::tr("Mark on the map where strips are scarfed"));
    scarfs->setCheckable(true);
    scarfs->setChecked(true);
    connect(scarfs, &QToolButton::toggled, this, [this](bool on) {
        m_scarfs = on;
        planShop();
    });
    m_tapeButton->setParent(bar);
    m_tapeButton->setText(Wording::tr("Tape"));
    m_tapeButton->setToolTip(Wording::tr("Measure along the planking between two places (T)"));
    m_tapeButton->setCheckable(true);
    m_tapeButton->setFocusPolicy(Qt::TabFocus);
    layout->addWidget(m_tapeButton);
    connect(m_tapeButton, &QToolButton::toggled, this, &PlankingBench::measure);
    QToolButton* cut =
        button(Wording::tr("Section"), Wording::tr("Cut the boat at a station and look into her"));
    cut->setPopupMode(QToolButton::InstantPopup);
    cut->setMenu(makeCutMenu(cut));
    QToolButton* colours = button(Wording::tr("Colours"), Wording::tr("What the colours of the strips tell"));
    colours->setPopupMode(QToolButton::InstantPopup);
    colours->setMenu(makeColourMenu(colours));
    return bar;
}

QMenu* PlankingBench::makeColourMenu(QWidget* parent) {
    auto* menu = new QMenu(parent);
    auto* one = new QActionGroup(menu);
    for (const StripColours colours : allStripColours) {
        QAction* action = menu->addAction(colourHeading(colours));
        action->setCheckable(true);
        action->setChecked(colours == StripColours::Bend);
        one->addAction(action);
        connect(action, &QAction::triggered, this, [this, colours] {
            m_view->setColours(colours);
            m_map->setColours(colours);
        });
    }
    return menu;
}

QMenu* PlankingBench::makeCutMenu(QWidget* parent) {
    auto* menu = new QMenu(parent);
    connect(menu, &QMenu::aboutToShow, this, [this, menu] {
        menu->clear();
        const auto add = [&](const QString& text, std::optional<double> x) {
            QAction* action = menu->addAction(text, this, [this, x] { cutAt(x); });
            action->setCheckable(true);
            action->setChecked(x == m_cut);
        };
        add(Wording::tr("the whole boat"), std::nullopt);
        if (m_boat)
            for (const MapStation& station : m_boat->scene.stations)
                add(Wording::tr("at station %1").arg(toQString(station.name)), station.x);
    });
    return menu;
}

void PlankingBench::cutAt(std::optional<double> x) {
    m_cut = x;
    m_view->setCut(x);
}

} // namespace sheerlay::ui
