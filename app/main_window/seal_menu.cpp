#include "main_window/seal_menu.h"

#include "exchange/exchange.h"
#include "main_window/seal_words.h"
#include "main_window/trusted_keys_dialog.h"
#include "wording/wording.h"

#include <QFileInfo>

namespace hammerline::main_window {

SealMenu::SealMenu(const SealPlace &place) : QObject(place.window), m_place(place)
{
    connect(m_place.checkRecord, &QAction::triggered, this, &SealMenu::checkRecord);
    connect(m_place.trustedKeys, &QAction::triggered, this, &SealMenu::showKeys);
    m_place.trustedKeys->setEnabled(!m_place.keyFile.empty());
}

void SealMenu::checkRecord()
{
    const auto path = m_place.prompts.chooseFile(
        m_place.window,
        {prompts::FileWish::Use::Open, tr("Check a record"), tr("Records (*.pdf);;All files (*)"), {}, {}});
    if (!path)
        return;
    const auto bytes = exchange::readFile(path->toStdString());
    if (!bytes)
        return tellFaults(tr("The record was not checked"), bytes.faults());
    const auto trusted = seal::trustedKeys(list());
    if (!trusted)
        return tellFaults(tr("The record was not checked"), trusted.faults());
    tell(seal::judgeRecord(bytes.value(), {.pinned = {}, .trusted = trusted.value()}), *path);
}

void SealMenu::tell(const seal::RecordJudgement &judged, const QString &path)
{
    const prompts::Question question = questionOf(judged, QFileInfo(path).fileName(), !list().empty());
    if (question.choices.isEmpty())
        return m_place.prompts.tell(m_place.window, {question.title, question.text, question.detail, question.weight});
    if (m_place.prompts.ask(m_place.window, question) == 0)
        offerTrust(judged);
}

void SealMenu::offerTrust(const seal::RecordJudgement &judged)
{
    const seal::TrustedKey key{judged.fingerprint, judged.signer, readings::isoDate(m_place.clock())};
    if (!askWhetherTheSame(m_place.window, m_place.prompts, key))
        return;
    const auto trusted = seal::trustKey(list(), key);
    if (!trusted)
        return tellFaults(tr("The key was not trusted"), trusted.faults());
    m_place.prompts.tell(m_place.window,
                         {tr("The key is trusted"), plainName(key.name),
                          tr("Records that it sealed are told as known from now on."), prompts::Weight::Question});
}

void SealMenu::showKeys()
{
    auto *dialog = new TrustedKeysDialog(list(), m_place.clock(), m_place.prompts, m_place.window);
    dialog->open();
}

void SealMenu::tellFaults(const QString &title, const std::vector<outcome::Fault> &faults)
{
    m_place.prompts.tell(m_place.window, {title, title + '.', wording::faultsText(faults)});
}

} // namespace hammerline::main_window
