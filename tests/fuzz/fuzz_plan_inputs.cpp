// Kept plans, which may have come with an instrument handed over: what is accepted is the same task when written and
// read again, and has no note that no keyboard has.
#include "exchange/plan_inputs_json.h"

#include <cstdint>
#include <cstdlib>
#include <string_view>

using namespace hammerline;

namespace {

bool onAKeyboard(const keyboard::NoteRange &range)
{
    return keyboard::Note(keyboard::Note::lowest) <= range.first && range.first <= range.last &&
           range.last <= keyboard::Note(keyboard::Note::highest);
}

bool same(const action::PlanTask &one, const action::PlanTask &other)
{
    return one.values == other.values && one.set == other.set && one.setup == other.setup &&
           one.compass == other.compass && one.sections == other.sections && one.aim == other.aim &&
           one.forbidden == other.forbidden;
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const auto read = exchange::readPlanInputs({reinterpret_cast<const char *>(data), size});
    if (!read)
        return 0;
    if (!onAKeyboard(read.value().compass))
        std::abort();
    for (const keyboard::Section &section : read.value().sections)
        if (!onAKeyboard(section.notes))
            std::abort();
    const auto again = exchange::readPlanInputs(exchange::planInputsJson(read.value()));
    if (!again || !same(again.value(), read.value()))
        std::abort();
    return 0;
}
