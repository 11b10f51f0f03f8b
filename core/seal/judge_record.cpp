#include "seal/judge_record.h"

#include <algorithm>

namespace hammerline::seal {

namespace {

std::optional<std::string_view> fileOf(const SealReport &report, std::string_view name)
{
    const auto found = std::ranges::find(report.files, name, &EmbeddedFile::name);
    return found == report.files.end() ? std::nullopt : std::optional<std::string_view>(found->content);
}

/// The verdicts inside held against the readings inside.
void holdAgainstItself(RecordJudgement &judged, const SealReport &report)
{
    auto check = exchange::checkRecord({.recordJson = fileOf(report, "record.json").value_or(std::string_view()),
                                        .readingsCsv = fileOf(report, "readings.csv"),
                                        .asFoundCsv = fileOf(report, "readings-as-found.csv"),
                                        .recheckCsv = fileOf(report, "readings-recheck.csv")});
    if (!check) {
        judged.finding = Finding::Unreadable;
        judged.reason = check.fault().text();
        return;
    }
    judged.finding = check.value().disagreements.empty() ? Finding::True : Finding::DoesNotFollow;
    judged.check = std::move(check).value();
}

} // namespace

RecordJudgement judgeRecord(std::string_view file, const ExpectedKeys &expected)
{
    const auto pinned = expected.pinned ? std::vector{*expected.pinned} : std::vector<std::string>();
    const SealReport report = verifyRecord(file, pinned);
    RecordJudgement judged{.reason = report.reason, .signer = report.signer, .fingerprint = report.fingerprint};
    switch (report.verdict) {
    case SealVerdict::NotOurs:
        return judged;
    case SealVerdict::Altered:
        judged.finding = Finding::Altered;
        return judged;
    case SealVerdict::UnknownKey:
        judged.finding = Finding::AnotherKey;
        return judged;
    case SealVerdict::Unaltered:
        break;
    }
    judged.standing = standingOf({report.fingerprint, report.signer}, expected.trusted);
    if (!expected.pinned && judged.standing == Standing::NameOfAnother)
        judged.finding = Finding::NameOfAnother;
    else
        holdAgainstItself(judged, report);
    return judged;
}

} // namespace hammerline::seal
