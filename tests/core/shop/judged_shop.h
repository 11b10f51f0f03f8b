#pragma once
// A small invented shop, and its judging without any short cut.

#include "core/logbook/logbook_fixture.h"
#include "exchange/tolerance_json.h"
#include "shop/judge_shop.h"

#include <random>
#include <thread>

namespace hammerline::shop {

using logbook::ada;
using logbook::ben;
using logbook::letOff;
using logbook::Logbook;
using logbook::moment;
using logbook::RawDatabase;
using logbook::reading;

/// Let-off 3.2 mm, and blow 45 mm with a step and marginal values, give or take `half`.
inline tolerance::ToleranceSet setOf(double half)
{
    const auto mm = [](double value) { return units::Amount(units::Length::millimetres(value)); };
    tolerance::ToleranceSet made{.name = "Give or take", .action = catalogue::ActionKind::Grand};
    made.entries[catalogue::Quantity::LetOff].both = {
        {.note = keyboard::Note(1), .low = mm(3.2 - half), .target = mm(3.2), .high = mm(3.2 + half)}};
    tolerance::Entry &blow = made.entries[catalogue::Quantity::Blow];
    blow.both = {{.note = keyboard::Note(1), .low = mm(45 - half), .target = mm(45), .high = mm(45 + half)}};
    blow.step = mm(half);
    blow.expandedUncertainty = mm(half / 4);
    blow.rule = tolerance::Rule::Guarded;
    return made;
}
inline tolerance::ToleranceSet narrow()
{
    return setOf(0.4);
}

class JudgedShop : public logbook::LogbookTest {
protected:
    static instrument::InstrumentId take(Logbook &book, catalogue::ActionKind action)
    {
        instrument::Instrument piano{.name = "Piano", .action = action};
        piano.sections = {{"bass", {keyboard::Note(1), keyboard::Note(28)}},
                          {"treble", {keyboard::Note(29), keyboard::Note(88)}}};
        piano.toleranceId = "Give or take";
        piano.toleranceText = exchange::writeToleranceSet(setOf(1));
        return book.addInstrument(piano, ada).value().id;
    }
    static readings::PassId beginOn(Logbook &book, instrument::InstrumentId piano, readings::Purpose purpose,
                                    int minutes = 0)
    {
        return book.beginPass({.instrument = piano, .purpose = purpose, .began = moment(minutes), .person = "Ada"}, ada)
            .id;
    }

    /// Grands and uprights in turn, two passes each, some notes twice, some not at all.
    void fill(int instruments) const
    {
        std::mt19937 dice(7); // NOLINT(bugprone-random-generator-seed): the same shop every time
        auto book = created();
        for (int number = 0; number < instruments; ++number) {
            const auto piano =
                take(book, number % 2 == 0 ? catalogue::ActionKind::Grand : catalogue::ActionKind::Vertical);
            for (const auto purpose : {readings::Purpose::AsFound, readings::Purpose::AsLeft})
                static_cast<void>(book.importPass(
                    {.instrument = piano, .purpose = purpose, .began = ada.at, .person = "Ada"}, somewhere(dice), ada));
        }
    }
    /// Adds to every pass of `fill`.
    void readMore() const
    {
        auto book = Logbook::open(file());
        for (const logbook::PassOf &pass : book.passesOfAll())
            for (int note = 1; note <= 5; ++note)
                book.enter(pass.pass, reading(letOff(note, 3), 3'000'000 + note * 100'000), ben);
    }

    static ShopJudged run(const std::string &path, const Asked &asked, unsigned threads = 2)
    {
        Course course;
        return judgeShop(path, asked, threads, course).value();
    }

    /// Every pass read with all its texts and judged by itself.
    static ShopJudged judgedOneByOne(const std::string &path, const tolerance::ToleranceSet &set)
    {
        ShopJudged all;
        const auto book = Logbook::open(path);
        for (const instrument::Instrument &of : book.instruments())
            for (const readings::Pass &pass : book.passes(of.id)) {
                const auto values = readings::meansOf(book.readings(pass.id));
                if (of.action != set.action || values.empty())
                    continue;
                ++all[of.id].passes;
                for (const tolerance::Verdict &verdict : judgementBy(set, values, of).verdicts)
                    count(verdict, all[of.id].by[static_cast<std::size_t>(verdict.quantity)].then);
                const auto now = exchange::readToleranceSet(of.toleranceText, "set");
                if (now)
                    for (const tolerance::Verdict &verdict : judgementBy(now.value(), values, of).verdicts)
                        count(verdict, all[of.id].by[static_cast<std::size_t>(verdict.quantity)].now);
            }
        return all;
    }

private:
    static tolerance::Judgement judgementBy(const tolerance::ToleranceSet &set, const readings::ValueTable &values,
                                            const instrument::Instrument &of)
    {
        return tolerance::judge(values, set, of.compass, of.sections);
    }
    static void count(const tolerance::Verdict &verdict, tolerance::Tally &tally)
    {
        ++tally.by[static_cast<std::size_t>(verdict.status)];
        tally.uneven += verdict.uneven ? 1 : 0;
    }
    static std::vector<readings::Reading> somewhere(std::mt19937 &dice)
    {
        std::vector<readings::Reading> many;
        std::uniform_int_distribution<std::int64_t> off(-900, 900);
        std::uniform_int_distribution<int> percent(0, 99);
        for (const auto quantity : {catalogue::Quantity::Blow, catalogue::Quantity::LetOff, catalogue::Quantity::Dip})
            for (int note = 1; note <= 88; ++note)
                for (int taken = 1; taken <= 2 && percent(dice) < (taken == 1 ? 95 : 10); ++taken)
                    many.push_back(
                        reading({quantity, keyboard::Note(note), taken},
                                (quantity == catalogue::Quantity::Blow ? 45'000'000 : 3'200'000) + off(dice) * 1'000));
        return many;
    }
};

} // namespace hammerline::shop
