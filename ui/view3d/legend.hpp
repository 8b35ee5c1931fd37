#pragma once

#include "core/project/project.hpp"
#include "ui/scene/strip_colour.hpp"

#include <QColor>
#include <QString>
#include <QWidget>

#include <string>
#include <vector>

namespace sheerlay::ui {

/// What the strips' colours mean, in words and the builder's units. Lets the mouse through.
class Legend : public QWidget {
    Q_OBJECT
public:
    explicit Legend(QWidget* parent = nullptr);
    void setUnits(core::Units units);
    void setColours(StripColours colours);
    /// @param woods  of all strips, in any order
    void setStripWidth(double width); ///< mm, that the strips are milled to; the limits follow it
    void setWoods(std::vector<std::string> woods);

protected:
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void fitText();

    struct Line {
        QColor colour;
        QString word, limit;
    };
    [[nodiscard]] std::vector<Line> lines() const;
    [[nodiscard]] QString heading() const;

    int m_words = 0; // width of the words' column
    StripColours m_colours = StripColours::Bend;
    std::vector<std::string> m_woods; // each once
    double m_stripWidth = core::commonStripWidth;
    core::Units m_units = core::Units::Millimetres;
};

} // namespace sheerlay::ui
