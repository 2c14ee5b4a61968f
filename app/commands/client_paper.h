#pragma once

#include "app/commands/command.h"

namespace chalk::app {

/// Runs `client NAME --paper PAPER`: makes the consent page, the health intake or the letter to the doctor as a PDF. The studio's file is only
/// read. Needs QGuiApplication.
int makeClientPaper(const CommandContext& context);

/// The options that go with it.
[[nodiscard]] std::vector<Option> clientPaperOptions();
/// The first of them that is given, `--size`; empty where none is.
[[nodiscard]] QString givenPaperOption(const CommandContext& context);
/// What the papers are and when they can be made, for the help.
[[nodiscard]] QString clientPaperDetails();

}  // namespace chalk::app
