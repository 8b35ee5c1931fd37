#include "ui/panels/accent_fields.hpp"

#include "ui/panels/quiet_wheel.hpp"
#include "ui/panels/typed_field.hpp"

#include <QComboBox>
#include <QGridLayout>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

namespace sheerlay::ui {
namespace {

constexpr double firstGirth = 200.0; // mm below the sheer: where an accent is well seen (judged)
constexpr double nextGirth = 60.0;   // mm further down, so that two are told apart

} // namespace

AccentFields::AccentFields(QWidget* parent) : QWidget(parent) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* add = new QPushButton(tr("+  A row that stands out"));
    add->setToolTip(
        tr("Stays whole from end to end and is never tapered; the start moves by less than half a "
           "strip so that the first one runs where you ask"));
    add->setFocusPolicy(Qt::TabFocus);
    connect(add, &QPushButton::clicked, this, [this] {
        ask([](std::vector<core::Accent>& accents) {
            core::Accent next{core::Accent::By::Girth, firstGirth};
            if (!accents.empty()) {
                next = accents.back();
                next.at += next.by == core::Accent::By::Girth ? nextGirth : -nextGirth;
            }
            accents.push_back(next);
        });
    });
    layout->addWidget(add);
    rebuild();
}

template <class Change> void AccentFields::ask(Change change) {
    std::vector<core::Accent> next = m_accents;
    change(next);
    if (next != m_accents)
        Q_EMIT decided(next);
}

void AccentFields::setAccents(const std::vector<core::Accent>& accents) {
    m_accents = accents;
    rebuild();
}

void AccentFields::setUnits(core::Units units) {
    m_units = units;
    rebuild();
}

void AccentFields::rebuild() {
    if (m_rows != nullptr) {
        m_rows->hide();
        m_rows->deleteLater(); // one of its buttons may be the one that was pressed
    }
    m_rows = new QWidget;
    auto* grid = new QGridLayout(m_rows);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(4);
    grid->setVerticalSpacing(4);
    grid->setColumnStretch(0, 1);
    for (std::size_t i = 0; i < m_accents.size(); ++i)
        addRow(i);
    m_rows->setVisible(!m_accents.empty());
    static_cast<QVBoxLayout*>(layout())->insertWidget(0, m_rows);
}

void AccentFields::addRow(std::size_t index) {
    const core::Accent& accent = m_accents[index];
    const QString name = tr("Row that stands out, %1").arg(index + 1);
    auto* at = new TypedField(TypedField::Kind::Length);
    at->setUnits(m_units);
    at->setValue(accent.at);
    at->setAccessibleName(name);
    connect(at, &TypedField::refused, this, [this, at](const QString& why) {
        m_inHand = at;
        Q_EMIT refused(why);
        m_inHand.clear();
    });
    connect(at, &TypedField::decided, this, [this, at, index](std::optional<double> length) {
        m_inHand = at;
        if (length)
            ask([&](std::vector<core::Accent>& accents) { accents[index].at = *length; });
        else
            Q_EMIT refused(tr("A row that stands out needs a place; a length would do, or take it out."));
        m_inHand.clear();
    });
    auto* by = new QComboBox;
    by->addItems({tr("below the sheer"), tr("above the base line")});
    by->setCurrentIndex(static_cast<int>(accent.by));
    by->setToolTip(tr("Girth below the sheer, around the hull, or height above the table's base line"));
    by->setAccessibleName(tr("%1: measured from").arg(name));
    (new QuietWheel(by))->guard(by);
    connect(by, &QComboBox::activated, this, [this, index](int which) {
        ask([&](std::vector<core::Accent>& accents) {
            accents[index].by = static_cast<core::Accent::By>(which);
        });
    });
    auto* out = new QToolButton;
    out->setText(QStringLiteral("×"));
    out->setToolTip(tr("Take it out; Undo brings it back"));
    out->setAccessibleName(tr("%1: take out").arg(name));
    connect(out, &QToolButton::clicked, this, [this, index] {
        ask([&](std::vector<core::Accent>& accents) {
            accents.erase(accents.begin() + static_cast<std::ptrdiff_t>(index));
        });
    });
    auto* grid = static_cast<QGridLayout*>(m_rows->layout());
    const int row = static_cast<int>(index);
    grid->addWidget(at, row, 0);
    grid->addWidget(by, row, 1);
    grid->addWidget(out, row, 2);
}

} // namespace sheerlay::ui
