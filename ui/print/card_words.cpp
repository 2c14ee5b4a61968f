#include "ui/print/card_words.h"

#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::print {

namespace {

using common::qstring;
using sessions::CardContent;
using sessions::CardLift;

constexpr int kDrillReps = 8;

QString cardText(const char* text)
{
    return QCoreApplication::translate("Card", text);
}

bool isLoadedWork(const CardLift& lift)
{
    return lift.kind == progression::PrescriptionKind::Work;
}

}  // namespace

QString whenAndWhere(const CardContent& card)
{
    const QString day = common::dayText(card.date) + QLatin1Char(' ') + QString::number(static_cast<int>(card.date.ymd().year()));
    QStringList parts{day + QStringLiteral(", ") + qstring(sessions::clockText(card.startMinute))};
    for (const std::string& part : {card.coachName, card.place}) {
        if (!part.empty()) {
            parts.append(qstring(part));
        }
    }
    return parts.join(QStringLiteral(" · "));
}

bool hasMixedReserves(const CardContent& card)
{
    const auto first = std::find_if(card.lifts.begin(), card.lifts.end(), isLoadedWork);
    return std::any_of(first, card.lifts.end(), [&first](const CardLift& lift) { return isLoadedWork(lift) && lift.reserve != first->reserve; });
}

Runs instructions(const CardContent& card)
{
    if (card.lifts.empty()) {
        return {};
    }
    Runs runs;
    const auto add = [&runs](const QString& text, QFont::Weight weight, double gap) { runs.push_back({text, 10.5, weight, false, false, gap}); };
    const auto first = std::find_if(card.lifts.begin(), card.lifts.end(), isLoadedWork);
    if (first != card.lifts.end()) {
        add(cardText(QT_TRANSLATE_NOOP("Card", "Stop with")), QFont::Normal, 0);
        if (hasMixedReserves(card)) {
            add(cardText(QT_TRANSLATE_NOOP("Card", "the reps left that each lift says.")), QFont::Normal, 1.1);
        } else {
            add(cardText(QT_TRANSLATE_NOOP("Card", "%1 reps left")).arg(first->reserve), QFont::Bold, 1.1);
            add(QStringLiteral("."), QFont::Normal, 0);
        }
    }
    add(cardText(QT_TRANSLATE_NOOP("Card", "The framed number moves today.")), QFont::Normal, runs.empty() ? 0 : 1.1);
    return runs;
}

QString drillText(const CardContent& card)
{
    if (card.drills.empty()) {
        return {};
    }
    QStringList parts{cardText(QT_TRANSLATE_NOOP("Card", "5 min easy"))};
    for (const std::string& drill : card.drills) {
        QString name = qstring(drill);
        name.replace(0, 1, name.at(0).toLower());
        parts.append(QStringLiteral("%1 × %2").arg(name).arg(kDrillReps));
    }
    return parts.join(QStringLiteral(", "));
}

QString sessionText(const CardContent& card, int sheet, int sheets)
{
    QStringList parts;
    if (card.sessionNumber > 0) {
        parts.append(cardText(QT_TRANSLATE_NOOP("Card", "session %1")).arg(card.sessionNumber));
    }
    if (sheets > 1) {
        parts.append(cardText(QT_TRANSLATE_NOOP("Card", "card %1 of %2")).arg(sheet).arg(sheets));
    }
    return parts.join(QStringLiteral(" · "));
}

}  // namespace chalk::ui::print
