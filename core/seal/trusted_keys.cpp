#include "seal/trusted_keys.h"

#include "exchange/exchange.h"
#include "seal/key_store.h"

#include <algorithm>
#include <filesystem>
#include <sstream>

namespace hammerline::seal {

namespace {

constexpr std::size_t fingerprintDigits = 64;
constexpr std::size_t largestList = 1024 * 1024;

bool isForPeople(const std::string &line)
{
    const auto first = line.find_first_not_of(" \t\r");
    return first == std::string::npos || line[first] == '#';
}

/// A name is one line, whatever a certificate says it is.
std::string oneLine(std::string name)
{
    std::ranges::replace_if(
        name, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; }, ' ');
    const auto first = name.find_first_not_of(' ');
    return first == std::string::npos ? std::string() : name.substr(first, name.find_last_not_of(' ') - first + 1);
}

outcome::Outcome<TrustedKey> parseLine(const std::string &line)
{
    auto fingerprint = parseFingerprint(line.substr(0, fingerprintDigits));
    if (!fingerprint)
        return fingerprint.fault();
    return TrustedKey{std::move(fingerprint).value(), oneLine(line.substr(std::min(line.size(), fingerprintDigits)))};
}

} // namespace

std::string trustedKeysFile(const std::string &keyFile)
{
    return keyFile.empty() ? std::string()
                           : (std::filesystem::path(keyFile).parent_path() / "trusted-keys.txt").string();
}

outcome::Outcome<std::vector<TrustedKey>> trustedKeys(const std::string &path)
{
    std::error_code unseen;
    if (path.empty() || !std::filesystem::exists(path, unseen))
        return std::vector<TrustedKey>();
    const auto text = exchange::readFile(path, largestList);
    if (!text)
        return text.faults();
    std::vector<TrustedKey> keys;
    std::istringstream lines(text.value());
    std::size_t number = 0;
    for (std::string line; std::getline(lines, line);) {
        ++number;
        if (isForPeople(line))
            continue;
        auto key = parseLine(line);
        if (!key)
            return outcome::Fault{path, number, "a fingerprint of 64 digits and a name must stand here"};
        keys.push_back(std::move(key).value());
    }
    return keys;
}

outcome::Outcome<bool> trustKey(const std::string &path, const TrustedKey &key)
{
    const auto keys = trustedKeys(path);
    if (!keys)
        return keys.faults();
    if (standingOf(key, keys.value()) == Standing::Trusted)
        return false;
    std::string text = "# Keys that this workshop trusts: fingerprint (SHA-256 of the certificate) and name.\n";
    std::error_code unseen;
    if (std::filesystem::exists(path, unseen)) {
        const auto standing = exchange::readFile(path, largestList);
        if (!standing)
            return standing.faults();
        text = standing.value();
        if (!text.empty() && text.back() != '\n')
            text += '\n';
    }
    return exchange::writeFile(path, text + key.fingerprint + ' ' + oneLine(key.name) + '\n', exchange::Overwrite::Yes);
}

Standing standingOf(const TrustedKey &key, const std::vector<TrustedKey> &trusted)
{
    if (std::ranges::find(trusted, key.fingerprint, &TrustedKey::fingerprint) != trusted.end())
        return Standing::Trusted;
    const bool named = std::ranges::find(trusted, oneLine(key.name), &TrustedKey::name) != trusted.end();
    return named ? Standing::NameOfAnother : Standing::Unlisted;
}

} // namespace hammerline::seal
