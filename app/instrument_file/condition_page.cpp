#include "instrument_file/condition_page.h"

#include "instrument_file/inside/form_parts.h"
#include "instrument_file/inside/page_parts.h"
#include "wording/file_words.h"
#include "wording/palette.h"

#include <QBoxLayout>
#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

namespace hammerline::instrument_file {

namespace {

constexpr int columnsOfMoment = 2;
constexpr int rowsOfArea = 2;      ///< the second is used where the width is scarce
constexpr int lettersAbreast = 90; ///< of body text, from which on words stand beside their step

int columnOfMoment(dossier::Moment moment)
{
    return 1 + columnsOfMoment * static_cast<int>(moment);
}

QLabel *makeHead(const QString &text)
{
    auto *head = new QLabel(text);
    head->setFont(wording::font(wording::TextSize::Body, true));
    return head;
}

} // namespace

ConditionPage::ConditionPage(QWidget *parent) : QWidget(parent), m_grid(new QGridLayout)
{
    auto *column = columnOf(this);
    column->addWidget(makeHint(tr("What was seen on the day, in the workshop's own words. Each field is stored when it "
                                  "is left.")));
    m_grid->setHorizontalSpacing(3 * wording::gridStep);
    m_grid->setVerticalSpacing(2 * wording::gridStep);
    for (const auto moment : {dossier::Moment::AsReceived, dossier::Moment::AsItLeaves}) {
        m_grid->addWidget(makeHead(wording::nameOf(moment)), 0, columnOfMoment(moment), 1, columnsOfMoment);
        m_grid->setColumnStretch(columnOfMoment(moment) + 1, 100);
    }
    for (int area = 0; area < dossier::areas; ++area) {
        m_grid->addWidget(new QLabel(wording::nameOf(static_cast<dossier::Area>(area))), 1 + rowsOfArea * area, 0);
        for (const auto moment : {dossier::Moment::AsReceived, dossier::Moment::AsItLeaves})
            addFields({moment, static_cast<dossier::Area>(area)});
    }
    m_grid->setColumnStretch(m_grid->columnCount(), 1); // what is left where the fields are at their widest
    arrange(false);
    column->addLayout(m_grid);
    column->addStretch(1);
}

/// Words beside their step, or below it.
void ConditionPage::arrange(bool narrow)
{
    m_narrow = narrow;
    for (const auto &[place, fields] : m_fields) {
        const int row = 1 + rowsOfArea * static_cast<int>(place.area), column = columnOfMoment(place.moment);
        m_grid->removeWidget(fields.grade);
        m_grid->removeWidget(fields.words);
        m_grid->addWidget(fields.grade, row, column, 1, narrow ? columnsOfMoment : 1);
        m_grid->addWidget(fields.words, row + (narrow ? 1 : 0), column + (narrow ? 0 : 1), 1,
                          narrow ? columnsOfMoment : 1);
    }
}

void ConditionPage::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    const bool narrow = width() < lettersAbreast * fontMetrics().averageCharWidth();
    if (narrow != m_narrow)
        arrange(narrow);
}

void ConditionPage::addFields(const dossier::ConditionPlace &place)
{
    const QString name = wording::nameOf(place.area) + ", " + wording::nameOf(place.moment).toLower();
    const QString id =
        QString::fromUtf8(dossier::idOf(place.area)) + '-' + QString::fromUtf8(dossier::idOf(place.moment));
    Fields fields{new QComboBox, new QLineEdit};
    fields.grade->setObjectName("grade-" + id);
    fields.grade->setAccessibleName(tr("%1: step of five").arg(name));
    fields.grade->addItem(tr("not said"), 0);
    for (int grade = 1; grade <= 5; ++grade)
        fields.grade->addItem(wording::nameOf(static_cast<dossier::Grade>(grade)), grade);
    fields.words->setObjectName("words-" + id);
    fields.words->setAccessibleName(tr("%1: in words").arg(name));
    fields.words->setMaxLength(2000);
    fields.words->setMaximumWidth(widestLine(*fields.words));
    connect(fields.grade, &QComboBox::currentIndexChanged, this, [this, place] { tell(place); });
    connect(fields.words, &QLineEdit::editingFinished, this, [this, place] { tell(place); });
    m_fields[place] = fields;
}

void ConditionPage::tell(const dossier::ConditionPlace &place)
{
    const Fields &fields = m_fields.at(place);
    const int grade = fields.grade->currentData().toInt();
    dossier::Condition condition{.words = plain(fields.words)};
    if (grade > 0)
        condition.grade = static_cast<dossier::Grade>(grade);
    if (std::exchange(m_shown[place], condition) != condition)
        emit said(place, condition);
}

void ConditionPage::show(const dossier::Conditions &conditions)
{
    m_shown = conditions;
    for (auto &[place, fields] : m_fields) {
        const dossier::Condition &condition = m_shown[place];
        const QSignalBlocker quiet(fields.grade);
        fields.grade->setCurrentIndex(condition.grade ? static_cast<int>(*condition.grade) : 0);
        if (plain(fields.words) == condition.words)
            continue;
        fields.words->setText(QString::fromStdString(condition.words));
        fields.words->home(false); // longer words are read from their beginning
    }
}

} // namespace hammerline::instrument_file
