#include "paper/sheet.h"

#include <QPainter>

namespace hammerline::paper {

namespace {

constexpr double sideMargin = 48;
constexpr double topMargin = 64;
constexpr double bottomMargin = 58;

} // namespace

Sheet::Sheet(QSizeF page) : m_page(page)
{
    newPage();
}

QRectF Sheet::body() const
{
    return {sideMargin, topMargin, m_page.width() - 2 * sideMargin, m_page.height() - topMargin - bottomMargin};
}

double Sheet::room() const
{
    return body().bottom() - m_y;
}

void Sheet::newPage()
{
    m_pages.emplace_back();
    m_y = body().top();
}

bool Sheet::needRoom(double height)
{
    if (height <= room())
        return false;
    newPage();
    return true;
}

void Sheet::later(Deed deed)
{
    m_pages.back().push_back(std::move(deed));
}

void Sheet::paragraph(const QString &text, const TextStyle &style)
{
    TextBlock block(text, style, body().width());
    const double step = style.size * style.leading;
    while (block.height() > room()) {
        if (const double here = heightBeforeBreak(block.height(), step, room()); here > 0) {
            auto [fits, rest] = block.split(here);
            place(fits);
            block = std::move(rest);
        } else if (room() >= fullRoom()) {
            break; // higher than a page, and in lines of such a size that it cannot break
        }
        newPage();
    }
    place(block);
    skip(style.size * 0.5);
}

void Sheet::place(const TextBlock &block)
{
    later([block, at = QPointF(body().left(), m_y)](QPainter &painter) { block.paint(painter, at); });
    skip(block.height());
}

void Sheet::heading(const QString &text)
{
    // Never alone at the foot of a page: what follows starts with a table's head and a row.
    needRoom(110);
    if (m_y > body().top())
        skip(8);
    paragraph(text, headingText);
}

void Sheet::chapter(const QString &text)
{
    newPage();
    m_chapters[text] = pageCount();
    paragraph(text, chapterText);
    skip(4);
}

void Sheet::chapterHere(const QString &text, double height)
{
    if (room() < height)
        return chapter(text);
    skip(22);
    m_chapters[text] = pageCount();
    paragraph(text, chapterText);
    skip(4);
}

void Sheet::hairline()
{
    later([y = m_y, area = body()](QPainter &painter) {
        painter.setPen(QPen(QColor(0x99, 0x99, 0x99), 0.5));
        painter.drawLine(QPointF(area.left(), y), QPointF(area.right(), y));
    });
}

int Sheet::pageOf(const QString &chapter) const
{
    const auto found = m_chapters.find(chapter);
    return found == m_chapters.end() ? 0 : found->second;
}

void Sheet::paintPage(int page, QPainter &painter) const
{
    for (const Deed &deed : m_pages[static_cast<std::size_t>(page - 1)]) {
        painter.save();
        deed(painter);
        painter.restore();
    }
}

} // namespace hammerline::paper
