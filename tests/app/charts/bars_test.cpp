// Rows with two bars each. With HAMMERLINE_GALLERY set to a folder, the pictures are kept there.
#include "charts/bars.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QTemporaryDir>

namespace hammerline::charts {
namespace {

BarsData bars(int rows)
{
    BarsData data{.title = "How much is out, as found and as left?", .answer = "All together: 31 %", .axis = "Out (%)"};
    data.firstName = "as found";
    data.secondName = "as left";
    for (int row = 0; row < rows; ++row)
        data.rows.push_back({QString("Person %1").arg(row), 10.0 + 7 * row, 1.0 + row, "many", "few"});
    data.csv = "person,out\r\n";
    return data;
}

QImage painted(const BarsData &data, const wording::Palette &palette, QSize size = {900, 420})
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(Qt::magenta);
    QPainter painter(&image);
    renderBars(painter, image.rect(), data, palette, 12);
    return image;
}

TEST(Bars, FillTheirRectangleAndPrintUsesNoColour)
{
    for (const int rows : {0, 1, 5, 40}) {
        const QImage image = painted(bars(rows), wording::printPalette());
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                ASSERT_EQ(image.pixelColor(x, y).hsvSaturation(), 0) << x << ',' << y;
        if (const QString folder = qEnvironmentVariable("HAMMERLINE_GALLERY"); !folder.isEmpty())
            image.save(QString("%1/bars-%2.png").arg(folder).arg(rows));
    }
}

TEST(Bars, OfMoreRowsThanFitTheLastAreKeptWhereAsked)
{
    BarsData data = bars(40);
    const QImage first = painted(data, wording::paletteOf(wording::Theme::Light));
    data.keepLast = true;
    EXPECT_NE(first, painted(data, wording::paletteOf(wording::Theme::Light)));
}

TEST(Bars, AreWrittenInEveryForm)
{
    const QTemporaryDir folder;
    const auto written = [&](const QString &name) {
        const QString path = folder.filePath(name);
        EXPECT_TRUE(exportBars(bars(3), path, wording::printPalette()).ok());
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    };
    EXPECT_EQ(written("a.csv"), "person,out\r\n");
    EXPECT_TRUE(written("a.pdf").startsWith("%PDF-"));
    EXPECT_TRUE(written("a.svg").contains("<title>How much is out"));
    EXPECT_FALSE(QImage::fromData(written("a.png"), "PNG").isNull());
    EXPECT_FALSE(exportBars(bars(3), folder.filePath("a.doc"), wording::printPalette()).ok());
}

} // namespace
} // namespace hammerline::charts
