#include "bench/bench.h"

#include "bench/inside/asked_board.h"
#include "bench/inside/verdict_board.h"
#include "wording/deed_text.h"
#include "wording/palette.h"
#include "wording/wording.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QCoreApplication>
#include <QKeyEvent>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStackedLayout>

#include <algorithm>

namespace hammerline::bench {

namespace {

QLabel *label(const QString &name, wording::TextSize size)
{
    auto *made = new QLabel;
    made->setObjectName(name);
    made->setFont(wording::font(size));
    made->setTextFormat(Qt::PlainText);
    return made;
}

/// A scrolling area takes the wished height for the least one where a layout's height follows from its width; but the
/// read-outs give way before anything scrolls.
class GivingWay : public QStackedLayout {
public:
    using QStackedLayout::QStackedLayout;
    [[nodiscard]] bool hasHeightForWidth() const override { return false; }
};

QFrame *rule()
{
    auto *line = new QFrame;
    line->setFrameShape(QFrame::HLine);
    line->setObjectName("rule");
    return line;
}

} // namespace

BenchView::BenchView(QWidget *parent)
    : QWidget(parent),
      m_pages(new GivingWay(this)),
      m_chooser(new QComboBox),
      m_way(new QPushButton(tr("Way …"))),
      m_progressText(label("progressText", wording::TextSize::Heading)),
      m_progress(new QProgressBar),
      m_asked(new AskedBoard),
      m_verdict(new VerdictBoard),
      m_help(label("keyHelp", wording::TextSize::Body)),
      m_gauge(new QPushButton),
      m_emptyHeading(label("benchEmpty", wording::TextSize::Title)),
      m_emptyDetail(label("benchEmptyDetail", wording::TextSize::Heading)),
      m_firstStep(new QPushButton)
{
    m_pages->addWidget(makeEmptyPage());
    m_pages->addWidget(makeWorkPage());
    connect(m_chooser, &QComboBox::activated, this, [this] {
        if (m_session->chosen())
            m_session->choose(choice(), m_session->typings());
        followChoice();
        focusField();
    });
    m_way->setObjectName("way");
    m_way->setAutoDefault(false);
    m_way->setAccessibleName(tr("The way through the pass"));
    connect(m_way, &QPushButton::clicked, this, &BenchView::chooseWay);
    connect(m_asked, &AskedBoard::faultFelt, this, &BenchView::feel);
    connect(m_asked, &AskedBoard::typed, this, &BenchView::take);
    connect(m_asked, &AskedBoard::dropped, this, &BenchView::offerHeld);
    connect(m_gauge, &QPushButton::clicked, this, &BenchView::gaugeWanted);
    connect(m_asked, &AskedBoard::actWanted, this, &BenchView::act);
    setKeys(BenchKeys());
}

BenchView::~BenchView() = default;

QWidget *BenchView::makeEmptyPage()
{
    auto *page = new QWidget;
    m_emptyDetail->setWordWrap(true);
    m_firstStep->setObjectName("firstStep");
    m_firstStep->setDefault(true);
    connect(m_firstStep, &QPushButton::clicked, this, &BenchView::firstStepWanted);
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(48, 48, 48, 48);
    column->setSpacing(3 * wording::gridStep);
    column->addWidget(m_emptyHeading);
    column->addWidget(m_emptyDetail);
    column->addWidget(m_firstStep, 0, Qt::AlignLeft);
    column->addStretch(1);
    return page;
}

QWidget *BenchView::makeWorkPage()
{
    m_chooser->setObjectName("quantityChooser");
    m_chooser->setAccessibleName(tr("Quantity to read"));
    m_chooser->setFont(wording::font(wording::TextSize::Heading));
    m_progress->setTextVisible(false);
    m_progress->setFixedHeight(wording::gridStep);
    m_progress->setAccessibleName(tr("Progress"));
    m_help->setWordWrap(true);
    m_gauge->setObjectName("gaugeState");
    m_gauge->setAutoDefault(false);
    m_gauge->hide();

    auto *page = new QWidget;
    auto *head = new QHBoxLayout;
    head->setSpacing(6 * wording::gridStep);
    head->addWidget(m_asked->heading());
    head->addWidget(m_chooser);
    head->addWidget(m_way);
    head->addWidget(m_gauge);
    head->addStretch(1);
    head->addWidget(m_progressText);
    auto *column = new QVBoxLayout(page);
    column->setContentsMargins(24, 8, 24, 8);
    column->setSpacing(wording::gridStep);
    column->addLayout(head);
    column->addWidget(m_progress);
    column->addStretch(1);
    column->addWidget(m_asked);
    column->addStretch(1);
    column->addWidget(rule());
    column->addWidget(m_verdict);
    column->addStretch(2);
    column->addWidget(m_help);
    return page;
}

void BenchView::setKeys(const BenchKeys &keys)
{
    m_keys = keys;
    m_asked->setKeys(keys);
    m_help->setText(tr("Enter stores and goes on.  In the empty field: %1 back,  %2 skip,  %3 further take,  "
                       "%4 withdraw,  %5 %6 step,  %7 same again.  A letter marks a fault, with Shift clears it.")
                        .arg(keys.labelOf(BenchAct::Back), keys.labelOf(BenchAct::Skip), keys.labelOf(BenchAct::Again),
                             keys.labelOf(BenchAct::Withdraw), keys.labelOf(BenchAct::StepUp),
                             keys.labelOf(BenchAct::StepDown), keys.labelOf(BenchAct::Same)));
}

void BenchView::sayFirst(const QString &heading, const QString &detail, const QString &button)
{
    m_emptyHeading->setText(heading);
    m_emptyDetail->setText(detail);
    m_firstStep->setText(button);
    m_firstStep->setVisible(!button.isEmpty());
}

void BenchView::setFaultWords(const std::vector<FaultWord> &words)
{
    m_asked->setFaultWords(words);
}

void BenchView::setForm(const wording::NumberForm &form)
{
    m_form = form;
    if (m_session)
        showAsked();
}

/// The page that is not shown claims no room: grown text on the one must not make the other scroll.
void BenchView::showPage(int shown)
{
    for (int page = 0; page < m_pages->count(); ++page) {
        const auto policy = page == shown ? QSizePolicy::Preferred : QSizePolicy::Ignored;
        m_pages->widget(page)->setSizePolicy(policy, policy);
    }
    m_pages->setCurrentIndex(shown);
}

void BenchView::work(std::unique_ptr<EntrySession> session, catalogue::Quantity quantity)
{
    m_session = std::move(session);
    m_held.clear();
    m_asked->clear();
    showPage(m_session ? 1 : 0);
    if (!m_session)
        return;
    fillChooser(quantity);
    m_verdict->say({});
    m_heard.startAnew();
    followKept();
}

void BenchView::take(const QString &text)
{
    if (!m_session->asked() && text.trimmed().isEmpty())
        return goOnToNextQuantity();
    const auto entered = m_session->enter(text.toStdString(), !m_doubted.isEmpty() && text == m_doubted);
    const QString doubted = std::exchange(m_doubted, {});
    if (!entered)
        return refuse(wording::faultsText(entered.faults()));
    if (entered.value().doubted)
        return tellDoubt(text, *entered.value().doubted);
    m_asked->clear();
    const auto verdict = entered.value().verdict;
    m_verdict->tell(entered.value(), verdict ? verdict->takes : 1, m_form, text == doubted ? QString() : doubted);
    m_heard.entered(entered.value(), m_form);
    showAsked();
    if (!entered.value().kept)
        emit stored();
    offerHeld();
}

void BenchView::refuse(const QString &reason)
{
    m_asked->refuse(reason);
    m_heard.refused();
}

void BenchView::act(BenchAct act)
{
    switch (act) {
    case BenchAct::Back:
        m_session->back();
        break;
    case BenchAct::Skip:
        m_session->skip();
        break;
    case BenchAct::Again:
        if (!m_session->again())
            return refuse(tr("there is no reading yet that could have a further take"));
        break;
    case BenchAct::StepUp:
        return step(1);
    case BenchAct::StepDown:
        return step(-1);
    case BenchAct::Same:
        m_stepped.reset();
        return step(0);
    case BenchAct::Withdraw:
        if (!m_session->withdraw(tr("withdrawn at the bench").toStdString()))
            return refuse(tr("nothing stands here that could be withdrawn"));
        m_verdict->say(tr("withdrawn; undo brings it back"));
        emit stored();
        break;
    }
    m_asked->clear();
    showAsked();
}

void BenchView::ask(catalogue::Quantity quantity, keyboard::Note note)
{
    if (!m_session)
        return;
    const auto asked = m_session->asked();
    if (asked && asked->quantity == quantity && asked->note == note)
        return;
    const QString typed = typedText().trimmed();
    if (!typed.isEmpty() && !m_asked->holdsProposal()) // it was not meant for the note to come
        m_verdict->say(asked ? tr("%1 was not stored for %2").arg(typed, wording::nameOf(asked->note))
                             : tr("%1 was not stored").arg(typed));
    m_asked->clear();
    if (!m_session->goTo(quantity, note)) {
        m_chooser->setCurrentIndex(m_chooser->findData(static_cast<int>(quantity)));
        m_session->follow(choice());
        m_session->goTo(quantity, note);
    }
    showAsked();
}

void BenchView::refresh()
{
    if (!m_session || !m_session->refresh())
        return;
    showAsked();
}

void BenchView::undo()
{
    if (m_session)
        tellDeed(tr("Undone: %1"), m_session->undo());
}

void BenchView::redo()
{
    if (m_session)
        tellDeed(tr("Done again: %1"), m_session->redo());
}

void BenchView::tellDeed(const QString &what, const std::optional<TakenBack> &taken)
{
    if (!taken)
        return;
    m_verdict->say(what.arg(wording::deedText(taken->deed)));
    m_asked->clear();
    if (taken->way)
        followKept();
    if (taken->changed)
        ask(taken->changed->quantity, taken->changed->note);
    showAsked();
    emit stored();
}

void BenchView::focusField()
{
    if (!m_session)
        return;
    m_asked->field()->setFocus();
    offerHeld();
}

void BenchView::takeKey(QKeyEvent &key)
{
    focusField();
    QCoreApplication::sendEvent(m_asked->field(), &key);
}

QString BenchView::typedText() const
{
    return m_asked->field()->text();
}

void BenchView::showAsked()
{
    m_stepped.reset();
    m_doubted.clear();
    m_fromGauge.clear();
    showProgress();
    constexpr double roomUpTo = 1.5; // what is read from two metres needs the room; the keys have a dialog
    m_help->setVisible(wording::textScale() < roomUpTo && !m_verdict->hasRemark());
    m_heard.asked(m_session->asked());
    if (const auto place = m_session->asked()) {
        m_asked->ask(*m_session, m_form);
        emit askedFor(place->quantity, place->note);
        return;
    }
    const Progress progress = m_session->progress();
    const int missing = progress.all - progress.read;
    m_asked->askNothing(missing == 0 ? tr("All %n read", nullptr, progress.all)
                                     : tr("End of the route; %n not read", nullptr, missing),
                        tr("Enter goes on to the next quantity that lacks readings."));
}

void BenchView::showProgress()
{
    const Progress progress = m_session->progress();
    m_progress->setRange(0, std::max(1, progress.all));
    m_progress->setValue(progress.read);
    m_progressText->setText(tr("%1 of %2 read").arg(progress.read).arg(progress.all));
}

} // namespace hammerline::bench
