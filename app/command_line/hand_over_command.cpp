// hammerline hand-over and take-over: one instrument out of one logbook into another.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/logbook_input.h"
#include "command_line/inside/plain_table.h"
#include "command_line/inside/verdict_words.h"

#include "exchange/exchange.h"
#include "exchange/tolerance_json.h"
#include "logbook/hand_over.h"
#include "seal/key_store.h"

#include <filesystem>

namespace hammerline::command_line {
namespace {

std::string digestLine(const std::string &digest)
{
    return "Digest: " + seal::groupedFingerprint(digest) + '\n';
}

class HandOverCommand : public Command {
public:
    std::string name() const override { return "hand-over"; }
    std::string summary() const override { return "write one instrument, with its history and photographs, as JSON"; }

    void declare(Options &options) override
    {
        options.positional("LOGBOOK", "The logbook", m_logbook);
        options.value("instrument", "ID", "Number of the instrument, see hammerline instruments", m_instrument);
        options.value("to", "FILE.json", "The file to write", m_to);
        options.flag("without-sale",
                     "Leave out buyer, price, what is noted of the sale and that it was delivered (told if that stays "
                     "since more was written of the instrument later); the owner's name goes along. A later whole "
                     "file brings the rest",
                     m_withoutSale);
        options.flag("force", "Overwrite a file that is there", m_force);
    }

    outcome::Outcome<Answer> answer(const Surroundings &) override
    {
        const auto book = openToRead(m_logbook);
        const auto instrument = findInstrument(book, m_instrument);
        if (!instrument)
            return instrument.faults();
        const auto document = book.handOver(instrument.value().id, m_withoutSale ? logbook::HandedSale::StaysHere
                                                                                 : logbook::HandedSale::GoesAlong);
        if (!document)
            return document.faults();
        const auto written =
            exchange::writeFile(m_to, document.value(), m_force ? exchange::Overwrite::Yes : exchange::Overwrite::No);
        if (!written)
            return written.faults();
        return Answer{.text = withoutControls(instrument.value().name) + " is in " + withoutControls(m_to) +
                              saleTold(document.value()) + digestLine(logbook::digestIn(document.value())) +
                              "Tell the digest to whoever takes it over, by another way than the file.\n"};
    }

private:
    [[nodiscard]] std::string saleTold(const std::string &document) const
    {
        if (!m_withoutSale)
            return ", with buyer and price as far as they were noted.\n";
        return logbook::tellsOfDelivery(document)
                   ? ", without buyer and price. That it was delivered is in its history all the same: more was "
                     "written of the instrument since, which builds on that.\n"
                   : ", without buyer and price.\n";
    }

    std::string m_logbook;
    std::string m_instrument;
    std::string m_to;
    bool m_withoutSale = false;
    bool m_force = false;
};

/// A logbook that was made for what is taken over; removed again where nothing was.
class NewLogbook {
public:
    explicit NewLogbook(std::string path) : m_path(std::move(path)) {}
    NewLogbook(const NewLogbook &) = delete;
    NewLogbook &operator=(const NewLogbook &) = delete;
    ~NewLogbook()
    {
        std::error_code ignored;
        for (const char *ending : {"", "-wal", "-shm"})
            if (!m_path.empty())
                std::filesystem::remove(m_path + ending, ignored);
    }
    void keep() { m_path.clear(); }

private:
    std::string m_path;
};

class TakeOverCommand : public Command {
public:
    std::string name() const override { return "take-over"; }
    std::string summary() const override { return "bring an instrument that was handed over into a logbook"; }

    void declare(Options &options) override
    {
        options.positional("LOGBOOK", "The logbook", m_logbook);
        options.positional("FILE.json", "What hammerline hand-over wrote", m_file);
        options.flag("new", "Make the logbook if there is none", m_new);
        options.value("digest", "HEX", "The digest that hand-over told; a file with another one is refused", m_digest);
    }

    outcome::Outcome<Answer> answer(const Surroundings &surroundings) override
    {
        const auto digest = wantedDigest();
        if (!digest)
            return digest.faults();
        const auto document = exchange::readFile(m_file, logbook::mostHandOverBytes);
        if (!document)
            return document.faults();
        const logbook::Stamp stamp{.at = surroundings.now(), .person = surroundings.person};
        const auto missing = noLogbookAt(m_logbook, "give --new to make it, or name one that is there");
        if (!missing)
            return takeOver(logbook::Logbook::open(m_logbook), document.value(), digest.value(), stamp);
        if (!m_new)
            return *missing;
        auto made = logbook::Logbook::create(m_logbook, stamp);
        if (!made)
            return made.faults();
        NewLogbook unlessTaken(m_logbook);
        auto answer = takeOver(std::move(made).value(), document.value(), digest.value(), stamp);
        if (answer)
            unlessTaken.keep();
        return answer;
    }

private:
    /// As the logbook wants it; empty: none was given.
    outcome::Outcome<std::string> wantedDigest() const
    {
        if (!m_digest)
            return std::string();
        auto digest = seal::parseFingerprint(*m_digest);
        if (!digest)
            return outcome::Fault{.problem = "--digest: \"" + *m_digest +
                                             "\" is no digest; write the 64 hexadecimal digits that hand-over told"};
        return digest;
    }

    outcome::Outcome<Answer> takeOver(logbook::Logbook book, const std::string &document, const std::string &digest,
                                      const logbook::Stamp &stamp) const
    {
        const bool isMade = book.newestDeed() <= 1; // now, for what is taken over
        auto warnings = isMade ? std::vector<outcome::Fault>() : clockGoneBack(book, stamp.at);
        const auto taken = book.takeOver(document, m_file, stamp, exchange::toleranceSetFaults, digest);
        if (!taken)
            return taken.faults();
        if (!taken.value().conflicts.empty())
            return conflictFaults(taken.value());
        if (taken.value().added == 0)
            warnings.clear();
        else if (!isMade)
            for (outcome::Fault &fault : backUpOfTheDay(book, stamp.at))
                warnings.push_back(std::move(fault));
        return Answer{.text = told(book, taken.value()) +
                              (taken.value().saleLeftOut ? "Buyer and price were left out of the file.\n" : "") +
                              digestTold(taken.value().digest, !digest.empty()),
                      .warnings = std::move(warnings)};
    }

    static std::string digestTold(const std::string &digest, bool compared)
    {
        if (digest.empty())
            return "Nothing vouches for this file: it is of version 1, which has no digests. Whether it was altered "
                   "since it was handed over cannot be told.\n";
        return digestLine(digest) + (compared
                                         ? "It is the one you gave.\n"
                                         : "Compare it with the one that hand-over told; --digest does it for you.\n");
    }

    std::vector<outcome::Fault> conflictFaults(const logbook::TakenOver &taken) const
    {
        std::vector<outcome::Fault> faults;
        for (const logbook::Conflict &conflict : taken.conflicts)
            faults.push_back({m_file, 0, withoutControls(conflict.text())});
        faults.push_back(
            {m_file, 0, "nothing was taken over; undo on one side what should not stand, hand over from there again"});
        return faults;
    }

    static std::string told(const logbook::Logbook &book, const logbook::TakenOver &taken)
    {
        const auto instrument = book.instrument(taken.instrument);
        const std::string name = instrument ? withoutControls(instrument->name) : "the instrument";
        const std::string number = "instrument " + std::to_string(taken.instrument);
        if (taken.added == 0)
            return "Everything of " + name + " (" + number + ") was here already.\n";
        return name + " is " + number + (taken.isNew ? ", taken over with " : ", gone on with ") +
               counted(static_cast<int>(taken.added), "deed", "deeds") + ".\n";
    }

    std::string m_logbook;
    std::string m_file;
    std::optional<std::string> m_digest;
    bool m_new = false;
};

} // namespace

std::unique_ptr<Command> makeHandOverCommand()
{
    return std::make_unique<HandOverCommand>();
}

std::unique_ptr<Command> makeTakeOverCommand()
{
    return std::make_unique<TakeOverCommand>();
}

} // namespace hammerline::command_line
