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

/// `“A”, “B”, “C”`, and how many more.
QString namesOf(const EditedWatch::Found &found)
{
    QStringList names;
    for (const auto &[id, edited] : found)
        if (names.size() < mostNamed)
            names << EditedBar::tr("“%1”").arg(edited.name);
    const auto more = static_cast<int>(found.size()) - int(names.size());
    const QString all = names.join(QStringLiteral(", "));
    return more == 0 ? all : EditedBar::tr("%1 and %2 more").arg(all, QString::number(more));
}

QString headingOf(const EditedWatch::Found &found)
{
    if (found.size() > 1)
        return EditedBar::tr("%1 were changed in the logbook by another program.").arg(namesOf(found));
    const std::size_t places = found.begin()->second.places;
    return EditedBar::tr("%1 was changed in the logbook by another program, in %2.")
        .arg(namesOf(found), places == 1 ? EditedBar::tr("one place") : EditedBar::tr("%1 places").arg(places));
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
    : QFrame(parent), m_watch(watch), m_what(new QLabel), m_help(new QLabel)
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
    auto *away = new QPushButton(tr("Put away"));
    away->setObjectName("editedAway");
    connect(away, &QPushButton::clicked, this, [this] {
        m_putAway = m_watch.found();
        hide();
    });
    auto *words = new QVBoxLayout;
    words->addWidget(m_what);
    words->addWidget(m_help);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(24, 8, 24, 8);
    row->addLayout(words, 1);
    row->addWidget(away);
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
    const bool news = std::ranges::any_of(found, [this](const auto &each) {
        const auto known = m_putAway.find(each.first);
        return known == m_putAway.end() || known->second != each.second;
    });
    setVisible(news);
    if (!news)
        return;
    m_what->setText(headingOf(found));
    m_help->setText(helpFor(found, m_watch.path()));
    setAccessibleName(m_what->text() + ' ' + m_help->text());
}

} // namespace hammerline::main_window
