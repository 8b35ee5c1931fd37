#include "ui/panels/typed_field.hpp"

#include "core/units/length.hpp"
#include "core/units/weight.hpp"
#include "ui/scene/palette.hpp"
#include "ui/scene/words.hpp"

#include <QPainter>

#include <cmath>
#include <string>

namespace sheerlay::ui {
namespace {

constexpr double smallLength = 10.0;  // mm; below it a tenth of a millimetre matters
constexpr double smallInches = 25.4;  // mm; below it a sixty-fourth of an inch does
constexpr double mostCount = 1000000; // far beyond anything counted here; above it a number is a slip

Expected<double, core::LengthError> parseNumber(const QString& text, bool whole) {
    bool number = false;
    QString point = text;
    const double value = point.replace(u',', u'.').toDouble(&number); // a comma is as good
    if (number && std::isfinite(value) &&
        (!whole || (value >= 0.0 && value <= mostCount && value == std::floor(value))))
        return value;
    return unexpected(core::LengthError{
        "“" + text.toStdString() + "”",
        (whole ? TypedField::tr("a whole number") : TypedField::tr("a number such as 0.5")).toStdString()});
}

QString shortest(double value) {
    return markedText(QString::number(value, 'g', 6).toStdString());
}

} // namespace

TypedField::TypedField(Kind kind, QWidget* parent) : QLineEdit(parent), m_kind(kind) {
    connect(this, &QLineEdit::editingFinished, this, &TypedField::typed);
    connect(this, &QLineEdit::textChanged, this, [this] { m_refused = false; });
}

void TypedField::setValue(std::optional<double> value) {
    m_value = value;
    refill();
}

void TypedField::setUnits(core::Units units) {
    m_units = units;
    refill();
}

void TypedField::refill() {
    setText(m_value ? textOf(*m_value) : QString());
    setModified(false);
    m_refused = false;
    update();
}

QString TypedField::textOf(double value) const {
    const bool inches = m_units == core::Units::Inches;
    switch (m_kind) {
    case Kind::Length:
        if (!inches && std::abs(value) < smallLength)
            return shortest(std::round(100.0 * value) / 100.0) + QStringLiteral(" mm");
        return typedLengthText(value, m_units, {std::abs(value) < smallInches ? 64 : 32, 1});
    case Kind::Weight:
        return inches ? shortest(std::round(10.0 * value / core::kgPerPound) / 10.0) + QStringLiteral(" lb")
                      : shortest(std::round(10.0 * value) / 10.0) + QStringLiteral(" kg");
    case Kind::Cloth:
        return inches
                   ? shortest(std::round(100.0 * value / core::gsmPerOunce) / 100.0) + QStringLiteral(" oz")
                   : shortest(std::round(10.0 * value) / 10.0) + QStringLiteral(" g");
    case Kind::Number:
    case Kind::Count:
        break;
    }
    return shortest(value);
}

void TypedField::typed() {
    if (!isModified())
        return;
    setModified(false);
    const QString said = text().trimmed();
    if (said.isEmpty()) {
        setText(QString());
        Q_EMIT decided(std::nullopt);
        return;
    }
    const std::string words = said.toStdString();
    const auto length = [&]() -> Expected<double, core::LengthError> {
        const auto read = core::parseLength(words, m_units);
        if (!read)
            return unexpected(read.error());
        return read->millimetres;
    };
    const auto value = m_kind == Kind::Length   ? length()
                       : m_kind == Kind::Weight ? core::parseWeight(words, m_units)
                       : m_kind == Kind::Cloth  ? core::parseClothWeight(words)
                                                : parseNumber(said, m_kind == Kind::Count);
    if (value) {
        setText(text()); // undo is the project's from here on
        Q_EMIT decided(*value);
    } else {
        refuse(text());
        Q_EMIT refused(
            tr("%1: %2; %3 would do.")
                .arg(accessibleName(), heardText(value.error().found), heardText(value.error().would)));
    }
}

void TypedField::refuse(const QString& typed) {
    setText(typed);
    setModified(false);
    m_refused = true;
    update();
}

/// The sign that an entry which can't stand has in the table, too, and a frame.
void TypedField::paintEvent(QPaintEvent* event) {
    QLineEdit::paintEvent(event);
    if (!m_refused)
        return;
    QPainter painter(this);
    painter.setPen(QPen(QColor::fromRgb(palette::hard), 2.0));
    painter.drawRect(rect().adjusted(1, 1, -1, -1));
    QFont bold = font();
    bold.setBold(true);
    painter.setFont(bold);
    painter.drawText(rect().adjusted(0, 0, -8, 0), Qt::AlignRight | Qt::AlignVCenter, QStringLiteral("!"));
}

} // namespace sheerlay::ui
