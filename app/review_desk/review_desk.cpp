#include "review_desk/review_desk.h"

#include "review_desk/not_read_button.h"
#include "wording/palette.h"
#include "wording/wrap_row.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QComboBox>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>
#include <QTableView>

#include <algorithm>
#include <map>
#include <numeric>

namespace hammerline::review_desk {

namespace {

// Longer words are shown whole below the table, by their tooltip and in the record.
constexpr int lettersDecided = 32;
constexpr int lettersOfWords = 24;
constexpr int lettersOfName = 16;
constexpr int leastRows = 3;       // that are seen below the heads
constexpr int lettersOfTitle = 80; // of body text in the width, from which on the headline has the size of a title

QTableView *makeTable(ItemModel *model, Scope scope)
{
    auto *table = new QTableView;
    table->setObjectName(scope == Scope::Workshop ? "reviewTable" : "worstTable");
    table->setAccessibleName(QObject::tr("Notes that want attention, worst first"));
    table->setModel(model);
    table->setShowGrid(false);
    table->setAlternatingRowColors(false);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setSelectionMode(QAbstractItemView::ExtendedSelection);
    table->setTabKeyNavigation(false);
    table->setFrameShape(QFrame::NoFrame);
    table->verticalHeader()->hide();
    table->horizontalHeader()->setStretchLastSection(true);
    table->horizontalHeader()->setHighlightSections(false);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    table->setColumnHidden(ItemModel::Instrument, scope == Scope::OnePass);
    return table;
}

bool anyDecided(const Desk &desk)
{
    return std::ranges::any_of(desk.items, [](const review::Item &item) { return item.sentBack != nullptr; });
}

} // namespace

ReviewDesk::ReviewDesk(Scope scope, QWidget *parent)
    : QWidget(parent),
      m_scope(scope),
      m_model(new ItemModel(this)),
      m_filters(new ItemFilters(scope == Scope::Workshop)),
      m_table(makeTable(m_model, scope)),
      m_headline(new QLabel),
      m_withheld(new QLabel),
      m_empty(new QLabel),
      m_current(new QLabel),
      m_list(new QComboBox),
      m_accept(addButton(tr("Accept as it is…"), "acceptChosen")),
      m_sendBack(addButton(tr("Send back…"), "sendBackChosen"))
{
    m_accept->setToolTip(tr("Alt+A"));
    m_sendBack->setToolTip(tr("Alt+K"));
    m_headline->setObjectName("reviewHeadline");
    m_headline->setFont(wording::font(wording::TextSize::Title));
    m_headline->setWordWrap(true);
    m_withheld->setObjectName("reviewWithheld");
    m_withheld->setWordWrap(true);
    m_withheld->setTextFormat(Qt::PlainText);
    m_empty->setObjectName("reviewEmpty");
    m_empty->setFont(wording::font(wording::TextSize::Heading));
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_current->setObjectName("reviewCurrent");
    m_current->setWordWrap(true);
    m_current->setTextFormat(Qt::PlainText);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 8);
    column->setSpacing(2 * wording::gridStep);
    column->addWidget(m_headline);
    column->addWidget(m_withheld);
    column->addWidget(m_filters);
    column->addWidget(m_table, 1);
    column->addWidget(m_empty, 1);
    column->addWidget(m_current);
    column->addWidget(makeFoot());
    connect(m_table, &QTableView::activated, this,
            [this](const QModelIndex &index) { emit chosen(m_model->itemAt(index.row())); });
    connect(m_filters, &ItemFilters::changed, this, &ReviewDesk::followFilters);
    connect(m_table->selectionModel(), &QItemSelectionModel::selectionChanged, this, &ReviewDesk::tellCounts);
    connect(m_table->selectionModel(), &QItemSelectionModel::currentChanged, this, &ReviewDesk::tellCurrent);
    connect(m_accept, &QPushButton::clicked, this, [this] { emit acceptWanted(chosenItems()); });
    connect(m_sendBack, &QPushButton::clicked, this, [this] { emit sendBackWanted(chosenItems()); });
    tellCounts();
}

QPushButton *ReviewDesk::addButton(const QString &text, const char *name)
{
    auto *button = new QPushButton(text);
    button->setObjectName(name);
    return button;
}

QWidget *ReviewDesk::makeFoot()
{
    m_list->setObjectName("deskList");
    m_list->setAccessibleName(tr("Which notes are listed"));
    m_list->setSizeAdjustPolicy(QComboBox::AdjustToContents); // its counts grow
    for (int index = 0; index < 4; ++index)
        m_list->addItem({});
    connect(m_list, &QComboBox::currentIndexChanged, this, [this](int index) {
        m_model->setList(static_cast<List>(index));
        fitColumns();
        tellCounts();
    });
    auto *foot = new QWidget;
    auto *row = new wording::WrapRow(2 * wording::gridStep);
    row->addWidget(m_sendBack);
    row->addWidget(m_accept);
    row->addWidget(m_list);
    row->addWidget(new NotReadButton(*m_model, m_filters->findChild<QCheckBox *>("showMissing")));
    foot->setLayout(row);
    return foot;
}

void ReviewDesk::show(Desk desk, const wording::NumberForm &form, bool judged)
{
    m_judged = judged;
    const Place place = placeNow();
    m_filters->offer(desk);
    m_model->setDesk(std::move(desk), form);
    followFilters();
    fitColumns();
    goBackTo(place);
}

ReviewDesk::Place ReviewDesk::placeNow() const
{
    const int row = m_table->currentIndex().row();
    return {row, row < 0 ? std::nullopt : std::optional(m_model->itemAt(row)), chosenItems()};
}

/// To the same item where it still waits, else to the one that took its row; what was chosen stays chosen.
void ReviewDesk::goBackTo(const Place &place)
{
    if (m_model->rowCount() == 0)
        return;
    const auto isSame = [](const review::Item &a, const review::Item &b) {
        return a.pass == b.pass && a.verdict.quantity == b.verdict.quantity && a.verdict.note == b.verdict.note;
    };
    QItemSelectionModel &rows = *m_table->selectionModel();
    int current = std::clamp(place.row, 0, m_model->rowCount() - 1);
    for (int row = 0; row < m_model->rowCount(); ++row) {
        const review::Item &item = m_model->itemAt(row);
        if (place.item && isSame(*place.item, item))
            current = row;
        if (std::ranges::any_of(place.chosen, [&](const review::Item &each) { return isSame(each, item); }))
            rows.select(m_model->index(row, 0), QItemSelectionModel::Select | QItemSelectionModel::Rows);
    }
    rows.setCurrentIndex(m_model->index(current, ItemModel::NoteColumn), QItemSelectionModel::NoUpdate);
}

void ReviewDesk::focusFirst()
{
    if (m_table->isVisibleTo(this))
        m_table->setFocus();
    else
        m_list->setFocus();
}

/// What was decided and why is what the lists of the two decisions are read for: there it has the room of the finding.
void ReviewDesk::fitColumns()
{
    const bool waiting = isListed(List::Waiting), finding = waiting || isListed(List::InDoubt);
    m_table->setColumnHidden(ItemModel::Finding, !finding);
    m_table->setColumnHidden(ItemModel::Decided, finding && !(waiting && anyDecided(m_model->desk())));
    m_table->setColumnHidden(ItemModel::Sure, !m_model->anySure());
    m_table->horizontalHeader()->setStretchLastSection(false); // else its width is not that of its contents
    m_table->resizeColumnsToContents();
    if (waiting) {
        const int widest = lettersDecided * m_table->fontMetrics().averageCharWidth();
        m_table->setColumnWidth(ItemModel::Decided, std::min(m_table->columnWidth(ItemModel::Decided), widest));
    }
    m_widths.clear();
    for (int column = 0; column < ItemModel::columnTotal; ++column)
        m_widths.push_back(m_table->columnWidth(column)); // 0 where it is hidden
    m_table->horizontalHeader()->setStretchLastSection(true);
    giveRoom();
}

/// Where the window is too narrow, names and words go on in a second line; the words take what the others leave.
void ReviewDesk::giveRoom()
{
    if (m_widths.empty())
        return;
    const bool finding = isListed(List::Waiting) || isListed(List::InDoubt);
    const int words = finding ? ItemModel::Finding : ItemModel::Decided;
    const int room = m_table->viewport()->width(), letter = m_table->fontMetrics().averageCharWidth();
    const bool narrow = std::accumulate(m_widths.begin(), m_widths.end(), 0) > room;
    const std::map<int, int> most{{ItemModel::Instrument, lettersOfName},
                                  {ItemModel::Decided, lettersOfWords},
                                  {ItemModel::ReadBy, lettersOfName}};
    int others = 0;
    for (int column = 0; column < ItemModel::columnTotal; ++column) {
        const auto limit = most.find(column);
        const int natural = m_widths[static_cast<std::size_t>(column)];
        const int width = narrow && limit != most.end() ? std::min(natural, limit->second * letter) : natural;
        others += column == words ? 0 : width;
        if (!m_table->isColumnHidden(column))
            m_table->setColumnWidth(column, width);
    }
    const int natural = m_widths[static_cast<std::size_t>(words)];
    m_table->setColumnWidth(words, std::min(natural, std::max(lettersOfWords * letter, room - others)));
    const int lines = narrow ? 2 : 1;
    const int height = lines * m_table->fontMetrics().lineSpacing() + 2 * wording::gridStep;
    m_table->verticalHeader()->setDefaultSectionSize(height);
    m_table->setMinimumHeight(m_table->horizontalHeader()->sizeHint().height() + leastRows * height);
}

void ReviewDesk::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    const bool titled = width() >= lettersOfTitle * fontMetrics().averageCharWidth();
    m_headline->setFont(wording::font(titled ? wording::TextSize::Title : wording::TextSize::Heading));
    giveRoom();
}

bool ReviewDesk::isListed(List list) const
{
    return m_list->currentIndex() == static_cast<int>(list);
}

void ReviewDesk::followFilters()
{
    m_model->setFilters(m_filters->filters());
    tellCounts();
}

std::vector<review::Item> ReviewDesk::chosenItems() const
{
    std::vector<review::Item> items;
    if (!isListed(List::Waiting))
        return items;
    for (int row = 0; row < m_model->rowCount(); ++row)
        if (m_table->selectionModel()->isRowSelected(row))
            items.push_back(m_model->itemAt(row));
    return items;
}

void ReviewDesk::tellCounts()
{
    m_headline->setText(headlineText());
    m_list->setItemText(0, tr("Waiting (%1)").arg(m_model->countOf(List::Waiting)));
    m_list->setItemText(1, tr("Accepted as it is (%1)").arg(m_model->countOf(List::Conceded)));
    m_list->setItemText(2, tr("Sent back and mended (%1)").arg(m_model->countOf(List::Mended)));
    m_list->setItemText(3, tr("In, but within the gauge's doubt (%1)").arg(m_model->countOf(List::InDoubt)));
    constexpr int besideText = 44; // frame, padding and arrow of the stylesheet, of which Qt's own hint lacks a part
    int widest = 0;
    for (int index = 0; index < m_list->count(); ++index)
        widest = std::max(widest, m_list->fontMetrics().horizontalAdvance(m_list->itemText(index)));
    m_list->setMinimumWidth(widest + besideText);
    const bool any = !chosenItems().empty();
    m_accept->setEnabled(any);
    m_sendBack->setEnabled(any);
    tellEmpty();
}

/// "2 out, 0 close to the limit, 1 uneven, 0 not read \u00b7 3 accepted"; "Nothing waits \u00b7 3 accepted".
QString ReviewDesk::headlineText() const
{
    QStringList parts;
    if (m_model->countOf(List::Waiting) == 0 && m_model->countOf(List::Conceded) > 0)
        parts << tr("Nothing waits");
    else
        parts << tr("%1 out, %2 close to the limit, %3 uneven, %4 not read")
                     .arg(m_model->countOf(review::Kind::Out))
                     .arg(m_model->countOf(review::Kind::Marginal))
                     .arg(m_model->countOf(review::Kind::Uneven))
                     .arg(m_model->countOf(review::Kind::Missing));
    if (const int accepted = m_model->countOf(List::Conceded); accepted > 0)
        parts << tr("%1 accepted").arg(accepted);
    return parts.join(QStringLiteral(" \u00b7 "));
}

/// "16 out, 2 not read"; empty: nothing was accepted.
QString ReviewDesk::acceptedText() const
{
    std::map<review::Kind, int> counts;
    for (const review::Settled &settled : m_model->desk().conceded)
        ++counts[settled.item.kind];
    QStringList parts;
    for (const auto &[kind, words] : {std::pair(review::Kind::Out, tr("%1 out")),
                                      {review::Kind::Marginal, tr("%1 close to the limit")},
                                      {review::Kind::Uneven, tr("%1 uneven")},
                                      {review::Kind::Missing, tr("%1 not read")}})
        if (counts[kind] > 0)
            parts << words.arg(counts[kind]);
    return parts.join(QStringLiteral(", "));
}

void ReviewDesk::tellCurrent()
{
    constexpr qsizetype mostLetters = 400; // of one cell: the buttons below are to stay in sight
    const int row = m_table->currentIndex().row();
    QStringList parts;
    for (int column = 0; row >= 0 && row < m_model->rowCount() && column < ItemModel::columnTotal; ++column)
        if (const QString text = m_model->index(row, column).data().toString();
            !text.isEmpty() && !m_table->isColumnHidden(column))
            parts << (text.size() <= mostLetters ? text : text.left(mostLetters) + QChar(0x2026));
    m_current->setText(parts.join(QStringLiteral(" \u00b7 ")));
    m_current->setVisible(!parts.isEmpty());
}

void ReviewDesk::tellEmpty()
{
    const bool empty = m_model->rowCount() == 0;
    const QString &withheld = m_model->desk().withheld;
    m_withheld->setText(withheld);
    m_withheld->setVisible(!withheld.isEmpty());
    m_headline->setVisible(m_judged);
    m_filters->setVisible(m_judged);
    m_table->setVisible(!empty);
    m_empty->setVisible(empty);
    tellCurrent();
    if (!m_judged && !withheld.isEmpty())
        m_empty->setText(tr("Nothing of another instrument waits."));
    else if (!m_judged)
        m_empty->setText(
            m_scope == Scope::OnePass
                ? tr("Nothing is judged yet. Read some notes, and choose what the instrument is judged by.")
                : tr("No instrument has both readings and a tolerance set yet."));
    else if (isListed(List::Conceded))
        m_empty->setText(tr("Nothing shown was accepted as it is."));
    else if (isListed(List::Mended))
        m_empty->setText(tr("Nothing shown was sent back and mended since."));
    else if (isListed(List::InDoubt))
        m_empty->setText(
            tr("Nothing shown is in its limits and yet within the gauge's doubt. Where neither the set nor "
               "the gauge of a pass gives an uncertainty, how finely was read off is all that counts."));
    else if (m_model->countOf(List::Waiting) == 0 && !acceptedText().isEmpty())
        m_empty->setText(tr("Nothing waits: accepted as they are: %1. The list below has them.").arg(acceptedText()));
    else
        m_empty->setText(tr("Nothing of the kinds shown. Tick another kind above to see more."));
}

} // namespace hammerline::review_desk
