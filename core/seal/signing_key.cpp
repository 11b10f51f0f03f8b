// Making keys and certificates, and using them.

#include "seal/inside/hex.h"
#include "seal/inside/signing_key_inside.h"

#include <openssl/ec.h>
#include <openssl/pem.h>
#include <openssl/rand.h>

#include <cctype>

namespace hammerline::seal {

namespace {

constexpr std::size_t longestCommonName = 64; ///< X.520 ub-common-name
constexpr int serialBytes = 16;

void numberAtRandom(X509 *certificate)
{
    unsigned char bytes[serialBytes];
    must(RAND_bytes(bytes, serialBytes) == 1, "draw a random number");
    bytes[0] &= 0x7f; // a serial number is positive
    const Owned<BIGNUM, BN_free> number(BN_bin2bn(bytes, serialBytes, nullptr));
    must(number && BN_to_ASN1_INTEGER(number.get(), X509_get_serialNumber(certificate)), "number the certificate");
}

bool nameIt(X509 *certificate, const std::string &name)
{
    X509_NAME *subject = X509_get_subject_name(certificate);
    return X509_NAME_add_entry_by_NID(subject, NID_commonName, MBSTRING_UTF8, bytesOf(name),
                                      static_cast<int>(name.size()), -1, 0) == 1 &&
           X509_set_issuer_name(certificate, subject) == 1;
}

void extend(X509 *certificate, int nid, const char *value)
{
    X509V3_CTX context;
    X509V3_set_ctx(&context, certificate, certificate, nullptr, nullptr, 0);
    const Owned<X509_EXTENSION, X509_EXTENSION_free> extension(X509V3_EXT_conf_nid(nullptr, &context, nid, value));
    must(extension && X509_add_ext(certificate, extension.get(), -1) == 1, "extend the certificate");
}

/// Without an end: a record must be checkable for longer than anybody cares to renew a certificate (RFC 5280 4.1.2.5).
void setTimes(X509 *certificate, readings::Instant now)
{
    const auto seconds = std::chrono::floor<std::chrono::seconds>(now).time_since_epoch().count();
    must(ASN1_TIME_set(X509_getm_notBefore(certificate), static_cast<time_t>(seconds)) &&
             ASN1_TIME_set_string(X509_getm_notAfter(certificate), "99991231235959Z"),
         "date the certificate");
}

std::string nameFault(const std::string &name)
{
    if (name.empty())
        return "the key needs the workshop's name";
    return name.size() > longestCommonName ? "the name for the key is longer than 64 characters; use a shorter one"
                                           : "";
}

} // namespace

SigningKey::SigningKey(std::shared_ptr<const Inside> inside) : m_inside(std::move(inside)) {}

const std::string &SigningKey::name() const
{
    return m_inside->name;
}

const std::string &SigningKey::certificate() const
{
    return m_inside->der;
}

std::string SigningKey::fingerprint() const
{
    return fingerprintOf(m_inside->der);
}

std::string SigningKey::sign(std::string_view bytes) const
{
    const DigestHandle context(EVP_MD_CTX_new());
    std::size_t length = 0;
    must(context && EVP_DigestSignInit(context.get(), nullptr, EVP_sha256(), nullptr, m_inside->key.get()) == 1 &&
             EVP_DigestSign(context.get(), nullptr, &length, bytesOf(bytes), bytes.size()) == 1,
         "sign");
    std::string signature(length, '\0');
    must(EVP_DigestSign(context.get(), reinterpret_cast<unsigned char *>(signature.data()), &length, bytesOf(bytes),
                        bytes.size()) == 1,
         "sign");
    signature.resize(length);
    return signature;
}

SigningKey signingKeyFrom(KeyHandle key, CertificateHandle certificate)
{
    auto inside = std::make_shared<SigningKey::Inside>();
    inside->der = derOf(certificate.get(), i2d_X509);
    inside->name = commonNameOf(certificate.get());
    inside->key = std::move(key);
    inside->certificate = std::move(certificate);
    return SigningKey(std::move(inside));
}

outcome::Outcome<SigningKey> makeSigningKey(const std::string &name, readings::Instant now)
{
    if (const std::string problem = nameFault(name); !problem.empty())
        return outcome::Fault{{}, 0, problem};
    KeyHandle key(EVP_EC_gen("P-256"));
    CertificateHandle certificate(X509_new());
    must(key && certificate, "make a key");
    X509_set_version(certificate.get(), X509_VERSION_3);
    numberAtRandom(certificate.get());
    if (!nameIt(certificate.get(), name))
        return outcome::Fault{{}, 0, "the name for the key is not plain text; use letters, digits and blanks"};
    setTimes(certificate.get(), now);
    must(X509_set_pubkey(certificate.get(), key.get()) == 1, "make a certificate");
    extend(certificate.get(), NID_basic_constraints, "critical,CA:FALSE");
    extend(certificate.get(), NID_key_usage, "critical,digitalSignature,nonRepudiation");
    extend(certificate.get(), NID_subject_key_identifier, "hash");
    must(X509_sign(certificate.get(), key.get(), EVP_sha256()) > 0, "sign the certificate");
    return signingKeyFrom(std::move(key), std::move(certificate));
}

std::string fingerprintOf(std::string_view certificate)
{
    return hexOf(sha256(certificate));
}

std::string groupedFingerprint(std::string_view fingerprint)
{
    std::string grouped;
    for (std::size_t i = 0; i < fingerprint.size(); ++i) {
        if (i > 0 && i % 4 == 0)
            grouped += ' ';
        grouped += fingerprint[i];
    }
    return grouped;
}

outcome::Outcome<std::string> parseFingerprint(std::string_view typed)
{
    std::string digits;
    for (const char c : typed) {
        const auto byte = static_cast<unsigned char>(c);
        if (std::isxdigit(byte))
            digits += static_cast<char>(std::tolower(byte));
        else if (c != ' ' && c != ':')
            return outcome::Fault{{}, 0, "a fingerprint has only hex digits, blanks and colons"};
    }
    if (digits.size() != 64)
        return outcome::Fault{{}, 0, "a fingerprint has 64 hex digits; this one has " + std::to_string(digits.size())};
    return digits;
}

outcome::Outcome<std::string> readCertificate(std::string_view bytes)
{
    if (CertificateHandle der = certificateFrom(bytes))
        return derOf(der.get(), i2d_X509);
    const BioHandle bio(BIO_new_mem_buf(bytes.data(), static_cast<int>(bytes.size())));
    must(bio != nullptr, "read a certificate");
    const CertificateHandle pem(PEM_read_bio_X509(bio.get(), nullptr, nullptr, nullptr));
    if (!pem)
        return outcome::Fault{{}, 0, "no certificate in DER or PEM form"};
    return derOf(pem.get(), i2d_X509);
}

std::string nameIn(std::string_view certificate)
{
    const CertificateHandle der = certificateFrom(certificate);
    return der ? commonNameOf(der.get()) : std::string();
}

} // namespace hammerline::seal
