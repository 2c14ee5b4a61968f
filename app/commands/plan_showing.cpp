#include "app/commands/plan_showing.h"

#include "app/commands/direction_json.h"
#include "app/commands/direction_text.h"
#include "core/direction/planned_load.h"
#include "core/exchange/plan_csv.h"
#include "ui/common/check_in_words.h"
#include "ui/common/direction_words.h"
#include "ui/common/formats.h"
#include "ui/common/plan_words.h"
#include "ui/common/theme.h"
#include "ui/common/whole_file.h"
#include "ui/print/plan_sheet.h"
#include "ui/print/sheet_printing.h"

#include <QDate>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace chalk::app {

namespace {

using ui::common::qstring;
using ui::print::PlanPaper;

int writePlanCsv(const CommandContext& context, const PlanPaper& paper)
{
    const exchange::PlanForCsv plan{paper.plan, paper.lifts, paper.names};
    const QByteArray csv =
        context.has(QStringLiteral("compare")) ? exchange::planComparisonCsvOf(plan, paper.done, paper.today) : exchange::planCsvOf(plan);
    const QString file = context.value(QStringLiteral("csv"));
    if (file == QLatin1String("-")) {
        context.out << csv;
        return kDone;
    }
    const auto fault = ui::common::writeWhole(file, csv);
    return fault ? context.giveUp(QStringLiteral("%1 cannot be written: %2").arg(file, *fault)) : kDone;
}

int writePlanPdf(const CommandContext& context, const PlanPaper& paper)
{
    ui::common::loadFonts();
    const auto sheets = ui::print::planSheets(paper, ui::print::PaperSize::A4);
    const QString title = ui::common::planTitle(paper.plan.plan);
    const QString file = context.value(QStringLiteral("pdf"));
    const QDate created = QDate(1970, 1, 1).addDays(context.today.daysSince1970());
    if (const auto fault = ui::print::savePdf(file, ui::print::sheetsPdf(sheets, ui::print::PaperSize::A4, title, created))) {
        return context.giveUp(QStringLiteral("%1: %2").arg(file, *fault));
    }
    if (context.isJson()) {
        context.out << QJsonDocument(
                           QJsonObject{{QStringLiteral("file"), file}, {QStringLiteral("pages"), static_cast<qint64>(sheets.size())}})
                           .toJson();
    } else {
        context.out << title << ", " << qstring(paper.clientName) << ": in " << file << '\n';
    }
    return kDone;
}

}  // namespace

int showPlan(const CommandContext& context, const PlanPaper& paper)
{
    const bool isComparison = context.has(QStringLiteral("compare"));
    if (context.has(QStringLiteral("csv"))) {
        return writePlanCsv(context, paper);
    }
    if (context.has(QStringLiteral("pdf"))) {
        return writePlanPdf(context, paper);
    }
    if (context.isJson()) {
        context.out << QJsonDocument(isComparison ? comparisonJson(paper) : planJson(paper)).toJson();
    } else if (isComparison) {
        writeComparison(context.out, paper);
    } else {
        writePlan(context.out, paper);
    }
    return kDone;
}

void showTestedMaxima(const CommandContext& context, const std::vector<direction::TestedMaximum>& tests,
                      const std::vector<direction::LiftForPlan>& lifts, const lifts::Catalogue& catalogue)
{
    QJsonArray array;
    for (const direction::TestedMaximum& test : tests) {
        const direction::LiftForPlan* lift = direction::liftWith(lifts, test.lift);
        const QString name = lift == nullptr ? QString() : ui::common::exerciseNameText(lift->exerciseKey, catalogue);
        const QString load = lift == nullptr ? ui::common::numberText(test.load) : ui::common::planLoadText(*lift, test.load);
        if (context.isJson()) {
            array.append(
                QJsonObject{{QStringLiteral("day"), qstring(test.day.toString())},
                            {QStringLiteral("lift"), name},
                            {QStringLiteral("load"), test.load.centi() / 100.0},
                            {QStringLiteral("unit"), lift == nullptr ? QString() : ui::common::unitText(lift->machine.setup().unit)},
                            {QStringLiteral("reps"), test.reps.value()},
                            {QStringLiteral("end"), qstring(direction::keyOf(test.end))},
                            {QStringLiteral("note"), qstring(test.note)}});
        } else {
            context.out << qstring(test.day.toString()) << "  " << name << ", " << test.reps.value() << " × " << load << ". "
                        << ui::common::testEndText(test.end) << '\n';
        }
    }
    if (context.isJson()) {
        context.out << QJsonDocument(array).toJson();
    } else if (tests.empty()) {
        context.out << "No maximum was tested.\n";
    }
}

}  // namespace chalk::app
