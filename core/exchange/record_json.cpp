// The data of a record: what the paper shows and what it was worked out from, so that a reader can judge it again. The
// owner is left out: a record goes to strangers.
#include "exchange/answers_json.h"

#include "exchange/inside/answer_parts.h"
#include "exchange/inside/dossier_parts.h"
#include "sale_record/record_number.h"

namespace hammerline::exchange {
namespace {

OrderedJson fittingsTree(const std::vector<instrument::Fitting> &fittings)
{
    OrderedJson list = OrderedJson::array();
    for (const auto &fitting : fittings) {
        OrderedJson json;
        json["first_note"] = fitting.notes.first.number();
        json["last_note"] = fitting.notes.last.number();
        json["kind"] = fitting.kind;
        list.push_back(json);
    }
    return list;
}

OrderedJson sectionsTree(const keyboard::Sections &sections)
{
    OrderedJson list = OrderedJson::array();
    for (const auto &section : sections) {
        OrderedJson json;
        json["name"] = section.name;
        json["first_note"] = section.notes.first.number();
        json["last_note"] = section.notes.last.number();
        list.push_back(json);
    }
    return list;
}

/// An empty list puts nothing.
void putList(OrderedJson &json, const std::string &key, OrderedJson list)
{
    if (!list.empty())
        json[key] = std::move(list);
}

OrderedJson instrumentTree(const instrument::Instrument &instrument)
{
    OrderedJson json;
    putText(json, "uid", instrument.uid);
    json["name"] = instrument.name;
    json["action"] = catalogue::idOf(instrument.action);
    json["first_note"] = instrument.compass.first.number();
    json["last_note"] = instrument.compass.last.number();
    putList(json, "sections", sectionsTree(instrument.sections));
    putText(json, "maker", instrument.maker);
    putText(json, "model", instrument.model);
    putText(json, "serial", instrument.serial);
    putCount(json, "year", instrument.year);
    if (instrument.size)
        putAmount(json, "size", units::Amount(*instrument.size));
    putList(json, "stringing", fittingsTree(instrument.stringing));
    putList(json, "dampers", fittingsTree(instrument.dampers));
    putText(json, "condition", instrument.condition);
    return json; // its remark is the workshop's own
}

OrderedJson climateTree(const readings::Climate &climate)
{
    OrderedJson json = OrderedJson::object();
    putNumber(json, "celsius", climate.celsius);
    putNumber(json, "relative_humidity_percent", climate.relativeHumidityPercent);
    return json;
}

OrderedJson gaugeTree(const readings::Gauge &gauge)
{
    OrderedJson json = OrderedJson::object();
    putText(json, "name", gauge.name);
    if (gauge.resolution != units::Length())
        putAmount(json, "resolution", units::Amount(gauge.resolution));
    if (gauge.expandedUncertainty != units::Length())
        putAmount(json, "expanded_uncertainty", units::Amount(gauge.expandedUncertainty));
    return json;
}

OrderedJson passTree(const readings::Pass &pass)
{
    OrderedJson json;
    putText(json, "uid", pass.uid);
    json["purpose"] = readings::idOf(pass.purpose);
    json["began"] = readings::rfc3339(pass.began);
    putText(json, "person", pass.person);
    putList(json, "climate", climateTree(pass.climate));
    putList(json, "gauge", gaugeTree(pass.gauge));
    json["dip_datum"] = readings::idOf(pass.dipDatum);
    json["drop_datum"] = readings::idOf(pass.dropDatum);
    putText(json, "remark", pass.remark);
    return json;
}

OrderedJson takeTree(const readings::Reading &reading)
{
    OrderedJson json;
    json["note"] = reading.place.note.number();
    json["quantity"] = catalogue::idOf(reading.place.quantity);
    json["take"] = reading.place.take;
    putAmount(json, "value", reading.value);
    putText(json, "typed", reading.typed);
    putText(json, "remark", reading.remark);
    putText(json, "person", reading.person);
    if (reading.at != readings::Instant())
        json["at"] = readings::rfc3339(reading.at);
    return json;
}

template <typename List>
OrderedJson verdictsTree(const List &verdicts)
{
    OrderedJson list = OrderedJson::array();
    for (const auto &verdict : verdicts)
        list.push_back(verdictTree(verdict));
    return list;
}

OrderedJson partTree(const sale_record::PassPart &part)
{
    OrderedJson json;
    json["pass"] = passTree(part.pass);
    json["takes"] = OrderedJson::array();
    for (const auto &reading : part.readings)
        json["takes"].push_back(takeTree(reading));
    json["readings"] = verdictsTree(part.judgement.verdicts);
    json["quantities"] = summariesTree(part.summaries);
    for (const auto &felt : part.felt)
        json["felt_faults"].push_back({{"note", felt.note.number()}, {"fault", felt.fault}});
    return json;
}

OrderedJson historyTree(const sale_record::HistoryPin &history)
{
    OrderedJson json;
    json["deed"] = history.deed;
    json["digest"] = history.digest;
    return json;
}

OrderedJson replacedTree(const sale_record::Replaced &replaced)
{
    OrderedJson json;
    json["revision"] = replaced.revision;
    json["issued"] = readings::rfc3339(replaced.issued);
    json["sha256"] = replaced.fileDigest;
    return json;
}

OrderedJson concessionTree(const sale_record::Concession &concession)
{
    OrderedJson json;
    json["note"] = concession.note.number();
    json["quantity"] = catalogue::idOf(concession.quantity);
    putAmount(json, "value", concession.value);
    json["reason"] = concession.reason;
    putText(json, "person", concession.person);
    json["at"] = readings::rfc3339(concession.at);
    return json;
}

OrderedJson concessionsTree(const std::vector<sale_record::Concession> &concessions)
{
    OrderedJson list = OrderedJson::array();
    for (const auto &concession : concessions)
        list.push_back(concessionTree(concession));
    return list;
}

OrderedJson earlierConcessionsTree(const std::vector<sale_record::EarlierConcession> &earlier)
{
    OrderedJson list = OrderedJson::array();
    for (const auto &one : earlier) {
        OrderedJson json = concessionTree(one.made);
        putText(json, "pass_uid", one.pass.uid);
        json["pass_purpose"] = readings::idOf(one.pass.purpose);
        json["pass_began"] = readings::rfc3339(one.pass.began);
        json["fate"] = idOf(one.fate);
        putAmount(json, "value_now", one.valueNow);
        list.push_back(json);
    }
    return list;
}

OrderedJson signaturesTree(const std::vector<sale_record::Signature> &signatures)
{
    OrderedJson list = OrderedJson::array();
    for (const auto &signature : signatures) {
        OrderedJson json;
        json["person"] = signature.person;
        json["at"] = readings::rfc3339(signature.at);
        json["revision"] = signature.revision;
        putText(json, "reason", signature.reason);
        list.push_back(json);
    }
    return list;
}

OrderedJson driftTree(const analysis::Drift &drift)
{
    const auto dimension = catalogue::infoOf(drift.quantity).dimension;
    OrderedJson json;
    json["quantity"] = catalogue::idOf(drift.quantity);
    putText(json, "section", drift.section);
    json["pairs"] = drift.change.pairs;
    putMeasure(json, "mean_change", dimension, drift.change.meanChange);
    putMeasure(json, "told_apart", dimension, drift.toldApart);
    json["way"] = analysis::idOf(drift.way);
    putCount(json, "moved", drift.moved);
    json["most_note"] = drift.most.number();
    putMeasure(json, "most_change", dimension, drift.mostChange);
    return json;
}

OrderedJson sinceTree(const sale_record::Since &since)
{
    OrderedJson json;
    json["before"] = passTree(since.before);
    json["changes"] = OrderedJson::array();
    for (const auto &drift : since.changes)
        json["changes"].push_back(driftTree(drift));
    return json;
}

OrderedJson findingTree(const decisions::SpotFinding &finding)
{
    OrderedJson json;
    json["quantity"] = catalogue::idOf(finding.quantity);
    json["notes"] = finding.notes;
    json["read_again"] = finding.readAgain();
    json["out"] = finding.out.size();
    if (finding.proof)
        json["most_out"] = finding.proof->mostOut;
    return json;
}

OrderedJson spotCheckTree(const sale_record::SecondReading &told)
{
    OrderedJson json;
    json["pass"] = passTree(told.pass);
    json["seed"] = told.check.seed;
    json["notes"] = OrderedJson::array();
    for (const keyboard::Note note : told.check.notes)
        json["notes"].push_back(note.number());
    json["findings"] = OrderedJson::array();
    analysis::Comparisons agreement;
    for (const decisions::SpotFinding &finding : told.findings) {
        json["findings"].push_back(findingTree(finding));
        agreement.emplace(finding.quantity, *finding.agreement);
    }
    json["agreement"] = comparisonsTree(agreement);
    return json;
}

OrderedJson spotChecksTree(const std::vector<sale_record::SecondReading> &all)
{
    OrderedJson list = OrderedJson::array();
    for (const sale_record::SecondReading &told : all)
        list.push_back(spotCheckTree(told));
    return list;
}

std::string_view idOf(sale_record::Caution caution)
{
    using sale_record::Caution;
    switch (caution) {
    case Caution::StringTension:
        return "string-tension";
    case Caution::TallUprightTips:
        return "tall-upright-tips";
    case Caution::LeadInKeys:
        return "lead-in-keys";
    case Caution::IvoryLaw:
        return "ivory-law";
    case Caution::Dust:
        return "dust";
    case Caution::ClimateMovesIt:
        return "climate-moves-it";
    }
    return "";
}

void putHead(OrderedJson &json, const sale_record::SaleRecord &record)
{
    json["number"] = sale_record::numberOf(record);
    json["issued"] = readings::rfc3339(record.issued);
    putText(json, "issued_by", record.issuedBy);
    putText(json, "workshop", record.workshop);
    putText(json, "program_version", record.programVersion);
    json["revision"] = record.revision();
    if (record.replaces)
        json["replaces"] = replacedTree(*record.replaces);
    if (record.history.deed != 0)
        json["history"] = historyTree(record.history);
}

} // namespace

std::string recordJson(const sale_record::SaleRecord &record)
{
    OrderedJson json = documentHead("hammerline-record", 1);
    putHead(json, record);
    json["instrument"] = instrumentTree(record.instrument);
    putText(json, "owner", record.owner);
    putDossier(json, record.dossier);
    json["tolerances"] = toleranceSetTree(record.set);
    json["judged_pairs"] = record.judgedPairs();
    json["pairs_inside"] = record.pairsInside();
    json["pairs_in_doubt"] = sale_record::pairsInDoubtOf(record.asLeft);
    if (record.asFound)
        json["as_found"] = partTree(*record.asFound);
    json["as_left"] = partTree(record.asLeft);
    if (record.recheck)
        json["recheck"] = partTree(*record.recheck);
    if (!record.change.empty())
        json["change"] = comparisonsTree(record.change);
    if (record.since)
        json["since"] = sinceTree(*record.since);
    putList(json, "spot_checks", spotChecksTree(record.secondReadings));
    json["exceptions"] = verdictsTree(record.exceptions);
    putList(json, "concessions", concessionsTree(record.concessions));
    putList(json, "earlier_concessions", earlierConcessionsTree(record.earlierConcessions));
    putList(json, "signatures", signaturesTree(record.signatures));
    json["not_measured"] = OrderedJson::array();
    for (const auto quantity : record.notMeasured())
        json["not_measured"].push_back(catalogue::idOf(quantity));
    json["cautions"] = OrderedJson::array();
    for (const auto caution : record.cautions)
        json["cautions"].push_back(idOf(caution));
    return documentText(json);
}

} // namespace hammerline::exchange
