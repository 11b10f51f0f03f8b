#pragma once
// The paper before it is printed: a run of pages onto which blocks are set one below the other. Nothing is painted
// while setting; each block leaves a deed for later. So the number of pages, and the page on which a chapter stands,
// are known when the first page is painted.

#include "paper/text_block.h"

#include <QRectF>
#include <QSizeF>
#include <QString>

#include <functional>
#include <map>
#include <vector>

class QPainter;

namespace hammerline::paper {

/// Type of the inner pages: small and even.
inline constexpr TextStyle bodyText{9, false, 0, 1.45};
inline constexpr TextStyle smallText{7, false, 0, 1.4};
inline constexpr TextStyle quietText{8, false, 85, 1.4};
inline constexpr TextStyle chapterText{20, true, 0, 1.3};
inline constexpr TextStyle headingText{11, true, 0, 1.4};

class Sheet {
public:
    using Deed = std::function<void(QPainter &)>;

    explicit Sheet(QSizeF page);

    [[nodiscard]] QSizeF pageSize() const { return m_page; }
    /// Between the margins, header and footer left out.
    [[nodiscard]] QRectF body() const;
    [[nodiscard]] double y() const { return m_y; }
    [[nodiscard]] double room() const;
    /// Height that a fresh page has.
    [[nodiscard]] double fullRoom() const { return body().height(); }

    void newPage();
    /// A new page where less than `height` is left; says whether it turned.
    bool needRoom(double height);
    void skip(double height) { m_y += height; }
    /// Later, on the page that is being set now.
    void later(Deed deed);

    /// Breaks where it is long and the page has too little room for it.
    void paragraph(const QString &text, const TextStyle &style = bodyText);
    void heading(const QString &text);
    /// Starts a chapter on a fresh page and remembers where it stands.
    void chapter(const QString &text);
    /// Starts a chapter where the last one ended if at least `height` is left.
    void chapterHere(const QString &text, double height);
    void hairline();

    [[nodiscard]] int pageCount() const { return static_cast<int>(m_pages.size()); }
    /// From 1; 0 for a chapter that is not there. Known once everything is set.
    [[nodiscard]] int pageOf(const QString &chapter) const;
    void paintPage(int page, QPainter &painter) const; ///< page from 1

private:
    void place(const TextBlock &block);

    QSizeF m_page;
    double m_y = 0;
    std::vector<std::vector<Deed>> m_pages;
    std::map<QString, int> m_chapters;
};

} // namespace hammerline::paper
