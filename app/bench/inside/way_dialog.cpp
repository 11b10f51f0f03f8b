#include "bench/inside/way_dialog.h"

#include "wording/wording.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <QVBoxLayout>

namespace hammerline::bench {

namespace {

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

template <typename Field>
Field *addRow(QFormLayout *form, Field *field, const QString &name, const QString &objectName)
{
    field->setObjectName(objectName);
    field->setAccessibleName(name);
    form->addRow(name, field);
    return field;
}

QString listOf(const std::vector<keyboard::Note> &notes)
{
    QStringList names;
    for (const keyboard::Note note : notes)
        names << QString::fromStdString(note.name());
    return names.join(' ');
}

} // namespace

QString scaleText(const Typing &typing)
{
    const double from = typing.from;
    switch (typing.scale) {
    case Scale::Whole:
        return {};
    case Scale::Tenths:
        return WayDialog::tr("31 is read as %1 mm").arg(from + 3.1, 0, 'f', 1);
    case Scale::Hundredths:
        return WayDialog::tr("310 is read as %1 mm").arg(from + 3.1, 0, 'f', 2);
    case Scale::ThirtySeconds:
        return WayDialog::tr("5 is read as 5/32 in");
    case Scale::SixtyFourths:
        return WayDialog::tr("5 is read as 5/64 in");
    case Scale::ThousandthsInch:
        return WayDialog::tr("125 is read as 125 mil");
    }
    return {};
}

WayDialog::WayDialog(const route::Choice &choice, const Typing &typing, catalogue::Quantity quantity, QWidget *parent)
    : QDialog(parent),
      m_choice(choice),
      m_order(new QComboBox),
      m_samples(new QComboBox),
      m_scale(new QComboBox),
      m_notes(new QLineEdit(listOf(choice.listed))),
      m_digits(new QSpinBox),
      m_from(new QSpinBox),
      m_example(new QLabel),
      m_fault(new QLabel)
{
    setObjectName("wayDialog");
    setWindowTitle(tr("The way through the pass"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto *column = new QVBoxLayout(this);
    auto *form = new QFormLayout;
    column->addLayout(form);
    addOrders(form);
    addTyping(form, typing, quantity);
    m_fault->setObjectName("wayFault");
    m_fault->setWordWrap(true);
    column->addWidget(m_fault);
    auto *foot = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    foot->setObjectName("wayFoot");
    connect(foot, &QDialogButtonBox::accepted, this, &WayDialog::accept);
    connect(foot, &QDialogButtonBox::rejected, this, &WayDialog::reject);
    column->addWidget(foot);
    for (QComboBox *box : {m_order, m_samples, m_scale})
        connect(box, &QComboBox::currentIndexChanged, this, &WayDialog::showWhatMatters);
    connect(m_from, &QSpinBox::valueChanged, this, &WayDialog::showWhatMatters);
    showWhatMatters();
}

void WayDialog::addOrders(QFormLayout *form)
{
    using route::Order;
    const std::pair<Order, QString> orders[] = {{Order::Chromatic, tr("bass to treble")},
                                                {Order::NaturalsThenSharps, tr("naturals, then sharps")},
                                                {Order::SamplesFirst, tr("samples of each section, then the rest")},
                                                {Order::OnlyOut, tr("only what is out or was sent back")},
                                                {Order::OnlyMissing, tr("only what is missing")},
                                                {Order::Own, tr("notes of my own")}};
    for (const auto &[order, name] : orders)
        m_order->addItem(name, static_cast<int>(order));
    using route::Samples;
    m_samples->addItem(tr("ends of each section"), static_cast<int>(Samples::SectionEnds));
    m_samples->addItem(tr("every fifth note"), static_cast<int>(Samples::EveryFifth));
    m_samples->addItem(tr("notes of my own"), static_cast<int>(Samples::Listed));
    m_notes->setPlaceholderText(tr("e.g. A0, C4..E4, 88"));
    addRow(form, m_order, tr("Ask for the notes"), "wayOrder");
    addRow(form, m_samples, tr("Samples"), "waySamples");
    addRow(form, m_notes, tr("Notes of my own"), "wayNotes");
    choose(m_order, m_choice.order);
    choose(m_samples, m_choice.samples);
}

void WayDialog::addTyping(QFormLayout *form, const Typing &typing, catalogue::Quantity quantity)
{
    const std::pair<Scale, QString> scales[] = {{Scale::Whole, tr("the unit of the pass")},
                                                {Scale::Tenths, tr("tenths of a millimetre")},
                                                {Scale::Hundredths, tr("hundredths of a millimetre")},
                                                {Scale::ThirtySeconds, tr("32nds of an inch")},
                                                {Scale::SixtyFourths, tr("64ths of an inch")},
                                                {Scale::ThousandthsInch, tr("thousandths of an inch")}};
    const bool mass = catalogue::infoOf(quantity).dimension == units::Dimension::Mass;
    for (const auto &[scale, name] : scales)
        if (!mass || scale == Scale::Whole)
            m_scale->addItem(mass ? tr("grams") : name, static_cast<int>(scale));
    m_from->setRange(0, farthestFrom);
    m_from->setSingleStep(10);
    m_from->setSpecialValueText(tr("nothing"));
    m_from->setSuffix(tr(" mm"));
    m_from->setValue(typing.from);
    m_digits->setRange(0, mostDigits);
    m_digits->setSpecialValueText(tr("any number, then Enter"));
    m_digits->setSuffix(tr(" digits, without Enter"));
    addRow(form, m_scale, tr("Bare digits of %1").arg(wording::nameOf(quantity)), "wayScale");
    addRow(form, m_from, tr("Added to them"), "wayFrom");
    m_example->setObjectName("wayExample");
    form->addRow(QString(), m_example);
    addRow(form, m_digits, tr("A reading is"), "wayDigits");
    choose(m_scale, typing.scale);
    m_digits->setValue(typing.digits);
}

void WayDialog::showWhatMatters()
{
    const bool sampled = chosen<route::Order>(m_order) == route::Order::SamplesFirst;
    m_samples->setEnabled(sampled);
    m_notes->setEnabled(chosen<route::Order>(m_order) == route::Order::Own ||
                        (sampled && chosen<route::Samples>(m_samples) == route::Samples::Listed));
    m_from->setEnabled(mayBeginFrom(chosen<Scale>(m_scale)));
    m_example->setText(scaleText(typing()));
}

Typing WayDialog::typing() const
{
    const auto scale = chosen<Scale>(m_scale);
    return {scale, m_digits->value(), mayBeginFrom(scale) ? m_from->value() : 0};
}

void WayDialog::accept()
{
    const auto listed = route::parseNoteList(m_notes->text().toStdString());
    if (!listed)
        return m_fault->setText(wording::faultsText(listed.faults()));
    if (m_notes->isEnabled() && listed.value().empty())
        return m_fault->setText(tr("Write at least one note."));
    m_choice.listed = listed.value();
    m_choice.order = chosen<route::Order>(m_order);
    m_choice.samples = chosen<route::Samples>(m_samples);
    emit ready(m_choice, typing());
    QDialog::accept();
}

} // namespace hammerline::bench
