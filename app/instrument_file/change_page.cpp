#include "instrument_file/change_page.h"

#include "analysis/outliers.h"
#include "instrument_file/inside/page_parts.h"
#include "wording/claim_words.h"
#include "wording/palette.h"
#include "wording/wording.h"
#include "wording/wrap_row.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QTableWidget>
#include <QTextBrowser>
#include <QUrl>

#include <algorithm>

namespace hammerline::instrument_file {

namespace {

using analysis::QuantityChange;

QString nameOfPass(const readings::Pass &pass)
{
    return ChangePage::tr("%1, %2, %3")
        .arg(wording::nameOf(pass.purpose), QString::fromStdString(readings::isoDate(pass.began)),
             pass.person.empty() ? ChangePage::tr("nobody named") : QString::fromStdString(pass.person));
}

QString robustText(const QuantityChange &change, const wording::NumberForm &form)
{
    const auto mad = units::Amount::fromDisplay(catalogue::infoOf(change.quantity).dimension, change.changes.mad);
    QString median = wording::figureText(change.changes.median, change.quantity, form);
    median.chop(wording::unitText(catalogue::infoOf(change.quantity).dimension, form).size() + 1);
    return ChangePage::tr("%1 (%2)").arg(median, wording::bareText(mad, form));
}

QString count(const std::optional<int> &number)
{
    return number ? QString::number(*number) : QStringLiteral("\u2013");
}

QStringList textsOf(const QuantityChange &change, const wording::NumberForm &form)
{
    const analysis::Comparison &made = change.change;
    return {wording::nameOf(change.quantity),
            QString::number(made.pairs),
            wording::figureText(made.meanChange, change.quantity, form),
            wording::spanText(made.ci95Low, made.ci95High, change.quantity, form),
            wording::testText(made, form),
            wording::spanText(made.agreementLow, made.agreementHigh, change.quantity, form),
            robustText(change, form),
            ChangePage::tr("%1 \u2192 %2").arg(count(made.outBefore), count(made.outAfter)),
            count(made.mended),
            count(made.spoiled),
            QString::number(change.outliers.size())};
}

/// A name that goes to its note.
QString linked(keyboard::Note note)
{
    return QStringLiteral("<a href=\"note:%1\">%2</a>").arg(note.number()).arg(wording::nameOf(note));
}

QString paragraph(const QString &head, const QStringList &names)
{
    return names.isEmpty() ? QString()
                           : QStringLiteral("<p><b>%1</b> %2</p>").arg(head, names.join(QStringLiteral(", ")));
}

QStringList linked(const std::vector<keyboard::Note> &notes)
{
    QStringList names;
    for (const keyboard::Note note : notes)
        names << linked(note);
    return names;
}

QString medianParagraph(const QuantityChange &change, const wording::NumberForm &form)
{
    const auto amount = [&](double figure) {
        return wording::amountText(units::Amount::fromDisplay(catalogue::infoOf(change.quantity).dimension, figure),
                                   form);
    };
    return "<p>" +
           ChangePage::tr("Median %1 before, %2 after (median absolute deviation %3 before, %4 after).")
               .arg(amount(change.before.median), amount(change.after.median), amount(change.before.mad),
                    amount(change.after.mad)) +
           "</p>";
}

QString storyOf(const QuantityChange &change, const wording::NumberForm &form)
{
    QStringList outliers;
    for (const analysis::Outlier &outlier : change.outliers)
        outliers << ChangePage::tr("%1 by %2")
                        .arg(linked(outlier.note), wording::figureText(outlier.change, change.quantity, form));
    const QString rule =
        ChangePage::tr("Changed unlike the rest (modified z-score over %1, Iglewicz and Hoaglin 1993):")
            .arg(wording::numberText(analysis::outlyingScore, 1, form));
    return QStringLiteral("<p><b>%1.</b> %2</p>")
               .arg(wording::nameOf(change.quantity), wording::claimText(change, form)) +
           paragraph(ChangePage::tr("Mended, out before and not after:"), linked(change.mended)) +
           paragraph(ChangePage::tr("Spoiled, out after and not before:"), linked(change.spoiled)) +
           paragraph(rule, outliers) + medianParagraph(change, form);
}

} // namespace

ChangePage::ChangePage(QWidget *parent)
    : QWidget(parent),
      m_before(new QComboBox),
      m_after(new QComboBox),
      m_table(makeTable("changeTable", tr("Before and after, by quantity"),
                        {tr("Quantity"), tr("Notes"), tr("Mean change"), tr("95 % interval"), tr("Paired t test"),
                         tr("19 of 20 by"), tr("Median (MAD)"), tr("Out"), tr("Mended"), tr("Spoiled"), tr("Apart")})),
      m_story(new QTextBrowser)
{
    m_before->setObjectName("changeBefore");
    m_before->setAccessibleName(tr("Before"));
    m_after->setObjectName("changeAfter");
    m_after->setAccessibleName(tr("After"));
    m_story->setObjectName("changeStory");
    m_story->setAccessibleName(tr("What can be claimed"));
    m_story->setOpenLinks(false);
    m_story->setFrameShape(QFrame::NoFrame);
    m_story->viewport()->setAutoFillBackground(false);
    m_table->setFont(wording::font(wording::TextSize::Small)); // eleven columns beside the workshop's panel
    m_table->verticalHeader()->setDefaultSectionSize(2 * m_table->fontMetrics().height());
    auto *head = new wording::WrapRow(2 * wording::gridStep);
    head->addPair(new QLabel(tr("Before:")), m_before);
    head->addPair(new QLabel(tr("After:")), m_after);
    auto *column = columnOf(this);
    column->addLayout(head);
    column->addWidget(m_table, 1);
    column->addWidget(m_story, 1);
    for (QComboBox *box : {m_before, m_after})
        connect(box, &QComboBox::activated, this, [this] {
            emit passesChosen(m_before->currentData().toLongLong(), m_after->currentData().toLongLong());
        });
    connect(m_table, &QTableWidget::currentCellChanged, this, &ChangePage::tellChosen);
    connect(m_table->verticalHeader(), &QHeaderView::sectionResized, this, &ChangePage::fitHeight);
    connect(m_story, &QTextBrowser::anchorClicked, this, &ChangePage::follow);
}

void ChangePage::show(Content content, const wording::NumberForm &form)
{
    m_content = std::move(content);
    m_form = form;
    fillPasses(m_before, m_content.before);
    fillPasses(m_after, m_content.after);
    fillTable();
    tellChosen();
}

void ChangePage::fillPasses(QComboBox *box, readings::PassId chosen)
{
    const QSignalBlocker quiet(box);
    box->clear();
    for (const readings::Pass &pass : m_content.passes)
        box->addItem(nameOfPass(pass), static_cast<qlonglong>(pass.id));
    box->setCurrentIndex(box->findData(static_cast<qlonglong>(chosen)));
    box->setEnabled(box->count() > 1);
}

void ChangePage::fillTable()
{
    const QSignalBlocker quiet(m_table);
    const QString key = keyOfCurrent(m_table);
    m_table->setRowCount(0);
    for (const QuantityChange &change : m_content.changes) {
        const auto id = catalogue::idOf(change.quantity);
        addRow(m_table, textsOf(change, m_form), QString::fromUtf8(id.data(), static_cast<qsizetype>(id.size())));
    }
    for (int column = 0; column < m_table->columnCount(); ++column)
        m_table->horizontalHeaderItem(column)->setFont(m_table->font());
    m_table->horizontalHeaderItem(3)->setToolTip(tr("Of the mean change, Student"));
    m_table->horizontalHeaderItem(5)->setToolTip(
        tr("19 of 20 notes changed by so much: mean ± 1.96 standard deviations (Bland and Altman 1986)"));
    m_table->horizontalHeaderItem(6)->setToolTip(tr("Of the changes; MAD: median absolute deviation"));
    m_table->horizontalHeaderItem(10)->setToolTip(tr("Notes that changed unlike the rest"));
    fitColumns(m_table);
    makeCurrent(m_table, key);
    fitHeight();
    m_table->setVisible(!m_content.changes.empty());
}

/// No higher than its rows, so that the words have the rest.
void ChangePage::fitHeight()
{
    const QHeaderView &heads = *m_table->horizontalHeader();
    const int rows = m_table->verticalHeader()->length() + std::max(heads.sizeHint().height(), heads.minimumHeight());
    m_table->setMaximumHeight(rows + m_table->horizontalScrollBar()->sizeHint().height() + wording::gridStep);
}

const QuantityChange *ChangePage::chosen() const
{
    const auto row = static_cast<std::size_t>(std::max(m_table->currentRow(), 0));
    return row < m_content.changes.size() ? &m_content.changes[row] : nullptr;
}

void ChangePage::tellChosen()
{
    const QuantityChange *change = chosen();
    if (change != nullptr)
        return m_story->setHtml(storyOf(*change, m_form));
    if (m_content.withheld)
        return m_story->setPlainText(tr("A spot check of this instrument is being read. What was read before stands "
                                        "here again when the last value of its sample is read."));
    m_story->setPlainText(m_content.passes.size() < 2
                              ? tr("Nothing to compare yet. Two passes with readings are needed: one as found and one "
                                   "as left tell what the work came to.")
                              : tr("No note was read in both passes for the same quantity."));
}

void ChangePage::follow(const QUrl &link)
{
    bool isNumber = false;
    const int number = link.path().toInt(&isNumber);
    if (const QuantityChange *change = chosen(); change != nullptr && isNumber && link.scheme() == "note")
        emit noteChosen(change->quantity, keyboard::Note(number));
}

} // namespace hammerline::instrument_file
