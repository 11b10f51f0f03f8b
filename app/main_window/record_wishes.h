#pragma once
// What is asked before a record is made: its language and paper and the workshop's own name and place, all of which are
// remembered; the record that it takes the place of; and the passphrase of the workshop's key where that has one or is
// about to be made.

#include "instrument/instrument.h"
#include "main_window/settings.h"
#include "outcome/outcome.h"
#include "prompts/prompts.h"
#include "record_pdf/record_language.h"
#include "sale_record/sale_record.h"

#include <optional>
#include <string>

namespace hammerline::main_window {

struct RecordWishes {
    record_pdf::Language language = record_pdf::Language::English;
    record_pdf::Paper paper = record_pdf::Paper::A4;
    QString workshop{};                ///< empty: the record states none
    std::optional<QString> replaces{}; ///< path of the earlier record
    bool tellSale = false;             ///< owner, buyer and price; asked each time, never remembered
    std::string passphrase{};
};

/// Absent: the user thought better of it.
[[nodiscard]] std::optional<RecordWishes> askRecordWishes(QWidget *parent, prompts::Prompts &prompts,
                                                          Settings &settings, const std::string &keyFile);

} // namespace hammerline::main_window
