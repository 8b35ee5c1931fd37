#include "ui/window/notice.hpp"

#include "ui/scene/palette.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>

namespace sheerlay::ui {
namespace {

constexpr qsizetype mostLines = 8;

} // namespace

Notice::Notice(QWidget* parent) : QFrame(parent), m_text(new QLabel(this)), m_close(new QToolButton(this)) {
    m_text->setTextFormat(Qt::PlainText);
    m_text->setWordWrap(true);
    m_text->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_text->setFocusPolicy(Qt::NoFocus);
    m_close->setText(QStringLiteral("Put away"));
    m_close->setFocusPolicy(Qt::NoFocus);
    connect(m_close, &QToolButton::clicked, this, &QWidget::hide);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(16, 8, 12, 8);
    layout->addWidget(m_text, 1);
    layout->addWidget(m_close, 0, Qt::AlignTop);
    hide();
}

void Notice::say(const QStringList& lines, Weight weight) {
    QStringList shown = lines;
    if (shown.size() > mostLines + 1) {
        const qsizetype left = shown.size() - mostLines - 1;
        shown = shown.mid(0, mostLines + 1);
        shown << QStringLiteral("… and %1 more").arg(left);
    }
    m_text->setText(shown.join(QLatin1Char('\n')));
    const QRgb edge = weight == Weight::Trouble ? palette::hard : palette::clamp;
    setStyleSheet(
        QStringLiteral("sheerlay--ui--Notice { background: %1; border: none; border-left: 6px solid %2; "
                       "border-bottom: 1px solid %3; }")
            .arg(QColor::fromRgb(palette::paper).name(),
                 QColor::fromRgb(edge).name(),
                 QColor::fromRgb(palette::rule).name()));
    m_close->setVisible(weight == Weight::Remark); // trouble stays in sight until it is mended
    show();
}

void Notice::clear() {
    m_text->clear();
    hide();
}

QString Notice::text() const {
    return m_text->text();
}

} // namespace sheerlay::ui
