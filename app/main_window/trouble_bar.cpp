#include "main_window/trouble_bar.h"

#include "wording/palette.h"

#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace hammerline::main_window {

TroubleBar::TroubleBar(QWidget *parent) : QFrame(parent), m_what(new QLabel), m_safe(new QLabel)
{
    setObjectName("troubleBar");
    setFrameShape(QFrame::NoFrame);
    m_what->setObjectName("troubleText");
    m_what->setFont(wording::font(wording::TextSize::Heading, true));
    m_safe->setObjectName("troubleSafe");
    for (QLabel *label : {m_what, m_safe}) {
        label->setWordWrap(true);
        label->setTextFormat(Qt::PlainText);
    }
    auto *again = new QPushButton(tr("Try again"));
    again->setObjectName("troubleAgain");
    auto *away = new QPushButton(tr("Put away"));
    away->setObjectName("troubleAway");
    connect(again, &QPushButton::clicked, this, &TroubleBar::tryAgain);
    connect(away, &QPushButton::clicked, this, &QWidget::hide);
    auto *words = new QVBoxLayout;
    words->addWidget(m_what);
    words->addWidget(m_safe);
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(24, 8, 24, 8);
    row->addLayout(words, 1);
    row->addWidget(again);
    row->addWidget(away);
    hide();
}

void TroubleBar::tell(const QString &what, bool logbookIsOpen)
{
    m_what->setText(what);
    m_safe->setText(logbookIsOpen
                        ? tr("Safe: every reading whose verdict was shown is on disk. What is typed stays in the field; "
                             "once the cause is mended, press Enter there again.")
                        : tr("Nothing was changed. Mend the cause or choose another file."));
    setAccessibleName(what + ' ' + m_safe->text());
    show();
}

} // namespace hammerline::main_window
