#include "study_desk/study_findings.h"

#include "charts/study_chart.h"
#include "readings/instant.h"
#include "tolerance/doubt.h"
#include "wording/counted.h"
#include "wording/wording.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <map>

namespace hammerline::study_desk {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("study_desk", text);
}

std::optional<double> finestTyped(const logbook::PlannedStudy &study, const std::vector<logbook::ReadTrial> &read)
{
    std::optional<double> finest;
    for (const logbook::ReadTrial &trial : read) {
        readings::Reading reading;
        reading.place = {study.quantity, trial.stop.note, trial.stop.take};
        reading.value = trial.value;
        reading.typed = trial.typed;
        const auto half = tolerance::halfResolutionOf(reading);
        if (half && (!finest || half->inDisplay() < *finest))
            finest = half->inDisplay();
    }
    return finest;
}

std::optional<double> halfStepOf(const logbook::PlannedStudy &study, const std::vector<logbook::ReadTrial> &read)
{
    const bool stated = study.gauge.resolution != units::Length() &&
                        catalogue::infoOf(study.quantity).dimension == units::Dimension::Length;
    return stated ? std::optional(study.gauge.resolution.inMillimetres() / 2) : finestTyped(study, read);
}

std::map<keyboard::Note, tolerance::Limits> limitsOf(const logbook::PlannedStudy &study,
                                                     const tolerance::ToleranceSet *set)
{
    std::map<keyboard::Note, tolerance::Limits> limits;
    if (set == nullptr)
        return limits;
    for (const keyboard::Note note : study.plan.notes)
        if (const auto at = tolerance::limitsAt(*set, study.quantity, note))
            limits.emplace(note, *at);
    return limits;
}

std::optional<double> narrowest(const std::map<keyboard::Note, tolerance::Limits> &limits)
{
    std::optional<double> least;
    for (const auto &[note, at] : limits)
        if (const auto half = at.halfWidth(); half && (!least || *half < *least))
            least = half;
    return least;
}

QString percent(double part, const wording::NumberForm &form)
{
    return wording::numberText(100 * part, 0, form) + QStringLiteral(" %");
}

QString doubtSentence(const Findings &findings, const wording::NumberForm &form)
{
    const auto dimension = catalogue::infoOf(findings.study.quantity).dimension;
    const QString sentence = tr("A reading with this gauge can be trusted to %1 either way (expanded uncertainty, "
                                "k = 2).")
                                 .arg(charts::sdText(findings.figures.expandedUncertainty, dimension, form));
    if (!findings.halfWidth || *findings.halfWidth <= 0)
        return sentence;
    return sentence + ' ' +
           tr("That is %1 of the narrowest half-width these notes are judged by.")
               .arg(percent(findings.figures.expandedUncertainty / *findings.halfWidth, form));
}

QString kindsSentence(const Findings &findings)
{
    const auto kinds = findings.figures.distinctCategories;
    if (!kinds)
        return tr("The gauge shows no spread at all: its steps are too coarse for these notes, or the values were not "
                  "read blind.");
    if (*kinds == 1)
        return tr("It does not tell one of these notes from another.");
    // AIAG Measurement Systems Analysis (4th ed., 2010) asks for five or more.
    return (*kinds >= 5 ? tr("It tells %1 kinds of note apart, which is enough to judge by.")
                        : tr("It tells only %1 kinds of note apart; five or more would be right."))
        .arg(*kinds);
}

QString helpSentence(const Findings &findings)
{
    const auto &variance = findings.figures.variance;
    if (variance.gauge == 0)
        return {};
    constexpr double mostly = 0.5;
    if (findings.shareOfResolution && *findings.shareOfResolution > mostly)
        return tr("Most of the gauge's own spread is how finely it is read off: a finer scale would help most.");
    if (variance.reproducibility > variance.repeatability)
        return tr("Most of the gauge's own spread lies between people: agreeing on how it is held and read would help "
                  "most.");
    return tr("Most of the gauge's own spread is the same person reading again: a steadier rest or a better view of "
              "the scale would help most.");
}

QString stepSentence(const Findings &findings, const wording::NumberForm &form)
{
    const auto share = findings.shareOfResolution;
    if (!share)
        return {};
    if (*share > 1)
        return tr("The readings agree better than the step of the scale can tell: passes and sets take over the doubt "
                  "of the step alone, %1 either way.")
            .arg(charts::sdText(analysis::uncertaintyToJudgeBy(findings.figures, findings.halfStep),
                                catalogue::infoOf(findings.study.quantity).dimension, form));
    constexpr double aPercent = 0.01;
    if (*share < aPercent)
        return tr("How finely it was read off hardly matters: less than 1 % of the gauge's own variance.");
    return tr("How finely it was read off explains %1 of the gauge's own variance.").arg(percent(*share, form));
}

QString spreadSentence(const Findings &findings, const wording::NumberForm &form)
{
    const auto &variance = findings.figures.variance;
    if (variance.total == 0)
        return tr("Every trial gave the same value.");
    return tr("Of everything that varies, %1 is the notes themselves, %2 is one person to the next and %3 is the same "
              "person reading again.")
        .arg(percent(variance.note / variance.total, form), percent(variance.reproducibility / variance.total, form),
             percent(variance.repeatability / variance.total, form));
}

bool isLength(const Findings &findings)
{
    return catalogue::infoOf(findings.study.quantity).dimension == units::Dimension::Length;
}

/// Oldest first.
std::vector<Findings> finished(logbook::Logbook &book)
{
    std::vector<Findings> found;
    for (const logbook::PlannedStudy &study : logbook::GaugeStudies(book).all())
        if (auto findings = findingsOf(book, study, nullptr))
            found.push_back(*std::move(findings));
    return found;
}

template <typename Key>
std::vector<Findings> valuesOf(std::map<Key, Findings> newest)
{
    std::vector<Findings> found;
    for (auto &[key, findings] : newest)
        found.push_back(std::move(findings));
    return found;
}

} // namespace

std::optional<Findings> findingsOf(logbook::Logbook &book, const logbook::PlannedStudy &study,
                                   const tolerance::ToleranceSet *set)
{
    const auto read = logbook::GaugeStudies(book).trials(study.id);
    if (read.size() != orderOf(study.plan).size())
        return std::nullopt;
    Findings findings{.study = study, .trials = logbook::trialsOf(read)};
    auto figures = analysis::gaugeStudy(findings.trials);
    if (!figures)
        return std::nullopt;
    findings.figures = std::move(figures).value();
    findings.intervals = analysis::intervalsOf(findings.figures);
    findings.halfStep = halfStepOf(study, read);
    if (findings.halfStep)
        findings.shareOfResolution = analysis::shareOfResolution(findings.figures, *findings.halfStep);
    findings.limits = limitsOf(study, set);
    findings.halfWidth = narrowest(findings.limits);
    return findings;
}

wording::NumberForm formOf(const logbook::PlannedStudy &study)
{
    return wording::formOf(study.unit, study.gauge.resolution);
}

QStringList sentencesOf(const Findings &findings)
{
    const wording::NumberForm form = formOf(findings.study);
    QStringList sentences{tr("%1 read %2 %3 each, in an order drawn by the seed %4.")
                              .arg(wording::counted(findings.figures.people, tr("1 person"), tr("%1 people")),
                                   wording::counted(findings.figures.notes, tr("1 note"), tr("%1 notes")),
                                   wording::counted(findings.figures.takes, tr("once"), tr("%1 times")))
                              .arg(findings.study.plan.seed),
                          doubtSentence(findings, form),
                          kindsSentence(findings),
                          spreadSentence(findings, form),
                          helpSentence(findings),
                          stepSentence(findings, form)};
    sentences.removeAll(QString());
    return sentences;
}

QString nameOf(const logbook::PlannedStudy &study)
{
    return tr("%1, %2").arg(QString::fromStdString(study.gauge.name), wording::nameOf(study.quantity).toLower());
}

QString dayOf(const logbook::PlannedStudy &study)
{
    return QString::fromStdString(readings::isoDate(study.at));
}

std::vector<Findings> newestOfEachGauge(logbook::Logbook &book)
{
    std::map<std::string, Findings> newest;
    for (Findings &findings : finished(book))
        if (isLength(findings))
            newest.insert_or_assign(findings.study.gauge.name, std::move(findings));
    return valuesOf(std::move(newest));
}

std::vector<Findings> newestOfEachQuantity(logbook::Logbook &book)
{
    std::map<std::pair<catalogue::Quantity, std::string>, Findings> newest;
    for (Findings &findings : finished(book))
        newest.insert_or_assign(std::pair(findings.study.quantity, findings.study.gauge.name), std::move(findings));
    return valuesOf(std::move(newest));
}

units::Amount uncertaintyOf(const Findings &findings)
{
    constexpr double slack = 1e-6;
    const bool length = isLength(findings);
    const double stepsPerUnit = 1000; // micrometres in a millimetre, milligrams in a gram
    const std::int64_t countsPerStep = length ? 1000 : 1;
    const double steps = analysis::uncertaintyToJudgeBy(findings.figures, findings.halfStep) * stepsPerUnit;
    return {length ? units::Dimension::Length : units::Dimension::Mass,
            static_cast<std::int64_t>(std::ceil(steps - slack)) * countsPerStep};
}

units::Length expandedUncertaintyOf(const Findings &findings)
{
    return isLength(findings) ? uncertaintyOf(findings).asLength() : units::Length();
}

units::Length stepOf(const Findings &findings)
{
    return isLength(findings) && findings.halfStep ? units::Length::millimetres(2 * *findings.halfStep)
                                                   : units::Length();
}

} // namespace hammerline::study_desk
