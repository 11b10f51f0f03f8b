#include "plan_sheet/plan_words.h"

#include "wording/wording.h"

#include <QCoreApplication>
#include <QStringList>

#include <array>
#include <cmath>

namespace hammerline::plan_sheet {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("plan_sheet", text);
}

QString wholeAndEighths(long eighths)
{
    static constexpr std::array parts{"", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"};
    const QString part = QString::fromLatin1(parts[static_cast<std::size_t>(eighths % 8)]);
    if (eighths / 8 == 0)
        return part;
    return part.isEmpty() ? QString::number(eighths / 8) : QString::number(eighths / 8) + ' ' + part;
}

QString plainTurns(long eighths)
{
    switch (eighths) {
    case 0:
        return tr("less than an eighth of a turn");
    case 1:
        return tr("an eighth of a turn");
    case 2:
        return tr("a quarter turn");
    case 4:
        return tr("half a turn");
    case 8:
        return tr("one turn");
    default:
        return eighths < 8 ? tr("%1 of a turn").arg(wholeAndEighths(eighths))
                           : tr("%1 turns").arg(wholeAndEighths(eighths));
    }
}

} // namespace

QString turnsText(double turns)
{
    const QString text = plainTurns(std::lround(std::abs(turns) * 8));
    return turns < 0 ? tr("%1 back").arg(text) : text;
}

QString punchingsText(const action::Move &move, const wording::NumberForm &form)
{
    if (!move.punchings)
        return {};
    if (move.punchings->empty())
        return tr("no punching on the shelf comes near");
    QStringList pieces;
    for (const units::Length piece : *move.punchings)
        pieces << wording::bareText(piece, form);
    const QString text = pieces.join(QStringLiteral(" + ")) + ' ' + wording::unitText(units::Dimension::Length, form);
    return move.by.baseCount() > 0 ? tr("take out %1").arg(text) : tr("put in %1").arg(text);
}

QString howText(const action::Move &move, const wording::NumberForm &form)
{
    return move.turns ? turnsText(*move.turns) : punchingsText(move, form);
}

QString nameOf(const action::RailMove &rail)
{
    QString name = QString::fromStdString(rail.rail).replace('_', ' ');
    if (!name.isEmpty())
        name[0] = name[0].toUpper();
    return tr("%1 (%2)").arg(name, wording::shortNameOf(rail.quantity));
}

QString byText(const action::RailMove &rail, const wording::NumberForm &form)
{
    const auto ends = [&form](units::Amount bass, units::Amount treble) {
        if (bass == treble)
            return wording::changeText(bass, form);
        return tr("%1 bass, %2 treble").arg(wording::changeText(bass, form), wording::changeText(treble, form));
    };
    const QString by = ends(rail.bass, rail.treble);
    return rail.setting ? tr("%1 (set %2)").arg(by, ends(rail.setting->bass, rail.setting->treble)) : by;
}

QString whyText(action::Hindrance why)
{
    switch (why) {
    case action::Hindrance::NothingMovesIt:
        return tr("nothing that may be used moves it");
    case action::Hindrance::OutOfReach:
        return tr("it lies beyond the reach of its adjustments");
    case action::Hindrance::BetweenSteps:
        return tr("the steps of its adjustments pass over the interval");
    case action::Hindrance::AtTheCostOf:
        break;
    }
    return tr("it would push another measure of the note out");
}

QString notesText(const std::vector<keyboard::Note> &notes)
{
    QStringList runs;
    for (std::size_t first = 0, last = 0; first < notes.size(); first = ++last) {
        while (last + 1 < notes.size() && notes[last + 1].number() == notes[last].number() + 1)
            ++last;
        const QString from = wording::nameOf(notes[first]);
        runs << (last == first ? from : tr("%1 to %2").arg(from, wording::nameOf(notes[last])));
    }
    return runs.join(QStringLiteral(", "));
}

QString timeText(double minutes)
{
    const long whole = std::lround(std::ceil(minutes - 1e-9));
    return whole < 60 ? tr("%1 min").arg(whole) : tr("%1 h %2 min").arg(whole / 60).arg(whole % 60);
}

} // namespace hammerline::plan_sheet
