#pragma once

#include "core/project/project.hpp"
#include "ui/scene/boat.hpp"
#include "ui/shop/shop_text.hpp"
#include "ui/shop/trial_text.hpp"

#include <QWidget>

#include <memory>
#include <string>

class QToolButton;

namespace sheerlay::ui {

class GirthPanel;

/// One strip fills the screen: name, length to cut, drawing, ends, what to watch. Two big targets go back, or
/// mark the strip as laid and go on. Enter or Space: laid and next; arrows: look at another; Backspace: not
/// laid after all; G: what the tape says below this row; L: light or dark; Esc: leave.
class ShopMode : public QWidget {
    Q_OBJECT
public:
    explicit ShopMode(QWidget* parent = nullptr);

    /// Keeps the strip in hand where the new boat has it.
    void setBoat(std::shared_ptr<const Boat> boat);
    /// What is laid.
    void setJournal(const core::Journal& journal);
    void setUnits(core::Units units);
    /// @param stripId  unknown or empty: the first piece that is not laid
    void goTo(const std::string& stripId);
    [[nodiscard]] std::string inHand() const;
    [[nodiscard]] bool night() const noexcept { return m_night; }
    void setNight(bool night);
    [[nodiscard]] const ShopText& text() const noexcept { return m_text; }
    [[nodiscard]] QToolButton* backTarget() const { return m_back; }
    [[nodiscard]] QToolButton* nextTarget() const { return m_next; }
    [[nodiscard]] QToolButton* girthTarget() const { return m_girth; }
    [[nodiscard]] GirthPanel* girths() const { return m_girths; }
    /// What the round that measured() told of would change.
    void tellTrial(const TrialText& trial);
    /// Why it can't be weighed, and what would do.
    void tellRefused(const QString& why);

Q_SIGNALS:
    void laid(const QString& stripId);                      ///< mark it, with today's date
    void notLaid(const QString& stripId);                   ///< take the mark back
    void measured(const sheerlay::core::RowReading& round); ///< to be weighed, and answered
    void trialTaken();                                      ///< what was weighed is to be accepted
    void placeChanged(const QString& stripId);
    void nightChanged(bool night);
    void left();

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void closeEvent(QCloseEvent* event) override;

private:
    void step(int by);
    void layAndGoOn();
    void refresh();
    void place();
    void askGirth();
    void leaveGirths();
    [[nodiscard]] QString placeWords(const core::Strip& strip) const;
    [[nodiscard]] const core::Strip* strip() const;

    std::shared_ptr<const Boat> m_boat;
    core::Journal m_journal;
    core::Units m_units = core::Units::Millimetres;
    int m_index = 0; ///< in the laying order
    bool m_night = false;
    ShopText m_text;
    QToolButton *m_back, *m_next, *m_undo, *m_girth, *m_light, *m_leave;
    GirthPanel* m_girths;
};

} // namespace sheerlay::ui
