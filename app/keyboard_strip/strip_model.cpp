#include "keyboard_strip/strip_model.h"

#include "wording/wording.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <tuple>

namespace hammerline::keyboard_strip {

namespace {

using tolerance::Status;
using tolerance::Verdict;

constexpr double widthless = 2; ///< height of a value off a target that leaves no width to measure by

double sideOf(units::Amount deviation)
{
    return deviation.baseCount() == 0 ? 0 : deviation.baseCount() < 0 ? -widthless : widthless;
}

/// Verdicts of each note, in the order of the catalogue.
using ByNote = std::map<keyboard::Note, std::vector<const Verdict *>>;

ByNote byNote(const tolerance::Judgement *judgement, const std::optional<catalogue::Quantity> &quantity)
{
    ByNote sorted;
    if (judgement)
        for (const Verdict &verdict : judgement->verdicts)
            if (!quantity || verdict.quantity == *quantity)
                sorted[verdict.note].push_back(&verdict);
    return sorted;
}

int gravityOf(Status status)
{
    switch (status) {
    case Status::Out:
        return 4;
    case Status::Missing:
        return 3;
    case Status::Marginal:
        return 2;
    case Status::In:
        return 1;
    case Status::Unjudged:
        break;
    }
    return 0;
}

bool lighter(const Verdict *a, const Verdict *b)
{
    const auto weight = [](const Verdict *v) { return std::tuple(gravityOf(v->status), v->halfWidths().value_or(-1)); };
    return weight(a) < weight(b);
}

/// "Also out: dip, blow." of the other pairs of a note.
QString alsoOut(const std::vector<const Verdict *> &verdicts, const Verdict *shown)
{
    QStringList names;
    for (const Verdict *verdict : verdicts)
        if (verdict != shown && verdict->status == Status::Out)
            names << wording::nameOf(verdict->quantity);
    if (names.isEmpty())
        return {};
    return QCoreApplication::translate("keyboard_strip", " Also out: %1.").arg(names.join(QStringLiteral(", ")));
}

std::optional<double> heightIn(const std::optional<units::Amount> &value, const Verdict &judged)
{
    return value && judged.limits ? heightOf(*value, *judged.limits) : std::nullopt;
}

std::optional<double> plannedHeight(const StripSource &source, const Verdict &verdict)
{
    if (!source.planned)
        return std::nullopt;
    const auto found = source.planned->find({verdict.quantity, verdict.note});
    return found == source.planned->end() ? std::nullopt : heightIn(found->second, verdict);
}

std::optional<double> beforeHeight(const StripSource &source, const Verdict &verdict)
{
    const Verdict *earlier = source.before ? source.before->find(verdict.quantity, verdict.note) : nullptr;
    return earlier ? heightIn(earlier->value, verdict) : std::nullopt;
}

void fillFrom(StripKey &key, const Verdict &verdict, const StripSource &source)
{
    key.used = true;
    key.status = verdict.status;
    key.now = heightIn(verdict.value, verdict);
    key.before = beforeHeight(source, verdict);
    key.planned = plannedHeight(source, verdict);
    if (verdict.limits) {
        key.target = heightOf(verdict.limits->target, *verdict.limits).value_or(0);
        key.openAbove = !verdict.limits->high;
        key.openBelow = !verdict.limits->low;
    }
    key.story = wording::keyStory(verdict, source.form);
    key.valueText = verdict.value ? wording::amountText(*verdict.value, source.form)
                                  : QCoreApplication::translate("keyboard_strip", "not read");
}

StripKey unusedKey(keyboard::Note note)
{
    StripKey key;
    key.note = note;
    key.story = wording::nameOf(note);
    return key;
}

StripKey keyOf(keyboard::Note note, const ByNote &verdicts, const StripSource &source)
{
    StripKey key = unusedKey(note);
    if (const auto flags = source.flags.find(note); flags != source.flags.end())
        key.flags = flags->second;
    const auto found = verdicts.find(note);
    if (found == verdicts.end())
        return key;
    const Verdict *worst = *std::ranges::max_element(found->second, lighter);
    fillFrom(key, *worst, source);
    key.flags.uneven |= std::ranges::any_of(found->second, &Verdict::uneven);
    key.story += alsoOut(found->second, worst);
    return key;
}

} // namespace

const StripKey *StripModel::find(keyboard::Note note) const
{
    const auto index = static_cast<std::size_t>(note.number() - compass.first.number());
    return compass.contains(note) && index < keys.size() ? &keys[index] : nullptr;
}

StripModel modelOf(const StripSource &source)
{
    StripModel model;
    model.compass = source.compass;
    model.sections = source.sections;
    model.caption = source.quantity ? wording::nameOf(*source.quantity)
                                    : QCoreApplication::translate("keyboard_strip", "Worst of all quantities");
    const ByNote verdicts = byNote(source.now, source.quantity);
    for (int number = source.compass.first.number(); number <= source.compass.last.number(); ++number)
        model.keys.push_back(keyOf(keyboard::Note(number), verdicts, source));
    return model;
}

StripModel emptyModel(const keyboard::Compass &compass, const keyboard::Sections &sections)
{
    StripModel model;
    model.compass = compass;
    model.sections = sections;
    for (int number = compass.first.number(); number <= compass.last.number(); ++number)
        model.keys.push_back(unusedKey(keyboard::Note(number)));
    return model;
}

std::optional<double> heightOf(units::Amount value, const tolerance::Limits &limits)
{
    const units::Amount deviation = value - limits.target;
    if (limits.low && limits.high) {
        const double low = limits.low->inDisplay();
        const double high = limits.high->inDisplay();
        return *limits.low == *limits.high ? sideOf(deviation)
                                           : (value.inDisplay() - (low + high) / 2) / ((high - low) / 2);
    }
    if (!limits.low && !limits.high)
        return std::nullopt;
    const units::Amount limit = limits.low ? *limits.low : *limits.high;
    const double width = (limit - limits.target).magnitude().inDisplay();
    if (width > 0)
        return deviation.inDisplay() / width;
    const bool onOpenSide = (deviation.baseCount() > 0) == limits.low.has_value();
    return onOpenSide ? 0 : sideOf(deviation);
}

} // namespace hammerline::keyboard_strip
