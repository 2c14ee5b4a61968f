#include "app/commands/cards_command.h"

#include "core/exchange/catalogue_json.h"
#include "core/store/card_reader.h"
#include "core/store/report_reader.h"
#include "core/store/week_settings.h"
#include "ui/common/formats.h"
#include "ui/common/theme.h"
#include "ui/print/report_sheet.h"
#include "ui/print/sheet_layout.h"
#include "ui/print/sheet_printing.h"

#include <QDate>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <array>

namespace chalk::app {

namespace {

using ui::common::qstring;
using ui::print::PaperFamily;
using ui::print::SheetLayout;
using ui::print::SheetRequest;

struct NamedLayout {
    const char* key;
    std::optional<SheetLayout> layout;  ///< nothing for reports, which are made from histories and not from cards
    const char* files;  ///< what a file is called where nobody says
    const char* title;
};

constexpr std::array<NamedLayout, 5> kLayouts{{{"card", SheetLayout::Card, "cards", "Session cards"},
                                               {"four", SheetLayout::FourCards, "cards", "Session cards"},
                                               {"group", SheetLayout::Group, "groups", "Group sheets"},
                                               {"week", SheetLayout::Week, "weeks", "Week sheets"},
                                               {"report", std::nullopt, "reports", "Progress reports"}}};

struct NamedPaper {
    const char* key;
    ui::print::PaperSize paper;
    PaperFamily family;
};

constexpr std::array<NamedPaper, 4> kPapers{{{"a5", ui::print::PaperSize::A5, PaperFamily::Iso},
                                             {"a4", ui::print::PaperSize::A4, PaperFamily::Iso},
                                             {"half-letter", ui::print::PaperSize::HalfLetter, PaperFamily::NorthAmerican},
                                             {"letter", ui::print::PaperSize::Letter, PaperFamily::NorthAmerican}}};

/// What the options come to.
struct CardsAsked {
    NamedLayout layout = kLayouts.front();
    ui::print::PaperSize paper = ui::print::PaperSize::A5;
    SheetRequest sheets;
    store::CardsWanted cards;
    QString when;  ///< `2026-11-24` or `2026-W48`

    planning::FloorStations stations{};  ///< that are named, in place of the studio's own
    [[nodiscard]] bool isReport() const { return !layout.layout; }
};

/// What goes on paper.
struct PaperWork {
    std::vector<ui::print::Sheet> sheets;
    std::size_t count = 0;  ///< of cards, or of reports
    QStringList withheld;
};

/// `rack=2,lane=1`: the stations that are named. Nothing where it says anything else.
std::optional<planning::FloorStations> stationsIn(const QString& text)
{
    planning::FloorStations stations;
    for (const QString& part : text.split(QLatin1Char(','))) {
        const auto station = lifts::stationOf(part.section(QLatin1Char('='), 0, 0).toStdString());
        bool isNumber = false;
        const int units = part.section(QLatin1Char('='), 1).toInt(&isNumber);
        if (!station || *station == lifts::Station::Floor || !isNumber || units < 1 || units > 20) {
            return std::nullopt;
        }
        stations[*station] = units;
    }
    return stations;
}

using Asked = tl::expected<CardsAsked, QString>;

Asked withLayout(const CommandContext& context, CardsAsked asked)
{
    const QString key = context.value(QStringLiteral("layout"), QStringLiteral("card"));
    const auto layout = std::find_if(kLayouts.begin(), kLayouts.end(), [&key](const NamedLayout& one) { return key == QLatin1String(one.key); });
    if (layout == kLayouts.end()) {
        return tl::make_unexpected(QStringLiteral("--layout must be card, four, group, week or report"));
    }
    asked.layout = *layout;
    asked.sheets.layout = layout->layout.value_or(SheetLayout::Week);  // a report goes on the same paper
    const bool isCard = layout->layout == SheetLayout::Card;
    const QString paper = context.value(QStringLiteral("paper"), isCard ? QStringLiteral("a5") : QStringLiteral("a4"));
    const auto size = std::find_if(kPapers.begin(), kPapers.end(), [&paper](const NamedPaper& one) { return paper == QLatin1String(one.key); });
    if (size == kPapers.end() || ui::print::paperOf(asked.sheets.layout, size->family) != size->paper) {
        return tl::make_unexpected(isCard ? QStringLiteral("--paper must be a5 or half-letter for the layout card")
                                          : QStringLiteral("--paper must be a4 or letter for the layout %1").arg(key));
    }
    asked.paper = size->paper;
    asked.sheets.family = size->family;
    return asked;
}

Asked withDays(const CommandContext& context, CardsAsked asked)
{
    asked.cards.first = context.today;
    asked.when = qstring(context.today.toString());
    const bool isWeek = asked.layout.layout == SheetLayout::Week;
    if (!context.has(QStringLiteral("week")) && !isWeek) {
        return asked;
    }
    const QString text = context.value(QStringLiteral("week"), qstring(base::toString(context.today.isoWeek())));
    const auto week = base::parseIsoWeek(text.toStdString());
    const auto monday = week ? base::Date::mondayOf(*week) : std::nullopt;
    if (!monday) {
        return tl::make_unexpected(QStringLiteral("--week must be a week such as 2026-W48"));
    }
    asked.cards.first = *monday;
    asked.cards.days = 7;
    asked.cards.isOpenOnly = true;
    asked.when = text;
    return asked;
}

Asked withStations(const CommandContext& context, CardsAsked asked)
{
    if (context.has(QStringLiteral("stations"))) {
        const auto stations = stationsIn(context.value(QStringLiteral("stations")));
        if (!stations) {
            return tl::make_unexpected(QStringLiteral("--stations must be such as rack=2,bench=1: 1 to 20 of rack, bench, machine, pull_up_bar or lane"));
        }
        asked.stations = *stations;
    }
    return asked;
}

Asked askedFor(const CommandContext& context)
{
    CardsAsked asked;
    asked.cards.name = context.value(QStringLiteral("client"));
    asked.sheets.hasInitialsOnly = context.has(QStringLiteral("initials"));
    asked.sheets.asOf = context.today;
    const auto next = [&context](auto step) { return [&context, step](CardsAsked so) { return step(context, std::move(so)); }; };
    return withLayout(context, std::move(asked)).and_then(next(withDays)).and_then(next(withStations));
}

void report(const CommandContext& context, const CardsAsked& asked, const PaperWork& work, const QString& file)
{
    const QString kind = asked.isReport() ? QStringLiteral("report") : QStringLiteral("card");
    if (context.isJson()) {
        context.out << QJsonDocument(QJsonObject{{QStringLiteral("file"), file},
                                                 {kind + QLatin1Char('s'), static_cast<qint64>(work.count)},
                                                 {QStringLiteral("sheets"), static_cast<qint64>(work.sheets.size())},
                                                 {QStringLiteral("withheld"), QJsonArray::fromStringList(work.withheld)}})
                           .toJson(QJsonDocument::Compact)
                    << '\n';
        return;
    }
    for (const QString& name : work.withheld) {
        context.out << name << " gets no card before clearance is on file\n";
    }
    const auto counted = [](std::size_t count, const QString& one) { return QStringLiteral("%1 %2%3").arg(count).arg(one, count == 1 ? QString() : QStringLiteral("s")); };
    context.out << counted(work.count, kind) << " on " << counted(work.sheets.size(), QStringLiteral("sheet")) << ", in " << file << '\n';
}

store::Result<PaperWork> cardWork(store::Database& database, const CardsAsked& asked)
{
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    const auto read = store::CardReader(database, catalogue).read(asked.cards);
    if (!read) {
        return tl::make_unexpected(read.error());
    }
    const auto studio = store::WeekSettings(database).studioWeek();
    if (!studio) {
        return tl::make_unexpected(studio.error());
    }
    SheetRequest request = asked.sheets;
    request.stations = studio->stations;
    for (const auto& [station, units] : asked.stations) {
        request.stations[station] = units;
    }
    PaperWork work{ui::print::sheetsOf(read->cards, request), read->cards.size(), {}};
    for (const std::string& name : read->withheld) {
        work.withheld.append(qstring(name));
    }
    return work;
}

store::Result<PaperWork> reportWork(store::Database& database, const CardsAsked& asked)
{
    const base::Date last = std::min(asked.sheets.asOf, asked.cards.first + (asked.cards.days - 1));
    const lifts::Catalogue catalogue = exchange::builtInCatalogue();
    auto reports = store::ReportReader(database, catalogue).readAll(asked.cards.name, last);
    if (!reports) {
        return tl::make_unexpected(reports.error());
    }
    PaperWork work{{}, reports->size(), {}};
    for (checkin::ProgressReport& one : *reports) {
        if (asked.sheets.hasInitialsOnly) {
            one.clientName = clients::dottedInitialsOf(one.clientName);
        }
        const auto sheets = ui::print::reportSheets(one, asked.paper);
        work.sheets.insert(work.sheets.end(), sheets.begin(), sheets.end());
    }
    return work;
}

int giveUpOnNothing(const CommandContext& context, const CardsAsked& asked, const QStringList& withheld)
{
    if (!withheld.isEmpty()) {
        return context.giveUp(QStringLiteral("there is no card to make: clearance is not on file for %1").arg(withheld.join(QStringLiteral(", "))));
    }
    if (asked.isReport()) {
        return context.giveUp(QStringLiteral("there is nobody with a record to report on"));
    }
    const QString in = asked.cards.days > 1 ? QStringLiteral("in") : QStringLiteral("on");
    return context.giveUp(QStringLiteral("there is no session %1 %2 to make a card for").arg(in, asked.when));
}

int runCards(const CommandContext& context)
{
    const Asked asked = askedFor(context);
    if (!asked) {
        return context.refuse(asked.error());
    }
    const auto database = context.openStudio(store::OpenMode::ReadOnly);
    if (!database) {
        return context.report(database.error());
    }
    ui::common::loadFonts();
    const auto work = asked->isReport() ? reportWork(**database, *asked) : cardWork(**database, *asked);
    if (!work) {
        return context.report(work.error());
    }
    if (work->count == 0) {
        return giveUpOnNothing(context, *asked, work->withheld);
    }
    const QString file = context.value(QStringLiteral("out"), QStringLiteral("%1-%2.pdf").arg(QLatin1String(asked->layout.files), asked->when));
    const QDate created = QDate(1970, 1, 1).addDays(context.today.daysSince1970());
    const auto pdf = ui::print::sheetsPdf(work->sheets, asked->paper, QString::fromLatin1(asked->layout.title), created);
    if (const auto fault = ui::print::savePdf(file, pdf)) {
        return context.giveUp(QStringLiteral("%1: %2").arg(file, *fault));
    }
    report(context, *asked, *work, file);
    return kDone;
}

QString cardsDetails()
{
    return QStringLiteral(
        "--layout is one of\n"
        "  card   a card for each session, on a5 or half-letter\n"
        "  four   four cards to a sheet, to be cut, on a4 or letter; so are those below\n"
        "  group  everybody of one time on a sheet that lies: who does what, when and where, in the order with the least waiting\n"
        "  week   a client's open sessions of a week\n"
        "  report a client's last twelve weeks, for everybody or those of --client; up to the end of --week where that is given\n"
        "A session that nobody planned gets the lifts that have waited longest. Who waits for clearance gets no card;\nwhere nobody else comes, nothing is written.");
}

}  // namespace

Command cardsCommand()
{
    return {QStringLiteral("cards"),
            QStringLiteral("put the sessions of a day or a week on paper, as one PDF"),
            {},
            0,
            0,
            {{QStringLiteral("layout"), QStringLiteral("LAYOUT"), QStringLiteral("card (as by itself), four, group, week or report")},
             {QStringLiteral("paper"), QStringLiteral("SIZE"), QStringLiteral("a5 or half-letter for card, else a4 or letter; a5 or a4 where it is left out")},
             {QStringLiteral("week"), QStringLiteral("WEEK"), QStringLiteral("the open sessions of a week such as 2026-W48, not those of the day")},
             {QStringLiteral("client"), QStringLiteral("NAME"), QStringLiteral("only of clients whose name holds NAME")},
             {QStringLiteral("initials"), {}, QStringLiteral("clients' names as initials, for paper that lies open")},
             {QStringLiteral("stations"), QStringLiteral("LIST"), QStringLiteral("what a group has, such as rack=1,bench=2, in place of the studio's own stations")},
             {QStringLiteral("out"), QStringLiteral("FILE"), QStringLiteral("where the PDF goes; LAYOUTs-DATE.pdf such as groups-2026-11-24.pdf where left out")}},
            cardsDetails(),
            runCards,
            Painting::Always};
}

}  // namespace chalk::app
