// The dialog that changes the keys of the bench and the list of felt faults, by real keys alone.
#include "bench/keys_dialog.h"

#include "app/bench/bench_desk.h"
#include "bench/key_rules.h"

#include <QApplication>
#include <QDialogButtonBox>
#include <QPushButton>
#include <QTabWidget>
#include <QTableWidget>
#include <QTemporaryDir>

namespace hammerline::bench {
namespace {

class KeysDesk : public BenchDesk {
protected:
    KeysDesk() : dialog(new KeysDialog(BenchKeys(), usualFaults(), &view))
    {
        QObject::connect(dialog, &KeysDialog::ready, &view, [this](const BenchKeys &keys, const auto &faults) {
            chosen = keys;
            words = faults;
            view.setKeys(keys);
            view.setFaultWords(faults);
        });
        dialog->open();
    }
    QLineEdit *keyField(const char *name) { return dialog->findChild<QLineEdit *>(name); }
    QString reason() { return dialog->findChild<QLabel *>("keysReason")->text(); }
    QTableWidget *table() { return dialog->findChild<QTableWidget *>("faultTable"); }
    /// Writes into a cell of the list as people do: go there, type, Enter.
    void write(int row, int column, const QString &text)
    {
        dialog->findChild<QTabWidget *>()->setCurrentIndex(1);
        table()->setFocus();
        table()->setCurrentCell(row, column);
        QTest::keyClick(table(), Qt::Key_F2);
        auto *editor = table()->viewport()->findChild<QLineEdit *>();
        ASSERT_NE(editor, nullptr);
        editor->selectAll();
        QTest::keyClicks(editor, text);
        QTest::keyClick(editor, Qt::Key_Return);
        QCoreApplication::processEvents(); // Qt takes what was written, and the editor away, a moment later
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    void pressOk()
    {
        QTest::keyClick(dialog->findChild<QDialogButtonBox *>()->button(QDialogButtonBox::Ok), Qt::Key_Space);
    }

    KeysDialog *dialog;
    std::optional<BenchKeys> chosen;
    std::vector<FaultWord> words;
};

TEST_F(KeysDesk, AKeyPressedInAFieldActsAtTheBenchAndTheOldOneNoMore)
{
    QTest::keyClick(keyField("back1"), Qt::Key_PageUp);
    QTest::keyClick(keyField("skip1"), 'n');
    pressOk();
    type("3.1");
    press(Qt::Key_PageUp);
    EXPECT_EQ(askedNote(), "A0");
    press('n');
    EXPECT_EQ(askedNote(), "A#0");
    press(Qt::Key_Down);
    EXPECT_EQ(askedNote(), "A#0");
    EXPECT_TRUE(view.findChild<QLabel *>("keyHelp")->text().contains("PgUp"));
}

TEST_F(KeysDesk, EveryActCanHaveAnotherKey)
{
    int key = Qt::Key_F2;
    for (const BenchAct act : allBenchActs())
        QTest::keyClick(keyField((idOf(act) + "1").toUtf8()), static_cast<Qt::Key>(key++));
    pressOk();
    ASSERT_TRUE(chosen);
    key = Qt::Key_F2;
    for (const BenchAct act : allBenchActs())
        EXPECT_EQ(chosen->of(act).front(), QKeySequence(key++)) << idOf(act).toStdString();
}

TEST_F(KeysDesk, AKeyThatIsTakenIsRefusedByNameAndWhatStoodStays)
{
    QTest::keyClick(keyField("skip1"), '*');
    EXPECT_TRUE(reason().contains(nameOf(BenchAct::Back))) << reason().toStdString();
    EXPECT_EQ(keyField("skip1")->text(), "Down");
    QTest::keyClick(keyField("skip1"), 'b');
    EXPECT_TRUE(reason().contains("blocking")) << reason().toStdString();
    QTest::keyClick(keyField("skip1"), Qt::Key_PageDown);
    EXPECT_EQ(reason(), "");
}

TEST_F(KeysDesk, KeysThatBeginAValueOrBelongToFieldsAndMenusAreRefused)
{
    for (const char digit : std::string("0123456789.,"))
        EXPECT_FALSE((QTest::keyClick(keyField("same1"), digit), reason()).isEmpty()) << digit;
    QTest::keyClick(keyField("same1"), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(reason().contains("menu"));
    EXPECT_EQ(keyField("same1")->text(), "=");
}

TEST_F(KeysDesk, BackspaceEmptiesTheOtherKeyButNotTheOnlyOne)
{
    QTest::keyClick(keyField("back2"), Qt::Key_Backspace);
    EXPECT_EQ(keyField("back2")->text(), "");
    QTest::keyClick(keyField("back1"), Qt::Key_Backspace);
    EXPECT_EQ(keyField("back1")->text(), "*");
    EXPECT_FALSE(reason().isEmpty());
}

TEST_F(KeysDesk, TabLeavesAFieldSoThatTheDialogIsWalkedByKeyboard)
{
    keyField("back1")->setFocus();
    QTest::keyClick(keyField("back1"), Qt::Key_Tab);
    EXPECT_EQ(dialog->focusWidget(), keyField("back2"));
    table()->setFocus();
    EXPECT_FALSE(table()->tabKeyNavigation());
}

TEST_F(KeysDesk, DefaultsComeBackAtOnce)
{
    QTest::keyClick(keyField("skip1"), 'n');
    write(0, 1, "sticking");
    QTest::keyClick(dialog->findChild<QPushButton *>("keysDefaults"), Qt::Key_Space);
    pressOk();
    EXPECT_EQ(chosen, BenchKeys());
    EXPECT_EQ(words, usualFaults());
}

TEST_F(KeysDesk, AFaultIsAddedRenamedAndRemoved)
{
    write(0, 1, "sticking");
    QTest::keyClick(dialog->findChild<QPushButton *>("faultAdd"), Qt::Key_Space);
    const int added = table()->rowCount() - 1;
    write(added, 0, "Z");
    write(added, 1, "zinging");
    table()->setCurrentCell(1, 0);
    QTest::keyClick(dialog->findChild<QPushButton *>("faultRemove"), Qt::Key_Space);
    pressOk();
    press('z');
    press('b');
    press('d');
    std::vector<std::string> marked;
    for (const logbook::FaultMark &mark : shop.book.faultMarks(shop.pass.id))
        marked.push_back(mark.fault);
    EXPECT_EQ(marked, (std::vector<std::string>{"sticking", "zinging"}));
}

TEST_F(KeysDesk, AListThatCannotBeIsToldAndTheDialogStays)
{
    write(1, 0, "b");
    pressOk();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_TRUE(reason().contains("blocking") && reason().contains("double striking")) << reason().toStdString();
    EXPECT_FALSE(chosen);
}

TEST(KeyRules, AWordNeedsALetterAndALetterAWord)
{
    EXPECT_FALSE(whyNot({{'1', "one"}}, BenchKeys()).isEmpty());
    EXPECT_FALSE(whyNot({{'x', ""}}, BenchKeys()).isEmpty());
    EXPECT_FALSE(whyNot({{'x', "a; b"}}, BenchKeys()).isEmpty());
    EXPECT_EQ(whyNot(usualFaults(), BenchKeys()), "");
}

TEST(FaultWords, AnEmptiedListStaysEmptyInTheSettings)
{
    const QTemporaryDir folder;
    QSettings settings(folder.filePath("s.ini"), QSettings::IniFormat);
    EXPECT_EQ(faultWordsFrom(settings), usualFaults());
    storeFaultWords(settings, {});
    EXPECT_TRUE(faultWordsFrom(settings).empty());
}

} // namespace
} // namespace hammerline::bench
