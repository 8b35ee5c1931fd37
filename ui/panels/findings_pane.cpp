#include "ui/panels/findings_pane.hpp"

#include "ui/panels/findings_list.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <QCoreApplication>
#include <QDate>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <optional>
#include <utility>

namespace sheerlay::ui {
namespace {

/// An entry that covers nothing, as a line of the list.
core::Finding unmetLine(const core::PutAside& aside) {
    const QString said = aside.text.empty() ? toQString(aside.code) : toQString(aside.text);
    return {aside.level,
            aside.code,
            aside.strip,
            aside.x,
            QCoreApplication::translate("Window", "Not found any more: %1").arg(said).toStdString(),
            aside.note};
}

QToolButton* switchButton(const QString& text, const QString& meaning) {
    auto* made = new QToolButton;
    made->setText(text);
    made->setToolTip(meaning);
    made->setAccessibleName(meaning);
    made->setCheckable(true);
    made->setFocusPolicy(Qt::TabFocus);
    return made;
}

} // namespace

FindingsPane::FindingsPane(QWidget* parent)
    : QWidget(parent), m_list(new FindingsList), m_head(new QLabel), m_said(new QLabel),
      m_words(new QLineEdit), m_reason(new QLineEdit),
      m_asides(switchButton(QString(), tr("Show the findings put aside"))),
      m_stops(switchButton(tr("stops"), tr("Show stops: what can't be built as planned"))),
      m_cautions(switchButton(tr("cautions"), tr("Show cautions: what will be hard or wasteful"))),
      m_notes(switchButton(tr("notes"), tr("Show notes: what is good to know"))),
      m_act(new QPushButton(tr("Put aside"))), m_goThere(new QPushButton) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    layout->addWidget(makeHead());
    layout->addWidget(makeFilter());
    layout->addWidget(m_list, 1);
    layout->addWidget(makeFoot());
    connect(m_list, &FindingsList::chosen, this, &FindingsPane::chosen);
    connect(m_list, &QListWidget::itemActivated, this, &FindingsPane::follow);
    connect(m_list, &QListWidget::currentRowChanged, this, &FindingsPane::refreshFoot);
    setFindings({}, {});
}

QWidget* FindingsPane::makeHead() {
    auto* bar = new QWidget;
    auto* layout = new QHBoxLayout(bar);
    layout->setContentsMargins(0, 0, 10, 0);
    m_head->setObjectName(QStringLiteral("sideHead"));
    m_head->setWordWrap(true);
    layout->addWidget(m_head, 1);
    layout->addWidget(m_asides);
    connect(m_asides, &QToolButton::toggled, this, &FindingsPane::filter);
    return bar;
}

QWidget* FindingsPane::makeFilter() {
    auto* bar = new QWidget;
    bar->setObjectName(QStringLiteral("viewBar"));
    auto* layout = new QHBoxLayout(bar);
    layout->setContentsMargins(12, 0, 8, 4);
    layout->setSpacing(2);
    m_words->setPlaceholderText(tr("words"));
    m_words->setAccessibleName(tr("Words to look for in the findings"));
    m_words->setToolTip(tr("Shows the findings that hold all these words, or a strip's name"));
    m_words->setClearButtonEnabled(true);
    layout->addWidget(m_words, 1);
    connect(m_words, &QLineEdit::textChanged, this, &FindingsPane::filter);
    for (QToolButton* level : {m_stops, m_cautions, m_notes}) {
        level->setChecked(true);
        layout->addWidget(level);
        connect(level, &QToolButton::toggled, this, &FindingsPane::filter);
    }
    return bar;
}

QWidget* FindingsPane::makeFoot() {
    m_foot = new QWidget;
    auto* layout = new QVBoxLayout(m_foot);
    layout->setContentsMargins(12, 6, 10, 8);
    layout->setSpacing(4);
    m_said->setWordWrap(true);
    m_said->setStyleSheet(QStringLiteral("color: %1;").arg(QColor::fromRgb(palette::pencil).name()));
    auto* row = new QHBoxLayout;
    m_reason->setPlaceholderText(tr("why it may rest"));
    m_reason->setAccessibleName(tr("Why the finding may rest"));
    m_reason->setToolTip(tr("The reason is kept in the project, and stands behind the finding on paper"));
    m_act->setToolTip(
        tr("Keeps a finding you have read at the end of the list, with the reason; it can be taken back"));
    m_act->setFocusPolicy(Qt::TabFocus);
    row->addWidget(m_reason, 1);
    row->addWidget(m_act);
    m_goThere->setToolTip(tr("Shows the part there that the finding is about (double click)"));
    m_goThere->setFocusPolicy(Qt::TabFocus);
    layout->addWidget(m_said);
    layout->addWidget(m_goThere);
    layout->addLayout(row);
    connect(m_goThere, &QPushButton::clicked, this, &FindingsPane::follow);
    connect(m_act, &QPushButton::clicked, this, &FindingsPane::actOnCurrent);
    connect(m_reason, &QLineEdit::returnPressed, this, &FindingsPane::actOnCurrent);
    return m_foot;
}

void FindingsPane::setFindings(std::vector<core::Finding> findings,
                               std::vector<core::PutAside> asides,
                               bool all) {
    const core::Finding* current = m_list->current();
    const std::optional<core::Finding> inHand = current != nullptr ? std::optional(*current) : std::nullopt;
    const QString typed = m_reason->text();
    m_findings = std::move(findings);
    m_entries = std::move(asides);
    std::vector<core::Finding> shown = core::withAsides(m_findings, m_entries);
    if (all)
        for (const core::PutAside& aside : core::unmetAsides(m_findings, m_entries))
            shown.push_back(unmetLine(aside));
    m_list->setFindings(std::move(shown));
    m_head->setText(tr("Findings: %1").arg(m_list->summary()));
    m_asides->setText(tr("%1 put aside").arg(m_entries.size()));
    m_asides->setVisible(!m_entries.empty());
    if (m_entries.empty())
        m_asides->setChecked(false);
    filter();
    if (!inHand)
        return;
    m_list->returnTo(*inHand);
    if (m_list->current() != nullptr)
        m_reason->setText(typed);
}

void FindingsPane::setUnits(core::Units units) {
    m_list->setUnits(units);
}

QToolButton* FindingsPane::levelButton(core::Level level) const {
    return level == core::Level::Stop ? m_stops : level == core::Level::Caution ? m_cautions : m_notes;
}

QString FindingsPane::head() const {
    return m_head->text();
}

QString FindingsPane::said() const {
    return m_said->text();
}

void FindingsPane::filter() {
    m_list->setFilter({m_stops->isChecked(),
                       m_cautions->isChecked(),
                       m_notes->isChecked(),
                       m_asides->isChecked(),
                       m_words->text()});
    refreshFoot();
}

void FindingsPane::refreshFoot() {
    const core::Finding* finding = m_list->current();
    m_foot->setVisible(finding != nullptr);
    m_said->clear();
    m_reason->setText(QString());
    if (finding == nullptr)
        return;
    const bool stop = finding->level == core::Level::Stop;
    const bool aside = finding->aside.has_value();
    if (stop)
        m_said->setText(tr("A stop can't be put aside: change what it names."));
    m_said->setVisible(!m_said->text().isEmpty());
    m_reason->setVisible(!stop && !aside);
    m_act->setVisible(!stop);
    m_act->setText(aside ? tr("Take it back") : tr("Put aside"));
    const QString bench = m_benchOf ? m_benchOf(*finding) : QString();
    m_goThere->setVisible(!bench.isEmpty());
    m_goThere->setText(tr("Show it on the bench “%1”").arg(bench));
}

void FindingsPane::follow() {
    const core::Finding* finding = m_list->current();
    if (finding != nullptr && m_benchOf && !m_benchOf(*finding).isEmpty())
        Q_EMIT followed(*finding);
}

void FindingsPane::actOnCurrent() {
    const core::Finding* finding = m_list->current();
    if (finding == nullptr)
        return;
    if (finding->aside) {
        std::vector<core::PutAside> left = core::takeBack(m_entries, m_findings, *finding);
        if (left == m_entries) // it covers nothing any more
            for (const core::PutAside& unmet : core::unmetAsides(m_findings, m_entries))
                if (unmetLine(unmet) == *finding) {
                    left.erase(std::ranges::find(left, unmet));
                    break;
                }
        Q_EMIT asidesChanged(tr("Take a finding back"), left);
        return;
    }
    const auto asides = core::putAside(
        m_entries,
        *finding,
        {m_reason->text().trimmed().toStdString(), QDate::currentDate().toString(Qt::ISODate).toStdString()});
    if (asides) {
        Q_EMIT asidesChanged(tr("Put a finding aside"), *asides);
        return;
    }
    m_said->setText(toQString(asides.error()));
    m_said->show();
    m_reason->setFocus();
}

} // namespace sheerlay::ui
