#pragma once
// What a SigningKey holds.

#include "seal/inside/openssl_handles.h"
#include "seal/key_store.h"

#include <string>

namespace hammerline::seal {

struct SigningKey::Inside {
    KeyHandle key;
    CertificateHandle certificate;
    std::string der;
    std::string name;
};

/// Takes both; they belong together.
[[nodiscard]] SigningKey signingKeyFrom(KeyHandle key, CertificateHandle certificate);

} // namespace hammerline::seal
