#include "record_pdf/record_input.h"

#include "exchange/tolerance_json.h"
#include "logbook/verify_instrument.h"

namespace hammerline::record_pdf {

namespace {

outcome::Outcome<tolerance::ToleranceSet> setOf(const logbook::Logbook &book, const instrument::Instrument &instrument)
{
    if (instrument.toleranceText.empty())
        return outcome::Fault{.file = book.path(),
                              .problem =
                                  "no tolerance set is chosen for \"" + instrument.name + "\"; choose one first"};
    return exchange::readToleranceSet(instrument.toleranceText, "tolerance set of \"" + instrument.name + "\"");
}

} // namespace

outcome::Outcome<sale_record::RecordInput> recordInputOf(const logbook::Logbook &book,
                                                         const instrument::Instrument &instrument, const Issue &issue)
{
    const logbook::DeedId newest = book.newestDeed();
    if (auto faults = logbook::historyFaults(book.path(), instrument.id); !faults.empty())
        return faults;
    auto set = setOf(book, instrument);
    if (!set)
        return set.faults();
    sale_record::RecordInput input{.instrument = instrument,
                                   .set = std::move(set).value(),
                                   .issued = issue.at,
                                   .issuedBy = issue.by,
                                   .workshop = issue.workshop,
                                   .programVersion = issue.programVersion,
                                   .history = {newest, book.digest(newest)}};
    for (const readings::Pass &pass : book.passes(instrument.id)) {
        input.passes.emplace_back(pass, book.readings(pass.id));
        for (const logbook::FaultMark &mark : book.faultMarks(pass.id))
            input.felt[pass.id].push_back({mark.note, mark.fault});
        input.decided[pass.id] = book.decisions(pass.id);
    }
    for (const readings::Pass &pass : book.spotChecks(instrument.id))
        if (auto check = book.spotCheck(pass.id))
            input.spotChecks.push_back({pass, book.readings(pass.id), *std::move(check)});
    input.dossier = book.dossier(instrument.id);
    for (const dossier::Photograph &photograph : input.dossier.photographs)
        if (auto jpeg = book.picture(photograph.digest))
            input.pictures[photograph.digest] = *std::move(jpeg);
    return input;
}

} // namespace hammerline::record_pdf
