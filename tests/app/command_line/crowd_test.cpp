// A crowd at one logbook: processes of their own that enter, import, take over, back up, look through and check it, all
// at the same time, each killed with SIGKILL at random moments and begun again. What one of them had acknowledged is
// there at the end; what came in as a whole is there whole or not at all. HAMMERLINE_CROWD_SECONDS says how long (4).

#include "support/command_run.h"

#include "logbook/logbook.h"
#include "logbook/verify_history.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <array>
#include <chrono>
#include <csignal>
#include <fcntl.h>
#include <iostream>
#include <map>
#include <random>
#include <set>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace hammerline {
namespace {

using namespace std::chrono_literals;
using test_support::runCommand;
using test_support::ScratchFolder;

enum Deed : int { Entered, Imported, TakenOver, BackedUp, Looked, Checked, deedKinds };
constexpr int documents = 40;           ///< to be taken over
constexpr int valuesOfAWorker = 20'000; ///< more than one lives to enter
constexpr int rowsOfAFile = 88;
constexpr int rowsOfADocument = 12;

const logbook::Stamp stamp{readings::parseRfc3339("2026-03-05T09:00:00Z").value(), "Ada Sample"};

readings::Reading letOff(int note, int take, std::int64_t nanometres)
{
    return {.place = {catalogue::Quantity::LetOff, keyboard::Note(note), take},
            .value = units::Length::nanometres(nanometres),
            .typed = "3"};
}

/// What was done, and which of its kind.
struct Done {
    int deed = 0;
    int number = 0;
};

class Crowd : public ::testing::Test {
protected:
    Crowd()
    {
        auto book = logbook::Logbook::create(path, stamp).value();
        static_cast<void>(book.addInstrument({.name = "Upright"}, stamp).value());
        static_cast<void>(book.beginPass({.instrument = 1, .began = stamp.at}, stamp));
        for (int note = 1; note <= rowsOfAFile; ++note)
            csv += keyboard::Note(note).name() + ",3." + std::to_string(note) + '\n';
        csv = folder.write("in.csv", csv);
        writeDocuments();
        if (pipe2(ends.data(), O_CLOEXEC) != 0 || fcntl(ends[0], F_SETFL, O_NONBLOCK) != 0)
            throw std::runtime_error("no pipe");
    }
    ~Crowd() override
    {
        for (int worker = 0; worker < deedKinds; ++worker)
            stop(worker);
        for (const int end : ends)
            ::close(end);
    }

    void writeDocuments()
    {
        auto elsewhere = logbook::Logbook::create(folder.file("elsewhere"), stamp).value();
        for (int number = 1; number <= documents; ++number) {
            static_cast<void>(elsewhere.addInstrument({.name = "Taken " + std::to_string(number)}, stamp).value());
            std::vector<readings::Reading> rows;
            for (int note = 1; note <= rowsOfADocument; ++note)
                rows.push_back(letOff(note, 1, note));
            static_cast<void>(elsewhere.importPass({.instrument = number, .began = stamp.at}, rows, stamp));
            static_cast<void>(folder.write(document(number), elsewhere.handOver(number).value()));
        }
    }
    [[nodiscard]] static std::string document(int number) { return "taken-" + std::to_string(number) + ".json"; }
    [[nodiscard]] std::string copy(int number) const { return folder.file("copy-" + std::to_string(number)); }

    // In a process of its own -------------------------------------------------------------------------------------

    /// Says so; whoever cannot has nobody left to say it to.
    void say(Deed deed, int number) const
    {
        const Done done{deed, number};
        if (::write(ends[1], &done, sizeof done) != sizeof done)
            _exit(1);
    }
    /// Whether it was done. Locked by the others for too long is an answer; anything else is not.
    [[nodiscard]] bool does(const std::vector<std::string> &call) const
    {
        const auto ran = runCommand(call);
        if (ran.status == 2 && ran.err.find("another program keeps it locked") != std::string::npos)
            return false;
        const bool fine = ran.status == 0 || (ran.status == 1 && call.front() == "review");
        if (!fine)
            static_cast<void>(folder.write("wrong-" + std::to_string(getpid()), call.front() + ", status " +
                                                                                    std::to_string(ran.status) + ": " +
                                                                                    ran.out.substr(0, 1000) + ran.err));
        return fine;
    }
    void enter(int number) const
    {
        auto book = logbook::Logbook::open(path);
        for (const int last = number + 99; number <= last; ++number) {
            book.enter(1, letOff(number % 88 + 1, number / 88 + 1, number), stamp);
            say(Entered, number);
        }
    }
    [[nodiscard]] bool doneOnce(Deed deed, int number) const
    {
        switch (deed) {
        case Imported:
            return does({"import", path, csv, "--instrument", "1", "--purpose", "as-left",
                         "--person=" + std::to_string(number)});
        case TakenOver:
            return does({"take-over", path, folder.file(document(number % documents + 1))});
        case BackedUp:
            return does({"backup", path, "--to", copy(number)});
        case Looked:
            return does({"review", path, "--json"}) &&
                   does({"export", path, "--instrument", "1", "--pass", "1", "--to",
                         folder.file("out-" + std::to_string(getpid())), "--force"});
        default:
            return does({"verify", path});
        }
    }
    [[noreturn]] void workForEver(Deed deed, int number) const
    {
        for (;; number += deed == Entered ? 100 : 1)
            try {
                if (deed == Entered)
                    enter(number);
                else if (doneOnce(deed, number))
                    say(deed, number);
            } catch (const outcome::BrokenWorld &broken) {
                if (std::string(broken.what()).find("another program keeps it locked") == std::string::npos)
                    static_cast<void>(folder.write("wrong-" + std::to_string(getpid()), broken.what()));
            }
    }

    // Who watches over them ---------------------------------------------------------------------------------------

    void start(int worker)
    {
        ++started;
        const pid_t child = fork();
        if (child == 0)
            workForEver(static_cast<Deed>(worker), started * valuesOfAWorker);
        workers[static_cast<std::size_t>(worker)] = child;
    }
    void stop(int worker)
    {
        pid_t &child = workers[static_cast<std::size_t>(worker)];
        if (child <= 0)
            return;
        kill(child, SIGKILL);
        int how = 0;
        waitpid(child, &how, 0);
        EXPECT_TRUE(WIFSIGNALED(how) && WTERMSIG(how) == SIGKILL) << "it ended by itself";
        child = 0;
    }
    void listen()
    {
        Done done;
        while (::read(ends[0], &done, sizeof done) == sizeof done)
            said[done.deed].insert(done.number);
    }
    void disturbOnce(std::mt19937 &dice)
    {
        for (int worker = 0; worker < deedKinds; ++worker)
            if (workers[static_cast<std::size_t>(worker)] == 0)
                start(worker);
        std::this_thread::sleep_for(std::chrono::milliseconds(std::uniform_int_distribution(5, 250)(dice)));
        listen();
        for (int worker = 0; worker < deedKinds; ++worker)
            if (std::uniform_int_distribution(0, worker <= TakenOver ? 3 : 11)(dice) == 0) // who looks takes longer
                stop(worker);
    }
    /// Long enough for each to have done something, however busy the machine.
    void workTogether(std::chrono::steady_clock::duration atLeast)
    {
        std::mt19937 dice(20'261'126);
        const auto began = std::chrono::steady_clock::now();
        const auto passed = [&] { return std::chrono::steady_clock::now() - began; };
        while (passed() < atLeast || (said.size() < deedKinds && passed() < 60s))
            disturbOnce(dice);
        for (int worker = 0; worker < deedKinds; ++worker)
            stop(worker);
        listen();
    }

    void expectNothingWentWrong() const
    {
        for (const std::string &name : folder.names())
            if (name.starts_with("wrong-"))
                ADD_FAILURE() << test_support::fileText(folder.file(name));
    }
    void expectEntered(const logbook::Logbook &book)
    {
        std::set<int> present;
        for (const auto &found : book.readings(1))
            present.insert(static_cast<int>(found.value.baseCount()));
        for (const int number : said[Entered])
            EXPECT_TRUE(present.contains(number)) << "lost: reading " << number;
    }
    void expectImported(const logbook::Logbook &book)
    {
        std::set<int> present;
        for (const auto &pass : book.passes(1))
            if (pass.id != 1) {
                present.insert(std::stoi(pass.person));
                EXPECT_EQ(book.readingCount(pass.id), rowsOfAFile) << "half an import";
            }
        for (const int number : said[Imported])
            EXPECT_TRUE(present.contains(number)) << "lost: import " << number;
    }
    void expectTakenOver(const logbook::Logbook &book)
    {
        std::set<std::string> present;
        for (const auto &line : book.instrumentLines())
            if (line.id != 1) {
                EXPECT_TRUE(present.insert(line.name).second) << line.name << " is there twice";
                const auto passes = book.passes(line.id);
                EXPECT_EQ(passes.size(), 1u);
                EXPECT_EQ(book.readingCount(passes.at(0).id), rowsOfADocument) << "half an instrument";
            }
        for (const int number : said[TakenOver])
            EXPECT_TRUE(present.contains("Taken " + std::to_string(number % documents + 1))) << "lost: " << number;
    }

    ScratchFolder folder;
    std::string path = folder.file("shop.hammerline");
    std::string csv = "note,let_off\n";
    std::array<int, 2> ends{};
    std::array<pid_t, deedKinds> workers{};
    int started = 0;
    std::map<int, std::set<int>> said;
};

TEST_F(Crowd, KilledAtAnyMomentLosesNothingThatWasAcknowledged)
{
    const char *wish = std::getenv("HAMMERLINE_CROWD_SECONDS");
    workTogether(wish == nullptr ? 4s : std::chrono::seconds(std::stoi(wish)));
    expectNothingWentWrong();
    EXPECT_EQ(said.size(), std::size_t{deedKinds}) << "somebody never came to anything";
    const auto check = logbook::verifyHistory(path);
    EXPECT_TRUE(check.whole()) << check.alterations.front().text();
    const auto book = logbook::Logbook::open(path);
    expectEntered(book);
    expectImported(book);
    expectTakenOver(book);
    for (const int number : said[BackedUp])
        EXPECT_TRUE(logbook::verifyHistory(copy(number)).whole());
    std::cout << started << " processes, nearly all killed; acknowledged and there: " << said[Entered].size()
              << " readings, " << said[Imported].size() << " imports, " << said[TakenOver].size() << " take-overs, "
              << said[BackedUp].size() << " backups, " << said[Looked].size() << " reviews and exports, "
              << said[Checked].size() << " checks\n";
}

} // namespace
} // namespace hammerline
