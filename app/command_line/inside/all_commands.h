#pragma once
// One maker for each command, in the order of the help.

#include "command_line/command.h"

#include <memory>
#include <vector>

namespace hammerline::command_line {

[[nodiscard]] std::unique_ptr<Command> makeCheckCommand();
[[nodiscard]] std::unique_ptr<Command> makePlanCommand();
[[nodiscard]] std::unique_ptr<Command> makeFitCommand();
[[nodiscard]] std::unique_ptr<Command> makeCompareCommand();
[[nodiscard]] std::unique_ptr<Command> makeGaugeStudyCommand();
[[nodiscard]] std::unique_ptr<Command> makeSpotCheckCommand();
[[nodiscard]] std::unique_ptr<Command> makeTolerancesCommand();
[[nodiscard]] std::unique_ptr<Command> makeSetupsCommand();
[[nodiscard]] std::unique_ptr<Command> makeDemoCommand();
[[nodiscard]] std::unique_ptr<Command> makeImportCommand();
[[nodiscard]] std::unique_ptr<Command> makeInstrumentsCommand();
[[nodiscard]] std::unique_ptr<Command> makePassesCommand();
[[nodiscard]] std::unique_ptr<Command> makeExportCommand();
[[nodiscard]] std::unique_ptr<Command> makeReviewCommand();
[[nodiscard]] std::unique_ptr<Command> makeRejudgeCommand();
[[nodiscard]] std::unique_ptr<Command> makeRecordCommand();
[[nodiscard]] std::unique_ptr<Command> makeVerifyCommand();
[[nodiscard]] std::unique_ptr<Command> makeHandOverCommand();
[[nodiscard]] std::unique_ptr<Command> makeTakeOverCommand();
[[nodiscard]] std::unique_ptr<Command> makeBackupCommand();

[[nodiscard]] std::vector<std::unique_ptr<Command>> allCommands();

} // namespace hammerline::command_line
