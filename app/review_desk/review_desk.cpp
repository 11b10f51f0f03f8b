#include "review_desk/review_desk.h"

#include "wording/palette.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QHeaderView>
#include <QLabel>
#include <QTableView>

namespace hammerline::review_desk {

namespace {

QTableView *makeTable(ItemModel *model, Scope scope)
{
    auto *table = new QTableView;
    table->setObjectName(scope == Scope::Workshop ? "reviewTable" : "worstTable");
    table->setAccessibleName(QObject::tr("Notes that want attention, worst first"));
    table->setModel(model);
    table->setShowGrid(false);
    table->setAlternatingRowColors(false);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setTabKeyNavigation(false);
    table->setFrameShape(QFrame::NoFrame);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setStretchLastSection(true);
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->setColumnHidden(ItemModel::Instrument, scope == Scope::OnePass);
    return table;
}

} // namespace

ReviewDesk::ReviewDesk(Scope scope, QWidget *parent)
    : QWidget(parent), m_scope(scope), m_model(new ItemModel(this)), m_table(makeTable(m_model, scope)),
      m_headline(new QLabel), m_empty(new QLabel)
{
    m_headline->setObjectName("reviewHeadline");
    m_headline->setFont(wording::font(wording::TextSize::Title));
    m_empty->setObjectName("reviewEmpty");
    m_empty->setFont(wording::font(wording::TextSize::Heading));
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    addFilter(review::Kind::Out, tr("Out"), "showOut");
    addFilter(review::Kind::Marginal, tr("Close to the limit"), "showMarginal");
    addFilter(review::Kind::Uneven, tr("Uneven"), "showUneven");
    addFilter(review::Kind::Missing, tr("Not read"), "showMissing");
    auto *filters = new QHBoxLayout;
    filters->setSpacing(4 * wording::gridStep);
    for (const auto &[kind, box] : m_filters)
        filters->addWidget(box);
    filters->addStretch(1);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 8);
    column->setSpacing(2 * wording::gridStep);
    column->addWidget(m_headline);
    column->addLayout(filters);
    column->addWidget(m_table, 1);
    column->addWidget(m_empty, 1);
    connect(m_table, &QTableView::activated, this,
            [this](const QModelIndex &index) { emit chosen(m_model->itemAt(index.row())); });
    tellCounts();
}

void ReviewDesk::addFilter(review::Kind kind, const QString &label, const char *name)
{
    auto *box = new QCheckBox(label);
    box->setObjectName(name);
    box->setChecked(m_model->isShown(kind));
    connect(box, &QCheckBox::toggled, this, [this, kind](bool on) {
        m_model->setShown(kind, on);
        tellCounts();
    });
    m_filters[kind] = box;
}

void ReviewDesk::show(std::vector<review::Item> items, InstrumentNames names, const wording::NumberForm &form,
                      bool judged)
{
    m_judged = judged;
    m_model->setItems(std::move(items), std::move(names), form);
    m_table->resizeColumnsToContents();
    tellCounts();
}

void ReviewDesk::tellCounts()
{
    const int out = m_model->countOf(review::Kind::Out);
    const int marginal = m_model->countOf(review::Kind::Marginal);
    const int uneven = m_model->countOf(review::Kind::Uneven);
    const int missing = m_model->countOf(review::Kind::Missing);
    m_headline->setText(tr("%1 out, %2 close to the limit, %3 uneven, %4 not read")
                            .arg(out)
                            .arg(marginal)
                            .arg(uneven)
                            .arg(missing));
    const bool empty = m_model->rowCount() == 0;
    m_headline->setVisible(m_judged);
    m_table->setVisible(!empty);
    m_empty->setVisible(empty);
    if (!m_judged)
        m_empty->setText(m_scope == Scope::OnePass
                             ? tr("Nothing is judged yet. Read some notes, and choose what the instrument is judged by.")
                             : tr("No instrument has both readings and a tolerance set yet."));
    else
        m_empty->setText(tr("Nothing of the kinds shown. Tick another kind above to see more."));
}

} // namespace hammerline::review_desk
