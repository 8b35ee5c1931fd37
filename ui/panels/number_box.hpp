#pragma once

#include <QDoubleSpinBox>
#include <QLocale>
#include <QString>

namespace sheerlay::ui {

/// A field for a number with arrows. It shows the decimal mark of its locale and takes point and comma alike:
/// no marks part thousands here.
class NumberBox : public QDoubleSpinBox {
public:
    using QDoubleSpinBox::QDoubleSpinBox;

    QValidator::State validate(QString& input, int& cursor) const override {
        for (const QChar mark : {u'.', u','})
            input.replace(QString(mark), locale().decimalPoint());
        return QDoubleSpinBox::validate(input, cursor);
    }
};

} // namespace sheerlay::ui
