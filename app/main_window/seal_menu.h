#pragma once
// What anybody can do with a record that they were given, with no logbook open: find out whether it is what was sealed
// and by whom, and keep the list of keys that they trust.

#include "main_window/workshop.h"
#include "prompts/prompts.h"
#include "seal/judge_record.h"

#include <QAction>

#include <string>

namespace hammerline::main_window {

/// All of it outlives the menu's deeds.
struct SealPlace {
    QWidget *window;
    QAction *checkRecord;
    QAction *trustedKeys;
    prompts::Prompts &prompts;
    Clock clock;
    std::string keyFile; ///< of the workshop; the list lies beside it. Empty: there is no place for one
};

class SealMenu : public QObject {
    Q_OBJECT
public:
    explicit SealMenu(const SealPlace &place);

private:
    void checkRecord();
    void tell(const seal::RecordJudgement &judged, const QString &path);
    void offerTrust(const seal::RecordJudgement &judged);
    void showKeys();
    void tellFaults(const QString &title, const std::vector<outcome::Fault> &faults);
    [[nodiscard]] std::string list() const { return seal::trustedKeysFile(m_place.keyFile); }

    SealPlace m_place;
};

} // namespace hammerline::main_window
