#pragma once

#include "ui/panels/card_text.hpp"

#include <QWidget>

#include <memory>
#include <string>

class QLabel;
class QVBoxLayout;

namespace sheerlay::ui {

/// All about the strip in hand. A click on a figure unfolds what it means and how sure it is.
class StripCard : public QWidget {
    Q_OBJECT
public:
    explicit StripCard(QWidget* parent = nullptr);

    void setBoat(std::shared_ptr<const Boat> boat);
    /// @param stripId  empty or unknown shows a hint instead
    void setStrip(const std::string& stripId);
    void setUnits(core::Units units);
    [[nodiscard]] const CardText& text() const noexcept { return m_text; }

private:
    void rebuild();

    std::shared_ptr<const Boat> m_boat;
    std::string m_strip;
    core::Units m_units = core::Units::Millimetres;
    CardText m_text;
    QVBoxLayout* m_layout;
    QWidget* m_body = nullptr;
};

} // namespace sheerlay::ui
