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
constexpr double kHeadSpace = 1.1;  ///< between the words of a line of 10.5 pt

QString cardText(const char* text)
{
    return QCoreApplication::translate("Card", text);
}

Run headRun(QString text, QFont::Weight weight, double gap)
{
    return {std::move(text), 10.5, weight, false, false, gap};
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

std::vector<Runs> instructions(const CardContent& card)
{
    if (card.lifts.empty()) {
        return {};
    }
    const Runs framed{headRun(cardText(QT_TRANSLATE_NOOP("Card", "The framed number moves today.")), QFont::Normal, 0)};
    const auto first = std::find_if(card.lifts.begin(), card.lifts.end(), isLoadedWork);
    if (first == card.lifts.end()) {
        return {framed};
    }
    Runs stop{headRun(cardText(QT_TRANSLATE_NOOP("Card", "Stop with")), QFont::Normal, 0)};
    if (hasMixedReserves(card)) {
        stop.push_back(headRun(cardText(QT_TRANSLATE_NOOP("Card", "the reps left that each lift says.")), QFont::Normal, kHeadSpace));
    } else {
        stop.push_back(headRun(cardText(QT_TRANSLATE_NOOP("Card", "%1 reps left")).arg(first->reserve), QFont::Bold, kHeadSpace));
        stop.push_back(headRun(QStringLiteral("."), QFont::Normal, 0));
    }
    Runs both = stop;
    both.push_back(framed.front());
    both.back().gap = kHeadSpace;
    return {both, stop};
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

QString countText(int sheet, int sheets)
{
    return cardText(QT_TRANSLATE_NOOP("Card", "card %1 of %2")).arg(sheet).arg(sheets);
}

QString sessionText(const CardContent& card, int sheet, int sheets)
{
    QStringList parts;
    if (card.sessionNumber > 0) {
        parts.append(cardText(QT_TRANSLATE_NOOP("Card", "session %1")).arg(card.sessionNumber));
    }
    if (sheets > 1) {
        parts.append(countText(sheet, sheets));
    }
    return parts.join(QStringLiteral(" · "));
}

}  // namespace chalk::ui::print
