#include "ui/panels/strip_card.hpp"

#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <QLabel>
#include <QMouseEvent>
#include <QScrollArea>
#include <QVBoxLayout>

namespace sheerlay::ui {
namespace {

QString colourName(QRgb colour) {
    return QColor::fromRgb(colour).name();
}

QLabel* label(const QString& text, QWidget* parent, int pixels, QRgb colour, bool strong = false) {
    auto* made = new QLabel(text, parent);
    made->setTextFormat(Qt::PlainText);
    made->setWordWrap(true);
    made->setStyleSheet(QStringLiteral("font-size: %1px; color: %2; font-weight: %3;")
                            .arg(pixels)
                            .arg(colourName(colour))
                            .arg(strong ? 600 : 400));
    return made;
}

/// A figure with its caption; a click shows or folds away what it means.
class Figure : public QWidget {
public:
    Figure(const CardLine& line, QWidget* parent) : QWidget(parent) {
        auto* layout = new QVBoxLayout(this);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->setSpacing(1);
        layout->addWidget(label(line.caption, this, 12, palette::pencil));
        layout->addWidget(label(line.figure, this, 18, palette::ink, true));
        if (!line.detail.isEmpty())
            layout->addWidget(label(line.detail, this, 13, palette::ink));
        m_meaning = label(line.meaning, this, 12, palette::lineBlue);
        m_meaning->hide();
        layout->addWidget(m_meaning);
        setCursor(Qt::PointingHandCursor);
        setToolTip(Wording::tr("Click for what this means and how sure it is"));
    }

protected:
    void mouseReleaseEvent(QMouseEvent* event) override {
        if (event->button() == Qt::LeftButton && !m_meaning->text().isEmpty())
            m_meaning->setVisible(!m_meaning->isVisible());
        event->accept();
    }
    void mousePressEvent(QMouseEvent* event) override { event->accept(); }

private:
    QLabel* m_meaning;
};

} // namespace

StripCard::StripCard(QWidget* parent) : QWidget(parent) {
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto* scroll = new QScrollArea(this);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto* page = new QWidget(scroll);
    m_layout = new QVBoxLayout(page);
    m_layout->setContentsMargins(16, 12, 12, 12);
    m_layout->addStretch(1);
    scroll->setWidget(page);
    outer->addWidget(scroll);
    rebuild();
}

void StripCard::setBoat(std::shared_ptr<const Boat> boat) {
    m_boat = std::move(boat);
    rebuild();
}

void StripCard::setStrip(const std::string& stripId) {
    if (stripId == m_strip)
        return;
    m_strip = stripId;
    rebuild();
}

void StripCard::setUnits(core::Units units) {
    m_units = units;
    rebuild();
}

void StripCard::rebuild() {
    auto* body = new QWidget;
    auto* layout = new QVBoxLayout(body);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    m_text = CardText();
    const core::Strip* strip = m_boat ? m_boat->strip(m_strip) : nullptr;
    if (strip == nullptr) {
        layout->addWidget(label(Wording::tr("The strip in hand"), body, 18, palette::ink, true));
        layout->addWidget(
            label(Wording::tr("Click a strip on the boat or on the map, and what there is to know "
                              "about it stands here."),
                  body,
                  13,
                  palette::pencil));
    } else {
        m_text = cardText(*m_boat, *strip, m_units);
        auto* head = new QWidget(body);
        auto* headLayout = new QVBoxLayout(head);
        headLayout->setContentsMargins(0, 0, 0, 0);
        headLayout->setSpacing(0);
        headLayout->addWidget(label(m_text.title, head, 30, palette::cedar, true));
        headLayout->addWidget(label(m_text.subtitle, head, 13, palette::pencil));
        layout->addWidget(head);
        for (const CardLine& line : m_text.lines)
            layout->addWidget(new Figure(line, body));
        layout->addWidget(new Figure({Wording::tr("How to hold it"), {}, m_text.advice, {}}, body));
    }
    if (m_body != nullptr) {
        m_layout->removeWidget(m_body);
        m_body->hide();
        m_body->deleteLater(); // a click on it may have led here
    }
    m_body = body;
    m_layout->insertWidget(0, m_body);
}

} // namespace sheerlay::ui
