#include "exchange/study_json.h"

#include "exchange/inside/json_writer.h"

namespace hammerline::exchange {
namespace {

OrderedJson rowJson(const analysis::AnovaRow &row)
{
    OrderedJson json;
    json["source"] = row.source;
    json["df"] = row.degreesOfFreedom;
    json["ss"] = row.sumOfSquares;
    putNumber(json, "ms", row.meanSquare);
    putNumber(json, "f", row.f);
    putNumber(json, "p", row.p);
    return json;
}

OrderedJson componentsJson(const analysis::Components &components)
{
    OrderedJson json;
    json["repeatability"] = components.repeatability;
    json["reproducibility"] = components.reproducibility;
    json["gauge"] = components.gauge;
    json["note"] = components.note;
    json["total"] = components.total;
    return json;
}

} // namespace

std::string gaugeStudyJson(const analysis::GaugeStudy &study)
{
    OrderedJson json = documentHead("hammerline-gauge-study", 1);
    json["notes"] = study.notes;
    json["people"] = study.people;
    json["takes"] = study.takes;
    json["interaction_pooled"] = study.interactionPooled;
    json["anova"] = OrderedJson::array();
    for (const auto &row : study.anova)
        json["anova"].push_back(rowJson(row));
    json["variance"] = componentsJson(study.variance);
    json["sd"] = componentsJson(study.sd);
    if (study.percentOfTotalSd)
        json["percent_of_total_sd"] = componentsJson(*study.percentOfTotalSd);
    putCount(json, "distinct_categories", study.distinctCategories);
    json["expanded_uncertainty"] = study.expandedUncertainty;
    return documentText(json);
}

std::string spotCheckJson(const analysis::SpotCheck &check)
{
    OrderedJson json = documentHead("hammerline-spot-check", 1);
    json["most_out"] = check.mostOut;
    json["sample_to_prove"] = OrderedJson::array();
    for (const auto &[atMostOut, sample] : check.sampleToProve)
        json["sample_to_prove"].push_back({{"at_most_out", atMostOut}, {"sample", sample}});
    return documentText(json);
}

} // namespace hammerline::exchange
