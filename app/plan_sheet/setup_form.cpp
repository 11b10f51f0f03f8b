#include "plan_sheet/setup_form.h"

#include "exchange/built_in.h"
#include "exchange/exchange.h"
#include "exchange/setup_json.h"
#include "plan_sheet/setup_tables.h"
#include "units/parse_amount.h"
#include "wording/palette.h"
#include "wording/wording.h"
#include "wording/wrap_row.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QScreen>

#include <cmath>

namespace hammerline::plan_sheet {

namespace {

using outcome::Fault;

constexpr QSize usualSize{900, 680};

QLineEdit *makeLine(const char *name, const QString &accessible, int letters)
{
    auto *line = new QLineEdit;
    line->setObjectName(name);
    line->setAccessibleName(accessible);
    line->setMaximumWidth(letters * line->fontMetrics().averageCharWidth());
    return line;
}

/// A decimal, a fraction, or a whole number and a fraction.
std::optional<double> turnsFrom(const QString &text)
{
    static const QRegularExpression form(QStringLiteral("^([+-]?)\\s*(?:(\\d+(?:[.,]\\d*)?|[.,]\\d+)|(?:(\\d+)[ -]+)?"
                                                        "(\\d+)/(\\d+))$"));
    QString plain = text.trimmed();
    plain.replace(QChar(0x2212), '-');
    const auto match = form.match(plain);
    if (!match.hasMatch())
        return std::nullopt;
    const double below = match.captured(5).toDouble();
    const double value = below != 0 ? match.captured(3).toDouble() + match.captured(4).toDouble() / below
                                    : match.captured(2).replace(',', '.').toDouble();
    return match.captured(1) == QStringLiteral("-") ? -value : value;
}

Fault refused(const QString &problem)
{
    return {{}, 0, problem.toStdString()};
}

} // namespace

outcome::Outcome<units::Amount> trialTurn(const QString &turns, const QString &before, const QString &after,
                                          units::Dimension dimension, units::Unit bareUnit)
{
    const units::TypedForm form{.dimension = dimension, .bareUnit = bareUnit};
    const auto turned = turnsFrom(turns);
    const auto from = units::parseAmount(before.toStdString(), form),
               to = units::parseAmount(after.toStdString(), form);
    if (!turned || *turned == 0)
        return refused(QObject::tr("turned by: a number of turns such as 1/4 or -0.5"));
    if (!from)
        return refused(QObject::tr("before: ") + QString::fromStdString(from.faults().front().problem));
    if (!to)
        return refused(QObject::tr("after: ") + QString::fromStdString(to.faults().front().problem));
    const double change = static_cast<double>((to.value().value - from.value().value).baseCount());
    const auto perTurn = static_cast<std::int64_t>(std::llround(change / *turned));
    if (perTurn == 0)
        return refused(QObject::tr("the reading did not change; turn further and measure again"));
    return units::Amount(dimension, perTurn);
}

SetupForm::SetupForm(const action::Setup &known, const wording::NumberForm &form, prompts::Prompts &prompts,
                     QWidget *parent)
    : EntryDialog(parent),
      m_form(form),
      m_prompts(prompts),
      m_adjustments(new AdjustmentTable),
      m_rails(new RailTable),
      m_name(makeLine("setupName", tr("Name"), 48)),
      m_ratio(makeLine("setupRatio", tr("Lever ratio"), 12)),
      m_trialOf(new QComboBox),
      m_turned(makeLine("trialTurned", tr("Turned by"), 12)),
      m_before(makeLine("trialBefore", tr("Reading before"), 12)),
      m_after(makeLine("trialAfter", tr("Reading after"), 12))
{
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Action setup"));
    m_name->setMinimumWidth(24 * m_name->fontMetrics().averageCharWidth());
    build();
    show(known);
}

void SetupForm::build()
{
    auto *column = new QVBoxLayout(this);
    column->setSpacing(2 * wording::gridStep);
    const auto say = [column](const QString &text) {
        auto *label = new QLabel(text);
        label->setWordWrap(true);
        column->addWidget(label);
    };
    column->addLayout(makeHead());
    say(tr("Adjustments of single notes, in mm (weights in g). A row without a step cannot be adjusted."));
    column->addWidget(m_adjustments, 3);
    column->addLayout(makeTrial());
    say(tr("Rails, in mm. No notes: the whole keyboard."));
    column->addWidget(m_rails, 2);
    column->addLayout(makeRailButtons());
    m_faults = new QLabel;
    m_faults->setObjectName("setupFaults");
    m_faults->setTextFormat(Qt::PlainText);
    m_faults->setWordWrap(true);
    column->addWidget(m_faults);
    column->addLayout(makeFoot());
    resize((usualSize * wording::textScale()).boundedTo(screen()->availableSize()));
}

QLayout *SetupForm::makeHead()
{
    auto *row = new wording::WrapRow(2 * wording::gridStep);
    for (auto [text, line] : {std::pair(tr("&Name"), m_name), std::pair(tr("Lever &ratio"), m_ratio)}) {
        row->addPair(new QLabel(text), line);
    }
    auto *use = new QLabel(tr("used where no note tells its own"));
    use->setEnabled(false);
    row->addWidget(use);
    return row;
}

QLayout *SetupForm::makeTrial()
{
    m_trialOf->setObjectName("trialOf");
    m_trialOf->setAccessibleName(tr("Adjustment that was turned"));
    m_turned->setPlaceholderText(QStringLiteral("1/4"));
    m_turned->setToolTip(tr("Turns one way count as plus, the other way as minus; the plan says “back” for minus."));
    auto *take = new QPushButton(tr("Work out one t&urn"));
    take->setObjectName("trialTake");
    take->setAutoDefault(false);
    connect(take, &QPushButton::clicked, this, &SetupForm::takeTrial);
    auto *row = new wording::WrapRow(2 * wording::gridStep);
    row->addPair(new QLabel(tr("&Trial turn of")), m_trialOf);
    row->addPair(new QLabel(tr("turned by")), m_turned);
    row->addPair(new QLabel(tr("before")), m_before);
    row->addPair(new QLabel(tr("after")), m_after);
    row->addWidget(take);
    return row;
}

QBoxLayout *SetupForm::makeRailButtons()
{
    auto *row = new QHBoxLayout;
    const auto add = [&](const QString &text, const char *name, void (RailTable::*does)()) {
        auto *button = new QPushButton(text);
        button->setObjectName(name);
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, m_rails, does);
        row->addWidget(button);
    };
    add(tr("&Add a rail"), "setupAddRail", &RailTable::addRail);
    add(tr("Re&move the rail"), "setupRemoveRail", &RailTable::removeRail);
    row->addStretch(1);
    return row;
}

QBoxLayout *SetupForm::makeFoot()
{
    auto *row = new QHBoxLayout;
    const auto add = [&](const QString &text, const char *name, void (SetupForm::*does)()) {
        auto *button = new QPushButton(text);
        button->setObjectName(name);
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, does);
        row->addWidget(button);
    };
    add(tr("From a &file…"), "setupLoad", &SetupForm::load);
    add(tr("&Save to a file…"), "setupSave", &SetupForm::save);
    row->addStretch(1);
    auto *buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("Plan with this"));
    buttons->button(QDialogButtonBox::Ok)->setObjectName("setupAccept");
    connect(buttons, &QDialogButtonBox::accepted, this, &SetupForm::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &SetupForm::reject);
    row->addWidget(buttons);
    return row;
}

void SetupForm::show(const action::Setup &setup)
{
    m_known = setup;
    m_name->setText(QString::fromStdString(setup.name));
    m_ratio->setText(QString::number(setup.leverRatio));
    m_adjustments->show(setup);
    m_rails->show(setup);
    m_trialOf->clear();
    for (const catalogue::Quantity quantity : m_adjustments->quantities())
        m_trialOf->addItem(wording::nameOf(quantity), static_cast<int>(quantity));
    m_trialOf->setCurrentIndex(std::max(0, m_trialOf->findData(static_cast<int>(catalogue::Quantity::LetOff))));
}

outcome::Outcome<action::Setup> SetupForm::entered() const
{
    std::vector<Fault> faults;
    action::Setup made = m_known;
    made.name = m_name->text().trimmed().toStdString();
    bool ok = false;
    made.leverRatio = m_ratio->text().replace(',', '.').toDouble(&ok);
    if (!ok)
        faults.push_back(refused(tr("lever ratio: “%1” is no number").arg(m_ratio->text())));
    made.adjustments = m_adjustments->entered(faults);
    made.rails = m_rails->entered(faults);
    if (faults.empty())
        faults = action::faultsOf(made);
    if (!faults.empty())
        return faults;
    return made;
}

void SetupForm::accept()
{
    finish(entered(), [this](const action::Setup &setup) { emit ready(setup); });
}

void SetupForm::takeTrial()
{
    const auto quantity = static_cast<catalogue::Quantity>(m_trialOf->currentData().toInt());
    const auto dimension = catalogue::infoOf(quantity).dimension;
    const auto perTurn =
        trialTurn(m_turned->text(), m_before->text(), m_after->text(), dimension, m_form.unitFor(dimension));
    if (!perTurn)
        return tell(perTurn.faults());
    m_adjustments->setPerTurn(quantity, perTurn.value());
    m_faults->setText(tr("One turn changes %1 by %2.")
                          .arg(wording::nameOf(quantity).toLower(), wording::changeText(perTurn.value(), m_form)));
}

void SetupForm::load()
{
    const auto path = m_prompts.chooseFile(
        this, {prompts::FileWish::Use::Open, tr("Action setup"), tr("Action setups (*.json)"), {}, "json"});
    if (!path)
        return;
    const auto setup = exchange::findSetup(path->toStdString());
    if (!setup)
        tell(setup.faults());
    else if (setup.value().action != m_known.action)
        m_faults->setText(
            tr("this setup is for the other kind of action: %1").arg(wording::nameOf(setup.value().action)));
    else {
        m_faults->clear();
        show(setup.value());
    }
}

void SetupForm::save()
{
    const auto made = entered();
    if (!made)
        return tell(made.faults());
    const auto path = m_prompts.chooseFile(this, {prompts::FileWish::Use::Save, tr("Action setup"),
                                                  tr("Action setups (*.json)"), m_name->text() + ".json", "json"});
    if (!path)
        return;
    const auto written =
        exchange::writeFile(path->toStdString(), exchange::writeSetup(made.value()), exchange::Overwrite::Yes);
    m_faults->setText(written ? tr("Saved.") : wording::faultsText(written.faults()));
}

} // namespace hammerline::plan_sheet
