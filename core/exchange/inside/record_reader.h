#pragma once
// As much of a record's JSON as it takes to judge it again.

#include "exchange/inside/json_reader.h"
#include "keyboard/keyboard.h"
#include "readings/readings.h"
#include "sale_record/sale_record.h"
#include "tolerance/tolerance.h"

namespace hammerline::exchange {

struct WrittenPart {
    std::vector<readings::Reading> takes{};
    Json verdicts = Json::array();
};

struct WrittenRecord {
    std::string instrumentUid{};
    std::string instrumentName{};
    readings::Instant issued{};
    int revision = 1;
    sale_record::HistoryPin history{};
    catalogue::ActionKind action{};
    keyboard::Compass compass{};
    keyboard::Sections sections{};
    tolerance::ToleranceSet set{};
    WrittenPart asLeft{};
    std::optional<WrittenPart> asFound{};
    std::optional<WrittenPart> recheck{};
    Json exceptions = Json::array();
    std::optional<double> judgedPairs{};
    std::optional<double> pairsInside{};
};

[[nodiscard]] outcome::Outcome<WrittenRecord> readRecord(std::string_view json, const std::string &file);

} // namespace hammerline::exchange
