#include "ui/roster/roster_row.h"

#include <algorithm>

namespace chalk::ui::roster {

namespace {

common::FlagKind flagKindOf(checkin::ClientFlag flag)
{
    using checkin::ClientFlag;
    using common::FlagKind;
    switch (flag) {
    case ClientFlag::Clearance:
        return FlagKind::Clearance;
    case ClientFlag::Pain:
        return FlagKind::Pain;
    case ClientFlag::Plateau:
        return FlagKind::Plateau;
    case ClientFlag::Missed:
        return FlagKind::Missed;
    case ClientFlag::Rescreen:
        return FlagKind::Rescreen;
    case ClientFlag::Ready:
        return FlagKind::Ready;
    case ClientFlag::Away:
        return FlagKind::Away;
    case ClientFlag::New:
        return FlagKind::New;
    }
    return FlagKind::New;
}

}  // namespace

bool RosterRow::isAway() const
{
    return std::find(flags.begin(), flags.end(), checkin::ClientFlag::Away) != flags.end();
}

common::FlagTagView tagOf(checkin::ClientFlag flag)
{
    return common::flagTagOf(flagKindOf(flag));
}

QString folded(const QString& text)
{
    QString plain;
    for (const QChar c : text.normalized(QString::NormalizationForm_KD)) {
        if (!c.isMark()) {
            plain.append(c);
        }
    }
    return plain.toCaseFolded();
}

}  // namespace chalk::ui::roster
