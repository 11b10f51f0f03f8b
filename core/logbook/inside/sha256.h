#pragma once
// SHA-256 (FIPS 180-4) by OpenSSL, fed piece by piece.

#include <memory>
#include <string>
#include <string_view>

struct evp_md_ctx_st;

namespace hammerline::logbook::inside {

class Sha256 {
public:
    Sha256();
    void add(std::string_view bytes);
    /// 32 bytes; starts anew.
    [[nodiscard]] std::string finish();

private:
    struct Deleter {
        void operator()(evp_md_ctx_st *context) const;
    };
    void start();
    std::unique_ptr<evp_md_ctx_st, Deleter> m_context;
};

/// Lower-case hexadecimal digits of bytes.
[[nodiscard]] std::string hexOf(std::string_view bytes);

} // namespace hammerline::logbook::inside
