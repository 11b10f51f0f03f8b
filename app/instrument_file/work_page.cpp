#include "instrument_file/work_page.h"

#include "instrument_file/inside/page_parts.h"
#include "wording/file_words.h"

#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>

namespace hammerline::instrument_file {

namespace {

QString departureText(const dossier::WorkEntry &entry)
{
    return entry.departure ? WorkPage::tr("◆ departs: %1").arg(QString::fromStdString(entry.why)) : QString();
}

QStringList textsOf(const dossier::WorkEntry &entry)
{
    return {entry.day ? QString::fromStdString(dossier::isoDay(*entry.day)) : WorkPage::tr("not known"),
            wording::nameOf(entry.kind),
            QString::fromStdString(entry.what),
            wording::notesText(entry.notes),
            QString::fromStdString(entry.material),
            QString::fromStdString(entry.person),
            wording::timeText(entry.took),
            departureText(entry)};
}

} // namespace

WorkPage::WorkPage(QWidget *parent)
    : QWidget(parent),
      m_table(makeTable("workTable", tr("Log of work"),
                        {tr("Day"), tr("Kind"), tr("What"), tr("Notes"), tr("Material"), tr("By"), tr("Time"),
                         tr("From the original build")})),
      m_story(makeHint({}))
{
    auto *column = columnOf(this);
    auto *row = new QHBoxLayout;
    QPushButton *add = addButton(row, tr("Write down work…"), "workAdd");
    m_change = addButton(row, tr("Change…"), "workChange");
    m_strike = addButton(row, tr("Strike out…"), "workStrike");
    row->addStretch(1);
    column->addWidget(m_story);
    column->addWidget(m_table, 1);
    column->addLayout(row);
    connect(add, &QPushButton::clicked, this, &WorkPage::addWanted);
    connect(m_change, &QPushButton::clicked, this, [this] { emit changeWanted(keyOfCurrent(m_table)); });
    connect(m_strike, &QPushButton::clicked, this, [this] { emit strikeWanted(keyOfCurrent(m_table)); });
    connect(m_table, &QTableWidget::activated, this, [this] { emit changeWanted(keyOfCurrent(m_table)); });
}

void WorkPage::show(const dossier::Dossier &dossier)
{
    const QString current = keyOfCurrent(m_table);
    m_table->setRowCount(0);
    for (const dossier::WorkEntry &entry : dossier.work)
        addRow(m_table, textsOf(entry), QString::fromStdString(entry.uid));
    fitColumns(m_table);
    makeCurrent(m_table, current);
    const bool any = !dossier.work.empty();
    m_table->setVisible(any);
    m_change->setEnabled(any);
    m_strike->setEnabled(any);
    m_story->setText(any ? tr("%1 of work noted; departures from the original build, which a buyer is told: %n.",
                              nullptr, static_cast<int>(dossier.departures().size()))
                               .arg(wording::timeText(dossier.timeWorked()))
                         : tr("No work yet. Write down what is renewed, repinned, cleaned or recovered, and what was "
                              "found altered when the instrument came."));
}

} // namespace hammerline::instrument_file
