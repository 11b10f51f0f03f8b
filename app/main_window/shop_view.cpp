#include "main_window/shop_view.h"

#include "exchange/exchange.h"
#include "main_window/rejudge_page.h"
#include "main_window/shop_parts.h"
#include "wording/wording.h"
#include "wording/wrap_row.h"

#include <QBoxLayout>
#include <QButtonGroup>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QTableWidget>

#include <algorithm>

namespace hammerline::main_window {

namespace {

constexpr qint64 refillMilliseconds = 400; ///< while the shop is being read

/// Sorted by its figure, not by the text of it.
class FigureItem : public QTableWidgetItem {
public:
    FigureItem(const QString &text, double figure) : QTableWidgetItem(text), m_figure(figure) {}
    bool operator<(const QTableWidgetItem &other) const override
    {
        const auto *figure = dynamic_cast<const FigureItem *>(&other);
        return figure && figure->m_figure != m_figure ? m_figure < figure->m_figure : text() < other.text();
    }

private:
    double m_figure;
};

QTableWidget *makeTable()
{
    auto *table = new QTableWidget;
    table->setObjectName("shopTable");
    table->setAccessibleName(ShopView::tr("The shop in figures"));
    dressFigures(table);
    return table;
}

QPushButton *makeButton(QLayout *row, const QString &text, const char *name)
{
    auto *button = new QPushButton(text);
    button->setObjectName(name);
    button->setAutoDefault(false);
    row->addWidget(button);
    return button;
}

} // namespace

ShopView::ShopView(Workshop &workshop, QWidget *parent)
    : QWidget(parent),
      m_workshop(workshop),
      m_progress(new QLabel),
      m_total(new QLabel),
      m_table(makeTable()),
      m_question(new QButtonGroup(this)),
      m_bars(new charts::BarsPane),
      m_pages(new QStackedWidget),
      m_rejudge(new RejudgePage(workshop))
{
    m_progress->setObjectName("shopProgress");
    m_total->setObjectName("shopTotal");
    m_total->setWordWrap(true);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 8);
    column->setSpacing(2 * wording::gridStep);
    column->addLayout(makeQuestions()); // first, as with the charts: nothing that is longer pushes them away
    column->addLayout(makeFilters());
    m_pages->addWidget(makeFigures());
    m_pages->addWidget(m_rejudge);
    column->addWidget(m_pages, 1);
    m_timer.setSingleShot(true);
    m_timer.setInterval(0);
    connect(&m_timer, &QTimer::timeout, this, &ShopView::readSlice);
    connect(&m_workshop, &Workshop::instrumentsChanged, this, &ShopView::beginIfSeen);
    connect(&m_workshop, &Workshop::readingsChanged, this, &ShopView::beginIfSeen);
}

QWidget *ShopView::makeFigures()
{
    auto *page = new QWidget;
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * wording::gridStep);
    auto *row = new QHBoxLayout;
    row->setSpacing(2 * wording::gridStep);
    auto *by = new wording::WrapRow(2 * wording::gridStep);
    m_by = addBox(by, tr("By"), "shopBy");
    row->addLayout(by);
    m_by->addItems({tr("person"), tr("quantity"), tr("month")});
    row->addWidget(m_total, 1);
    column->addLayout(row);
    column->addWidget(m_table, 1);
    column->addWidget(m_bars, 2);
    column->addStretch();
    connect(m_by, &QComboBox::currentIndexChanged, this, &ShopView::fill);
    return page;
}

QLayout *ShopView::makeFilters()
{
    auto *row = new wording::WrapRow(2 * wording::gridStep);
    m_from = addBox(row, tr("From"), "shopFrom");
    m_to = addBox(row, tr("To"), "shopTo");
    for (QComboBox *box : {m_from, m_to})
        box->addItem(tr("any month"));
    m_state = addBox(row, tr("Instruments"), "shopState");
    m_state->addItem(tr("all"), -1);
    for (const auto state : {instrument::State::TakenIn, instrument::State::InWork, instrument::State::InReview,
                             instrument::State::SignedOff, instrument::State::Delivered})
        m_state->addItem(wording::nameOf(state), static_cast<int>(state));
    for (QComboBox *box : {m_from, m_to, m_state}) {
        connect(box, &QComboBox::currentIndexChanged, this, &ShopView::fill);
        connect(box, &QComboBox::currentIndexChanged, m_rejudge, [this] { m_rejudge->ask(filter()); });
    }
    row->addWidget(m_progress);
    return row;
}

QLayout *ShopView::makeQuestions()
{
    auto *row = new wording::WrapRow(2 * wording::gridStep);
    const auto add = [&](const QString &text, const char *name, ShopQuestion question) {
        auto *button = new QRadioButton(text);
        button->setObjectName(name);
        button->setChecked(question == ShopQuestion::HowMuchIsOut);
        m_question->addButton(button, static_cast<int>(question));
        row->addWidget(button);
    };
    add(tr("Notes out"), "shopOut", ShopQuestion::HowMuchIsOut);
    add(tr("Hours"), "shopHours", ShopQuestion::DoTheHoursHold);
    add(tr("By another set"), "shopRejudge", ShopQuestion::WhatIfByAnotherSet);
    connect(m_question, &QButtonGroup::idClicked, this, [this] {
        m_pages->setCurrentIndex(asksAboutSets() ? 1 : 0);
        fill();
    });
    m_export = makeButton(row, tr("Export the table…"), "shopExport");
    m_save = makeButton(row, tr("Save the chart…"), "shopSaveChart");
    connect(m_export, &QPushButton::clicked, this, &ShopView::exportTable);
    connect(m_save, &QPushButton::clicked, this, &ShopView::saveChart);
    connect(m_rejudge, &RejudgePage::filled, this, &ShopView::followRows);
    return row;
}

void ShopView::setPrompts(prompts::Prompts *prompts)
{
    m_prompts = prompts;
    m_rejudge->setPrompts(prompts);
}

void ShopView::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    beginIfSeen();
}

void ShopView::hideEvent(QHideEvent *event)
{
    m_timer.stop(); // and goes on where it was when it is seen again
    QWidget::hideEvent(event);
}

void ShopView::beginIfSeen()
{
    if (!isVisible())
        return;
    const std::string path = m_workshop.isOpen() ? m_workshop.book().path() : std::string();
    if (path != m_path)
        m_reader.forget();
    m_path = path;
    if (!m_workshop.isOpen())
        return fill();
    m_reader.begin(m_workshop.book());
    m_sinceFilled.invalidate();
    m_timer.start();
}

void ShopView::readSlice()
{
    if (!m_workshop.isOpen() || m_workshop.book().path() != m_path)
        return;
    QElapsedTimer slice;
    slice.start();
    bool more = true;
    while (more && slice.elapsed() < sliceMilliseconds)
        more = m_reader.readNext(m_workshop.book());
    if (!more || !m_sinceFilled.isValid() || m_sinceFilled.elapsed() > refillMilliseconds) {
        fillMonths();
        fill();
        m_sinceFilled.start();
    }
    tellProgress();
    if (more)
        m_timer.start();
}

void ShopView::tellProgress()
{
    const auto all = m_reader.stepsToDo();
    m_progress->setText(m_reader.stepsDone() < all
                            ? tr("reading: %1 %").arg(100 * m_reader.stepsDone() / std::max<std::size_t>(all, 1))
                            : QString());
}

void ShopView::fillMonths()
{
    const auto months = shop::monthsOf(m_reader.tallies());
    if (static_cast<std::size_t>(m_from->count()) == months.size() + 1)
        return;
    for (QComboBox *box : {m_from, m_to}) {
        const QSignalBlocker quiet(box);
        const QString chosen = box->currentIndex() > 0 ? box->currentText() : QString();
        box->clear();
        box->addItem(tr("any month"));
        for (const shop::YearMonth month : months)
            box->addItem(QString::fromStdString(shop::textOf(month)),
                         static_cast<int>(month.year()) * 100 + static_cast<int>(unsigned(month.month())));
        box->setCurrentIndex(std::max(0, box->findText(chosen)));
    }
}

shop::By ShopView::by() const
{
    return static_cast<shop::By>(m_by->currentIndex());
}

ShopQuestion ShopView::question() const
{
    return static_cast<ShopQuestion>(m_question->checkedId());
}

bool ShopView::asksAboutSets() const
{
    return question() == ShopQuestion::WhatIfByAnotherSet;
}

shop::Filter ShopView::filter() const
{
    const auto month = [](const QComboBox *box) -> std::optional<shop::YearMonth> {
        const int number = box->currentData().toInt();
        if (number == 0)
            return std::nullopt;
        return std::chrono::year(number / 100) / std::chrono::month(static_cast<unsigned>(number % 100));
    };
    shop::Filter made{month(m_from), month(m_to), {}};
    if (const int state = m_state->currentData().toInt(); state >= 0)
        made.states.insert(static_cast<instrument::State>(state));
    return made;
}

void ShopView::fill()
{
    if (asksAboutSets())
        return followRows(); // its page fills itself
    const shop::Filter asked = filter();
    m_rows = shop::rowsOf(m_reader.tallies(), by(), asked);
    const shop::Figures total = shop::totalOf(m_reader.tallies(), asked);
    m_total->setText(m_rows.empty() ? tr("Nothing was read or done that fits.") : shopTotalText(total, locale()));
    fillTable();
    m_bars->setData(shopBars(question(), by(), m_rows, total, locale()));
    followRows();
}

/// Nothing is drawn, and nothing can be saved, where there is nothing to show.
void ShopView::followRows()
{
    m_table->setHidden(m_rows.empty());
    m_bars->setHidden(m_rows.empty());
    for (QPushButton *button : {m_export, m_save})
        button->setDisabled(asksAboutSets() ? m_rejudge->judged().empty() : m_rows.empty());
}

void ShopView::fillTable()
{
    m_table->setSortingEnabled(false);
    const QStringList heads = shopHeads(by());
    m_table->setColumnCount(static_cast<int>(heads.size()));
    m_table->setHorizontalHeaderLabels(heads);
    m_table->setRowCount(static_cast<int>(m_rows.size()));
    for (std::size_t row = 0; row < m_rows.size(); ++row) {
        const QStringList texts = shopRowTexts(by(), m_rows[row], locale());
        for (int column = 0; column < texts.size(); ++column) {
            auto *item = new FigureItem(texts[column], shopSortKey(m_rows[row].figures, column));
            if (column == 0)
                item->setToolTip(wrapped(texts[column]));
            else
                item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            m_table->setItem(static_cast<int>(row), column, item);
        }
    }
    m_table->resizeColumnsToContents();
    fitNames(m_table);
    fitHeight(m_table);
    m_table->horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    m_table->setSortingEnabled(true);
}

std::optional<QString> ShopView::askSave(const QString &title, const QString &filter, const QString &suffix)
{
    if (m_prompts == nullptr)
        return std::nullopt;
    return m_prompts->chooseFile(this,
                                 {prompts::FileWish::Use::Save, title, filter, tr("shop") + '.' + suffix, suffix});
}

void ShopView::exportTable()
{
    const auto path = askSave(tr("Export the table"), tr("Figures (*.csv)"), "csv");
    if (!path)
        return;
    const std::string csv = asksAboutSets() ? m_rejudge->csv() : shop::shopCsv(by(), m_rows);
    const auto written = exchange::writeFile(path->toStdString(), csv, exchange::Overwrite::Yes);
    if (!written)
        tell(tr("The table was not exported"), written.faults());
}

void ShopView::saveChart()
{
    const auto path =
        askSave(tr("Save the chart"), tr("Drawings (*.svg);;Pictures (*.png);;Pages (*.pdf);;Figures (*.csv)"), "svg");
    if (!path)
        return;
    const auto written =
        charts::exportBars(asksAboutSets() ? m_rejudge->bars() : m_bars->data(), *path, wording::paletteFor(*this));
    if (!written)
        tell(tr("The chart was not saved"), written.faults());
}

void ShopView::tell(const QString &title, const std::vector<outcome::Fault> &faults)
{
    if (m_prompts != nullptr)
        m_prompts->tell(this, {title, wording::faultsText(faults), {}});
}

} // namespace hammerline::main_window
