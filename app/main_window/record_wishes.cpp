#include "main_window/record_wishes.h"

#include "seal/key_store.h"

#include <QCoreApplication>

#include <filesystem>

namespace hammerline::main_window {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("RecordWishes", text);
}

struct Pages {
    record_pdf::Language language{};
    record_pdf::Paper paper{};
};

/// Each language on each paper, in the order in which they are offered.
std::vector<Pages> allPages()
{
    std::vector<Pages> all;
    for (const record_pdf::Language language : record_pdf::languages())
        for (const auto paper : {record_pdf::Paper::A4, record_pdf::Paper::Letter})
            all.push_back({language, paper});
    return all;
}

QString nameOf(const Pages &pages)
{
    const QString paper = pages.paper == record_pdf::Paper::A4 ? tr("A4") : tr("Letter");
    return QStringLiteral("%1, %2").arg(record_pdf::nameOf(pages.language), paper);
}

prompts::Question questionOf(const std::vector<Pages> &all, const RecordPreferences &before, bool tellSale)
{
    prompts::Question question{.title = tr("Make the record"), .text = tr("In which language, and on which paper?")};
    question.detail = before.workshop.isEmpty() ? tr("The record does not name the workshop yet.")
                                                : tr("The record names the workshop: %1").arg(before.workshop);
    question.detail += QLatin1Char('\n') + (tellSale ? tr("It tells owner, buyer and price.")
                                                     : tr("Owner, buyer and price stay out of it."));
    for (const Pages &pages : all) {
        if (pages.language == before.language && pages.paper == before.paper)
            question.preferred = static_cast<int>(question.choices.size());
        question.choices << nameOf(pages);
    }
    question.choices << tr("Name the workshop…")
                     << (tellSale ? tr("Leave owner, buyer and price out") : tr("Tell owner, buyer and price"))
                     << tr("Cancel");
    return question;
}

/// False: the user thought better of it.
bool askPages(QWidget *parent, prompts::Prompts &prompts, Settings &settings, RecordWishes &wishes)
{
    const auto all = allPages();
    for (;;) {
        RecordPreferences preferences = settings.recordPreferences();
        const auto chosen =
            static_cast<std::size_t>(prompts.ask(parent, questionOf(all, preferences, wishes.tellSale)));
        if (chosen == all.size() + 1) {
            wishes.tellSale = !wishes.tellSale;
            continue;
        }
        if (chosen > all.size())
            return false;
        if (chosen == all.size()) {
            const auto named =
                prompts.askText(parent, {tr("The workshop"), tr("Its name and place, as every record shall state them"),
                                         preferences.workshop});
            preferences.workshop = named.value_or(preferences.workshop).simplified();
        } else {
            preferences.language = all[chosen].language;
            preferences.paper = all[chosen].paper;
        }
        settings.setRecordPreferences(preferences);
        if (chosen == all.size())
            continue;
        wishes.language = preferences.language;
        wishes.paper = preferences.paper;
        wishes.workshop = preferences.workshop;
        return true;
    }
}

/// False: the user thought better of it.
bool askReplaced(QWidget *parent, prompts::Prompts &prompts, RecordWishes &wishes)
{
    const int chosen = prompts.ask(
        parent, {.title = tr("Make the record"),
                 .text = tr("Does it take the place of a record that you gave out before?"),
                 .detail = tr("After a revisit the new record is the next revision and names the one before."),
                 .choices = {tr("It is the first"), tr("Choose the earlier one…"), tr("Cancel")}});
    if (chosen == 0)
        return true;
    if (chosen == 1)
        wishes.replaces = prompts.chooseFile(
            parent, {prompts::FileWish::Use::Open, tr("The earlier record"), tr("Records (*.pdf)"), {}, {}});
    return wishes.replaces.has_value();
}

bool askPassphrase(QWidget *parent, prompts::Prompts &prompts, const QString &label, RecordWishes &wishes)
{
    const auto text =
        prompts.askText(parent, {.title = tr("The workshop's key"), .label = label, .initial = {}, .hidden = true});
    wishes.passphrase = text.value_or(QString()).toStdString();
    return text.has_value();
}

bool isSomethingAt(const std::string &path)
{
    std::error_code unseen;
    return std::filesystem::exists(std::filesystem::symlink_status(path, unseen));
}

bool askKey(QWidget *parent, prompts::Prompts &prompts, const std::string &keyFile, RecordWishes &wishes)
{
    if (seal::asksForPassphrase(keyFile))
        return askPassphrase(parent, prompts, tr("Passphrase"), wishes);
    if (isSomethingAt(keyFile))
        return true;
    const int chosen = prompts.ask(
        parent, {.title = tr("The workshop's key"),
                 .text = tr("The key that seals your records is made now, once for all of them."),
                 .detail = tr("Keep a copy of it in a safe place. With a passphrase nobody who finds the file can seal "
                              "in your name; a passphrase that is forgotten cannot be found again."),
                 .choices = {tr("Without a passphrase"), tr("With a passphrase…"), tr("Cancel")}});
    if (chosen == 1)
        return askPassphrase(parent, prompts, tr("New passphrase"), wishes);
    return chosen == 0;
}

} // namespace

std::optional<RecordWishes> askRecordWishes(QWidget *parent, prompts::Prompts &prompts, Settings &settings,
                                            const std::string &keyFile)
{
    RecordWishes wishes;
    if (!askPages(parent, prompts, settings, wishes) || !askReplaced(parent, prompts, wishes) ||
        !askKey(parent, prompts, keyFile, wishes))
        return std::nullopt;
    return wishes;
}

} // namespace hammerline::main_window
