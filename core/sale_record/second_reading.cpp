#include "sale_record/second_reading.h"

#include "analysis/spot_check.h"
#include "tolerance/judge.h"

namespace hammerline::sale_record {

SecondReading secondReadingOf(const SpotCheckPass &made, const readings::ValueTable &first,
                              const tolerance::ToleranceSet &set, const instrument::Instrument &instrument)
{
    SecondReading told{.pass = made.pass, .check = made.check, .findings = {}};
    const auto again = readings::meansOf(made.readings);
    const auto judged = tolerance::judge(again, set, instrument.compass, instrument.sections);
    for (const auto &[quantity, agreement] : analysis::compare(first, again, nullptr)) {
        SecondFinding found{.notes = static_cast<int>(first.column(quantity).size()), .agreement = agreement};
        for (const keyboard::Note note : made.check.notes) {
            const auto *verdict = judged.find(quantity, note);
            found.readAgain += again.value(quantity, note) ? 1 : 0;
            found.out += verdict != nullptr && verdict->status == tolerance::Status::Out ? 1 : 0;
        }
        if (const auto proved = analysis::spotCheck(found.notes, found.readAgain, found.out, "0.95"))
            found.mostOut = proved.value().mostOut;
        told.findings.emplace(quantity, found);
    }
    return told;
}

} // namespace hammerline::sale_record
