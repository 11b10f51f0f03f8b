#include "command_line/inside/logbook_input.h"

#include "exchange/csv_text.h"
#include "exchange/tolerance_json.h"
#include "logbook/daily_backup.h"

#include <algorithm>
#include <charconv>
#include <filesystem>

namespace hammerline::command_line {

outcome::Outcome<std::int64_t> parseId(const std::string &option, const std::string &text)
{
    std::int64_t id = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), id);
    if (error != std::errc() || end != text.data() + text.size() || id < 1)
        return outcome::Fault{.problem = "--" + option + ": \"" + text +
                                         "\" is no number of one; write a whole number from 1 up"};
    return id;
}

outcome::Outcome<instrument::Instrument> findInstrument(const logbook::Logbook &book, const std::string &idText)
{
    const auto id = parseId("instrument", idText);
    if (!id)
        return id.faults();
    if (auto found = book.instrument(id.value()))
        return *std::move(found);
    return outcome::Fault{.file = book.path(),
                          .problem =
                              "no instrument " + idText + " is in this logbook; hammerline instruments lists them"};
}

std::optional<readings::Pass> newestReadPass(const logbook::Logbook &book, instrument::InstrumentId instrument)
{
    auto passes = book.passes(instrument);
    std::ranges::reverse(passes);
    const auto found =
        std::ranges::find_if(passes, [&](const readings::Pass &pass) { return book.readingCount(pass.id) > 0; });
    return found == passes.end() ? std::nullopt : std::optional(*found);
}

outcome::Outcome<std::optional<tolerance::ToleranceSet>> chosenSet(const instrument::Instrument &instrument)
{
    if (instrument.toleranceText.empty())
        return std::optional<tolerance::ToleranceSet>();
    auto set = exchange::readToleranceSet(instrument.toleranceText, "tolerance set of \"" + instrument.name + "\"");
    if (!set)
        return set.faults();
    return std::optional(std::move(set).value());
}

std::optional<outcome::Fault> noLogbookAt(const std::string &path, const std::string &advice)
{
    std::error_code unseen;
    const auto found = std::filesystem::symlink_status(path, unseen).type();
    if (found != std::filesystem::file_type::not_found)
        return std::nullopt;
    return outcome::Fault{.file = path, .problem = "no logbook is there; " + advice};
}

logbook::Logbook openToRead(const std::string &path)
{
    return logbook::Logbook::open(path, logbook::Access::ReadOnly);
}

std::vector<outcome::Fault> clockGoneBack(const logbook::Logbook &book, readings::Instant now)
{
    // The last entries may be of the clock gone back themselves.
    constexpr int most = 2000;
    const auto deeds = book.deeds(std::max<logbook::DeedId>(0, book.newestDeed() - most), most);
    const auto newest = std::ranges::max_element(deeds, {}, [](const logbook::Deed &deed) { return deed.stamp.at; });
    if (newest == deeds.end() || newest->stamp.at <= now)
        return {};
    return {{.file = book.path(),
             .problem = "the clock of this machine says " + readings::rfc3339(now) +
                        ", but the newest entry of the logbook is of " + readings::rfc3339(newest->stamp.at) +
                        "; passes are ordered by their time, so what is written now stands before that entry. See "
                        "that the clock is right"}};
}

std::optional<outcome::Fault> unsoundText(const std::string &option, const std::string &text)
{
    if (!exchange::isCleanUtf8(text))
        return outcome::Fault{.problem = "--" + option + ": the text is not written in UTF-8; write it so"};
    for (std::size_t at = 0; at < text.size(); ++at) {
        const auto byte = static_cast<unsigned char>(text[at]);
        const bool second = byte == 0xC2 && at + 1 < text.size() && static_cast<unsigned char>(text[at + 1]) < 0xA0;
        if (byte >= 0x20 && byte != 0x7f && !second)
            continue;
        constexpr char digits[] = "0123456789ABCDEF";
        const unsigned code = second ? static_cast<unsigned char>(text[at + 1]) : byte;
        return outcome::Fault{.problem = "--" + option + ": the text holds the control character U+00" +
                                         std::string{digits[code >> 4], digits[code & 0xf]} +
                                         "; write it on one line, in letters, marks and blanks alone"};
    }
    return std::nullopt;
}

std::vector<outcome::Fault> backUpOfTheDay(const logbook::Logbook &book, readings::Instant now)
{
    if (const auto trouble = logbook::dailyBackupTrouble(book, now))
        return {{.problem = *trouble}};
    if (logbook::hasDailyBackup(book.path(), now))
        return {};
    return {{.file = logbook::backupFolder(book.path()),
             .problem = "the backup of the day was not made: no file can be written there; the logbook itself is as "
                        "it should be"}};
}

} // namespace hammerline::command_line
