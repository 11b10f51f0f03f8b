// The bench, continued: the way through the pass, steps, slips and felt faults.
#include "bench/bench.h"
#include "bench/inside/asked_board.h"
#include "bench/inside/verdict_board.h"
#include "bench/inside/way_dialog.h"
#include "wording/wording.h"

#include <QComboBox>
#include <QSignalBlocker>

#include <algorithm>

namespace hammerline::bench {

route::Choice BenchView::choice() const
{
    route::Choice choice = m_session->chosen().value_or(route::Choice{});
    const int chosen = m_chooser->currentData().toInt();
    choice.sweep = chosen == noteByNoteChoice ? route::Sweep::NoteByNote : route::Sweep::AlongTheNotes;
    choice.quantities = chosen < 0 ? quantities() : std::vector{static_cast<catalogue::Quantity>(chosen)};
    return choice;
}

route::Choice BenchView::keepChoice()
{
    const route::Choice kept = choice();
    m_session->choose(kept, m_session->typings());
    m_asked->clear();
    showAsked();
    emit stored();
    return kept;
}

int BenchView::choiceOf(const route::Choice &choice) const
{
    if (choice.sweep == route::Sweep::NoteByNote)
        return noteByNoteChoice;
    return choice.quantities.size() > 1 ? allInTurnChoice : static_cast<int>(choice.quantities.front());
}

void BenchView::chooseWay()
{
    const auto place = m_session->asked();
    const catalogue::Quantity quantity = place ? place->quantity : choice().quantities.front();
    const auto known = m_session->typings().find(quantity);
    const Typing typing = known == m_session->typings().end() ? Typing{} : known->second;
    auto *dialog = new WayDialog(choice(), typing, quantity, this);
    connect(dialog, &WayDialog::ready, this, [this, quantity](const route::Choice &choice, const Typing &chosen) {
        Typings typings = m_session->typings();
        typings[quantity] = chosen;
        m_session->choose(choice, typings);
        m_asked->clear();
        showAsked();
        emit stored();
    });
    connect(dialog, &WayDialog::finished, this, &BenchView::focusField);
    dialog->open();
}

void BenchView::step(int steps)
{
    const auto last = m_session->lastEntered();
    const auto place = m_session->asked();
    const bool nothingToStepFrom = !last || !place || last->place.quantity != place->quantity;
    if (nothingToStepFrom && place && m_session->typing().digits > 0)
        return m_asked->propose({});
    if (nothingToStepFrom)
        return m_asked->begin(steps < 0 ? QStringLiteral("-") : QStringLiteral("+")); // a sign, then; refused as one
    units::Amount value = m_stepped.value_or(last->value);
    units::Amount size =
        units::Amount::fromDisplay(value.dimension(), value.dimension() == units::Dimension::Mass ? 1 : 0.1);
    const units::Length resolution = m_session->pass().gauge.resolution;
    if (value.dimension() == units::Dimension::Length && resolution != units::Length())
        size = resolution;
    m_stepped = units::Amount(value.dimension(), value.baseCount() + steps * size.baseCount());
    const char *unit = value.dimension() == units::Dimension::Mass ? "g" : "mm";
    m_asked->propose(QString::fromStdString(units::exactDecimal(*m_stepped)) + unit);
}

void BenchView::feel(const QString &fault, bool marked)
{
    const auto place = m_session->asked();
    const auto last = m_session->lastEntered();
    if (!place && !last)
        return;
    const keyboard::Note note = place ? place->note : last->place.note;
    const QString name = wording::nameOf(note);
    if (!m_session->markFault(note, fault.toStdString(), marked))
        return m_verdict->say(marked ? tr("%1: %2 is marked already").arg(name, fault)
                                     : tr("%1: %2 was not marked").arg(name, fault));
    m_verdict->say(marked ? tr("%1: %2").arg(name, fault) : tr("%1: %2 cleared").arg(name, fault));
    showAsked();
    emit stored();
}

void BenchView::tellDoubt(const QString &text, const slips::Slip &slip)
{
    m_doubted = text;
    m_heard.doubted(slip, m_form);
    const QString value = wording::amountText(slip.value, m_form);
    const QString why = slip.meant ? tr("was %1 meant?").arg(wording::amountText(*slip.meant, m_form))
                                   : tr("about %1 was to be expected.").arg(wording::amountText(slip.expected, m_form));
    m_asked->askAbout(tr("%1: %2 Enter keeps it, typing replaces it.").arg(value, why));
}

std::vector<catalogue::Quantity> BenchView::quantities() const
{
    if (m_session->check())
        return m_session->check()->quantities;
    std::vector<catalogue::Quantity> here;
    for (const catalogue::QuantityInfo &info : catalogue::all())
        if (catalogue::has(m_session->instrument().action, info.quantity))
            here.push_back(info.quantity);
    return here;
}

void BenchView::fillChooser(catalogue::Quantity quantity)
{
    const QSignalBlocker quiet(m_chooser);
    m_chooser->clear();
    for (const catalogue::Quantity each : quantities())
        m_chooser->addItem(wording::nameOf(each), static_cast<int>(each));
    m_chooser->insertSeparator(m_chooser->count());
    m_chooser->addItem(tr("All quantities in turn"), allInTurnChoice);
    m_chooser->addItem(tr("Note by note"), noteByNoteChoice);
    m_chooser->setCurrentIndex(std::max(0, m_chooser->findData(static_cast<int>(quantity))));
}

void BenchView::followChoice()
{
    m_session->follow(choice());
    m_asked->clear();
    showAsked();
}

/// What was chosen for this pass is resumed, whatever was looked at last.
void BenchView::followKept()
{
    if (const auto kept = m_session->chosen(); kept && !kept->quantities.empty())
        m_chooser->setCurrentIndex(std::max(0, m_chooser->findData(choiceOf(*kept))));
    followChoice();
}

void BenchView::goOnToNextQuantity()
{
    const auto lacks = [this](catalogue::Quantity quantity) {
        const keyboard::Compass &compass = m_session->instrument().compass;
        for (int number = compass.first.number(); number <= compass.last.number(); ++number)
            if (!m_session->readings().contains({quantity, keyboard::Note(number), 1}))
                return true;
        return false;
    };
    const int last = m_chooser->count();
    for (int step = 1; step <= last; ++step) {
        const int index = (m_chooser->currentIndex() + step) % last;
        const QVariant choice = m_chooser->itemData(index);
        if (!choice.isValid() || choice.toInt() < 0)
            continue;
        if (!lacks(static_cast<catalogue::Quantity>(choice.toInt())))
            continue;
        m_chooser->setCurrentIndex(index);
        return followChoice();
    }
    m_verdict->say(tr("every quantity is read on every note"));
}

} // namespace hammerline::bench
