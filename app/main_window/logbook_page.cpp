#include "main_window/logbook_page.h"

#include <QBoxLayout>
#include <QScrollArea>
#include <QScrollBar>
#include <QSplitter>

namespace hammerline::main_window {

namespace {

constexpr int panelWidth = 260;
constexpr int viewsWidth = 1106;

/// At twice the text size the panel may need more height than a small screen has; its width it keeps.
class PanelArea : public QScrollArea {
public:
    explicit PanelArea(QWidget *panel)
    {
        setFrameShape(QFrame::NoFrame);
        setFocusPolicy(Qt::NoFocus);
        setWidgetResizable(true);
        setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        setWidget(panel);
    }
    [[nodiscard]] QSize minimumSizeHint() const override
    {
        return {widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width(),
                QScrollArea::minimumSizeHint().height()};
    }
};

} // namespace

LogbookPage::LogbookPage(Workshop &workshop, QWidget *parent)
    : QWidget(parent),
      m_panel(new WorkshopPanel(workshop)),
      m_views(new Views(workshop)),
      m_foot(new StripArea(workshop))
{
    auto *middle = new QSplitter(Qt::Horizontal);
    middle->addWidget(new PanelArea(m_panel));
    middle->addWidget(m_views);
    middle->setStretchFactor(1, 1);
    middle->setSizes({panelWidth, viewsWidth});
    middle->setChildrenCollapsible(true);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(middle, 1);
    column->addWidget(m_foot);
    connect(m_views, &Views::blindChanged, m_foot, [this](bool blind) { m_foot->setHidden(blind); });
}

void LogbookPage::setForm(const wording::NumberForm &form)
{
    m_views->setForm(form);
    m_foot->setForm(form);
}

} // namespace hammerline::main_window
