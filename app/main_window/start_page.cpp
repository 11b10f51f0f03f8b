#include "main_window/start_page.h"

#include "wording/palette.h"

#include <QBoxLayout>
#include <QFileInfo>
#include <QIcon>
#include <QLabel>
#include <QPushButton>

namespace hammerline::main_window {

namespace {

constexpr int markSize = 72;

QLabel *label(const QString &text, wording::TextSize size)
{
    auto *made = new QLabel(text);
    made->setFont(wording::font(size));
    made->setWordWrap(true);
    made->setMaximumWidth(720);
    return made;
}

} // namespace

StartPage::StartPage(QWidget *parent) : QWidget(parent), m_recent(new QVBoxLayout)
{
    setObjectName("startPage");
    auto *create = new QPushButton(tr("New logbook…"));
    create->setObjectName("startNew");
    create->setDefault(true);
    auto *open = new QPushButton(tr("Open a logbook…"));
    open->setObjectName("startOpen");
    connect(create, &QPushButton::clicked, this, &StartPage::newWanted);
    connect(open, &QPushButton::clicked, this, &StartPage::openWanted);
    auto *buttons = new QHBoxLayout;
    buttons->addWidget(create);
    buttons->addWidget(open);
    buttons->addStretch(1);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(48, 48, 48, 24);
    column->setSpacing(4 * wording::gridStep);
    auto *mark = new QLabel;
    mark->setPixmap(QIcon(":/icons/hammerline.svg").pixmap(markSize, markSize));
    column->addWidget(mark);
    column->addWidget(label(tr("Hammerline"), wording::TextSize::Large));
    column->addWidget(label(tr("A logbook is one file that holds the instruments of a workshop and every reading taken on "
                               "them. Begin with a new one, take in an instrument, then read it key by key."),
                            wording::TextSize::Heading));
    column->addLayout(buttons);
    column->addLayout(m_recent);
    column->addStretch(1);
}

void StartPage::setRecent(const QStringList &paths)
{
    while (QLayoutItem *item = m_recent->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    if (paths.isEmpty())
        return;
    m_recent->addWidget(label(tr("Last used"), wording::TextSize::Heading));
    for (const QString &path : paths) {
        auto *button = new QPushButton(QFileInfo(path).completeBaseName());
        button->setToolTip(path);
        button->setAccessibleDescription(path);
        button->setObjectName("startRecent");
        connect(button, &QPushButton::clicked, this, [this, path] { emit recentWanted(path); });
        m_recent->addWidget(button, 0, Qt::AlignLeft);
    }
}

} // namespace hammerline::main_window
