#include "instrument_file/drift_page.h"

#include "instrument_file/inside/page_parts.h"
#include "wording/file_words.h"
#include "wording/wording.h"

#include <QBoxLayout>
#include <QLabel>
#include <QTableWidget>

namespace hammerline::instrument_file {

namespace {

QString dayOf(const readings::Pass &pass)
{
    return DriftPage::tr("%1, %2 (%3)")
        .arg(wording::nameOf(pass.purpose), QString::fromStdString(readings::isoDate(pass.began)),
             wording::climateText(pass.climate));
}

QStringList textsOf(const analysis::Drift &drift, const wording::NumberForm &form)
{
    const auto dimension = catalogue::infoOf(drift.quantity).dimension;
    const auto amount = [&](double value) { return units::Amount::fromDisplay(dimension, value); };
    const QString name =
        drift.section.empty() ? wording::nameOf(drift.quantity) : "    " + QString::fromStdString(drift.section);
    return {name,
            QString::number(drift.change.pairs),
            wording::changeText(amount(drift.change.meanChange), form),
            drift.toldApart ? wording::amountText(amount(*drift.toldApart), form) : DriftPage::tr("not known"),
            wording::driftText(drift, form),
            drift.moved ? QString::number(*drift.moved) : QString(),
            wording::nameOf(drift.most) + "  " + wording::changeText(amount(drift.mostChange), form)};
}

} // namespace

DriftPage::DriftPage(QWidget *parent)
    : QWidget(parent),
      m_table(makeTable("driftTable", tr("Drift by quantity and section"),
                        {tr("Quantity, section"), tr("Notes"), tr("Mean change"), tr("Told apart from"), tr("So"),
                         tr("Notes that moved"), tr("Most")})),
      m_story(makeHint({}))
{
    auto *column = columnOf(this);
    column->addWidget(m_story);
    column->addWidget(m_table, 1);
    column->addStretch(0); // while there is no table, the words stay at the top
    showNothing();
}

void DriftPage::show(const readings::Pass &before, const readings::Pass &after,
                     const std::vector<analysis::Drift> &drifts, const wording::NumberForm &form)
{
    m_table->setRowCount(0);
    for (const analysis::Drift &drift : drifts)
        addRow(m_table, textsOf(drift, form), {});
    fitColumns(m_table);
    makeCurrent(m_table, {});
    m_table->setVisible(!drifts.empty());
    m_story->setText(
        tr("%1, then %2. A change counts where it is larger than the expanded uncertainty of both readings "
           "together.")
            .arg(dayOf(before), dayOf(after)));
}

void DriftPage::showNothing()
{
    m_table->setRowCount(0);
    m_table->hide();
    m_story->setText(tr(
        "Nothing to compare yet. Here stands, for each quantity and section, by how much its mean has moved since the "
        "instrument was left, which note moved most, and whether the gauges can tell. For that, measure the "
        "instrument as left, begin a recheck when it comes back, and choose the recheck at the left."));
}

void DriftPage::showWithheld()
{
    showNothing();
    m_story->setText(tr("A spot check of this instrument is being read. What was read before stands here again when "
                        "the last value of its sample is read."));
}

} // namespace hammerline::instrument_file
