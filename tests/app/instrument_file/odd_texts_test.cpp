// What people paste into forms: marks, line ends, both directions of writing, ten thousand characters, each into every
// field of every form of an instrument's file. It is kept letter by letter through the logbook, or the form says why
// not.

#include "instrument_file/condition_page.h"
#include "instrument_file/instrument_file.h"
#include "instrument_file/pass_form.h"
#include "instrument_file/photograph_form.h"
#include "instrument_file/sale_page.h"
#include "instrument_file/work_form.h"
#include "support/small_jpeg.h"
#include "support/workshop_on_disk.h"

#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTest>
#include <gtest/gtest.h>

namespace hammerline::instrument_file {
namespace {

QStringList oddTexts()
{
    return {QStringLiteral("O'Hara \"the\" `grand`; DROP TABLE reading;--"),
            QStringLiteral("\u202ethgir\u202c mark \u05e9\u05dc\u05d5\u05dd"),
            QStringLiteral("two\nlines\r\nand a\ttab"),
            QStringLiteral("<b>&amp;</b> %1 %n \\u0000 =1+1"),
            QString(200, QChar('x')),
            QString(10'000, QChar('z'))};
}

class OddTexts : public ::testing::Test {
protected:
    /// Hands each text to `entered`, field by field, the others as they were.
    template <class Form, class Keep>
    void intoEachField(Form &form, Keep keep)
    {
        for (QLineEdit *field : form.template findChildren<QLineEdit *>()) {
            const QString before = field->text();
            for (const QString &text : oddTexts()) {
                SCOPED_TRACE((field->objectName() + ": " + text.left(30)).toStdString());
                field->setText(text);
                keep();
            }
            field->setText(before);
        }
    }
    template <class Entered, class Store>
    void storeOrSayWhy(const Entered &entered, Store store)
    {
        if (!entered) {
            EXPECT_FALSE(entered.fault().problem.empty());
            ++refused;
            return;
        }
        store(entered.value());
        ++kept;
    }

    support::WorkshopOnDisk shop;
    int kept = 0, refused = 0;
};

TEST_F(OddTexts, OfAnInstrumentAreKeptOrRefusedInWords)
{
    InstrumentForm form{shop.grand};
    const auto store = [&] {
        storeOrSayWhy(form.entered(), [&](const instrument::Instrument &entered) {
            const auto changed = shop.book.changeInstrument(entered, shop.stamp(), {});
            ASSERT_TRUE(changed) << changed.fault().problem;
            EXPECT_EQ(shop.book.instrument(shop.grand.id), entered);
        });
    };
    intoEachField(form, store);
    for (auto *field : form.findChildren<QPlainTextEdit *>())
        for (const QString &text : oddTexts()) {
            field->setPlainText(text);
            store();
        }
    EXPECT_GT(kept, 12);
    EXPECT_GT(refused, 12) << "fields of figures";
}

TEST_F(OddTexts, OfAPassAreKeptOrRefusedInWords)
{
    PassForm form(shop.pass, catalogue::ActionKind::Grand);
    intoEachField(form, [&] {
        storeOrSayWhy(form.entered(), [&](const readings::Pass &entered) {
            shop.book.changePass(entered, shop.stamp(), {});
            EXPECT_EQ(shop.book.pass(shop.pass.id), entered);
        });
    });
    EXPECT_GT(kept, 12);
    EXPECT_GT(refused, 12);
}

TEST_F(OddTexts, OfWorkAreKeptOrRefusedInWords)
{
    const auto known = shop.book.addWork(shop.grand.id, {.what = "hammers"}, shop.stamp()).value();
    WorkForm form(known, shop.grand.compass);
    intoEachField(form, [&] {
        storeOrSayWhy(form.entered(), [&](const dossier::WorkEntry &entered) {
            const auto changed = shop.book.changeWork(shop.grand.id, entered, shop.stamp(), {});
            ASSERT_TRUE(changed) << changed.fault().problem;
            EXPECT_EQ(shop.book.dossier(shop.grand.id).work.front(), entered);
        });
    });
    EXPECT_GT(kept, 12);
    EXPECT_GT(refused, 6);
}

TEST_F(OddTexts, OfAPhotographAreKept)
{
    const std::string jpeg = support::smallJpeg(8, 8);
    const auto known = shop.book.addPhotograph(shop.grand.id, {.view = "action"}, jpeg, shop.stamp()).value();
    PhotographForm form(known, QByteArray::fromStdString(jpeg), {"action"});
    intoEachField(form, [&] {
        ASSERT_TRUE(shop.book.changePhotograph(shop.grand.id, form.entered(), shop.stamp()));
        EXPECT_EQ(shop.book.dossier(shop.grand.id).photographs.front(), form.entered());
        ++kept;
    });
    EXPECT_GE(kept, 12) << "view and caption";
}

TEST_F(OddTexts, OfSaleAndConditionAreKeptAsTheyAreTold)
{
    SalePage sale;
    sale.show(dossier::Sale{});
    QObject::connect(&sale, &SalePage::noted, &sale, [&](const dossier::Sale &noted) {
        shop.book.noteSale(shop.grand.id, noted, shop.stamp());
        EXPECT_EQ(shop.book.dossier(shop.grand.id).sale, noted);
        ++kept;
    });
    for (auto *field : sale.findChildren<QLineEdit *>())
        for (const QString &text : oddTexts()) {
            field->setText(text);
            QTest::keyClick(field, Qt::Key_Return);
        }
    EXPECT_EQ(kept, 3 * oddTexts().size());
    ConditionPage condition;
    condition.show(dossier::Conditions{});
    QObject::connect(&condition, &ConditionPage::said, &condition, [&](const auto &place, const auto &said) {
        shop.book.sayCondition(shop.grand.id, place, said, shop.stamp());
        EXPECT_EQ(shop.book.dossier(shop.grand.id).conditions.at(place), said);
        ++kept;
    });
    kept = 0;
    auto *words = condition.findChild<QLineEdit *>("words-case-as-received");
    for (const QString &text : oddTexts()) {
        words->setText(text);
        QTest::keyClick(words, Qt::Key_Return);
    }
    EXPECT_EQ(kept, oddTexts().size());
}

} // namespace
} // namespace hammerline::instrument_file
