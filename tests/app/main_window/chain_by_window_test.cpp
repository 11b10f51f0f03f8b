// The chain as people walk it, in the window alone: an instrument is taken in, read, reviewed, conceded, signed, its
// record issued and checked.
#include "app/main_window/window_desk.h"
#include "support/command_run.h"

#include "exchange/exchange.h"
#include "logbook/verify_history.h"

#include <QComboBox>
#include <QDialog>
#include <QListWidget>
#include <QPushButton>

namespace hammerline::main_window {
namespace {

class ChainByWindow : public WindowDesk {
protected:
    ChainByWindow()
    {
        EXPECT_TRUE(window.createLogbook(book()));
        window.show();
        tolerance::ToleranceSet set = support::plainSet();
        set.action = catalogue::ActionKind::Vertical;
        set.entries.erase(catalogue::Quantity::Drop);
        set.entries.erase(catalogue::Quantity::Blow);
        EXPECT_TRUE(
            exchange::writeFile(setFile().toStdString(), exchange::writeToleranceSet(set), exchange::Overwrite::Yes));
    }
    [[nodiscard]] QString book() const { return folder.filePath("chain.hammerline"); }
    [[nodiscard]] QString setFile() const { return folder.filePath("own.json"); }
    [[nodiscard]] QString pdf() const { return folder.filePath("record.pdf"); }
    [[nodiscard]] QDialog &form(const char *name) const { return *part<QDialog>(window, name); }

    /// Two notes, C4 and C#4, judged by let-off alone.
    void takeIn()
    {
        trigger(window, "takeIn");
        QDialog &taken = form("instrumentForm");
        QTest::keyClicks(part<QLineEdit>(taken, "instrumentName"), "Invented upright");
        part<QLineEdit>(taken, "instrumentFirst")->setText("C4");
        part<QLineEdit>(taken, "instrumentLast")->setText("C#4");
        QTest::mouseClick(part(taken, "formAccept"), Qt::LeftButton);
        QDialog &chooser = form("toleranceChooser");
        prompts.willPick(setFile());
        QTest::mouseClick(part(chooser, "toleranceFile"), Qt::LeftButton);
        QTest::mouseClick(part(chooser, "formAccept"), Qt::LeftButton);
    }
    void read(const QString &first, const QString &second)
    {
        trigger(window, "beginPass");
        QDialog &pass = form("passForm");
        auto *purpose = part<QComboBox>(pass, "passPurpose");
        purpose->setCurrentIndex(purpose->findData(static_cast<int>(readings::Purpose::AsLeft)));
        part<QLineEdit>(pass, "passPerson")->setText("Ada");
        QTest::mouseClick(part(pass, "formAccept"), Qt::LeftButton);
        type(window, first);
        type(window, second);
    }
    void sign(const QString &remark)
    {
        prompts.willType(remark);
        trigger(window, "signPass");
    }
    [[nodiscard]] bool isSigned() const
    {
        const auto &shown = window.workshop();
        return decisions::isSigned(shown.book().decisions(shown.pass()->pass.id).standing);
    }
    void issue()
    {
        prompts.willChoose("English, A4");
        prompts.willChoose("It is the first");
        prompts.willChoose("Without a passphrase");
        prompts.willPick(pdf());
        trigger(window, "makeRecord");
    }

    MainWindow window{surroundings()};
};

TEST_F(ChainByWindow, FromTakingInToTheRecordThatIsFoundTrue)
{
    takeIn();
    ASSERT_NE(window.workshop().instrument(), nullptr);
    read("5", "3.2");
    ASSERT_EQ(window.workshop().pass()->readings.size(), 2u);

    sign("ready");
    ASSERT_FALSE(isSigned()) << "a note is out";
    EXPECT_TRUE(part<QListWidget>(window, "openItemList")->item(0)->text().startsWith("C4"));

    window.views().bench()->ask(catalogue::Quantity::LetOff, keyboard::Note(40));
    prompts.willType("the button is at its end");
    trigger(window, "acceptItem");
    sign("ready");
    ASSERT_TRUE(isSigned());
    EXPECT_EQ(window.workshop().instrument()->state, instrument::State::SignedOff);

    issue();
    EXPECT_EQ(prompts.notices().back().title, "The record is made");
    prompts.willPick(pdf());
    trigger(window, "checkRecord");
    EXPECT_EQ(prompts.notices().back().text, "Sealed and unaltered.") << "by the workshop's own key";
    EXPECT_TRUE(prompts.notices().back().detail.contains("Invented upright"));

    const std::string key = folder.filePath("keys/key.p12").toStdString();
    const auto verified = test_support::runCommand({"verify", pdf().toStdString()}, key);
    EXPECT_EQ(verified.status, 0) << verified.out << verified.err;
    EXPECT_TRUE(logbook::verifyHistory(book().toStdString()).whole());
    EXPECT_TRUE(prompts.allUsed());
}

TEST_F(ChainByWindow, TheRecordNamesTheHistoryThatTheLogbookStillHolds)
{
    takeIn();
    read("3.2", "3.2");
    sign("ready");
    issue();
    const std::string key = folder.filePath("keys/key.p12").toStdString();
    const auto held = test_support::runCommand({"verify", book().toStdString(), "--record", pdf().toStdString()}, key);
    EXPECT_EQ(held.status, 0) << held.out << held.err;
    EXPECT_NE(held.out.find("The history holds entry"), std::string::npos) << held.out;
}

} // namespace
} // namespace hammerline::main_window
