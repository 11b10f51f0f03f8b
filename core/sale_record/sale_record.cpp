#include "sale_record/sale_record.h"

#include "tolerance/doubt.h"

#include <algorithm>
#include <set>
#include <span>
#include <tuple>

namespace hammerline::sale_record {

namespace {

using readings::Purpose;
using tolerance::Status;
using tolerance::Verdict;
using PassWithReadings = std::pair<readings::Pass, std::vector<readings::Reading>>;

/// Passes with readings, oldest first.
std::vector<const PassWithReadings *> measuredPasses(const RecordInput &input)
{
    std::vector<const PassWithReadings *> passes;
    for (const PassWithReadings &pass : input.passes)
        if (!pass.second.empty())
            passes.push_back(&pass);
    std::ranges::stable_sort(
        passes, {}, [](const PassWithReadings *pass) { return std::tuple(pass->first.began, pass->first.id); });
    return passes;
}

/// How well a pass can speak for the state in which the instrument leaves.
int finality(Purpose purpose)
{
    switch (purpose) {
    case Purpose::AsLeft:
    case Purpose::Recheck:
        return 2;
    case Purpose::Setting:
        return 1;
    case Purpose::AsFound:
        break;
    }
    return 0;
}

/// The newest of the most final; `passes` must not be empty.
std::size_t chooseAsLeft(std::span<const PassWithReadings *const> passes)
{
    std::size_t chosen = 0;
    for (std::size_t i = 1; i < passes.size(); ++i)
        if (finality(passes[i]->first.purpose) >= finality(passes[chosen]->first.purpose))
            chosen = i;
    return chosen;
}

/// The first as-found pass since an earlier round of work was left; null for none.
const PassWithReadings *chooseAsFound(std::span<const PassWithReadings *const> before)
{
    const PassWithReadings *found = nullptr;
    bool roundIsOver = true;
    for (const PassWithReadings *pass : before) {
        if (pass->first.purpose == Purpose::AsFound && roundIsOver) {
            found = pass;
            roundIsOver = false;
        }
        if (pass->first.purpose == Purpose::AsLeft)
            roundIsOver = true;
    }
    return found;
}

PassPart partOf(const PassWithReadings &pass, const RecordInput &input)
{
    PassPart part{pass.first, pass.second, readings::meansOf(pass.second), {}, {}, {}};
    part.judgement = tolerance::judge(part.values, input.set, input.instrument.compass, input.instrument.sections);
    tolerance::weighDoubt(part.judgement, part.readings, part.pass.gauge);
    part.summaries = analysis::summarise(part.judgement, &input.set);
    if (const auto felt = input.felt.find(pass.first.id); felt != input.felt.end())
        part.felt = felt->second;
    std::ranges::sort(part.felt);
    return part;
}

bool isException(const Verdict &verdict)
{
    return verdict.status == Status::Out || verdict.status == Status::Marginal || verdict.status == Status::Missing ||
           verdict.uneven;
}

std::vector<Verdict> exceptionsOf(const tolerance::Judgement &judgement)
{
    std::vector<Verdict> exceptions;
    std::ranges::copy_if(judgement.verdicts, std::back_inserter(exceptions), isException);
    std::ranges::stable_sort(exceptions, {}, [](const Verdict &verdict) {
        return std::tuple(-verdict.halfWidths().value_or(-1), verdict.status == Status::Missing, verdict.quantity,
                          verdict.note);
    });
    return exceptions;
}

std::vector<Signature> signaturesOf(const decisions::Standing &standing)
{
    std::vector<Signature> signatures;
    if (!decisions::isSigned(standing))
        return signatures; // opened again: nobody stands for what it says now
    std::string whyAgain;
    for (const decisions::StandingChange &change : standing) {
        if (change.change == decisions::StandingChange::Change::Reopened)
            whyAgain = change.words;
        else
            signatures.push_back({change.person, change.at, change.revision, whyAgain});
    }
    return signatures;
}

/// Adds what was decided about the pass.
void takeDecisions(SaleRecord &record, const PassPart &part, const RecordInput &input)
{
    const auto decided = input.decided.find(part.pass.id);
    if (decided == input.decided.end())
        return;
    const auto concessions = concessionsOf(part.judgement, decided->second);
    record.concessions.insert(record.concessions.end(), concessions.begin(), concessions.end());
    const auto signatures = signaturesOf(decided->second.standing);
    record.signatures.insert(record.signatures.end(), signatures.begin(), signatures.end());
}

/// `upTo`: the passes up to the one as left.
std::vector<EarlierConcession> earlierIn(std::span<const PassWithReadings *const> upTo, const RecordInput &input)
{
    std::vector<DecidedPass> passes;
    for (const PassWithReadings *pass : upTo) {
        DecidedPass decided{pass->first, {}, {}};
        decided.judgement = tolerance::judge(readings::meansOf(pass->second), input.set, input.instrument.compass,
                                             input.instrument.sections);
        if (const auto made = input.decided.find(pass->first.id); made != input.decided.end())
            decided.decided = made->second;
        passes.push_back(std::move(decided));
    }
    return earlierConcessionsOf(passes);
}

void sortDecisions(SaleRecord &record)
{
    std::ranges::stable_sort(record.concessions, {}, [](const Concession &concession) {
        return std::pair(concession.quantity, concession.note);
    });
    std::ranges::stable_sort(record.signatures, {}, &Signature::at);
}

outcome::Fault wrongAction(const RecordInput &input)
{
    return {{},
            0,
            "the tolerance set \"" + input.set.name + "\" is for a " + std::string(catalogue::idOf(input.set.action)) +
                " action and the instrument has a " + std::string(catalogue::idOf(input.instrument.action)) +
                " one; choose a set for it"};
}

const readings::Pass *leftBeforeIn(std::span<const PassWithReadings *const> measured, const readings::Pass &recheck)
{
    std::vector<readings::Pass> passes;
    for (const PassWithReadings *pass : measured)
        passes.push_back(pass->first);
    const readings::Pass *left = analysis::leftBefore(passes, recheck);
    if (left == nullptr)
        return nullptr;
    return &(*std::ranges::find(measured, left->id, [](const PassWithReadings *pass) {
                return pass->first.id;
            }))->first;
}

/// How much of what was read before was read again.
double coverage(const PassWithReadings &again, const PassWithReadings &before)
{
    const auto pairsOf = [](const PassWithReadings &pass) {
        std::set<std::pair<catalogue::Quantity, keyboard::Note>> pairs;
        for (const readings::Reading &reading : pass.second)
            pairs.emplace(reading.place.quantity, reading.place.note);
        return pairs;
    };
    const auto now = pairsOf(again);
    const auto then = pairsOf(before);
    const auto both = std::ranges::count_if(then, [&](const auto &pair) { return now.contains(pair); });
    return static_cast<double>(both) / static_cast<double>(then.size());
}

/// Where the pass as left stands that a partial recheck is about; absent where `chosen` is no such recheck.
std::optional<std::size_t> leftOfPartialRecheck(std::span<const PassWithReadings *const> passes, std::size_t chosen)
{
    const PassWithReadings &recheck = *passes[chosen];
    if (recheck.first.purpose != Purpose::Recheck)
        return std::nullopt;
    const readings::Pass *left = leftBeforeIn(passes, recheck.first);
    if (left == nullptr)
        return std::nullopt;
    const auto at = std::ranges::find_if(passes, [&](const PassWithReadings *pass) { return &pass->first == left; });
    if (coverage(recheck, **at) >= wholeRecheck)
        return std::nullopt;
    return static_cast<std::size_t>(at - passes.begin());
}

PassPart recheckOf(const PassWithReadings &pass, const RecordInput &input)
{
    PassPart part = partOf(pass, input);
    std::erase_if(part.judgement.verdicts, [](const Verdict &verdict) { return verdict.status == Status::Missing; });
    part.summaries = analysis::summarise(part.judgement, &input.set);
    return part;
}

/// A recheck beside what it rechecks; absent for any other pass, and where nothing was left before.
std::optional<Since> sinceBefore(const SaleRecord &record, std::span<const PassWithReadings *const> measured)
{
    const PassPart &now = record.newest();
    if (now.pass.purpose != Purpose::Recheck)
        return std::nullopt;
    const readings::Pass *left = leftBeforeIn(measured, now.pass);
    if (left == nullptr)
        return std::nullopt;
    const auto with =
        std::ranges::find(measured, left->id, [](const PassWithReadings *pass) { return pass->first.id; });
    const analysis::MeasuredPass before{*left, readings::meansOf((*with)->second)};
    return Since{*left,
                 analysis::driftBetween(before, {now.pass, now.values}, record.instrument.sections, &record.set)};
}

SaleRecord headOf(const RecordInput &input)
{
    SaleRecord record;
    record.instrument = input.instrument;
    record.dossier = input.dossier;
    if (!input.tellSale)
        record.dossier.sale = {};
    record.pictures = input.pictures;
    record.set = input.set;
    record.issued = input.issued;
    record.issuedBy = input.issuedBy;
    record.workshop = input.workshop;
    record.programVersion = input.programVersion;
    if (input.tellSale)
        record.owner = input.instrument.owner;
    record.cautions = cautionsFor(input.instrument);
    record.history = input.history;
    record.concessions = input.concessions;
    record.signatures = input.signatures;
    record.replaces = input.replaces;
    return record;
}

} // namespace

int judgedPairsOf(const PassPart &part)
{
    return static_cast<int>(std::ranges::count_if(
        part.judgement.verdicts, [](const Verdict &verdict) { return verdict.status != Status::Unjudged; }));
}

int pairsInsideOf(const PassPart &part)
{
    return static_cast<int>(std::ranges::count_if(part.judgement.verdicts, [](const Verdict &verdict) {
        return verdict.status == Status::In || verdict.status == Status::Marginal;
    }));
}

int pairsInDoubtOf(const PassPart &part)
{
    return static_cast<int>(std::ranges::count_if(part.judgement.verdicts, [](const Verdict &verdict) {
        return (verdict.status == Status::In || verdict.status == Status::Marginal) && verdict.withinDoubt();
    }));
}

int pairsInOf(const PassPart &part)
{
    return static_cast<int>(std::ranges::count(part.judgement.verdicts, Status::In, &Verdict::status));
}

int SaleRecord::judgedPairs() const
{
    return judgedPairsOf(asLeft);
}

int SaleRecord::pairsInside() const
{
    return pairsInsideOf(asLeft);
}

std::vector<EarlierConcession> SaleRecord::earlierThatStand() const
{
    std::vector<EarlierConcession> standing;
    std::ranges::copy_if(earlierConcessions, std::back_inserter(standing),
                         [](const EarlierConcession &earlier) { return earlier.fate == Fate::Stands; });
    return standing;
}

std::vector<catalogue::Quantity> SaleRecord::notMeasured() const
{
    std::vector<catalogue::Quantity> quantities;
    for (const catalogue::QuantityInfo &info : catalogue::all())
        if (catalogue::has(instrument.action, info.quantity) && asLeft.values.column(info.quantity).empty())
            quantities.push_back(info.quantity);
    return quantities;
}

outcome::Outcome<SaleRecord> assemble(const RecordInput &input)
{
    if (input.set.action != input.instrument.action)
        return wrongAction(input);
    const auto passes = measuredPasses(input);
    if (passes.empty())
        return outcome::Fault{{},
                              0,
                              "\"" + input.instrument.name +
                                  "\" has no readings yet; a record needs at least one pass with readings"};
    SaleRecord record = headOf(input);
    const std::size_t newest = chooseAsLeft(passes);
    const std::size_t left = leftOfPartialRecheck(passes, newest).value_or(newest);
    record.asLeft = partOf(*passes[left], input);
    takeDecisions(record, record.asLeft, input);
    if (left != newest) {
        record.recheck = recheckOf(*passes[newest], input);
        takeDecisions(record, *record.recheck, input);
    }
    sortDecisions(record);
    record.earlierConcessions = earlierIn(std::span(passes).first(left + 1), input);
    if (const auto *found = chooseAsFound(std::span(passes).first(left))) {
        record.asFound = partOf(*found, input);
        record.change = analysis::compare(record.asFound->values, record.asLeft.values, &input.set);
    }
    for (const SpotCheckPass &made : input.spotChecks)
        if (made.check.checked == record.asLeft.pass.id && !made.readings.empty())
            record.secondReadings.push_back(secondReadingOf(made, record.asLeft.values, input.set));
    record.since = sinceBefore(record, passes);
    record.exceptions = exceptionsOf(record.asLeft.judgement);
    return record;
}

} // namespace hammerline::sale_record
