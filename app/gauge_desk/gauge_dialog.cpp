#include "gauge_desk/gauge_dialog.h"

#include "wording/palette.h"
#include "wording/wording.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScreen>
#include <QTableWidget>

namespace hammerline::gauge_desk {

namespace {

constexpr QSize usualSize{720, 620};

QString nameOf(const QString &frame)
{
    const QString parity = frame.at(1) == u'N'   ? GaugeDialog::tr("no parity")
                           : frame.at(1) == u'E' ? GaugeDialog::tr("even parity")
                                                 : GaugeDialog::tr("odd parity");
    return GaugeDialog::tr("%1 data bits, %2, %3 stop").arg(frame.at(0)).arg(parity).arg(frame.at(2));
}

template <typename Field>
void name(Field *field, const QString &accessible, const char *object)
{
    field->setObjectName(object);
    field->setAccessibleName(accessible);
}

/// A row of several parts, the label of which leads to the first.
void addRow(QFormLayout *form, const QString &text, QLayout *row, QWidget *first)
{
    auto *label = new QLabel(text);
    label->setBuddy(first);
    form->addRow(label, row);
}

} // namespace

GaugeDialog::GaugeDialog(GaugeDesk &desk, QWidget *parent)
    : QDialog(parent),
      m_desk(desk),
      m_port(new QComboBox),
      m_speed(new QComboBox),
      m_frame(new QComboBox),
      m_pattern(new QLineEdit(desk.choice().pattern.expression)),
      m_unit(new QComboBox),
      m_fault(new QLabel),
      m_state(new QLabel),
      m_lines(new QTableWidget(0, 2))
{
    setObjectName("gaugeDialog");
    setWindowTitle(tr("Gauge on a serial line"));
    setAttribute(Qt::WA_DeleteOnClose);
    resize((usualSize * wording::textScale()).boundedTo(screen()->availableSize()));
    auto *column = new QVBoxLayout(this);
    auto *form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    column->addLayout(form);
    addLineRows(form);
    addPatternRows(form);
    makePreview();
    makeFoot();
    connect(&m_desk, &GaugeDesk::stateChanged, this, &GaugeDialog::follow);
    connect(&m_desk, &GaugeDesk::lineArrived, this, &GaugeDialog::addLine);
    tryOut();
}

GaugeDialog::~GaugeDialog()
{
    hearNoMore();
}

void GaugeDialog::fillPorts()
{
    const QString kept = m_port->currentText().isEmpty() ? m_desk.choice().device : chosen().device;
    const QSignalBlocker quiet(m_port);
    m_port->clear();
    for (const Port &port : portsNow())
        m_port->addItem(port.label, port.device);
    const int known = m_port->findData(kept);
    m_port->setCurrentIndex(known);
    if (known < 0)
        m_port->setEditText(kept);
}

void GaugeDialog::addLineRows(QFormLayout *form)
{
    m_port->setEditable(true);
    m_port->lineEdit()->setPlaceholderText(tr("none plugged in; or write e.g. ttyUSB0"));
    m_port->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    name(m_port, tr("Port"), "gaugePort");
    fillPorts();
    auto *look = new QPushButton(tr("&Look again"));
    name(look, tr("Look for plugged-in gauges again"), "gaugeLook");
    look->setAutoDefault(false);
    auto *row = new QHBoxLayout;
    row->addWidget(m_port, 1);
    row->addWidget(look);
    addRow(form, tr("&Port"), row, m_port);
    for (const int speed : knownSpeeds())
        m_speed->addItem(tr("%1 baud").arg(speed), speed);
    m_speed->setCurrentIndex(std::max(0, m_speed->findData(m_desk.choice().baud)));
    name(m_speed, tr("Speed"), "gaugeSpeed");
    form->addRow(tr("&Speed"), m_speed);
    for (const QString &frame : knownFrames())
        m_frame->addItem(nameOf(frame), frame);
    m_frame->setCurrentIndex(std::max(0, m_frame->findData(m_desk.choice().frame)));
    name(m_frame, tr("A character is"), "gaugeFrame");
    form->addRow(tr("A &character is"), m_frame);
    connect(look, &QPushButton::clicked, this, [this] {
        fillPorts();
        tryOut();
    });
    connect(m_port, &QComboBox::activated, this, &GaugeDialog::tryOut);
    connect(m_port->lineEdit(), &QLineEdit::editingFinished, this, &GaugeDialog::tryOut);
    for (QComboBox *box : {m_speed, m_frame})
        connect(box, &QComboBox::currentIndexChanged, this, &GaugeDialog::tryOut);
}

void GaugeDialog::addPatternRows(QFormLayout *form)
{
    auto *usual = new QPushButton(tr("&Usual pattern"));
    name(usual, tr("Back to the usual pattern"), "gaugeUsualPattern");
    usual->setAutoDefault(false);
    name(m_pattern, tr("Pattern that finds number and unit in a line"), "gaugePattern");
    m_pattern->setToolTip(tr("A regular expression with a group named value and, where the gauge says its unit, one "
                             "named unit. The usual one takes the first number of the line."));
    m_pattern->setCursorPosition(0);
    auto *row = new QHBoxLayout;
    row->addWidget(m_pattern, 1);
    row->addWidget(usual);
    addRow(form, tr("Pa&ttern"), row, m_pattern);
    for (const units::Unit unit : knownUnits())
        m_unit->addItem(wording::unitText(unit), static_cast<int>(unit));
    m_unit->setCurrentIndex(std::max(0, m_unit->findData(static_cast<int>(m_desk.choice().pattern.bareUnit))));
    name(m_unit, tr("Unit where the line says none"), "gaugeUnit");
    form->addRow(tr("Unit where the line says &none"), m_unit);
    m_fault->setObjectName("gaugeFault");
    m_fault->setWordWrap(true);
    form->addRow(m_fault);
    connect(usual, &QPushButton::clicked, this,
            [this] { m_pattern->setText(gauge_input::LinePattern::defaultExpression()); });
    connect(m_pattern, &QLineEdit::textChanged, this, &GaugeDialog::tryOut);
    connect(m_unit, &QComboBox::currentIndexChanged, this, &GaugeDialog::tryOut);
}

void GaugeDialog::makePreview()
{
    m_state->setObjectName("gaugeStateHere");
    m_state->setFont(wording::font(wording::TextSize::Heading));
    m_state->setWordWrap(true);
    name(m_lines, tr("Lines of the gauge and what is understood"), "gaugeLines");
    m_lines->setHorizontalHeaderLabels({tr("The line as it came"), tr("Understood")});
    m_lines->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_lines->horizontalHeader()->setHighlightSections(false);
    m_lines->verticalHeader()->hide();
    m_lines->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_lines->setTabKeyNavigation(false);
    m_lines->setShowGrid(false);
    auto *column = static_cast<QVBoxLayout *>(layout());
    column->addWidget(m_state);
    column->addWidget(m_lines, 1);
}

void GaugeDialog::makeFoot()
{
    auto *foot = new QDialogButtonBox(QDialogButtonBox::Cancel);
    m_connect = foot->addButton(tr("C&onnect"), QDialogButtonBox::AcceptRole);
    m_connect->setObjectName("gaugeConnect");
    m_connect->setDefault(true);
    auto *disconnect = foot->addButton(tr("&Disconnect"), QDialogButtonBox::DestructiveRole);
    disconnect->setObjectName("gaugeDisconnect");
    disconnect->setAutoDefault(false);
    disconnect->setEnabled(m_desk.choice().wanted);
    connect(m_connect, &QPushButton::clicked, this, [this] { finish(true); });
    connect(disconnect, &QPushButton::clicked, this, [this] { finish(false); });
    connect(foot, &QDialogButtonBox::rejected, this, &GaugeDialog::reject);
    layout()->addWidget(foot);
}

GaugeChoice GaugeDialog::chosen() const
{
    GaugeChoice choice = m_desk.choice();
    const int listed = m_port->findText(m_port->currentText());
    choice.device = listed < 0 ? m_port->currentText().trimmed() : m_port->itemData(listed).toString();
    choice.baud = m_speed->currentData().toInt();
    choice.frame = m_frame->currentData().toString();
    choice.pattern = {m_pattern->text(), static_cast<units::Unit>(m_unit->currentData().toInt())};
    return choice;
}

void GaugeDialog::tryOut()
{
    const GaugeChoice choice = chosen();
    const QString fault = gauge_input::faultOf(choice.pattern);
    m_fault->setText(fault);
    m_fault->setVisible(!fault.isEmpty());
    m_connect->setEnabled(fault.isEmpty() && !choice.device.isEmpty());
    m_desk.tryOut(choice);
    showLines();
}

void GaugeDialog::follow()
{
    const QString mark = m_desk.stateText().left(1);
    m_state->setText(mark.isEmpty() ? m_desk.stateStory() : mark + ' ' + m_desk.stateStory());
}

void GaugeDialog::addLine(const QByteArray &line)
{
    m_heard.prepend(line);
    if (m_heard.size() > mostLines)
        m_heard.removeLast();
    showLines();
}

void GaugeDialog::showLines()
{
    const gauge_input::LinePattern pattern = chosen().pattern;
    const wording::Palette &colours = wording::paletteFor(*this);
    m_lines->setRowCount(static_cast<int>(m_heard.size()));
    for (int row = 0; row < m_lines->rowCount(); ++row) {
        const Understood understood = understand(m_heard[row], pattern);
        auto *meaning = new QTableWidgetItem((understood.read ? "" : "▲ ") + understood.text);
        meaning->setForeground(understood.read ? colours.ink : colours.tooLarge);
        meaning->setToolTip(understood.text);
        m_lines->setItem(row, 0, new QTableWidgetItem(gauge_input::visibleText(m_heard[row])));
        m_lines->setItem(row, 1, meaning);
    }
}

void GaugeDialog::finish(bool wanted)
{
    GaugeChoice choice = wanted ? chosen() : m_desk.choice();
    choice.wanted = wanted;
    m_desk.use(choice);
    accept();
}

void GaugeDialog::hearNoMore()
{
    // A field that loses the focus in closing says that it was edited, which must begin no new trial.
    for (QObject *part : findChildren<QObject *>())
        part->disconnect(this);
}

void GaugeDialog::done(int result)
{
    hearNoMore();
    m_desk.endTrial();
    QDialog::done(result);
}

} // namespace hammerline::gauge_desk
