#include "main_window/workshop_panel.h"

#include "main_window/person_label.h"
#include "wording/counted.h"
#include "wording/palette.h"
#include "wording/wording.h"

#include <QBoxLayout>
#include <QDateTime>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QTimer>
#include <QTreeWidget>

#include <algorithm>

namespace hammerline::main_window {

namespace {

constexpr int instrumentRole = Qt::UserRole;
constexpr int passRole = Qt::UserRole + 1;

QString dayOf(readings::Instant instant)
{
    const QDateTime moment = QDateTime::fromMSecsSinceEpoch(instant.time_since_epoch().count());
    return QLocale().toString(moment.date(), QLocale::ShortFormat);
}

/// "Maker Model, 1911, no. 4711; 131 cm upright"
QString describe(const instrument::Instrument &instrument)
{
    QStringList parts;
    const QString build = QString::fromStdString(instrument.maker + " " + instrument.model).trimmed();
    if (!build.isEmpty())
        parts << build;
    if (instrument.year)
        parts << QString::number(*instrument.year);
    if (!instrument.serial.empty())
        parts << WorkshopPanel::tr("no. %1").arg(QString::fromStdString(instrument.serial));
    parts << wording::nameOf(instrument.action);
    if (instrument.size)
        parts << WorkshopPanel::tr("%1 cm").arg(instrument.size->inMillimetres() / 10);
    parts << wording::counted(instrument.compass.count(), WorkshopPanel::tr("1 note"), WorkshopPanel::tr("%1 notes"));
    return parts.join(", ");
}

/// Says what it is only when it is asked: thousands of rows are made, a screenful is looked at.
class InstrumentRow : public QTreeWidgetItem {
public:
    InstrumentRow(const Workshop &workshop, const logbook::InstrumentLine &of)
        : QTreeWidgetItem({QString::fromStdString(of.name)}), m_workshop(workshop), m_id(of.id)
    {
        setChildIndicatorPolicy(ShowIndicator);
    }
    [[nodiscard]] QVariant data(int column, int role) const override
    {
        if (role == instrumentRole)
            return QVariant::fromValue<qlonglong>(m_id);
        if (role == Qt::FontRole)
            return boldFont();
        return role == Qt::ToolTipRole ? description() : QTreeWidgetItem::data(column, role);
    }

private:
    [[nodiscard]] static QFont boldFont()
    {
        QFont bold;
        bold.setBold(true);
        return bold;
    }
    [[nodiscard]] QVariant description() const
    {
        const auto found = m_workshop.isOpen() ? m_workshop.book().instrument(m_id) : std::nullopt;
        return found ? QVariant(text(0) + '\n' + describe(*found)) : QVariant(text(0));
    }

    const Workshop &m_workshop;
    instrument::InstrumentId m_id;
};

} // namespace

WorkshopPanel::WorkshopPanel(Workshop &workshop, QWidget *parent)
    : QWidget(parent),
      m_workshop(workshop),
      m_tree(new QTreeWidget),
      m_detail(new QLabel),
      m_set(new QPushButton),
      m_begin(new QPushButton(tr("Begin a pass")))
{
    m_tree->setObjectName("workshopTree");
    m_tree->setAccessibleName(tr("Instruments and their passes"));
    m_tree->setHeaderHidden(true);
    m_tree->setIndentation(3 * wording::gridStep);
    m_tree->setWordWrap(true);
    m_detail->setWordWrap(true);
    m_detail->setTextFormat(Qt::PlainText);
    m_detail->setObjectName("instrumentDetail");
    m_set->setObjectName("toleranceButton");
    m_set->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_begin->setObjectName("panelBeginPass");
    auto *takeIn = new QPushButton(tr("Take in an instrument"));
    takeIn->setObjectName("panelTakeIn");
    connect(takeIn, &QPushButton::clicked, this, &WorkshopPanel::takeInWanted);
    connect(m_begin, &QPushButton::clicked, this, &WorkshopPanel::beginPassWanted);
    connect(m_set, &QPushButton::clicked, this, &WorkshopPanel::toleranceWanted);
    connect(m_tree, &QTreeWidget::currentItemChanged, this, &WorkshopPanel::choose);
    connect(m_tree, &QTreeWidget::itemExpanded, this, &WorkshopPanel::unfold);
    connect(&m_workshop, &Workshop::instrumentsChanged, this, &WorkshopPanel::fill);
    connect(&m_workshop, &Workshop::passChosen, this, &WorkshopPanel::markChosen);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(12, 12, 12, 8);
    column->setSpacing(2 * wording::gridStep);
    column->addWidget(m_tree, 1);
    for (QWidget *part : std::initializer_list<QWidget *>{m_detail, m_set, m_begin, takeIn, new PersonLabel(workshop)})
        column->addWidget(part);
    tellDetail();
}

void WorkshopPanel::fill()
{
    const QScopedValueRollback filling(m_filling, true);
    const bool wasUnfolded = m_delivered != nullptr && m_delivered->isExpanded();
    m_tree->clear();
    m_delivered = nullptr;
    QList<QTreeWidgetItem *> rows;
    int delivered = 0;
    for (const logbook::InstrumentLine &each : m_workshop.instruments())
        if (each.state == instrument::State::Delivered)
            ++delivered;
        else
            rows << new InstrumentRow(m_workshop, each);
    m_tree->addTopLevelItems(rows);
    if (delivered > 0)
        addDelivered(delivered, wasUnfolded);
    markChosen();
}

void WorkshopPanel::addDelivered(int count, bool unfolded)
{
    m_delivered = new QTreeWidgetItem(m_tree, {tr("Delivered (%1)").arg(QLocale().toString(count))});
    m_delivered->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
    m_delivered->setChildIndicatorPolicy(QTreeWidgetItem::ShowIndicator);
    m_delivered->setExpanded(unfolded);
}

void WorkshopPanel::unfold(QTreeWidgetItem *row)
{
    if (row != m_delivered)
        return addPasses(row);
    if (row->childCount() > 0)
        return;
    QList<QTreeWidgetItem *> rows;
    for (const logbook::InstrumentLine &each : m_workshop.instruments())
        if (each.state == instrument::State::Delivered)
            rows << new InstrumentRow(m_workshop, each);
    row->addChildren(rows);
}

QTreeWidgetItem *WorkshopPanel::rowOf(const instrument::Instrument &instrument)
{
    QTreeWidgetItem *above = m_tree->invisibleRootItem();
    if (instrument.state == instrument::State::Delivered && m_delivered != nullptr) {
        above = m_delivered;
        above->setExpanded(true);
    }
    for (int i = 0; i < above->childCount(); ++i)
        if (above->child(i)->data(0, instrumentRole).toLongLong() == instrument.id)
            return above->child(i);
    return nullptr;
}

void WorkshopPanel::addPasses(QTreeWidgetItem *row)
{
    if (row->childCount() > 0 || row->data(0, passRole).isValid())
        return;
    const auto instrument = row->data(0, instrumentRole).toLongLong();
    const auto add = [row](const readings::Pass &pass, const QString &text) {
        auto *child = new QTreeWidgetItem(row, {text});
        child->setData(0, passRole, QVariant::fromValue<qlonglong>(pass.id));
        child->setToolTip(0, pass.person.empty() ? text : text + "\n" + QString::fromStdString(pass.person));
    };
    for (const readings::Pass &pass : m_workshop.passesOf(instrument)) {
        const QString text = tr("%1, %2").arg(wording::nameOf(pass.purpose), dayOf(pass.began));
        add(pass, m_workshop.book().refusal(pass.id) ? tr("%1 ✓ signed").arg(text) : text);
    }
    for (const readings::Pass &check : m_workshop.book().spotChecks(instrument))
        add(check, tr("Spot check, %1").arg(dayOf(check.began)));
    if (row->childCount() == 0)
        row->setChildIndicatorPolicy(QTreeWidgetItem::DontShowIndicator);
}

void WorkshopPanel::markChosen()
{
    const QScopedValueRollback filling(m_filling, true);
    const auto *instrument = m_workshop.instrument();
    const auto *pass = m_workshop.pass();
    if (QTreeWidgetItem *row = instrument ? rowOf(*instrument) : nullptr) {
        addPasses(row);
        row->setExpanded(true);
        if (!pass)
            m_tree->setCurrentItem(row);
        for (int j = 0; j < row->childCount(); ++j)
            if (pass && row->child(j)->data(0, passRole).toLongLong() == pass->pass.id)
                m_tree->setCurrentItem(row->child(j));
    }
    tellDetail();
}

/// The pass that a row would show of the chosen instrument, where it is not the chosen one.
std::optional<readings::PassId> WorkshopPanel::passBehind(const QTreeWidgetItem &item) const
{
    const QTreeWidgetItem &instrument = item.data(0, passRole).isValid() ? *item.parent() : item;
    if (instrument.data(0, instrumentRole).toLongLong() != m_workshop.instrument()->id)
        return std::nullopt;
    const readings::PassId pass = &instrument == &item ? m_workshop.passesOf(m_workshop.instrument()->id).back().id
                                                       : item.data(0, passRole).toLongLong();
    return pass == m_workshop.pass()->pass.id ? std::nullopt : std::optional(pass);
}

/// Later: the tree is still busy with the row that was pressed.
void WorkshopPanel::askToLeave(readings::PassId pass)
{
    QTimer::singleShot(0, this, [this, pass] {
        markChosen();
        emit leaveCheckWanted(pass);
    });
}

void WorkshopPanel::choose(QTreeWidgetItem *item)
{
    if (m_filling || item == nullptr || item == m_delivered)
        return;
    const QVariant pass = item->data(0, passRole);
    if (m_workshop.readsBlind())
        if (const auto earlier = passBehind(*item))
            return askToLeave(*earlier);
    if (pass.isValid())
        m_workshop.choosePass(pass.toLongLong());
    else
        m_workshop.chooseInstrument(item->data(0, instrumentRole).toLongLong());
}

/// "In review"; "Signed off; this pass by Ada, 2026-03-02".
QString WorkshopPanel::standing(const instrument::Instrument &instrument) const
{
    const QString state = wording::nameOf(instrument.state);
    const PassInView *pass = m_workshop.pass();
    if (!pass)
        return state;
    const auto decided = m_workshop.book().decisions(pass->pass.id);
    const auto *signature = decisions::signatureOf(decided.standing);
    const int revision = decisions::revisionOf(decided.standing);
    if (signature)
        return tr("%1; this pass signed by %2, %3")
            .arg(state, QString::fromStdString(signature->person), dayOf(signature->at));
    return revision > 1 ? tr("%1; this pass opened again, revision %2").arg(state).arg(revision) : state;
}

void WorkshopPanel::tellDetail()
{
    const auto *instrument = m_workshop.instrument();
    m_detail->setVisible(instrument != nullptr);
    m_set->setVisible(instrument != nullptr);
    m_begin->setEnabled(instrument != nullptr);
    if (!instrument)
        return;
    m_detail->setText(describe(*instrument) + '\n' + standing(*instrument));
    const auto &set = m_workshop.set();
    m_set->setToolTip(set ? tr("Judged by: %1").arg(QString::fromStdString(set->name)) : tr("Choose a tolerance set"));
    m_set->setAccessibleName(m_set->toolTip());
    elideSet();
}

/// A long name of a set is not to widen the panel.
void WorkshopPanel::elideSet()
{
    const int room = std::max(m_begin->width(), m_begin->sizeHint().width()) - 6 * wording::gridStep;
    m_set->setText(m_set->fontMetrics().elidedText(m_set->toolTip(), Qt::ElideRight, room));
}

void WorkshopPanel::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    elideSet();
}

} // namespace hammerline::main_window
