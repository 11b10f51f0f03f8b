#include "instrument_file/work_form.h"

#include "instrument_file/inside/form_parts.h"
#include "wording/file_words.h"
#include "wording/wording.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <cmath>

namespace hammerline::instrument_file {

namespace {

QString hoursText(const std::optional<std::chrono::minutes> &took)
{
    return took ? QString::number(static_cast<double>(took->count()) / 60, 'g', 6) : QString();
}

} // namespace

WorkForm::WorkForm(dossier::WorkEntry known, const keyboard::Compass &compass, QWidget *parent)
    : EntryDialog(parent), m_known(std::move(known)), m_compass(compass)
{
    setObjectName("workForm");
    setWindowTitle(m_known.uid.empty() ? tr("Work on the instrument") : tr("Change the entry"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto *column = new QVBoxLayout(this);
    addFields(addScrolledForm(column));
    m_faults = addFoot(this, column, tr("Store"));
    fill();
    openAtFullHeight(this);
    m_what->setFocus();
}

void WorkForm::addFields(QFormLayout *form)
{
    m_kind = addChoice(form, tr("Kind"), "workKind");
    for (int kind = 0; kind < dossier::workKinds; ++kind)
        m_kind->addItem(wording::nameOf(static_cast<dossier::WorkKind>(kind)), kind);
    m_what = addLine(form, tr("What"), "workWhat", tr("e.g. hammers, balance rail cloth"));
    const LinePair notes =
        addPair(form, {tr("First note"), "workFirst"}, tr("to the last"), {tr("Last note"), "workLast"});
    m_first = notes.first;
    m_last = notes.second;
    m_first->setPlaceholderText(tr("empty: the whole"));
    m_material = addLine(form, tr("Material"), "workMaterial");
    m_person = addLine(form, tr("Done by"), "workPerson");
    const LinePair time = addPair(form, {tr("Day"), "workDay"}, tr("hours"), {tr("Hours"), "workHours"});
    m_day = time.first;
    m_hours = time.second;
    m_day->setPlaceholderText(tr("e.g. 2026-03-02"));
    m_hours->setPlaceholderText(tr("e.g. 2.5"));
    m_departure = new QCheckBox(tr("Departs from the original build; a buyer must be told"));
    m_departure->setObjectName("workDeparture");
    form->addRow(QString(), m_departure);
    m_why = addLine(form, tr("Why it departs"), "workWhy");
    m_remark = addLine(form, tr("Remark"), "workRemark", tr("the record prints it"));
    connect(m_departure, &QCheckBox::toggled, m_why, &QWidget::setEnabled);
}

void WorkForm::fill()
{
    m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(m_known.kind)));
    m_what->setText(QString::fromStdString(m_known.what));
    if (m_known.notes) {
        m_first->setText(QString::fromStdString(m_known.notes->first.name()));
        m_last->setText(QString::fromStdString(m_known.notes->last.name()));
    }
    m_material->setText(QString::fromStdString(m_known.material));
    m_person->setText(QString::fromStdString(m_known.person));
    if (m_known.day)
        m_day->setText(QString::fromStdString(dossier::isoDay(*m_known.day)));
    m_hours->setText(hoursText(m_known.took));
    m_departure->setChecked(m_known.departure);
    m_why->setText(QString::fromStdString(m_known.why));
    m_why->setEnabled(m_known.departure);
    m_remark->setText(QString::fromStdString(m_known.remark));
}

void WorkForm::readNotes(dossier::WorkEntry &made, Faults &faults) const
{
    made.notes.reset();
    const std::string first = plain(m_first);
    const std::string last = plain(m_last);
    if (first.empty() && last.empty())
        return;
    const auto from = keyboard::parseNote(first.empty() ? last : first);
    const auto to = first.empty() || last.empty() ? from : keyboard::parseNote(last);
    if (!from)
        faults.push_back(from.fault());
    if (!to && !first.empty() && !last.empty())
        faults.push_back(to.fault());
    if (from && to)
        made.notes = keyboard::NoteRange{from.value(), to.value()};
}

outcome::Outcome<dossier::WorkEntry> WorkForm::entered() const
{
    Faults faults;
    dossier::WorkEntry made = m_known;
    made.kind = static_cast<dossier::WorkKind>(m_kind->currentData().toInt());
    made.what = plain(m_what);
    readNotes(made, faults);
    made.material = plain(m_material);
    made.person = plain(m_person);
    made.day = dossier::parseIsoDay(plain(m_day));
    if (!made.day && !plain(m_day).empty())
        faults.push_back({.problem = tr("Day: write it as 2026-03-02").toStdString()});
    const auto hours = number(m_hours, 0, 10'000, faults);
    made.took = hours ? std::optional(std::chrono::minutes(std::lround(*hours * 60))) : std::nullopt;
    made.departure = m_departure->isChecked();
    made.why = made.departure ? plain(m_why) : std::string();
    made.remark = plain(m_remark);
    for (auto &fault : dossier::faultsOf(made, m_compass))
        faults.push_back(std::move(fault));
    if (!faults.empty())
        return faults;
    return made;
}

void WorkForm::accept()
{
    finish(entered(), [this](const dossier::WorkEntry &entry) { emit ready(entry); });
}

} // namespace hammerline::instrument_file
