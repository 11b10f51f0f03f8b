#include "main_window/shop_words.h"

#include "wording/counted.h"
#include "wording/wording.h"

#include <QCoreApplication>

#include <array>

namespace hammerline::main_window {

namespace {

using shop::By;
using shop::Figures;

QString tr(const char *text)
{
    return QCoreApplication::translate("Shop", text);
}

QString percentText(const shop::Share &share, const QLocale &locale)
{
    const auto part = share.part();
    return part ? tr("%1 %").arg(locale.toString(*part * 100, 'f', 1)) : QStringLiteral("\u2013");
}

QString shareText(const shop::Share &share, const QLocale &locale)
{
    return share.part() ? tr("%1 of %2").arg(percentText(share, locale), locale.toString(qlonglong{share.judged}))
                        : QStringLiteral("\u2013");
}

QString hoursText(double minutes, const QLocale &locale)
{
    return minutes > 0 ? tr("%1 h").arg(locale.toString(minutes / 60, 'f', 1)) : QString();
}

std::optional<double> percent(const shop::Share &share)
{
    const auto part = share.part();
    return part ? std::optional(*part * 100) : std::nullopt;
}

charts::BarsData::Row barsRow(ShopQuestion question, const QString &name, const Figures &figures, const QLocale &locale)
{
    if (question == ShopQuestion::HowMuchIsOut)
        return {name, percent(figures.found), percent(figures.left), percentText(figures.found, locale),
                percentText(figures.left, locale)};
    return {name, figures.plannedMinutes / 60, figures.takenMinutes / 60, hoursText(figures.plannedMinutes, locale),
            hoursText(figures.takenMinutes, locale)};
}

bool saysAnything(ShopQuestion question, const Figures &figures)
{
    return question == ShopQuestion::HowMuchIsOut ? figures.found.judged + figures.left.judged > 0
                                                  : figures.plannedMinutes + figures.takenMinutes > 0;
}

QString outAnswer(const Figures &total, const QLocale &locale)
{
    return tr("All together: %1 out as found, %2 out as left")
        .arg(percentText(total.found, locale), percentText(total.left, locale));
}

QString hoursAnswer(const Figures &total, const QLocale &locale)
{
    QString answer =
        tr("All together: %1 h planned, %2 h taken")
            .arg(locale.toString(total.plannedMinutes / 60, 'f', 1), locale.toString(total.takenMinutes / 60, 'f', 1));
    if (total.untimed > 0)
        answer += tr("; work that nobody timed: %1").arg(total.untimed);
    if (total.unreckoned > 0)
        answer += tr("; kept plans whose hours are not known: %1").arg(total.unreckoned);
    return answer;
}

} // namespace

QString shopRowName(By by, const shop::Row &row)
{
    if (row.key.empty())
        return by == By::Person ? tr("nobody named") : by == By::Month ? tr("day not known") : tr("no single quantity");
    const auto quantity = by == By::Quantity ? catalogue::findQuantity(row.key) : std::nullopt;
    return quantity ? wording::nameOf(*quantity) : QString::fromStdString(row.key);
}

QStringList shopHeads(By by)
{
    const QString first = by == By::Person ? tr("Person") : by == By::Month ? tr("Month") : tr("Quantity");
    return {first,
            tr("Instruments"),
            tr("Passes"),
            tr("Readings"),
            tr("Out as found"),
            tr("Out as left"),
            tr("Hours planned"),
            tr("Hours taken"),
            tr("Not timed"),
            tr("Other work")};
}

QStringList shopRowTexts(By by, const shop::Row &row, const QLocale &locale)
{
    const Figures &figures = row.figures;
    const auto count = [&](std::int64_t number) { return locale.toString(qlonglong{number}); };
    return {shopRowName(by, row),
            count(figures.instruments),
            count(figures.passes),
            count(figures.readings),
            shareText(figures.found, locale),
            shareText(figures.left, locale),
            hoursText(figures.plannedMinutes, locale),
            hoursText(figures.takenMinutes, locale),
            figures.untimed > 0 ? count(figures.untimed) : QString(),
            hoursText(figures.otherMinutes, locale)};
}

double shopSortKey(const Figures &figures, int column)
{
    const std::array<double, 10> keys{0,
                                      double(figures.instruments),
                                      double(figures.passes),
                                      static_cast<double>(figures.readings),
                                      figures.found.part().value_or(-1),
                                      figures.left.part().value_or(-1),
                                      figures.plannedMinutes,
                                      figures.takenMinutes,
                                      double(figures.untimed),
                                      figures.otherMinutes};
    return keys.at(static_cast<std::size_t>(column));
}

QString shopTotalText(const Figures &total, const QLocale &locale)
{
    const auto count = [&](std::int64_t number, const QString &one, const QString &many) {
        return wording::counted(number, one, many, locale.toString(qlonglong{number}));
    };
    return tr("%1, %2, %3; out as found %4, as left %5; %6 h planned, %7 h taken")
        .arg(count(total.instruments, tr("1 instrument"), tr("%1 instruments")),
             count(total.passes, tr("1 pass"), tr("%1 passes")),
             count(total.readings, tr("1 reading"), tr("%1 readings")), percentText(total.found, locale),
             percentText(total.left, locale), locale.toString(total.plannedMinutes / 60, 'f', 1),
             locale.toString(total.takenMinutes / 60, 'f', 1));
}

charts::BarsData shopBars(ShopQuestion question, By by, const std::vector<shop::Row> &rows, const Figures &total,
                          const QLocale &locale)
{
    const bool out = question == ShopQuestion::HowMuchIsOut;
    charts::BarsData bars;
    bars.title = out ? tr("How much is out, as found and as left?") : tr("Do the planned hours hold?");
    bars.answer = out ? outAnswer(total, locale) : hoursAnswer(total, locale);
    bars.axis = out ? tr("Notes out of those judged (%)") : tr("Hours (h)");
    bars.firstName = out ? tr("as found") : tr("planned");
    bars.secondName = out ? tr("as left") : tr("taken");
    bars.keepLast = by == By::Month;
    for (const shop::Row &row : rows)
        if (saysAnything(question, row.figures))
            bars.rows.push_back(barsRow(question, shopRowName(by, row), row.figures, locale));
    if (bars.rows.empty())
        bars.answer = out ? tr("Nothing is judged yet: choose what an instrument is judged by, and read it.")
                          : tr("No hours yet: keep a plan, start its clock and tick off what is done; then planned and "
                               "taken hours stand here side by side.");
    bars.csv = shop::shopCsv(by, rows);
    return bars;
}

} // namespace hammerline::main_window
