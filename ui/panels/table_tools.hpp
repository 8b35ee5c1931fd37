#pragma once

#include "core/hull/hull.hpp"
#include "core/project/project.hpp"
#include "core/table_edit/scale_table.hpp"
#include "core/table_edit/table_grid.hpp"

#include <QString>
#include <QWidget>

#include <cstddef>
#include <functional>
#include <memory>
#include <optional>

class QFrame;
class QLabel;
class QLineEdit;
class QPushButton;
class QToolButton;

namespace sheerlay::ui {

/// What is done to the table as a whole: a station put in where the loft has it or taken out, a waterline
/// or buttock put in, and the boat
/// drawn longer, wider or deeper, with the new measures told before it is done.
class TableTools : public QWidget {
    Q_OBJECT
public:
    explicit TableTools(QWidget* parent = nullptr);

    void setProject(const core::Project& project);
    /// Stations can be put in while the hull is that of the project.
    void setLoft(const core::Project& project, std::shared_ptr<const core::LoftedHull> hull);
    void setUnits(core::Units units);
    /// The station in hand, which can be taken out; none where there is none.
    void setStation(std::optional<std::size_t> station);

    void putIn();
    void takeOut();
    void putInWaterline();
    void putInButtock();
    void showScale(bool shown);
    void scale();

    [[nodiscard]] QLineEdit* place() const { return m_place; }
    [[nodiscard]] QPushButton* putInButton() const { return m_putIn; }
    [[nodiscard]] QLineEdit* level() const { return m_level; }
    [[nodiscard]] QPushButton* waterlineButton() const { return m_waterline; }
    [[nodiscard]] QPushButton* buttockButton() const { return m_buttock; }
    [[nodiscard]] QPushButton* takeOutButton() const { return m_takeOut; }
    [[nodiscard]] QLineEdit* length() const { return m_length; }
    [[nodiscard]] QLineEdit* spacing() const { return m_spacing; }
    [[nodiscard]] QLineEdit* beam() const { return m_beam; }
    [[nodiscard]] QLineEdit* depth() const { return m_depth; }
    [[nodiscard]] QPushButton* scaleButton() const { return m_scale; }
    /// What scaling would give, or why it can't be done.
    [[nodiscard]] QString preview() const;

Q_SIGNALS:
    void edited(const QString& name, const sheerlay::core::Project& project);
    /// What could not be done, in words.
    void said(const QString& text);

private:
    QWidget* makeStations();
    QWidget* makeScale();
    void putInLine(core::GridLine::Kind kind, const QString& name);
    void refreshStations();
    void refillScale();
    void typed(QLineEdit* field, double now, const std::function<void(double)>& take);
    void tryScale();

    core::Project m_project;
    core::Units m_units = core::Units::Millimetres;
    std::shared_ptr<const core::LoftedHull> m_hull;
    core::HullTable m_loftedTable;
    std::optional<std::size_t> m_station;
    core::TableScale m_wanted;
    std::optional<core::Project> m_scaled;
    QLineEdit *m_place, *m_level, *m_length, *m_spacing, *m_beam, *m_depth;
    QPushButton *m_putIn, *m_takeOut, *m_waterline, *m_buttock, *m_scale;
    QToolButton* m_scaleToggle;
    QFrame* m_scaleForm;
    QLabel* m_preview;
};

} // namespace sheerlay::ui
