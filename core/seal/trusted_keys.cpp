#include "seal/trusted_keys.h"

#include "exchange/exchange.h"
#include "seal/key_store.h"

#include <algorithm>
#include <filesystem>
#include <sstream>
#include <string_view>

namespace hammerline::seal {

namespace {

constexpr std::size_t fingerprintDigits = 64;
constexpr std::size_t dayLetters = 10;
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

/// `2026-03-02 ` at the beginning.
bool beginsWithDay(std::string_view text)
{
    constexpr std::string_view form = "0000-00-00 ";
    return text.size() >= form.size() && std::ranges::equal(text.substr(0, form.size()), form, [](char c, char f) {
               return f == '0' ? c >= '0' && c <= '9' : c == f;
           });
}

/// Of the first key ever, where no record was made yet; like the folder of the key, its owner's alone.
void makeFolderOf(const std::string &path)
{
    const auto folder = std::filesystem::path(path).parent_path();
    std::error_code failed;
    if (folder.empty() || !std::filesystem::create_directories(folder, failed) || failed)
        return; // writing the file says what is wrong
    std::filesystem::permissions(folder, std::filesystem::perms::owner_all, failed);
}

outcome::Outcome<TrustedKey> parseLine(const std::string &line)
{
    auto fingerprint = parseFingerprint(line.substr(0, fingerprintDigits));
    if (!fingerprint)
        return fingerprint.fault();
    TrustedKey key{.fingerprint = std::move(fingerprint).value(),
                   .name = oneLine(line.substr(std::min(line.size(), fingerprintDigits)))};
    if (beginsWithDay(key.name)) {
        key.since = key.name.substr(0, dayLetters);
        key.name = oneLine(key.name.substr(dayLetters));
    }
    return key;
}

std::string lineOf(const TrustedKey &key)
{
    return key.fingerprint + ' ' + (key.since.empty() ? std::string() : key.since + ' ') + oneLine(key.name) + '\n';
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
    std::string text =
        "# Keys that this workshop trusts: fingerprint (SHA-256 of the certificate), since when, name.\n";
    std::error_code unseen;
    if (std::filesystem::exists(path, unseen)) {
        const auto standing = exchange::readFile(path, largestList);
        if (!standing)
            return standing.faults();
        text = standing.value();
        if (!text.empty() && text.back() != '\n')
            text += '\n';
    }
    makeFolderOf(path);
    return exchange::writeFile(path, text + lineOf(key), exchange::Overwrite::Yes);
}

outcome::Outcome<bool> distrustKey(const std::string &path, const std::string &fingerprint)
{
    const auto keys = trustedKeys(path);
    if (!keys)
        return keys.faults();
    if (std::ranges::find(keys.value(), fingerprint, &TrustedKey::fingerprint) == keys.value().end())
        return false;
    const auto standing = exchange::readFile(path, largestList);
    if (!standing)
        return standing.faults();
    std::string kept;
    std::istringstream lines(standing.value());
    for (std::string line; std::getline(lines, line);) {
        const auto key = isForPeople(line) ? outcome::Outcome<TrustedKey>(outcome::Fault{}) : parseLine(line);
        if (!key || key.value().fingerprint != fingerprint)
            kept += line + '\n';
    }
    return exchange::writeFile(path, kept, exchange::Overwrite::Yes);
}

Standing standingOf(const TrustedKey &key, const std::vector<TrustedKey> &trusted)
{
    if (std::ranges::find(trusted, key.fingerprint, &TrustedKey::fingerprint) != trusted.end())
        return Standing::Trusted;
    const bool named = std::ranges::find(trusted, oneLine(key.name), &TrustedKey::name) != trusted.end();
    return named ? Standing::NameOfAnother : Standing::Unlisted;
}

} // namespace hammerline::seal
