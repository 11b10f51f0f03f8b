// hammerline record: the regulation record of an instrument as a PDF, sealed with the workshop's own key. The one
// command that paints: it starts Qt's application object on the offscreen platform, so that it needs no display either.

#include "command_line/inside/all_commands.h"
#include "command_line/inside/logbook_input.h"
#include "command_line/inside/plain_table.h"

#include "exchange/exchange.h"
#include "record_pdf/record_input.h"
#include "record_pdf/record_language.h"
#include "record_pdf/record_pdf.h"
#include "record_pdf/replaced_record.h"
#include "sale_record/sale_record.h"
#include "seal/workshop_key.h"

#include <QApplication>

#include <filesystem>
#include <fstream>
#include <iostream>

namespace hammerline::command_line {
namespace {

/// Qt's remarks on a machine without a session (no runtime folder, say) are nothing to the caller.
void keepGrave(QtMsgType type, const QMessageLogContext &, const QString &text)
{
    if (type == QtCriticalMsg || type == QtFatalMsg)
        std::cerr << text.toStdString() << '\n';
}

/// An application object for as long as the painting lasts, unless the process has one.
class Painting {
public:
    Painting()
    {
        if (QCoreApplication::instance() != nullptr)
            return;
        qInstallMessageHandler(keepGrave);
        qputenv("QT_QPA_PLATFORM", "offscreen");
        m_application = std::make_unique<QApplication>(m_count, m_arguments);
    }

private:
    char m_name[11] = "hammerline";
    char *m_arguments[2] = {m_name, nullptr};
    int m_count = 1;
    std::unique_ptr<QApplication> m_application;
};

outcome::Outcome<record_pdf::Language> parseLanguage(const std::optional<std::string> &text)
{
    if (const auto language = record_pdf::findLanguage(text.value_or("en")))
        return *language;
    return outcome::Fault{.problem = "--language: \"" + *text + "\" is not known here; write en or de"};
}

outcome::Outcome<record_pdf::Paper> parsePaper(const std::optional<std::string> &text)
{
    if (!text || *text == "a4")
        return record_pdf::Paper::A4;
    if (*text == "letter")
        return record_pdf::Paper::Letter;
    return outcome::Fault{.problem = "--paper: \"" + *text + "\" is not known here; write a4 or letter"};
}

class RecordCommand : public Command {
public:
    std::string name() const override { return "record"; }
    std::string summary() const override { return "make the regulation record of an instrument as a PDF"; }

    void declare(Options &options) override
    {
        options.positional("LOGBOOK", "The logbook", m_logbook);
        options.value("instrument", "ID", "Number of the instrument, see hammerline instruments", m_instrument);
        options.value("to", "FILE.pdf", "The file to write", m_to);
        options.value("paper", "a4|letter", "Size of the pages (a4)", m_paper);
        options.value("language", "en|de", "Language of the record (en)", m_language);
        options.value("replaces", "FILE.pdf", "The earlier record that this one takes the place of", m_replaces);
        options.value("key-file", "FILE.p12", "The workshop's key, made where it is missing (one for all its records)",
                      m_keyFile);
        options.value("passphrase-file", "FILE",
                      "A file (or /dev/fd/N) whose first line is the key's passphrase; HAMMERLINE_PASSPHRASE does too",
                      m_passphraseFile);
        options.value("workshop", "TEXT", "Name and place of the workshop, for the record to state", m_workshop);
        options.flag("with-sale", "Tell owner, buyer and price in the record, which else stay out of it", m_withSale);
        options.flag("force", "Overwrite a file that is there", m_force);
    }

    outcome::Outcome<Answer> answer(const Surroundings &surroundings) override
    {
        const auto paper = parsePaper(m_paper);
        if (!paper)
            return paper.faults();
        const auto language = parseLanguage(m_language);
        if (!language)
            return language.faults();
        if (auto unsound = unsoundText("workshop", m_workshop.value_or(std::string())))
            return *std::move(unsound);
        const auto book = openToRead(m_logbook);
        const auto instrument = findInstrument(book, m_instrument);
        if (!instrument)
            return instrument.faults();
        auto input = record_pdf::recordInputOf(
            book, instrument.value(),
            {surroundings.now(), surroundings.person, surroundings.programVersion, m_workshop.value_or(std::string())});
        if (!input)
            return input.faults();
        input.value().tellSale = m_withSale;
        auto record = sale_record::assemble(input.value());
        if (!record)
            return record.faults();
        if (m_replaces) {
            auto replaced = record_pdf::replacedRecord(*m_replaces, instrument.value());
            if (!replaced)
                return replaced.faults();
            record.value().replaces = replaced.value().named;
            if (!record_pdf::holdsHistoryOf(book, replaced.value()))
                m_warnings.push_back(historyLost(replaced.value().history));
        }
        std::error_code unseen;
        if (!m_force && std::filesystem::exists(m_to, unseen)) // before a key is made
            return outcome::Fault{.file = m_to,
                                  .problem = "is there already; choose another name or allow overwriting (--force)"};
        const auto passphrase = passphraseFor(surroundings);
        if (!passphrase)
            return passphrase.faults();
        const auto key = seal::workshopKey(m_keyFile.value_or(surroundings.keyFile),
                                           seal::keyNameOf(m_workshop.value_or(std::string()), surroundings.person),
                                           surroundings.now(), passphrase.value());
        return key ? write(record.value(), paper.value(), language.value(), key.value()) : key.faults();
    }

private:
    [[nodiscard]] outcome::Fault historyLost(const sale_record::HistoryPin &pin) const
    {
        return {.file = *m_replaces,
                .problem = "was made from entry " + std::to_string(pin.deed) +
                           " of a history that this logbook does not hold. Either the instrument came here out of "
                           "another logbook, or this history was written anew or cut off since; hammerline verify "
                           "LOGBOOK --record FILE.pdf tells more. The new record names the earlier one all the same"};
    }

    /// The first line of the file, or what the surroundings hand in.
    [[nodiscard]] outcome::Outcome<std::string> passphraseFor(const Surroundings &surroundings) const
    {
        if (!m_passphraseFile)
            return surroundings.passphrase;
        std::ifstream file(*m_passphraseFile);
        std::string line;
        if (!std::getline(file, line))
            return outcome::Fault{.file = *m_passphraseFile, .problem = "holds no passphrase that can be read"};
        return line;
    }

    outcome::Outcome<Answer> write(const sale_record::SaleRecord &record, record_pdf::Paper paper,
                                   record_pdf::Language language, const seal::SigningKey &key) const
    {
        const Painting painting;
        record_pdf::LanguageOfRecord words(language);
        record_pdf::RecordPdfOptions wish{.paper = paper};
        words.speakIn(wish);
        const QByteArray pdf = record_pdf::makeSealedRecordPdf(record, wish, key);
        const auto written = exchange::writeFile(m_to, {pdf.constData(), static_cast<std::size_t>(pdf.size())},
                                                 m_force ? exchange::Overwrite::Yes : exchange::Overwrite::No);
        if (!written)
            return written.faults();
        return Answer{.text = "The record of " + withoutControls(record.instrument.name) + " is in " +
                              withoutControls(m_to) + ".\nSealed by:   " + withoutControls(key.name()) +
                              "\nFingerprint: " + seal::groupedFingerprint(key.fingerprint()) + '\n',
                      .warnings = m_warnings};
    }

    std::string m_logbook;
    std::string m_instrument;
    std::string m_to;
    std::optional<std::string> m_paper;
    std::optional<std::string> m_language;
    std::optional<std::string> m_replaces;
    std::optional<std::string> m_keyFile;
    std::optional<std::string> m_passphraseFile;
    std::optional<std::string> m_workshop;
    std::vector<outcome::Fault> m_warnings{};
    bool m_withSale = false;
    bool m_force = false;
};

} // namespace

std::unique_ptr<Command> makeRecordCommand()
{
    return std::make_unique<RecordCommand>();
}

} // namespace hammerline::command_line
