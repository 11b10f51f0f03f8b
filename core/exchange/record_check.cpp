#include "exchange/record_check.h"

#include "exchange/inside/answer_parts.h"
#include "exchange/inside/record_reader.h"
#include "exchange/readings_csv.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <tuple>

namespace hammerline::exchange {
namespace {

using PairName = std::pair<std::string, int>; ///< quantity, note
using Verdicts = std::map<PairName, Json>;
using Lines = std::vector<std::string>;

void say(Lines &lines, const std::string &line)
{
    if (lines.size() < mostDisagreements)
        lines.push_back(line);
}

/// What a value is, short enough for a line; the text comes out of a file.
std::string shown(const Json &value)
{
    return value.dump(-1, ' ', true, Json::error_handler_t::replace).substr(0, 60);
}

std::string nameOf(const PairName &pair)
{
    return pair.first.substr(0, 60) + ", " + keyboard::Note(pair.second).name();
}

/// Absent where it names none, or a note that no keyboard has.
std::optional<PairName> pairNameOf(const Json &verdict)
{
    if (!verdict.is_object() || !verdict.contains("quantity") || !verdict["quantity"].is_string() ||
        !verdict.contains("note") || !verdict["note"].is_number_integer())
        return std::nullopt;
    const auto note = verdict["note"].get<std::int64_t>();
    if (note < keyboard::Note::lowest || note > keyboard::Note::highest)
        return std::nullopt;
    return PairName(verdict["quantity"].get<std::string>(), static_cast<int>(note));
}

/// The written verdicts by pair; one that names no pair, or a pair twice, is said.
Verdicts byPair(const Json &list, const std::string &where, Lines &lines)
{
    Verdicts verdicts;
    for (const Json &verdict : list) {
        const auto pair = pairNameOf(verdict);
        if (!pair)
            say(lines, where + ": a verdict names no note or no quantity: " + shown(verdict));
        else if (!verdicts.emplace(*pair, verdict).second)
            say(lines, where + ", " + nameOf(*pair) + ": two verdicts stand in the record");
    }
    return verdicts;
}

Verdicts byPair(const tolerance::Judgement &judgement)
{
    Verdicts verdicts;
    for (const tolerance::Verdict &verdict : judgement.verdicts)
        verdicts.emplace(PairName(catalogue::idOf(verdict.quantity), verdict.note.number()),
                         Json(verdictTree(verdict)));
    return verdicts;
}

/// The first thing in which a written verdict differs from the one that follows; empty: nothing. Probabilities are left
/// out: their last digits are the machine's.
std::string differenceOf(const Json &written, const Json &follows)
{
    static constexpr std::array keys{"status",       "uneven",      "value_mm", "value_g",   "low_mm",
                                     "low_g",        "high_mm",     "high_g",   "target_mm", "target_g",
                                     "deviation_mm", "deviation_g", "takes"};
    const Json nothing;
    const auto at = [&nothing](const Json &json, const char *key) -> const Json & {
        const auto found = json.find(key);
        return found == json.end() ? nothing : *found;
    };
    for (const char *key : keys)
        if (at(written, key) != at(follows, key))
            return std::string(key) + ": the record says " + shown(at(written, key)) + ", its readings give " +
                   shown(at(follows, key));
    return {};
}

void comparePart(const WrittenPart &part, const tolerance::Judgement &judgement, const std::string &where,
                 RecordCheck &check)
{
    const Verdicts written = byPair(part.verdicts, where, check.disagreements);
    const Verdicts follow = byPair(judgement);
    for (const auto &[pair, verdict] : follow) {
        const auto found = written.find(pair);
        const std::string difference =
            found == written.end() ? "no verdict stands in the record" : differenceOf(found->second, verdict);
        if (!difference.empty())
            say(check.disagreements, where + ", " + nameOf(pair) + ": " + difference);
        ++check.verdicts;
    }
    for (const auto &[pair, verdict] : written)
        if (!follow.contains(pair))
            say(check.disagreements, where + ", " + nameOf(pair) + ": a verdict follows from no reading");
}

tolerance::Judgement judgementOf(const WrittenPart &part, const WrittenRecord &record)
{
    return tolerance::judge(readings::meansOf(part.takes), record.set, record.compass, record.sections);
}

/// What was not read again makes no verdict.
tolerance::Judgement recheckOf(const WrittenPart &part, const WrittenRecord &record)
{
    tolerance::Judgement judgement = judgementOf(part, record);
    std::erase_if(judgement.verdicts,
                  [](const tolerance::Verdict &verdict) { return verdict.status == tolerance::Status::Missing; });
    return judgement;
}

void compareCount(const std::optional<double> &written, std::ptrdiff_t follows, const std::string &what, Lines &lines)
{
    if (written && *written != static_cast<double>(follows))
        say(lines, what + ": the record says " + shown(*written) + ", its readings give " + std::to_string(follows));
}

bool isJudged(const tolerance::Verdict &verdict)
{
    return verdict.status != tolerance::Status::Unjudged;
}

bool isInside(const tolerance::Verdict &verdict)
{
    return verdict.status == tolerance::Status::In || verdict.status == tolerance::Status::Marginal;
}

bool isException(const tolerance::Verdict &verdict)
{
    return isJudged(verdict) && (verdict.status != tolerance::Status::In || verdict.uneven);
}

void compareExceptions(const WrittenRecord &record, const tolerance::Judgement &judgement, Lines &lines)
{
    const Verdicts written = byPair(record.exceptions, "exceptions", lines);
    std::set<PairName> follow;
    for (const tolerance::Verdict &verdict : judgement.verdicts)
        if (isException(verdict))
            follow.emplace(catalogue::idOf(verdict.quantity), verdict.note.number());
    for (const PairName &pair : follow)
        if (!written.contains(pair))
            say(lines, "exceptions, " + nameOf(pair) + ": is left out");
    for (const auto &[pair, verdict] : written)
        if (!follow.contains(pair))
            say(lines, "exceptions, " + nameOf(pair) + ": is none by the readings");
}

std::vector<std::tuple<readings::Place, units::Amount>> valuesOf(const std::vector<readings::Reading> &takes)
{
    std::vector<std::tuple<readings::Place, units::Amount>> values;
    for (const readings::Reading &reading : takes)
        values.emplace_back(reading.place, reading.value);
    std::ranges::sort(values, {}, [](const auto &one) { return std::get<0>(one); });
    return values;
}

void compareCsv(const std::optional<std::string_view> &csv, const std::string &file, const WrittenPart &part,
                const WrittenRecord &record, Lines &lines)
{
    if (!csv)
        return;
    const auto readings = readReadingsCsv(*csv, {.file = file, .action = record.action, .compass = record.compass});
    if (!readings)
        say(lines, readings.fault().text());
    else if (valuesOf(readings.value()) != valuesOf(part.takes))
        say(lines, file + ": holds other readings than record.json");
}

void compareAll(const WrittenRecord &record, const RecordFiles &files, RecordCheck &check)
{
    const tolerance::Judgement left = judgementOf(record.asLeft, record);
    comparePart(record.asLeft, left, "as left", check);
    if (record.asFound)
        comparePart(*record.asFound, judgementOf(*record.asFound, record), "as found", check);
    if (record.recheck)
        comparePart(*record.recheck, recheckOf(*record.recheck, record), "recheck", check);
    Lines &lines = check.disagreements;
    compareCount(record.judgedPairs, std::ranges::count_if(left.verdicts, isJudged), "judged_pairs", lines);
    compareCount(record.pairsInside, std::ranges::count_if(left.verdicts, isInside), "pairs_inside", lines);
    compareExceptions(record, left, lines);
    compareCsv(files.readingsCsv, "readings.csv", record.asLeft, record, lines);
    if (record.asFound)
        compareCsv(files.asFoundCsv, "readings-as-found.csv", *record.asFound, record, lines);
    if (record.recheck)
        compareCsv(files.recheckCsv, "readings-recheck.csv", *record.recheck, record, lines);
}

} // namespace

outcome::Outcome<RecordCheck> checkRecord(const RecordFiles &files)
{
    const auto record = readRecord(files.recordJson, "record.json");
    if (!record)
        return record.faults();
    RecordCheck check;
    check.instrumentUid = record.value().instrumentUid;
    check.instrumentName = record.value().instrumentName;
    check.issued = record.value().issued;
    check.revision = record.value().revision;
    check.history = record.value().history;
    compareAll(record.value(), files, check);
    return check;
}

} // namespace hammerline::exchange
