#include "logbook/inside/pictures.h"

#include "logbook/inside/sha256.h"

namespace hammerline::logbook::inside {

namespace {

bool hasPictures(Database &database)
{
    return database.number("SELECT count(*) FROM sqlite_schema WHERE type = 'table' AND name = 'picture'") == 1;
}

constexpr std::string_view lostSql = R"sql(
SELECT p.deed, p.digest FROM photograph AS p LEFT JOIN picture AS k ON k.digest = p.digest
WHERE p.digest IS NOT NULL AND k.digest IS NULL ORDER BY p.deed)sql";

constexpr std::string_view unnamedSql = R"sql(
SELECT k.digest FROM picture AS k
WHERE NOT EXISTS (SELECT 1 FROM photograph AS p WHERE p.digest = k.digest) ORDER BY k.digest)sql";

} // namespace

std::string pictureDigest(std::string_view jpeg)
{
    Sha256 digest;
    digest.add(jpeg);
    return hexOf(digest.finish());
}

void keepPicture(Database &database, const std::string &digest, std::string_view jpeg)
{
    const Use insert = database.use("INSERT INTO picture(digest, jpeg) VALUES (?1, ?2) ON CONFLICT DO NOTHING");
    insert->bind(1, digest).bindBytes(2, jpeg);
    insert->run();
}

std::optional<std::string> findPicture(Database &database, const std::string &digest)
{
    const Use query = database.use("SELECT jpeg FROM picture WHERE digest = ?1");
    query->bind(1, digest);
    return query->step() ? std::optional(query->bytes(0)) : std::nullopt;
}

void checkPicture(Database &database, const std::string &digest, DeedId deed, std::vector<Alteration> &found)
{
    const auto jpeg = findPicture(database, digest);
    if (!jpeg)
        found.push_back({deed, "picture", "picture " + digest, "was removed"});
    else if (pictureDigest(*jpeg) != digest)
        found.push_back({0, "picture", "picture " + digest, "was altered"});
}

void checkPictures(Database &database, std::vector<Alteration> &found)
{
    if (!hasPictures(database))
        return;
    Statement pictures = database.prepare("SELECT digest, jpeg FROM picture ORDER BY digest");
    while (pictures.step() && found.size() < mostAlterations)
        if (pictureDigest(pictures.bytes(1)) != pictures.text(0))
            found.push_back({0, "picture", "picture " + pictures.text(0), "was altered"});
    Statement lost = database.prepare(lostSql);
    while (lost.step() && found.size() < mostAlterations)
        found.push_back({lost.integer(0), "picture", "picture " + lost.text(1), "was removed"});
    Statement unnamed = database.prepare(unnamedSql);
    while (unnamed.step() && found.size() < mostAlterations)
        found.push_back({0, "picture", "picture " + unnamed.text(0), "was added: no photograph names it"});
}

} // namespace hammerline::logbook::inside
