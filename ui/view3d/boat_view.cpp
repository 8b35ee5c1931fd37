#include "ui/view3d/boat_view.hpp"

#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/view3d/gl_view.hpp"
#include "ui/view3d/legend.hpp"

#include <QLabel>
#include <QStackedLayout>

#include <Standard_Failure.hxx>

#include <spdlog/spdlog.h>

namespace sheerlay::ui {
namespace {

constexpr int staleMargin = 10; // pixels

} // namespace

BoatView::BoatView(QWidget* parent)
    : QWidget(parent), m_stack(new QStackedLayout(this)), m_message(new QLabel(this)),
      m_stale(new QLabel(Wording::tr("before the change"), this)) {
    // over the picture, not in a row with buttons: room made for it would have the boat drawn anew
    m_stale->setObjectName(QStringLiteral("staleMark"));
    m_stale->setAttribute(Qt::WA_TransparentForMouseEvents);
    m_stale->setStyleSheet(
        QStringLiteral("color: %1; background: %2; font-weight: 600; padding: 3px 8px;")
            .arg(QColor::fromRgb(palette::hard).name(), QColor::fromRgb(palette::paper).name()));
    m_stale->move(staleMargin, staleMargin);
    m_stale->hide();
    m_message->setText(
        Wording::tr("The boat can't be drawn here: this screen offers no OpenGL through X11.\n"
                    "The map below shows the same strips, and everything else works as usual."));
    m_message->setAlignment(Qt::AlignCenter);
    m_message->setWordWrap(true);
    if (GlView::possible()) {
        try {
            m_gl = new GlView(this);
        } catch (const Standard_Failure& failure) {
            spdlog::warn("the boat can't be drawn: {}", failure.GetMessageString());
        }
    }
    if (m_gl != nullptr) {
        m_stack->addWidget(m_gl);
        m_stale->setParent(m_gl);
        m_legend = new Legend(m_gl);
        connect(m_gl, &GlView::hovered, this, &BoatView::stripHovered);
        connect(m_gl, &GlView::clicked, this, &BoatView::stripClicked);
        connect(m_gl, &GlView::touched, this, &BoatView::touched);
        connect(m_gl, &GlView::drawn, this, &BoatView::drawn);
        connect(m_gl, &GlView::failed, this, &BoatView::giveUp);
    }
    m_stack->addWidget(m_message);
}

void BoatView::giveUp() {
    m_stack->setCurrentWidget(m_message);
}

bool BoatView::drawing() const {
    return m_gl != nullptr && m_stack->currentWidget() == m_gl;
}

void BoatView::setBoat(std::shared_ptr<const Boat> boat) {
    if (m_legend != nullptr)
        m_legend->setBoat(boat);
    placeLegend();
    if (m_gl != nullptr)
        m_gl->setBoat(std::move(boat));
}

void BoatView::setLaidCount(int count) {
    if (m_gl != nullptr)
        m_gl->setLaidCount(count);
}

void BoatView::setSelected(const std::string& stripId) {
    if (m_gl != nullptr)
        m_gl->select(stripId);
}

void BoatView::setPlace(std::optional<double> x) {
    if (m_gl != nullptr)
        m_gl->showPlace(x);
}

void BoatView::setCut(std::optional<double> x) {
    if (m_gl != nullptr)
        m_gl->cutAt(x);
}

void BoatView::setUnits(core::Units units) {
    if (m_legend != nullptr)
        m_legend->setUnits(units);
    placeLegend();
}

void BoatView::setHurried(bool hurried) {
    if (m_gl != nullptr)
        m_gl->setHurried(hurried);
}

void BoatView::setStale(bool stale) {
    m_stale->adjustSize();
    m_stale->setVisible(stale);
    m_stale->raise();
}

void BoatView::setUpsideDown(bool upsideDown) {
    if (m_gl != nullptr)
        m_gl->setUpsideDown(upsideDown);
}

void BoatView::setColours(StripColours colours) {
    if (m_gl != nullptr)
        m_gl->setColours(colours);
    if (m_legend != nullptr)
        m_legend->setColours(colours);
    placeLegend();
}

void BoatView::setGhostsShown(bool shown) {
    if (m_gl != nullptr)
        m_gl->setGhostsShown(shown);
}

void BoatView::setMouldsShown(bool shown) {
    if (m_gl != nullptr)
        m_gl->setMouldsShown(shown);
}

void BoatView::look(Look look) {
    if (m_gl != nullptr)
        m_gl->look(look);
}

void BoatView::setMeasuring(bool measuring) {
    if (m_gl != nullptr)
        m_gl->setMeasuring(measuring);
}

void BoatView::setTape(std::vector<std::vector<Eigen::Vector3d>> lines) {
    if (m_gl != nullptr)
        m_gl->setTape(std::move(lines));
}

bool BoatView::savePicture(const QString& path) {
    if (!drawing())
        return false;
    m_gl->drawFinelyNow();
    return grab().save(path);
}

void BoatView::placeLegend() {
    // lower right: in the standard view the strongback leaves that corner free
    if (m_legend != nullptr)
        m_legend->move(width() - m_legend->width() - 12, height() - m_legend->height() - 12);
}

void BoatView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    placeLegend();
}

} // namespace sheerlay::ui
