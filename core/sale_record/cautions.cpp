#include "sale_record/cautions.h"

namespace hammerline::sale_record {

namespace {

bool mayBeOlderThan(const instrument::Instrument &instrument, int year)
{
    return !instrument.year || *instrument.year < year;
}

bool mayTip(const instrument::Instrument &instrument)
{
    return instrument.action == catalogue::ActionKind::Vertical &&
           (!instrument.size || *instrument.size >= tallUpright);
}

} // namespace

std::vector<Caution> cautionsFor(const instrument::Instrument &instrument)
{
    std::vector<Caution> cautions{Caution::StringTension};
    if (mayTip(instrument))
        cautions.push_back(Caution::TallUprightTips);
    if (mayBeOlderThan(instrument, leadUsualBefore))
        cautions.push_back(Caution::LeadInKeys);
    if (mayBeOlderThan(instrument, ivoryUsualBefore))
        cautions.push_back(Caution::IvoryLaw);
    if (mayBeOlderThan(instrument, dustExpectedBefore))
        cautions.push_back(Caution::Dust);
    cautions.push_back(Caution::ClimateMovesIt);
    return cautions;
}

} // namespace hammerline::sale_record
