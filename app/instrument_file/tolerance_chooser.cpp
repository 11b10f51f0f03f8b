#include "instrument_file/tolerance_chooser.h"

#include "exchange/tolerance_json.h"
#include "instrument_file/inside/form_parts.h"
#include "instrument_file/tolerance_rows.h"
#include "wording/palette.h"
#include "wording/wording.h"

#include <QBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QStyle>
#include <QTableWidget>

#include <algorithm>

namespace hammerline::instrument_file {

namespace {

constexpr QSize usualSize{1080, 700};
constexpr int sourceLetters = 36;
constexpr int headLines = 12; ///< of the list of sets; a third of a small screen, so that the foot stays on it

QString aboutText(const tolerance::ToleranceSet &set)
{
    QStringList lines;
    for (const std::string *text : {&set.source, &set.remark})
        if (!text->empty())
            lines << QString::fromStdString(*text);
    return lines.join('\n');
}

void setCell(QTableWidget *table, int row, int column, const QString &text)
{
    auto *cell = new QTableWidgetItem(text);
    cell->setToolTip(text);
    // At the top: beside many lines of a source they would stand outside a small screen.
    cell->setTextAlignment((column >= 2 && column <= 5 ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignTop);
    table->setItem(row, column, cell);
}

QTableWidget *makeTable()
{
    auto *table = new QTableWidget(0, 7);
    table->setObjectName("toleranceNumbers");
    table->setAccessibleName(QObject::tr("Numbers of the set with their sources"));
    table->setHorizontalHeaderLabels({QObject::tr("Quantity"), QObject::tr("At note"), QObject::tr("Least"),
                                      QObject::tr("Target"), QObject::tr("Most"), QObject::tr("Counted doubt"),
                                      QObject::tr("Source")});
    table->verticalHeader()->hide();
    table->setShowGrid(false);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setTabKeyNavigation(false);
    table->setWordWrap(true);
    table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    return table;
}

} // namespace

ToleranceChooser::ToleranceChooser(catalogue::ActionKind action, const std::string &current,
                                   const wording::NumberForm &form, prompts::Prompts &prompts, QWidget *parent)
    : QDialog(parent),
      m_action(action),
      m_form(form),
      m_prompts(prompts),
      m_list(new QListWidget),
      m_table(makeTable()),
      m_studied(new StudiedRow),
      m_about(new QLabel)
{
    setObjectName("toleranceChooser");
    setWindowTitle(tr("What the instrument is judged by"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto *column = new QVBoxLayout(this);
    column->addWidget(makeHead());
    column->addWidget(m_table, 1);
    column->addWidget(m_studied);
    m_faults = addFoot(this, column, tr("Judge by this set"));
    connect(m_list, &QListWidget::currentRowChanged, this, &ToleranceChooser::showSet);
    connect(m_studied, &StudiedRow::wanted, this, &ToleranceChooser::countWith);
    for (const exchange::BuiltIn &builtIn : exchange::builtInToleranceSets())
        if (auto set = exchange::findToleranceSet(builtIn.id); set && set.value().set.action == action)
            add(std::move(set).value());
    for (int i = 0; i < m_list->count(); ++i)
        if (m_sets[static_cast<std::size_t>(i)].id == current)
            m_list->setCurrentRow(i);
    if (m_list->currentRow() < 0)
        m_list->setCurrentRow(0);
    const QSize title{0, style()->pixelMetric(QStyle::PM_TitleBarHeight)};
    resize((usualSize * wording::textScale()).boundedTo(screen()->availableSize() - title));
}

QWidget *ToleranceChooser::makeHead()
{
    m_list->setObjectName("toleranceList");
    m_list->setAccessibleName(tr("Tolerance sets"));
    m_list->setWordWrap(true);
    m_list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_about->setWordWrap(true);
    m_about->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_about->setTextFormat(Qt::PlainText);
    m_about->setObjectName("toleranceAbout");
    auto *manual = new QLabel(tr("The maker's manual for this instrument outranks every set here. Where you have it, "
                                 "enter its figures as a file of your own."));
    manual->setWordWrap(true);
    manual->setObjectName("manualOutranks");
    auto *file = new QPushButton(tr("Set from a file…"));
    file->setObjectName("toleranceFile");
    connect(file, &QPushButton::clicked, this, &ToleranceChooser::openFile);
    auto *words = new QVBoxLayout;
    auto *about = new QScrollArea;
    about->setAccessibleName(tr("About the set"));
    about->setFrameShape(QFrame::NoFrame);
    about->setWidgetResizable(true);
    about->setWidget(m_about);
    words->addWidget(manual);
    words->addWidget(about, 1);
    words->addWidget(file, 0, Qt::AlignLeft);
    auto *head = new QWidget;
    auto *row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    head->setFixedHeight(std::min(headLines * fontMetrics().lineSpacing(), screen()->availableSize().height() / 3));
    row->addWidget(m_list, 1);
    row->addLayout(words, 2);
    return head;
}

void ToleranceChooser::add(exchange::NamedSet set)
{
    m_sets.push_back(std::move(set));
    m_list->addItem(QString::fromStdString(m_sets.back().set.name));
}

void ToleranceChooser::offer(exchange::NamedSet set)
{
    const auto known = std::ranges::find(m_sets, set.id, &exchange::NamedSet::id);
    const auto at = static_cast<int>(known - m_sets.begin());
    if (known == m_sets.end())
        add(std::move(set));
    else
        *known = std::move(set);
    m_list->setCurrentRow(at);
    showSet(at); // it may have been the chosen one already
}

void ToleranceChooser::offerStudies(std::vector<tolerance::FoundUncertainty> found)
{
    m_studied->offer(std::move(found), m_form);
    if (m_list->currentRow() >= 0)
        m_studied->follow(m_sets[static_cast<std::size_t>(m_list->currentRow())].set);
}

void ToleranceChooser::countWith(const tolerance::FoundUncertainty &found, tolerance::Rule rule)
{
    auto made = tolerance::countingWith(m_sets[static_cast<std::size_t>(m_list->currentRow())].set, found, rule);
    if (!made) {
        m_faults->setText(wording::faultsText(made.faults()));
        return;
    }
    const tolerance::ToleranceSet &set = made.value();
    offer({set.name, exchange::writeToleranceSet(set), set});
    m_faults->setText(tolerance::leavesNothingIn(set.entries.at(found.quantity))
                          ? tr("At some notes the limits lie closer together than twice this doubt: no reading can be "
                               "in there, only close to the limit. A finer gauge would help, or limits as they stand.")
                          : QString());
}

void ToleranceChooser::openFile()
{
    const auto path = m_prompts.chooseFile(
        this, {prompts::FileWish::Use::Open, tr("Tolerance set"), tr("Tolerance sets (*.json)"), {}, "json"});
    if (!path)
        return;
    auto set = exchange::findToleranceSet(path->toStdString());
    if (!set) {
        m_faults->setText(wording::faultsText(set.faults()));
        return;
    }
    if (set.value().set.action != m_action) {
        m_faults->setText(
            tr("this set is for the other kind of action: %1").arg(wording::nameOf(set.value().set.action)));
        return;
    }
    m_faults->clear();
    offer(std::move(set).value());
}

void ToleranceChooser::showSet(int index)
{
    if (index < 0)
        return;
    const tolerance::ToleranceSet &set = m_sets[static_cast<std::size_t>(index)].set;
    m_about->setText(aboutText(set));
    m_studied->follow(set);
    const auto rows = rowsOf(set, m_form);
    m_table->setRowCount(static_cast<int>(rows.size()));
    for (int i = 0; i < m_table->rowCount(); ++i) {
        const ToleranceRow &row = rows[static_cast<std::size_t>(i)];
        int column = 0;
        const QString source = row.remark.isEmpty() ? row.source : row.source + '\n' + row.remark;
        for (const QString *text : {&row.quantity, &row.note, &row.low, &row.target, &row.high, &row.doubt, &source})
            setCell(m_table, i, column++, *text);
    }
    giveSourcesRoom();
}

void ToleranceChooser::resizeEvent(QResizeEvent *event)
{
    QDialog::resizeEvent(event);
    giveSourcesRoom();
}

/// The last column takes what is left, but never less than a source can be read in.
void ToleranceChooser::giveSourcesRoom()
{
    QHeaderView *head = m_table->horizontalHeader();
    head->setStretchLastSection(false);
    m_table->resizeColumnsToContents();
    const int source = m_table->columnCount() - 1;
    const int least = sourceLetters * m_table->fontMetrics().averageCharWidth();
    const int left = m_table->viewport()->width() - head->sectionPosition(source);
    m_table->setColumnWidth(source, std::max(left, least));
}

void ToleranceChooser::accept()
{
    const int index = m_list->currentRow();
    if (index < 0) {
        m_faults->setText(tr("choose a set first"));
        return;
    }
    emit chosen(m_sets[static_cast<std::size_t>(index)]);
    QDialog::accept();
}

} // namespace hammerline::instrument_file
