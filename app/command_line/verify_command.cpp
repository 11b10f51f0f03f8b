// hammerline verify: does a record still say what was sealed, was a logbook edited unseen? Neither needs a display, and
// a record needs nothing but itself.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/logbook_input.h"
#include "command_line/inside/plain_table.h"
#include "command_line/inside/record_verdict.h"

#include "exchange/exchange.h"
#include "logbook/verify_history.h"
#include "seal/seal.h"

#include <array>
#include <filesystem>
#include <fstream>

namespace hammerline::command_line {
namespace {

constexpr std::size_t largestCertificate = 64 * 1024;

/// The worse of both ends.
Answer joined(const Answer &first, const Answer &second)
{
    return {.text = first.text + second.text, .status = first.status == Done ? second.status : first.status};
}

/// By what a logbook's file begins with; whatever else it is, is asked of the seal.
bool isDatabase(const std::string &path)
{
    std::error_code unseen;
    if (!std::filesystem::is_regular_file(path, unseen))
        return false;
    constexpr std::string_view head("SQLite format 3\0", 16);
    std::array<char, head.size()> bytes{};
    std::ifstream(path, std::ios::binary).read(bytes.data(), bytes.size());
    return std::string_view(bytes.data(), bytes.size()) == head;
}

/// A fingerprint as people type it, or the file of a certificate.
outcome::Outcome<std::string> parseKey(const std::string &given)
{
    auto fingerprint = seal::parseFingerprint(given);
    if (fingerprint)
        return fingerprint;
    const auto bytes = exchange::readFile(given, largestCertificate);
    if (!bytes)
        return outcome::Fault{.problem = "--key: \"" + given +
                                         "\" is neither a fingerprint of 64 hexadecimal digits nor a certificate's "
                                         "file that can be read"};
    const auto certificate = seal::readCertificate(bytes.value());
    if (!certificate)
        return outcome::Fault{.file = given, .problem = certificate.fault().problem};
    return seal::fingerprintOf(certificate.value());
}

std::string editedText(const logbook::HistoryCheck &check)
{
    const bool more = check.alterations.size() >= logbook::mostAlterations;
    std::string text = "EDITED by another program, " + std::string(more ? "in at least " : "in ") +
                       std::to_string(check.alterations.size()) +
                       (check.alterations.size() == 1 ? " place" : " places") + ":\n";
    for (const logbook::Alteration &one : check.alterations)
        text += withoutControls(one.text()) + '\n';
    return text;
}

/// A file cannot show of itself that it does not end too early.
std::string wholeText(const logbook::HistoryCheck &check)
{
    const std::string deeds = std::to_string(check.deeds);
    const std::string newest = check.newestDigest.empty() ? "" : "Newest digest: " + check.newestDigest + '\n';
    return "the history is whole up to deed " + deeds + ".\nDeeds: " + deeds + '\n' + newest +
           "Whether deeds after it were cut off, or all of it was written anew, the file cannot show: compare number "
           "and digest\nwith a backup's, or name a sealed record (--record FILE.pdf) or a digest noted before "
           "(--digest HEX).\n";
}

Answer logbookAnswer(const std::string &path)
{
    const auto check = logbook::verifyHistory(path);
    const std::string head = withoutControls(path) + ": ";
    if (!check.whole())
        return {.text = head + editedText(check), .status = NotConforming};
    return {.text = head + wholeText(check)};
}

std::string recordName(const exchange::RecordCheck &record)
{
    return "revision " + std::to_string(record.revision) + " of " + readings::rfc3339(record.issued);
}

/// Does the logbook still hold the entry that the record was made at?
outcome::Outcome<Answer> pinAnswer(const std::string &path, const exchange::RecordCheck &record)
{
    const auto &pin = record.history;
    if (pin.deed == 0)
        return outcome::Fault{.problem =
                                  "the record carries no digest of a logbook's history to hold against this one"};
    const std::string digest = openToRead(path).digest(pin.deed);
    const std::string entry = "entry " + std::to_string(pin.deed);
    if (digest == pin.digest)
        return Answer{.text = "The history holds " + entry + " as the record (" + recordName(record) + ") has it.\n"};
    const std::string what = digest.empty() ? "the history holds no " + entry : entry + " has another digest";
    return Answer{.text = "REWRITTEN: " + what + ", unlike the record (" + recordName(record) +
                          "). The history was written anew or cut off, or the record is from another "
                          "logbook.\n",
                  .status = NotConforming};
}

/// Does the logbook still hold the deed whose digest somebody noted?
outcome::Outcome<Answer> notedAnswer(const std::string &path, const std::string &noted)
{
    const auto digest = seal::parseFingerprint(noted);
    if (!digest)
        return outcome::Fault{.problem = "--digest: \"" + noted + "\" is no digest of 64 hexadecimal digits"};
    Answer answer = logbookAnswer(path);
    if (answer.status != Done)
        return answer;
    if (const auto deed = openToRead(path).deedOf(digest.value()))
        return joined(answer, {.text = "The digest noted is that of deed " + std::to_string(*deed) + ".\n"});
    return joined(answer, {.text = "REWRITTEN: no deed has the digest noted. The history was written anew or cut off, "
                                   "or the digest is from another logbook.\n",
                           .status = NotConforming});
}

/// A logbook, and a record that once left it.
outcome::Outcome<Answer> pairAnswer(const std::string &logbook, const std::string &record,
                                    const seal::ExpectedKeys &expected)
{
    if (isDatabase(record))
        return outcome::Fault{.file = record, .problem = "--record: a record (PDF) must be named here"};
    const auto judged = recordVerdict(record, expected);
    if (!judged)
        return judged.faults();
    Answer answer = logbookAnswer(logbook);
    if (answer.status == Done && judged.value().check) {
        const auto pin = pinAnswer(logbook, *judged.value().check);
        if (!pin)
            return pin.faults();
        answer = joined(answer, pin.value());
    }
    return joined(answer, judged.value().answer);
}

/// The key that an unaltered record is sealed by goes onto the list; of any other file nothing is believed.
outcome::Outcome<bool> trustSigner(const std::string &path, const std::string &list, readings::Instant now)
{
    if (list.empty())
        return outcome::Fault{.problem = "--trust: there is no place for the list of trusted keys; set HOME"};
    const auto bytes = exchange::readFile(path);
    if (!bytes)
        return bytes.faults();
    const auto report = seal::verifyRecord(bytes.value());
    if (report.verdict != seal::SealVerdict::Unaltered)
        return outcome::Fault{.file = path, .problem = report.reason + "; its key is not trusted"};
    return seal::trustKey(list, {report.fingerprint, report.signer, readings::isoDate(now)});
}

class VerifyCommand : public Command {
public:
    std::string name() const override { return "verify"; }
    std::string summary() const override { return "is a record as it was sealed, or was a logbook edited unseen"; }

    void declare(Options &options) override
    {
        options.positional("FILE", "A record (PDF) or a logbook", m_file);
        options.value("record", "FILE.pdf", "A record that a logbook's history must still hold the digest of",
                      m_record);
        options.value("digest", "HEX", "A digest noted before, that a logbook's history must still hold", m_digest);
        options.value("key", "FINGERPRINT|CERTIFICATE", "The key that a record must be sealed by", m_key);
        options.flag("trust", "Put the record's key on the list of trusted keys first: you know whose it is", m_trust);
    }

    outcome::Outcome<Answer> answer(const Surroundings &surroundings) override
    {
        const bool logbook = isDatabase(m_file);
        if (m_digest && (!logbook || m_record))
            return outcome::Fault{.problem = "--digest goes with a logbook, and without --record"};
        if (logbook && !m_record && (m_key || m_trust))
            return outcome::Fault{.problem = "--key and --trust go with a record; a logbook is sealed by nobody"};
        if (logbook && !m_record)
            return m_digest ? notedAnswer(m_file, *m_digest) : logbookAnswer(m_file);
        if (!logbook && m_record)
            return outcome::Fault{.file = m_file, .problem = "is no logbook; --record is held against one"};
        const std::string list = seal::trustedKeysFile(surroundings.keyFile);
        if (m_trust)
            if (const auto trusted = trustSigner(m_record.value_or(m_file), list, surroundings.now()); !trusted)
                return untrusted(trusted.faults());
        const auto expected = expectedKeys(list);
        if (!expected)
            return expected.faults();
        if (logbook)
            return pairAnswer(m_file, *m_record, expected.value());
        const auto judged = recordVerdict(m_file, expected.value());
        return judged ? outcome::Outcome<Answer>(judged.value().answer) : judged.faults();
    }

private:
    /// Of an altered record it is told that it is altered, as without --trust, and that its key was not trusted.
    [[nodiscard]] outcome::Outcome<Answer> untrusted(const std::vector<outcome::Fault> &faults) const
    {
        auto judged = recordVerdict(m_record.value_or(m_file), {});
        if (!judged || judged.value().answer.status != NotConforming)
            return faults;
        judged.value().answer.warnings = faults;
        return std::move(judged).value().answer;
    }

    [[nodiscard]] outcome::Outcome<seal::ExpectedKeys> expectedKeys(const std::string &list) const
    {
        seal::ExpectedKeys expected;
        if (m_key) {
            auto pinned = parseKey(*m_key);
            if (!pinned)
                return pinned.faults();
            expected.pinned = std::move(pinned).value();
            return expected;
        }
        auto trusted = seal::trustedKeys(list);
        if (!trusted)
            return trusted.faults();
        expected.trusted = std::move(trusted).value();
        return expected;
    }

    std::string m_file;
    std::optional<std::string> m_record;
    std::optional<std::string> m_digest;
    std::optional<std::string> m_key;
    bool m_trust = false;
};

} // namespace

std::unique_ptr<Command> makeVerifyCommand()
{
    return std::make_unique<VerifyCommand>();
}

} // namespace hammerline::command_line
