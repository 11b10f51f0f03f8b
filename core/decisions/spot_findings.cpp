#include "decisions/spot_findings.h"

#include "tolerance/tolerance.h"

#include <algorithm>
#include <utility>

namespace hammerline::decisions {
namespace {

using catalogue::Quantity;
using keyboard::Note;
using readings::ValueTable;

int judgedNotes(const ValueTable &values, const tolerance::ToleranceSet &set, Quantity quantity)
{
    const auto &column = values.column(quantity);
    return static_cast<int>(std::ranges::count_if(
        column, [&](const auto &entry) { return tolerance::limitsAt(set, quantity, entry.first).has_value(); }));
}

/// The notes of the sample alone, and of them those that the checked pass has too.
ValueTable drawnOf(const ValueTable &values, const ValueTable &before, const std::vector<Note> &sample,
                   Quantity quantity)
{
    ValueTable drawn;
    for (const auto &[note, value] : values.column(quantity))
        if (std::ranges::binary_search(sample, note) && before.value(quantity, note))
            drawn.set(quantity, note, value);
    return drawn;
}

SpotFinding countedOf(const ValueTable &before, const ValueTable &drawn, const tolerance::ToleranceSet &set,
                      Quantity quantity)
{
    SpotFinding finding{.quantity = quantity, .notes = judgedNotes(before, set, quantity)};
    for (const auto &[note, value] : drawn.column(quantity)) {
        const auto limits = tolerance::limitsAt(set, quantity, note);
        if (!limits)
            continue;
        ++finding.sample;
        if (tolerance::judgeValue(value.value, *limits) == tolerance::Status::Out)
            finding.out.push_back(note);
    }
    return finding;
}

} // namespace

outcome::Outcome<std::vector<SpotFinding>> spotFindings(const SpotCheck &check, const ValueTable &before,
                                                        const ValueTable &again, const tolerance::ToleranceSet &set,
                                                        std::string_view confidence)
{
    std::vector<SpotFinding> findings;
    for (const Quantity quantity : check.quantities) {
        const ValueTable drawn = drawnOf(again, before, check.notes, quantity);
        SpotFinding finding = countedOf(before, drawn, set, quantity);
        if (finding.sample > 0) {
            auto proof =
                analysis::spotCheck(finding.notes, finding.sample, static_cast<int>(finding.out.size()), confidence);
            if (!proof.ok())
                return proof.faults();
            finding.proof = std::move(proof).value();
        }
        const auto compared = analysis::compare(before, drawn, &set);
        if (const auto found = compared.find(quantity); found != compared.end())
            finding.agreement = found->second;
        findings.push_back(std::move(finding));
    }
    return findings;
}

} // namespace hammerline::decisions
