#include "instrument_file/studied_row.h"

#include "wording/palette.h"
#include "wording/wording.h"
#include "wording/wrap_row.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>

namespace hammerline::instrument_file {

namespace {

constexpr int fewestLetters = 20; ///< of a study that is too long for the window

QString textOf(const tolerance::FoundUncertainty &found, wording::NumberForm form)
{
    ++form.lengthDecimals; // a digit more than readings have, as wherever an uncertainty stands
    ++form.massDecimals;
    return StudiedRow::tr("%1, %2, %3: %4 either way")
        .arg(wording::nameOf(found.quantity), QString::fromStdString(found.gauge), QString::fromStdString(found.day),
             wording::amountText(found.expanded, form));
}

} // namespace

StudiedRow::StudiedRow(QWidget *parent)
    : QWidget(parent),
      m_studies(new QComboBox),
      m_guarded(new QCheckBox(tr("In only beyond that doubt"))),
      m_take(new QPushButton(tr("Count with it")))
{
    setObjectName("studiedRow");
    m_studies->setObjectName("studiedStudies");
    m_studies->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_studies->setMinimumWidth(fewestLetters * fontMetrics().averageCharWidth());
    m_guarded->setObjectName("studiedGuarded");
    m_guarded->setToolTip(tr("A reading nearer to a limit than the gauge can tell is then close to the limit, not in "
                             "(guarded, ISO 14253-1)."));
    m_take->setObjectName("studiedTake");
    m_take->setToolTip(tr("Makes a set of this instrument's own: its limits stay, its doubt of that quantity comes "
                          "from the study, and its source says so."));
    auto *label = new QLabel(tr("Uncertainty from a gauge study:"));
    label->setBuddy(m_studies);
    auto *row = new wording::WrapRow(2 * wording::gridStep);
    for (QWidget *part : std::initializer_list<QWidget *>{label, m_studies, m_guarded, m_take})
        row->addWidget(part);
    setLayout(row);
    connect(m_studies, &QComboBox::currentIndexChanged, this, &StudiedRow::choose);
    connect(m_take, &QPushButton::clicked, this, [this] {
        using tolerance::Rule;
        if (const auto *found = chosen())
            emit wanted(*found, m_guarded->isChecked() ? Rule::Guarded : Rule::Simple);
    });
    hide();
}

void StudiedRow::offer(std::vector<tolerance::FoundUncertainty> found, const wording::NumberForm &form)
{
    m_found = std::move(found);
    m_studies->clear();
    for (const tolerance::FoundUncertainty &one : m_found)
        m_studies->addItem(textOf(one, form));
    setVisible(!m_found.empty());
}

void StudiedRow::follow(const tolerance::ToleranceSet &set)
{
    m_set = set;
    choose();
}

const tolerance::FoundUncertainty *StudiedRow::chosen() const
{
    const int at = m_studies->currentIndex();
    return at < 0 ? nullptr : &m_found[static_cast<std::size_t>(at)];
}

void StudiedRow::choose()
{
    const auto *found = chosen();
    const auto entry = found != nullptr ? m_set.entries.find(found->quantity) : m_set.entries.end();
    const bool judged = entry != m_set.entries.end();
    m_guarded->setChecked(judged && entry->second.rule == tolerance::Rule::Guarded);
    m_guarded->setEnabled(judged);
    m_take->setEnabled(judged);
    m_studies->setToolTip(m_studies->currentText());
}

} // namespace hammerline::instrument_file
