// What another set would say of a whole shop is what judging pass by pass says, whoever counts.
#include "shop/judge_shop.h"

#include "core/shop/judged_shop.h"
#include "demo_workshop/write_logbook.h"
#include "exchange/built_in.h"

#include <gmock/gmock.h>

namespace hammerline::shop {
namespace {

using catalogue::ActionKind;
using testing::HasSubstr;
using tolerance::Status;

class JudgeShopTest : public JudgedShop {};

TEST_F(JudgeShopTest, CountsOfTheDemoWhatJudgingEachPassSays)
{
    ASSERT_TRUE(demo_workshop::writeLogbook(demo_workshop::makeWorkshop(),
                                            {.path = file("demo"), .scratchPath = file("scratch")}));
    for (const exchange::BuiltIn &builtIn : exchange::builtInToleranceSets()) {
        const Asked asked{.set = exchange::findToleranceSet(builtIn.id).value().set};
        const auto judged = run(file("demo"), asked);
        EXPECT_FALSE(judged.empty()) << builtIn.id;
        EXPECT_EQ(judged, judgedOneByOne(file("demo"), asked.set)) << builtIn.id;
    }
}

TEST_F(JudgeShopTest, CountsTheSameHoweverManyThreadsThereAre)
{
    fill(12);
    const Asked asked{.set = narrow()};
    const auto expected = judgedOneByOne(file(), asked.set);
    EXPECT_EQ(expected.size(), 6u) << "every second one is a grand";
    for (const unsigned threads : {1u, 2u, 3u, 4u, 40u})
        EXPECT_EQ(run(file(), asked, threads), expected) << threads;
}

TEST_F(JudgeShopTest, TakesWhatWasCorrectedOrWithdrawnAsItStands)
{
    auto book = created();
    const auto pass = beginOn(book, take(book, ActionKind::Grand), readings::Purpose::AsFound);
    book.enter(pass, reading(letOff(1), 9'000'000), ada);
    book.enter(pass, reading(letOff(1), 3'200'000), ada);
    book.enter(pass, reading(letOff(2), 9'000'000), ada);
    book.withdraw(pass, letOff(2), ada, "a slip");
    const auto judged = run(file(), {.set = narrow()});
    ASSERT_EQ(judged.size(), 1u);
    EXPECT_EQ(sumOf(judged).then.of(Status::In), 1);
    EXPECT_EQ(sumOf(judged).then.of(Status::Out), 0);
}

TEST_F(JudgeShopTest, LeavesSpotChecksAside)
{
    auto book = created();
    const auto piano = take(book, ActionKind::Grand);
    const auto pass = beginOn(book, piano, readings::Purpose::AsFound);
    book.enter(pass, reading(letOff(1), 3'200'000), ada);
    const auto check = book.beginSpotCheck(
        {.instrument = piano, .began = ben.at, .person = "Ben"},
        {.checked = pass, .seed = 1, .notes = {keyboard::Note(1)}, .quantities = {catalogue::Quantity::LetOff}}, ben);
    book.enter(check.id, reading(letOff(1), 9'000'000), ben);
    EXPECT_EQ(passesIn(run(file(), {.set = narrow()})), 1);
}

TEST_F(JudgeShopTest, AnInstrumentWithoutASetOrWithOneNobodyCanReadHasNothingNow)
{
    auto book = created();
    for (const std::string text : {"", "no set at all"}) {
        auto piano = book.instrument(take(book, ActionKind::Grand)).value();
        piano.toleranceText = text;
        ASSERT_TRUE(book.changeInstrument(piano, ada, {}));
        book.enter(beginOn(book, piano.id, readings::Purpose::AsFound), reading(letOff(1), 3'200'000), ada);
    }
    const auto judged = run(file(), {.set = narrow()});
    EXPECT_EQ(judged.size(), 2u);
    EXPECT_EQ(sumOf(judged).now, tolerance::Tally());
    EXPECT_EQ(sumOf(judged).then.of(Status::In), 2);
}

TEST_F(JudgeShopTest, OnlyThePassesAskedForCount)
{
    auto book = created();
    const auto piano = take(book, ActionKind::Grand);
    const std::vector<std::pair<readings::Purpose, std::int64_t>> passes{{readings::Purpose::AsFound, 9'000'000},
                                                                         {readings::Purpose::Setting, 3'200'000},
                                                                         {readings::Purpose::AsLeft, 3'900'000}};
    for (int day = 0; day < 3; ++day)
        book.enter(beginOn(book, piano, passes[static_cast<std::size_t>(day)].first, day * 24 * 60 * 40),
                   reading(letOff(1), passes[static_cast<std::size_t>(day)].second), ada);
    static_cast<void>(beginOn(book, piano, readings::Purpose::Recheck, 24 * 60 * 200)); // nothing read yet
    const auto tally = [&](Which which, const Filter &filter = {}) {
        return sumOf(run(file(), {.set = narrow(), .which = which, .filter = filter})).then;
    };
    EXPECT_EQ(tally(Which::All).of(Status::Out), 2);
    EXPECT_EQ(tally(Which::All).of(Status::In), 1);
    EXPECT_EQ(tally(Which::AsFound).of(Status::Out), 1);
    EXPECT_EQ(tally(Which::AsLeft).of(Status::In), 0);
    EXPECT_EQ(tally(Which::Newest).of(Status::Out), 1);
    EXPECT_EQ(tally(Which::Newest).of(Status::In), 0);
    const YearMonth second = monthOf(moment(24 * 60 * 40));
    EXPECT_EQ(tally(Which::All, {second, second, {}}).of(Status::In), 1);
    EXPECT_EQ(tally(Which::All, {second, second, {}}).of(Status::Out), 0);
}

TEST_F(JudgeShopTest, OnlyTheInstrumentsAskedForCount)
{
    fill(8);
    const auto whole = run(file(), {.set = narrow()});
    const auto id = whole.rbegin()->first;
    const auto one = run(file(), {.set = narrow(), .only = Instruments{id}});
    ASSERT_EQ(one.size(), 1u);
    EXPECT_EQ(one.at(id), whole.at(id));
    EXPECT_TRUE(run(file(), {.set = narrow(), .filter = {{}, {}, {instrument::State::Delivered}}}).empty());
}

TEST_F(JudgeShopTest, TellsHowFarItHasComeAndEndsWhenAsked)
{
    fill(8);
    Course course;
    EXPECT_TRUE(judgeShop(file(), {.set = narrow()}, 2, course));
    EXPECT_EQ(course.all, 4u);
    EXPECT_EQ(course.done, 4u);
    Course stopped;
    stopped.stop = true;
    EXPECT_FALSE(judgeShop(file(), {.set = narrow()}, 2, stopped));
    EXPECT_EQ(stopped.done, 0u);
}

TEST_F(JudgeShopTest, WhoWritesMeanwhileIsNotInTheWay)
{
    fill(8);
    const auto before = run(file(), {.set = narrow()});
    std::thread writer([this] { readMore(); });
    for (int round = 0; round < 10; ++round)
        EXPECT_EQ(run(file(), {.set = narrow()}, 3).size(), before.size());
    writer.join();
    EXPECT_EQ(run(file(), {.set = narrow()}), judgedOneByOne(file(), narrow()));
}

TEST_F(JudgeShopTest, ALockedFileIsABrokenWorld)
{
    fill(4);
    RawDatabase locker(file());
    locker.run("PRAGMA locking_mode = EXCLUSIVE");
    locker.run("BEGIN EXCLUSIVE");
    EXPECT_THAT(messageOf([&] { static_cast<void>(run(file(), {.set = narrow()}, 2)); }), HasSubstr("locked"));
}

TEST_F(JudgeShopTest, WhereOneThreadMeetsDamageTheWholeIsABrokenWorld)
{
    fill(29); // the last is a grand
    RawDatabase(file()).run("UPDATE reading SET quantity = quantity + 90 WHERE pass = (SELECT max(pass) FROM reading)");
    for (const unsigned threads : {1u, 3u}) {
        Course course;
        EXPECT_THROW(static_cast<void>(judgeShop(file(), {.set = narrow()}, threads, course)), outcome::BrokenWorld);
        EXPECT_TRUE(course.stop);
    }
    Course course;
    EXPECT_THROW(static_cast<void>(judgeShop(file("not there"), {.set = narrow()}, 2, course)), outcome::BrokenWorld);
}

TEST_F(JudgeShopTest, OnlyInstrumentsThatWereTouchedNeedJudgingAgain)
{
    auto book = created();
    const auto first = take(book, ActionKind::Grand);
    const auto seen = book.newestDeed();
    EXPECT_EQ(touchedSince(book, seen), Instruments());
    const auto second = take(book, ActionKind::Grand);
    EXPECT_EQ(touchedSince(book, seen), Instruments{second});
    static_cast<void>(beginOn(book, first, readings::Purpose::AsFound));
    EXPECT_EQ(touchedSince(book, seen), (Instruments{first, second}));
}

} // namespace
} // namespace hammerline::shop
