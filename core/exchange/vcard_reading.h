#pragma once

#include "core/tables/table_content.h"

#include <QByteArray>

namespace chalk::exchange {

/// Reads the people of vCards, 3.0 (RFC 2426) and 4.0 (RFC 6350), into what all files say: FN or N as the name, BDAY, TEL, EMAIL and NOTE; every other
/// line is passed over, and so are cards of groups, organizations and places (KIND, RFC 6350, 6.1.4). Of several numbers or addresses the preferred one counts,
/// else the first. Lines may end by LF alone; CHARSET and quoted-printable of older cards are read too. A BDAY without a year says nothing here.
/// A card with a fault is left out whole; the others go on. `text` is UTF-8; `file` counts from 0.
///
/// By hand, because a fault names its line and column here and one bad card costs the others nothing. The libraries of Debian 12 (libvformat, libbelcard)
/// hand back a card or nothing; said from memory of their interfaces.
void readVCards(const QByteArray& text, tables::TableContent& content, int file, base::Date today);

/// Whether a text begins as a vCard does.
[[nodiscard]] bool isVCard(const QByteArray& text);

}  // namespace chalk::exchange
