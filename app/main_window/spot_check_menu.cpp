#include "main_window/spot_check_menu.h"

#include "analysis/draw_sample.h"
#include "main_window/open_items.h"
#include "main_window/save_chart.h"
#include "main_window/spot_check_page.h"
#include "route/route.h"

#include <algorithm>
#include <set>

namespace hammerline::main_window {

namespace {

using catalogue::Quantity;
using keyboard::Note;

std::vector<Note> notesRead(const PassInView &pass)
{
    std::set<Note> notes;
    for (const readings::Reading &reading : pass.readings)
        notes.insert(reading.place.note);
    return {notes.begin(), notes.end()};
}

std::vector<Quantity> quantitiesRead(const PassInView &pass)
{
    std::set<Quantity> quantities;
    for (const readings::Reading &reading : pass.readings)
        quantities.insert(reading.place.quantity);
    return {quantities.begin(), quantities.end()};
}

readings::Pass freshPass(const readings::Pass &checked, const logbook::Stamp &stamp)
{
    readings::Pass fresh = checked;
    fresh.id = 0;
    fresh.uid.clear();
    fresh.purpose = readings::Purpose::Recheck;
    fresh.person = stamp.person;
    fresh.began = stamp.at;
    fresh.climate = {};
    fresh.remark.clear();
    return fresh;
}

} // namespace

SpotCheckMenu::SpotCheckMenu(const SpotCheckPlace &place)
    : QObject(place.window),
      m_place(place),
      m_draw(add(tr("&Draw a sample to read again…"), "drawSample", &SpotCheckMenu::draw)),
      m_tell(add(tr("&What the spot check shows…"), "tellSpotCheck", &SpotCheckMenu::tell))
{
    connect(m_place.menu, &QMenu::aboutToShow, this, &SpotCheckMenu::enable);
    connect(&m_place.workshop, &Workshop::passChosen, this, &SpotCheckMenu::followPass);
    connect(&m_place.workshop, &Workshop::readingsChanged, this, &SpotCheckMenu::followReadings);
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
    m_draw->setEnabled(pass != nullptr && !pass->readings.empty() && !pass->check);
    m_tell->setEnabled(pass != nullptr && pass->check);
}

void SpotCheckMenu::draw()
{
    const PassInView *pass = m_place.workshop.pass();
    if (!pass || pass->readings.empty() || pass->check)
        return;
    const auto person = m_place.prompts.askText(
        m_place.window, {tr("Draw a sample to read again"), tr("Who reads again? Name or initials"),
                         QString::fromStdString(m_place.workshop.stamp().person)});
    if (!person)
        return;
    const auto notes = notesRead(*pass);
    if (const auto size = askSize(static_cast<int>(notes.size())))
        begin(person->trimmed(), *size, notes);
}

std::optional<int> SpotCheckMenu::askSize(int notes)
{
    const QString label =
        tr("How many of the %1 notes that were read? With 95 % confidence, where none of the sample is out: %2.")
            .arg(notes)
            .arg(worthOfSamples(notes));
    const auto typed = m_place.prompts.askText(
        m_place.window, {tr("Draw a sample to read again"), label, QString::number(std::min(usualSample, notes))});
    if (!typed)
        return std::nullopt;
    bool isNumber = false;
    const int size = typed->trimmed().toInt(&isNumber);
    if (isNumber && size >= 1 && size <= notes)
        return size;
    m_place.prompts.tell(m_place.window, {tr("No sample was drawn"), tr("\"%1\" is no number of notes.").arg(*typed),
                                          tr("Type a whole number from 1 to %1.").arg(notes)});
    return std::nullopt;
}

void SpotCheckMenu::begin(const QString &person, int size, const std::vector<Note> &notes)
{
    Workshop &workshop = m_place.workshop;
    const PassInView &checked = *workshop.pass();
    workshop.setPerson(person.toStdString());
    emit readBy(person);
    const logbook::Stamp stamp = workshop.stamp();
    // Nobody chooses the moment to the millisecond; the seed is kept, so that the sample can be drawn anew.
    const auto seed = static_cast<std::uint32_t>(stamp.at.time_since_epoch().count());
    const decisions::SpotCheck check{checked.pass.id, seed, analysis::drawSample(notes, size, seed),
                                     quantitiesRead(checked)};
    const auto begun = workshop.book().beginSpotCheck(freshPass(checked.pass, stamp), check, stamp);
    const route::Choice way{.order = route::Order::Own, .listed = check.notes, .quantities = check.quantities};
    workshop.book().chooseRoute(begun.id, {route::textOf(way), {}}, workshop.stamp());
    workshop.instrumentsTouched();
    workshop.choosePass(begun.id);
    m_place.views.go(View::Bench);
    m_place.views.bench()->focusField();
}

void SpotCheckMenu::tell()
{
    const auto told = spotCheckTold(m_place.workshop, m_place.views.form());
    if (!told)
        return;
    if (told->unread > 0 && !wantsToSee(tr("The finding shows what was read before. Whoever has seen it no longer "
                                           "reads the rest blind.")))
        return;
    showPage();
}

bool SpotCheckMenu::wantsToSee(const QString &detail)
{
    const int unread = m_place.workshop.pass()->unread;
    return m_place.prompts.ask(m_place.window,
                               {.title = tr("The sample is not read to its end"),
                                .text = unread == 1 ? tr("One value of the sample is not read again yet.")
                                                    : tr("%1 values of the sample are not read again yet.").arg(unread),
                                .detail = detail,
                                .choices = {tr("Show it all the same"), tr("Read on")},
                                .preferred = 1}) == 0;
}

void SpotCheckMenu::leaveFor(readings::PassId pass)
{
    const bool asks = m_place.workshop.readsBlind();
    if (!asks || wantsToSee(tr("That pass shows what was read before. Whoever has seen it no longer reads the rest "
                               "blind.")))
        m_place.workshop.choosePass(pass);
}

void SpotCheckMenu::showPage()
{
    auto told = spotCheckTold(m_place.workshop, m_place.views.form());
    if (!told)
        return;
    if (!m_page) {
        m_page = new SpotCheckPage(m_place.window);
        connect(m_page, &SpotCheckPage::noteChosen, &m_place.views, &Views::pairChosen);
        connect(m_page, &SpotCheckPage::saveWanted, this, [this](const charts::ChartData &chart) {
            saveChart(m_page, m_place.prompts, chart, *m_place.workshop.instrument());
        });
    }
    m_page->show(*std::move(told));
}

void SpotCheckMenu::followPass()
{
    if (m_page)
        m_page->close();
    const PassInView *pass = m_place.workshop.pass();
    m_unread = pass ? pass->unread : 0;
    auto *open = m_place.window->findChild<OpenItems *>();
    if (open && m_place.workshop.readsBlind()) // it tells what was read before
        open->close();
}

void SpotCheckMenu::followReadings()
{
    const PassInView *pass = m_place.workshop.pass();
    const int before = std::exchange(m_unread, pass ? pass->unread : 0);
    if (m_page || (before > 0 && m_unread == 0))
        showPage();
}

} // namespace hammerline::main_window
