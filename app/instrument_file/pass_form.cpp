#include "instrument_file/pass_form.h"

#include "instrument_file/inside/form_parts.h"
#include "units/parse_amount.h"
#include "wording/palette.h"
#include "wording/wording.h"

#include <QComboBox>
#include <QCompleter>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

#include <algorithm>

namespace hammerline::instrument_file {

namespace {

template <typename Choice>
void addChoices(QComboBox *box, std::initializer_list<Choice> choices)
{
    for (const Choice choice : choices)
        box->addItem(wording::nameOf(choice), static_cast<int>(choice));
}

template <typename Choice>
void choose(QComboBox *box, Choice choice)
{
    box->setCurrentIndex(box->findData(static_cast<int>(choice)));
}

template <typename Choice>
Choice chosen(const QComboBox *box)
{
    return static_cast<Choice>(box->currentData().toInt());
}

units::Length lengthOf(const QLineEdit *line, units::Unit unit, Faults &faults)
{
    if (line->text().trimmed().isEmpty())
        return {};
    const auto parsed = units::parseAmount(plain(line), {units::Dimension::Length, unit, false});
    if (parsed)
        return parsed.value().value.asLength();
    faults.push_back({.problem = line->accessibleName().toStdString() + ": " + parsed.fault().problem});
    return {};
}

QString lengthText(units::Length length)
{
    return length == units::Length() ? QString() : QString::fromStdString(units::exactDecimal(length)) + " mm";
}

} // namespace

PassForm::PassForm(readings::Pass known, catalogue::ActionKind action, QWidget *parent)
    : EntryDialog(parent), m_known(std::move(known))
{
    setObjectName("passForm");
    setWindowTitle(m_known.id == 0 ? tr("Begin a pass") : tr("Change the pass"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto *column = new QVBoxLayout(this);
    auto *form = new QFormLayout;
    form->setVerticalSpacing(2 * wording::gridStep);
    column->addLayout(form);
    addFields(form, action);
    m_faults = addFoot(this, column, m_known.id == 0 ? tr("Begin") : tr("Store"));
    fill();
    m_purpose->setFocus();
}

void PassForm::addFields(QFormLayout *form, catalogue::ActionKind action)
{
    using readings::Purpose;
    m_purpose = addChoice(form, tr("Purpose"), "passPurpose");
    addChoices(m_purpose, {Purpose::AsFound, Purpose::Setting, Purpose::AsLeft, Purpose::Recheck});
    m_person = addLine(form, tr("Measured by"), "passPerson");
    m_unit = addChoice(form, tr("A bare number means"), "passUnit");
    for (const auto unit : {units::Unit::Millimetre, units::Unit::Inch, units::Unit::Mil})
        m_unit->addItem(wording::unitText(unit), static_cast<int>(unit));
    m_dip = addChoice(form, tr("Dip is measured"), "passDipDatum");
    using readings::DipDatum;
    addChoices(m_dip, {DipDatum::FrontEdge, DipDatum::Back13mm, DipDatum::OverFrontPin});
    m_drop = addChoice(form, tr("Drop is measured"), "passDropDatum");
    using readings::DropDatum;
    addChoices(m_drop, {DropDatum::BelowLetOff, DropDatum::FromString});
    form->setRowVisible(m_drop, action == catalogue::ActionKind::Grand);
    m_gauge = addLine(form, tr("Gauge"), "passGauge", tr("e.g. depth gauge 2"));
    m_resolution = addLine(form, tr("Its smallest step"), "passResolution", tr("e.g. 0.1 mm or 1/64"));
    m_uncertainty = addLine(form, tr("Its expanded uncertainty"), "passUncertainty", tr("k = 2, where it is known"));
    m_offered = new QLabel;
    m_offered->setObjectName("passStudied");
    m_offered->setWordWrap(true);
    m_offered->hide();
    form->addRow(QString(), m_offered);
    m_celsius = addLine(form, tr("Temperature, °C"), "passCelsius");
    m_humidity = addLine(form, tr("Relative humidity, %"), "passHumidity");
    m_remark = addLine(form, tr("Remark"), "passRemark", tr("the record prints it"));
}

void PassForm::fill()
{
    choose(m_purpose, m_known.purpose);
    choose(m_unit, m_known.unit);
    choose(m_dip, m_known.dipDatum);
    choose(m_drop, m_known.dropDatum);
    m_person->setText(QString::fromStdString(m_known.person));
    m_gauge->setText(QString::fromStdString(m_known.gauge.name));
    m_resolution->setText(lengthText(m_known.gauge.resolution));
    m_uncertainty->setText(lengthText(m_known.gauge.expandedUncertainty));
    if (m_known.climate.celsius)
        m_celsius->setText(QString::number(*m_known.climate.celsius));
    if (m_known.climate.relativeHumidityPercent)
        m_humidity->setText(QString::number(*m_known.climate.relativeHumidityPercent));
    m_remark->setText(QString::fromStdString(m_known.remark));
}

void PassForm::offer(std::vector<StudiedGauge> gauges)
{
    m_gauges = std::move(gauges);
    QStringList names;
    for (const StudiedGauge &gauge : m_gauges)
        names << QString::fromStdString(gauge.name);
    auto *completer = new QCompleter(names, this);
    completer->setCaseSensitivity(Qt::CaseInsensitive);
    m_gauge->setCompleter(completer);
    connect(m_gauge, &QLineEdit::textChanged, this, &PassForm::followGauge);
    if (m_known.id == 0 && studied() != nullptr)
        m_filledIn = m_uncertainty->text();
    followGauge();
}

const StudiedGauge *PassForm::studied() const
{
    const auto found = std::ranges::find(m_gauges, plain(m_gauge), &StudiedGauge::name);
    return found == m_gauges.end() ? nullptr : &*found;
}

void PassForm::followGauge()
{
    const StudiedGauge *gauge = studied();
    m_offered->setVisible(gauge != nullptr);
    if (m_uncertainty->text().isEmpty() || m_uncertainty->text() == m_filledIn) {
        m_filledIn = gauge ? lengthText(gauge->expandedUncertainty) : QString();
        m_uncertainty->setText(m_filledIn);
    }
    if (gauge == nullptr)
        return;
    m_offered->setText(tr("Its study of %1 found %2.").arg(gauge->day, lengthText(gauge->expandedUncertainty)));
    if (m_resolution->text().isEmpty())
        m_resolution->setText(lengthText(gauge->resolution));
}

outcome::Outcome<readings::Pass> PassForm::entered() const
{
    Faults faults;
    readings::Pass made = m_known;
    made.purpose = chosen<readings::Purpose>(m_purpose);
    made.unit = chosen<units::Unit>(m_unit);
    made.dipDatum = chosen<readings::DipDatum>(m_dip);
    made.dropDatum = chosen<readings::DropDatum>(m_drop);
    made.person = plain(m_person);
    made.gauge.name = plain(m_gauge);
    made.gauge.resolution = lengthOf(m_resolution, made.unit, faults);
    made.gauge.expandedUncertainty = lengthOf(m_uncertainty, made.unit, faults);
    made.climate.celsius = number(m_celsius, -40, 60, faults);
    made.climate.relativeHumidityPercent = number(m_humidity, 0, 100, faults);
    made.remark = plain(m_remark);
    if (!faults.empty())
        return faults;
    return made;
}

void PassForm::accept()
{
    finish(entered(), [this](const readings::Pass &pass) { emit ready(pass); });
}

} // namespace hammerline::instrument_file
