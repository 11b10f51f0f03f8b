#include "main_window/edited_bar.h"

#include "logbook/daily_backup.h"
#include "wording/palette.h"

#include <QBoxLayout>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace hammerline::main_window {

namespace {

constexpr int mostNamed = 3;
constexpr int mostLetters = 28; ///< of a name; its beginning tells it from others

QString shortName(const QString &name, int most)
{
    return name.size() > most ? name.left(most).trimmed() + QChar(0x2026) : name;
}

/// `“A”, “B”, “C”`, and how many more.
QString namesOf(const EditedWatch::Found &found, int most, int letters)
{
    QStringList names;
    for (const auto &[id, edited] : found)
        if (names.size() < most)
            names << EditedBar::tr("“%1”").arg(shortName(edited.name, letters));
    const auto more = static_cast<int>(found.size()) - int(names.size());
    const QString all = names.join(QStringLiteral(", "));
    return more == 0 ? all : EditedBar::tr("%1 and %2 more").arg(all, QString::number(more));
}

QString headingOf(const EditedWatch::Found &found)
{
    if (found.size() > 1)
        return EditedBar::tr("%1 were changed in the logbook by another program.")
            .arg(namesOf(found, mostNamed, mostLetters));
    const std::size_t places = found.begin()->second.places;
    return EditedBar::tr("%1 was changed in the logbook by another program, in %2.")
        .arg(namesOf(found, mostNamed, mostLetters),
             places == 1 ? EditedBar::tr("one place") : EditedBar::tr("%1 places").arg(places));
}

/// In two lines of a small window.
QString briefHeadingOf(const EditedWatch::Found &found)
{
    constexpr int fewLetters = 16;
    return EditedBar::tr("Changed by another program: %1").arg(namesOf(found, 1, fewLetters));
}

QString helpFor(const EditedWatch::Found &found, const std::string &path)
{
    const QFileInfo file(QString::fromStdString(path));
    const QString barred =
        found.size() == 1
            ? EditedBar::tr("What is shown of it may not be what was read. It is neither sealed nor handed over.")
            : EditedBar::tr("What is shown of them may not be what was read. They are neither sealed nor handed over.");
    return barred + ' ' +
           EditedBar::tr("Each place is listed by:  hammerline verify \"%1\"\nTo have back what stood before, restore "
                         "the newest backup in %2 that verify finds unaltered.")
               .arg(file.fileName(), QFileInfo(QString::fromStdString(logbook::backupFolder(path))).fileName());
}

} // namespace

EditedBar::EditedBar(const EditedWatch &watch, QWidget *parent)
    : QFrame(parent),
      m_watch(watch),
      m_what(new QLabel),
      m_help(new QLabel),
      m_more(new QPushButton(tr("What helps"))),
      m_away(new QPushButton(tr("Put away")))
{
    setObjectName("editedBar");
    setFrameShape(QFrame::NoFrame);
    m_what->setObjectName("editedText");
    m_what->setFont(wording::font(wording::TextSize::Heading, true));
    m_help->setObjectName("editedHelp");
    m_help->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_help->setFocusPolicy(Qt::NoFocus); // the Tab key passes by
    for (QLabel *label : {m_what, m_help}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
    }
    m_more->setObjectName("editedMore");
    m_more->setCheckable(true);
    connect(m_more, &QPushButton::toggled, this, &EditedBar::arrange);
    m_away->setObjectName("editedAway");
    connect(m_away, &QPushButton::clicked, this, [this] {
        m_putAway = m_watch.found();
        hide();
    });
    auto *words = new QVBoxLayout;
    words->addWidget(m_what);
    words->addWidget(m_help);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(24, 8, 24, 8);
    row->addLayout(words, 1);
    auto *buttons = new QVBoxLayout; // one below the other: the words need the width
    buttons->addWidget(m_more);
    buttons->addWidget(m_away);
    row->addLayout(buttons);
    hide();
    connect(&watch, &EditedWatch::begun, this, &EditedBar::begin);
    connect(&watch, &EditedWatch::changed, this, &EditedBar::tell);
}

void EditedBar::begin()
{
    m_putAway.clear();
    hide();
}

void EditedBar::tell()
{
    const EditedWatch::Found &found = m_watch.found();
    std::erase_if(m_putAway, [&found](const auto &each) { return !found.contains(each.first); });
    const bool news = std::ranges::any_of(found, [this](const auto &each) {
        const auto known = m_putAway.find(each.first);
        return known == m_putAway.end() || each.second.places > known->second.places;
    });
    setVisible(news);
    if (!news)
        return;
    m_help->setText(helpFor(found, m_watch.path()));
    setAccessibleName(headingOf(found) + ' ' + m_help->text());
    m_more->setChecked(false);
    arrange();
}

void EditedBar::resizeEvent(QResizeEvent *event)
{
    QFrame::resizeEvent(event);
    arrange();
}

void EditedBar::arrange()
{
    constexpr int part = 6; // of the window's height, that all of it may take
    const EditedWatch::Found &found = m_watch.found();
    if (found.empty())
        return;
    const QMargins rim = layout()->contentsMargins();
    const int buttons = std::max(m_more->sizeHint().width(), m_away->sizeHint().width()) + layout()->spacing();
    const int wide = width() - rim.left() - rim.right() - buttons;
    m_what->setText(headingOf(found));
    const bool fits = m_what->heightForWidth(wide) + m_help->heightForWidth(wide) <= window()->height() / part;
    if (!fits)
        m_what->setText(briefHeadingOf(found));
    m_more->setVisible(!fits);
    m_help->setVisible(fits || m_more->isChecked());
}

} // namespace hammerline::main_window
