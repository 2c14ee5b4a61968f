#include "app/commands/week_command.h"

#include "app/commands/stop_request.h"
#include "app/commands/week_proposal.h"
#include "core/exchange/bookings_csv.h"
#include "core/exchange/catalogue_json.h"
#include "core/exchange/icalendar.h"
#include "core/store/session_writer.h"
#include "core/store/studio_reader.h"
#include "core/store/week_changes.h"
#include "core/store/week_reader.h"
#include "core/week/week_bookings.h"
#include "core/week/week_search.h"
#include "ui/common/booking_words.h"
#include "ui/common/closure_words.h"
#include "ui/common/formats.h"
#include "ui/print/roster_week_sheet.h"
#include "ui/print/sheet_printing.h"

#include <QDate>
#include <QElapsedTimer>
#include <QJsonDocument>

#include <algorithm>
#include <array>
#include <utility>

namespace chalk::app {

namespace {

using ui::common::qstring;
using week::Booking;

constexpr int kUsualFillSeconds = 2;
constexpr int kMostFillSeconds = 600;

/// The Monday of --week, or of today's week; nothing where it is no week.
std::optional<base::Date> mondayAsked(const CommandContext& context)
{
    if (!context.has(QStringLiteral("week"))) {
        return context.today - context.today.weekday();
    }
    const auto asked = base::parseIsoWeek(context.value(QStringLiteral("week")).toStdString());
    return asked ? base::Date::mondayOf(*asked) : std::nullopt;
}

/// Proposes times for what is missing. What is booked stays, unless --move allows bookings that are not locked to move.
week::WeekPlan filled(const week::WeekCase& week, bool canMove, int seconds)
{
    constexpr std::int64_t kSlice = 500;
    constexpr qint64 kMilliseconds = 1000;
    week::FillOptions options;
    options.present = &week.booked;
    for (const auto& booked : week.booked) {
        options.fixed.push_back(booked.has_value() && !canMove);
    }
    week::WeekSearch search(week.problem, options);
    const StopRequest stop;
    QElapsedTimer timer;
    timer.start();
    while (!StopRequest::isMade() && !timer.hasExpired(seconds * kMilliseconds) && search.advance(kSlice)) {
    }
    return search.best();
}

/// The bookings of whom --client and --coach name; everybody's without them. Nothing, and one line is written, where a name is nobody's.
std::optional<std::vector<Booking>> chosen(const CommandContext& context, const std::vector<Booking>& bookings)
{
    week::BookingFilter filter;
    const auto keyNamed = [&](const char* option, auto nameOf, auto keyOf) -> std::optional<std::string> {
        for (const Booking& booking : bookings) {
            if (qstring(nameOf(booking)).compare(context.value(QLatin1String(option)), Qt::CaseInsensitive) == 0) {
                return keyOf(booking);
            }
        }
        context.refuse(QStringLiteral("nobody called %1 has a session in that week").arg(context.value(QLatin1String(option))));
        return std::nullopt;
    };
    if (context.has(QStringLiteral("client"))) {
        filter.clientKey = keyNamed("client", [](const Booking& b) { return b.clientName; }, [](const Booking& b) { return b.clientKey; });
    }
    if (context.has(QStringLiteral("coach"))) {
        filter.coachKey = keyNamed("coach", [](const Booking& b) { return b.coachName; }, [](const Booking& b) { return b.coachKey; });
    }
    if (context.has(QStringLiteral("client")) != filter.clientKey.has_value() || context.has(QStringLiteral("coach")) != filter.coachKey.has_value()) {
        return std::nullopt;
    }
    return week::selectedBookings(bookings, filter);
}

constexpr std::array<std::pair<const char*, ui::print::PaperSize>, 2> kWallPapers{{{"a4", ui::print::PaperSize::A4}, {"letter", ui::print::PaperSize::Letter}}};

std::optional<ui::print::PaperSize> wallPaperAsked(const CommandContext& context)
{
    for (const auto& [key, paper] : kWallPapers) {
        if (context.value(QStringLiteral("paper")) == QLatin1String(key)) {
            return paper;
        }
    }
    return std::nullopt;
}

/// The week for the wall, or one coach's, as a PDF.
int writeWall(const CommandContext& context, store::Database& database, const WeekProposal& proposal, const std::vector<Booking>& bookings)
{
    const auto paper = wallPaperAsked(context);
    if (!paper) {
        return context.refuse(QStringLiteral("--paper must be a4 or letter"));
    }
    const auto studio = store::StudioReader(database).name();
    if (!studio) {
        return context.report(studio.error());
    }
    const QString file = context.value(QStringLiteral("out"), QStringLiteral("week-%1.pdf").arg(qstring(base::toString(proposal.facts.monday.isoWeek()))));
    const bool isOneCoach = context.has(QStringLiteral("coach"));
    const QString title = isOneCoach && !bookings.empty() ? qstring(bookings.front().coachName) : qstring(*studio);
    const ui::print::RosterWeek week{proposal.facts.monday, title, bookings, ui::common::closureNotes(proposal.facts), isOneCoach, context.has(QStringLiteral("initials"))};
    const auto sheets = ui::print::rosterWeekSheets(week, *paper);
    const auto created = context.today.ymd();
    const QDate day(static_cast<int>(created.year()), static_cast<int>(static_cast<unsigned>(created.month())), static_cast<int>(static_cast<unsigned>(created.day())));
    if (const auto fault = ui::print::savePdf(file, ui::print::sheetsPdf(sheets, *paper, title, day))) {
        return context.giveUp(QStringLiteral("%1: %2").arg(file, *fault));
    }
    context.out << QStringLiteral("The week is in %1, on %2 pages.\n").arg(file).arg(sheets.size());
    return kDone;
}

/// Writes the bookings in the form that is asked for; false where none is.
bool writeBookings(const CommandContext& context, const std::vector<Booking>& bookings)
{
    const bool hasInitials = context.has(QStringLiteral("initials"));
    if (context.has(QStringLiteral("ics"))) {
        exchange::CalendarOptions options;
        options.stamp = exchange::stampOf(context.atUtc(), context.today);
        options.owner = context.has(QStringLiteral("client")) ? exchange::CalendarOwner::Client : exchange::CalendarOwner::Coach;
        options.hasInitials = hasInitials;
        context.out << exchange::icalendarOf(bookings, options);
    } else if (context.has(QStringLiteral("csv"))) {
        context.out << exchange::bookingsCsvOf(bookings, hasInitials);
    } else if (context.has(QStringLiteral("message"))) {
        context.out << ui::common::bookingLines(bookings);
    } else {
        return false;
    }
    return true;
}

int keepProposals(const CommandContext& context, store::Database& database, const WeekProposal& proposal)
{
    const store::BookingChanges changes = store::changesTo(proposal.facts, proposal.week, proposal.plan);
    if (changes.isEmpty()) {
        return kDone;
    }
    const auto kept = store::SessionWriter(database, context.atUtc).apply(changes);
    return kept ? kDone : context.report(kept.error());
}

int writeWeek(const CommandContext& context, store::Database& database, const WeekProposal& proposal)
{
    const auto bookings = chosen(context, week::bookingsOf(proposal.facts, proposal.week, proposal.plan));
    if (!bookings) {
        return kWrongUse;
    }
    if (context.has(QStringLiteral("keep"))) {
        if (const int status = keepProposals(context, database, proposal); status != kDone) {
            return status;
        }
    }
    if (context.has(QStringLiteral("paper"))) {
        return writeWall(context, database, proposal, *bookings);
    }
    if (writeBookings(context, *bookings)) {
        return kDone;
    }
    if (context.isJson()) {
        context.out << QJsonDocument(toJson(proposal)).toJson(QJsonDocument::Indented);
    } else {
        writeText(context.out, proposal);
    }
    return kDone;
}

int runWeek(const CommandContext& context)
{
    const auto monday = mondayAsked(context);
    if (!monday) {
        return context.refuse(QStringLiteral("--week must be an ISO week such as 2026-W49"));
    }
    const auto seconds = context.wholeNumber(QStringLiteral("seconds"), kUsualFillSeconds, 1, kMostFillSeconds);
    if (!seconds) {
        return kWrongUse;
    }
    const bool isFilled = context.has(QStringLiteral("fill"));
    if (context.has(QStringLiteral("keep")) && !isFilled) {
        return context.refuse(QStringLiteral("--keep keeps what --fill proposes: give both"));
    }
    const auto database = context.openStudio(context.has(QStringLiteral("keep")) ? store::OpenMode::MustExist : store::OpenMode::ReadOnly);
    if (!database) {
        return context.report(database.error());
    }
    const auto facts = store::WeekReader(**database, exchange::builtInCatalogue()).read(*monday, context.today, 0);
    if (!facts) {
        return context.report(facts.error());
    }
    WeekProposal proposal;
    proposal.facts = *facts;
    proposal.week = week::caseOf(proposal.facts);
    proposal.plan = isFilled ? filled(proposal.week, context.has(QStringLiteral("move")), *seconds) : proposal.week.booked;
    judge(proposal);
    return writeWeek(context, **database, proposal);
}

}  // namespace

Command weekCommand()
{
    return {QStringLiteral("week"),
            QStringLiteral("show a week's bookings and what is missing, and propose times for it"),
            {},
            0,
            0,
            {{QStringLiteral("week"), QStringLiteral("WEEK"), QStringLiteral("an ISO week such as 2026-W49; this week where it is left out")},
             {QStringLiteral("fill"), {}, QStringLiteral("propose times for the sessions that are missing; nothing is saved")},
             {QStringLiteral("move"), {}, QStringLiteral("with --fill: bookings that are not locked may move too")},
             {QStringLiteral("seconds"), QStringLiteral("N"), QStringLiteral("with --fill: search for at most so long; 2 where it is left out")},
             {QStringLiteral("keep"), {}, QStringLiteral("with --fill: book what is proposed")},
             {QStringLiteral("ics"), {}, QStringLiteral("write the bookings as iCalendar")},
             {QStringLiteral("csv"), {}, QStringLiteral("write the bookings as CSV")},
             {QStringLiteral("message"), {}, QStringLiteral("write the bookings as lines to send")},
             {QStringLiteral("paper"), QStringLiteral("SIZE"), QStringLiteral("write the week for the wall as a PDF, on a4 or letter")},
             {QStringLiteral("out"), QStringLiteral("FILE"), QStringLiteral("where the PDF goes; week-WEEK.pdf where it is left out")},
             {QStringLiteral("client"), QStringLiteral("NAME"), QStringLiteral("only this client's, in the four forms above")},
             {QStringLiteral("coach"), QStringLiteral("NAME"), QStringLiteral("only this coach's")},
             {QStringLiteral("initials"), {}, QStringLiteral("clients by their initials, in iCalendar, CSV and on paper")}},
            QStringLiteral("What is missing is counted from the sessions a week of each client. A session that was cancelled in time is missing, one that was\n"
                           "missed or cancelled late is not. Of each session without a time, the two rules that block most of its times are named, and the\n"
                           "cheapest ways out. Who waits for clearance is proposed no time."),
            runWeek,
            Painting::WithPaper};
}

}  // namespace chalk::app
