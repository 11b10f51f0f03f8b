// Typed amounts, units, notes, moments and routes: what is accepted must come back from its own text.
#include "keyboard/keyboard.h"
#include "readings/instant.h"
#include "route/route.h"
#include "units/parse_amount.h"

#include <cstdint>
#include <cstdlib>
#include <string_view>

namespace {

using namespace hammerline;

void insist(bool holds)
{
    if (!holds)
        std::abort();
}

void amounts(std::string_view text)
{
    for (const auto dimension : {units::Dimension::Length, units::Dimension::Mass})
        for (const auto unit : {units::Unit::Millimetre, units::Unit::Inch, units::Unit::Mil}) {
            const auto parsed = units::parseAmount(text, {dimension, unit, true});
            if (!parsed)
                continue;
            const auto again = units::parseAmount(units::exactDecimal(parsed.value().value),
                                                  {dimension, units::Unit::Millimetre, true});
            insist(again.ok() && again.value().value == parsed.value().value);
        }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char *>(data), size);
    amounts(text);
    if (const auto note = keyboard::parseNote(text))
        insist(keyboard::parseNote(note.value().name()).value() == note.value());
    if (const auto instant = readings::parseRfc3339(text))
        insist(readings::parseRfc3339(readings::rfc3339(instant.value())).value() == instant.value());
    if (const auto choice = route::parseChoice(text))
        insist(route::parseChoice(route::textOf(choice.value())).value() == choice.value());
    return 0;
}
