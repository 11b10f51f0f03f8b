// Published figures of the trade against the built-in tolerance sets. Each row of data/published_lengths.csv and
// data/published_touch_weights.csv names its source (title and address). Whatever quantity a set judges, each set for
// that kind of action either holds the figure inside its limits at the notes of its zone, or
// data/figures_not_followed.csv says which source the set follows instead, and why.
#include "exchange/built_in.h"
#include "exchange/exchange.h"
#include "exchange/inside/csv_rows.h"

#include <gmock/gmock.h>

#include <map>
#include <set>

namespace hammerline::reference {
namespace {

using catalogue::Quantity;
using Record = std::map<std::string, std::string>;

std::vector<Record> recordsOf(const std::string &name)
{
    const std::string text = exchange::readFile(HAMMERLINE_SOURCE_DIR "/tests/reference/data/" + name).value();
    exchange::CsvRows rows(text);
    exchange::CsvRow row;
    EXPECT_TRUE(rows.next(row)) << name;
    const std::vector<std::string> head(row.fields.begin(), row.fields.end());
    std::vector<Record> records;
    while (rows.next(row)) {
        EXPECT_EQ(row.fields.size(), head.size()) << name << ':' << row.line;
        Record record;
        for (std::size_t at = 0; at < head.size(); ++at)
            record[head[at]] = std::string(row.fields[at]);
        records.push_back(record);
    }
    return records;
}

std::optional<Quantity> quantityOf(const std::string &published)
{
    static const std::map<std::string, Quantity> names{{"key_dip", Quantity::Dip},
                                                       {"blow_distance", Quantity::Blow},
                                                       {"let_off", Quantity::LetOff},
                                                       {"drop", Quantity::Drop},
                                                       {"aftertouch", Quantity::Aftertouch},
                                                       {"check_distance", Quantity::Checking},
                                                       {"lost_motion", Quantity::LostMotion},
                                                       {"downweight", Quantity::DownWeight},
                                                       {"upweight", Quantity::UpWeight}};
    const auto place = names.find(published);
    return place == names.end() ? std::nullopt : std::optional(place->second);
}

bool has(const std::string &text, const std::string &part)
{
    return text.find(part) != std::string::npos;
}

/// Both ends where the zone is the whole keyboard: limits are straight between them, and so is a figure for all.
std::vector<keyboard::Note> notesOf(const std::string &zone)
{
    if (zone == "bass" || zone == "lowest notes")
        return {keyboard::Note(1)};
    if (has(zone, "treble") || zone == "top notes")
        return {keyboard::Note(88)};
    if (has(zone, "note 10"))
        return {keyboard::Note(10)};
    return {keyboard::Note(1), keyboard::Note(88)};
}

/// Figures for long or short grands speak of that set alone.
bool concerns(const Record &figure, const std::string &id, catalogue::ActionKind action)
{
    const std::string &kind = figure.at("action_type");
    const std::string &zone = figure.at("zone");
    if (!kind.starts_with("any") && !kind.starts_with(catalogue::idOf(action)))
        return false;
    if (has(zone, "over 2 m") || has(zone, "models C D") || has(zone, "B and D"))
        return id != "grand-under-2m";
    if (has(zone, "under 2 m") || has(zone, "models S") || has(zone, "S M L"))
        return id != "grand-over-2m";
    return true;
}

std::vector<units::Amount> valuesOf(const Record &figure, units::Dimension dimension)
{
    const std::string unit = std::string("_") + units::displaySymbol(dimension);
    std::vector<units::Amount> values;
    for (const std::string key : {"low", "target", "high"}) {
        const std::string &text = figure.at(key + unit);
        if (!text.empty())
            values.push_back(units::Amount::fromDisplay(dimension, std::stod(text)));
    }
    return values;
}

bool holds(const tolerance::ToleranceSet &set, Quantity quantity, const Record &figure)
{
    for (const keyboard::Note note : notesOf(figure.at("zone"))) {
        tolerance::Limits limits = *tolerance::limitsAt(set, quantity, note);
        for (const units::Amount value : valuesOf(figure, catalogue::infoOf(quantity).dimension)) {
            if (tolerance::judgeValue(value, limits) != tolerance::Status::In)
                return false;
        }
    }
    return true;
}

/// "S05 / key_dip / Kawai KG-8 / grand-over-2m" of every figure that a set does not hold.
std::set<std::string> figuresNotHeld(const std::string &table)
{
    std::set<std::string> names;
    for (const Record &figure : recordsOf(table)) {
        const auto quantity = quantityOf(figure.at("quantity"));
        for (const auto &builtIn : exchange::builtInToleranceSets()) {
            const tolerance::ToleranceSet set = exchange::findToleranceSet(builtIn.id).value().set;
            if (quantity && set.entries.contains(*quantity) && concerns(figure, builtIn.id, set.action) &&
                !holds(set, *quantity, figure))
                names.insert(figure.at("source_id") + " / " + figure.at("quantity") + " / " + figure.at("zone") +
                             " / " + builtIn.id);
        }
    }
    return names;
}

std::set<std::string> figuresNotFollowed()
{
    std::set<std::string> names;
    for (const Record &row : recordsOf("figures_not_followed.csv")) {
        EXPECT_FALSE(row.at("reason").empty()) << row.at("source_id");
        std::istringstream sets(row.at("sets"));
        for (std::string id; sets >> id;)
            names.insert(row.at("source_id") + " / " + row.at("quantity") + " / " + row.at("zone") + " / " + id);
    }
    return names;
}

TEST(PublishedFigures, eachIsHeldByTheSetsOfItsActionOrListedWithTheSourceThatTheyFollow)
{
    std::set<std::string> notHeld = figuresNotHeld("published_lengths.csv");
    notHeld.merge(figuresNotHeld("published_touch_weights.csv"));
    EXPECT_THAT(notHeld, testing::ContainerEq(figuresNotFollowed()));
}

TEST(PublishedFigures, aFigureOutsideWouldBeFound)
{
    const tolerance::ToleranceSet set = exchange::findToleranceSet("full-upright").value().set;
    Record figure{{"low_mm", ""}, {"target_mm", "47"}, {"high_mm", ""}, {"zone", "all"}};
    EXPECT_TRUE(holds(set, Quantity::Blow, figure));
    figure["high_mm"] = "48.001";
    EXPECT_FALSE(holds(set, Quantity::Blow, figure));
}

TEST(PublishedFigures, everySourceThatASetNamesStandsInTheTables)
{
    std::set<std::string> known;
    for (const std::string table : {"published_lengths.csv", "published_touch_weights.csv"}) {
        for (const Record &figure : recordsOf(table))
            known.insert("(" + figure.at("source_id") + ")");
    }
    for (const auto &builtIn : exchange::builtInToleranceSets()) {
        for (std::size_t at = 0; (at = builtIn.text.find("(S", at)) != std::string::npos; ++at) {
            const std::string id = builtIn.text.substr(at, builtIn.text.find_first_of(",) ", at) - at) + ")";
            EXPECT_TRUE(known.contains(id) || id == "(S29)" || id == "(S39)") << builtIn.id << " names " << id;
        }
    }
}

} // namespace
} // namespace hammerline::reference
