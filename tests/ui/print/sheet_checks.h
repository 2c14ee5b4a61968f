#pragma once

#include "core/sessions/card_content.h"

#include <string>

namespace chalk::test {

/// Lays a card out on every paper and measures it: every text is on the printable area and in its cell, none is below the least
/// size, and none lies over another, over a line, a box or the code. `what` stands in the message.
void expectSound(const sessions::CardContent& card, const std::string& what);

}  // namespace chalk::test
