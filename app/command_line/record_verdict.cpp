#include "command_line/inside/record_verdict.h"

#include "command_line/inside/plain_table.h"

#include "exchange/exchange.h"
#include "seal/seal.h"

#include <algorithm>

namespace hammerline::command_line {
namespace {

std::string signerText(const seal::SealReport &report)
{
    return "Sealed by:   " + withoutControls(report.signer) +
           "\nFingerprint: " + seal::groupedFingerprint(report.fingerprint) + '\n';
}

std::string keyText(const seal::SealReport &report, const ExpectedKeys &expected)
{
    if (expected.pinned)
        return "This is the key that was expected.\n";
    if (seal::standingOf({report.fingerprint, report.signer}, expected.trusted) == seal::Standing::Trusted)
        return "This key is on the list of trusted keys.\n";
    return "Compare the fingerprint with one that the workshop gave you; --key does it for you.\n";
}

RecordVerdict byAnotherKey(const seal::SealReport &report, const std::string &head)
{
    return {Answer{.text = head +
                           "unaltered, but sealed by ANOTHER KEY under a name that stands on the list of "
                           "trusted keys.\n" +
                           signerText(report) + "Where you know that this key is the workshop's too, --trust it.\n",
                   .status = NotConforming}};
}

std::optional<std::string_view> fileOf(const seal::SealReport &report, std::string_view name)
{
    const auto found = std::ranges::find(report.files, name, &seal::EmbeddedFile::name);
    return found == report.files.end() ? std::nullopt : std::optional<std::string_view>(found->content);
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

RecordVerdict unaltered(const seal::SealReport &report, const std::string &head, const ExpectedKeys &expected)
{
    const seal::TrustedKey signer{report.fingerprint, report.signer};
    if (!expected.pinned && seal::standingOf(signer, expected.trusted) == seal::Standing::NameOfAnother)
        return byAnotherKey(report, head);
    const std::string text = head + "sealed and unaltered.\n" + signerText(report) + keyText(report, expected);
    auto check = exchange::checkRecord({.recordJson = fileOf(report, "record.json").value_or(std::string_view()),
                                        .readingsCsv = fileOf(report, "readings.csv"),
                                        .asFoundCsv = fileOf(report, "readings-as-found.csv")});
    if (!check)
        return {
            Answer{.text = text + "The data inside CANNOT BE READ: " + withoutControls(check.fault().text()) + ".\n",
                   .status = NotConforming}};
    const auto status = check.value().disagreements.empty() ? Done : NotConforming;
    return {Answer{.text = text + aboutText(check.value()) + disagreementText(check.value()), .status = status},
            std::move(check).value()};
}

} // namespace

outcome::Outcome<RecordVerdict> judgeRecord(const std::string &path, const ExpectedKeys &expected)
{
    const auto bytes = exchange::readFile(path);
    if (!bytes)
        return bytes.faults();
    const auto report =
        seal::verifyRecord(bytes.value(), expected.pinned ? std::vector{*expected.pinned} : std::vector<std::string>());
    const std::string head = withoutControls(path) + ": ";
    switch (report.verdict) {
    case seal::SealVerdict::Unaltered:
        return unaltered(report, head, expected);
    case seal::SealVerdict::UnknownKey:
        return RecordVerdict{
            Answer{.text = head + report.reason + ".\n" + signerText(report), .status = NotConforming}};
    case seal::SealVerdict::Altered:
        return RecordVerdict{Answer{.text = head + "ALTERED: " + report.reason + ".\n", .status = NotConforming}};
    case seal::SealVerdict::NotOurs:
        break;
    }
    return outcome::Fault{.file = path, .problem = report.reason + ", and no logbook"};
}

} // namespace hammerline::command_line
