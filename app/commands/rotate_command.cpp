#include "app/commands/rotate_command.h"

#include "core/exchange/rotation_json.h"
#include "ui/common/formats.h"

#include <QJsonDocument>

#include <algorithm>

namespace chalk::app {

namespace {

using planning::ClientRotation;
using planning::Rotation;
using planning::RotationClient;
using planning::RotationLift;
using planning::RotationRequest;
using planning::RotationTurn;
using ui::common::qstring;

/// A rotation with the request that it is of, in words.
struct RotationText {
    const RotationRequest& request;
    const Rotation& rotation;

    void write(QTextStream& out) const
    {
        for (std::size_t i = 0; i < rotation.clients.size(); ++i) {
            writeClient(out, request.clients[i], rotation.clients[i]);
        }
        out << '\n' << waitingSentence() << "\nEnd: " << timeText(rotation.endSecond()) << ".\n";
        out << (rotation.isProved ? "Proved: no order waits less in all, and none that waits as little ends earlier.\n"
                                  : "Not proved: the best order that was found; one with less waiting or an earlier end may be there.\n");
    }

private:
    static QString timeText(int seconds) { return ui::common::restText(base::Seconds(seconds)); }

    static void writeSpan(QTextStream& out, int begin, int end)
    {
        constexpr int kTimeWidth = 7;
        out << timeText(begin).rightJustified(kTimeWidth) << timeText(end).rightJustified(kTimeWidth) << "  ";
    }

    /// `rack`, or `rack 2` where there are several.
    [[nodiscard]] QString stationText(const RotationLift& lift, int unit) const
    {
        const auto station = std::find_if(request.stations.begin(), request.stations.end(), [&lift](const auto& one) { return one.key == lift.station; });
        const bool isOnlyOne = station == request.stations.end() || station->units == 1;
        return isOnlyOne ? qstring(lift.station) : QStringLiteral("%1 %2").arg(qstring(lift.station)).arg(unit + 1);
    }

    void writeTurn(QTextStream& out, const RotationLift& lift, const RotationTurn& turn) const
    {
        constexpr int kNameWidth = 26;
        if (turn.waitedSeconds > 0) {
            writeSpan(out, turn.beginSecond - turn.waitedSeconds, turn.beginSecond);
            out << "waits " << timeText(turn.waitedSeconds) << " for " << qstring(lift.station) << '\n';
        }
        writeSpan(out, turn.beginSecond, turn.endSecond);
        if (turn.unit) {
            out << qstring(lift.name).leftJustified(kNameWidth) << "  " << stationText(lift, *turn.unit) << '\n';
        } else {
            out << qstring(lift.name) << '\n';
        }
    }

    void writeClient(QTextStream& out, const RotationClient& client, const ClientRotation& turns) const
    {
        out << qstring(client.name) << '\n';
        for (const RotationTurn& turn : turns.turns) {
            writeTurn(out, client.lifts[turn.lift], turn);
        }
        if (turns.isPatternRepeated) {
            out << "  One pattern follows itself: no order of these lifts avoids it.\n";
        }
    }

    /// How long all wait, and each of those who do.
    [[nodiscard]] QString waitingSentence() const
    {
        QStringList waiting;
        for (std::size_t i = 0; i < rotation.clients.size(); ++i) {
            if (const int seconds = rotation.clients[i].waitedSeconds(); seconds > 0) {
                waiting.append(QStringLiteral("%1 %2").arg(qstring(request.clients[i].name), timeText(seconds)));
            }
        }
        return waiting.isEmpty() ? QStringLiteral("Nobody waits.")
                                 : QStringLiteral("Waiting: %1 in all; %2.").arg(timeText(rotation.waitedSeconds()), waiting.join(QStringLiteral(", ")));
    }
};

int refuseFault(const CommandContext& context, const exchange::JsonFault& fault)
{
    return context.refuse(QStringLiteral("%1: %2: %3").arg(context.operands.front(), qstring(fault.field), qstring(fault.reason)));
}

int runRotate(const CommandContext& context)
{
    const auto text = context.readInput(context.operands.front());
    if (!text) {
        return kWrongUse;
    }
    const auto request = exchange::parseJson(*text).and_then(exchange::readRotationRequest);
    if (!request) {
        return refuseFault(context, request.error());
    }
    const Rotation rotation = planning::rotationOf(*request, planning::usualEffort(request->clients.size()));
    if (context.isJson()) {
        context.out << QJsonDocument(exchange::toJson(rotation, *request)).toJson(QJsonDocument::Indented);
    } else {
        RotationText{*request, rotation}.write(context.out);
    }
    return kDone;
}

QString rotateDetails()
{
    return QStringLiteral(
        "FILE is one JSON object (- for standard input):\n"
        "  {\"stations\": [{\"key\": \"rack\", \"units\": 1}],\n"
        "   \"clients\": [\n"
        "    {\"name\": \"Tove Aldane\", \"lifts\": [\n"
        "     {\"name\": \"Back squat\", \"pattern\": \"squat\", \"station\": \"rack\", \"block\": 0,\n"
        "      \"sets\": 3, \"work_seconds\": 40, \"rest_seconds\": 120, \"set_up_seconds\": 60},\n"
        "     {\"name\": \"Push-up\", \"pattern\": \"horizontal_push\", \"sets\": 3, \"work_seconds\": 30, \"rest_seconds\": 60}]},\n"
        "    {\"name\": \"Osric Bell\", \"lifts\": [\n"
        "     {\"name\": \"Front squat\", \"pattern\": \"squat\", \"station\": \"rack\", \"sets\": 3, \"work_seconds\": 40, \"rest_seconds\": 90}]}]}\n"
        "1 to 6 clients of 1 to 8 lifts each begin together. A lift takes its station for sets x (work + rest) + set-up: sets 1 to 12,\n"
        "work_seconds 5 to 600; rest_seconds (after each set, the last one too) and set_up_seconds 0 to 900, 0 where left out. station\n"
        "is the key of one of at most 12 stations, in small letters, digits and underscores; without it a lift needs none. units, 1 to\n"
        "20, is how many of a station there are, 1 where left out. Lifts of a lower block (0 to 9, 0 where left out) come first; inside\n"
        "a block the order is free, but two lifts of one pattern follow each other only where no order avoids it. pattern is squat,\n"
        "hinge, horizontal_push, horizontal_pull, vertical_push, vertical_pull, single_leg or carry_brace.\n"
        "The answer has the least waiting in all, then the earliest end, and says whether that is proved. --json writes for each client\n"
        "turns in order: lift (its place in the file, from 0), name, station and unit (from 1) or null, begin_seconds, end_seconds and\n"
        "waited_seconds before it; waited_seconds, end_seconds and pattern_repeated of the client; waited_seconds, end_seconds and\n"
        "proved of all. Seconds count from the start.");
}

}  // namespace

Command rotateCommand()
{
    return {QStringLiteral("rotate"),
            QStringLiteral("order the lifts of a small group for the least waiting"),
            QStringLiteral("FILE"),
            1,
            1,
            {},
            rotateDetails(),
            runRotate};
}

}  // namespace chalk::app
