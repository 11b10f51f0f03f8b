#include "study_desk/taking_page.h"

#include "wording/palette.h"
#include "wording/wording.h"
#include "wording/wrap_row.h"

#include <QBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace hammerline::study_desk {

namespace {

/// What is read from across the room is as large at any text size: larger still, it would push the field off a small
/// screen.
QFont fontFromAfar(wording::TextSize size)
{
    QFont face = wording::font(size);
    face.setPointSizeF(static_cast<double>(size));
    return face;
}

QLabel *makeLabel(const char *name, wording::TextSize size, bool bold = false)
{
    auto *label = new QLabel;
    label->setObjectName(name);
    label->setTextFormat(Qt::PlainText);
    label->setFont(wording::font(size, bold));
    label->setWordWrap(true);
    return label;
}

} // namespace

TakingPage::TakingPage(QWidget *parent)
    : QWidget(parent),
      m_person(makeLabel("studyPerson", wording::TextSize::Large)),
      m_hand(makeLabel("studyHand", wording::TextSize::Heading, true)),
      m_note(makeLabel("studyNote", wording::TextSize::ReadOut)),
      m_quantity(makeLabel("studyAskedQuantity", wording::TextSize::Heading)),
      m_said(makeLabel("studySaid", wording::TextSize::Heading)),
      m_progress(makeLabel("studyProgress", wording::TextSize::Body)),
      m_field(new QLineEdit)
{
    m_note->setWordWrap(false);
    m_field->setObjectName("studyField");
    m_field->setAccessibleName(tr("What the gauge shows"));
    m_person->setFont(fontFromAfar(wording::TextSize::Large));
    m_note->setFont(fontFromAfar(wording::TextSize::ReadOut));
    m_field->setFont(fontFromAfar(wording::TextSize::Large));
    m_field->setMaximumWidth(12 * m_field->fontMetrics().averageCharWidth() + 8 * wording::gridStep);
    m_field->installEventFilter(this);
    auto *mendButton = new QPushButton(tr("Mend the last one (Up)"));
    mendButton->setObjectName("studyMend");
    auto *row = new wording::WrapRow(2 * wording::gridStep);
    row->addWidget(m_field);
    row->addWidget(mendButton);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(24, 12, 24, 8);
    column->setSpacing(2 * wording::gridStep);
    for (QWidget *part : std::initializer_list<QWidget *>{m_hand, m_person, m_note})
        column->addWidget(part);
    column->addLayout(row);
    for (QWidget *part : std::initializer_list<QWidget *>{m_said, m_quantity, m_progress})
        column->addWidget(part);
    column->addStretch(1);
    connect(m_field, &QLineEdit::returnPressed, this, &TakingPage::enter);
    connect(mendButton, &QPushButton::clicked, this, &TakingPage::mend);
}

void TakingPage::work(std::unique_ptr<Taking> taking, const QString &piano)
{
    constexpr int most = 80; // of a name; longer ones are told apart by their beginning
    m_piano = piano.size() > most ? piano.left(most) + QStringLiteral("…") : piano;
    const bool another = !taking || !m_taking || taking->study().id != m_taking->study().id;
    m_taking = std::move(taking);
    if (another) {
        m_shown.reset();
        m_said->clear();
    }
    if (m_taking)
        ask();
}

void TakingPage::focusField()
{
    m_field->setFocus();
}

void TakingPage::take(const QString &typed)
{
    m_field->setText(typed);
    enter();
}

void TakingPage::refuse(const QString &why)
{
    say(why);
}

void TakingPage::ask()
{
    const auto stop = m_taking->asked();
    if (stop != m_shown)
        m_field->clear();
    m_shown = stop;
    m_field->setEnabled(stop.has_value());
    m_progress->setText(tr("%1 of %2 read. Each value is kept as soon as it is entered; the study goes on here "
                           "whenever you come back.")
                            .arg(m_taking->taken())
                            .arg(m_taking->all()));
    if (!stop)
        return;
    const QString person = QString::fromStdString(stop->person);
    const bool changes = stop->person != m_taking->personBefore();
    m_hand->setText(changes ? tr("The gauge goes to %1.").arg(person) : QString());
    m_hand->setVisible(changes);
    m_person->setText(tr("%1 reads").arg(person));
    m_note->setText(wording::nameOf(stop->note));
    const catalogue::Quantity quantity = m_taking->study().quantity;
    const QString what = wording::nameOf(quantity) + QStringLiteral(": ") + wording::definitionOf(quantity);
    m_quantity->setTextFormat(Qt::PlainText); // a name is no markup
    m_quantity->setText(m_piano.isEmpty() ? what : tr("On “%1”. %2").arg(m_piano, what));
    const QString where = tr("%1, %2").arg(m_person->text(), m_note->text());
    m_field->setAccessibleDescription(m_piano.isEmpty() ? where : tr("%1, on “%2”").arg(where, m_piano));
}

void TakingPage::say(const QString &text)
{
    m_said->setText(text);
}

void TakingPage::enter()
{
    if (!m_taking || m_field->text().trimmed().isEmpty())
        return;
    const auto entered = m_taking->enter(m_field->text().trimmed().toStdString());
    if (!entered) {
        say(tr("Not kept: %1.").arg(wording::faultsText(entered.faults())));
        m_field->selectAll();
        ask();
        return;
    }
    m_field->clear();
    say(tr("%1 is kept.").arg(wording::nameOf(entered.value().note)));
    ask();
    emit written();
}

void TakingPage::mend()
{
    focusField();
    if (!m_taking || !m_taking->mendLast())
        return say(tr("There is no value to mend yet."));
    say(tr("The last value was taken back; read the note again."));
    ask();
    emit written();
}

bool TakingPage::eventFilter(QObject *watched, QEvent *event)
{
    if (watched == m_field && event->type() == QEvent::KeyPress && m_field->text().isEmpty()) {
        auto *key = static_cast<QKeyEvent *>(event);
        if (key->key() == Qt::Key_Up || key->matches(QKeySequence::Undo)) {
            mend();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace hammerline::study_desk
