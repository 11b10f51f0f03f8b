#include "bench/inside/asked_board.h"

#include "bench/inside/key_picture.h"
#include "bench/inside/way_dialog.h"
#include "wording/wording.h"

#include <QBoxLayout>
#include <QKeyEvent>
#include <QStyle>

namespace hammerline::bench {

namespace {

/// From the last key of a gauge to the certainty that no other follows.
constexpr int burstEndMilliseconds = 80;

QString sectionOf(const EntrySession &session, keyboard::Note note)
{
    for (const keyboard::Section &section : session.instrument().sections)
        if (section.notes.contains(note))
            return QString::fromStdString(section.name);
    return {};
}

/// "natural · tenor · 2.4 to 4.0 mm, target 3.2 · now 3.4 mm"
QString circumstances(const EntrySession &session, const readings::Place &place, const wording::NumberForm &form)
{
    QStringList parts;
    for (const std::string &fault : session.faultsOf(place.note))
        parts << QString::fromStdString(fault).toUpper();
    if (const auto *back = session.sentBackAt(place.quantity, place.note))
        parts << AskedBoard::tr("sent back by %1: %2")
                     .arg(QString::fromStdString(back->person), QString::fromStdString(back->words));
    if (const QString scale = scaleText(session.typing()); !scale.isEmpty())
        parts << scale;
    if (place.take > 1)
        parts << AskedBoard::tr("take %1").arg(place.take);
    if (const auto limits = session.limits())
        parts << wording::limitsText(*limits, form);
    if (const readings::Reading *standing = session.standing())
        parts << AskedBoard::tr("now %1; Enter keeps it").arg(wording::amountText(standing->value, form));
    parts << (place.note.colour() == keyboard::Colour::Sharp ? AskedBoard::tr("sharp") : AskedBoard::tr("natural"));
    if (const QString section = sectionOf(session, place.note); !section.isEmpty())
        parts << section;
    return parts.join(QStringLiteral("  ·  "));
}

/// The unit of a bare number, which is the pass's, not the one that is shown.
QString typedUnit(const EntrySession &session, catalogue::Quantity quantity)
{
    const bool mass = catalogue::infoOf(quantity).dimension == units::Dimension::Mass;
    return wording::unitText(mass ? units::Unit::Gram : session.pass().unit);
}

QLabel *plainLabel(const QString &name, wording::TextSize size)
{
    auto *label = new QLabel;
    label->setObjectName(name);
    label->setFont(wording::font(size));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    return label;
}

} // namespace

AskedBoard::AskedBoard(QWidget *parent)
    : QWidget(parent),
      m_key(new KeyPicture),
      m_note(new BigText(wording::TextSize::ReadOut)),
      m_field(new BigField),
      m_unit(plainLabel("askedUnit", wording::TextSize::Large)),
      m_what(new BigText(wording::TextSize::Large)),
      m_limits(plainLabel("askedLimits", wording::TextSize::Heading)),
      m_reason(plainLabel("reason", wording::TextSize::Heading))
{
    m_note->setObjectName("askedNote");
    m_note->setWidest(QStringLiteral("C♯4"));
    m_what->setObjectName("askedQuantity");
    m_field->setObjectName("entryField");
    m_field->setAccessibleName(tr("Reading"));
    m_field->setMaxLength(40);
    m_field->installEventFilter(this);
    m_field->setMaximumWidth(m_field->sizeHint().width());
    m_reason->hide();
    m_unit->setWordWrap(false);
    connect(m_field, &QLineEdit::textEdited, this, [this] {
        m_byHand = m_byHand || m_proposed;
        m_proposed = false;
        refuse({});
        keepSign();
        followTyping();
    });
    m_burstEnd.setSingleShot(true);
    m_burstEnd.setInterval(burstEndMilliseconds);
    connect(&m_burstEnd, &QTimer::timeout, this, [this] { emit typed(m_field->text()); });
    arrange();
}

void AskedBoard::arrange()
{
    auto *row = new QHBoxLayout;
    row->setSpacing(6 * wording::gridStep);
    row->addWidget(m_key);
    row->addWidget(m_note);
    row->addWidget(m_field, 1);
    row->addWidget(m_unit);
    row->addStretch(0);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(wording::gridStep);
    column->addLayout(row);
    column->addWidget(m_limits);
    column->addWidget(m_reason);
}

void AskedBoard::ask(const EntrySession &session, const wording::NumberForm &form)
{
    const auto place = session.asked();
    if (!place)
        return;
    m_key->setNote(place->note);
    m_note->setText(wording::nameOf(place->note));
    m_what->setText(wording::nameOf(place->quantity));
    m_what->setToolTip(wording::definitionOf(place->quantity));
    m_unit->setText(typedUnit(session, place->quantity));
    m_digits = session.typing().digits;
    m_signed = catalogue::infoOf(place->quantity).mayBeNegative;
    m_limits->setText(circumstances(session, *place, form));
    m_field->setAccessibleDescription(m_what->text() + ' ' + m_note->text() + ", " + m_limits->text());
}

void AskedBoard::askNothing(const QString &heading, const QString &next)
{
    m_key->setNote({});
    m_note->setText({});
    m_unit->setText({});
    m_what->setText(heading);
    m_limits->setText(next);
}

void AskedBoard::refuse(const QString &reason)
{
    m_reason->setText(reason);
    const bool refused = !reason.isEmpty();
    m_limits->setVisible(!refused);
    m_reason->setVisible(refused);
    if (m_field->property("refused").toBool() == refused)
        return;
    m_field->setProperty("refused", refused);
    m_field->style()->unpolish(m_field);
    m_field->style()->polish(m_field);
}

void AskedBoard::remark(const QString &text)
{
    m_reason->setText(text);
    m_limits->hide();
    m_reason->show();
}

void AskedBoard::askAbout(const QString &question)
{
    refuse(question);
    m_field->selectAll();
}

void AskedBoard::propose(const QString &text)
{
    refuse({});
    m_field->setText(text);
    m_field->selectAll();
    m_proposed = true;
}

void AskedBoard::begin(const QString &text)
{
    refuse({});
    m_field->setText(text);
}

void AskedBoard::followTyping()
{
    const bool full =
        !m_byHand && m_digits > 0 && m_field->text().size() == m_digits && isBareDigits(m_field->text().toStdString());
    m_burstEnd.stop();
    if (m_gaugeTypes && (m_burst.length() >= KeyBurst::sure || (full && m_burst.length() > 1)))
        m_burstEnd.start();
    else if (full)
        emit typed(m_field->text());
}

void AskedBoard::keepSign()
{
    QString text = m_field->text();
    if (m_burst.length() == 2 && m_sign == u'-' && !text.startsWith(u'-'))
        m_field->setText(u'-' + text); // a gauge's minus is no step: taken off, -0.2 would be stored as 0.2
    else if (m_burst.length() > 1 && text.size() > 1 && text.startsWith(u'+'))
        m_field->setText(text.remove(0, 1));
    m_sign = {};
}

bool AskedBoard::takeEnd(const QKeyEvent &key)
{
    const bool enter = key.key() == Qt::Key_Return || key.key() == Qt::Key_Enter;
    const bool tab = key.key() == Qt::Key_Tab && m_burst.length() > KeyBurst::sure && !m_field->text().isEmpty();
    if (!enter && !tab)
        return false;
    m_burst.end();
    m_burstEnd.stop();
    emit typed(m_field->text());
    return true;
}

bool AskedBoard::takeFaultKey(const QKeyEvent &key)
{
    if ((key.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) != Qt::NoModifier || key.text().isEmpty())
        return false;
    for (const FaultWord &word : m_words)
        if (word.key == key.text().at(0).toLower()) {
            emit faultFelt(word.word, !(key.modifiers() & Qt::ShiftModifier));
            return true;
        }
    return false;
}

void AskedBoard::clear()
{
    m_proposed = false;
    m_byHand = false;
    m_burstEnd.stop();
    m_field->clear();
    refuse({});
}

bool AskedBoard::eventFilter(QObject *watched, QEvent *event)
{
    if (watched != m_field || event->type() != QEvent::KeyPress)
        return QWidget::eventFilter(watched, event);
    const auto &key = *static_cast<QKeyEvent *>(event);
    m_burst.follow(key);
    if (takeEnd(key))
        return true;
    if (key.key() == Qt::Key_Escape) {
        clear();
        emit dropped();
        return true;
    }
    if (!m_field->text().isEmpty() && !m_proposed)
        return false;
    const auto act = m_keys.actOf(key);
    if (m_signed && (act == BenchAct::StepDown || key.key() == Qt::Key_Minus))
        return false; // the sign of a value
    if (act) {
        m_sign = key.text().isEmpty() ? QChar() : key.text().at(0);
        emit actWanted(*act);
    }
    return act.has_value() || (m_field->text().isEmpty() && takeFaultKey(key));
}

} // namespace hammerline::bench
