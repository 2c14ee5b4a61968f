#include "app/commands/client_paper.h"

#include "app/commands/client_choice.h"
#include "ui/common/formats.h"
#include "ui/common/health_words.h"
#include "ui/common/theme.h"
#include "ui/onboarding/paper_content.h"
#include "ui/print/sheet_printing.h"

#include <QDate>
#include <QJsonDocument>
#include <QJsonObject>

#include <optional>

namespace chalk::app {

namespace {

using ui::common::qstring;
using ui::print::HealthPaper;
using ui::print::HealthPaperContent;
using ui::print::PaperSize;

/// What was asked for.
struct PaperWish {
    HealthPaper paper = HealthPaper::Consent;
    PaperSize size = PaperSize::A4;
};

/// Nothing, and a message, where a value cannot be.
std::optional<PaperWish> paperWishOf(const CommandContext& context)
{
    PaperWish wish;
    const QString paper = context.value(QStringLiteral("paper"));
    const QString size = context.value(QStringLiteral("size"), QStringLiteral("a4"));
    if (paper == QLatin1String("intake")) {
        wish.paper = HealthPaper::Intake;
    } else if (paper == QLatin1String("letter")) {
        wish.paper = HealthPaper::DoctorLetter;
    } else if (paper != QLatin1String("consent")) {
        context.refuse(QStringLiteral("--paper must be consent, intake or letter"));
        return std::nullopt;
    }
    if (size == QLatin1String("letter")) {
        wish.size = PaperSize::Letter;
    } else if (size != QLatin1String("a4")) {
        context.refuse(QStringLiteral("--size must be a4 or letter"));
        return std::nullopt;
    }
    return wish;
}

/// Why a paper cannot be made now, and what to do first; empty where it can.
QString whyNotYet(HealthPaper paper, const HealthPaperContent& content)
{
    const QString name = qstring(content.client.name);
    if (paper == HealthPaper::Consent) {
        return {};
    }
    if (!clients::canKeepHealth(content.profile, content.client.birthDate, content.today)) {
        return QStringLiteral("%1 has not agreed yet that health data is kept; begin with --paper consent").arg(name);
    }
    if (paper == HealthPaper::DoctorLetter) {
        return ui::onboarding::isDoctorAsked(content.clearance, content.outcome) ? QString() : QStringLiteral("nothing in the file of %1 asks for a doctor's view; no letter is needed").arg(name);
    }
    if (content.intake == clients::HealthIntake()) {
        return QStringLiteral("%1 has not been asked the health questions yet; ask them together in the window first").arg(name);
    }
    return content.outcome.isComplete() ? QString() : QStringLiteral("the health intake of %1 is not finished. %2").arg(name, ui::common::openAnswersText(content.outcome));
}

int writePaper(const CommandContext& context, const PaperWish& wish, const HealthPaperContent& content)
{
    ui::common::loadFonts();
    const auto sheets = ui::print::healthSheets(wish.paper, content, wish.size);
    const QString title = ui::print::titleOf(wish.paper);
    const QString file = context.value(QStringLiteral("out"), ui::print::paperFileName(wish.paper, content) + QStringLiteral(".pdf"));
    const QDate created = QDate(1970, 1, 1).addDays(context.today.daysSince1970());
    if (const auto fault = ui::print::savePdf(file, ui::print::sheetsPdf(sheets, wish.size, title, created))) {
        return context.giveUp(QStringLiteral("%1: %2").arg(file, *fault));
    }
    if (context.isJson()) {
        context.out << QJsonDocument(QJsonObject{{QStringLiteral("file"), file},
                                                 {QStringLiteral("paper"), context.value(QStringLiteral("paper"))},
                                                 {QStringLiteral("pages"), static_cast<qint64>(sheets.size())}})
                           .toJson(QJsonDocument::Compact)
                    << '\n';
    } else {
        context.out << title << ", " << qstring(content.client.name) << ": in " << file << '\n';
    }
    return kDone;
}

}  // namespace

int makeClientPaper(const CommandContext& context)
{
    const auto wish = paperWishOf(context);
    if (!wish) {
        return kWrongUse;
    }
    const auto database = context.openStudio(store::OpenMode::ReadOnly);
    if (!database) {
        return context.report(database.error());
    }
    const auto client = chooseClient(context, **database, context.operands.front());
    if (!client) {
        return kWrongUse;
    }
    const auto content = ui::onboarding::readPaperContent(**database, *client, context.today);
    if (!content) {
        return context.report(content.error());
    }
    if (const QString why = whyNotYet(wish->paper, *content); !why.isEmpty()) {
        return context.giveUp(why);
    }
    return writePaper(context, *wish, *content);
}

std::vector<Option> clientPaperOptions()
{
    return {{QStringLiteral("paper"), QStringLiteral("PAPER"), QStringLiteral("make a paper as PDF: consent, intake or letter (to the doctor)")},
            {QStringLiteral("size"), QStringLiteral("SIZE"), QStringLiteral("paper: a4 (as by itself) or letter")},
            {QStringLiteral("out"), QStringLiteral("FILE"), QStringLiteral("paper: where the PDF goes; PAPER-NAME-DATE.pdf where it is left out")}};
}

QString givenPaperOption(const CommandContext& context)
{
    for (const Option& option : clientPaperOptions()) {
        if (context.has(option.name)) {
            return QStringLiteral("--") + option.name;
        }
    }
    return {};
}

QString clientPaperDetails()
{
    return QStringLiteral(
        "--paper makes what onboarding prints: consent at any time, also before anything is agreed to; intake once every question is\n"
        "answered; letter where a doctor's view is asked for. It only reads: that a letter went is noted in the window. The papers are no\n"
        "diagnosis.");
}

}  // namespace chalk::app
