#pragma once

#include "core/project/project.hpp"

#include <QWidget>

#include <functional>
#include <optional>

class QCheckBox;
class QComboBox;
class QDoubleSpinBox;
class QGridLayout;
class QLabel;

namespace sheerlay::ui {

class AccentFields;
struct Boat;
class RefusalLine;
class TypedField;

/// How the boat is planked, beside the picture it changes: start line, tapers and limits, ends, closing and
/// last plank; below it what the plan makes of it, beside what it was before.
class PlankingControls : public QWidget {
    Q_OBJECT
public:
    explicit PlankingControls(QWidget* parent = nullptr);

    /// What the project says; does not emit changed().
    void setProject(const core::Project& project);
    /// The plan the picture shows; null clears the figures.
    void setBoat(const Boat* boat);
    void setUnits(core::Units units);
    /// What is wrong with the last entry, and what would do, told below the form, where it moves no field;
    /// empty when all is well. What was typed stays in its field, marked; any other choice goes back to what
    /// the project says.
    void say(const QString& text);
    [[nodiscard]] QString said() const;
    [[nodiscard]] QString figures() const;
    /// Words below the form take their room from it, not from the bench.
    [[nodiscard]] bool hasHeightForWidth() const override { return false; }

    [[nodiscard]] QComboBox* start() const { return m_start; }
    [[nodiscard]] TypedField* girth() const { return m_girth; }
    [[nodiscard]] QComboBox* taper() const { return m_taper; }
    [[nodiscard]] QComboBox* closing() const { return m_closing; }
    [[nodiscard]] TypedField* narrowest() const { return m_narrowest; }
    [[nodiscard]] TypedField* radius() const { return m_radius; }

Q_SIGNALS:
    /// The builder decided something.
    void changed(const sheerlay::core::Planking& planking);
    /// The builder wants to see start lines side by side.
    void comparisonAsked();

private:
    void layOut(QWidget* form);
    void makeStart();
    void makeLimits();
    void makeEnds();
    void show(const core::Planking& planking);
    void startChosen();
    void connectLength(TypedField* field,
                       const std::function<void(core::Planking&, std::optional<double>)>& put);
    void decide(const std::function<void(core::Planking&)>& change);
    QLabel* addHead(const QString& text);
    QLabel* addRow(const QString& name, QWidget* field, const QString& meaning);

    core::Project m_project;
    core::Units m_units = core::Units::Millimetres;
    bool m_filling = false;
    QString m_before; ///< figures of the plan before this one
    QString m_now;
    QGridLayout* m_grid;
    QComboBox *m_start, *m_taper, *m_bowEnds, *m_sternEnds, *m_closing;
    TypedField *m_girth, *m_radius, *m_narrowest;
    QDoubleSpinBox* m_bend[3];
    QWidget* m_bends;
    QCheckBox* m_shutter;
    QDoubleSpinBox *m_least, *m_most;
    AccentFields* m_accents;
    QLabel *m_bendsLabel = nullptr, *m_startHint, *m_figures;
    RefusalLine* m_problem;
};

} // namespace sheerlay::ui
