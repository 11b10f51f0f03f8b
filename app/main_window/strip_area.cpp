#include "main_window/strip_area.h"

#include "wording/palette.h"

#include <QBoxLayout>
#include <QCheckBox>
#include <QLabel>

#include <algorithm>

namespace hammerline::main_window {

namespace {

using keyboard_strip::StripModel;

/// Is there room for more than the keys? At large text there is not.
bool isRoomy()
{
    return wording::textScale() < 1.5;
}

/// Whether `next` differs from `shown` in single keys alone.
bool sameKeyboard(const StripModel &shown, const StripModel &next)
{
    return shown.compass == next.compass && shown.sections == next.sections && shown.caption == next.caption &&
           shown.keys.size() == next.keys.size();
}

/// Felt faults, and unlikely values that were confirmed and still stand.
void addMarks(const logbook::Logbook &book, const PassInView &pass, keyboard_strip::StripSource &source)
{
    for (const logbook::FaultMark &mark : book.faultMarks(pass.pass.id))
        source.flags[mark.note].fault = true;
    for (const logbook::ConfirmedSlip &slip : book.confirmedSlips(pass.pass.id)) {
        const auto stands = std::ranges::find(pass.readings, slip.place, &readings::Reading::place);
        const bool shown = !source.quantity || *source.quantity == slip.place.quantity;
        if (shown && stands != pass.readings.end() && stands->value == slip.value)
            source.flags[slip.place.note].confirmedSlip = true;
    }
}

/// What the lead accepted as it is and still is so, whatever it was: out, close to a limit, uneven or not read.
void addConcessions(const logbook::Logbook &book, const PassInView &pass, keyboard_strip::StripSource &source)
{
    for (const decisions::Concession &made : book.decisions(pass.pass.id).concessions) {
        const tolerance::Verdict *verdict = pass.judgement.find(made.quantity, made.note);
        const auto kind = verdict ? decisions::kindOf(*verdict) : std::nullopt;
        const bool shown = !source.quantity || *source.quantity == made.quantity;
        if (shown && kind && made.holds(verdict->value, *kind))
            source.flags[made.note].concession = true;
    }
}

/// As much of its tooltip as its width holds. The doubt of a value stands at the end of its story: where there is room
/// it goes on in a second line before it is cut.
class StoryLabel : public QLabel {
public:
    void fit()
    {
        const auto fits = [this](const QString &text) { return fontMetrics().horizontalAdvance(text) <= width(); };
        QString rest = toolTip(), first;
        if (isRoomy() && !fits(rest))
            for (qsizetype end = rest.indexOf(' '); end > 0 && fits(rest.left(end)); end = rest.indexOf(' ', end + 1))
                first = rest.left(end);
        rest = fontMetrics().elidedText(rest.mid(first.isEmpty() ? 0 : first.size() + 1), Qt::ElideRight, width());
        setText(first.isEmpty() ? rest : first + '\n' + rest);
    }

protected:
    void resizeEvent(QResizeEvent *event) override
    {
        QLabel::resizeEvent(event);
        fit();
    }
};

} // namespace

StripArea::StripArea(Workshop &workshop, QWidget *parent)
    : QWidget(parent),
      m_workshop(workshop),
      m_strip(new keyboard_strip::KeyboardStrip),
      m_caption(new QLabel),
      m_story(new StoryLabel),
      m_worst(new QCheckBox(tr("Worst of all quantities")))
{
    m_strip->setObjectName("strip");
    m_strip->setLegendShown(isRoomy()); // the shapes are in every key's story too
    m_strip->setModel(keyboard_strip::emptyModel({}, {}));
    m_caption->setObjectName("stripCaption");
    m_caption->setFont(wording::font(wording::TextSize::Body, true));
    m_story->setObjectName("stripStory");
    m_story->setTextFormat(Qt::PlainText);
    m_story->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    if (isRoomy())
        m_story->setMinimumHeight(2 * m_story->fontMetrics().lineSpacing()); // not to and fro with each note
    m_worst->setObjectName("stripWorst");
    auto *head = new QHBoxLayout;
    head->setSpacing(4 * wording::gridStep);
    head->addWidget(m_caption);
    head->addWidget(m_story, 1);
    head->addWidget(m_worst);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(12, 4, 12, 8);
    column->setSpacing(wording::gridStep);
    column->addLayout(head);
    column->addWidget(m_strip);
    connect(m_strip, &keyboard_strip::KeyboardStrip::noteChosen, this, &StripArea::noteChosen);
    connect(m_strip, &keyboard_strip::KeyboardStrip::noteTold, this, &StripArea::tell);
    connect(m_worst, &QCheckBox::toggled, this, &StripArea::showAll);
    connect(&m_workshop, &Workshop::passChosen, this, &StripArea::showAll);
    connect(&m_workshop, &Workshop::readingsChanged, this, &StripArea::showAll);
    connect(&m_workshop, &Workshop::plannedChanged, this, &StripArea::showAll);
    connect(&m_workshop, &Workshop::selected, this, &StripArea::followSelection);
}

void StripArea::setForm(const wording::NumberForm &form)
{
    m_form = form;
    showAll();
}

StripModel StripArea::modelNow() const
{
    const auto *instrument = m_workshop.instrument();
    if (!instrument)
        return keyboard_strip::emptyModel({}, {});
    const PassInView *pass = m_workshop.pass();
    if (!pass)
        return keyboard_strip::emptyModel(instrument->compass, instrument->sections);
    const PassInView *before = m_workshop.before();
    keyboard_strip::StripSource source;
    source.compass = instrument->compass;
    source.sections = instrument->sections;
    source.now = &pass->judgement;
    source.before = before ? &before->judgement : nullptr;
    source.planned = m_workshop.planned().empty() ? nullptr : &m_workshop.planned();
    source.form = m_form;
    if (!m_worst->isChecked())
        source.quantity = m_workshop.selection().quantity;
    addMarks(m_workshop.book(), *pass, source);
    addConcessions(m_workshop.book(), *pass, source);
    return keyboard_strip::modelOf(source);
}

void StripArea::showAll()
{
    m_shown = m_workshop.selection().quantity;
    StripModel next = modelNow();
    m_caption->setText(next.caption);
    if (sameKeyboard(m_strip->model(), next)) {
        for (std::size_t i = 0; i < next.keys.size(); ++i)
            if (!(next.keys[i] == m_strip->model().keys[i]))
                m_strip->setKey(next.keys[i]);
    } else {
        m_strip->setModel(std::move(next));
    }
    followSelection();
}

void StripArea::followSelection()
{
    const Selection &selection = m_workshop.selection();
    if (m_shown != selection.quantity && !m_worst->isChecked())
        return showAll();
    m_strip->select(selection.note);
    const auto *key = m_strip->model().find(selection.note);
    m_chosenStory = key ? key->story : QString();
    tell({});
}

void StripArea::tell(const QString &story)
{
    m_story->setToolTip(story.isEmpty() ? m_chosenStory : story);
    m_story->setAccessibleName(m_story->toolTip());
    elideStory();
}

void StripArea::elideStory()
{
    static_cast<StoryLabel *>(m_story)->fit();
}

void StripArea::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    elideStory();
}

} // namespace hammerline::main_window
