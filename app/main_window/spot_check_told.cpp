#include "main_window/spot_check_told.h"

#include "wording/counted.h"
#include "wording/wording.h"

#include <QCoreApplication>

#include <algorithm>

namespace hammerline::main_window {

namespace {

using catalogue::Quantity;
using decisions::SpotFinding;

QString tr(const char *text)
{
    return QCoreApplication::translate("spot_check", text);
}

tolerance::ToleranceSet setToJudgeBy(const Workshop &workshop)
{
    if (workshop.set())
        return *workshop.set();
    tolerance::ToleranceSet none;
    none.action = workshop.instrument()->action;
    return none;
}

charts::ChartData chartOf(const Workshop &workshop, const SpotCheckTold &told, const wording::NumberForm &form)
{
    charts::ChartData chart;
    chart.question = charts::Question::DoTheyAgree;
    chart.compass = workshop.instrument()->compass;
    chart.sections = workshop.instrument()->sections;
    chart.now = workshop.pass()->judgement;
    std::erase_if(chart.now.verdicts, [&told](const tolerance::Verdict &verdict) {
        return !std::ranges::binary_search(told.check.notes, verdict.note);
    });
    chart.before = tolerance::judge(workshop.book().values(told.checked.id), setToJudgeBy(workshop), chart.compass,
                                    chart.sections);
    chart.form = form;
    chart.nowName = nameOf(*workshop.pass());
    chart.beforeName = wording::nameOf(told.checked.purpose);
    chart.nowPerson = QString::fromStdString(workshop.pass()->pass.person);
    chart.beforePerson = QString::fromStdString(told.checked.person);
    chart.subject = QString::fromStdString(workshop.instrument()->name);
    return chart;
}

QString namesOf(const std::vector<keyboard::Note> &notes)
{
    QStringList names;
    for (const keyboard::Note note : notes)
        names << wording::nameOf(note);
    return names.join(", ");
}

QString personOf(const readings::Pass &pass)
{
    return pass.person.empty() ? tr("somebody without a name") : QString::fromStdString(pass.person);
}

QString dayOf(readings::Instant instant)
{
    return QString::fromStdString(readings::isoDate(instant));
}

QString foundText(const SpotFinding &finding)
{
    const auto out = static_cast<int>(finding.out.size());
    const QString read =
        finding.sample == 1
            ? wording::counted(finding.notes, tr("The one note was read again"), tr("1 of %1 notes was read again"))
            : tr("%1 of %2 notes were read again").arg(finding.sample).arg(finding.notes);
    if (out == 0)
        return (finding.sample == 1 ? tr("%1; it is not out.") : tr("%1; none of them is out.")).arg(read);
    if (finding.sample == 1)
        return tr("%1; it is out: %2.").arg(read, namesOf(finding.out));
    return (out == 1 ? tr("%1; 1 of them is out: %2.").arg(read) : tr("%1; %2 of them are out: %3.").arg(read).arg(out))
        .arg(namesOf(finding.out));
}

QString provedText(const SpotFinding &finding)
{
    const int most = finding.proof->mostOut;
    if (finding.sample == finding.notes)
        return tr("Every note was read again: what was found is all there is.");
    if (most == 0)
        return tr("With 95 % confidence none of the %1 notes is out.").arg(finding.notes);
    const QString among = finding.out.empty() ? QString() : tr(", those that were found among them");
    return (most == 1 ? tr("With 95 % confidence at most %1 of the %2 notes is out%3.")
                      : tr("With 95 % confidence at most %1 of the %2 notes are out%3."))
        .arg(most)
        .arg(finding.notes)
        .arg(among);
}

QString biasText(const analysis::Comparison &agreement, const charts::ChartData &chart)
{
    if (agreement.meanChange == 0)
        return tr("On the average the second reading is the same as the first.");
    const QString text =
        tr("On the average the second reading differs by %1").arg(charts::changeText(agreement.meanChange, chart));
    if (!agreement.ci95Low || !agreement.ci95High)
        return text + '.';
    const QString range =
        tr("%1 to %2")
            .arg(charts::changeText(*agreement.ci95Low, chart), charts::changeText(*agreement.ci95High, chart));
    const bool byChance = *agreement.ci95Low <= 0 && *agreement.ci95High >= 0;
    return (byChance ? tr("%1 (95 % interval %2): no more than chance would give.")
                     : tr("%1 (95 % interval %2): more than chance, one of the two reads larger."))
        .arg(text, range);
}

} // namespace

std::optional<SpotCheckTold> spotCheckTold(const Workshop &workshop, const wording::NumberForm &form)
{
    const PassInView *pass = workshop.pass();
    const auto checked = pass && pass->check ? workshop.book().pass(pass->check->checked) : std::nullopt;
    if (!checked)
        return std::nullopt;
    SpotCheckTold told{.check = *pass->check, .checked = *checked, .again = pass->pass};
    const auto before = workshop.book().values(checked->id);
    told.findings =
        decisions::spotFindings(told.check, before, pass->values, setToJudgeBy(workshop), spotCheckConfidence).value();
    told.unread = pass->unread;
    charts::ChartData chart = chartOf(workshop, told, form);
    for (const SpotFinding &finding : told.findings) {
        chart.quantity = finding.quantity;
        told.charts.emplace(finding.quantity, chart);
    }
    return told;
}

QString headingOf(const SpotCheckTold &told)
{
    return tr("What the spot check shows of “%1”, %2")
        .arg(wording::nameOf(told.checked.purpose), dayOf(told.checked.began));
}

QString originOf(const SpotCheckTold &told)
{
    const QString notes = wording::counted(std::ssize(told.check.notes), tr("1 note"), tr("%1 notes"));
    QString text = tr("%1, drawn by seed %2. Read by %3, read again by %4 on %5.")
                       .arg(notes)
                       .arg(told.check.seed)
                       .arg(personOf(told.checked), personOf(told.again), dayOf(told.again.began));
    if (told.checked.person == told.again.person)
        text += ' ' + tr("It is the same person: this says how one repeats, not how two agree.");
    if (told.unread > 0)
        text += ' ' + wording::counted(told.unread, tr("1 value of the sample is not read again yet."),
                                       tr("%1 values of the sample are not read again yet."));
    return text;
}

QStringList proofOf(const SpotFinding &finding)
{
    if (finding.notes == 0)
        return {tr("Nothing of it is judged, so nothing is proved; choose what the instrument is judged by.")};
    if (!finding.proof)
        return {tr("Nothing of the sample is read again yet.")};
    return {foundText(finding), provedText(finding)};
}

QStringList agreementOf(const SpotFinding &finding, const SpotCheckTold &told)
{
    if (!finding.agreement)
        return {};
    const analysis::Comparison &agreement = *finding.agreement;
    const charts::ChartData &chart = told.charts.at(finding.quantity);
    QStringList lines{biasText(agreement, chart)};
    if (agreement.agreementLow && agreement.agreementHigh)
        lines << tr("Of 20 such differences 19 lie between %1 and %2.")
                     .arg(charts::changeText(*agreement.agreementLow, chart),
                          charts::changeText(*agreement.agreementHigh, chart));
    return lines;
}

QString worthOfSamples(int notes)
{
    const auto proof = analysis::spotCheck(notes, 0, 0, spotCheckConfidence);
    QStringList parts;
    for (const analysis::SampleToProve &each :
         proof ? proof.value().sampleToProve : std::vector<analysis::SampleToProve>{})
        if (each.sample > 0)
            parts << (each.atMostOut == 0 ? wording::counted(each.sample, tr("1 note proves that none is out"),
                                                             tr("%1 notes prove that none is out"))
                                          : tr("%1 that at most %2 are").arg(each.sample).arg(each.atMostOut));
    return parts.join(", ");
}

} // namespace hammerline::main_window
