#include "command_line/inside/all_commands.h"

namespace hammerline::command_line {

std::vector<std::unique_ptr<Command>> allCommands()
{
    std::vector<std::unique_ptr<Command>> commands;
    for (const auto make : {makeCheckCommand,      makePlanCommand,      makeFitCommand,         makeCompareCommand,
                            makeGaugeStudyCommand, makeSpotCheckCommand, makeTolerancesCommand,  makeSetupsCommand,
                            makeDemoCommand,       makeImportCommand,    makeInstrumentsCommand, makePassesCommand,
                            makeExportCommand,     makeReviewCommand,    makeRejudgeCommand,     makeRecordCommand,
                            makeVerifyCommand,     makeHandOverCommand,  makeTakeOverCommand,    makeBackupCommand})
        commands.push_back(make());
    return commands;
}

} // namespace hammerline::command_line
