#include "paper/paper.h"

#include "outcome/outcome.h"

#include <QBuffer>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

namespace hammerline::paper {

namespace {

constexpr double pointsPerInch = 72;

QPageSize pageSizeOf(Size size)
{
    return QPageSize(size == Size::Letter ? QPageSize::Letter : QPageSize::A4);
}

} // namespace

QSizeF pointsOf(Size size)
{
    return pageSizeOf(size).size(QPageSize::Point);
}

QByteArray paintedPages(const Sheet &sheet, Size size, const Frame &frame, const QString &title)
{
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setPdfVersion(QPagedPaintDevice::PdfVersion_1_6);
    writer.setPageSize(pageSizeOf(size));
    writer.setPageMargins(QMarginsF());
    writer.setTitle(title);
    QPainter painter;
    if (!painter.begin(&writer))
        throw outcome::BrokenWorld("The pages cannot be painted. Nothing was written.");
    const double scale = writer.resolution() / pointsPerInch;
    for (int page = 1; page <= sheet.pageCount(); ++page) {
        if (page > 1)
            writer.newPage();
        painter.resetTransform();
        painter.scale(scale, scale);
        sheet.paintPage(page, painter);
        frame(painter, page);
    }
    painter.end();
    return bytes;
}

} // namespace hammerline::paper
