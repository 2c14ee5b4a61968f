#include "app/commands/cards_command.h"

#include "core/exchange/catalogue_json.h"
#include "core/sessions/card_content.h"
#include "core/sessions/session_lifts.h"
#include "core/store/client_reader.h"
#include "core/store/session_reader.h"
#include "ui/common/formats.h"
#include "ui/common/theme.h"
#include "ui/print/card_printing.h"
#include "ui/print/sheet_printing.h"

#include <QDate>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace chalk::app {

namespace {

using sessions::CardContent;
using sessions::SessionState;
using ui::common::qstring;

/// The cards of a day, and the names of those who get none because their clearance is missing.
struct DayCards {
    std::vector<CardContent> cards;
    QStringList withheld;
};

CardContent cardOf(const store::NamedSession& session, const store::ClientFile& file, const std::vector<base::LiftId>& planned, const lifts::Catalogue& catalogue)
{
    std::vector<sessions::LiftCandidate> candidates;
    for (const store::ClientLift& lift : file.lifts) {
        candidates.push_back({lift.lift.id, lift.lift.pattern, lift.lift.lastEvent});
    }
    std::vector<sessions::LiftDue> due;
    const auto chosen = planned.empty() ? sessions::chooseLifts(candidates) : planned;
    for (const base::LiftId id : chosen) {
        for (const store::ClientLift& lift : file.lifts) {
            const auto* exercise = catalogue.find(lift.lift.machine.kit().exerciseKey);
            if (lift.lift.id == id && exercise != nullptr) {
                due.push_back({exercise, &lift.lift.machine});
            }
        }
    }
    return sessions::cardContentOf({file.client, session.session, session.coachName, 0, file.cautions, due, catalogue});
}

store::Result<DayCards> cardsOf(store::Database& database, const CommandContext& context)
{
    DayCards day;
    const auto sessions = store::SessionReader(database).on(context.today);
    if (!sessions) {
        return tl::make_unexpected(sessions.error());
    }
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    const QString wanted = context.value(QStringLiteral("client"));
    for (const store::NamedSession& session : *sessions) {
        const bool isCancelled = session.session.state == SessionState::CancelledInTime || session.session.state == SessionState::CancelledLate;
        if (isCancelled || !qstring(session.clientName).contains(wanted, Qt::CaseInsensitive)) {
            continue;
        }
        const auto file = store::ClientReader(database).read(session.session.client, context.today);
        if (!file) {
            return tl::make_unexpected(file.error());
        }
        if (clients::isBlocked(file->clearance, context.today)) {
            day.withheld.append(qstring(session.clientName));
        } else if (const auto planned = store::SessionReader(database).plannedLifts(session.session.id)) {
            day.cards.push_back(cardOf(session, *file, *planned, catalogue));
        } else {
            return tl::make_unexpected(planned.error());
        }
    }
    return day;
}

void report(const CommandContext& context, const DayCards& day, const QString& file)
{
    if (context.isJson()) {
        context.out << QJsonDocument(QJsonObject{{QStringLiteral("file"), file},
                                                 {QStringLiteral("cards"), static_cast<qint64>(day.cards.size())},
                                                 {QStringLiteral("withheld"), QJsonArray::fromStringList(day.withheld)}})
                           .toJson(QJsonDocument::Compact)
                    << '\n';
        return;
    }
    for (const QString& name : day.withheld) {
        context.out << name << " gets no card before clearance is on file\n";
    }
    context.out << day.cards.size() << " cards are in " << file << '\n';
}

int runCards(const CommandContext& context)
{
    const QString paper = context.value(QStringLiteral("paper"), QStringLiteral("a5"));
    if (paper != QLatin1String("a5") && paper != QLatin1String("half-letter")) {
        return context.refuse(QStringLiteral("--paper must be a5 or half-letter"));
    }
    const auto database = context.openStudio(store::OpenMode::ReadOnly);
    if (!database) {
        return context.report(database.error());
    }
    const auto day = cardsOf(**database, context);
    if (!day) {
        return context.report(day.error());
    }
    if (day->cards.empty() && day->withheld.isEmpty()) {
        return context.giveUp(QStringLiteral("there is no session on %1 to make a card for").arg(qstring(context.today.toString())));
    }
    ui::common::loadFonts();
    const QString file = context.value(QStringLiteral("out"), QStringLiteral("cards-%1.pdf").arg(qstring(context.today.toString())));
    const auto size = paper == QLatin1String("a5") ? ui::print::PaperSize::A5 : ui::print::PaperSize::HalfLetter;
    const QDate created = QDate(1970, 1, 1).addDays(context.today.daysSince1970());
    if (const auto fault = ui::print::savePdf(file, ui::print::cardsPdf(day->cards, size, created))) {
        return context.giveUp(QStringLiteral("%1: %2").arg(file, *fault));
    }
    report(context, *day, file);
    return kDone;
}

}  // namespace

Command cardsCommand()
{
    return {QStringLiteral("cards"),
            QStringLiteral("make the session cards of a day as one PDF"),
            {},
            0,
            0,
            {{QStringLiteral("client"), QStringLiteral("NAME"), QStringLiteral("only of clients whose name holds NAME")},
             {QStringLiteral("paper"), QStringLiteral("SIZE"), QStringLiteral("a5 (as by itself) or half-letter")},
             {QStringLiteral("out"), QStringLiteral("FILE"), QStringLiteral("where the PDF goes; cards-DATE.pdf where it is left out")}},
            QStringLiteral("A session that nobody planned gets the lifts that have waited longest. Who waits for clearance gets no card."),
            runCards,
            Painting::Always};
}

}  // namespace chalk::app
