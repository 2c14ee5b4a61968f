#include "app/commands/command_registry.h"

#include "app/commands/backup_command.h"
#include "app/commands/cards_command.h"
#include "app/commands/check_in_command.h"
#include "app/commands/clearance_command.h"
#include "app/commands/client_command.h"
#include "app/commands/demo_command.h"
#include "app/commands/dossier_command.h"
#include "app/commands/erase_command.h"
#include "app/commands/fill_command.h"
#include "app/commands/history_command.h"
#include "app/commands/import_command.h"
#include "app/commands/judge_command.h"
#include "app/commands/merge_command.h"
#include "app/commands/norms_command.h"
#include "app/commands/open_files_command.h"
#include "app/commands/passphrase_command.h"
#include "app/commands/plan_command.h"
#include "app/commands/record_command.h"
#include "app/commands/roster_command.h"
#include "app/commands/rotate_command.h"
#include "app/commands/server_command.h"
#include "app/commands/trace_command.h"
#include "app/commands/trends_command.h"
#include "app/commands/week_command.h"

namespace chalk::app {

const std::vector<Command>& allCommands()
{
    static const std::vector<Command> commands{
        backupCommand(),
        cardsCommand(),
        checkInCommand(),
        clearanceCommand(),
        clientCommand(),
        demoCommand(),
        dossierCommand(),
        eraseCommand(),
        exportCommand(),
        fillCommand(),
        historyCommand(),
        importCommand(),
        judgeCommand(),
        mergeCommand(),
        moveCommand(),
        normsCommand(),
        openFilesCommand(),
        passphraseCommand(),
        planCommand(),
        recordCommand(),
        restoreCommand(),
        rosterCommand(),
        rotateCommand(),
        serverCommand(),
        traceCommand(),
        trendsCommand(),
        verifyCommand(),
        weekCommand(),
    };
    return commands;
}

}  // namespace chalk::app
