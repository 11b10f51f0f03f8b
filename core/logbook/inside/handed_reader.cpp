#include "logbook/inside/handed_reader.h"

#include "dossier/plain_jpeg.h"
#include "logbook/inside/base64.h"
#include "logbook/inside/handed_digest.h"
#include "logbook/inside/handed_fit.h"
#include "logbook/inside/handed_tree.h"
#include "logbook/inside/pictures.h"
#include "logbook/inside/row_check.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <set>

namespace hammerline::logbook::inside {

namespace {

using Json = nlohmann::json;

/// What is wrong, caught by `readHanded` alone.
struct Refusal {
    std::string problem;
    std::size_t line = 0;
};
[[noreturn]] void refuse(const std::string &problem)
{
    throw Refusal{problem};
}

constexpr auto altered = "was altered after it was handed over";

bool isUid(const std::string &text, std::size_t digits = 32)
{
    return text.size() == digits && text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

const Json &member(const Json &json, const char *name, Json::value_t type, const std::string &where)
{
    if (!json.is_object() || !json.contains(name))
        refuse(where + ": \"" + name + "\" is missing");
    const Json &found = json[name];
    if (found.type() != type)
        refuse(where + ": \"" + name + "\" is not what it should be");
    return found;
}

std::string text(const Json &json, const char *name, const std::string &where)
{
    return member(json, name, Json::value_t::string, where).get<std::string>();
}
std::string textOrNone(const Json &json, const char *name, const std::string &where)
{
    return json.contains(name) ? text(json, name, where) : std::string();
}

std::int64_t number(const Json &json, const std::string &where)
{
    if (!json.is_number_integer())
        refuse(where + " is no whole number");
    return json.get<std::int64_t>();
}

void refuseOthers(const Json &json, const std::set<std::string> &known, const std::string &where)
{
    for (const auto &[name, value] : json.items())
        if (!known.contains(name))
            refuse(where + " has \"" + strict_json::clipped(name) +
                   "\", which this program does not know; a newer one may");
}

/// Which columns of each table are numbers, from the structure itself.
class ColumnTypes {
public:
    explicit ColumnTypes(Database &database)
    {
        for (const VersionTable *table : versionTables()) {
            Statement columns = database.prepare("SELECT name, type FROM pragma_table_info(?1)");
            columns.bind(1, table->name());
            while (columns.step())
                if (columns.text(1) == "INTEGER")
                    m_numbers.insert(table->name() + '.' + columns.text(0));
        }
    }
    [[nodiscard]] bool isNumber(const VersionTable &table, const std::string &column) const
    {
        const Carried carried = carriedAs(column);
        return (carried == Carried::AsItIs || carried == Carried::Deed) &&
               m_numbers.contains(table.name() + '.' + column);
    }

private:
    std::set<std::string> m_numbers;
};

class Reader {
public:
    Reader(const Json &document, Database &types) : m_document(&document), m_database(&types) {}

    Handed read()
    {
        readHead();
        if (const std::string where = m_vouches ? alteredDeed(*m_document) : std::string(); !where.empty())
            refuse(where);
        m_types.emplace(*m_database);
        for (const Json &deed : member(*m_document, "deeds", Json::value_t::array, "the document"))
            readDeed(deed);
        if (m_handed.deeds.empty() || m_handed.deeds[0].rows.empty() ||
            m_handed.deeds[0].rows[0].table != &instrumentTable())
            refuse("the document does not begin with the instrument being taken in");
        for (const Json &picture : member(*m_document, "pictures", Json::value_t::array, "the document"))
            readPicture(picture);
        checkPicturesNamed();
        return std::move(m_handed);
    }

private:
    void readHead()
    {
        if (text(*m_document, "format", "the document") != "hammerline-hand-over")
            refuse("this is no instrument handed over; \"format\" must be \"hammerline-hand-over\"");
        checkVersion();
        std::set<std::string> known{"format", "version", "instrument", "deeds", "pictures"};
        if (m_vouches)
            known.insert({"digest", "without"});
        refuseOthers(*m_document, known, "the document");
        m_handed.instrument = text(*m_document, "instrument", "the document");
        if (!isUid(m_handed.instrument))
            refuse("\"instrument\" is no uid; it has 32 digits from 0 to f");
        m_handed.saleLeftOut = m_document->contains("without");
        if (m_handed.saleLeftOut && (*m_document)["without"] != Json::array({"sale"}))
            refuse("the document: \"without\" is not what it should be");
    }

    void checkVersion()
    {
        const std::int64_t version =
            number(member(*m_document, "version", Json::value_t::number_integer, "the document"), "\"version\"");
        if (version != 1 && version != 2)
            refuse("version " + std::to_string(version) + " is none that this program knows; it knows 1 and 2");
        m_vouches = version == 2;
    }

    void readDeed(const Json &json)
    {
        const auto expected = static_cast<DeedId>(m_handed.deeds.size()) + 1;
        const std::string where = placeOfDeed(m_handed.deeds.size() + 1);
        HandedDeed handed;
        Deed &deed = handed.deed;
        std::set<std::string> known{"deed", "at", "person", "name", "subject", "reason", "undoes", "pass", "rows"};
        if (m_vouches)
            known.insert("digest");
        refuseOthers(json, known, where);
        if (number(member(json, "deed", Json::value_t::number_integer, where), where) != expected)
            refuse(where + " is missing or out of order");
        deed.id = expected;
        const auto at = readings::parseRfc3339(text(json, "at", where));
        if (!at)
            refuse(where + ": \"at\" is no moment");
        deed.stamp = {at.value(), text(json, "person", where)};
        deed.name = text(json, "name", where);
        deed.subject = text(json, "subject", where);
        deed.reason = textOrNone(json, "reason", where);
        if (json.contains("undoes"))
            deed.undoes = earlier(number(json["undoes"], where), where);
        handed.pass = textOrNone(json, "pass", where);
        for (const Json &row : member(json, "rows", Json::value_t::array, where))
            readRow(row, handed, where);
        if (!handed.pass.empty() && !m_passes.contains(handed.pass))
            refuse(where + " is about a pass that the document does not have");
        if (m_handed.saleLeftOut && isOfSale(handed.rows))
            refuse(where + " is of the sale, which the document says is left out");
        m_handed.deeds.push_back(std::move(handed));
    }

    DeedId earlier(DeedId found, const std::string &where) const
    {
        if (found < 1 || found > std::ssize(m_handed.deeds))
            refuse(where + " refers to a deed that is not before it");
        return found;
    }

    void readRow(const Json &json, HandedDeed &deed, const std::string &where)
    {
        const std::string name = text(json, "table", where);
        const auto tables = versionTables();
        const auto table = std::ranges::find(tables, name, [](const VersionTable *each) { return each->name(); });
        if (table == tables.end() || (*table)->scope() == Scope::Study)
            refuse(where + " writes to \"" + name + "\", which this program does not know; a newer one may");
        Row row{*table, {}};
        std::size_t used = 1;
        for (const std::string &column : (*table)->columns()) {
            row.cells.push_back(json.contains(column) ? cell(json[column], **table, column, where) : Cell());
            used += json.contains(column) ? 1u : 0u;
        }
        if (used != json.size())
            refuse(where + " has more in its row of \"" + name + "\" than this program knows; a newer one may");
        accept(row, deed, where);
        deed.rows.push_back(std::move(row));
    }

    Cell cell(const Json &json, const VersionTable &table, const std::string &column, const std::string &where) const
    {
        const std::string what = where + ": " + table.name() + ", " + column;
        if (m_types->isNumber(table, column))
            return carriedAs(column) == Carried::Deed ? earlier(number(json, what), where) : number(json, what);
        if (!json.is_string())
            refuse(what + " is no text");
        auto said = json.get<std::string>();
        const Carried carried = carriedAs(column);
        if (carried == Carried::Instrument && said != m_handed.instrument)
            refuse(what + " is another instrument");
        if (carried == Carried::Quantity && !catalogue::findQuantity(said))
            refuse(what + " is no quantity");
        if (carried == Carried::Pass && table.name() != "pass" && !m_passes.contains(said))
            refuse(what + " is a pass that the document does not have");
        return said;
    }

    /// Keys and versions as a logbook has them: each thing from version 1 on without a gap.
    void accept(const Row &row, const HandedDeed &deed, const std::string &where)
    {
        for (std::size_t column = 0; column < row.table->firstValue(); ++column)
            if (std::holds_alternative<std::monostate>(row.cells[column]))
                refuse(where + ": " + row.table->name() + " lacks its " + row.table->columns()[column]);
        if (row.table == &passTable()) {
            if (!isUid(std::get<std::string>(row.cells[0])) || (!row.withdrawn() && row.value(0) != row.cells[0]))
                refuse(where + ": the pass has no uid");
            m_passes.insert(std::get<std::string>(row.cells[0]));
        }
        if (row.table->scope() == Scope::Pass ? row.cells[0] != Cell(deed.pass) : false)
            refuse(where + " writes to a pass that it is not about");
        std::int64_t &newest = m_newest[{row.table, {row.keys().begin(), row.keys().end()}}];
        if (row.version() != newest + 1)
            refuse(where + ": " + describe(row) + " does not follow version " + std::to_string(newest));
        newest = row.version();
        if (const std::string unknown = unknownIn(row); !unknown.empty())
            refuse(where + ": " + unknown);
    }

    void readPicture(const Json &json)
    {
        const std::string digest = text(json, "digest", "a picture");
        refuseOthers(json, {"digest", "jpeg_base64"}, "picture " + strict_json::clipped(digest));
        const auto jpeg = fromBase64(text(json, "jpeg_base64", "a picture"));
        if (!jpeg || pictureDigest(*jpeg) != digest)
            refuse("picture " + strict_json::clipped(digest) + ": " + altered);
        if (const auto size = dossier::sizeOfPicture(*jpeg); !size)
            refuse("picture " + digest + ": " + size.fault().problem);
        m_handed.pictures[digest] = *jpeg;
    }

    void checkPicturesNamed() const
    {
        std::set<std::string> named;
        for (const HandedDeed &deed : m_handed.deeds)
            for (const Row &row : deed.rows)
                if (row.table == &photographTable() && !row.withdrawn())
                    named.insert(std::get<std::string>(row.value(0)));
        for (const std::string &digest : named)
            if (!m_handed.pictures.contains(digest))
                refuse("picture " + digest + " is missing");
        if (named.size() != m_handed.pictures.size())
            refuse("there is a picture that no photograph names");
    }

    const Json *m_document;
    bool m_vouches = true; ///< documents of version 1 had no digests
    Database *m_database;
    std::optional<ColumnTypes> m_types; ///< asked for once the deeds hold: it takes a look at the whole structure
    Handed m_handed;
    std::set<std::string> m_passes;
    std::map<std::pair<const VersionTable *, std::vector<Cell>>, std::int64_t> m_newest;
};

/// What the digests of the deeds do not cover: the head, pictures, and deeds cut off at the end.
void checkWhole(const Json &document, const std::string &digest, std::string_view text)
{
    if (document["digest"] != Json(digest))
        refuse(std::string("the document ") + altered +
               ": its deeds hold, but its head, its last deeds or its pictures are not those of its digest");
    if (const std::size_t line = firstLineOff(document, text); line != 0)
        throw Refusal{"this line is not written as it was when it was handed over, though it says the same; give the "
                      "file as it was made",
                      line};
}

} // namespace

outcome::Outcome<Read> readHanded(const std::string &text, const std::string &file, Database &types,
                                  const SetCheck &setFaults)
{
    const auto tree = readHandedTree(text, file);
    if (!tree)
        return tree.faults();
    try {
        const Json &document = tree.value();
        Read read{Reader(document, types).read(), {}};
        if (document["version"] != Json(1)) {
            read.digest = digestOfDocument(document);
            static_cast<void>(member(document, "digest", Json::value_t::string, "the document"));
            checkWhole(document, read.digest, text);
        }
        if (const std::string misfit = misfitIn(read.handed, setFaults); !misfit.empty())
            refuse(misfit);
        return read;
    } catch (const Refusal &refusal) {
        return outcome::Fault{file, refusal.line, refusal.problem};
    }
}

} // namespace hammerline::logbook::inside
