#pragma once
// A workshop in a logbook of its own folder: one grand of 88 notes in three sections, judged by a plain set, one pass
// begun; and a clock that ticks a second each time it is asked. All of it invented.

#include "exchange/tolerance_json.h"
#include "logbook/logbook.h"
#include "readings/readings.h"
#include "tolerance/tolerance.h"

#include <QTemporaryDir>

#include <string>

namespace hammerline::support {

inline tolerance::Entry entryAround(double targetMm, double halfWidthMm)
{
    const auto mm = [](double value) { return units::Amount(units::Length::millimetres(value)); };
    tolerance::Entry entry;
    entry.both = {{keyboard::Note(1), mm(targetMm - halfWidthMm), mm(targetMm), mm(targetMm + halfWidthMm), {}, {}}};
    return entry;
}

/// Let-off 3.2 ± 0.5 mm, drop 2 ± 0.5 mm, blow 46 ± 1 mm.
inline tolerance::ToleranceSet plainSet()
{
    tolerance::ToleranceSet set;
    set.name = "Plain";
    set.action = catalogue::ActionKind::Grand;
    set.entries[catalogue::Quantity::LetOff] = entryAround(3.2, 0.5);
    set.entries[catalogue::Quantity::Drop] = entryAround(2.0, 0.5);
    set.entries[catalogue::Quantity::Blow] = entryAround(46.0, 1.0);
    return set;
}

class WorkshopOnDisk {
public:
    WorkshopOnDisk() : book(logbook::Logbook::create(path(), stamp()).value())
    {
        instrument::Instrument known;
        known.name = "Grey grand";
        known.action = catalogue::ActionKind::Grand;
        known.sections = {{"bass", {keyboard::Note(1), keyboard::Note(26)}},
                          {"tenor", {keyboard::Note(27), keyboard::Note(52)}},
                          {"treble", {keyboard::Note(53), keyboard::Note(88)}}};
        known.toleranceId = "Plain";
        known.toleranceText = exchange::writeToleranceSet(plainSet());
        grand = book.addInstrument(known, stamp()).value();
        pass = begin(readings::Purpose::AsFound);
    }

    readings::Pass begin(readings::Purpose purpose, readings::DropDatum drop = readings::DropDatum::BelowLetOff)
    {
        readings::Pass begun;
        begun.instrument = grand.id;
        begun.purpose = purpose;
        begun.person = "Ada";
        begun.dropDatum = drop;
        begun.began = stamp().at;
        return book.beginPass(begun, stamp());
    }

    [[nodiscard]] std::string path() const { return m_folder.filePath("workshop.hammerline").toStdString(); }
    [[nodiscard]] QString filePath(const QString &name) const { return m_folder.filePath(name); }

    logbook::Stamp stamp()
    {
        m_now += std::chrono::seconds(1);
        return {m_now, "Ada"};
    }

private:
    QTemporaryDir m_folder;
    readings::Instant m_now = readings::parseRfc3339("2026-03-02T09:00:00Z").value();

public:
    logbook::Logbook book;
    instrument::Instrument grand;
    readings::Pass pass;
};

} // namespace hammerline::support
