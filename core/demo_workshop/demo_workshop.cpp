#include "demo_workshop/demo_workshop.h"

#include "demo_workshop/inside/action_state.h"
#include "demo_workshop/inside/dossiers.h"
#include "demo_workshop/inside/lead.h"
#include "demo_workshop/inside/measuring.h"
#include "demo_workshop/inside/piano_plans.h"
#include "exchange/built_in.h"

#include <map>

namespace hammerline::demo_workshop {
namespace {

/// What happens to the action between the pass before and this one.
void live(ActionState &state, const PassPlan &pass, Dice &dice)
{
    switch (pass.purpose) {
    case readings::Purpose::AsFound:
        break;
    case readings::Purpose::Setting:
    case readings::Purpose::AsLeft:
        state.regulate(pass, dice);
        break;
    case readings::Purpose::Recheck:
        state.settle(dice);
        break;
    }
}

/// What the action is made and measured by; judged by is the first set alone.
tolerance::ToleranceSet everythingRead(const PianoPlan &plan, tolerance::ToleranceSet set)
{
    if (!plan.alsoReadBy.empty())
        set.entries.merge(exchange::findToleranceSet(plan.alsoReadBy).value().set.entries);
    return set;
}

/// Names that are the same in every demonstration, so that one can be handed over into another.
dossier::Dossier withUids(dossier::Dossier dossier, Dice dice)
{
    for (dossier::WorkEntry &entry : dossier.work)
        entry.uid = dice.hexDigits(32);
    for (dossier::Photograph &photograph : dossier.photographs)
        photograph.uid = dice.hexDigits(32);
    return dossier;
}

MadeInstrument madeFrom(const PianoPlan &plan, std::uint64_t seed)
{
    Dice dice(seed, plan.instrument.name);
    const exchange::NamedSet named = exchange::findToleranceSet(plan.setId).value();
    MadeInstrument made{.instrument = plan.instrument,
                        .passes = {},
                        .dossier = withUids(dossierOf(plan), Dice(seed, plan.instrument.name + "dossier"))};
    made.instrument.uid = dice.hexDigits(32);
    made.instrument.toleranceId = named.id;
    made.instrument.toleranceText = named.text;
    const tolerance::ToleranceSet set = everythingRead(plan, named.set);
    ActionState state(plan, set, dice);
    for (const PassPlan &pass : plan.passes) {
        Dice own(seed, plan.instrument.name + pass.began);
        live(state, pass, own);
        made.passes.push_back(measure(state, plan, pass, set, own));
        Dice ofLead(seed, plan.instrument.name + pass.began + "lead");
        lookAt(made.passes.back(), plan, pass, named.set, state, ofLead);
    }
    return made;
}

} // namespace

std::vector<readings::Reading> readingsNow(const MadePass &made)
{
    std::map<readings::Place, readings::Reading> now;
    for (const readings::Reading &reading : made.readings)
        now.emplace(reading.place, reading);
    for (const LeadDeed &deed : made.deeds)
        if (const auto *again = std::get_if<ReadAgain>(&deed.what))
            for (const readings::Reading &reading : again->readings)
                now.insert_or_assign(reading.place, reading);
    std::vector<readings::Reading> readings;
    for (auto &[place, reading] : now)
        readings.push_back(std::move(reading));
    return readings;
}

Workshop makeWorkshop(std::uint64_t seed)
{
    Workshop workshop;
    for (const PianoPlan &plan : pianoPlans())
        workshop.instruments.push_back(madeFrom(plan, seed));
    return workshop;
}

} // namespace hammerline::demo_workshop
