#include "demo_workshop/inside/lead.h"

#include "analysis/draw_sample.h"
#include "demo_workshop/inside/measuring.h"
#include "tolerance/judge.h"

#include <algorithm>
#include <set>

namespace hammerline::demo_workshop {
namespace {

using catalogue::Quantity;
using decisions::Decision;
using decisions::Kind;

constexpr auto lead = "Dora Specimen";

std::string wordsToSendBack(Quantity quantity)
{
    switch (quantity) {
    case Quantity::LetOff:
        return "Turn the button, then read it again after ten blows.";
    case Quantity::Drop:
        return "Drop after the let-off, please; it was set before.";
    case Quantity::Dip:
    case Quantity::Aftertouch:
        return "Change the front punching, then read dip and aftertouch.";
    case Quantity::Blow:
        return "The rail felt is dented here; shim it and set again.";
    case Quantity::Checking:
        return "Bend the check wire and read it again.";
    case Quantity::LostMotion:
        return "Take the play out at the capstan.";
    default:
        return "Read it again; set it where it still stands out.";
    }
}

std::string whyAccepted(Kind kind, const LeadPlan &plan)
{
    switch (kind) {
    case Kind::Missing:
        return plan.whyMissing;
    case Kind::Uneven:
        return "Within its limits, and the hand does not feel the step.";
    case Kind::Marginal:
        return "So near its limit that the gauge cannot tell.";
    case Kind::Out:
        break;
    }
    return "Moved with the season; to be set at the next regulation, the owner was told.";
}

class LeadAtWork {
public:
    LeadAtWork(MadePass &made, const PianoPlan &plan, const PassPlan &pass, const tolerance::ToleranceSet &judgedBy,
               ActionState &state, Dice &dice)
        : m_made(made), m_plan(plan), m_pass(pass), m_set(judgedBy), m_state(state), m_dice(dice)
    {
    }

    void work();

private:
    struct Item {
        Decision decision{};
        double halfWidths = 0;
    };

    template <class What>
    void add(const std::string &person, const std::string &moment, What what)
    {
        m_made.deeds.push_back({person, readings::parseRfc3339(moment).value(), std::move(what)});
    }
    /// Not accepted as they are now. Without words, person and moment.
    [[nodiscard]] std::vector<Item> open() const;
    void readSample();
    [[nodiscard]] std::vector<decisions::SentBack> sendBack();
    void mend(const std::vector<decisions::SentBack> &items);
    void acceptAll(const std::string &moment);
    void sign(const std::string &moment, const std::string &remark);
    void readLate();
    [[nodiscard]] bool canBeRead(Quantity quantity, keyboard::Note note, const std::string &moment) const
    {
        return m_set.entries.contains(quantity) && m_state.value(quantity, note) &&
               !isGap(m_plan, quantity, note, moment);
    }
    [[nodiscard]] std::vector<readings::Reading> readAt(const std::set<readings::Place> &places,
                                                        const std::string &person, const std::string &moment);

    MadePass &m_made;
    const PianoPlan &m_plan;
    const PassPlan &m_pass;
    const tolerance::ToleranceSet &m_set;
    ActionState &m_state;
    Dice &m_dice;
    std::vector<decisions::Concession> m_accepted{};
};

std::vector<LeadAtWork::Item> LeadAtWork::open() const
{
    const auto judged = tolerance::judge(readings::meansOf(readingsNow(m_made)), m_set, m_plan.instrument.compass,
                                         m_plan.instrument.sections);
    std::vector<Item> items;
    for (const tolerance::Verdict &verdict : judged.verdicts) {
        const auto kind = decisions::kindOf(verdict);
        const Decision *accepted = decisions::findDecision(m_accepted, verdict.quantity, verdict.note);
        if (kind && (accepted == nullptr || !accepted->holds(verdict.value, *kind)))
            items.push_back(
                {{verdict.quantity, verdict.note, *kind, verdict.value, {}, {}, {}}, verdict.halfWidths().value_or(0)});
    }
    return items;
}

std::vector<readings::Reading> LeadAtWork::readAt(const std::set<readings::Place> &places, const std::string &person,
                                                  const std::string &moment)
{
    std::vector<readings::Reading> readings;
    readings::Instant at = readings::parseRfc3339(moment).value();
    for (const readings::Place &place : places) {
        auto reading = readOnce(m_state.value(place.quantity, place.note).value(), place, m_pass, m_dice);
        at += std::chrono::seconds(m_dice.between(5, 20));
        reading.person = person;
        reading.at = at;
        readings.push_back(std::move(reading));
    }
    return readings;
}

/// Three measures on thirteen notes: enough for a first look, few enough for a coffee break.
void LeadAtWork::readSample()
{
    ReadSample sample{.pass = m_made.pass, .check = {}, .readings = {}};
    sample.pass.uid = m_dice.hexDigits(32);
    sample.pass.purpose = readings::Purpose::Recheck;
    sample.pass.began = readings::parseRfc3339(m_pass.lead.sampled).value();
    sample.pass.person = lead;
    sample.pass.remark = "Read again without the first readings in sight.";
    std::set<keyboard::Note> read;
    for (const readings::Reading &reading : m_made.readings)
        read.insert(reading.place.note);
    sample.check.seed = static_cast<std::uint32_t>(m_dice.between(1, 1'000'000));
    sample.check.notes = analysis::drawSample({read.begin(), read.end()}, 13, sample.check.seed);
    sample.check.quantities = {Quantity::Blow, Quantity::LetOff, Quantity::Dip};
    std::set<readings::Place> places;
    for (const Quantity quantity : sample.check.quantities)
        for (const keyboard::Note note : sample.check.notes)
            if (canBeRead(quantity, note, m_pass.lead.sampled))
                places.insert({quantity, note, 1});
    sample.readings = readAt(places, lead, m_pass.lead.sampled);
    add(lead, m_pass.lead.sampled, std::move(sample));
}

std::vector<decisions::SentBack> LeadAtWork::sendBack()
{
    SendBack sent;
    int uneven = m_pass.lead.unevenSentBack;
    for (Item &item : open()) {
        const bool isOut = item.decision.kind == Kind::Out && item.halfWidths >= m_pass.lead.sendsBackFrom;
        const bool isStep = item.decision.kind == Kind::Uneven && uneven > 0;
        if (!isOut && !isStep)
            continue;
        uneven -= isStep ? 1 : 0;
        item.decision.words = isOut ? wordsToSendBack(item.decision.quantity)
                                    : "A step that the hand feels: bring it in line with the note below.";
        sent.items.push_back(std::move(item.decision));
    }
    if (!sent.items.empty())
        add(lead, m_pass.lead.looked, sent);
    return sent.items;
}

void LeadAtWork::mend(const std::vector<decisions::SentBack> &items)
{
    std::set<readings::Place> places;
    for (const decisions::SentBack &item : items) {
        m_state.mend(item.quantity, item.note, m_dice);
        for (const Quantity touched : {item.quantity, Quantity::Dip, Quantity::Aftertouch})
            if (canBeRead(touched, item.note, m_pass.lead.mended))
                places.insert({touched, item.note, 1});
    }
    if (!places.empty())
        add(m_pass.person, m_pass.lead.mended,
            ReadAgain{readAt(places, m_pass.person, m_pass.lead.mended), "set again as sent back"});
}

void LeadAtWork::acceptAll(const std::string &moment)
{
    Accept accept;
    for (Item &item : open()) {
        item.decision.words = whyAccepted(item.decision.kind, m_pass.lead);
        accept.items.push_back(std::move(item.decision));
    }
    if (accept.items.empty())
        return;
    m_accepted.insert(m_accepted.begin(), accept.items.begin(), accept.items.end()); // the newest are found first
    add(lead, moment, std::move(accept));
}

void LeadAtWork::sign(const std::string &moment, const std::string &remark)
{
    acceptAll(moment);
    add(lead, moment, Sign{remark});
}

void LeadAtWork::readLate()
{
    std::set<readings::Place> places;
    for (const auto &[quantity, entry] : m_set.entries)
        for (const Gap &gap : m_plan.gaps)
            if (isGap(m_plan, quantity, gap.note, m_pass.began) && canBeRead(quantity, gap.note, m_pass.lead.readLate))
                places.insert({quantity, gap.note, 1});
    add(m_pass.person, m_pass.lead.readLate, ReadAgain{readAt(places, m_pass.person, m_pass.lead.readLate), {}});
}

void LeadAtWork::work()
{
    const LeadPlan &does = m_pass.lead;
    if (!does.cameBack.empty())
        add(m_pass.person, does.cameBack, MoveOn{instrument::State::InReview, "measured a year later"});
    if (!does.sampled.empty())
        readSample();
    const auto sent = does.looked.empty() ? std::vector<decisions::SentBack>{} : sendBack();
    if (!does.mended.empty())
        mend(sent);
    if (!does.accepted.empty())
        acceptAll(does.accepted);
    if (!does.signedAt.empty())
        sign(does.signedAt, "Looked at and played through.");
    if (!does.reopened.empty())
        add(lead, does.reopened, Reopen{does.whyReopened});
    if (!does.readLate.empty())
        readLate();
    if (!does.signedAgain.empty())
        sign(does.signedAgain, {});
    if (!does.delivered.empty())
        add(lead, does.delivered, MoveOn{instrument::State::Delivered, "fetched by its owner"});
}

} // namespace

void lookAt(MadePass &made, const PianoPlan &plan, const PassPlan &pass, const tolerance::ToleranceSet &judgedBy,
            ActionState &state, Dice &dice)
{
    LeadAtWork(made, plan, pass, judgedBy, state, dice).work();
}

} // namespace hammerline::demo_workshop
