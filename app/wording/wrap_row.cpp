#include "wording/wrap_row.h"

#include <QBoxLayout>
#include <QLabel>

#include <algorithm>

namespace hammerline::wording {

namespace {

/// What an item takes of a line; one that wants more than a line holds is made smaller.
QSize sizeOf(const QLayoutItem &item, int width)
{
    const QSize wanted = item.sizeHint();
    return {std::min(wanted.width(), std::max(width, item.minimumSize().width())), wanted.height()};
}

/// The items of one line, each in the middle of its height.
void place(const std::vector<QLayoutItem *> &line, const QRect &area, int top, int height, int gap)
{
    int left = area.left();
    for (QLayoutItem *item : line) {
        const QSize size = sizeOf(*item, area.width());
        item->setGeometry({{left, top + (height - size.height()) / 2}, size});
        left += size.width() + gap;
    }
}

} // namespace

WrapRow::WrapRow(int gap) : m_gap(gap)
{
    setContentsMargins(0, 0, 0, 0);
}

WrapRow::~WrapRow() = default;

void WrapRow::addItem(QLayoutItem *item)
{
    m_items.emplace_back(item);
}

void WrapRow::addPair(QLabel *label, QWidget *field)
{
    label->setBuddy(field);
    auto *pair = new QWidget;
    auto *side = new QHBoxLayout(pair);
    side->setContentsMargins(0, 0, 0, 0);
    side->setSpacing(m_gap);
    side->addWidget(label);
    side->addWidget(field, 1);
    addWidget(pair);
}

int WrapRow::count() const
{
    return static_cast<int>(m_items.size());
}

QLayoutItem *WrapRow::itemAt(int index) const
{
    return index < 0 || index >= count() ? nullptr : m_items[static_cast<std::size_t>(index)].get();
}

QLayoutItem *WrapRow::takeAt(int index)
{
    if (index < 0 || index >= count())
        return nullptr;
    const auto at = m_items.begin() + index;
    QLayoutItem *taken = at->release();
    m_items.erase(at);
    return taken;
}

QSize WrapRow::sizeHint() const
{
    QSize all;
    for (const auto &item : m_items)
        if (!item->isEmpty()) {
            const QSize size = item->sizeHint();
            all = {all.width() + size.width() + (all.width() > 0 ? m_gap : 0), std::max(all.height(), size.height())};
        }
    return all;
}

QSize WrapRow::minimumSize() const
{
    QSize widest;
    for (const auto &item : m_items)
        if (!item->isEmpty())
            widest = widest.expandedTo({item->minimumSize().width(), item->sizeHint().height()});
    return widest;
}

int WrapRow::heightForWidth(int width) const
{
    return walk({0, 0, width, 0}, Deed::Measure);
}

void WrapRow::setGeometry(const QRect &area)
{
    QLayout::setGeometry(area);
    walk(area, Deed::Place);
}

int WrapRow::walk(const QRect &area, Deed deed) const
{
    std::vector<QLayoutItem *> line;
    int width = 0;
    int height = 0;
    int top = area.top();
    const auto endLine = [&] {
        if (deed == Deed::Place)
            place(line, area, top, height, m_gap);
        top += height;
        line.clear();
        width = height = 0;
    };
    for (const auto &item : m_items) {
        if (item->isEmpty())
            continue;
        const QSize size = sizeOf(*item, area.width());
        if (!line.empty() && width + m_gap + size.width() > area.width()) {
            endLine();
            top += m_gap / 2;
        }
        width += size.width() + (line.empty() ? 0 : m_gap);
        height = std::max(height, size.height());
        line.push_back(item.get());
    }
    endLine();
    return top - area.top();
}

} // namespace hammerline::wording
