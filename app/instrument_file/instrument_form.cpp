#include "instrument_file/inside/form_parts.h"
#include "instrument_file/instrument_file.h"
#include "instrument_file/ranges_text.h"
#include "wording/palette.h"
#include "wording/wording.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>

namespace hammerline::instrument_file {

namespace {

constexpr double earliestYear = 1700;
constexpr double latestYear = 2100;
constexpr double largestSizeMm = 4000;

QString shown(const std::string &text)
{
    return QString::fromStdString(text);
}

void append(Faults &to, const Faults &more)
{
    to.insert(to.end(), more.begin(), more.end());
}

keyboard::Note noteOf(const QLineEdit *line, keyboard::Note otherwise, Faults &faults)
{
    if (line->text().trimmed().isEmpty())
        return otherwise;
    const auto note = keyboard::parseNote(plain(line));
    if (note)
        return note.value();
    faults.push_back({.problem = line->accessibleName().toStdString() + ": " + note.fault().problem});
    return otherwise;
}

} // namespace

InstrumentForm::InstrumentForm(instrument::Instrument known, QWidget *parent)
    : EntryDialog(parent), m_known(std::move(known))
{
    setObjectName("instrumentForm");
    setWindowTitle(m_known.id == 0 ? tr("Take in an instrument") : tr("Change the instrument"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto *fields = new QWidget;
    auto *form = new QFormLayout(fields);
    form->setVerticalSpacing(2 * wording::gridStep);
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    addIdentity(form);
    addBuild(form);
    addStory(form);
    auto *scroll = new QScrollArea;
    scroll->setFocusPolicy(Qt::NoFocus); // it follows the field that has the focus
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setWidget(fields);
    auto *column = new QVBoxLayout(this);
    column->addWidget(scroll);
    m_faults = addFoot(this, column, m_known.id == 0 ? tr("Take in") : tr("Store"));
    fill();
    resize((QSize(680, 640) * wording::textScale()).boundedTo(screen()->availableSize()));
    m_name->setFocus();
}

void InstrumentForm::addIdentity(QFormLayout *form)
{
    m_name = addLine(form, tr("Name in the shop"), "instrumentName", tr("what you call it, e.g. Blue upright"));
    m_action = addChoice(form, tr("Action"), "instrumentAction");
    for (const auto action : {catalogue::ActionKind::Vertical, catalogue::ActionKind::Grand})
        m_action->addItem(wording::nameOf(action), static_cast<int>(action));
    m_maker = addLine(form, tr("Maker"), "instrumentMaker");
    m_model = addLine(form, tr("Model"), "instrumentModel");
    m_serial = addLine(form, tr("Serial number"), "instrumentSerial");
    m_year = addLine(form, tr("Year"), "instrumentYear");
    m_size = addLine(form, tr("Height or length, mm"), "instrumentSize");
}

void InstrumentForm::addBuild(QFormLayout *form)
{
    m_first = addLine(form, tr("First note"), "instrumentFirst", "A0");
    m_last = addLine(form, tr("Last note"), "instrumentLast", tr("C8; A7 where it has 85 notes"));
    m_sections =
        addLine(form, tr("Sections"), "instrumentSections", tr("bass A0 to E2; tenor F2 to B4; treble C5 to C8"));
    m_stringing =
        addLine(form, tr("Stringing"), "instrumentStringing", tr("single wound A0 to A1; three plain C4 to C8"));
    m_dampers = addLine(form, tr("Dampers"), "instrumentDampers", tr("wedge A0 to B2; flat C3 to F6"));
}

void InstrumentForm::addStory(QFormLayout *form)
{
    m_condition = addText(form, tr("Condition as received"), "instrumentCondition");
    m_owner = addLine(form, tr("Owner"), "instrumentOwner", tr("stays out of the record unless you ask for it"));
    m_remark = addText(form, tr("Remark"), "instrumentRemark");
    m_remark->setPlaceholderText(tr("stays in the workshop; no record prints it"));
}

void InstrumentForm::fill()
{
    m_name->setText(shown(m_known.name));
    m_action->setCurrentIndex(m_action->findData(static_cast<int>(m_known.action)));
    m_maker->setText(shown(m_known.maker));
    m_model->setText(shown(m_known.model));
    m_serial->setText(shown(m_known.serial));
    m_year->setText(m_known.year ? QString::number(*m_known.year) : QString());
    m_size->setText(m_known.size ? QString::number(m_known.size->inMillimetres()) : QString());
    m_first->setText(shown(m_known.compass.first.name()));
    m_last->setText(shown(m_known.compass.last.name()));
    m_sections->setText(shown(textOf(m_known.sections)));
    m_stringing->setText(shown(textOf(m_known.stringing)));
    m_dampers->setText(shown(textOf(m_known.dampers)));
    m_condition->setPlainText(shown(m_known.condition));
    m_owner->setText(shown(m_known.owner));
    m_remark->setPlainText(shown(m_known.remark));
}

outcome::Outcome<instrument::Instrument> InstrumentForm::entered() const
{
    Faults faults;
    instrument::Instrument made = m_known;
    made.name = plain(m_name);
    made.action = static_cast<catalogue::ActionKind>(m_action->currentData().toInt());
    made.maker = plain(m_maker);
    made.model = plain(m_model);
    made.serial = plain(m_serial);
    made.owner = plain(m_owner);
    made.condition = m_condition->toPlainText().trimmed().toStdString();
    made.remark = m_remark->toPlainText().trimmed().toStdString();
    const auto year = number(m_year, earliestYear, latestYear, faults);
    made.year = year ? std::optional(static_cast<int>(*year)) : std::nullopt;
    const auto size = number(m_size, 1, largestSizeMm, faults);
    made.size = size ? std::optional(units::Length::millimetres(*size)) : std::nullopt;
    readRanges(made, faults);
    append(faults, instrument::faultsOf(made));
    if (!faults.empty())
        return faults;
    return made;
}

void InstrumentForm::readRanges(instrument::Instrument &made, std::vector<outcome::Fault> &faults) const
{
    made.compass = {noteOf(m_first, keyboard::Note(1), faults), noteOf(m_last, keyboard::Note(88), faults)};
    if (made.compass.last < made.compass.first) {
        faults.push_back({.problem = tr("the last note lies below the first").toStdString()});
        made.compass = {};
    }
    if (auto sections = parseSections(plain(m_sections)))
        made.sections = std::move(sections).value();
    else
        append(faults, sections.faults());
    if (auto stringing = parseFittings(plain(m_stringing)))
        made.stringing = std::move(stringing).value();
    else
        append(faults, stringing.faults());
    if (auto dampers = parseFittings(plain(m_dampers)))
        made.dampers = std::move(dampers).value();
    else
        append(faults, dampers.faults());
}

void InstrumentForm::accept()
{
    finish(entered(), [this](const instrument::Instrument &instrument) { emit ready(instrument); });
}

} // namespace hammerline::instrument_file
