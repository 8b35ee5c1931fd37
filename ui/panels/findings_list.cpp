#include "ui/panels/findings_list.hpp"

#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>
#include <utility>

namespace sheerlay::ui {
namespace {

constexpr int headRole = Qt::UserRole + 1;
constexpr int levelRole = Qt::UserRole + 2;
constexpr int asideRole = Qt::UserRole + 3;
constexpr int left = 16, right = 12, above = 7, below = 7, band = 4;

QFont headFont(const QFont& base) {
    QFont font = base;
    font.setPixelSize(12);
    font.setWeight(QFont::DemiBold);
    return font;
}

class FindingDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const auto* list = qobject_cast<const QListWidget*>(option.widget);
        const int width = list != nullptr ? list->viewport()->width() : option.rect.width();
        return {width, heightFor(option.font, index, width)};
    }

    void
    paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        painter->save();
        const QRect box = option.rect;
        if (option.state.testFlag(QStyle::State_Selected))
            painter->fillRect(box, QColor(0xE6, 0xDC, 0xC8));
        else if (option.state.testFlag(QStyle::State_MouseOver))
            painter->fillRect(box, QColor(0xF1, 0xEA, 0xDB));
        const auto level = static_cast<core::Level>(index.data(levelRole).toInt());
        const bool aside = index.data(asideRole).toBool();
        painter->fillRect(QRect(box.left() + 4, box.top() + above, band, box.height() - above - below),
                          aside ? QColor::fromRgb(palette::rule) : levelColour(level));
        painter->setFont(headFont(option.font));
        painter->setPen(QColor::fromRgb(palette::pencil));
        const int headHeight = QFontMetrics(painter->font()).height();
        painter->drawText(QRect(box.left() + left, box.top() + above, box.width() - left - right, headHeight),
                          Qt::AlignLeft | Qt::AlignVCenter,
                          index.data(headRole).toString());
        painter->setFont(option.font);
        painter->setPen(QColor::fromRgb(aside ? palette::pencil : palette::ink));
        painter->drawText(QRect(box.left() + left,
                                box.top() + above + headHeight + 2,
                                box.width() - left - right,
                                box.height()),
                          Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                          index.data(Qt::DisplayRole).toString());
        painter->setPen(QColor::fromRgb(palette::rule));
        painter->drawLine(box.bottomLeft(), box.bottomRight());
        painter->restore();
    }

private:
    static int heightFor(const QFont& font, const QModelIndex& index, int width) {
        const QFontMetrics text(font);
        const QRect wrapped = text.boundingRect(QRect(0, 0, std::max(60, width - left - right), 10000),
                                                Qt::TextWordWrap,
                                                index.data(Qt::DisplayRole).toString());
        return above + QFontMetrics(headFont(font)).height() + 2 + wrapped.height() + below;
    }
};

} // namespace

bool FindingFilter::passes(const core::Finding& finding) const {
    const bool level = finding.level == core::Level::Stop      ? stops
                       : finding.level == core::Level::Caution ? cautions
                                                               : notes;
    if (!level || (finding.aside && !asides))
        return false;
    const QString said = heardText(finding.text) + u' ' + toQString(finding.code) + u' ' +
                         toQString(finding.strip.value_or("")) + u' ' +
                         toQString(finding.aside ? finding.aside->reason : "");
    const QStringList wanted = words.split(u' ', Qt::SkipEmptyParts);
    return std::ranges::all_of(wanted,
                               [&](const QString& word) { return said.contains(word, Qt::CaseInsensitive); });
}

QString findingHead(const core::Finding& finding, core::Units units) {
    QString head = levelText(finding.level);
    if (finding.strip)
        head += QStringLiteral(" · ") + toQString(*finding.strip);
    if (finding.x)
        head += QStringLiteral(" · ") + placeText(*finding.x, units);
    if (finding.aside)
        head += QStringLiteral(" · ") +
                (finding.aside->date.empty()
                     ? FindingsList::tr("put aside")
                     : FindingsList::tr("put aside %1").arg(toQString(finding.aside->date)));
    return head;
}

QString findingText(const core::Finding& finding, core::Units units) {
    const QString text = heardText(finding.text, units);
    return finding.aside
               ? text + u'\n' + FindingsList::tr("Put aside: %1").arg(toQString(finding.aside->reason))
               : text;
}

FindingsList::FindingsList(QWidget* parent) : QListWidget(parent) {
    setItemDelegate(new FindingDelegate(this));
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::TabFocus);
    setMouseTracking(true);
    setResizeMode(QListView::Adjust);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(Wording::tr("Findings"));
    connect(this, &QListWidget::itemClicked, this, [this](QListWidgetItem* item) {
        Q_EMIT chosen(at(row(item)));
    });
}

void FindingsList::setFindings(std::vector<core::Finding> findings) {
    m_findings = std::move(findings);
    std::stable_sort(
        m_findings.begin(), m_findings.end(), [](const core::Finding& a, const core::Finding& b) {
            return static_cast<int>(a.level) > static_cast<int>(b.level);
        });
    refill();
}

void FindingsList::setUnits(core::Units units) {
    m_units = units;
    const int row = currentRow();
    refill();
    setCurrentRow(row);
}

void FindingsList::setFilter(FindingFilter filter) {
    m_filter = std::move(filter);
    refill();
}

const core::Finding& FindingsList::at(int row) const {
    return m_findings[m_shown[static_cast<std::size_t>(row)]];
}

const core::Finding* FindingsList::current() const {
    return currentRow() >= 0 ? &at(currentRow()) : nullptr;
}

void FindingsList::returnTo(const core::Finding& finding) {
    for (int row = 0; row < count(); ++row)
        if (at(row) == finding) {
            setCurrentRow(row);
            return;
        }
}

void FindingsList::refill() {
    clear();
    m_shown.clear();
    for (std::size_t i = 0; i < m_findings.size(); ++i) {
        const core::Finding& finding = m_findings[i];
        if (!m_filter.passes(finding))
            continue;
        m_shown.push_back(i);
        const QString text = findingText(finding, m_units);
        auto* item = new QListWidgetItem(text, this);
        item->setData(headRole, findingHead(finding, m_units));
        item->setData(levelRole, static_cast<int>(finding.level));
        item->setData(asideRole, finding.aside.has_value());
        item->setData(Qt::AccessibleTextRole, findingHead(finding, m_units) + QStringLiteral(". ") + text);
    }
}

void FindingsList::resizeEvent(QResizeEvent* event) {
    QListWidget::resizeEvent(event);
    scheduleDelayedItemsLayout(); // heights follow the width
}

void FindingsList::next() {
    if (count() == 0)
        return;
    const int following = (currentRow() + 1) % count();
    setCurrentRow(following);
    scrollToItem(item(following));
    Q_EMIT chosen(at(following));
}

QString FindingsList::summary() const {
    QStringList parts;
    for (const core::Level level : {core::Level::Stop, core::Level::Caution, core::Level::Note}) {
        const auto count = std::count_if(m_findings.begin(), m_findings.end(), [&](const core::Finding& f) {
            return f.level == level && !f.aside;
        });
        if (count == 0)
            continue;
        parts << levelCountText(level, count);
    }
    return parts.empty() ? Wording::tr("Nothing to worry about") : parts.join(QStringLiteral(", "));
}

} // namespace sheerlay::ui
