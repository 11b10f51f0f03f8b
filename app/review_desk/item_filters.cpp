#include "review_desk/item_filters.h"

#include "wording/palette.h"
#include "wording/wording.h"
#include "wording/wrap_row.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QComboBox>
#include <QSignalBlocker>

namespace hammerline::review_desk {

namespace {

constexpr int dayHours = 24;

} // namespace

ItemFilters::ItemFilters(bool wide, QWidget *parent) : QWidget(parent)
{
    // Two rows where there are many, each going on in a further line where the screen is not wide enough.
    auto *rows = new QVBoxLayout(this);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(wording::gridStep);
    m_kindRow = new wording::WrapRow(3 * wording::gridStep);
    rows->addLayout(m_kindRow);
    m_choiceRow = wide ? new wording::WrapRow(3 * wording::gridStep) : m_kindRow;
    if (wide)
        rows->addLayout(m_choiceRow);
    addKind(review::Kind::Out, tr("Out"), "showOut");
    addKind(review::Kind::Marginal, tr("Close to the limit"), "showMarginal");
    addKind(review::Kind::Uneven, tr("Uneven"), "showUneven");
    addKind(review::Kind::Missing, tr("Not read"), "showMissing");
    m_instrument = addChoice(tr("Instrument"), "filterInstrument", wide);
    m_quantity = addChoice(tr("Quantity"), "filterQuantity", true);
    m_person = addChoice(tr("Person"), "filterPerson", wide);
    m_age = addChoice(tr("Age"), "filterAge", wide);
    m_age->addItem(tr("Of any age"), 0);
    m_age->addItem(tr("Over a day"), dayHours);
    m_age->addItem(tr("Over a week"), 7 * dayHours);
    m_age->addItem(tr("Over a month"), 30 * dayHours);
    offer({});
}

void ItemFilters::addKind(review::Kind kind, const QString &label, const char *name)
{
    auto *box = new QCheckBox(label);
    box->setObjectName(name);
    box->setChecked(Filters{}.kinds.contains(kind));
    connect(box, &QCheckBox::toggled, this, &ItemFilters::changed);
    m_kindRow->addWidget(box);
    m_kinds[kind] = box;
}

QComboBox *ItemFilters::addChoice(const QString &label, const char *name, bool shown)
{
    auto *box = new QComboBox;
    box->setObjectName(name);
    box->setAccessibleName(label);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(12);
    box->setVisible(shown);
    connect(box, &QComboBox::currentIndexChanged, this, &ItemFilters::changed);
    m_choiceRow->addWidget(box);
    return box;
}

void ItemFilters::offerIn(QComboBox *box, const QString &all, const std::map<QString, QVariant> &choices)
{
    const QSignalBlocker quiet(box);
    const QVariant chosen = box->currentData();
    box->clear();
    box->addItem(all);
    for (const auto &[text, value] : choices)
        box->addItem(text, value);
    box->setCurrentIndex(std::max(0, chosen.isValid() ? box->findData(chosen) : 0));
}

void ItemFilters::offer(const Desk &desk)
{
    std::map<QString, QVariant> instruments;
    std::map<QString, QVariant> persons;
    std::map<QString, QVariant> quantities;
    const auto take = [&](const review::Item &item) {
        if (const auto name = desk.names.find(item.instrument); name != desk.names.end())
            instruments.emplace(name->second, QVariant::fromValue<qlonglong>(item.instrument));
        if (!item.person.empty())
            persons.emplace(QString::fromStdString(item.person), QString::fromStdString(item.person));
        quantities.emplace(wording::nameOf(item.verdict.quantity), static_cast<int>(item.verdict.quantity));
    };
    for (const auto *items : {&desk.items, &desk.inDoubt})
        for (const review::Item &item : *items)
            take(item);
    for (const auto *settled : {&desk.conceded, &desk.mended})
        for (const review::Settled &each : *settled)
            take(each.item);
    offerIn(m_instrument, tr("Every instrument"), instruments);
    offerIn(m_person, tr("Everybody"), persons);
    offerIn(m_quantity, tr("Every quantity"), quantities);
}

Filters ItemFilters::filters() const
{
    Filters filters;
    filters.kinds.clear();
    for (const auto &[kind, box] : m_kinds)
        if (box->isChecked())
            filters.kinds.insert(kind);
    if (const QVariant chosen = m_instrument->currentData(); chosen.isValid())
        filters.instrument = chosen.toLongLong();
    if (const QVariant chosen = m_person->currentData(); chosen.isValid())
        filters.person = chosen.toString().toStdString();
    if (const QVariant chosen = m_quantity->currentData(); chosen.isValid())
        filters.quantity = static_cast<catalogue::Quantity>(chosen.toInt());
    filters.olderThan = std::chrono::hours(m_age->currentData().toInt());
    return filters;
}

} // namespace hammerline::review_desk
