// A pass that comes in batches is the same deed, to the last byte of its proof, as one that is handed over whole.
#include "core/logbook/logbook_fixture.h"
#include "logbook/verify_history.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <csignal>
#include <random>
#include <sys/wait.h>
#include <unistd.h>

namespace hammerline::logbook {
namespace {

using catalogue::Quantity;
using readings::Reading;
using testing::HasSubstr;

const readings::Pass filed{.uid = std::string(32, 'b'), .instrument = 1, .began = moment(3), .person = "Dot"};

/// Of two quantities, with what a reading may carry besides its value, in the order of places.
std::vector<Reading> manyReadings(int takes)
{
    std::vector<Reading> many;
    for (const Quantity quantity : {Quantity::Blow, Quantity::LetOff})
        for (const int note : {-3, 1, 40, 88})
            for (int take = 1; take <= takes; ++take) {
                Reading one{.place = {quantity, keyboard::Note(note), take},
                            .value = units::Length::nanometres(take * std::int64_t{1'000'007})};
                one.typed = take % 3 == 0 ? "typed" : units::exactDecimal(one.value);
                one.remark = take % 5 == 0 ? "a \"remark\"\n\xC3\xA9" : "";
                one.person = take % 7 == 0 ? "Cid" : "";
                one.at = take % 11 == 0 ? moment(take) : readings::Instant{};
                many.push_back(one);
            }
    return many;
}

std::vector<Reading> shuffled(std::vector<Reading> many)
{
    std::ranges::shuffle(many, std::mt19937(3)); // NOLINT(bugprone-random-generator-seed): the same order every time
    return many;
}

/// Hands them over in batches of `size`.
readings::ReadingSource inBatches(std::vector<Reading> many, std::size_t size)
{
    return [many = std::move(many), size, at = std::size_t{0}](std::vector<Reading> &batch) mutable {
        const std::size_t end = std::min(many.size(), at + size);
        batch.assign(many.begin() + static_cast<std::ptrdiff_t>(at), many.begin() + static_cast<std::ptrdiff_t>(end));
        at = end;
        return outcome::Outcome(!batch.empty());
    };
}

class LongImport : public LogbookTest {
protected:
    /// Every logbook of these is the same to the byte of its digests.
    [[nodiscard]] Logbook same(const std::string &name) const
    {
        Logbook logbook = Logbook::create(file(name), ada).value();
        auto piano = upright();
        piano.uid = std::string(32, 'a');
        static_cast<void>(logbook.addInstrument(piano, ada));
        return logbook;
    }
    /// Digest, marks and all rows of an import.
    static auto proofOf(const std::string &path)
    {
        RawDatabase raw(path);
        return std::tuple(raw.rows("SELECT *, hex(marks), hex(digest) FROM history"), raw.rows("SELECT * FROM pass"),
                          raw.rows("SELECT * FROM reading ORDER BY 1, 2, 3, 4"));
    }
};

TEST_F(LongImport, isTheSameDeedInWhateverBatchesTheReadingsCome)
{
    const auto many = manyReadings(40);
    static_cast<void>(same("whole").importPass(filed, many, ben));
    const auto whole = proofOf(file("whole"));
    int number = 0;
    for (const std::size_t size : {1u, 7u, 40u, 319u, 320u, 321u})
        for (const auto &order : {many, shuffled(many)}) {
            const std::string name = "batches-" + std::to_string(++number);
            ASSERT_TRUE(same(name).importPassFrom(filed, inBatches(order, size), ben));
            EXPECT_EQ(proofOf(file(name)), whole) << size;
            EXPECT_TRUE(verifyHistory(file(name)).whole()) << size;
        }
}

// Digests by which histories that are out there are checked: other ones would make those look altered.
TEST_F(LongImport, hasTheDigestThatImportsAlwaysHad)
{
    Logbook logbook = same("short");
    static_cast<void>(logbook.importPass(filed, shuffled(manyReadings(40)), ben));
    EXPECT_EQ(logbook.digest(3), "d5c276ad9e30329e2f52bbdab526d42130a09dc79800183cb1b4267b3f6a7f7d");
    Logbook longer = same("long");
    static_cast<void>(longer.importPass(filed, manyReadings(5'000), ben));
    EXPECT_EQ(longer.digest(3), "2b17ea12699055940eb1060c2916572b9e27f87cf2a4789bd9402bec4c770ab3");
    static_cast<void>(longer.beginPass({.uid = std::string(32, 'c'), .instrument = 1, .began = moment(4)}, ben));
    EXPECT_EQ(longer.digest(4), "8fc59986c66b588d458c999b6d4e621de84ec19c2351f32ef065c97a419373bf")
        << "chained to the long one";
}

/// As `source`, with `act` done before the batch of this number, from 1, is given.
readings::ReadingSource doing(readings::ReadingSource source, int number, std::function<void()> act)
{
    return [source = std::move(source), number, act = std::move(act), asked = 0](std::vector<Reading> &batch) mutable {
        if (++asked == number)
            act();
        return source(batch);
    };
}

TEST_F(LongImport, nothingIsWrittenWhereTheSourceEndsWithAFault)
{
    Logbook logbook = same("book");
    const auto before = proofOf(file("book"));
    const outcome::Fault fault{"r.csv", 7, "wrong"};
    for (const int number : {1, 2, 4}) {
        int asked = 0;
        const auto source = inBatches(manyReadings(40), 100);
        const auto ending = [&](std::vector<Reading> &batch) {
            return ++asked == number ? outcome::Outcome<bool>(fault) : source(batch);
        };
        const auto refused = logbook.importPassFrom(filed, ending, ben);
        ASSERT_FALSE(refused);
        EXPECT_EQ(refused.faults(), std::vector{fault});
        EXPECT_EQ(asked, number) << "it is not asked again";
        EXPECT_EQ(proofOf(file("book")), before);
    }
    ASSERT_TRUE(logbook.importPassFrom(filed, inBatches(manyReadings(40), 100), ben));
    EXPECT_EQ(logbook.newestDeed(), 3);
    EXPECT_TRUE(verifyHistory(file("book")).whole());
}

TEST_F(LongImport, nothingIsWrittenWhereAPlaceComesAgainOrTheWorldBreaks)
{
    Logbook logbook = same("book");
    const auto before = proofOf(file("book"));
    auto twice = manyReadings(40);
    twice.push_back(twice.front());
    EXPECT_THROW(static_cast<void>(logbook.importPassFrom(filed, inBatches(twice, 100), ben)), outcome::BrokenWorld);
    const auto breaking = doing(inBatches(manyReadings(40), 100), 3, [] { throw outcome::BrokenWorld("gone"); });
    EXPECT_THROW(static_cast<void>(logbook.importPassFrom(filed, breaking, ben)), outcome::BrokenWorld);
    EXPECT_EQ(proofOf(file("book")), before);
    static_cast<void>(logbook.importPass(filed, manyReadings(3), ben));
    EXPECT_EQ(logbook.newestDeed(), 3);
}

TEST_F(LongImport, killedInTheMiddleTheLogbookIsAsBefore)
{
    static_cast<void>(same("book"));
    const auto before = proofOf(file("book"));
    for (const int number : {2, 60}) {
        const pid_t child = fork();
        if (child == 0) {
            Logbook logbook = Logbook::open(file("book"));
            const auto source = doing(inBatches(manyReadings(2'000), 200), number, [] { std::raise(SIGKILL); });
            static_cast<void>(logbook.importPassFrom(filed, source, ben));
            _exit(0);
        }
        int status = 0;
        waitpid(child, &status, 0);
        ASSERT_TRUE(WIFSIGNALED(status));
        Logbook again = Logbook::open(file("book"));
        EXPECT_EQ(again.newestDeed(), 2);
        EXPECT_EQ(proofOf(file("book")), before);
        EXPECT_TRUE(verifyHistory(file("book")).whole());
    }
}

TEST_F(LongImport, othersMayWriteUntilTheFirstBatchIsThereAndReadAllTheTime)
{
    Logbook logbook = same("book");
    Logbook other = Logbook::open(file("book"));
    std::string said;
    const auto writing = doing(inBatches(manyReadings(40), 100), 1, [&] {
        static_cast<void>(other.beginPass({.uid = std::string(32, 'c'), .instrument = 1}, ada));
    });
    const auto reading = doing(writing, 3, [&] { said = other.deed(other.newestDeed())->name; });
    const auto imported = logbook.importPassFrom(filed, reading, ben);
    ASSERT_TRUE(imported);
    EXPECT_EQ(imported.value().id, 2);
    EXPECT_EQ(said, "pass-begun") << "the import is not seen before it is whole";
    EXPECT_EQ(other.readingCount(2), 320);
    EXPECT_TRUE(verifyHistory(file("book")).whole());
}

TEST_F(LongImport, readingsThatAreHeldAlreadyGoTheSameWay)
{
    Logbook logbook = same("book");
    const auto many = shuffled(manyReadings(3'000));
    ASSERT_GT(many.size(), readings::mostInBatch);
    static_cast<void>(logbook.importPass(filed, many, ben));
    EXPECT_EQ(logbook.readingCount(1), static_cast<int>(many.size()));
    EXPECT_TRUE(verifyHistory(file("book")).whole());
    static_cast<void>(logbook.importPass({.instrument = 1, .began = moment(4)}, {}, ben));
    EXPECT_EQ(logbook.readingCount(2), 0) << "a file without a reading is the caller's to refuse";
    EXPECT_TRUE(verifyHistory(file("book")).whole());
}

TEST_F(LongImport, whatWasAlteredInItIsNamed)
{
    static_cast<void>(same("book").importPassFrom(filed, inBatches(manyReadings(40), 100), ben));
    RawDatabase(file("book"))
        .run("UPDATE reading SET value = 5 WHERE quantity = (SELECT max(quantity) FROM reading) "
             "AND note = 40 AND take = 17");
    const auto report = verifyHistory(file("book"));
    ASSERT_EQ(report.alterations.size(), 1u);
    EXPECT_THAT(report.alterations[0].text(), HasSubstr("note 40, take 17"));
}

} // namespace
} // namespace hammerline::logbook
