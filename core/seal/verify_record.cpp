// Does a file still say what was sealed? First the bytes, then the signature over them, and only then the inside.

#include "seal/inside/embedded_files.h"
#include "seal/inside/hex.h"
#include "seal/inside/openssl_handles.h"
#include "seal/inside/seal_form.h"
#include "seal/inside/signed_data.h"
#include "seal/seal.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace hammerline::seal {

namespace {

constexpr std::size_t largestRecord = 512u << 20;

SealReport saying(SealVerdict verdict, std::string reason)
{
    SealReport report;
    report.verdict = verdict;
    report.reason = std::move(reason);
    return report;
}

/// Any of several marks far apart: no single damage hides them all.
bool looksLikeOurs(std::string_view file)
{
    constexpr std::array<std::string_view, 4> marks{"Regulation record by Hammerline", "<xmp:CreatorTool>Hammerline ",
                                                    subFilter, rangeKey};
    const auto found = std::ranges::count_if(
        marks, [file](std::string_view mark) { return file.find(mark) != std::string_view::npos; });
    // Other people's signed files carry the last two.
    return file.find(marks[0]) != std::string_view::npos || file.find(marks[1]) != std::string_view::npos || found > 2;
}

/// The offsets in the file's own words. That they are spelt as rangeText spells them is asked of the whole text.
std::optional<SealPlace> placeOfSeal(std::string_view file)
{
    const auto key = onlyPlaceOf(rangeKey, file);
    if (!key)
        return std::nullopt;
    const std::string_view text = file.substr(*key + rangeKey.size(), 1 + rangePlaceholder.size());
    if (text.substr(0, 4) != " [0 ")
        return std::nullopt;
    SealPlace place;
    const char *end = text.data() + text.size();
    const auto open = std::from_chars(text.data() + 4, end, place.open);
    if (open.ec != std::errc() || open.ptr == end)
        return std::nullopt;
    const auto close = std::from_chars(open.ptr + 1, end, place.close);
    place.size = file.size();
    const bool sound = close.ec == std::errc() && place.open < place.close && place.close <= place.size;
    if (!sound || text.substr(1) != rangeText(place))
        return std::nullopt;
    return place;
}

/// The reserved bytes. Absent where they are not lower-case hex of the reserved length between `<` and `>`.
std::optional<std::string> reservedIn(std::string_view file, const SealPlace &place)
{
    const std::string_view text = file.substr(place.open, place.close - place.open);
    if (text.size() != 2 * reservedBytes + 2 || text.front() != '<' || text.back() != '>')
        return std::nullopt;
    return bytesFromHex(text.substr(1, text.size() - 2));
}

struct SealParts {
    std::string certificate;
    std::string signature;
};

/// Certificate and signature, as far as OpenSSL can read them out of the seal.
std::optional<SealParts> partsOf(std::string_view reserved)
{
    const unsigned char *at = bytesOf(reserved);
    const CmsHandle cms(d2i_CMS_ContentInfo(nullptr, &at, static_cast<long>(reserved.size())));
    if (!cms)
        return std::nullopt;
    STACK_OF(CMS_SignerInfo) *signers = CMS_get0_SignerInfos(cms.get());
    STACK_OF(X509) *certificates = CMS_get1_certs(cms.get());
    std::optional<SealParts> parts;
    if (signers && certificates && sk_CMS_SignerInfo_num(signers) == 1 && sk_X509_num(certificates) == 1) {
        const ASN1_OCTET_STRING *signature = CMS_SignerInfo_get0_signature(sk_CMS_SignerInfo_value(signers, 0));
        parts = SealParts{derOf(sk_X509_value(certificates, 0), i2d_X509),
                          std::string(reinterpret_cast<const char *>(ASN1_STRING_get0_data(signature)),
                                      static_cast<std::size_t>(ASN1_STRING_length(signature)))};
    }
    sk_X509_pop_free(certificates, X509_free);
    return parts;
}

bool signatureHolds(const SealParts &parts, std::string_view attributes)
{
    const CertificateHandle certificate = certificateFrom(parts.certificate);
    EVP_PKEY *key = certificate ? X509_get0_pubkey(certificate.get()) : nullptr;
    const DigestHandle context(EVP_MD_CTX_new());
    return key && EVP_PKEY_get_base_id(key) == EVP_PKEY_EC && context &&
           EVP_DigestVerifyInit(context.get(), nullptr, EVP_sha256(), nullptr, key) == 1 &&
           EVP_DigestVerify(context.get(), bytesOf(parts.signature), parts.signature.size(), bytesOf(attributes),
                            attributes.size()) == 1;
}

/// The seal must be, to the last byte, what this house would have written from the bytes of the file, the certificate
/// and the signature; then the signature covers the first, names the second, and is checked itself.
bool sealHolds(std::string_view file, const SealPlace &place, std::string_view reserved, const SealParts &parts)
{
    const std::string attributes = signedAttributes(sha256(signedBytes(file, place)), parts.certificate);
    std::string expected = signedData(parts.certificate, attributes, parts.signature);
    expected.resize(std::max(expected.size(), reservedBytes), '\0');
    return expected == reserved && signatureHolds(parts, attributes);
}

std::optional<SealParts> soundSealOf(std::string_view file)
{
    if (file.size() > largestRecord || !file.starts_with(pdfHead) || !file.ends_with(pdfTail))
        return std::nullopt;
    const auto place = placeOfSeal(file);
    if (!place)
        return std::nullopt;
    const auto reserved = reservedIn(file, *place);
    if (!reserved)
        return std::nullopt;
    auto parts = partsOf(*reserved);
    if (!parts || !sealHolds(file, *place, *reserved, *parts))
        return std::nullopt;
    return parts;
}

SealReport unsound(std::string_view file)
{
    if (!looksLikeOurs(file))
        return saying(SealVerdict::NotOurs, "this is no record made by Hammerline");
    if (file.find(rangeKey) == std::string_view::npos)
        return saying(SealVerdict::Altered, "the record carries no seal");
    return saying(SealVerdict::Altered,
                  "the record is not what was sealed: a part of it was changed, added or removed");
}

} // namespace

std::string digestOf(std::string_view file)
{
    return hexOf(sha256(file));
}

SealReport verifyRecord(std::string_view file, const std::vector<std::string> &trusted)
{
    const auto parts = soundSealOf(file);
    if (!parts)
        return unsound(file);
    SealReport report;
    report.fingerprint = fingerprintOf(parts->certificate);
    report.signer = commonNameOf(certificateFrom(parts->certificate).get());
    if (!trusted.empty() && std::ranges::find(trusted, report.fingerprint) == trusted.end()) {
        report.verdict = SealVerdict::UnknownKey;
        report.reason = "the record is sealed by a key that is not among those expected";
        return report;
    }
    auto files = embeddedFilesOf(file);
    if (!files)
        return saying(SealVerdict::Altered, "the seal holds, but the record cannot be read");
    report.verdict = SealVerdict::Unaltered;
    report.reason = "the record says what was sealed";
    report.files = std::move(*files);
    return report;
}

} // namespace hammerline::seal
