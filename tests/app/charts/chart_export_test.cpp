#include "charts/charts.h"

#include "support/lively_pass.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QImage>
#include <QTemporaryDir>

namespace hammerline::charts {
namespace {

class ExportTest : public testing::Test {
protected:
    ExportTest()
    {
        data.now = support::livelyJudgement(1);
        data.form.locale = QLocale::c();
    }

    QByteArray exported(const QString &name)
    {
        const QString path = folder.filePath(name);
        EXPECT_TRUE(exportChart(data, path, wording::printPalette()).ok());
        return contentOf(path);
    }

    static QByteArray contentOf(const QString &path)
    {
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    }

    QTemporaryDir folder;
    ChartData data;
};

TEST_F(ExportTest, TheSuffixChoosesTheFormWhateverItsCase)
{
    EXPECT_FALSE(QImage::fromData(exported("a.PNG"), "PNG").isNull());
    EXPECT_TRUE(exported("a.pdf").startsWith("%PDF-"));
    EXPECT_EQ(exported("a.csv").toStdString(), chartCsv(data));
}

TEST_F(ExportTest, SvgIsVectorsWithTheQuestionAsItsTitle)
{
    const QByteArray svg = exported("a.svg");
    EXPECT_TRUE(svg.contains("<title>" + titleOf(data).toUtf8()));
    EXPECT_FALSE(svg.contains("<image"));
}

TEST_F(ExportTest, PdfHoldsNoPicture)
{
    EXPECT_FALSE(exported("a.pdf").contains("/Subtype /Image"));
}

TEST_F(ExportTest, AnUnknownSuffixIsRefusedAndNothingWritten)
{
    const auto refused = exportChart(data, folder.filePath("a.bmp"), wording::printPalette());
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.fault().problem.find(".svg"), std::string::npos);
    EXPECT_FALSE(QFile::exists(folder.filePath("a.bmp")));
}

TEST_F(ExportTest, AFolderThatIsNotThereIsABrokenWorld)
{
    EXPECT_THROW(static_cast<void>(exportChart(data, folder.filePath("none/a.csv"), wording::printPalette())),
                 outcome::BrokenWorld);
}

TEST_F(ExportTest, AnExistingFileIsReplacedWhole)
{
    QFile old(folder.filePath("a.csv"));
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write(QByteArray(100000, 'x'));
    old.close();
    EXPECT_EQ(exported("a.csv").toStdString(), chartCsv(data));
}

} // namespace
} // namespace hammerline::charts
