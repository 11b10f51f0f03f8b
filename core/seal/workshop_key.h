#pragma once
// The key that a workshop seals its records with, without anybody having to make one: it is made the first time that it
// is needed and found again ever after.

#include "seal/key_store.h"

namespace hammerline::seal {

/// The name under which a workshop's key is made: what it calls itself ("Name, street, town") up to the first comma or
/// line's end and cut behind a whole letter at 64 bytes, so that makeSigningKey takes it; the person where it does not
/// say.
[[nodiscard]] std::string keyNameOf(const std::string &workshop, const std::string &person);

/// The key at `path`. Where nothing is there, one is made under `name` ("Hammerline workshop" where that is empty),
/// dated `now`, and stored under the passphrase (empty: none is wished) before it is handed out; it stands on the list
/// of trusted keys beside it (trusted_keys.h) from then on. The faults of makeSigningKey, storeKey and
/// loadKey; a file that cannot be used is never replaced. Throws outcome::BrokenWorld where the disk fails.
[[nodiscard]] outcome::Outcome<SigningKey> workshopKey(const std::string &path, const std::string &name,
                                                       readings::Instant now, const std::string &passphrase = {});

} // namespace hammerline::seal
