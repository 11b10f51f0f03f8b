#include "bench_sheet/inside/sheet_words.h"

#include "wording/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace hammerline::bench_sheet {

namespace {

enum class Towards { Smaller, Nearest, Larger };

/// As many as the gauge has, but enough to tell limits apart.
int decimalsOf(units::Unit unit, const wording::NumberForm &form)
{
    switch (unit) {
    case units::Unit::Millimetre:
        return std::clamp(form.lengthDecimals, 2, 4);
    case units::Unit::Inch:
        return std::clamp(form.lengthDecimals, 3, 4);
    case units::Unit::Mil:
    case units::Unit::Gram:
        break;
    }
    return 1;
}

/// Nanometres or milligrams in the last decimal: whole numbers, all of them.
std::int64_t stepOf(units::Unit unit, int decimals)
{
    constexpr std::array<std::int64_t, 5> powersOfTen{1, 10, 100, 1000, 10'000};
    const std::int64_t parts = powersOfTen.at(static_cast<std::size_t>(decimals));
    switch (unit) {
    case units::Unit::Millimetre:
        return 1'000'000 / parts;
    case units::Unit::Inch:
        return 25'400'000 / parts;
    case units::Unit::Mil:
        return 25'400 / parts;
    case units::Unit::Gram:
        break;
    }
    return 1000 / parts;
}

units::Amount onStep(units::Amount amount, std::int64_t step, Towards towards)
{
    const std::int64_t count = amount.baseCount();
    const std::int64_t over = ((count % step) + step) % step;
    if (over == 0 || towards == Towards::Nearest)
        return amount;
    return {amount.dimension(), towards == Towards::Smaller ? count - over : count - over + step};
}

QString printed(units::Amount amount, const wording::NumberForm &form, Towards towards)
{
    const units::Unit unit = form.unitFor(amount.dimension());
    const int decimals = decimalsOf(unit, form);
    wording::NumberForm finest = form;
    finest.lengthDecimals = finest.massDecimals = decimals;
    QString text = wording::bareText(onStep(amount, stepOf(unit, decimals), towards), finest);
    while (text.endsWith(u'0'))
        text.chop(1);
    const QString mark = form.locale.decimalPoint();
    return text.endsWith(mark) ? text.chopped(mark.size()) : text;
}

QString orderText(route::Order order)
{
    switch (order) {
    case route::Order::Chromatic:
        return words("bass to treble");
    case route::Order::NaturalsThenSharps:
        return words("naturals, then sharps");
    case route::Order::SamplesFirst:
        return words("samples of each section, then the rest");
    case route::Order::OnlyOut:
        return words("only what is out");
    case route::Order::OnlyMissing:
        return words("only what is missing");
    case route::Order::Own:
        return words("notes of your own");
    }
    return {};
}

QString samplesText(route::Samples samples)
{
    switch (samples) {
    case route::Samples::SectionEnds:
        return words("samples are the ends of each section");
    case route::Samples::EveryFifth:
        return words("samples are every fifth note");
    case route::Samples::Listed:
        return words("samples are notes of your own");
    }
    return {};
}

} // namespace

QString words(const char *text)
{
    return QCoreApplication::translate("bench_sheet", text);
}

QString headOf(catalogue::Quantity quantity, const wording::NumberForm &form)
{
    const auto dimension = catalogue::infoOf(quantity).dimension;
    return QStringLiteral("%1 (%2)").arg(wording::nameOf(quantity), wording::unitText(dimension, form));
}

QString howOf(catalogue::Quantity quantity, const readings::Pass &pass)
{
    if (quantity == catalogue::Quantity::Dip && pass.dipDatum != readings::DipDatum::FrontEdge)
        return words("Travel of the key from rest to the bottom. %1.").arg(wording::nameOf(pass.dipDatum));
    if (quantity == catalogue::Quantity::Drop && pass.dropDatum == readings::DropDatum::FromString)
        return words("Write the distance from the string after the drop; it is converted when it is typed in.");
    return wording::definitionOf(quantity);
}

QString routeText(const route::Choice &choice)
{
    QString order = orderText(choice.order);
    if (choice.order == route::Order::SamplesFirst)
        order = words("%1 (%2)").arg(order, samplesText(choice.samples));
    QStringList names;
    for (const catalogue::Quantity quantity : choice.quantities)
        names << wording::nameOf(quantity).toLower();
    const QString sweep = choice.sweep == route::Sweep::AlongTheNotes
                              ? words("one quantity along all notes: %1")
                              : words("all quantities of a note before the next: %1");
    return words("%1; %2").arg(order, sweep.arg(names.join(words(", "))));
}

QString limitsLine(const BenchSheetInput &input, const route::Stop &stop)
{
    const auto limits = input.set ? tolerance::limitsAt(*input.set, stop.quantity, stop.note) : std::nullopt;
    if (!limits)
        return {};
    const QString target = printed(limits->target, input.form, Towards::Nearest);
    const QString low = limits->low ? printed(*limits->low, input.form, Towards::Larger) : QString();
    const QString high = limits->high ? printed(*limits->high, input.form, Towards::Smaller) : QString();
    if (limits->low && limits->high)
        return QStringLiteral("%1 \u00b7 %2 \u00b7 %3").arg(low, target, high);
    if (limits->low)
        return QStringLiteral("\u2265 %1 \u00b7 %2").arg(low, target);
    if (limits->high)
        return QStringLiteral("%1 \u00b7 \u2264 %2").arg(target, high);
    return target;
}

} // namespace hammerline::bench_sheet
