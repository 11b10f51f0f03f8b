// Which way a value is off, and what would bring it back, in the words of each quantity.
#include "wording/wording.h"

#include <QCoreApplication>

#include <array>

namespace hammerline::wording {

namespace {

struct DirectionWords {
    const char *tooSmall;
    const char *tooLarge;
    const char *remedyForSmall;
    const char *remedyForLarge;
};

constexpr std::array<DirectionWords, catalogue::quantityCount> directionWords{{
    {QT_TRANSLATE_NOOP("wording", "too low"), QT_TRANSLATE_NOOP("wording", "too high"),
     QT_TRANSLATE_NOOP("wording", "higher"), QT_TRANSLATE_NOOP("wording", "lower")},
    {QT_TRANSLATE_NOOP("wording", "too close to the string"), QT_TRANSLATE_NOOP("wording", "too far from the string"),
     QT_TRANSLATE_NOOP("wording", "further off"), QT_TRANSLATE_NOOP("wording", "closer")},
    {QT_TRANSLATE_NOOP("wording", "too little play"), QT_TRANSLATE_NOOP("wording", "too much play"),
     QT_TRANSLATE_NOOP("wording", "more"), QT_TRANSLATE_NOOP("wording", "less")},
    {QT_TRANSLATE_NOOP("wording", "too close to the string"), QT_TRANSLATE_NOOP("wording", "too far from the string"),
     QT_TRANSLATE_NOOP("wording", "earlier"), QT_TRANSLATE_NOOP("wording", "later")},
    {QT_TRANSLATE_NOOP("wording", "too small a drop"), QT_TRANSLATE_NOOP("wording", "too deep a drop"),
     QT_TRANSLATE_NOOP("wording", "more"), QT_TRANSLATE_NOOP("wording", "less")},
    {QT_TRANSLATE_NOOP("wording", "too shallow"), QT_TRANSLATE_NOOP("wording", "too deep"),
     QT_TRANSLATE_NOOP("wording", "deeper"), QT_TRANSLATE_NOOP("wording", "shallower")},
    {QT_TRANSLATE_NOOP("wording", "too little"), QT_TRANSLATE_NOOP("wording", "too much"),
     QT_TRANSLATE_NOOP("wording", "more"), QT_TRANSLATE_NOOP("wording", "less")},
    {QT_TRANSLATE_NOOP("wording", "caught too close to the string"),
     QT_TRANSLATE_NOOP("wording", "caught too far from the string"), QT_TRANSLATE_NOOP("wording", "further off"),
     QT_TRANSLATE_NOOP("wording", "closer")},
    {QT_TRANSLATE_NOOP("wording", "too early"), QT_TRANSLATE_NOOP("wording", "too late"),
     QT_TRANSLATE_NOOP("wording", "later"), QT_TRANSLATE_NOOP("wording", "earlier")},
    {QT_TRANSLATE_NOOP("wording", "too light"), QT_TRANSLATE_NOOP("wording", "too heavy"),
     QT_TRANSLATE_NOOP("wording", "heavier"), QT_TRANSLATE_NOOP("wording", "lighter")},
    {QT_TRANSLATE_NOOP("wording", "too weak a return"), QT_TRANSLATE_NOOP("wording", "too strong a return"),
     QT_TRANSLATE_NOOP("wording", "stronger"), QT_TRANSLATE_NOOP("wording", "weaker")},
}};

const DirectionWords &wordsOf(catalogue::Quantity quantity)
{
    return directionWords.at(static_cast<std::size_t>(quantity));
}

} // namespace

Direction directionOf(units::Amount deviation)
{
    if (deviation.baseCount() == 0)
        return Direction::OnTarget;
    return deviation.baseCount() < 0 ? Direction::TooSmall : Direction::TooLarge;
}

QString directionText(catalogue::Quantity quantity, Direction direction)
{
    if (direction == Direction::OnTarget)
        return QCoreApplication::translate("wording", "on target");
    const DirectionWords &words = wordsOf(quantity);
    return QCoreApplication::translate("wording", direction == Direction::TooSmall ? words.tooSmall : words.tooLarge);
}

QString remedyText(catalogue::Quantity quantity, Direction direction)
{
    if (direction == Direction::OnTarget)
        return {};
    const DirectionWords &words = wordsOf(quantity);
    return QCoreApplication::translate("wording",
                                       direction == Direction::TooSmall ? words.remedyForSmall : words.remedyForLarge);
}

} // namespace hammerline::wording
