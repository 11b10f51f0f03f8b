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

std::optional<record_pdf::Language> askLanguage(QWidget *parent, prompts::Prompts &prompts)
{
    prompts::Question question{.title = tr("Make the record"), .text = tr("In which language?")};
    for (const record_pdf::Language language : record_pdf::languages())
        question.choices << record_pdf::nameOf(language);
    question.choices << tr("Cancel");
    const auto chosen = static_cast<std::size_t>(prompts.ask(parent, question));
    const auto all = record_pdf::languages();
    return chosen < all.size() ? std::optional(all[chosen]) : std::nullopt;
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

std::optional<RecordWishes> askRecordWishes(QWidget *parent, prompts::Prompts &prompts, const std::string &keyFile)
{
    const auto language = askLanguage(parent, prompts);
    if (!language)
        return std::nullopt;
    RecordWishes wishes{.language = *language};
    if (!askReplaced(parent, prompts, wishes) || !askKey(parent, prompts, keyFile, wishes))
        return std::nullopt;
    return wishes;
}

} // namespace hammerline::main_window
