#include "main_window/rejudge_page.h"

#include "exchange/tolerance_json.h"
#include "main_window/rejudge_model.h"
#include "main_window/rejudge_words.h"
#include "main_window/shop_parts.h"
#include "wording/wording.h"
#include "wording/wrap_row.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QSignalBlocker>
#include <QTableView>

#include <algorithm>
#include <set>

namespace hammerline::main_window {

namespace {

constexpr int lookMilliseconds = 60;
constexpr int leastLetters = 14, mostLetters = 52; ///< that are seen of a set's name
constexpr int rowsToMeasure = 40;                  ///< for the widths of columns; the worst come first

QTableView *makeTable(RejudgeModel *model)
{
    auto *table = new QTableView;
    table->setObjectName("rejudgeTable");
    table->setAccessibleName(RejudgePage::tr("What stands, and what another set would say"));
    dressFigures(table);
    table->horizontalHeader()->setResizeContentsPrecision(rowsToMeasure);
    table->horizontalHeader()->setStretchLastSection(false);
    table->setModel(model);
    return table;
}

} // namespace

RejudgePage::RejudgePage(Workshop &workshop, QWidget *parent)
    : QWidget(parent),
      m_workshop(workshop),
      m_answer(new QLabel),
      m_model(new RejudgeModel(this)),
      m_bars(new charts::BarsPane)
{
    m_table = makeTable(m_model);
    m_answer->setObjectName("rejudgeAnswer");
    m_answer->setWordWrap(true);
    m_answer->setTextFormat(Qt::PlainText);
    m_answer->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2 * wording::gridStep);
    column->addLayout(makeChoices());
    column->addWidget(m_answer);
    column->addWidget(m_table, 1);
    column->addWidget(m_bars, 2);
    column->addStretch();
    m_timer.setSingleShot(true);
    m_timer.setInterval(lookMilliseconds);
    connect(&m_timer, &QTimer::timeout, this, &RejudgePage::look);
    connect(&m_workshop, &Workshop::instrumentsChanged, this, &RejudgePage::followLogbook);
    connect(&m_workshop, &Workshop::readingsChanged, this, &RejudgePage::followLogbook);
}

QLayout *RejudgePage::makeChoices()
{
    auto *row = new wording::WrapRow(2 * wording::gridStep);
    m_set = addBox(row, tr("Judge by"), "rejudgeSet");
    m_which = addBox(row, tr("Passes"), "rejudgeWhich");
    for (const auto &[which, words] : {std::pair(shop::Which::All, tr("all")),
                                       {shop::Which::Newest, tr("newest of each")},
                                       {shop::Which::AsFound, tr("as found")},
                                       {shop::Which::AsLeft, tr("as left")}})
        m_which->addItem(words, static_cast<int>(which));
    m_by = addBox(row, tr("By"), "rejudgeBy");
    m_by->addItems({tr("quantity"), tr("instrument")});
    for (QComboBox *box : {m_set, m_which}) { // a set may have any name
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(box == m_set ? mostLetters : leastLetters - 2);
    }
    m_set->setMinimumWidth(leastLetters * fontMetrics().averageCharWidth());
    connect(m_set, &QComboBox::activated, this, &RejudgePage::chooseSet);
    connect(m_which, &QComboBox::currentIndexChanged, this, &RejudgePage::judgeAnew);
    connect(m_by, &QComboBox::currentIndexChanged, this, &RejudgePage::fill);
    return row;
}

void RejudgePage::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    offerSets();
    followLogbook();
    fill();
}

void RejudgePage::ask(const shop::Filter &filter)
{
    m_filter = filter;
    judgeAnew();
}

/// The one that is chosen stays so, even where no instrument is judged by it any more.
void RejudgePage::offerSets()
{
    const std::optional<exchange::NamedSet> before = chosen() ? std::optional(*chosen()) : std::nullopt;
    const QSignalBlocker quiet(m_set);
    m_set->clear();
    m_sets.clear();
    m_set->addItem(tr("choose a set\u2026"));
    for (const exchange::BuiltIn &builtIn : exchange::builtInToleranceSets())
        if (auto set = exchange::findToleranceSet(builtIn.id))
            offer(std::move(set).value(), {});
    if (m_workshop.isOpen())
        for (const logbook::PassTolerance &used : m_workshop.book().setsInUse().sets)
            if (auto set = exchange::readToleranceSet(used.text, used.id))
                offer({used.id, used.text, std::move(set).value()}, tr("%1 (in this logbook)"));
    if (before)
        offer(*before, {});
    m_set->addItem(tr("A set from a file\u2026"));
    m_set->setCurrentIndex(0);
    for (std::size_t row = 0; before && row < m_sets.size(); ++row)
        if (m_sets[row].text == before->text)
            m_set->setCurrentIndex(static_cast<int>(row) + 1);
}

/// `pattern` for its name; empty: the name alone. Nothing is offered twice.
void RejudgePage::offer(exchange::NamedSet set, const QString &pattern)
{
    if (std::ranges::find(m_sets, set.text, &exchange::NamedSet::text) != m_sets.end())
        return;
    const QString name = QString::fromStdString(set.set.name.empty() ? set.id : set.set.name);
    m_set->addItem(pattern.isEmpty() ? name : pattern.arg(name));
    m_sets.push_back(std::move(set));
}

const exchange::NamedSet *RejudgePage::chosen() const
{
    const int row = m_set->currentIndex() - 1;
    return row >= 0 && row < static_cast<int>(m_sets.size()) ? &m_sets[static_cast<std::size_t>(row)] : nullptr;
}

void RejudgePage::chooseSet(int row)
{
    if (row == m_set->count() - 1)
        openFile();
    judgeAnew();
}

void RejudgePage::openFile()
{
    m_set->setCurrentIndex(0);
    const auto path =
        m_prompts == nullptr
            ? std::nullopt
            : m_prompts->chooseFile(
                  this, {prompts::FileWish::Use::Open, tr("Tolerance set"), tr("Tolerance sets (*.json)"), {}, "json"});
    if (!path)
        return;
    auto set = exchange::findToleranceSet(path->toStdString());
    if (!set) {
        m_prompts->tell(this, {tr("The set cannot be used"), wording::faultsText(set.faults()), {}});
        return;
    }
    const std::string text = set.value().text;
    m_set->removeItem(m_set->count() - 1);
    offer(std::move(set).value(), {});
    m_set->addItem(tr("A set from a file\u2026"));
    const auto row = std::ranges::find(m_sets, text, &exchange::NamedSet::text) - m_sets.begin();
    m_set->setCurrentIndex(static_cast<int>(row) + 1);
}

void RejudgePage::followLogbook()
{
    const std::string path = m_workshop.isOpen() ? m_workshop.book().path() : std::string();
    if (path != m_path) {
        m_path = path;
        judgeAnew();
        if (isVisible())
            offerSets();
    } else if (isVisible() && m_workshop.isOpen() && chosen() != nullptr && !isJudging()) {
        judgeTouched();
    }
}

void RejudgePage::judgeAnew()
{
    m_run.stop();
    m_timer.stop();
    m_judged.clear();
    m_seen = 0;
    if (isVisible() && m_workshop.isOpen() && chosen() != nullptr)
        begin(std::nullopt);
    fill();
}

void RejudgePage::judgeTouched()
{
    if (m_workshop.book().newestDeed() != m_seen)
        begin(m_seen == 0 ? std::nullopt : shop::touchedSince(m_workshop.book(), m_seen));
}

void RejudgePage::begin(std::optional<shop::Instruments> only)
{
    m_only = std::move(only);
    m_seenByRun = m_workshop.book().newestDeed();
    const auto which = static_cast<shop::Which>(m_which->currentData().toInt());
    m_run.begin(m_path, {.set = chosen()->set, .which = which, .filter = m_filter, .only = m_only});
    m_timer.start();
}

void RejudgePage::look()
{
    if (auto judged = m_run.take())
        return takeIn(*std::move(judged));
    if (!isJudging())
        return;
    if (!m_only)
        m_answer->setText(tr("Judging: %1 %").arg(m_run.percent()));
    m_timer.start();
}

void RejudgePage::takeIn(shop::ShopJudged judged)
{
    if (m_only)
        for (const instrument::InstrumentId touched : *m_only)
            m_judged.erase(touched);
    else
        m_judged.clear();
    m_judged.merge(judged);
    m_seen = m_seenByRun;
    fill();
    followLogbook(); // whatever was done while it judged
}

bool RejudgePage::byInstrument() const
{
    return m_by->currentIndex() == 1;
}

shop::Names RejudgePage::names() const
{
    shop::Names names;
    for (const logbook::InstrumentLine &line : m_workshop.instruments())
        names.emplace_hint(names.end(), line.id, line.name);
    return names;
}

std::string RejudgePage::csv() const
{
    return byInstrument() ? shop::judgedCsv(shop::rowsByInstrument(m_judged), names())
                          : shop::judgedCsv(shop::rowsByQuantity(m_judged));
}

QString RejudgePage::answerText() const
{
    if (chosen() == nullptr)
        return tr("Choose a set to see how many notes would be in, marginal and out by it, beside what stands. Nothing "
                  "is changed by looking.");
    if (isJudging() && !m_only)
        return tr("Judging\u2026");
    if (m_judged.empty())
        return tr("Nothing that this set could judge was read in such a pass.") + leftOutText();
    return rejudgedText(chosen()->set.name, m_judged, locale()) + leftOutText();
}

/// Of the instruments asked for, how many have another action than the set is for; empty: none.
QString RejudgePage::leftOutText() const
{
    if (!m_workshop.isOpen())
        return {};
    std::set<instrument::InstrumentId> asked;
    for (const logbook::InstrumentLine &line : m_workshop.instruments())
        if (m_filter.states.empty() || m_filter.states.contains(line.state))
            asked.insert(line.id);
    const auto others = std::ranges::count_if(m_workshop.book().keyboards(), [&](const logbook::Keyboard &keyboard) {
        return keyboard.action != chosen()->set.action && asked.contains(keyboard.instrument);
    });
    if (others == 0)
        return {};
    const QString text =
        others == 1 ? tr(" One instrument has another action than the set is for (%1) and is not judged by it.")
                    : tr(" %2 instruments have another action than the set is for (%1) and are not judged by it.");
    const QString action = wording::nameOf(chosen()->set.action);
    return others == 1 ? text.arg(action) : text.arg(action, locale().toString(qlonglong{others}));
}

void RejudgePage::fill()
{
    std::vector<RejudgeModel::Row> rows;
    if (byInstrument()) {
        const auto known = names();
        for (const auto &row : shop::rowsByInstrument(m_judged))
            if (const auto name = known.find(row.key); name != known.end())
                rows.push_back({QString::fromStdString(name->second), row.counts});
    } else {
        for (const auto &row : shop::rowsByQuantity(m_judged))
            rows.push_back({wording::nameOf(row.key), row.counts});
    }
    m_answer->setText(answerText());
    m_table->setHidden(m_judged.empty());
    m_bars->setHidden(m_judged.empty());
    m_bars->setData(rejudgedBars(rows, m_judged, csv(), locale()));
    m_table->setSortingEnabled(false);
    m_model->show(byInstrument() ? tr("Instrument") : tr("Quantity"), std::move(rows));
    m_table->resizeColumnsToContents();
    fitNames(m_table);
    fitHeight(m_table);
    m_table->horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    m_table->setSortingEnabled(true);
    emit filled();
}

} // namespace hammerline::main_window
