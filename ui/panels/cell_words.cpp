#include "ui/panels/cell_words.hpp"

#include "ui/scene/wording.hpp"
#include "ui/scene/words.hpp"

#include <cmath>
#include <functional>

namespace sheerlay::ui {
namespace {

using Kind = core::GridLine::Kind;

/// What the number is less than, by how it reads on paper.
QString offText(const core::CellLoft& loft, const core::GridLine& line, core::Units units) {
    const QString off = departureText(std::abs(loft.off), units, false);
    const bool height = core::givesHeight(line);
    const QString much = loft.off > 0.0 ? (height ? Wording::tr("%1 higher") : Wording::tr("%1 farther out"))
                                        : (height ? Wording::tr("%1 lower") : Wording::tr("%1 farther in"));
    return much.arg(off);
}

QString
doubtText(const core::DoubtfulCell& doubt, const std::function<QString(double)>& printed, core::Units units) {
    QString text = Wording::tr("The rest of the table wants about %1, give or take %2.")
                       .arg(printed(doubt.fair), departureText(doubt.spread, units, false));
    if (doubt.likely)
        text += QLatin1Char(' ') +
                Wording::tr("Likeliest: %1, %2 meant.").arg(markedText(doubt.slip), printed(*doubt.likely));
    if (doubt.setAside)
        text += QLatin1Char(' ') + Wording::tr("The loft is made without this number until you settle it.");
    return text;
}

} // namespace

QString cellWords(const core::Project& project,
                  const std::vector<core::GridLine>& lines,
                  core::GridCell cell,
                  const CellSaid& said,
                  core::Units units) {
    const core::Station& station = project.hull.stations.at(cell.station);
    const core::GridLine& line = lines.at(cell.line);
    const QString name = heardText(core::cellName(project, lines, cell));
    const std::string text = core::cellText(station, line, project.units);
    const auto printed = [&](double mm) {
        return markedText(core::textLike(mm, text, project.hull, project.units));
    };
    QStringList sentences;
    if (said.refused) {
        sentences << Wording::tr("%1: %2 can't stand here. Found: %3; what would do: %4.")
                         .arg(name,
                              QLatin1Char('"') + toQString(said.refused->entry.text) + QLatin1Char('"'),
                              heardText(said.refused->found),
                              heardText(said.refused->would));
        sentences << (text.empty() ? Wording::tr("Until then nothing is given.")
                                   : Wording::tr("Until then %1 stands.").arg(markedText(text)));
        return sentences.join(QLatin1Char(' '));
    }
    if (text.empty())
        return Wording::tr("%1: nothing is given.").arg(name);
    QString head = Wording::tr("%1: the table has %2").arg(name, markedText(text));
    if (said.loft)
        head += Wording::tr(", the loft %1: the table is %2.")
                    .arg(printed(said.loft->lofted), offText(*said.loft, line, units));
    else
        head += QLatin1Char('.');
    sentences << head;
    if (const std::string replaced = core::replacedText(station, line); !replaced.empty())
        sentences
            << Wording::tr("Printed was %1; this number stands in its place.").arg(markedText(replaced));
    if (said.doubt)
        sentences << doubtText(*said.doubt, printed, units);
    return sentences.join(QLatin1Char(' '));
}

QString lineLabel(const core::GridLine& line) {
    const QString level = markedText(line.printed);
    const QString which = line.number > 0 ? QStringLiteral(" (%1)").arg(line.number + 1) : QString();
    switch (line.kind) {
    case Kind::Place:
        return Wording::tr("Station at");
    case Kind::SheerHeight:
        return Wording::tr("Height · sheer");
    case Kind::SheerBreadth:
        return Wording::tr("Half-breadth · sheer");
    case Kind::KnuckleHeight:
        return Wording::tr("Height · knuckle");
    case Kind::KnuckleBreadth:
        return Wording::tr("Half-breadth · knuckle");
    case Kind::KeelHeight:
        return Wording::tr("Height · keel");
    case Kind::KeelBreadth:
        return Wording::tr("Half-breadth · keel");
    case Kind::Waterline:
        return Wording::tr("Half-breadth · waterline %1").arg(level) + which;
    case Kind::Buttock:
        return Wording::tr("Height · buttock %1").arg(level) + which;
    case Kind::Diagonal:
        return Wording::tr("Diagonal from %1").arg(level) + which;
    case Kind::PointHeight:
        return Wording::tr("Height · point %1").arg(line.number + 1);
    case Kind::PointBreadth:
        break;
    }
    return Wording::tr("Half-breadth · point %1").arg(line.number + 1);
}

} // namespace sheerlay::ui
