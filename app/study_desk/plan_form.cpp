#include "study_desk/plan_form.h"

#include "analysis/draw_sample.h"
#include "units/parse_amount.h"
#include "wording/palette.h"
#include "wording/wording.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <limits>

namespace hammerline::study_desk {

namespace {

template <typename Field>
Field *add(QFormLayout *form, Field *field, const QString &label, const char *name)
{
    field->setObjectName(name);
    field->setAccessibleName(label);
    form->addRow(label, field);
    return field;
}

QSpinBox *addNumber(QFormLayout *form, const QString &label, const char *name, int least, int most)
{
    auto *number = add(form, new QSpinBox, label, name);
    number->setRange(least, most);
    return number;
}

std::vector<keyboard::Note> notesOf(const instrument::Instrument &instrument)
{
    const bool any = instrument.id == 0;
    const int first = any ? 1 : instrument.compass.first.number(), last = any ? 88 : instrument.compass.last.number();
    std::vector<keyboard::Note> notes;
    for (int note = first; note <= last; ++note)
        notes.emplace_back(note);
    return notes;
}

std::vector<std::string> peopleIn(const QString &text)
{
    std::vector<std::string> people;
    for (const QString &line : text.split('\n'))
        if (const QString name = line.trimmed(); !name.isEmpty())
            people.push_back(name.toStdString());
    return people;
}

} // namespace

PlanForm::PlanForm(PlanProposal proposal, QWidget *parent) : QDialog(parent), m_proposal(std::move(proposal))
{
    setObjectName("studyPlanForm");
    setWindowTitle(tr("Plan a gauge study"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto *column = new QVBoxLayout(this);
    auto *form = new QFormLayout;
    form->setVerticalSpacing(2 * wording::gridStep);
    column->addLayout(form);
    addFields(form);
    m_length = new QLabel;
    m_length->setObjectName("studyLength");
    m_length->setWordWrap(true);
    m_faults = new QLabel;
    m_faults->setObjectName("formFaults");
    m_faults->setTextFormat(Qt::PlainText);
    m_faults->setWordWrap(true);
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("Plan it"));
    buttons->button(QDialogButtonBox::Ok)->setObjectName("formAccept");
    connect(buttons, &QDialogButtonBox::accepted, this, &PlanForm::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &PlanForm::reject);
    column->addWidget(m_length);
    column->addWidget(m_faults);
    column->addWidget(buttons);
    fill();
    for (QSpinBox *number : {m_notes, m_takes})
        connect(number, &QSpinBox::valueChanged, this, &PlanForm::tellLength);
    connect(m_people, &QPlainTextEdit::textChanged, this, &PlanForm::tellLength);
    tellLength();
    m_gauge->setFocus();
}

void PlanForm::addFields(QFormLayout *form)
{
    m_gauge = add(form, new QLineEdit, tr("Gauge"), "studyGauge");
    m_gauge->setPlaceholderText(tr("e.g. depth gauge 2"));
    m_gauge->setToolTip(tr("Named as in the passes, so that they take over what the study finds."));
    m_gauge->setMinimumWidth(24 * m_gauge->fontMetrics().averageCharWidth());
    m_resolution = add(form, new QLineEdit, tr("Its smallest step"), "studyResolution");
    m_resolution->setPlaceholderText(tr("e.g. 0.1 mm or 1/64"));
    m_quantity = add(form, new QComboBox, tr("Quantity"), "studyQuantity");
    const bool any = m_proposal.instrument.id == 0;
    const auto action = any ? std::nullopt : std::optional(m_proposal.instrument.action);
    for (const catalogue::QuantityInfo &info : catalogue::all())
        if (catalogue::has(action, info.quantity))
            m_quantity->addItem(wording::nameOf(info.quantity), static_cast<int>(info.quantity));
    m_unit = add(form, new QComboBox, tr("A bare number means"), "studyUnit");
    for (const auto unit : {units::Unit::Millimetre, units::Unit::Inch, units::Unit::Mil})
        m_unit->addItem(wording::unitText(unit), static_cast<int>(unit));
    m_people = add(form, new QPlainTextEdit, tr("Who, one a line"), "studyPeople");
    m_people->setTabChangesFocus(true);
    m_people->setFixedHeight(4 * m_people->fontMetrics().lineSpacing() + 4 * wording::gridStep);
    m_notes = addNumber(form, tr("Notes"), "studyNotes", 2, static_cast<int>(notesOf(m_proposal.instrument).size()));
    m_takes = addNumber(form, tr("Readings of each note by each person"), "studyTakes", 2, analysis::mostTakes);
    m_seed = addNumber(form, tr("Seed"), "studySeed", 0, std::numeric_limits<int>::max());
    m_seed->setToolTip(tr("Notes and order are drawn by it; the same seed draws the same."));
}

void PlanForm::fill()
{
    m_gauge->setText(QString::fromStdString(m_proposal.gauge.name));
    if (m_proposal.gauge.resolution != units::Length())
        m_resolution->setText(QString::fromStdString(units::exactDecimal(m_proposal.gauge.resolution)) + " mm");
    m_quantity->setCurrentIndex(m_quantity->findData(static_cast<int>(m_proposal.quantity)));
    m_unit->setCurrentIndex(m_unit->findData(static_cast<int>(m_proposal.unit)));
    QStringList people;
    for (const std::string &person : m_proposal.people)
        people << QString::fromStdString(person);
    m_people->setPlainText(people.join('\n'));
    m_notes->setValue(usualNotes);
    m_takes->setValue(usualTakes);
    m_seed->setValue(static_cast<int>(m_proposal.seed & 0x7FFFFFFFu));
}

void PlanForm::tellLength()
{
    const auto people = static_cast<int>(peopleIn(m_people->toPlainText()).size());
    m_length->setText(people < 2 ? tr("Two people at least; three read ten notes three times each in common practice.")
                                 : tr("%1 readings in all, %2 by each person.")
                                       .arg(people * m_notes->value() * m_takes->value())
                                       .arg(m_notes->value() * m_takes->value()));
}

outcome::Outcome<logbook::PlannedStudy> PlanForm::entered() const
{
    logbook::PlannedStudy study;
    std::vector<outcome::Fault> faults;
    study.gauge.name = m_gauge->text().trimmed().toStdString();
    study.quantity = static_cast<catalogue::Quantity>(m_quantity->currentData().toInt());
    study.unit = static_cast<units::Unit>(m_unit->currentData().toInt());
    study.instrument = m_proposal.instrument.id;
    study.plan.people = peopleIn(m_people->toPlainText());
    study.plan.takes = m_takes->value();
    study.plan.seed = static_cast<std::uint32_t>(m_seed->value());
    study.plan.notes = analysis::drawSample(notesOf(m_proposal.instrument), m_notes->value(), study.plan.seed);
    if (const QString step = m_resolution->text().trimmed(); !step.isEmpty()) {
        const auto parsed = units::parseAmount(step.toStdString(), {units::Dimension::Length, study.unit, false});
        if (parsed)
            study.gauge.resolution = parsed.value().value.asLength();
        else
            faults.push_back({.problem = "its smallest step: " + parsed.fault().problem});
    }
    const auto more = logbook::faultsOf(study);
    faults.insert(faults.end(), more.begin(), more.end());
    if (!faults.empty())
        return faults;
    return study;
}

void PlanForm::accept()
{
    const auto study = entered();
    if (!study) {
        m_faults->setText(wording::faultsText(study.faults()));
        return;
    }
    emit ready(study.value());
    QDialog::accept();
}

} // namespace hammerline::study_desk
