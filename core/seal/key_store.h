#pragma once
// The workshop's own key: P-256, with a certificate that it signs itself, kept outside every logbook as one PKCS#12
// file that only its owner may read. The certificate says who, never since when it is to be trusted: whoever verifies
// compares the fingerprint with one they got from the workshop, or keeps a list of the keys they trust.
//
// Everything cryptographic is OpenSSL's. This is the one place of the core that draws random numbers: a key is one.

#include "outcome/outcome.h"
#include "readings/instant.h"

#include <memory>
#include <string>
#include <string_view>

namespace hammerline::seal {

/// A private key and its certificate; copies share them.
class SigningKey {
public:
    /// Common name in the certificate.
    [[nodiscard]] const std::string &name() const;
    [[nodiscard]] const std::string &certificate() const; ///< DER
    [[nodiscard]] std::string fingerprint() const;        ///< see fingerprintOf
    /// DER ECDSA signature over SHA-256 of `bytes`.
    [[nodiscard]] std::string sign(std::string_view bytes) const;

    struct Inside;
    explicit SigningKey(std::shared_ptr<const Inside> inside);
    [[nodiscard]] const Inside &inside() const { return *m_inside; }

private:
    std::shared_ptr<const Inside> m_inside;
};

/// SHA-256 of a DER certificate, 64 lower-case hex digits.
[[nodiscard]] std::string fingerprintOf(std::string_view certificate);
/// In groups of four, for paper.
[[nodiscard]] std::string groupedFingerprint(std::string_view fingerprint);
/// What people type or copy (blanks, colons, capitals), as fingerprintOf gives it. A fault where it is no fingerprint.
[[nodiscard]] outcome::Outcome<std::string> parseFingerprint(std::string_view typed);
/// The certificate in a DER or PEM file's bytes, as DER.
[[nodiscard]] outcome::Outcome<std::string> readCertificate(std::string_view bytes);
/// The common name in a certificate as readCertificate gives it: what somebody wrote into it.
[[nodiscard]] std::string nameIn(std::string_view certificate);

/// A new key. A fault where the name is empty, longer than 64 characters (X.520) or no UTF-8.
[[nodiscard]] outcome::Outcome<SigningKey> makeSigningKey(const std::string &name, readings::Instant now);

/// Writes the key to a new file of mode 0600, in a folder that is made with mode 0700 where it is missing. A fault
/// where something is there already: a key is never overwritten. With a passphrase this takes about half a second by
/// design (600 000 rounds); the passphrase may be empty. Throws outcome::BrokenWorld where the disk fails.
[[nodiscard]] outcome::Outcome<bool> storeKey(const std::string &path, const SigningKey &key,
                                              const std::string &passphrase);
/// A fault where the file is missing, no such key, protected by another passphrase, or readable by others than its
/// owner.
[[nodiscard]] outcome::Outcome<SigningKey> loadKey(const std::string &path, const std::string &passphrase);

/// Whether the key at `path` was stored with a passphrase; false too where nothing is there or nothing can be read.
[[nodiscard]] bool asksForPassphrase(const std::string &path);

} // namespace hammerline::seal
