#include "charts/inside/changes.h"

#include "analysis/outliers.h"
#include "wording/wording.h"

#include <QCoreApplication>

#include <cmath>

namespace hammerline::charts {

namespace {

ChangedNote changedNote(const Plotted &point, const tolerance::Verdict &verdict, const ChartData &data)
{
    ChangedNote made{.note = point.note, .kind = point.kind, .before = *point.before, .after = *point.now};
    made.change = made.after - made.before;
    if (verdict.limits && verdict.limits->low)
        made.least = wording::inUnit(*verdict.limits->low, data.form) - made.before;
    if (verdict.limits && verdict.limits->high)
        made.most = wording::inUnit(*verdict.limits->high, data.form) - made.before;
    made.story =
        QCoreApplication::translate("charts", "%1; changed by %2").arg(point.story, changeFigure(made.change, data));
    return made;
}

} // namespace

std::vector<ChangedNote> changedNotes(const ChartData &data)
{
    std::vector<ChangedNote> notes;
    std::vector<double> changes;
    for (const Plotted &point : plottedOf(data)) {
        if (!point.now || !point.before)
            continue;
        notes.push_back(changedNote(point, *data.now.find(data.quantity, point.note), data));
        changes.push_back(notes.back().change);
    }
    if (notes.empty())
        return notes;
    const auto scores = analysis::modifiedZScores(changes);
    for (std::size_t i = 0; i < notes.size(); ++i)
        notes[i].apart = std::abs(scores[i]) > analysis::outlyingScore;
    return notes;
}

std::optional<analysis::Comparison> comparisonOf(const std::vector<ChangedNote> &notes)
{
    std::vector<double> changes;
    for (const ChangedNote &note : notes)
        changes.push_back(note.change);
    return changes.empty() ? std::nullopt : std::optional(analysis::pairedComparison(changes));
}

double shownFigure(double figure, const ChartData &data)
{
    return wording::inUnit(units::Amount::fromDisplay(catalogue::infoOf(data.quantity).dimension, figure), data.form);
}

QString changeFigure(double shown, const ChartData &data)
{
    const auto dimension = catalogue::infoOf(data.quantity).dimension;
    const int decimals = data.form.decimalsFor(dimension);
    const QString unit = wording::unitText(dimension, data.form);
    const QString size = wording::numberText(std::abs(shown), decimals, data.form);
    const bool none = size == wording::numberText(0, decimals, data.form);
    const QString sign = none ? QString() : shown < 0 ? QStringLiteral("\u2212") : QStringLiteral("+");
    return sign + size + ' ' + unit;
}

bool twoPeople(const ChartData &data)
{
    return !data.nowPerson.isEmpty() && !data.beforePerson.isEmpty() && data.nowPerson != data.beforePerson;
}

QString nowParty(const ChartData &data)
{
    return twoPeople(data) ? data.nowPerson : nowName(data);
}

QString beforeParty(const ChartData &data)
{
    return twoPeople(data) ? data.beforePerson : beforeName(data);
}

} // namespace hammerline::charts
