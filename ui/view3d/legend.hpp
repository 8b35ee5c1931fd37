#pragma once

#include "core/project/project.hpp"
#include "ui/scene/strip_colour.hpp"

#include <QWidget>

#include <memory>
#include <vector>

namespace sheerlay::ui {

/// What the strips' colours mean, in words and the builder's units. Lets the mouse through.
class Legend : public QWidget {
    Q_OBJECT
public:
    explicit Legend(QWidget* parent = nullptr);
    void setUnits(core::Units units);
    void setColours(StripColours colours);
    void setBoat(std::shared_ptr<const Boat> boat); ///< limits and woods follow it; none before one is loaded

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void fitText();

    std::shared_ptr<const Boat> m_boat;
    std::vector<ColourLine> m_lines;
    int m_words = 0; // width of the words' column
    StripColours m_colours = StripColours::Bend;
    core::Units m_units = core::Units::Millimetres;
};

} // namespace sheerlay::ui
