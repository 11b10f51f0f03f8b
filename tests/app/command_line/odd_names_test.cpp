// Names as people and other programs give them: with marks, line ends, both directions of writing, formulas, paths,
// ten thousand characters. Each goes through every command, as a name that is stored and as an argument. It survives,
// or it is refused in words; nothing else happens.

#include "support/command_run.h"
#include "support/formula_cells.h"

#include "demo_workshop/demo_workshop.h"
#include "logbook/logbook.h"
#include "seal/seal.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdlib>

namespace hammerline {
namespace {

using nlohmann::json;
using test_support::CommandRun;
using test_support::fileText;
using test_support::formulaCellsOf;
using test_support::runCommand;
using test_support::ScratchFolder;
using testing::AnyOf;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

/// What stands on one line and is no longer than a name may be.
std::vector<std::string> names()
{
    return {"O'Hara \"the\" `grand`; DROP TABLE reading;--",
            "\xE2\x80\xAEthgir \xE2\x80\xAC mark \xE2\x81\xA6x",
            "\xD7\xA9\xD7\x9C\xD7\x95\xD7\x9D \xF0\x9F\x8E\xB9\xF0\x9F\x91\xA9\xE2\x80\x8D\xF0\x9F\x94\xA7",
            "%s %n \\0 \\u0000 %00 \xE2\x90\x80 ?1 :name",
            "=HYPERLINK(\"http://example.invalid\",\"x\")",
            "+1-1",
            "-2+3",
            "@SUM(A1)",
            "../../x",
            "/",
            "--force",
            "<b>&amp;</b>]]><!--",
            "$(reboot) `x` ${HOME} %1 %2",
            "\xEF\xBF\xBF\xEF\xBB\xBF",
            "a\xCC\x81\xCC\x81\xCC\x81",
            std::string(200, 'x')};
}

/// And what no instrument may be called, but a remark or a person may.
std::vector<std::string> texts()
{
    auto all = names();
    all.insert(all.end(), {"two\nlines\r\nand a\ttab", "\x1b[2J\x07 bell \x7f", "\t=1+1", "\r=1+1",
                           "\xC2\x9B"
                           "31m",
                           std::string(10'000, 'z')});
    return all;
}

bool isName(const std::string &text)
{
    const auto all = names();
    return std::ranges::find(all, text) != all.end();
}

bool holdsControls(const std::string &text)
{
    return text.find("\xC2\x9B") != std::string::npos ||
           std::ranges::any_of(text, [](char letter) { return (letter >= 0 && letter < ' ') || letter == '\x7f'; });
}

class OddNames : public ::testing::Test {
protected:
    [[nodiscard]] std::string file(const std::string &name) const { return m_folder.file(name); }

    /// Runs it; survived, or refused with words that cannot steer a terminal.
    static CommandRun kindly(const std::vector<std::string> &call)
    {
        const auto ran = runCommand(call);
        SCOPED_TRACE(call.front() + ": " + ran.out.substr(0, 200) + ran.err.substr(0, 200));
        EXPECT_THAT(ran.status, AnyOf(0, 1, 2));
        EXPECT_EQ(ran.err.empty(), ran.status != 2);
        EXPECT_TRUE(ran.status != 2 || ran.out.empty());
        const bool asJson = std::ranges::find(call, "--json") != call.end();
        for (const std::string *said : {&ran.out, &ran.err})
            EXPECT_THAT(*said, Not(AnyOf(HasSubstr("\x1b"), HasSubstr("\x07"), HasSubstr("\r"), HasSubstr("\x7f"))));
        if (asJson && ran.status != 2) {
            EXPECT_TRUE(json::accept(ran.out));
        } else {
            EXPECT_THAT(ran.out, Not(AnyOf(HasSubstr("\t"), HasSubstr("\xE2\x80\xAE"), HasSubstr("\xC2\x9B"))));
        }
        return ran;
    }
    static CommandRun done(const std::vector<std::string> &call)
    {
        auto ran = kindly(call);
        EXPECT_NE(ran.status, 2) << call.front() << ": " << ran.err;
        return ran;
    }

    /// A logbook with one measured instrument of which everything that can be named is named so.
    std::string bookNamed(const std::string &name, const std::string &text)
    {
        const std::string path = file("book-" + std::to_string(++m_count));
        const logbook::Stamp stamp{readings::parseRfc3339("2026-03-05T09:00:00Z").value(), text};
        auto book = logbook::Logbook::create(path, stamp).value();
        auto one = demo_workshop::makeWorkshop().instruments.front().instrument;
        one.id = 0;
        one.name = name;
        one.maker = one.model = one.serial = one.condition = one.owner = one.remark = text;
        one.toleranceId = text;
        one.state = instrument::State::InWork;
        const auto stored = book.addInstrument(one, stamp);
        if (!stored)
            throw std::runtime_error(stored.fault().problem);
        readings::Pass pass{.uid = std::string(32, 'a'), .instrument = 1, .began = stamp.at, .person = text};
        pass.gauge.name = pass.remark = text;
        std::vector<readings::Reading> many;
        for (int note = 1; note <= 12; ++note)
            many.push_back({.place = {catalogue::Quantity::LetOff, keyboard::Note(note), 1},
                            .value = units::Length::nanometres(3'000'000 + note),
                            .typed = text,
                            .remark = text});
        static_cast<void>(book.importPass(pass, many, stamp));
        static_cast<void>(book.addWork(1, {.what = text.substr(0, 100), .person = text}, stamp));
        book.noteSale(1, {.buyer = text, .price = text, .remark = text}, stamp);
        decisions::Decision item{.quantity = catalogue::Quantity::LetOff, .note = keyboard::Note(1), .words = text};
        item.value = units::Length::nanometres(3'000'001);
        static_cast<void>(book.accept(1, {item}, stamp));
        return path;
    }
    [[nodiscard]] std::string exported(const std::string &book)
    {
        const std::string to = file("out-" + std::to_string(++m_count) + ".csv");
        done({"export", book, "--instrument", "1", "--to", to});
        return fileText(to);
    }

    ScratchFolder m_folder;
    int m_count = 0;
};

TEST_F(OddNames, OfWhatIsStoredComeThroughEveryCommandThatReads)
{
    for (const std::string &text : texts()) {
        const bool named = isName(text);
        SCOPED_TRACE(text.substr(0, 40));
        const std::string book = bookNamed(named ? text : "Upright", text);
        const auto listed = json::parse(done({"instruments", book, "--json"}).out);
        EXPECT_EQ(listed["instruments"][0]["name"], named ? text : "Upright");
        done({"instruments", book});
        for (const char *command : {"passes", "review", "rejudge"})
            for (const bool asJson : {false, true}) {
                std::vector<std::string> call{command, book};
                if (call.front() == "passes")
                    call.insert(call.end(), {"--instrument", "1"});
                if (call.front() == "rejudge")
                    call.insert(call.end(), {"--tolerances", "full-upright"});
                if (asJson)
                    call.emplace_back("--json");
                done(call);
            }
        EXPECT_EQ(done({"verify", book}).status, 0);
        EXPECT_EQ(done({"backup", book, "--to", book + ".copy"}).status, 0);
    }
}

TEST_F(OddNames, InRemarksAreExportedWithoutAFormulaAndReadAgainLetterByLetter)
{
    for (const std::string &text : texts()) {
        SCOPED_TRACE(text.substr(0, 40));
        const std::string book = bookNamed("Upright", text);
        const std::string csv = exported(book);
        EXPECT_THAT(formulaCellsOf(csv), IsEmpty());
        done({"import", book, "--instrument", "1", "--purpose", "as-left", m_folder.write("in.csv", csv)});
        EXPECT_EQ(logbook::Logbook::open(book).readings(2).at(0).remark, text);
        EXPECT_EQ(exported(book), csv);
    }
}

TEST_F(OddNames, AreHandedOverAndTakenOverLetterByLetter)
{
    for (const std::string &text : texts()) {
        SCOPED_TRACE(text.substr(0, 40));
        const std::string document = file("handed-" + std::to_string(++m_count) + ".json");
        done({"hand-over", bookNamed("Upright", text), "--instrument", "1", "--to", document});
        const std::string fresh = file("fresh-" + std::to_string(m_count));
        ASSERT_TRUE(logbook::Logbook::create(fresh, {}));
        done({"take-over", fresh, document});
        const auto there = logbook::Logbook::open(fresh);
        EXPECT_EQ(there.instrument(1)->owner, text);
        EXPECT_EQ(there.readings(1).at(0).remark, text);
        EXPECT_EQ(there.dossier(1).sale.buyer, text);
        EXPECT_EQ(done({"verify", fresh}).status, 0);
    }
}

TEST_F(OddNames, StandInASoundRecord)
{
    for (const std::string &text : texts()) {
        const bool named = isName(text);
        SCOPED_TRACE(text.substr(0, 40));
        const std::string pdf = file("record-" + std::to_string(++m_count) + ".pdf");
        done({"record", bookNamed(named ? text : "Upright", text), "--instrument", "1", "--to", pdf, "--with-sale"});
        EXPECT_EQ(done({"verify", pdf}).status, 0);
        EXPECT_EQ(std::system(("qpdf --check '" + pdf + "' >/dev/null").c_str()), 0);
        EXPECT_EQ(std::system(("pdfinfo -meta '" + pdf + "' | xmllint --noout - 2>/dev/null").c_str()), 0);
        for (const auto &attached : seal::verifyRecord(fileText(pdf)).files) {
            if (attached.name.ends_with(".csv")) {
                EXPECT_THAT(formulaCellsOf(attached.content), IsEmpty());
            } else if (attached.name.ends_with(".json")) {
                EXPECT_TRUE(json::accept(attached.content));
            }
        }
    }
}

TEST_F(OddNames, GivenAsArgumentsSurviveOrAreRefusedInWords)
{
    const std::string book = bookNamed("Upright", "plain");
    const std::string csv = m_folder.write("r.csv", "note,let_off\nA0,3\n");
    const std::string trials = m_folder.write("t.csv", "note,person,take,value\nA0,a,1,3\n");
    for (const std::string &odd : texts()) {
        SCOPED_TRACE(odd.substr(0, 40));
        for (const std::vector<std::string> &call : std::vector<std::vector<std::string>>{
                 {odd},
                 {"instruments", odd},
                 {"passes", book, "--instrument", odd},
                 {"review", odd},
                 {"rejudge", odd, "--tolerances", "full-upright"},
                 {"rejudge", book, "--tolerances", odd},
                 {"verify", odd},
                 {"demo", file("none") + "/" + odd},
                 {"import", book, odd, "--instrument", "1", "--purpose", "as-left"},
                 {"import", book, csv, "--instrument", odd, "--purpose", "as-left"},
                 {"import", book, csv, "--instrument", "1", "--purpose", odd},
                 {"import", book, csv, "--instrument", "1", "--purpose", "as-left", "--unit", odd},
                 {"export", book, "--instrument", "1", "--pass", odd, "--to", file("a.csv")},
                 {"export", book, "--instrument", odd, "--to", file("a.csv")},
                 {"export", book, "--instrument", "1", "--to", file("none") + "/" + odd},
                 {"hand-over", book, "--instrument", "1", "--to", file("none") + "/" + odd},
                 {"take-over", book, odd},
                 {"backup", book, "--to", file("none") + "/" + odd},
                 {"record", book, "--instrument", "1", "--to", file("none") + "/" + odd},
                 {"record", book, "--instrument", "1", "--to", file("a.pdf"), "--language", odd},
                 {"record", book, "--instrument", "1", "--to", file("a.pdf"), "--key-file", "/dev/null/" + odd},
                 {"record", book, "--instrument", "1", "--to", file("a.pdf"), "--replaces", odd},
                 {"check", odd, "--tolerances", "full-upright"},
                 {"check", csv, "--tolerances", odd, "--json"},
                 {"check", csv, "--tolerances", "full-upright", "--first", odd},
                 {"plan", csv, "--tolerances", "full-upright", "--setup", odd},
                 {"plan", csv, "--tolerances", "full-upright", "--setup", "full-upright", "--aim", odd},
                 {"fit", csv, "--tolerances", odd},
                 {"compare", csv, odd},
                 {"gauge-study", odd},
                 {"tolerances", odd},
                 {"setups", odd},
                 {"spot-check", "--notes", odd, "--sample", "2", "--found", "0"},
                 {"spot-check", "--notes", "8", "--sample", "2", "--found", "0", "--confidence", odd}})
            EXPECT_EQ(kindly(call).status, 2) << call.front();
    }
    EXPECT_FALSE(std::filesystem::exists(file("a.csv")) || std::filesystem::exists(file("a.pdf")));
    EXPECT_EQ(kindly({"gauge-study", trials}).status, 2) << "one trial is no study";
    EXPECT_EQ(done({"verify", book}).status, 0);
}

TEST_F(OddNames, OfPeopleComeInWithAnImportAndWithTrials)
{
    const std::string book = bookNamed("Upright", "plain");
    const std::string csv = m_folder.write("r.csv", "note,let_off\nA0,3\n");
    for (const std::string &odd : texts()) {
        SCOPED_TRACE(odd.substr(0, 40));
        const auto imported =
            kindly({"import", book, csv, "--instrument", "1", "--purpose", "as-left", "--person=" + odd});
        EXPECT_EQ(imported.status, holdsControls(odd) ? 2 : 0) << imported.err;
        if (holdsControls(odd))
            EXPECT_THAT(imported.err, HasSubstr("--person: the text holds the control character U+00"));
        else
            EXPECT_EQ(logbook::Logbook::open(book).passes(1).back().person, odd);
        std::string quoted = "\"";
        for (const char letter : odd)
            quoted.append(letter == '"' ? 2 : 1, letter);
        quoted += '"';
        std::string trials = "note,person,take,value\n";
        for (const char *note : {"A0", "B0"})
            for (const std::string &person : {quoted, std::string("Ben")})
                for (const char *take : {"1,3.1", "2,3.2"})
                    trials += std::string(note) + ',' + person + ',' + take + '\n';
        done({"gauge-study", m_folder.write("t.csv", trials), "--json"});
        done({"gauge-study", file("t.csv")});
    }
    kindly({"passes", book, "--instrument", "1"});
}

TEST_F(OddNames, ThatAreNoUtf8AreRefused)
{
    const std::string book = bookNamed("Upright", "plain");
    const std::string csv = m_folder.write("r.csv", "note,let_off\nA0,3\n");
    const auto ran = kindly({"import", book, csv, "--instrument", "1", "--purpose", "as-left", "--person", "J\xF6rg"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr("--person"));
    EXPECT_EQ(kindly({"import", book, m_folder.write("latin.csv", "note,quantity,value,remark\nA0,let_off,3,\xF6\n"),
                      "--instrument", "1", "--purpose", "as-left"})
                  .status,
              2);
}

TEST_F(OddNames, OfFilesAreFilesInTheirFolder)
{
    const std::string book = bookNamed("Upright", "plain");
    for (const char *odd : {"=1+1.csv", "-x.csv", "two\nlines.csv", "\xE2\x80\xAEvsc.csv", "file:x?mode=memory",
                            ":memory:", "'; DROP TABLE reading.csv", "%s%n.csv", " .csv"}) {
        SCOPED_TRACE(odd);
        done({"export", book, "--instrument", "1", "--to", file(odd)});
        EXPECT_EQ(done({"check", file(odd), "--tolerances", "full-upright"}).status, 1);
        done({"backup", book, "--to", file(std::string("copy ") + odd)});
        EXPECT_EQ(done({"verify", file(std::string("copy ") + odd)}).status, 0);
    }
}

} // namespace
} // namespace hammerline
