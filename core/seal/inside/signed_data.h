#pragma once
// The one form of CMS SignedData (RFC 5652) that this house writes and accepts: one signer named by issuer and serial
// number, SHA-256, ECDSA, the signer's certificate, and exactly the signed attributes that PAdES asks for (content
// type, message digest, signing certificate version 2 after RFC 5035), DER all through.
//
// It is put together here and not by OpenSSL's CMS verbs because those add a signing time, which PAdES forbids, and
// because their encoding may differ from release to release, while the verifier wants every byte to follow from
// certificate, digest and signature. Digest, signature and certificate themselves are OpenSSL's.

#include <string>
#include <string_view>

namespace hammerline::seal {

/// DER of the SET OF Attribute, which is what gets signed.
[[nodiscard]] std::string signedAttributes(std::string_view contentDigest, std::string_view certificate);

/// The whole ContentInfo. `attributes` as signedAttributes gives them, `certificate` DER of a certificate.
[[nodiscard]] std::string signedData(std::string_view certificate, std::string_view attributes,
                                     std::string_view signature);

} // namespace hammerline::seal
