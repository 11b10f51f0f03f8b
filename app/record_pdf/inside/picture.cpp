#include "record_pdf/inside/pages.h"

#include <QPainter>

namespace hammerline::record_pdf {

QImage pictureOf(const sale_record::SaleRecord &record, const dossier::Photograph &photograph)
{
    const auto found = record.pictures.find(photograph.digest);
    if (found == record.pictures.end())
        return {};
    const auto *bytes = reinterpret_cast<const uchar *>(found->second.data());
    // Without transparency and in RGB: what is built to PDF/A takes no other.
    return QImage::fromData(bytes, static_cast<int>(found->second.size())).convertToFormat(QImage::Format_RGB32);
}

void paintPicture(QPainter &painter, const QRectF &place, const QImage &picture)
{
    if (picture.isNull())
        return;
    QRectF at(QPointF(), QSizeF(picture.size()).scaled(place.size(), Qt::KeepAspectRatio));
    at.moveTopLeft(place.topLeft());
    painter.drawImage(at, picture);
}

} // namespace hammerline::record_pdf
