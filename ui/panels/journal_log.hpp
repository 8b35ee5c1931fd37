#pragma once

#include "core/project/journal.hpp"
#include "core/units/length.hpp"

#include <QString>
#include <QWidget>

#include <functional>

class QLabel;
class QPushButton;
class QTableWidget;

namespace sheerlay::ui {

/// What the journal holds, line by line in the order of the file: strips laid, with their day and a note that
/// is typed here, then rounds with the tape, with what it said. A line can be taken out.
class JournalLog : public QWidget {
    Q_OBJECT
public:
    explicit JournalLog(QWidget* parent = nullptr);

    void setJournal(const core::Journal& journal);
    void setUnits(core::Units units);
    /// Why a reading was left out, as told beside it; empty where it was used.
    using WhyLeftOut = std::function<QString(const core::RowReading&, const core::GirthLeft&)>;
    void setLeftOut(WhyLeftOut why);

    [[nodiscard]] QTableWidget* lines() const { return m_lines; }
    [[nodiscard]] QPushButton* takeOutButton() const { return m_takeOut; }

Q_SIGNALS:
    /// @param name  of the edit
    void changed(const QString& name, const sheerlay::core::Journal& next);

private:
    void refill();
    /// What the tape said in a round, and why of it what was left out was.
    struct Told {
        QString readings, why;
    };
    [[nodiscard]] Told told(const core::RowReading& round) const;
    void takeOut();
    void noted(int line, int column);
    [[nodiscard]] bool isStrip(int line) const;

    core::Journal m_journal;
    WhyLeftOut m_leftOut;
    core::Units m_units = core::Units::Millimetres;
    QLabel* m_none;
    QTableWidget* m_lines;
    QPushButton* m_takeOut;
    bool m_filling = false;
};

} // namespace sheerlay::ui
