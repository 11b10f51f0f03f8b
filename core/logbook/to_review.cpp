#include "logbook/to_review.h"

#include "tolerance/doubt.h"

#include <algorithm>
#include <map>
#include <utility>

namespace hammerline::logbook {

namespace {

/// Newest first.
std::vector<readings::Pass> readPasses(const Logbook &book, instrument::InstrumentId instrument)
{
    auto passes = book.passes(instrument);
    std::erase_if(passes, [&](const readings::Pass &pass) { return !book.hasReadings(pass.id); });
    std::ranges::reverse(passes);
    return passes;
}

} // namespace

std::optional<readings::Pass> newestReadPass(const Logbook &book, instrument::InstrumentId instrument)
{
    const auto passes = readPasses(book, instrument);
    return passes.empty() ? std::nullopt : std::optional(passes.front());
}

review::JudgedPass judgedPass(const Logbook &book, const instrument::Instrument &instrument, const readings::Pass &pass,
                              const tolerance::Judge &judge)
{
    review::JudgedPass judged{.instrument = instrument.id,
                              .pass = pass.id,
                              .decided = book.decisions(pass.id),
                              .readings = book.readings(pass.id),
                              .person = pass.person,
                              .began = pass.began};
    judged.judgement = judge.judge(readings::meansOf(judged.readings), instrument.compass, instrument.sections);
    tolerance::weighDoubt(judged.judgement, judged.readings, pass.gauge);
    return judged;
}

std::vector<review::JudgedPass> passesToReview(const Logbook &book, const instrument::Instrument &instrument,
                                               const tolerance::Judge &judge)
{
    std::vector<review::JudgedPass> judged;
    bool closed = false; // by a signature; what was sent back before it is no news any more
    for (const readings::Pass &pass : readPasses(book, instrument.id)) {
        if (judged.empty()) {
            judged.push_back(judgedPass(book, instrument, pass, judge));
            continue;
        }
        const auto decided = book.decisions(pass.id);
        closed = closed || decisions::isSigned(decided.standing);
        if (decided.sentBack.empty())
            continue;
        auto older = judgedPass(book, instrument, pass, judge);
        if (!closed)
            review::takeWordsAlong(older, judged.front());
        older = review::leftBehind(std::move(older), judged);
        if (older.judgement.verdicts.empty())
            continue;
        review::leaveMissingTo(older, judged);
        judged.push_back(std::move(older));
    }
    return judged;
}

std::vector<decisions::SentBack> sentBackTo(const Logbook &book, const readings::Pass &pass)
{
    if (book.spotCheck(pass.id))
        return {};
    const auto here = book.values(pass.id);
    std::map<std::pair<catalogue::Quantity, keyboard::Note>, decisions::SentBack> waiting;
    for (const readings::Pass &each : book.passes(pass.instrument)) {
        const auto sentBack =
            each.began > pass.began ? std::vector<decisions::SentBack>{} : book.decisions(each.id).sentBack;
        if (sentBack.empty())
            continue;
        const auto read = book.readings(each.id);
        const auto there = readings::meansOf(read);
        for (const decisions::SentBack &item : sentBack) {
            const bool readHere = each.id != pass.id && here.value(item.quantity, item.note).has_value();
            if (!readHere && !review::readSince(item, there.value(item.quantity, item.note), read))
                waiting.insert_or_assign({item.quantity, item.note}, item);
        }
    }
    std::vector<decisions::SentBack> found;
    for (auto &[pair, item] : waiting)
        found.push_back(std::move(item));
    return found;
}

} // namespace hammerline::logbook
