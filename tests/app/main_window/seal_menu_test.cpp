// A record that somebody holds is checked in the window, with no logbook open; its key is trusted after a comparison.
#include "app/main_window/window_desk.h"

#include "exchange/exchange.h"
#include "main_window/logbook_files.h"
#include "main_window/trusted_keys_dialog.h"
#include "seal/key_store.h"

#include <QFile>
#include <QPushButton>
#include <QTableWidget>

namespace hammerline::main_window {
namespace {

class RecordInHand : public WindowDesk {
protected:
    RecordInHand()
    {
        for (int note = 1; note <= 88; ++note)
            read(note, note == 40 ? 5 : 3.2);
        sealRecord();
    }
    void read(int note, double mm)
    {
        readings::Reading reading;
        reading.place = {catalogue::Quantity::LetOff, keyboard::Note(note), 1};
        reading.value = units::Length::millimetres(mm);
        reading.typed = std::to_string(mm);
        shop.book.enter(shop.pass.id, reading, shop.stamp());
    }
    /// Another workshop's: sealed with its own key, kept elsewhere.
    void sealRecord()
    {
        const auto record = recordOf(shop.book, shop.grand, shop.stamp());
        ASSERT_TRUE(record);
        ASSERT_TRUE(writeRecord(record.value(), {}, pdf().toStdString(), theirKey()));
        fingerprint = QString::fromStdString(seal::loadKey(theirKey(), {}).value().fingerprint());
    }
    [[nodiscard]] QString pdf() const { return folder.filePath("record.pdf"); }
    [[nodiscard]] std::string theirKey() const { return folder.filePath("theirs/key.p12").toStdString(); }
    [[nodiscard]] std::string list() const { return folder.filePath("keys/trusted-keys.txt").toStdString(); }
    [[nodiscard]] std::vector<seal::TrustedKey> trusted() const { return seal::trustedKeys(list()).value(); }
    void check(const QString &path)
    {
        prompts.willPick(path);
        trigger(window, "checkRecord");
    }
    /// The notice that came last, in one piece.
    [[nodiscard]] QString told() const
    {
        const prompts::Notice &last = prompts.notices().back();
        return last.text + '\n' + last.detail;
    }
    TrustedKeysDialog *openList()
    {
        trigger(window, "trustedKeys");
        return part<TrustedKeysDialog>(window, "trustedKeysDialog");
    }

    MainWindow window{surroundings()};
    QString fingerprint;
};

TEST_F(RecordInHand, IsToldAsSealedByAKeyThatIsNotKnownAndItsVerdictsAsTheReadingsGiveThem)
{
    prompts.willChoose("Close");
    check(pdf());
    const prompts::Question &asked = prompts.questions().back();
    EXPECT_TRUE(asked.text.contains("Sealed and unaltered, by a key that you do not know"));
    EXPECT_TRUE(asked.detail.contains("verdicts follow from the readings"));
    EXPECT_TRUE(asked.detail.contains("Grey grand"));
    QString digits = asked.detail;
    EXPECT_TRUE(digits.remove(' ').remove('\n').contains(fingerprint));
    EXPECT_TRUE(trusted().empty()) << "nothing is trusted by looking";
}

TEST_F(RecordInHand, ItsKeyIsTrustedOnceItWasCompared)
{
    prompts.willChoose("Trust this key…");
    prompts.willChoose("It is the same: trust it");
    check(pdf());
    ASSERT_EQ(trusted().size(), 1u);
    EXPECT_EQ(trusted()[0].fingerprint, fingerprint.toStdString());
    EXPECT_EQ(trusted()[0].since, "2026-03-02");
    check(pdf());
    EXPECT_TRUE(told().contains("Sealed and unaltered.")) << told().toStdString();
    EXPECT_TRUE(told().contains("on your list"));
}

TEST_F(RecordInHand, ItsKeyIsTrustedWhereTheFingerprintTypedInIsTheSameAndNotElse)
{
    for (const QString &typed : {QString(64, 'a'), QString("not a fingerprint")}) {
        prompts.willChoose("Trust this key…");
        prompts.willChoose("Type it in…");
        prompts.willType(typed);
        check(pdf());
        EXPECT_EQ(prompts.notices().back().title, "The key is not trusted");
        EXPECT_TRUE(trusted().empty());
    }
    prompts.willChoose("Trust this key…");
    prompts.willChoose("Type it in…");
    prompts.willType(fingerprint.toUpper().insert(4, ' ').insert(9, ':'));
    check(pdf());
    EXPECT_EQ(trusted().size(), 1u);
}

TEST_F(RecordInHand, AnotherKeyUnderATrustedNameIsToldApart)
{
    const std::string name = seal::loadKey(theirKey(), {}).value().name();
    std::filesystem::create_directories(std::filesystem::path(list()).parent_path());
    ASSERT_TRUE(seal::trustKey(list(), {std::string(64, 'a'), name}));
    prompts.willChoose("Close");
    check(pdf());
    EXPECT_TRUE(prompts.questions().back().text.contains("another key under a name that you trust"));
    EXPECT_EQ(prompts.questions().back().weight, prompts::Weight::Warning);
}

TEST_F(RecordInHand, OneByteTurnedIsToldAsAlteredAndOffersNoTrust)
{
    QFile file(pdf());
    ASSERT_TRUE(file.open(QIODevice::ReadWrite));
    file.seek(file.size() / 2);
    const char turned = static_cast<char>(file.peek(1).at(0) ^ 1);
    file.write(&turned, 1);
    file.close();
    check(pdf());
    EXPECT_TRUE(told().contains("This record was altered")) << told().toStdString();
    EXPECT_TRUE(prompts.questions().empty());
}

TEST_F(RecordInHand, WhatNeverWasARecordIsToldAsSuch)
{
    ASSERT_TRUE(exchange::writeFile(pdf().toStdString(), "a letter", exchange::Overwrite::Yes));
    check(pdf());
    EXPECT_TRUE(told().contains("no record made by Hammerline"));
    check(folder.filePath("missing.pdf"));
    EXPECT_EQ(prompts.notices().back().title, "The record was not checked");
}

TEST_F(RecordInHand, IsNotJudgedByAListThatCannotBeRead)
{
    std::filesystem::create_directories(std::filesystem::path(list()).parent_path());
    ASSERT_TRUE(exchange::writeFile(list(), "no key\n", exchange::Overwrite::Yes));
    check(pdf());
    EXPECT_EQ(prompts.notices().back().title, "The record was not checked");
    const auto *dialog = openList();
    EXPECT_FALSE(part<QLabel>(*dialog, "trustedKeysHint")->text().isEmpty());
    EXPECT_FALSE(part<QPushButton>(*dialog, "trustedKeyRemove")->isEnabled());
}

TEST_F(RecordInHand, GivesItsKeyToTheListAndTheListGivesItUpAgainByKeysAlone)
{
    window.show();
    auto *dialog = openList();
    const auto press = [dialog](const char *button) {
        part<QPushButton>(*dialog, button)->setFocus();
        QTest::keyClick(part<QPushButton>(*dialog, button), Qt::Key_Space);
    };
    auto *table = part<QTableWidget>(*dialog, "trustedKeys");
    EXPECT_EQ(table->rowCount(), 0);
    prompts.willPick(pdf());
    prompts.willChoose("It is the same: trust it");
    press("trustedKeyAdd");
    ASSERT_EQ(table->rowCount(), 1);
    EXPECT_TRUE(part<QLabel>(*dialog, "trustedKeyWhole")->text().remove(' ').remove('\n').contains(fingerprint));
    EXPECT_EQ(table->item(0, 1)->text(), "2026-03-02");
    prompts.willPick(pdf());
    press("trustedKeyAdd");
    EXPECT_TRUE(prompts.notices().back().text.contains("already"));
    prompts.willChoose("Keep it");
    press("trustedKeyRemove");
    EXPECT_EQ(trusted().size(), 1u);
    prompts.willChoose("Take it off");
    press("trustedKeyRemove");
    EXPECT_TRUE(trusted().empty());
    EXPECT_EQ(table->rowCount(), 0);
}

TEST_F(RecordInHand, ACertificateGivesItsKeyTooAndALetterNone)
{
    const auto key = seal::loadKey(theirKey(), {}).value();
    const std::string der = folder.filePath("theirs.der").toStdString();
    ASSERT_TRUE(exchange::writeFile(der, key.certificate(), exchange::Overwrite::Yes));
    const auto found = keyInFile(der);
    ASSERT_TRUE(found);
    EXPECT_EQ(found.value().fingerprint, key.fingerprint());
    EXPECT_EQ(found.value().name, key.name());
    ASSERT_TRUE(exchange::writeFile(der, "a letter", exchange::Overwrite::Yes));
    EXPECT_FALSE(keyInFile(der));
}

TEST_F(RecordInHand, ANameThatWouldTurnTheLineAroundIsShownPlain)
{
    const std::string name = "Shop\xe2\x80\xae"
                             "evil\nsecond line";
    std::filesystem::create_directories(std::filesystem::path(list()).parent_path());
    ASSERT_TRUE(seal::trustKey(list(), {std::string(64, 'b'), name}));
    const QString shown = part<QTableWidget>(*openList(), "trustedKeys")->item(0, 0)->text();
    EXPECT_FALSE(shown.contains('\n'));
    EXPECT_FALSE(shown.contains(QChar(0x202e)));
}

} // namespace
} // namespace hammerline::main_window
