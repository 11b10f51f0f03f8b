#include "main_window/spot_check_menu.h"

#include "analysis/draw_sample.h"
#include "route/route.h"
#include "wording/wording.h"

#include <algorithm>
#include <set>

namespace hammerline::main_window {

namespace {

using catalogue::Quantity;
using keyboard::Note;

std::set<Note> notesRead(const readings::ValueTable &values, Quantity quantity, const keyboard::Compass &compass)
{
    std::set<Note> notes;
    for (int number = compass.first.number(); number <= compass.last.number(); ++number)
        if (values.value(quantity, Note(number)))
            notes.insert(Note(number));
    return notes;
}

std::vector<Quantity> quantitiesRead(const PassInView &pass)
{
    std::set<Quantity> quantities;
    for (const readings::Reading &reading : pass.readings)
        quantities.insert(reading.place.quantity);
    return {quantities.begin(), quantities.end()};
}

QString lineOf(Quantity quantity, const SpotCheckFinding &found)
{
    QString line = SpotCheckMenu::tr("%1: %2 notes read again, %3 out. With 95 % confidence at most %4 of %5 are out.")
                       .arg(wording::nameOf(quantity))
                       .arg(found.readAgain)
                       .arg(found.out)
                       .arg(found.mostOut)
                       .arg(found.notes);
    const analysis::Comparison &agreement = found.agreement;
    const QString unit = wording::unitText(catalogue::infoOf(quantity).dimension == units::Dimension::Mass
                                               ? units::Unit::Gram
                                               : units::Unit::Millimetre);
    const auto shown = [&unit](double value) { return QString::number(value, 'f', 2) + ' ' + unit; };
    line += SpotCheckMenu::tr(" The second reading is %1 larger on the average").arg(shown(agreement.meanChange));
    if (agreement.agreementLow && agreement.agreementHigh)
        line += SpotCheckMenu::tr("; of twenty differences nineteen lie between %1 and %2")
                    .arg(shown(*agreement.agreementLow), shown(*agreement.agreementHigh));
    return line + '.';
}

} // namespace

std::map<Quantity, SpotCheckFinding> findingsOf(const readings::ValueTable &checked, const readings::ValueTable &again,
                                                const decisions::SpotCheck &check,
                                                const tolerance::Judgement &judgementAgain)
{
    std::map<Quantity, SpotCheckFinding> findings;
    for (const auto &[quantity, agreement] : analysis::compare(checked, again, nullptr)) {
        SpotCheckFinding found{.agreement = agreement};
        for (const Note note : check.notes) {
            const auto *verdict = judgementAgain.find(quantity, note);
            found.readAgain += again.value(quantity, note) ? 1 : 0;
            found.out += verdict != nullptr && verdict->status == tolerance::Status::Out ? 1 : 0;
        }
        found.notes = static_cast<int>(notesRead(checked, quantity, {}).size());
        const auto proved = analysis::spotCheck(found.notes, found.readAgain, found.out, "0.95");
        if (!proved)
            continue;
        found.mostOut = proved.value().mostOut;
        findings.emplace(quantity, found);
    }
    return findings;
}

SpotCheckMenu::SpotCheckMenu(const SpotCheckPlace &place)
    : QObject(place.window), m_place(place), m_draw(add(tr("&Draw a sample to read again…"), "drawSample",
                                                        &SpotCheckMenu::draw)),
      m_open(add(tr("Open a spot chec&k…"), "openSpotCheck", &SpotCheckMenu::open)),
      m_tell(add(tr("&What the spot check shows…"), "tellSpotCheck", &SpotCheckMenu::tell))
{
    connect(m_place.menu, &QMenu::aboutToShow, this, &SpotCheckMenu::enable);
}

QAction *SpotCheckMenu::add(const QString &text, const char *name, void (SpotCheckMenu::*deed)())
{
    QAction *action = m_place.menu->addAction(text);
    action->setObjectName(name);
    connect(action, &QAction::triggered, this, deed);
    return action;
}

void SpotCheckMenu::enable()
{
    const PassInView *pass = m_place.workshop.pass();
    const bool isCheck = chosenCheck().has_value();
    m_draw->setEnabled(pass != nullptr && !pass->readings.empty() && !isCheck);
    m_tell->setEnabled(isCheck);
    const auto *instrument = m_place.workshop.instrument();
    m_open->setEnabled(instrument != nullptr && !m_place.workshop.book().spotChecks(instrument->id).empty());
}

std::optional<decisions::SpotCheck> SpotCheckMenu::chosenCheck() const
{
    const PassInView *pass = m_place.workshop.pass();
    return pass ? m_place.workshop.book().spotCheck(pass->pass.id) : std::nullopt;
}

void SpotCheckMenu::draw()
{
    const PassInView *pass = m_place.workshop.pass();
    if (!pass || pass->readings.empty() || chosenCheck())
        return;
    const auto quantities = quantitiesRead(*pass);
    std::set<Note> read;
    for (const Quantity quantity : quantities)
        read.merge(notesRead(pass->values, quantity, m_place.workshop.instrument()->compass));
    const auto typed = m_place.prompts.askText(
        m_place.window, {tr("Draw a sample to read again"),
                         tr("How many of the %n notes that were read? The more, the more it proves.", nullptr,
                            static_cast<int>(read.size())),
                         QString::number(std::min<std::size_t>(usualSample, read.size()))});
    if (!typed)
        return;
    bool isNumber = false;
    const int size = typed->trimmed().toInt(&isNumber);
    if (!isNumber || size < 1 || size > static_cast<int>(read.size()))
        return m_place.prompts.tell(m_place.window,
                                    {tr("No sample was drawn"), tr("\"%1\" is no number of notes.").arg(*typed),
                                     tr("Type a whole number from 1 to %1.").arg(read.size())});
    begin(size, {read.begin(), read.end()}, quantities);
}

void SpotCheckMenu::begin(int size, const std::vector<Note> &notes, const std::vector<Quantity> &quantities)
{
    logbook::Logbook &book = m_place.workshop.book();
    const readings::Pass checked = m_place.workshop.pass()->pass;
    const logbook::Stamp stamp = m_place.workshop.stamp();
    decisions::SpotCheck check{.checked = checked.id, .quantities = quantities};
    // Nobody chooses the moment to the millisecond; the seed is kept, so that the sample can be drawn anew.
    check.seed = static_cast<std::uint32_t>(stamp.at.time_since_epoch().count());
    check.notes = analysis::drawSample(notes, size, check.seed);
    readings::Pass fresh = checked;
    fresh.id = 0;
    fresh.uid.clear();
    fresh.purpose = readings::Purpose::Recheck;
    fresh.person = stamp.person;
    fresh.began = stamp.at;
    fresh.remark.clear();
    const readings::Pass begun = book.beginSpotCheck(fresh, check, stamp);
    route::Choice asked{.order = route::Order::Own, .listed = check.notes, .quantities = quantities};
    book.chooseRoute(begun.id, {route::textOf(asked), {}}, m_place.workshop.stamp());
    m_place.workshop.instrumentsTouched();
    m_place.workshop.choosePass(begun.id);
    emit benchWanted();
}

void SpotCheckMenu::open()
{
    const auto *instrument = m_place.workshop.instrument();
    if (!instrument)
        return;
    const auto checks = m_place.workshop.book().spotChecks(instrument->id);
    QStringList choices;
    for (const readings::Pass &check : checks)
        choices << tr("%1, %2").arg(QString::fromStdString(readings::isoDate(check.began)),
                                    QString::fromStdString(check.person));
    choices << tr("None");
    const int chosen = m_place.prompts.ask(
        m_place.window, {.title = tr("Spot checks"), .text = tr("Which one?"), .detail = {}, .choices = choices});
    if (chosen >= 0 && chosen < static_cast<int>(checks.size()))
        m_place.workshop.choosePass(checks[static_cast<std::size_t>(chosen)].id);
}

void SpotCheckMenu::tell()
{
    const auto check = chosenCheck();
    if (!check)
        return;
    const PassInView &pass = *m_place.workshop.pass();
    QStringList lines;
    for (const auto &[quantity, found] :
         findingsOf(m_place.workshop.book().values(check->checked), pass.values, *check, pass.judgement))
        lines << lineOf(quantity, found);
    if (lines.isEmpty())
        lines << tr("Nothing of the sample is read again yet.");
    m_place.prompts.tell(m_place.window, {tr("What the spot check shows"),
                                          tr("A sample of %n notes, drawn by seed %1.", nullptr,
                                             static_cast<int>(check->notes.size()))
                                              .arg(check->seed),
                                          lines.join('\n'), prompts::Weight::Question});
}

} // namespace hammerline::main_window
