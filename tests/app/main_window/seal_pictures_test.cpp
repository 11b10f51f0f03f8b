// The list of trusted keys and what is told about a record, as people see them; with HAMMERLINE_PICTURES=<folder> each
// is saved to be looked at.
#include "app/main_window/screens.h"
#include "app/main_window/window_desk.h"

#include "main_window/seal_words.h"
#include "main_window/trusted_keys_dialog.h"
#include "wording/dressed_window.h"

#include <QApplication>
#include <QHeaderView>
#include <QMessageBox>
#include <QTableWidget>
#include <QTimer>

namespace hammerline::main_window {
namespace {

class SealPictures : public WindowDesk, public ::testing::WithParamInterface<Screen> {
protected:
    const OnScreen screen{GetParam()};

    SealPictures() { wording::dress(m_window); }
    static void save(QWidget &shown, const char *what)
    {
        EXPECT_LE(shown.width(), 1366);
        EXPECT_LE(shown.height(), 768);
        keepPicture(shown, what, GetParam());
    }
    /// Shows what is told about a record as the window does, and closes it. Says whether trust was offered.
    bool tell(const seal::RecordJudgement &judged, const char *what)
    {
        prompts::DialogPrompts dialogs;
        const prompts::Question question = questionOf(judged, "record.pdf", true);
        QTimer::singleShot(0, qApp, [what] {
            auto *box = qobject_cast<QMessageBox *>(QApplication::activeModalWidget());
            ASSERT_NE(box, nullptr);
            save(*box, what);
            box->reject();
        });
        if (question.choices.isEmpty())
            dialogs.tell(&m_window, {question.title, question.text, question.detail, question.weight});
        else
            EXPECT_EQ(dialogs.ask(&m_window, question), 1);
        return !question.choices.isEmpty();
    }

    QWidget m_window; ///< dressed, since dialogs wear what the window wears that they open over
};

TEST_P(SealPictures, OfTheListAndOfWhatIsTold)
{
    const std::string list = folder.filePath("trusted-keys.txt").toStdString();
    const auto key = [](char digit) { return std::string(40, digit) + "0123456789abcdef01234567"; };
    ASSERT_TRUE(seal::trustKey(list, {key('a'), "Invented Workshop", "2026-03-02"}));
    ASSERT_TRUE(seal::trustKey(list, {key('7'), "Another invented workshop with a long name, upstairs"}));
    auto *dialog = new TrustedKeysDialog(list, shop.stamp().at, prompts, &m_window);
    dialog->show();
    QCoreApplication::processEvents();
    const auto *table = part<QTableWidget>(*dialog, "trustedKeys");
    EXPECT_LE(table->horizontalHeader()->length(), table->viewport()->width()) << "nothing to scroll sideways";
    save(*dialog, "trusted-keys");
    dialog->close();
    exchange::RecordCheck check{.instrumentName = "Blue upright", .issued = shop.stamp().at, .verdicts = 616};
    seal::RecordJudgement judged{
        .finding = seal::Finding::True, .signer = "Invented Workshop", .fingerprint = key('a'), .check = check};
    EXPECT_TRUE(tell(judged, "record-unknown-key"));
    judged.finding = seal::Finding::NameOfAnother;
    judged.check.reset();
    EXPECT_TRUE(tell(judged, "record-name-of-another"));
    check.disagreements.assign(12, "as left, let_off, C#4: the record says in, its readings give out");
    judged = {.finding = seal::Finding::DoesNotFollow, .signer = "Shop", .fingerprint = key('b'), .check = check};
    EXPECT_TRUE(tell(judged, "record-does-not-follow"));
    EXPECT_FALSE(tell({.finding = seal::Finding::Altered}, "record-altered")) << "no key of an altered record";
}

INSTANTIATE_TEST_SUITE_P(Themes, SealPictures, ::testing::ValuesIn(smallScreens()), nameOfScreen);

} // namespace
} // namespace hammerline::main_window
