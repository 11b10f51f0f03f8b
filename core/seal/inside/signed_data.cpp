#include "seal/inside/signed_data.h"

#include "seal/inside/openssl_handles.h"

#include <algorithm>
#include <vector>

namespace hammerline::seal {

namespace {

constexpr char sequenceTag = 0x30;
constexpr char setTag = 0x31;
constexpr char octetsTag = 0x04;
constexpr char integerTag = 0x02;
constexpr char context0Tag = static_cast<char>(0xa0);

/// Definite length in the fewest bytes (X.690 10.1).
std::string lengthOf(std::size_t length)
{
    if (length < 0x80)
        return {static_cast<char>(length)};
    std::string bytes;
    for (; length > 0; length >>= 8)
        bytes.insert(bytes.begin(), static_cast<char>(length & 0xff));
    return static_cast<char>(0x80 | bytes.size()) + bytes;
}

std::string element(char tag, std::string_view content)
{
    return tag + lengthOf(content.size()) + std::string(content);
}

std::string oid(int nid)
{
    return derOf(OBJ_nid2obj(nid), i2d_ASN1_OBJECT);
}

std::string versionOne()
{
    return element(integerTag, "\x01");
}

std::string attribute(int nid, std::string_view value)
{
    return element(sequenceTag, oid(nid) + element(setTag, value));
}

/// Algorithm identifier without parameters (RFC 5754 2 and 3.2).
std::string algorithm(int nid)
{
    return element(sequenceTag, oid(nid));
}

std::string issuerAndSerial(std::string_view certificate)
{
    const CertificateHandle handle = certificateFrom(certificate);
    must(handle != nullptr, "read the certificate");
    return element(sequenceTag, derOf(X509_get_issuer_name(handle.get()), i2d_X509_NAME) +
                                    derOf(X509_get0_serialNumber(handle.get()), i2d_ASN1_INTEGER));
}

} // namespace

std::string signedAttributes(std::string_view contentDigest, std::string_view certificate)
{
    // ESSCertIDv2 with its default digest, SHA-256.
    const std::string certificateId = element(sequenceTag, element(octetsTag, sha256(certificate)));
    std::vector<std::string> attributes{
        attribute(NID_pkcs9_contentType, oid(NID_pkcs7_data)),
        attribute(NID_pkcs9_messageDigest, element(octetsTag, contentDigest)),
        attribute(NID_id_smime_aa_signingCertificateV2, element(sequenceTag, element(sequenceTag, certificateId)))};
    std::ranges::sort(attributes, [](const std::string &a, const std::string &b) {
        // DER orders the members of a SET OF as unsigned bytes, which char_traits<char> compares as.
        return a < b;
    });
    std::string joined;
    for (const std::string &one : attributes)
        joined += one;
    return element(setTag, joined);
}

std::string signedData(std::string_view certificate, std::string_view attributes, std::string_view signature)
{
    // In the SignerInfo the SET of attributes carries an implicit context tag.
    std::string tagged(attributes);
    tagged.front() = context0Tag;
    const std::string signer =
        element(sequenceTag, versionOne() + issuerAndSerial(certificate) + algorithm(NID_sha256) + tagged +
                                 algorithm(NID_ecdsa_with_SHA256) + element(octetsTag, signature));
    const std::string data = element(sequenceTag, versionOne() + element(setTag, algorithm(NID_sha256)) +
                                                      element(sequenceTag, oid(NID_pkcs7_data)) +
                                                      element(context0Tag, certificate) + element(setTag, signer));
    return element(sequenceTag, oid(NID_pkcs7_signed) + element(context0Tag, data));
}

} // namespace hammerline::seal
