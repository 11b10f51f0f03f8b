#include "demo_workshop/inside/piano_plans.h"

namespace hammerline::demo_workshop {
namespace {

using catalogue::ActionKind;
using catalogue::Quantity;
using instrument::Instrument;
using instrument::State;
using keyboard::Note;
using keyboard::NoteRange;
using readings::Purpose;

constexpr auto ada = "Ada Sample";
constexpr auto ben = "Ben Example";
constexpr auto cleo = "Cleo Invented";
constexpr auto notice = "Invented for demonstration: no such maker or piano exists.";

constexpr NoteRange from(int first, int last)
{
    return {Note(first), Note(last)};
}

constexpr units::Length centimetres(int count)
{
    return units::Length::nanometres(count * std::int64_t{10'000'000});
}

LeadPlan leadOfFullUpright()
{
    return {.sampled = "2024-02-12T08:10:00Z",
            .looked = "2024-02-12T09:40:00Z",
            .unevenSentBack = 4,
            .mended = "2024-02-12T14:05:00Z",
            .whyMissing = "No string, or a hammer glued in today: read when it can be.",
            .signedAt = "2024-02-13T16:20:00Z",
            .reopened = "2024-02-19T08:30:00Z",
            .whyReopened = "Note 3 can be read now that its hammer is in.",
            .readLate = "2024-02-19T10:00:00Z",
            .signedAgain = "2024-02-19T11:15:00Z",
            .delivered = "2024-02-21T15:00:00Z"};
}

PianoPlan fullUpright()
{
    PianoPlan plan;
    plan.instrument = {
        .name = "Quillerby 131",
        .action = ActionKind::Vertical,
        .compass = from(1, 88),
        .sections = {{"bass", from(1, 27)}, {"tenor", from(28, 58)}, {"treble", from(59, 88)}},
        .maker = "Quillerby",
        .model = "131",
        .serial = "INVENTED-0131",
        .year = 1927,
        .size = centimetres(131),
        .stringing = {{from(1, 8), "one covered string"},
                      {from(9, 27), "two covered strings"},
                      {from(28, 88), "three plain strings"}},
        .dampers = {{from(1, 27), "wedge"}, {from(28, 58), "double flat"}, {from(59, 68), "single flat"}},
        .condition = "Played daily in a school hall; hammers grooved, front punchings hard.",
        .owner = "Invented Hall",
        .remark = notice,
        .state = State::SignedOff};
    plan.setId = "full-upright";
    plan.wear = 1.1;
    plan.gaps = {{Note(3), {}, "2024-02-19T00:00:00Z"}, {Note(71), {Quantity::LetOff, Quantity::Checking}}};
    plan.heard = {{Note(40), "double strikes on a slow stroke"}, {Note(52), "returns sluggishly in damp weather"}};
    plan.passes = {{.purpose = Purpose::AsFound,
                    .began = "2024-02-02T09:10:00Z",
                    .person = ada,
                    .climate = {18.5, 62.0},
                    .remark = "Stood in a cold hall until yesterday."},
                   {.purpose = Purpose::Setting,
                    .began = "2024-02-05T08:30:00Z",
                    .person = ada,
                    .climate = {20.0, 48.0},
                    .quantities = {Quantity::Blow, Quantity::LetOff},
                    .spread = 0.3},
                   {.purpose = Purpose::AsLeft,
                    .began = "2024-02-09T13:05:00Z",
                    .person = ada,
                    .climate = {20.5, 46.0},
                    .spread = 0.27,
                    .lead = leadOfFullUpright()},
                   {.purpose = Purpose::Recheck,
                    .began = "2025-02-11T10:00:00Z",
                    .person = ben,
                    .climate = {22.0, 34.0},
                    .remark = "A year on; nothing was turned before measuring.",
                    .lead = {.sampled = "2025-02-12T09:15:00Z",
                             .whyMissing = "The string of this note is still missing; the hall was told.",
                             .signedAt = "2025-02-13T09:00:00Z",
                             .cameBack = "2025-02-11T12:30:00Z"}}};
    plan.passes[2].remark = "Note 3 has a new hammer that is not measured yet.";
    return plan;
}

PianoPlan studioUpright()
{
    PianoPlan plan;
    plan.instrument = {.name = "Tamsel & Rook 118",
                       .action = ActionKind::Vertical,
                       .compass = from(1, 88),
                       .sections = {{"bass", from(1, 29)}, {"treble", from(30, 88)}},
                       .maker = "Tamsel & Rook",
                       .model = "118",
                       .serial = "INVENTED-2218",
                       .year = 1964,
                       .size = centimetres(118),
                       .stringing = {{from(1, 10), "one covered string"},
                                     {from(11, 29), "two covered strings"},
                                     {from(30, 88), "three plain strings"}},
                       .dampers = {{from(1, 29), "wedge"}, {from(30, 66), "flat"}},
                       .condition = "Moth in the damper felt; otherwise little played.",
                       .owner = {},
                       .remark = notice,
                       .state = State::InReview};
    plan.setId = "full-upright";
    plan.wear = 0.7;
    plan.gaps = {{Note(88), {Quantity::Checking}}};
    plan.passes = {{.purpose = Purpose::AsFound,
                    .began = "2024-03-03T09:00:00Z",
                    .person = ben,
                    .climate = {19.0, 51.0},
                    .writing = Writing::SixtyFourthsOfInch,
                    .remark = "Read off a steel rule to the nearest 1/64 in."},
                   {.purpose = Purpose::AsLeft,
                    .began = "2024-03-06T09:20:00Z",
                    .person = ben,
                    .climate = {19.5, 49.0},
                    .writing = Writing::ThousandthsOfInch,
                    .spread = 0.34,
                    .forgotten = 0.01}};
    return plan;
}

PianoPlan shortCompass()
{
    PianoPlan plan;
    plan.instrument = {.name = "Brannagort cottage upright",
                       .action = ActionKind::Vertical,
                       .compass = from(1, 85),
                       .sections = {{"bass", from(1, 25)}, {"tenor", from(26, 50)}, {"treble", from(51, 85)}},
                       .maker = "Brannagort & Niece",
                       .model = "cottage",
                       .serial = {},
                       .year = 1898,
                       .size = centimetres(122),
                       .stringing = {{from(1, 25), "two covered strings"}, {from(26, 85), "two plain strings"}},
                       .dampers = {{from(1, 60), "over the hammers"}},
                       .condition = "Seven octaves. Several hammers gone, bridle straps perished.",
                       .owner = "Invented family",
                       .remark = notice,
                       .state = State::InWork};
    plan.setId = "full-upright";
    plan.wear = 1.3;
    plan.gaps = {{Note(1), {}}, {Note(17), {}}, {Note(18), {}}, {Note(64), {}}, {Note(85), {Quantity::Checking}}};
    plan.heard = {{Note(33), "blocks against the string at the end of a slow stroke"}, {Note(47), "clicks"}};
    plan.passes = {{.purpose = Purpose::AsFound,
                    .began = "2024-03-10T14:00:00Z",
                    .person = cleo,
                    .climate = {17.0, 55.0},
                    .writing = Writing::TenthsOfMillimetre,
                    .remark = "Notes 1, 17, 18 and 64 have no hammer."},
                   {.purpose = Purpose::Setting,
                    .began = "2024-03-17T09:00:00Z",
                    .person = cleo,
                    .climate = {18.5, 50.0},
                    .writing = Writing::TenthsOfMillimetre,
                    .spread = 0.4,
                    .forgotten = 0.05}};
    return plan;
}

PianoPlan console()
{
    PianoPlan plan;
    plan.instrument = {.name = "Ondelmark 108",
                       .action = ActionKind::Vertical,
                       .compass = from(1, 88),
                       .sections = {{"bass", from(1, 31)}, {"treble", from(32, 88)}},
                       .maker = "Ondelmark",
                       .model = "108",
                       .serial = "INVENTED-5108",
                       .year = 1988,
                       .size = centimetres(108),
                       .stringing = {{from(1, 12), "one covered string"},
                                     {from(13, 31), "two covered strings"},
                                     {from(32, 88), "three plain strings"}},
                       .dampers = {{from(1, 31), "wedge"}, {from(32, 65), "flat"}},
                       .condition = "Clean; lost motion throughout.",
                       .owner = {},
                       .remark = notice,
                       .state = State::Delivered};
    plan.setId = "console";
    plan.wear = 0.8;
    plan.passes = {
        {.purpose = Purpose::AsFound, .began = "2023-09-15T08:45:00Z", .person = ada, .climate = {21.0, 57.0}},
        {.purpose = Purpose::AsLeft,
         .began = "2023-09-18T15:30:00Z",
         .person = ada,
         .climate = {21.0, 55.0},
         .spread = 0.24,
         .lead = {.looked = "2023-09-19T09:00:00Z",
                  .unevenSentBack = 2,
                  .mended = "2023-09-19T13:20:00Z",
                  .signedAt = "2023-09-20T10:40:00Z",
                  .delivered = "2023-09-22T14:00:00Z"}},
        {.purpose = Purpose::Recheck,
         .began = "2024-03-20T11:00:00Z",
         .person = ada,
         .climate = {20.0, 39.0},
         .remark = "After a heated winter."}};
    return plan;
}

PianoPlan parlourGrand()
{
    PianoPlan plan;
    plan.instrument = {.name = "Zirrow 188",
                       .action = ActionKind::Grand,
                       .compass = from(1, 88),
                       .sections = {{"bass", from(1, 20)},
                                    {"tenor", from(21, 49)},
                                    {"treble", from(50, 70)},
                                    {"high treble", from(71, 88)}},
                       .maker = "Zirrow Brothers",
                       .model = "188",
                       .serial = "INVENTED-9188",
                       .year = 1955,
                       .size = centimetres(188),
                       .stringing = {{from(1, 8), "one covered string"},
                                     {from(9, 20), "two covered strings"},
                                     {from(21, 88), "three plain strings"}},
                       .dampers = {{from(1, 20), "wedge"}, {from(21, 49), "split wedge"}, {from(50, 70), "flat"}},
                       .condition = "New hammers fitted elsewhere and never regulated.",
                       .owner = "Invented Conservatory",
                       .remark = notice,
                       .state = State::InReview};
    plan.setId = "grand-under-2m";
    plan.wear = 1.3;
    plan.gaps = {{Note(60), {Quantity::Drop}}};
    plan.heard = {{Note(28), "bobbles"}, {Note(66), "double strikes"}};
    plan.passes = {
        {.purpose = Purpose::AsFound, .began = "2024-03-12T09:30:00Z", .person = cleo, .climate = {20.0, 44.0}},
        {.purpose = Purpose::AsLeft,
         .began = "2024-03-24T16:10:00Z",
         .person = ben,
         .climate = {20.0, 47.0},
         .spread = 0.38,
         .forgotten = 0.06,
         .remark = "Finished late; the lead should look at this one.",
         .lead = {.looked = "2024-03-25T08:20:00Z", .sendsBackFrom = 1.6}}};
    return plan;
}

PianoPlan extendedGrand()
{
    PianoPlan plan;
    plan.instrument = {.name = "Hethlyn 275 with extended bass",
                       .action = ActionKind::Grand,
                       .compass = from(-8, 88),
                       .sections = {{"low bass", from(-8, 0)},
                                    {"bass", from(1, 20)},
                                    {"tenor", from(21, 53)},
                                    {"treble", from(54, 88)}},
                       .maker = "Hethlyn",
                       .model = "275",
                       .serial = "INVENTED-0275",
                       .year = 2004,
                       .size = centimetres(275),
                       .stringing = {{from(-8, 5), "one covered string"},
                                     {from(6, 20), "two covered strings"},
                                     {from(21, 88), "three plain strings"}},
                       .dampers = {{from(-8, 20), "wedge"}, {from(21, 53), "split wedge"}, {from(54, 71), "flat"}},
                       .condition = "Concert use, maintained every month.",
                       .owner = "Invented Concert Rooms",
                       .remark = notice,
                       .state = State::InWork};
    plan.setId = "grand-over-2m";
    plan.alsoReadBy = "grand-touch-weight";
    plan.wear = 0.5;
    plan.passes = {{.purpose = Purpose::AsFound,
                    .began = "2024-03-25T07:30:00Z",
                    .person = ada,
                    .climate = {20.5, 45.0},
                    .writing = Writing::TwentiethsOfMillimetre},
                   {.purpose = Purpose::AsLeft,
                    .began = "2024-03-27T07:15:00Z",
                    .person = ada,
                    .climate = {20.5, 45.0},
                    .takes = 3,
                    .spread = 0.2,
                    .remark = "Three takes of everything."}};
    return plan;
}

PianoPlan babyGrand()
{
    PianoPlan plan;
    plan.instrument = {.name = "Quillerby 152",
                       .action = ActionKind::Grand,
                       .compass = from(1, 88),
                       .sections = {{"bass", from(1, 26)}, {"tenor", from(27, 54)}, {"treble", from(55, 88)}},
                       .maker = "Quillerby",
                       .model = "152",
                       .serial = "INVENTED-0152",
                       .year = 1934,
                       .size = centimetres(152),
                       .condition = "Taken in yesterday.",
                       .owner = {},
                       .remark = notice,
                       .state = State::TakenIn};
    plan.setId = "grand-under-2m";
    plan.wear = 1.0;
    plan.gaps = {{Note(44), {Quantity::Blow}}};
    plan.passes = {{.purpose = Purpose::AsFound,
                    .began = "2024-03-30T10:40:00Z",
                    .person = ben,
                    .climate = {19.0, 52.0},
                    .writing = Writing::TenthsOfMillimetre,
                    .quantities = {Quantity::Blow, Quantity::LetOff},
                    .remark = "Only a first look."}};
    return plan;
}

} // namespace

std::vector<PianoPlan> pianoPlans()
{
    return {fullUpright(), studioUpright(), shortCompass(), console(), parlourGrand(), extendedGrand(), babyGrand()};
}

} // namespace hammerline::demo_workshop
