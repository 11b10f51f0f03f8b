// hammerline verify: does a record still say what was sealed, was a logbook edited unseen? Neither needs a display, and
// a record needs nothing but itself.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/plain_table.h"

#include "exchange/exchange.h"
#include "logbook/verify_history.h"
#include "seal/seal.h"

#include <array>
#include <filesystem>
#include <fstream>

namespace hammerline::command_line {
namespace {

constexpr std::size_t largestCertificate = 64 * 1024;

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

std::string signerText(const seal::SealReport &report)
{
    return "Sealed by:   " + withoutControls(report.signer) +
           "\nFingerprint: " + seal::groupedFingerprint(report.fingerprint) + '\n';
}

std::string unalteredText(const seal::SealReport &report, bool pinned)
{
    return "sealed and unaltered.\n" + signerText(report) +
           (pinned ? "This is the key that was expected.\n"
                   : "Compare the fingerprint with one that the workshop gave you; --key does it for you.\n");
}

outcome::Outcome<Answer> recordAnswer(const std::string &path, const std::optional<std::string> &expected)
{
    const auto bytes = exchange::readFile(path);
    if (!bytes)
        return bytes.faults();
    const auto report =
        seal::verifyRecord(bytes.value(), expected ? std::vector{*expected} : std::vector<std::string>());
    const std::string head = withoutControls(path) + ": ";
    switch (report.verdict) {
    case seal::SealVerdict::Unaltered:
        return Answer{.text = head + unalteredText(report, expected.has_value())};
    case seal::SealVerdict::UnknownKey:
        return Answer{.text = head + report.reason + ".\n" + signerText(report), .status = NotConforming};
    case seal::SealVerdict::Altered:
        return Answer{.text = head + "ALTERED: " + report.reason + ".\n", .status = NotConforming};
    case seal::SealVerdict::NotOurs:
        break;
    }
    return outcome::Fault{.file = path, .problem = report.reason + ", and no logbook"};
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

Answer logbookAnswer(const std::string &path)
{
    const auto check = logbook::verifyHistory(path);
    const std::string head = withoutControls(path) + ": ";
    if (!check.whole())
        return {.text = head + editedText(check), .status = NotConforming};
    const std::string newest = check.newestDigest.empty() ? "" : "Newest digest: " + check.newestDigest + '\n';
    return {.text = head + "the history is whole.\nDeeds: " + std::to_string(check.deeds) + '\n' + newest};
}

class VerifyCommand : public Command {
public:
    std::string name() const override { return "verify"; }
    std::string summary() const override { return "is a record as it was sealed, or was a logbook edited unseen"; }

    void declare(Options &options) override
    {
        options.positional("FILE", "A record (PDF) or a logbook", m_file);
        options.value("key", "FINGERPRINT|CERTIFICATE", "The key that a record must be sealed by", m_key);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        if (isDatabase(m_file)) {
            if (m_key)
                return outcome::Fault{.problem = "--key goes with a record; a logbook is sealed by nobody"};
            return logbookAnswer(m_file);
        }
        if (!m_key)
            return recordAnswer(m_file, std::nullopt);
        const auto expected = parseKey(*m_key);
        return expected ? recordAnswer(m_file, expected.value()) : expected.faults();
    }

private:
    std::string m_file;
    std::optional<std::string> m_key;
};

} // namespace

std::unique_ptr<Command> makeVerifyCommand()
{
    return std::make_unique<VerifyCommand>();
}

} // namespace hammerline::command_line
