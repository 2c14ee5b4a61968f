#pragma once

#include <QByteArray>
#include <QDate>

namespace chalk::ui::print {

/// A PDF of Qt with noon UTC of `day` as its day of creation in place of the clock's time: so the same page is the same bytes.
/// As it was where it names no day of creation.
[[nodiscard]] QByteArray withCreationDate(QByteArray pdf, const QDate& day);

}  // namespace chalk::ui::print
