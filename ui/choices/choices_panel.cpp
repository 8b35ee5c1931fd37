#include "ui/choices/choices_panel.hpp"

#include "ui/panels/quiet_wheel.hpp"
#include "ui/panels/refusal_line.hpp"
#include "ui/panels/typed_field.hpp"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace sheerlay::ui {
namespace {

using Kind = ChoiceField::Kind;

TypedField::Kind typedKind(Kind kind) {
    return kind == Kind::Length   ? TypedField::Kind::Length
           : kind == Kind::Weight ? TypedField::Kind::Weight
           : kind == Kind::Cloth  ? TypedField::Kind::Cloth
           : kind == Kind::Count  ? TypedField::Kind::Count
                                  : TypedField::Kind::Number;
}

/// The same fields under the same headings: only what they hold may differ.
bool sameShape(const ChoiceForm& a, const ChoiceForm& b) {
    const auto labels = [](const ChoiceForm& form) {
        QStringList all;
        for (const ChoiceGroup& group : form.groups) {
            all << group.title;
            for (const ChoiceField& field : group.fields)
                all << field.label;
        }
        for (const ChoiceAdder& adder : form.adders)
            all << adder.title;
        return all;
    };
    return labels(a) == labels(b);
}

/// A label inside a sentence.
QString lowered(QString text) {
    const bool small =
        ChoicesPanel::tr("yes",
                         "whether a label inside a sentence begins with a small letter; no where nouns are "
                         "written large") == QLatin1String("yes");
    if (!text.isEmpty() && small)
        text[0] = text[0].toLower();
    return text;
}

} // namespace

ChoicesPanel::ChoicesPanel(FormOf form, QWidget* parent)
    : QWidget(parent), m_formOf(std::move(form)), m_problem(new RefusalLine), m_scroll(new QScrollArea),
      m_wheel(new QuietWheel(this)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(0);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    layout->addWidget(m_scroll, 1);
    layout->addWidget(m_problem);
    rebuild();
}

void ChoicesPanel::setProject(const std::optional<core::Project>& project) {
    m_project = project;
    say(QString());
    ChoiceForm form = project ? m_formOf(*project) : ChoiceForm();
    const bool same = sameShape(form, m_form);
    m_form = std::move(form);
    if (!same)
        rebuild();
    refill();
}

void ChoicesPanel::setUnits(core::Units units) {
    m_units = units;
    for (const Shown& shown : m_shown)
        if (auto* typed = qobject_cast<TypedField*>(shown.widget))
            typed->setUnits(units);
}

void ChoicesPanel::say(const QString& text) {
    m_problem->tell(text, [this] { refill(); });
}

QString ChoicesPanel::said() const {
    return m_problem->text();
}

QWidget* ChoicesPanel::field(const QString& group, const QString& label) const {
    const auto found = std::ranges::find_if(
        m_shown, [&](const Shown& shown) { return shown.group == group && shown.field.label == label; });
    return found == m_shown.end() ? nullptr : found->widget;
}

QStringList ChoicesPanel::groups() const {
    QStringList titles;
    for (const ChoiceGroup& group : m_form.groups)
        titles << group.title;
    return titles;
}

void ChoicesPanel::fold(const QString& group, bool folded) {
    for (auto* head : findChildren<QToolButton*>(QStringLiteral("foldHead")))
        if (head->text() == group)
            head->setChecked(!folded);
}

void ChoicesPanel::rebuild() {
    const int place = m_scroll->verticalScrollBar()->value();
    m_shown.clear();
    auto* body = new QWidget;
    auto* layout = new QVBoxLayout(body);
    layout->setContentsMargins(12, 6, 10, 12);
    layout->setSpacing(2);
    for (const ChoiceGroup& group : m_form.groups)
        layout->addWidget(makeGroup(group));
    if (!m_form.adders.empty())
        layout->addWidget(makeAdders());
    layout->addStretch(1);
    if (QWidget* old = m_scroll->takeWidget(); old != nullptr)
        old->deleteLater(); // one of its buttons may be the one that was pressed
    m_scroll->setWidget(body);
    m_scroll->verticalScrollBar()->setValue(place);
}

QWidget* ChoicesPanel::makeGroup(const ChoiceGroup& group) {
    auto* box = new QWidget;
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(2);
    auto* head = new QToolButton;
    head->setObjectName(QStringLiteral("foldHead"));
    head->setText(group.title);
    head->setAccessibleName(tr("%1, open or shut").arg(group.title));
    head->setToolTip(tr("Opens or shuts this part of the form"));
    head->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    head->setCheckable(true);
    head->setFocusPolicy(Qt::TabFocus);
    head->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    auto* fields = new QWidget;
    auto* grid = new QGridLayout(fields);
    grid->setContentsMargins(6, 2, 0, 6);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(5);
    grid->setColumnStretch(1, 1);
    for (const ChoiceField& field : group.fields) {
        QWidget* widget = makeField(group.title, field);
        auto* label = new QLabel(field.label);
        label->setBuddy(widget);
        label->setToolTip(field.meaning);
        const int row = grid->rowCount();
        grid->addWidget(label, row, 0);
        grid->addWidget(widget, row, 1);
    }
    if (group.remove) {
        auto* remove = new QPushButton(tr("Take out"));
        remove->setToolTip(tr("%1 goes out of the project; Undo brings it back").arg(group.title));
        remove->setAccessibleName(tr("Take out: %1").arg(group.title));
        remove->setFocusPolicy(Qt::TabFocus);
        connect(remove, &QPushButton::clicked, this, [this, title = group.title, act = group.remove] {
            core::Project next = m_project.value();
            act(next);
            ask(tr("Without %1").arg(lowered(title)), std::move(next));
        });
        grid->addWidget(remove, grid->rowCount(), 1, Qt::AlignRight);
    }
    const auto open = [head, fields](bool shown) {
        fields->setVisible(shown);
        head->setArrowType(shown ? Qt::DownArrow : Qt::RightArrow);
    };
    head->setChecked(m_form.folded == m_turned.contains(group.title));
    open(head->isChecked());
    connect(head, &QToolButton::toggled, this, [this, open, title = group.title](bool shown) {
        open(shown);
        if (shown == m_form.folded)
            m_turned.insert(title);
        else
            m_turned.erase(title);
    });
    layout->addWidget(head);
    layout->addWidget(fields);
    return box;
}

QWidget* ChoicesPanel::makeAdders() {
    auto* box = new QWidget;
    auto* layout = new QVBoxLayout(box);
    layout->setContentsMargins(0, 10, 0, 0);
    layout->setSpacing(4);
    auto* head = new QLabel(tr("To be added"));
    head->setStyleSheet(QStringLiteral("font-weight: 600;"));
    layout->addWidget(head);
    for (const ChoiceAdder& adder : m_form.adders) {
        auto* button = new QPushButton(QStringLiteral("+  ") + adder.title);
        button->setToolTip(adder.meaning);
        button->setAccessibleName(tr("Add: %1").arg(adder.title));
        button->setFocusPolicy(Qt::TabFocus);
        connect(button, &QPushButton::clicked, this, [this, adder] {
            core::Project next = m_project.value();
            const QStringList before = groups();
            adder.add(next);
            for (const ChoiceGroup& group : m_formOf(next).groups)
                if (m_form.folded && !before.contains(group.title))
                    m_turned.insert(group.title); // what is new stands open
            ask(adder.title, std::move(next));
        });
        layout->addWidget(button);
    }
    return box;
}

QWidget* ChoicesPanel::makeField(const QString& group, const ChoiceField& field) {
    QWidget* made = nullptr;
    if (field.kind == Kind::OneOf) {
        auto* choice = new QComboBox;
        choice->addItems(field.oneOf);
        choice->setPlaceholderText(field.leftOut);
        choice->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        m_wheel->guard(choice);
        connect(choice, &QComboBox::activated, this, [this, group, field](int index) {
            decide(group, field, static_cast<double>(index));
        });
        made = choice;
    } else if (field.kind == Kind::Words) {
        auto* words = new QLineEdit;
        words->setPlaceholderText(field.leftOut);
        connect(words, &QLineEdit::editingFinished, this, [this, group, field, words] {
            if (!words->isModified())
                return;
            words->setText(words->text()); // undo is the project's from here on
            const QString text = words->text().trimmed();
            decide(group, field, text.isEmpty() ? ChoiceValue() : ChoiceValue(text));
        });
        made = words;
    } else {
        auto* typed = new TypedField(typedKind(field.kind));
        typed->setPlaceholderText(field.leftOut);
        typed->setUnits(m_units);
        connect(typed, &TypedField::refused, this, [this, typed](const QString& why) {
            m_problem->about(typed, [&] { say(why); });
        });
        connect(typed, &TypedField::decided, this, [this, typed, group, field](std::optional<double> value) {
            m_problem->about(typed,
                             [&] { decide(group, field, value ? ChoiceValue(*value) : ChoiceValue()); });
        });
        made = typed;
    }
    made->setToolTip(field.meaning);
    made->setAccessibleName(field.label);
    made->setAccessibleDescription(field.meaning);
    made->setMinimumWidth(90);
    m_shown.push_back({group, field, made});
    return made;
}

void ChoicesPanel::refill() {
    if (!m_project)
        return;
    m_filling = true;
    for (const Shown& shown : m_shown) {
        const ChoiceValue value = shown.field.get(*m_project);
        const auto* number = std::get_if<double>(&value);
        if (auto* typed = qobject_cast<TypedField*>(shown.widget))
            typed->setValue(number != nullptr ? std::optional(*number) : std::nullopt);
        else if (auto* choice = qobject_cast<QComboBox*>(shown.widget))
            choice->setCurrentIndex(number != nullptr ? static_cast<int>(*number) : -1);
        else if (auto* words = qobject_cast<QLineEdit*>(shown.widget)) {
            const auto* text = std::get_if<QString>(&value);
            words->setText(text != nullptr ? *text : QString());
            words->setModified(false);
        }
    }
    m_filling = false;
}

void ChoicesPanel::decide(const QString& group, const ChoiceField& field, const ChoiceValue& value) {
    if (m_filling || !m_project)
        return;
    if (std::holds_alternative<std::monostate>(value) && field.leftOut.isEmpty()) {
        say(tr("%1 can't be left empty.").arg(field.label));
        return;
    }
    core::Project next = *m_project;
    if (const QString problem = field.put(next, value); !problem.isEmpty()) {
        say(QStringLiteral("%1: %2").arg(field.label, problem));
        return;
    }
    say(QString());
    ask(QStringLiteral("%1: %2").arg(group, lowered(field.label)), std::move(next));
}

void ChoicesPanel::ask(const QString& name, core::Project next) {
    if (next == m_project)
        return;
    m_asked = name;
    Q_EMIT changed(name, next);
}

} // namespace sheerlay::ui
