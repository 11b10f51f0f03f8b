#include "seal/key_store.h"

#include "seal/inside/signing_key_inside.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstring>
#include <filesystem>

namespace hammerline::seal {

namespace {

/// Against guessing a passphrase (OWASP's figure for PBKDF2 with SHA-256, 2023); without one there is nothing to guess.
constexpr int roundsWithPassphrase = 600'000;
constexpr int roundsWithout = 2'048;
constexpr std::size_t largestKeyFile = 64 * 1024;

outcome::Fault fault(const std::string &path, const std::string &problem)
{
    return {path, 0, problem};
}

[[noreturn]] void diskFailed(const std::string &path, int error)
{
    throw outcome::BrokenWorld("The key cannot be written to " + path + ": " + std::strerror(error) +
                               ". No key was kept; nothing else has changed.");
}

std::string bundled(const SigningKey &key, const SigningKey::Inside &inside, const std::string &passphrase)
{
    const int rounds = passphrase.empty() ? roundsWithout : roundsWithPassphrase;
    const BundleHandle bundle(PKCS12_create_ex(passphrase.c_str(), key.name().c_str(), inside.key.get(),
                                               inside.certificate.get(), nullptr, NID_aes_256_cbc, NID_aes_256_cbc,
                                               rounds, -1, 0, nullptr, nullptr));
    must(bundle && PKCS12_set_mac(bundle.get(), passphrase.c_str(), -1, nullptr, 0, rounds, EVP_sha256()) == 1,
         "bundle the key");
    return derOf(bundle.get(), i2d_PKCS12);
}

class File {
public:
    explicit File(int descriptor) : m_descriptor(descriptor) {}
    ~File()
    {
        if (m_descriptor >= 0)
            ::close(m_descriptor);
    }
    File(const File &) = delete;
    File &operator=(const File &) = delete;
    [[nodiscard]] int get() const { return m_descriptor; }
    [[nodiscard]] bool isOpen() const { return m_descriptor >= 0; }

private:
    int m_descriptor;
};

void writeThrough(const File &file, std::string_view bytes, const std::string &path)
{
    while (!bytes.empty()) {
        const ssize_t written = ::write(file.get(), bytes.data(), bytes.size());
        if (written < 0 && errno != EINTR)
            diskFailed(path, errno);
        if (written > 0)
            bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    if (::fsync(file.get()) != 0)
        diskFailed(path, errno);
}

void makeFolder(const std::filesystem::path &folder, const std::string &path)
{
    std::error_code unseen; // a name too long, say: making the folder then tells why
    if (folder.empty() || std::filesystem::exists(folder, unseen))
        return;
    makeFolder(folder.parent_path(), path);
    if (::mkdir(folder.c_str(), 0700) != 0 && errno != EEXIST)
        diskFailed(path, errno);
}

/// Removes the file that a failed store leaves behind.
struct Remover {
    const std::string &path;
    ~Remover() { ::unlink(path.c_str()); }
};

outcome::Outcome<std::string> readOwnersFile(const std::string &path)
{
    const File file(::open(path.c_str(), O_RDONLY | O_NOFOLLOW | O_CLOEXEC | O_NONBLOCK));
    struct stat state {};
    if (!file.isOpen() || ::fstat(file.get(), &state) != 0 || !S_ISREG(state.st_mode))
        return fault(path, "there is no key that can be read");
    if ((state.st_mode & 077) != 0)
        return fault(path, "others than its owner may read the key; take that right away (mode 600)");
    std::string bytes;
    std::array<char, 4096> piece{};
    for (ssize_t read = 0; (read = ::read(file.get(), piece.data(), piece.size())) > 0;) {
        bytes.append(piece.data(), static_cast<std::size_t>(read));
        if (bytes.size() > largestKeyFile)
            return fault(path, "the file is too large to be a key");
    }
    return bytes;
}

BundleHandle bundleFrom(std::string_view bytes)
{
    const unsigned char *at = bytesOf(bytes);
    return BundleHandle(d2i_PKCS12(nullptr, &at, static_cast<long>(bytes.size())));
}

bool isOurKind(EVP_PKEY *key)
{
    std::array<char, 32> group{};
    std::size_t length = 0;
    return EVP_PKEY_get_base_id(key) == EVP_PKEY_EC &&
           EVP_PKEY_get_group_name(key, group.data(), group.size(), &length) == 1 &&
           std::string_view(group.data(), length) == "prime256v1";
}

} // namespace

outcome::Outcome<bool> storeKey(const std::string &path, const SigningKey &key, const std::string &passphrase)
{
    makeFolder(std::filesystem::path(path).parent_path(), path);
    const std::string beside = path + ".part-" + std::to_string(::getpid());
    const File file(::open(beside.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, 0600));
    if (!file.isOpen())
        diskFailed(path, errno);
    const Remover remover{beside};
    writeThrough(file, bundled(key, key.inside(), passphrase), path);
    // A link, unlike a rename, does not replace what is there.
    if (::link(beside.c_str(), path.c_str()) != 0) {
        if (errno == EEXIST)
            return fault(path, "there is a file already; a key is never overwritten");
        diskFailed(path, errno);
    }
    return true;
}

bool asksForPassphrase(const std::string &path)
{
    const auto bytes = readOwnersFile(path);
    const BundleHandle bundle = bytes ? bundleFrom(bytes.value()) : BundleHandle();
    return bundle && PKCS12_verify_mac(bundle.get(), "", -1) != 1;
}

outcome::Outcome<SigningKey> loadKey(const std::string &path, const std::string &passphrase)
{
    const auto bytes = readOwnersFile(path);
    if (!bytes)
        return bytes.fault();
    const BundleHandle bundle = bundleFrom(bytes.value());
    if (!bundle)
        return fault(path, "this is no PKCS#12 file");
    if (PKCS12_verify_mac(bundle.get(), passphrase.c_str(), -1) != 1)
        return fault(path, "the passphrase is not the one this key was stored with, or the file is damaged");
    EVP_PKEY *key = nullptr;
    X509 *certificate = nullptr;
    const bool parsed = PKCS12_parse(bundle.get(), passphrase.c_str(), &key, &certificate, nullptr) == 1;
    KeyHandle ownedKey(key);
    CertificateHandle ownedCertificate(certificate);
    if (!parsed || !key || !certificate || !isOurKind(key) || X509_check_private_key(certificate, key) != 1)
        return fault(path, "the file holds no P-256 key with its certificate");
    return signingKeyFrom(std::move(ownedKey), std::move(ownedCertificate));
}

} // namespace hammerline::seal
