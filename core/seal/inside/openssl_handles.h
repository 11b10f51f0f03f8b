#pragma once
// OpenSSL's handles as owners, and its errors as one exception of the house.

#include "outcome/outcome.h"

#include <openssl/asn1.h>
#include <openssl/bio.h>
#include <openssl/cms.h>
#include <openssl/evp.h>
#include <openssl/pkcs12.h>
#include <openssl/x509.h>
#include <openssl/x509v3.h>

#include <memory>
#include <string>
#include <string_view>

namespace hammerline::seal {

template <auto Free>
struct Freed {
    template <typename Handle>
    void operator()(Handle *handle) const
    {
        Free(handle);
    }
};
template <typename Handle, auto Free>
using Owned = std::unique_ptr<Handle, Freed<Free>>;

using KeyHandle = Owned<EVP_PKEY, EVP_PKEY_free>;
using CertificateHandle = Owned<X509, X509_free>;
using DigestHandle = Owned<EVP_MD_CTX, EVP_MD_CTX_free>;
using BundleHandle = Owned<PKCS12, PKCS12_free>;
using CmsHandle = Owned<CMS_ContentInfo, CMS_ContentInfo_free>;
using BioHandle = Owned<BIO, BIO_free_all>;

/// Throws where OpenSSL refuses what cannot fail in a sound world.
inline void must(bool done, const char *what)
{
    if (!done)
        throw outcome::BrokenWorld(std::string("OpenSSL cannot ") + what + ". Nothing was written.");
}

inline const unsigned char *bytesOf(std::string_view text)
{
    return reinterpret_cast<const unsigned char *>(text.data());
}

/// DER of anything that has an i2d function.
template <typename Value, typename Encode>
[[nodiscard]] std::string derOf(const Value *value, Encode encode)
{
    unsigned char *bytes = nullptr;
    const int length = encode(value, &bytes);
    must(length > 0, "encode a certificate");
    std::string der(reinterpret_cast<const char *>(bytes), static_cast<std::size_t>(length));
    OPENSSL_free(bytes);
    return der;
}

[[nodiscard]] inline std::string sha256(std::string_view bytes)
{
    std::string digest(32, '\0');
    unsigned int length = 0;
    must(EVP_Digest(bytes.data(), bytes.size(), reinterpret_cast<unsigned char *>(digest.data()), &length, EVP_sha256(),
                    nullptr) == 1,
         "take a digest");
    return digest;
}

/// Null where `der` is no certificate, or is followed by anything.
[[nodiscard]] inline CertificateHandle certificateFrom(std::string_view der)
{
    const unsigned char *at = bytesOf(der);
    CertificateHandle certificate(d2i_X509(nullptr, &at, static_cast<long>(der.size())));
    return at == bytesOf(der) + der.size() ? std::move(certificate) : nullptr;
}

[[nodiscard]] inline std::string commonNameOf(X509 *certificate)
{
    X509_NAME *subject = X509_get_subject_name(certificate);
    const int index = X509_NAME_get_index_by_NID(subject, NID_commonName, -1);
    if (index < 0)
        return {};
    unsigned char *utf8 = nullptr;
    const int length = ASN1_STRING_to_UTF8(&utf8, X509_NAME_ENTRY_get_data(X509_NAME_get_entry(subject, index)));
    if (length < 0)
        return {};
    std::string name(reinterpret_cast<const char *>(utf8), static_cast<std::size_t>(length));
    OPENSSL_free(utf8);
    return name;
}

} // namespace hammerline::seal
