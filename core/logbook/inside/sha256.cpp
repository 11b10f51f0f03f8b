#include "logbook/inside/sha256.h"

#include "outcome/outcome.h"

#include <openssl/evp.h>

namespace hammerline::logbook::inside {

namespace {

void require(bool done)
{
    if (!done)
        throw outcome::BrokenWorld("The SHA-256 of OpenSSL refused. Nothing was stored. Repair the OpenSSL library.");
}

/// Looked up once: looking it up costs more than a short digest does.
const EVP_MD *method()
{
    static const std::unique_ptr<EVP_MD, decltype(&EVP_MD_free)> found(EVP_MD_fetch(nullptr, "SHA256", nullptr),
                                                                       &EVP_MD_free);
    require(found != nullptr);
    return found.get();
}

} // namespace

void Sha256::Deleter::operator()(evp_md_ctx_st *context) const
{
    EVP_MD_CTX_free(context);
}

Sha256::Sha256() : m_context(EVP_MD_CTX_new())
{
    require(m_context != nullptr);
    start();
}

void Sha256::start()
{
    require(EVP_DigestInit_ex2(m_context.get(), method(), nullptr) == 1);
}

void Sha256::add(std::string_view bytes)
{
    require(EVP_DigestUpdate(m_context.get(), bytes.data(), bytes.size()) == 1);
}

std::string Sha256::finish()
{
    unsigned char digest[EVP_MAX_MD_SIZE];
    unsigned int size = 0;
    require(EVP_DigestFinal_ex(m_context.get(), digest, &size) == 1);
    start();
    return {digest, digest + size};
}

std::string hexOf(std::string_view bytes)
{
    constexpr char digits[] = "0123456789abcdef";
    std::string hex;
    hex.reserve(bytes.size() * 2);
    for (const char letter : bytes) {
        const auto byte = static_cast<unsigned char>(letter);
        hex += digits[byte >> 4];
        hex += digits[byte & 0xf];
    }
    return hex;
}

} // namespace hammerline::logbook::inside
