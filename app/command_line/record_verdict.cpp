#include "command_line/inside/record_verdict.h"

#include "command_line/inside/plain_table.h"

#include "exchange/exchange.h"

namespace hammerline::command_line {
namespace {

using seal::Finding;

std::string signerText(const seal::RecordJudgement &judged)
{
    return "Sealed by:   " + withoutControls(judged.signer) +
           "\nFingerprint: " + seal::groupedFingerprint(judged.fingerprint) + '\n';
}

std::string keyText(const seal::RecordJudgement &judged, const seal::ExpectedKeys &expected)
{
    if (expected.pinned)
        return "This is the key that was expected.\n";
    if (judged.standing == seal::Standing::Trusted)
        return "This key is on the list of trusted keys.\n";
    return "Compare the fingerprint with one that the workshop gave you; --key does it for you.\n";
}

std::string byAnotherKey(const seal::RecordJudgement &judged)
{
    return "unaltered, but sealed by ANOTHER KEY under a name that stands on the list of trusted keys.\n" +
           signerText(judged) + "Where you know that this key is the workshop's too, --trust it.\n";
}

/// Which record this is, and what to compare with the logbook that it was made from.
std::string aboutText(const exchange::RecordCheck &check)
{
    std::string text = "Record:      " + withoutControls(check.instrumentName) + ", revision " +
                       std::to_string(check.revision) + " of " + readings::rfc3339(check.issued) + '\n';
    if (check.history.deed != 0)
        text += "Logbook:     stood at deed " + std::to_string(check.history.deed) + ", digest " +
                withoutControls(check.history.digest) + '\n';
    return text;
}

std::string disagreementText(const exchange::RecordCheck &check)
{
    if (check.disagreements.empty())
        return "Judged anew: all " + std::to_string(check.verdicts) + " verdicts follow from the readings inside.\n";
    const bool more = check.disagreements.size() >= exchange::mostDisagreements;
    std::string text = "The verdicts DO NOT FOLLOW from the readings inside, in " +
                       std::string(more ? "at least " : "") + std::to_string(check.disagreements.size()) +
                       (check.disagreements.size() == 1 ? " place" : " places") + ":\n";
    for (const std::string &line : check.disagreements)
        text += withoutControls(line) + '\n';
    return text;
}

std::string textOf(const seal::RecordJudgement &judged, const seal::ExpectedKeys &expected)
{
    if (judged.finding == Finding::Altered)
        return "ALTERED: " + judged.reason + ".\n";
    if (judged.finding == Finding::AnotherKey)
        return judged.reason + ".\n" + signerText(judged);
    if (judged.finding == Finding::NameOfAnother)
        return byAnotherKey(judged);
    const std::string head = "sealed and unaltered.\n" + signerText(judged) + keyText(judged, expected);
    return judged.check ? head + aboutText(*judged.check) + disagreementText(*judged.check)
                        : head + "The data inside CANNOT BE READ: " + withoutControls(judged.reason) + ".\n";
}

} // namespace

outcome::Outcome<RecordVerdict> recordVerdict(const std::string &path, const seal::ExpectedKeys &expected)
{
    const auto bytes = exchange::readFile(path);
    if (!bytes)
        return bytes.faults();
    const seal::RecordJudgement judged = seal::judgeRecord(bytes.value(), expected);
    if (judged.finding == Finding::NotOurs)
        return outcome::Fault{.file = path, .problem = judged.reason + ", and no logbook"};
    const auto status = judged.finding == Finding::True ? Done : NotConforming;
    return RecordVerdict{{.text = withoutControls(path) + ": " + textOf(judged, expected), .status = status},
                         judged.check};
}

} // namespace hammerline::command_line
