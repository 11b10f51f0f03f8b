// What the lead decides about the chosen pass: the note that all views speak of is accepted or sent back, the pass is
// signed or opened again.
#include "main_window/main_window.h"
#include "main_window/open_items.h"
#include "main_window/person_label.h"
#include "wording/wording.h"

#include <map>

namespace hammerline::main_window {

namespace {

decisions::Decision decisionOf(const review::Item &item)
{
    decisions::Decision decision;
    decision.quantity = item.verdict.quantity;
    decision.note = item.verdict.note;
    decision.kind = item.kind;
    decision.value = item.verdict.value;
    return decision;
}

QString nameOf(const std::vector<review::Item> &items)
{
    const tolerance::Verdict &first = items.front().verdict;
    const QString name = QObject::tr("%1, %2").arg(wording::nameOf(first.quantity), wording::nameOf(first.note));
    return items.size() == 1 ? name : QObject::tr("%1 and %2 more").arg(name).arg(items.size() - 1);
}

/// "Grey grand, as found, 2026-03-02", and in whose name.
QString passAndPerson(const Workshop &workshop)
{
    const readings::Pass &pass = workshop.pass()->pass;
    return QObject::tr("“%1”: %2, %3.")
               .arg(QString::fromStdString(workshop.instrument()->name), wording::nameOf(pass.purpose),
                    QString::fromStdString(readings::isoDate(pass.began))) +
           '\n' + inTheNameOf(workshop.stamp().person);
}

} // namespace

std::vector<review::Item> MainWindow::chosenItem(const QString &title)
{
    if (auto items = views().chosenItems(); !items.empty())
        return items;
    const Selection &chosen = m_workshop->selection();
    const PassInView *pass = m_workshop->pass();
    const tolerance::Verdict *verdict = pass ? pass->judgement.find(chosen.quantity, chosen.note) : nullptr;
    const auto kind = verdict == nullptr ? std::nullopt : decisions::kindOf(*verdict);
    if (kind)
        return {{.pass = pass->pass.id, .verdict = *verdict, .kind = *kind}};
    const QString which = tr("%1, %2").arg(wording::nameOf(chosen.quantity), wording::nameOf(chosen.note));
    m_prompts.tell(this, {title, tr("There is nothing to decide about %1.").arg(which),
                          tr("Choose a note that is out, close to the limit, uneven or not read."),
                          prompts::Weight::Question});
    return {};
}

void MainWindow::decide(const std::vector<review::Item> &items, const QString &title, const QString &label,
                        Deciding how)
{
    logbook::Logbook &book = m_workshop->book();
    std::map<readings::PassId, std::vector<decisions::Decision>> made;
    for (const review::Item &item : items) {
        if (const auto refused = book.refusal(item.pass))
            return tellFaults(tr("The pass is signed"), {*refused});
        made[item.pass].push_back(decisionOf(item));
    }
    if (items.empty())
        return;
    if (m_workshop->stamp().person.empty() && !askPerson())
        return;
    const QString name = inTheNameOf(m_workshop->stamp().person);
    const auto words = m_prompts.askText(this, {title, nameOf(items) + '\n' + name + '\n' + label, {}});
    if (!words)
        return;
    std::vector<outcome::Fault> faults;
    for (auto &[pass, decided] : made) {
        for (decisions::Decision &each : decided)
            each.words = words->trimmed().toStdString();
        if (const auto done = (book.*how)(pass, decided, m_workshop->stamp()); !done)
            faults.insert(faults.end(), done.faults().begin(), done.faults().end());
    }
    if (!faults.empty())
        tellFaults(tr("Not all of it was decided"), faults);
    m_workshop->instrumentsTouched();
}

void MainWindow::acceptItem()
{
    acceptItems(chosenItem(tr("Accept as it is")));
}

void MainWindow::sendItemBack()
{
    sendItemsBack(chosenItem(tr("Send back")));
}

void MainWindow::acceptItems(const std::vector<review::Item> &items)
{
    decide(items, tr("Accept as it is"), tr("Why? The record will print the reason."), &logbook::Logbook::accept);
}

void MainWindow::sendItemsBack(const std::vector<review::Item> &items)
{
    decide(items, tr("Send back"), tr("What is to be done? It stays in the workshop; no record prints it."),
           &logbook::Logbook::sendBack);
}

void MainWindow::changeState()
{
    using instrument::State;
    instrument::Instrument changed = *m_workshop->instrument();
    std::vector<State> states;
    QStringList choices;
    for (const State state : {State::TakenIn, State::InWork, State::InReview, State::SignedOff, State::Delivered})
        if (state != changed.state) {
            states.push_back(state);
            choices << wording::nameOf(state);
        }
    choices << tr("Leave it");
    const int chosen = m_prompts.ask(this, {.title = tr("Where the instrument stands"),
                                            .text = tr("It is: %1.").arg(wording::nameOf(changed.state)),
                                            .detail = tr("What is delivered leaves the lead's queue. Only what is "
                                                         "signed can be signed off or delivered."),
                                            .choices = choices,
                                            .preferred = static_cast<int>(states.size())});
    if (chosen < 0 || chosen >= static_cast<int>(states.size()))
        return;
    changed.state = states[static_cast<std::size_t>(chosen)];
    const auto done = m_workshop->book().changeInstrument(changed, m_workshop->stamp(), {});
    if (!done)
        return tellFaults(tr("It stays where it was"), done.faults());
    m_workshop->instrumentsTouched();
}

void MainWindow::signPass()
{
    if (auto *list = findChild<OpenItems *>())
        list->close(); // it tells what was open before
    const auto *instrument = m_workshop->instrument();
    if (m_workshop->stamp().person.empty() && !askPerson())
        return;
    if (!m_workshop->set())
        return tellFaults(tr("The pass was not signed"),
                          {outcome::Fault{.problem = "choose first what the instrument is judged by"}});
    const auto remark = m_prompts.askText(
        this, {tr("Sign the pass"),
               passAndPerson(*m_workshop) + '\n' +
                   tr("A remark to the signature; may be empty. It stays in the logbook; no record prints it."),
               {}});
    if (!remark)
        return;
    const auto made = m_workshop->book().signPass(m_workshop->pass()->pass.id, *m_workshop->set(),
                                                  {instrument->toleranceId, instrument->toleranceText},
                                                  m_workshop->stamp(), remark->trimmed().toStdString());
    if (!made)
        return tellUnsigned(made.faults());
    m_workshop->instrumentsTouched();
}

void MainWindow::tellUnsigned(const std::vector<outcome::Fault> &faults)
{
    poll(); // another window may have read what is open now
    auto items = m_workshop->queueOfPass().items;
    const bool other = m_workshop->stamp().person.empty() || m_workshop->pass()->check ||
                       m_workshop->book().refusal(m_workshop->pass()->pass.id);
    if (items.empty() || other)
        return tellFaults(tr("The pass was not signed"), faults);
    auto *list = new OpenItems(std::move(items), views().form(), this);
    connect(list, &OpenItems::chosen, this, [this](const review::Item &item) {
        goToItem(item);
        activateWindow(); // the list stays open beside it; what is typed next is the reading
        views().bench()->focusField();
    });
    list->show();
}

void MainWindow::reopenPass()
{
    const readings::PassId pass = m_workshop->pass()->pass.id;
    if (!m_workshop->book().refusal(pass)) {
        m_prompts.tell(this, {tr("Open again"), tr("The pass is open already."), {}, prompts::Weight::Question});
        return;
    }
    const auto reason = m_prompts.askText(
        this,
        {tr("Open a signed pass again"), passAndPerson(*m_workshop) + '\n' + tr("Why? The record will print it."), {}});
    if (!reason)
        return;
    const auto made = m_workshop->book().reopenPass(pass, m_workshop->stamp(), reason->trimmed().toStdString());
    if (!made)
        return tellFaults(tr("The pass stays signed"), made.faults());
    m_workshop->instrumentsTouched();
}

} // namespace hammerline::main_window
