#include "instrument_file/photograph_page.h"

#include "instrument_file/inside/page_parts.h"
#include "wording/file_words.h"

#include <QBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPixmap>
#include <QPushButton>
#include <QTableWidget>

namespace hammerline::instrument_file {

namespace {

constexpr QSize pictureSize{320, 240};

QString wordsOf(const dossier::Photograph &photograph)
{
    const QString view = QString::fromStdString(photograph.view);
    const QString caption = QString::fromStdString(photograph.caption);
    return caption.isEmpty() ? view : view.isEmpty() ? caption : view + ": " + caption;
}

} // namespace

PhotographPage::PhotographPage(QWidget *parent)
    : QWidget(parent),
      m_table(makeTable("photographTable", tr("Photographs in pairs"),
                        {wording::nameOf(dossier::Moment::AsReceived), wording::nameOf(dossier::Moment::AsItLeaves)})),
      m_story(makeHint({}))
{
    m_table->setSelectionBehavior(QAbstractItemView::SelectItems);
    m_table->setIconSize(pictureSize);
    m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_table->verticalHeader()->setDefaultSectionSize(pictureSize.height() + 16);
    m_table->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_table->setWordWrap(true);
    auto *column = columnOf(this);
    auto *row = new QHBoxLayout;
    QPushButton *add = addButton(row, tr("Add a photograph…"), "photographAdd");
    m_change = addButton(row, tr("Its words…"), "photographChange");
    m_remove = addButton(row, tr("Take it out"), "photographRemove");
    row->addStretch(1);
    column->addWidget(m_story);
    column->addLayout(row); // above the pictures, which are higher than a small screen
    column->addWidget(m_table, 1);
    connect(add, &QPushButton::clicked, this, &PhotographPage::addWanted);
    connect(m_change, &QPushButton::clicked, this, [this] { emit changeWanted(chosen()); });
    connect(m_remove, &QPushButton::clicked, this, [this] { emit removeWanted(chosen()); });
    connect(m_table, &QTableWidget::currentCellChanged, this, &PhotographPage::enableButtons);
}

void PhotographPage::show(const std::vector<dossier::Photograph> &photographs, const Loader &load)
{
    const auto pairs = dossier::pairsOf(photographs);
    m_table->setRowCount(static_cast<int>(pairs.size()));
    for (std::size_t index = 0; index < pairs.size(); ++index) {
        put(static_cast<int>(index), 0, pairs[index].received, load);
        put(static_cast<int>(index), 1, pairs[index].leaving, load);
    }
    m_table->setVisible(!pairs.empty());
    m_story->setText(pairs.empty() ? tr("No photographs yet. Photographs of the same view, as received and as it "
                                        "leaves, stand side by side. The logbook keeps copies without the camera's "
                                        "data: no place, no time.")
                                   : tr("The logbook keeps copies without the camera's data: no place, no time."));
    enableButtons();
}

void PhotographPage::put(int row, int column, const dossier::Photograph *photograph, const Loader &load)
{
    auto *item = new QTableWidgetItem;
    m_table->setItem(row, column, item);
    if (photograph == nullptr)
        return item->setText(tr("none of this view"));
    item->setText(wordsOf(*photograph));
    item->setData(Qt::UserRole, QString::fromStdString(photograph->uid));
    QPixmap picture;
    picture.loadFromData(load(photograph->digest), "JPEG");
    item->setIcon(picture.scaled(pictureSize, Qt::KeepAspectRatio, Qt::SmoothTransformation));
}

QString PhotographPage::chosen() const
{
    const QTableWidgetItem *item = m_table->currentItem();
    return item == nullptr ? QString() : item->data(Qt::UserRole).toString();
}

void PhotographPage::enableButtons()
{
    m_change->setEnabled(!chosen().isEmpty());
    m_remove->setEnabled(!chosen().isEmpty());
}

} // namespace hammerline::instrument_file
