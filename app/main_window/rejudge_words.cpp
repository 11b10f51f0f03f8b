#include "main_window/rejudge_words.h"

#include "wording/counted.h"

#include <QCoreApplication>

namespace hammerline::main_window {

namespace {

using tolerance::Status;
using tolerance::Tally;

QString tr(const char *text)
{
    return QCoreApplication::translate("Shop", text);
}

int judgedBy(const Tally &tally)
{
    return tally.of(Status::In) + tally.of(Status::Marginal) + tally.of(Status::Out);
}

/// Absent where nothing was judged.
std::optional<double> percentOut(const Tally &tally)
{
    const int judged = judgedBy(tally);
    return judged > 0 ? std::optional(100.0 * tally.of(Status::Out) / judged) : std::nullopt;
}

QString percentText(const Tally &tally, const QLocale &locale)
{
    const auto percent = percentOut(tally);
    return percent ? tr("%1 %").arg(locale.toString(*percent, 'f', 1)) : QStringLiteral("\u2013");
}

QString readingsText(int count, const QLocale &locale)
{
    return wording::counted(count, tr("1 reading"), tr("%1 readings"), locale.toString(count));
}

QString shareText(const Tally &tally, const QLocale &locale)
{
    if (judgedBy(tally) == 0)
        return tr("nothing judged");
    return tr("%1 of %2 (%3)")
        .arg(locale.toString(tally.of(Status::Out)), readingsText(judgedBy(tally), locale), percentText(tally, locale));
}

/// What both judge, so that the two shares are of the same; and what only one of the two does.
struct Compared {
    shop::TwoSets both{};
    int onlyNow = 0, onlyThen = 0;
};

Compared comparedOf(const shop::ShopJudged &judged)
{
    Compared compared;
    for (const auto &[id, twice] : judged)
        for (const shop::TwoSets &counts : twice.by) {
            if (counts.bothJudge()) {
                compared.both += counts;
                continue;
            }
            compared.onlyNow += judgedBy(counts.now);
            compared.onlyThen += judgedBy(counts.then);
        }
    return compared;
}

} // namespace

QString rejudgedText(const std::string &set, const shop::ShopJudged &judged, const QLocale &locale)
{
    const Compared compared = comparedOf(judged);
    QString text = tr("Out by \u201c%1\u201d: %2; as it stands: %3. Instruments: %4, passes: %5.")
                       .arg(QString::fromStdString(set), shareText(compared.both.then, locale),
                            shareText(compared.both.now, locale), locale.toString(qulonglong{judged.size()}),
                            locale.toString(shop::passesIn(judged)));
    if (compared.onlyNow > 0)
        text += tr(" Judged only as it stands, and not compared: %1.").arg(readingsText(compared.onlyNow, locale));
    if (compared.onlyThen > 0)
        text += tr(" Judged only by the other set, and not compared: %1.").arg(readingsText(compared.onlyThen, locale));
    return text;
}

charts::BarsData rejudgedBars(const std::vector<RejudgeModel::Row> &rows, const shop::ShopJudged &judged,
                              std::string csv, const QLocale &locale)
{
    charts::BarsData bars;
    bars.title = tr("How much would be out by another set?");
    if (!judged.empty()) {
        const shop::TwoSets sum = comparedOf(judged).both;
        bars.answer = tr("Of what both judge: %1 out as it stands, %2 by the other set")
                          .arg(percentText(sum.now, locale), percentText(sum.then, locale));
    }
    bars.axis = tr("Readings out of those judged (%)");
    bars.firstName = tr("as it stands");
    bars.secondName = tr("by the other set");
    for (const RejudgeModel::Row &row : rows)
        bars.rows.push_back({row.name, percentOut(row.counts.now), percentOut(row.counts.then),
                             percentText(row.counts.now, locale), percentText(row.counts.then, locale)});
    bars.csv = std::move(csv);
    return bars;
}

} // namespace hammerline::main_window
