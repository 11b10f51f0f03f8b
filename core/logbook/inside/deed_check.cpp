#include "logbook/inside/deed_check.h"

#include "logbook/inside/deed_digest.h"

#include <map>

namespace hammerline::logbook::inside {

namespace {

DeedDigest::Result digestOf(const Deed &deed, const std::vector<Row> &rows, const std::string &previous)
{
    DeedDigest digest(deed, previous);
    for (const Row &row : rows)
        digest.add(row);
    return digest.finish();
}

std::map<std::string, int> countMarks(const std::string &marks)
{
    std::map<std::string, int> counts;
    for (std::size_t at = 0; at < marks.size(); at += markSize)
        ++counts[marks.substr(at, markSize)];
    return counts;
}

std::string entryName(const Deed &deed)
{
    return "entry (" + deed.name + (deed.subject.empty() ? "" : ", " + deed.subject) + ')';
}

/// Rows that the entry has no mark for; takes the others' marks out of `marks`.
std::vector<const Row *> unknownRows(const std::vector<Row> &rows, const std::string &found,
                                     std::map<std::string, int> &marks)
{
    std::vector<const Row *> unknown;
    for (std::size_t index = 0; index < rows.size(); ++index) {
        const auto known = marks.find(found.substr(index * markSize, markSize));
        if (known != marks.end() && known->second > 0)
            --known->second;
        else
            unknown.push_back(&rows[index]);
    }
    return unknown;
}

/// The marks tell which rows are not those that were written, and how many are gone.
void reportRows(const StoredDeed &stored, const std::vector<Row> &rows, const std::string &found,
                std::vector<Alteration> &alterations)
{
    auto marks = countMarks(stored.marks);
    const auto unknown = unknownRows(rows, found, marks);
    std::ptrdiff_t missing = 0;
    for (const auto &[mark, count] : marks)
        missing += count;
    const bool paired = missing == std::ssize(unknown);
    for (const Row *row : unknown)
        alterations.push_back({stored.deed.id, row->table->name(), describe(*row),
                               paired        ? "was altered"
                               : missing > 0 ? "was altered or added"
                                             : "was added"});
    if (missing > std::ssize(unknown))
        alterations.push_back({stored.deed.id,
                               {},
                               {},
                               std::to_string(missing - std::ssize(unknown)) + " of the " +
                                   std::to_string(stored.marks.size() / markSize) + " rows of " +
                                   entryName(stored.deed) + " were removed"});
}

} // namespace

DigestsBefore beforeTheFirst()
{
    return {std::string(digestSize, '\0'), std::string(digestSize, '\0')};
}

DigestsBefore checkDeed(const StoredDeed &stored, const std::vector<Row> &rows, const DigestsBefore &digestsBefore,
                        std::vector<Alteration> &found)
{
    auto result = digestOf(stored.deed, rows, digestsBefore.stored);
    if (result.digest != stored.digest && digestsBefore.computed != digestsBefore.stored)
        if (auto other = digestOf(stored.deed, rows, digestsBefore.computed); other.digest == stored.digest)
            result = std::move(other);
    const bool chained = !digestsBefore.stored.empty();
    const bool proved = chained && result.digest == stored.digest;
    const bool sameMarks = result.marks == stored.marks;
    if (!sameMarks && !proved)
        reportRows(stored, rows, result.marks, found);
    else if (!sameMarks || (chained && !proved))
        found.push_back({stored.deed.id, "history", {}, entryName(stored.deed) + " was altered"});
    return {stored.digest, result.digest};
}

Alteration strayed(DeedId deed, const Row &row)
{
    return {deed, row.table->name(), describe(row),
            "belongs to no deed that wrote it: was added or altered, or the deed's entry was removed"};
}

} // namespace hammerline::logbook::inside
