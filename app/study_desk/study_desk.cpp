#include "study_desk/study_desk.h"

#include "exchange/exchange.h"
#include "exchange/trials_csv.h"
#include "wording/palette.h"
#include "wording/plain_name.h"
#include "wording/wording.h"
#include "wording/wrap_row.h"

#include <QBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <QTableWidget>

#include <algorithm>

namespace hammerline::study_desk {

using logbook::PlannedStudy;

namespace {

constexpr int fewestLetters = 60; ///< of a line that is still read with ease

/// Nobody put it where it is: what is typed while a study is taken is its next value, and no press of a button that
/// only came first.
bool hasChanceFocus(const QWidget &desk, const QWidget *list)
{
    const QWidget *now = desk.window()->focusWidget();
    return now == nullptr || now->isAncestorOf(&desk) || (desk.isAncestorOf(now) && now != list);
}

} // namespace

StudyDesk::StudyDesk(Clock clock, QWidget *parent)
    : QWidget(parent),
      m_clock(std::move(clock)),
      m_row(new QBoxLayout(QBoxLayout::LeftToRight, this)),
      m_left(new QWidget),
      m_list(new QTableWidget(0, 2)),
      m_plan(new QPushButton(tr("Plan a study…"))),
      m_strike(new QPushButton(tr("Strike it out…"))),
      m_pages(new QStackedWidget),
      m_empty(new QLabel(tr("No gauge study yet. Plan one: two or three people read the same ten notes three times "
                            "each, blind. It tells how far a reading can be trusted, and passes and tolerance "
                            "sets take over what it finds."))),
      m_taking(new TakingPage),
      m_findings(new FindingsPage)
{
    setObjectName("studyDesk");
    makeList();
    m_plan->setObjectName("studyPlan");
    m_strike->setObjectName("studyStrike");
    m_empty->setObjectName("studyEmpty");
    m_empty->setFont(wording::font(wording::TextSize::Heading));
    m_empty->setWordWrap(true);
    m_empty->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    m_empty->setContentsMargins(24, 12, 24, 8);
    for (QWidget *page : std::initializer_list<QWidget *>{m_empty, m_taking, m_findings})
        m_pages->addWidget(page);
    arrange();
    connect(m_plan, &QPushButton::clicked, this, &StudyDesk::plan);
    connect(m_strike, &QPushButton::clicked, this, &StudyDesk::strike);
    connect(m_findings, &FindingsPage::saveWanted, this, &StudyDesk::saveChart);
    connect(m_findings, &FindingsPage::trialsWanted, this, &StudyDesk::saveTrials);
    connect(m_findings, &FindingsPage::noteChosen, this, [this](keyboard::Note note) {
        if (const auto study = chosen(); study && study->instrument == m_place.proposal.instrument.id)
            emit pairChosen(study->quantity, note);
    });
    connect(m_taking, &TakingPage::written, this, [this] {
        show(m_place);
        emit written();
    });
}

void StudyDesk::arrange()
{
    auto *buttons = new wording::WrapRow(2 * wording::gridStep);
    buttons->addWidget(m_plan);
    buttons->addWidget(m_strike);
    auto *left = new QVBoxLayout(m_left);
    left->setContentsMargins(24, 12, 0, 8);
    left->addLayout(buttons);
    left->addWidget(m_list, 1);
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->addWidget(m_left);
    m_row->addWidget(m_pages, 1);
}

QSize StudyDesk::minimumSizeHint() const
{
    const QSize list = m_left->minimumSizeHint(), page = m_pages->minimumSizeHint();
    const int height = m_row->direction() == QBoxLayout::LeftToRight ? std::max(list.height(), page.height())
                                                                     : list.height() + page.height();
    return {std::max(list.width(), page.width()), height};
}

void StudyDesk::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    const int wanted = m_left->sizeHint().width() + fewestLetters * fontMetrics().averageCharWidth();
    m_row->setDirection(width() < wanted ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void StudyDesk::makeList()
{
    m_list->setObjectName("studyList");
    m_list->setAccessibleName(tr("Gauge studies"));
    m_list->setHorizontalHeaderLabels({tr("Gauge, quantity"), tr("Trusted to")});
    m_list->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    m_list->horizontalHeader()->setHighlightSections(false);
    m_list->horizontalHeader()->setStretchLastSection(true);
    m_list->verticalHeader()->hide();
    m_list->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_list->setSelectionMode(QAbstractItemView::SingleSelection);
    m_list->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_list->setTabKeyNavigation(false);
    m_list->setShowGrid(false);
    m_list->setFrameShape(QFrame::NoFrame);
    connect(m_list, &QTableWidget::currentCellChanged, this, [this](int row) {
        if (row >= 0 && row < static_cast<int>(m_studies.size()))
            m_chosen = m_studies[static_cast<std::size_t>(row)].id;
        showChosen();
    });
}

void StudyDesk::show(const StudyPlace &place)
{
    m_place = place;
    const bool before = blind();
    fillList();
    showChosen();
    if (takesReadings() && !before && hasChanceFocus(*this, m_list))
        m_taking->focusField();
}

QStringList StudyDesk::textsOf(const PlannedStudy &study) const
{
    const auto findings = findingsOf(*m_place.book, study, nullptr);
    const auto dimension = catalogue::infoOf(study.quantity).dimension;
    return {nameOf(study) + '\n' + dayOf(study),
            findings ? charts::sdText(findings->figures.expandedUncertainty, dimension, formOf(study))
                     : tr("being taken")};
}

void StudyDesk::fillList()
{
    const QSignalBlocker quiet(m_list);
    m_studies = m_place.book ? logbook::GaugeStudies(*m_place.book).all() : std::vector<PlannedStudy>{};
    std::ranges::reverse(m_studies);
    if (!chosen() && !m_studies.empty())
        m_chosen = m_studies.front().id;
    m_list->setRowCount(static_cast<int>(m_studies.size()));
    for (int row = 0; row < m_list->rowCount(); ++row) {
        const PlannedStudy &study = m_studies[static_cast<std::size_t>(row)];
        const QStringList texts = textsOf(study);
        for (int column = 0; column < texts.size(); ++column) {
            auto *item = new QTableWidgetItem(texts[column]);
            item->setToolTip(texts[column]);
            m_list->setItem(row, column, item);
        }
        if (study.id == m_chosen)
            m_list->setCurrentCell(row, 0);
    }
    fitList();
    m_plan->setEnabled(m_place.book != nullptr);
}

/// As wide as what it holds, but for names that are long.
void StudyDesk::fitList()
{
    m_list->horizontalHeader()->setStretchLastSection(false); // else the last fills the list and widens it each time
    m_list->resizeColumnsToContents();
    const int widest = 24 * m_list->fontMetrics().averageCharWidth();
    m_list->setColumnWidth(0, std::min(m_list->columnWidth(0), widest));
    m_list->resizeRowsToContents();
    const int width = m_list->horizontalHeader()->length() + 6 * wording::gridStep;
    m_list->horizontalHeader()->setStretchLastSection(true);
    m_list->setFixedWidth(width);
}

std::optional<PlannedStudy> StudyDesk::chosen() const
{
    const auto found = std::ranges::find(m_studies, m_chosen, &PlannedStudy::id);
    return found == m_studies.end() ? std::nullopt : std::optional(*found);
}

void StudyDesk::showChosen()
{
    const bool before = blind();
    const auto study = chosen();
    m_strike->setEnabled(study.has_value());
    auto findings = study ? findingsOf(*m_place.book, *study, m_place.set) : std::nullopt;
    if (findings && study->instrument != m_place.proposal.instrument.id)
        findings->limits.clear(); // the notes of another instrument are not drawn into the limits of this one
    const bool taking = study && !findings;
    const auto piano = taking ? m_place.book->instrument(study->instrument) : std::nullopt;
    m_taking->work(taking ? std::make_unique<Taking>(*m_place.book, *study, m_clock) : nullptr,
                   piano ? QString::fromStdString(piano->name) : QString());
    if (findings)
        m_findings->show(*findings);
    QWidget *page = m_empty;
    if (study)
        page = taking ? static_cast<QWidget *>(m_taking) : m_findings;
    m_pages->setCurrentWidget(page);
    if (blind() != before)
        emit blindChanged(blind());
    tellWhatIsAsked();
}

void StudyDesk::tellWhatIsAsked()
{
    emit asksFor(takesReadings() ? std::optional(m_taking->taking()->study().quantity) : std::nullopt);
}

void StudyDesk::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    tellWhatIsAsked();
    const auto giveFocus = [this] {
        if (takesReadings() && hasChanceFocus(*this, m_list))
            m_taking->focusField();
    };
    QMetaObject::invokeMethod(this, giveFocus, Qt::QueuedConnection); // when the page before let go of it
}

void StudyDesk::hideEvent(QHideEvent *event)
{
    QWidget::hideEvent(event);
    tellWhatIsAsked();
}

bool StudyDesk::takeFromGauge(const QString &typed)
{
    const bool here = takesReadings();
    if (here)
        m_taking->take(typed);
    return here;
}

bool StudyDesk::refuseFromGauge(const QString &why)
{
    const bool here = takesReadings();
    if (here)
        m_taking->refuse(why);
    return here;
}

bool StudyDesk::blind() const
{
    return m_taking->taking() != nullptr;
}

void StudyDesk::focusFirst()
{
    if (blind())
        m_taking->focusField();
    else if (m_studies.empty())
        m_plan->setFocus();
    else
        m_list->setFocus();
}

void StudyDesk::plan()
{
    auto *form = new PlanForm(m_place.proposal, this);
    connect(form, &PlanForm::ready, this, [this](const PlannedStudy &study) {
        const std::string person = m_place.proposal.people.empty() ? "" : m_place.proposal.people.front();
        const auto planned = logbook::GaugeStudies(*m_place.book).plan(study, {m_clock(), person});
        if (!planned)
            return tell(tr("The study was not planned"), planned.faults());
        m_chosen = planned.value().id;
        show(m_place);
        focusFirst();
        emit written();
    });
    form->open();
}

void StudyDesk::strike()
{
    const auto study = chosen();
    if (!study || m_prompts == nullptr)
        return;
    const auto reason = m_prompts->askText(this, {tr("Strike out the study"), tr("Why"), {}});
    if (!reason)
        return;
    const std::string person = m_place.proposal.people.empty() ? "" : m_place.proposal.people.front();
    logbook::GaugeStudies(*m_place.book).strike(study->id, {m_clock(), person}, reason->toStdString());
    show(m_place);
    emit written();
}

/// Of the gauge, the quantity and the day, so that no file of any study takes another's place.
QString StudyDesk::proposedName(const QString &what, const QString &ending) const
{
    const auto study = chosen();
    return tr("%1-%2-study-%3-%4.%5")
        .arg(wording::plainName(QString::fromStdString(study->gauge.name)),
             wording::plainName(wording::nameOf(study->quantity)), dayOf(*study), what, ending);
}

QString StudyDesk::proposedChartName() const
{
    const QString svg = QStringLiteral("svg");
    switch (m_findings->chart().question) {
    case charts::StudyQuestion::ValuesByNoteAndPerson:
        return proposedName(tr("values"), svg);
    case charts::StudyQuestion::RangeByPerson:
        return proposedName(tr("people"), svg);
    case charts::StudyQuestion::Components:
        break;
    }
    return proposedName(tr("sources"), svg);
}

void StudyDesk::saveChart()
{
    if (m_prompts == nullptr || !chosen())
        return;
    const auto path = m_prompts->chooseFile(
        this, {prompts::FileWish::Use::Save, tr("Save the chart"),
               tr("Drawings (*.svg);;Pictures (*.png);;Pages (*.pdf);;Figures (*.csv)"), proposedChartName(), "svg"});
    if (!path)
        return;
    const auto written = charts::exportChart(m_findings->chart(), *path, wording::paletteFor(*this));
    if (!written)
        tell(tr("The chart was not saved"), written.faults());
}

void StudyDesk::saveTrials()
{
    if (m_prompts == nullptr || !chosen())
        return;
    const auto path =
        m_prompts->chooseFile(this, {prompts::FileWish::Use::Save, tr("Save the trials"), tr("Trials (*.csv)"),
                                     proposedName(tr("trials"), QStringLiteral("csv")), "csv"});
    if (!path)
        return;
    const auto written = exchange::writeFile(path->toStdString(), exchange::writeTrialsCsv(m_findings->chart().trials),
                                             exchange::Overwrite::Yes);
    if (!written)
        tell(tr("The trials were not saved"), written.faults());
}

void StudyDesk::tell(const QString &title, const std::vector<outcome::Fault> &faults)
{
    if (m_prompts != nullptr)
        m_prompts->tell(this, {title, wording::faultsText(faults), {}});
}

} // namespace hammerline::study_desk
