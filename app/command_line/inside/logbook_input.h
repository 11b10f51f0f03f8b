#pragma once
// What several commands ask of a logbook: the instrument that --instrument names, its newest pass, the set it is judged
// by.

#include "exchange/built_in.h"
#include "logbook/logbook.h"
#include "outcome/outcome.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace hammerline::command_line {

/// A whole number from 1 up; `option` is to blame.
[[nodiscard]] outcome::Outcome<std::int64_t> parseId(const std::string &option, const std::string &text);

[[nodiscard]] outcome::Outcome<instrument::Instrument> findInstrument(const logbook::Logbook &book,
                                                                      const std::string &idText);

/// The newest pass with a reading in it.
[[nodiscard]] std::optional<readings::Pass> newestReadPass(const logbook::Logbook &book,
                                                           instrument::InstrumentId instrument);

/// The set that was chosen for the instrument, from its own stored text. Absent where none was chosen; a fault
/// where the text cannot be read.
[[nodiscard]] outcome::Outcome<std::optional<tolerance::ToleranceSet>>
chosenSet(const instrument::Instrument &instrument);

/// Nothing stands at `path`; `advice` says what to do. Absent: something does, and opening it says whether it is one.
[[nodiscard]] std::optional<outcome::Fault> noLogbookAt(const std::string &path, const std::string &advice);

/// Opens for reading alone: the logbook is not changed, and nothing is left beside it.
[[nodiscard]] logbook::Logbook openToRead(const std::string &path);

/// For a command that is about to write: a warning where the machine's clock is behind the logbook's newest entry,
/// since passes are ordered by their time.
[[nodiscard]] std::vector<outcome::Fault> clockGoneBack(const logbook::Logbook &book, readings::Instant now);

/// The fault of a name or remark given as --`option`: not UTF-8, or with control characters, which would steer a
/// terminal and have no place in files of other kinds. Absent: it is sound.
[[nodiscard]] std::optional<outcome::Fault> unsoundText(const std::string &option, const std::string &text);

/// For a command that wrote: the backup of the day where there is none yet (logbook/daily_backup.h). A warning where it
/// failed, which takes nothing back.
[[nodiscard]] std::vector<outcome::Fault> backUpOfTheDay(const logbook::Logbook &book, readings::Instant now);

} // namespace hammerline::command_line
