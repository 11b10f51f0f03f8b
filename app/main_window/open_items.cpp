#include "main_window/open_items.h"

#include "wording/counted.h"
#include "wording/palette.h"
#include "wording/wording.h"

#include <QBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QScreen>

namespace hammerline::main_window {

namespace {

constexpr QSize usualSize{640, 420};

} // namespace

OpenItems::OpenItems(std::vector<review::Item> items, const wording::NumberForm &form, QWidget *parent)
    : QDialog(parent), m_items(std::move(items)), m_list(new QListWidget)
{
    setObjectName("openItems");
    setWindowTitle(tr("The pass was not signed"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto *heading =
        new QLabel(wording::counted(std::ssize(m_items), tr("One item waits for a decision. Enter goes to the note."),
                                    tr("%1 items wait for a decision. Enter goes to the note.")));
    heading->setWordWrap(true);
    heading->setFont(wording::font(wording::TextSize::Heading));
    m_list->setObjectName("openItemList");
    m_list->setAccessibleName(heading->text());
    m_list->setWordWrap(true);
    for (const review::Item &item : m_items)
        m_list->addItem(wording::keyStory(item.verdict, form));
    m_list->setCurrentRow(0);
    connect(m_list, &QListWidget::itemActivated, this,
            [this] { emit chosen(m_items[static_cast<std::size_t>(m_list->currentRow())]); });
    auto *close = new QPushButton(tr("&Close"));
    close->setAutoDefault(false);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    auto *column = new QVBoxLayout(this);
    column->addWidget(heading);
    column->addWidget(m_list, 1);
    column->addWidget(close, 0, Qt::AlignRight);
    resize((usualSize * wording::textScale()).boundedTo(screen()->availableSize()));
    m_list->setFocus();
}

} // namespace hammerline::main_window
