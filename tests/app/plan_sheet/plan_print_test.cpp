#include "plan_sheet/plan_sheet.h"

#include "app/plan_sheet/planned_action.h"

#include <QFile>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace hammerline::plan_sheet {
namespace {

class PlanPrint : public ::testing::Test {
protected:
    [[nodiscard]] QString outputOf(const QString &program, const QStringList &arguments) const
    {
        QProcess process;
        process.start(program, arguments);
        process.waitForFinished();
        return QString::fromUtf8(process.readAllStandardOutput());
    }
    void print(paper::Size size)
    {
        const action::Plan plan = action::bestPlan(smallTask());
        QFile file(path);
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(printPlan({.instrument = QStringLiteral("Blue upright"),
                              .pass = QStringLiteral("As found 2026-03-02"),
                              .issued = QStringLiteral("Planned 2026-03-02"),
                              .plan = plan,
                              .size = size}));
    }
    QTemporaryDir folder;
    QString path = folder.filePath(QStringLiteral("plan.pdf"));
};

TEST_F(PlanPrint, NamesEveryNoteToBeTurnedAndIsASoundFile)
{
    for (const paper::Size size : {paper::Size::A4, paper::Size::Letter}) {
        print(size);
        const QString text =
            outputOf(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), path, QStringLiteral("-")});
        EXPECT_TRUE(text.contains(QStringLiteral("Blue upright")));
        for (const action::Move &move : action::bestPlan(smallTask()).moves)
            EXPECT_TRUE(text.contains(QString::fromStdString(move.note.name()).replace('#', QChar(0x266F))))
                << move.note.name();
        EXPECT_TRUE(
            outputOf(QStringLiteral("qpdf"), {QStringLiteral("--check"), path}).contains(QStringLiteral("No syntax")));
        EXPECT_TRUE(text.contains(QStringLiteral("page 1 of 1")));
    }
}

TEST_F(PlanPrint, EmbedsItsFonts)
{
    print(paper::Size::A4);
    const QStringList lines = outputOf(QStringLiteral("pdffonts"), {path}).split('\n', Qt::SkipEmptyParts);
    ASSERT_GT(lines.size(), 2);
    for (const QString &line : lines.mid(2))
        EXPECT_TRUE(line.contains(QStringLiteral(" yes "))) << line.toStdString();
}

} // namespace
} // namespace hammerline::plan_sheet
