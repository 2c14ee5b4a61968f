#include "ui/week/block_spoken.h"

#include "core/sessions/session.h"
#include "ui/common/formats.h"
#include "ui/floor/session_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace chalk::ui::week {

namespace {

QString spokenText(const char* text)
{
    return QCoreApplication::translate("WeekBlock", text);
}

QString stateWord(const WeekBlock& block)
{
    switch (block.state) {
    case BlockState::Conflict:
        return spokenText("Conflict.");
    case BlockState::Proposed:
        return spokenText("Proposed, not saved.");
    case BlockState::Done:
        return spokenText("Over.");
    case BlockState::Full:
        return spokenText("Full.");
    case BlockState::Free:
        break;
    }
    return {};
}

}  // namespace

QString blockSpoken(const WeekScene& scene, const WeekBlock& block)
{
    const auto clock = [](int minute) { return common::qstring(sessions::clockText(minute % chalk::week::kDayMinutes)); };
    QStringList names;
    for (const BlockMember& member : block.members) {
        const QString absence = floor::absenceText(member.state);
        names.append(absence.isEmpty() ? member.name : QStringLiteral("%1 (%2)").arg(member.name, absence));
    }
    QStringList parts{spokenText("%1 %2 to %3, %4: %5.")
                          .arg(QLocale::c().dayName(block.day + 1), clock(block.from), clock(block.to), scene.coaches[block.coach], names.join(QStringLiteral(", "))),
                      spokenText("%1 of %2 places taken.").arg(block.taken()).arg(block.places)};
    if (block.isLocked) {
        parts.append(spokenText("Locked."));
    }
    parts.append(stateWord(block));
    parts.removeAll(QString());
    return parts.join(QLatin1Char(' '));
}

}  // namespace chalk::ui::week
