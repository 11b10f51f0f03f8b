#include "study_desk/taking.h"

#include "units/parse_amount.h"

#include <set>

namespace hammerline::study_desk {

using analysis::StudyStop;

Taking::Taking(logbook::Logbook &book, logbook::PlannedStudy study, Clock clock)
    : m_book(book), m_study(std::move(study)), m_clock(std::move(clock)), m_order(orderOf(m_study.plan))
{
    refresh();
}

void Taking::refresh()
{
    std::set<StudyStop> read;
    for (const logbook::ReadTrial &trial : logbook::GaugeStudies(m_book).trials(m_study.id))
        read.insert(trial.stop);
    m_taken = read.size();
    m_at = 0;
    while (m_at < m_order.size() && read.contains(m_order[m_at]))
        ++m_at;
}

std::optional<StudyStop> Taking::asked() const
{
    return m_at < m_order.size() ? std::optional(m_order[m_at]) : std::nullopt;
}

std::string Taking::personBefore() const
{
    return m_at == 0 ? std::string() : m_order[m_at - 1].person;
}

outcome::Outcome<StudyStop> Taking::enter(std::string_view typed)
{
    const auto stop = asked();
    if (!stop)
        return outcome::Fault{.problem = "every trial of the study is there already"};
    const catalogue::QuantityInfo &info = catalogue::infoOf(m_study.quantity);
    const auto parsed = units::parseAmount(typed, {info.dimension, m_study.unit, info.mayBeNegative});
    if (!parsed)
        return parsed.faults();
    const auto entered = logbook::GaugeStudies(m_book).enter(m_study.id, *stop, parsed.value().value,
                                                             std::string(typed), {m_clock(), stop->person});
    refresh();
    if (!entered)
        return entered.faults();
    return *stop;
}

bool Taking::mendLast()
{
    const auto last = logbook::GaugeStudies(m_book).undoable(m_study.id);
    if (!last || last->name != "gauge-trial-entered")
        return false;
    m_book.undo(*last, {m_clock(), last->stamp.person});
    refresh();
    return true;
}

} // namespace hammerline::study_desk
