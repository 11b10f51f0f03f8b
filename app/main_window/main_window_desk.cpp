// What the lead decides about the chosen pass: the note that all views speak of is accepted or sent back, the pass is
// signed or opened again.
#include "main_window/main_window.h"
#include "wording/wording.h"

namespace hammerline::main_window {

std::optional<decisions::Decision> MainWindow::askDecision(const QString &title, const QString &label)
{
    const Selection &chosen = m_workshop->selection();
    const tolerance::Verdict *verdict = m_workshop->pass()->judgement.find(chosen.quantity, chosen.note);
    const auto kind = verdict == nullptr ? std::nullopt : decisions::kindOf(*verdict);
    const QString which = tr("%1, %2").arg(wording::nameOf(chosen.quantity), wording::nameOf(chosen.note));
    if (!kind) {
        m_prompts.tell(this, {title, tr("There is nothing to decide about %1.").arg(which),
                              tr("Choose a note that is out, close to the limit, uneven or not read."),
                              prompts::Weight::Question});
        return std::nullopt;
    }
    const auto words = m_prompts.askText(this, {title, which + '\n' + label, {}});
    if (!words)
        return std::nullopt;
    decisions::Decision decision;
    decision.quantity = chosen.quantity;
    decision.note = chosen.note;
    decision.kind = *kind;
    decision.value = verdict->value;
    decision.words = words->trimmed().toStdString();
    return decision;
}

void MainWindow::tellDecided(const outcome::Outcome<logbook::DeedId> &decided)
{
    if (!decided)
        tellFaults(tr("Nothing was decided"), decided.faults());
    m_workshop->instrumentsTouched();
}

void MainWindow::acceptItem()
{
    logbook::Logbook &book = m_workshop->book();
    const readings::PassId pass = m_workshop->pass()->pass.id;
    if (const auto refused = book.refusal(pass))
        return tellFaults(tr("The pass is signed"), {*refused});
    if (const auto decision = askDecision(tr("Accept as it is"), tr("Why? The record will print the reason.")))
        tellDecided(book.accept(pass, {*decision}, m_workshop->stamp()));
}

void MainWindow::sendItemBack()
{
    logbook::Logbook &book = m_workshop->book();
    const readings::PassId pass = m_workshop->pass()->pass.id;
    if (const auto refused = book.refusal(pass))
        return tellFaults(tr("The pass is signed"), {*refused});
    if (const auto decision = askDecision(tr("Send back"), tr("What is to be done?")))
        tellDecided(book.sendBack(pass, {*decision}, m_workshop->stamp()));
}

void MainWindow::signPass()
{
    const auto *instrument = m_workshop->instrument();
    if (!m_workshop->set())
        return tellFaults(tr("The pass was not signed"),
                          {outcome::Fault{.problem = "choose first what the instrument is judged by"}});
    const auto remark =
        m_prompts.askText(this, {tr("Sign the pass"), tr("A remark to the signature; may be empty"), {}});
    if (!remark)
        return;
    const auto made = m_workshop->book().signPass(m_workshop->pass()->pass.id, *m_workshop->set(),
                                                  {instrument->toleranceId, instrument->toleranceText},
                                                  m_workshop->stamp(), remark->trimmed().toStdString());
    if (!made)
        return tellFaults(tr("The pass was not signed"), made.faults());
    m_workshop->instrumentsTouched();
}

void MainWindow::reopenPass()
{
    const readings::PassId pass = m_workshop->pass()->pass.id;
    if (!m_workshop->book().refusal(pass)) {
        m_prompts.tell(this, {tr("Open again"), tr("The pass is open already."), {}, prompts::Weight::Question});
        return;
    }
    const auto reason =
        m_prompts.askText(this, {tr("Open a signed pass again"), tr("Why? The record will print it."), {}});
    if (!reason)
        return;
    const auto made = m_workshop->book().reopenPass(pass, m_workshop->stamp(), reason->trimmed().toStdString());
    if (!made)
        return tellFaults(tr("The pass stays signed"), made.faults());
    m_workshop->instrumentsTouched();
}

} // namespace hammerline::main_window
