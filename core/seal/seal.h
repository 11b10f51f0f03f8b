#pragma once
// The last steps of a record, when its pages are painted: dress it for keeping (dress.h), seal it with the workshop's
// key (key_store.h), and years later, on any machine, find out whether it still says what was sealed.
//
// The seal is a standard PDF signature (ISO 32000-1 12.8, in the profile of PAdES: CMS SignedData, ETSI.CAdES.detached)
// over the whole file, so that other people's programs can check it too. The verifier here is stricter than they are:
// it accepts exactly one form, byte for byte, and looks at nothing in the file before the signature over it holds. So
// every bit that is turned and every byte that is appended, cut or put in is found.

#include "seal/dress.h"
#include "seal/key_store.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace hammerline::seal {

/// `dressed` with the seal in it. ECDSA draws a random number: no two seals are the same. Throws outcome::BrokenWorld
/// where `dressed` is no such file.
[[nodiscard]] std::string sealRecord(std::string_view dressed, const SigningKey &key, readings::Instant at);

enum class SealVerdict {
    Unaltered,  ///< every byte is what was sealed, by the certificate given
    UnknownKey, ///< every byte is what was sealed, by a certificate that is not among those expected
    Altered,    ///< one of ours that no longer says what was sealed, or whose seal is gone
    NotOurs,    ///< nothing here tells that this ever was a record
};
/// "unaltered", "unknown-key", "altered", "not-ours".
[[nodiscard]] std::string_view idOf(SealVerdict verdict);

struct EmbeddedFile {
    std::string name{};
    std::string content{};
};

struct SealReport {
    SealVerdict verdict = SealVerdict::NotOurs;
    std::string reason{};      ///< one line of plain English without a full stop
    std::string signer{};      ///< name in the certificate; with the verdicts Unaltered and UnknownKey
    std::string fingerprint{}; ///< of that certificate
    /// The files inside, sorted by name; with the verdict Unaltered alone, since nothing else is worth reading.
    std::vector<EmbeddedFile> files{};
};

/// `trusted`: fingerprints of the certificates expected; empty: the one inside the file is taken, and its fingerprint
/// is for the reader to compare.
[[nodiscard]] SealReport verifyRecord(std::string_view file, const std::vector<std::string> &trusted = {});

/// SHA-256 of a whole file, 64 lower-case hex digits: names one sealed file among all.
[[nodiscard]] std::string digestOf(std::string_view file);

} // namespace hammerline::seal
