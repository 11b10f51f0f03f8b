// The whole chain of one instrument: taken in, measured, planned, set, reviewed, conceded, signed, issued, verified,
// tampered with, visited again, issued anew. What the lead does in the window is done through the logbook's verbs; the
// rest are the commands a script would call. Another program's hand is the sqlite3 shell.

#include "support/command_run.h"

#include "exchange/tolerance_json.h"
#include "logbook/logbook.h"
#include "logbook/to_review.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <random>

namespace hammerline {
namespace {

using test_support::CommandRun;
using test_support::fileText;
using test_support::linesOf;
using test_support::runCommand;
using test_support::ScratchFolder;
using testing::HasSubstr;

constexpr int noteC4 = 40;
const logbook::Stamp lead{readings::parseRfc3339("2026-03-05T09:00:00Z").value(), "Lea"};

/// Let-off 3.2 ± 0.5 mm.
tolerance::ToleranceSet shopSet()
{
    const auto mm = [](double value) { return units::Amount(units::Length::millimetres(value)); };
    tolerance::ToleranceSet set;
    set.name = "Shop";
    set.entries[catalogue::Quantity::LetOff].both = {{keyboard::Note(1), mm(2.7), mm(3.2), mm(3.7), {}, {}}};
    return set;
}

class Chain : public ::testing::Test {
protected:
    Chain() : m_pdf(file("record.pdf"))
    {
        instrument::Instrument taken;
        taken.uid = std::string(32, '7');
        taken.name = "Invented upright";
        taken.toleranceId = "Shop";
        taken.toleranceText = exchange::writeToleranceSet(shopSet());
        auto made = logbook::Logbook::create(book(), lead).value();
        m_instrument = made.addInstrument(taken, lead).value();
        m_set = m_folder.write("shop.json", taken.toleranceText);
    }
    [[nodiscard]] std::string file(const std::string &name) const { return m_folder.file(name); }
    [[nodiscard]] std::string book() const { return file("shop.hammerline"); }
    [[nodiscard]] std::string key() const { return file("keys/key.p12"); }

    /// 88 notes around `middle`; C4 at `ofC4`. The path.
    [[nodiscard]] std::string readingsFile(const std::string &name, double middle, double spread, double ofC4) const
    {
        std::string csv = "note,let_off (mm)\n";
        for (int note = 1; note <= 88; ++note) {
            const double wave = ((note * 37) % 23 - 11) / 11.0;
            const double value = note == noteC4 ? ofC4 : std::round((middle + spread * wave) * 10) / 10;
            csv += keyboard::Note(note).name() + ',' + std::to_string(value) + '\n';
        }
        return m_folder.write(name, csv);
    }
    void measure(const std::string &csv, const std::string &purpose) const
    {
        const auto ran =
            runCommand({"import", book(), csv, "--instrument", "1", "--purpose", purpose, "--person", "Ada"});
        ASSERT_EQ(ran.status, 0) << ran.err;
    }
    [[nodiscard]] CommandRun verify(const std::string &what) const { return runCommand({"verify", what}, key()); }
    [[nodiscard]] CommandRun issue(const std::string &to, std::vector<std::string> more = {}) const
    {
        more.insert(more.begin(), {"record", book(), "--instrument", "1", "--to", to});
        return runCommand(more, key());
    }
    [[nodiscard]] std::string pagesOf(const std::string &pdf) const
    {
        EXPECT_EQ(std::system(("pdftotext -layout '" + pdf + "' '" + file("pages.txt") + "'").c_str()), 0);
        return fileText(file("pages.txt"));
    }
    [[nodiscard]] outcome::Outcome<decisions::StandingChange> sign(readings::PassId pass) const
    {
        auto opened = logbook::Logbook::open(book());
        return opened.signPass(pass, shopSet(), {m_instrument.toleranceId, m_instrument.toleranceText}, lead, "ready");
    }
    /// Accepts C4, 4.1 mm, in the pass.
    void concede(readings::PassId pass) const
    {
        auto opened = logbook::Logbook::open(book());
        decisions::Decision item{.quantity = catalogue::Quantity::LetOff, .note = keyboard::Note(noteC4)};
        item.value = units::Length::millimetres(4.1);
        item.words = "the button is at its end";
        ASSERT_TRUE(opened.accept(pass, {item}, lead));
    }
    /// As found, then as left with C4 out, conceded and signed, and the record issued.
    void issueFirst()
    {
        measure(readingsFile("found.csv", 4.0, 1.2, 6), "as-found");
        measure(readingsFile("left.csv", 3.2, 0.3, 4.1), "as-left");
        concede(2);
        ASSERT_TRUE(sign(2));
        const auto issued = issue(m_pdf);
        ASSERT_EQ(issued.status, 0) << issued.err;
    }
    void expectEveryTamperingOfTheRecordFound() const
    {
        const std::string sealed = fileText(m_pdf);
        std::mt19937 random(20260305);
        for (int turn = 0; turn < 60; ++turn) {
            std::string turned = sealed;
            const std::size_t at = random() % sealed.size();
            turned[at] = static_cast<char>(turned[at] ^ (1 << (random() % 8)));
            ASSERT_EQ(verify(m_folder.write("turned.pdf", turned)).status, 1) << "byte " << at;
        }
    }
    /// What `verify` says of a copy of the logbook after the sqlite3 shell ran `sql` on it.
    [[nodiscard]] CommandRun afterShell(const std::string &sql) const
    {
        std::filesystem::copy_file(book(), file("copy.hammerline"), std::filesystem::copy_options::overwrite_existing);
        EXPECT_EQ(std::system(("sqlite3 '" + file("copy.hammerline") + "' \"" + sql + "\"").c_str()), 0) << sql;
        return verify(file("copy.hammerline"));
    }

    ScratchFolder m_folder;
    instrument::Instrument m_instrument;
    std::string m_pdf;
    std::string m_set; ///< the set as a file
};

TEST_F(Chain, WhatWasFoundOutIsPlanned)
{
    const auto found = readingsFile("found.csv", 4.0, 1.2, 6);
    EXPECT_EQ(runCommand({"check", found, "--tolerances", m_set, "--action", "vertical"}).status, 1);
    const auto plan =
        runCommand({"plan", found, "--tolerances", m_set, "--setup", "full-upright", "--json"});
    ASSERT_EQ(plan.status, 0) << plan.err;
    EXPECT_THAT(plan.out, HasSubstr("let_off"));
}

TEST_F(Chain, NothingIsSignedWhileTheQueueHoldsIt)
{
    measure(readingsFile("left.csv", 3.2, 0.3, 4.1), "as-left");
    const auto queue = runCommand({"review", book()});
    EXPECT_THAT(queue.out, HasSubstr("C4"));
    const auto refused = sign(1);
    ASSERT_FALSE(refused);
    EXPECT_THAT(refused.fault().problem, HasSubstr("let_off C4 is out"));
    concede(1);
    EXPECT_TRUE(sign(1));
    EXPECT_THAT(runCommand({"review", book()}).out, testing::Not(HasSubstr("C4")));
}

TEST_F(Chain, TheRecordSaysWhatWasConcededAndWhoSignedAndIsFoundWhole)
{
    issueFirst();
    const std::string pages = pagesOf(m_pdf);
    EXPECT_THAT(pages, HasSubstr("the button is at its end"));
    EXPECT_THAT(pages, HasSubstr("Lea"));
    const auto verified = verify(m_pdf);
    EXPECT_EQ(verified.status, 0) << verified.out << verified.err;
    EXPECT_EQ(std::system(("qpdf --check '" + m_pdf + "' >/dev/null").c_str()), 0);
    EXPECT_EQ(std::system(("pdfsig '" + m_pdf + "' | grep -q 'Signature is Valid'").c_str()), 0);
    EXPECT_EQ(std::system(("pdfdetach -list '" + m_pdf + "' | grep -q json").c_str()), 0);
    expectEveryTamperingOfTheRecordFound();
}

TEST_F(Chain, ARowOfAnyTableAlteredByTheShellIsFound)
{
    issueFirst();
    EXPECT_EQ(verify(book()).status, 0);
    for (const char *sql :
         {"UPDATE reading SET value = value + 1 WHERE pass = 1 AND note = 7",
          "UPDATE concession SET reason = 'none'", "UPDATE pass_standing SET person = 'Mallory'",
          "UPDATE instrument SET name = 'another'", "UPDATE pass SET purpose = 'as-found'",
          "UPDATE history SET person = 'Mallory' WHERE deed = 2", "DELETE FROM concession",
          "DELETE FROM pass_standing"})
        EXPECT_EQ(afterShell(sql).status, 1) << sql;
}

TEST_F(Chain, ARevisitIsIssuedAsARevisionThatNamesTheOneBefore)
{
    issueFirst();
    measure(readingsFile("recheck.csv", 3.3, 0.3, 4.1), "recheck");
    concede(3);
    ASSERT_TRUE(sign(3));
    const auto again = issue(file("again.pdf"), {"--replaces", m_pdf});
    ASSERT_EQ(again.status, 0) << again.err;
    EXPECT_EQ(verify(file("again.pdf")).status, 0);
    EXPECT_THAT(pagesOf(file("again.pdf")), HasSubstr("evision"));
}

} // namespace
} // namespace hammerline
