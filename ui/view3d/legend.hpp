#pragma once

#include "core/project/project.hpp"

#include <QWidget>

namespace sheerlay::ui {

/// What the strips' colours mean, in words and the builder's units. Lets the mouse through.
class Legend : public QWidget {
    Q_OBJECT
public:
    explicit Legend(QWidget* parent = nullptr);
    void setUnits(core::Units units);

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void fitText();

    int m_words = 0; // width of the classes' column
    core::Units m_units = core::Units::Millimetres;
};

} // namespace sheerlay::ui
