#pragma once

#include "ui/panels/landmarks.hpp"

#include <QWidget>

#include <memory>
#include <vector>

class QLabel;
class QSlider;
class QTimer;
class QToolButton;
class QHBoxLayout;

namespace sheerlay::ui {

/// Lays and lifts: four big buttons, a slider along the work, landmarks to jump to. Holds how many pieces are
/// laid.
class LayingBar : public QWidget {
    Q_OBJECT
public:
    explicit LayingBar(QWidget* parent = nullptr);

    /// Keeps the place of the work as far as the new boat has one.
    void setBoat(std::shared_ptr<const Boat> boat);
    [[nodiscard]] int laid() const noexcept { return m_laid; }
    [[nodiscard]] bool playing() const;
    [[nodiscard]] QString text() const;

    /// Clamped to what there is; tells by laidChanged.
    void setLaid(int count);
    void lay() { setLaid(m_laid + 1); }
    void lift() { setLaid(m_laid - 1); }
    void layRow();
    void liftRow();
    void first() { setLaid(0); }
    void last();
    /// Lays piece after piece until all are down; again stops. From the end it starts over.
    void play();

Q_SIGNALS:
    void laidChanged(int count);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void placeLandmarks();
    void refresh();

    std::shared_ptr<const Boat> m_boat;
    std::vector<Landmark> m_landmarks;
    std::vector<QToolButton*> m_landmarkButtons;
    int m_laid = 0;
    QLabel* m_label;
    QSlider* m_slider;
    QWidget* m_landmarkRow;
    QTimer* m_timer;
    QToolButton *m_firstButton, *m_backButton, *m_playButton, *m_nextButton, *m_lastButton;
};

} // namespace sheerlay::ui
