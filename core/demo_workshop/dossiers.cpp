#include "demo_workshop/inside/dossiers.h"

#include <map>

namespace hammerline::demo_workshop {
namespace {

using dossier::Area;
using dossier::Dossier;
using dossier::Grade;
using dossier::Moment;
using dossier::WorkEntry;
using dossier::WorkKind;
using keyboard::Note;
using keyboard::NoteRange;
using std::chrono::minutes;

constexpr auto ada = "Ada Sample";
constexpr auto ben = "Ben Example";
constexpr auto cleo = "Cleo Invented";

std::chrono::sys_days dayOf(const char *iso)
{
    return dossier::parseIsoDay(iso).value();
}

void addPhotograph(Dossier &made, Moment moment, const char *view, const char *caption)
{
    made.photographs.push_back({.uid = {}, .moment = moment, .view = view, .caption = caption, .digest = {}});
}

void addConditions(Dossier &made, Moment moment, const std::map<Area, dossier::Condition> &conditions)
{
    for (const auto &[area, condition] : conditions)
        made.conditions[{moment, area}] = condition;
}

/// Parts of it are no longer as they were built, which a reader of the record must be told.
std::vector<WorkEntry> workOnFullUpright()
{
    return {{.kind = WorkKind::FoundAltered,
             .what = "key coverings",
             .notes = NoteRange{Note(1), Note(88)},
             .material = "acrylic",
             .person = ada,
             .day = dayOf("2024-02-02"),
             .departure = true,
             .why = "laid over the old coverings before it came to us; the keys are heavier in front"},
            {.kind = WorkKind::Cleaned,
             .what = "action, key frame and key bed",
             .person = ada,
             .day = dayOf("2024-02-05"),
             .took = minutes(150)},
            {.kind = WorkKind::PartsRenewed,
             .what = "bridle straps",
             .notes = NoteRange{Note(1), Note(88)},
             .material = "cotton with leather tips",
             .person = ada,
             .day = dayOf("2024-02-06"),
             .took = minutes(190)},
            {.kind = WorkKind::Repinned,
             .what = "hammer flanges that had play",
             .notes = NoteRange{Note(40), Note(58)},
             .material = "pins half a size up",
             .person = ben,
             .day = dayOf("2024-02-06"),
             .took = minutes(140)},
            {.kind = WorkKind::Recovered,
             .what = "hammer butts",
             .notes = NoteRange{Note(28), Note(58)},
             .material = "woven felt",
             .person = ada,
             .day = dayOf("2024-02-07"),
             .took = minutes(260),
             .departure = true,
             .why = "they were leather; the hall asked for cloth, which wears differently"},
            {.kind = WorkKind::PartsRenewed,
             .what = "hammer of note 3",
             .notes = NoteRange{Note(3), Note(3)},
             .person = ada,
             .day = dayOf("2024-02-09"),
             .took = minutes(35),
             .remark = "the old one was broken at the moulding"},
            {.kind = WorkKind::PedalTrapwork,
             .what = "bushings of both pedals, and a spring",
             .person = ben,
             .day = dayOf("2024-02-08"),
             .took = minutes(70)}};
}

Dossier fullUpright()
{
    Dossier made;
    made.work = workOnFullUpright();
    addConditions(made, Moment::AsReceived,
                  {{Area::Case, {Grade::Serviceable, "dull, scratched on the left side"}},
                   {Area::Keys, {Grade::Serviceable, "level, bushings worn"}},
                   {Area::Action, {Grade::Poor, "hammers grooved, straps perished, one hammer broken"}},
                   {Area::Pedals, {Grade::Poor, "both squeak"}},
                   {Area::Strings, {Grade::Serviceable, "one missing at G6, some rust in the treble"}},
                   {Area::Pinblock, {Grade::Good, "all pins hold"}},
                   {Area::Soundboard, {Grade::Good, "no cracks seen"}}});
    addConditions(made, Moment::AsItLeaves,
                  {{Area::Case, {Grade::Serviceable, "cleaned, scratches left as they are"}},
                   {Area::Keys, {Grade::Good, "squared and levelled"}},
                   {Area::Action, {Grade::Good, "straps and butts new, hammers filed"}},
                   {Area::Pedals, {Grade::Good, "quiet"}},
                   {Area::Strings, {Grade::Serviceable, "the string at G6 is on order"}}});
    addPhotograph(made, Moment::AsReceived, "front", "as it came out of the hall; drawn, no photograph");
    addPhotograph(made, Moment::AsItLeaves, "front", "before it went back; drawn, no photograph");
    addPhotograph(made, Moment::AsReceived, "hammers", "grooves of the strings; drawn, no photograph");
    addPhotograph(made, Moment::AsItLeaves, "hammers", "filed to shape; drawn, no photograph");
    return made;
}

Dossier shortCompass()
{
    Dossier made;
    made.work = {{.kind = WorkKind::FoundAltered,
                  .what = "bass strings",
                  .notes = NoteRange{Note(1), Note(25)},
                  .material = "copper on steel",
                  .person = cleo,
                  .departure = true,
                  .why = "found renewed in another gauge; who did it and when is not known"},
                 {.kind = WorkKind::Repaired,
                  .what = "split key, glued and pinned",
                  .notes = NoteRange{Note(47), Note(47)},
                  .person = cleo,
                  .day = dayOf("2024-03-14"),
                  .took = minutes(45)}};
    addConditions(made, Moment::AsReceived,
                  {{Area::Case, {Grade::Poor, "veneer loose at the fall"}},
                   {Area::Action, {Grade::Poor, "four hammers gone, bridle straps perished"}},
                   {Area::Pinblock, {Grade::Serviceable, "a few loose pins in the treble"}}});
    addPhotograph(made, Moment::AsReceived, "front", "as it came; drawn, no photograph");
    return made;
}

Dossier console()
{
    Dossier made;
    made.work = {{.kind = WorkKind::PartsRenewed,
                  .what = "front rail punchings",
                  .notes = NoteRange{Note(1), Note(88)},
                  .material = "woven felt",
                  .person = ada,
                  .day = dayOf("2023-09-17"),
                  .took = minutes(120)}};
    addConditions(made, Moment::AsReceived,
                  {{Area::Case, {Grade::Good, ""}}, {Area::Action, {Grade::Serviceable, ""}}});
    addConditions(made, Moment::AsItLeaves, {{Area::Case, {Grade::Good, ""}}, {Area::Action, {Grade::Good, ""}}});
    made.sale = {"An invented family", "2400 (invented), delivered", "Fetched on a dry day."};
    return made;
}

Dossier parlourGrand()
{
    Dossier made;
    made.work = {{.kind = WorkKind::FoundAltered,
                  .what = "hammers",
                  .notes = NoteRange{Note(1), Note(88)},
                  .person = cleo,
                  .day = dayOf("2024-03-12"),
                  .departure = true,
                  .why = "fitted elsewhere, longer than the marks of the old ones"},
                 {.kind = WorkKind::Cleaned,
                  .what = "key frame",
                  .person = ben,
                  .day = dayOf("2024-03-18"),
                  .took = minutes(60)}};
    addConditions(made, Moment::AsReceived,
                  {{Area::Case, {Grade::Good, "one caster loose"}}, {Area::Action, {Grade::Serviceable, "never set"}}});
    return made;
}

} // namespace

Dossier dossierOf(const PianoPlan &plan)
{
    static const std::map<std::string, Dossier (*)()> known{{"Quillerby 131", fullUpright},
                                                            {"Brannagort cottage upright", shortCompass},
                                                            {"Ondelmark 108", console},
                                                            {"Zirrow 188", parlourGrand}};
    const auto found = known.find(plan.instrument.name);
    return found == known.end() ? Dossier{} : found->second();
}

} // namespace hammerline::demo_workshop
