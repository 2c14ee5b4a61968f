#include "ui/print/plan_dialog.h"

#include "core/store/plan_reader.h"
#include "ui/common/direction_words.h"
#include "ui/print/paper_dialog.h"
#include "ui/print/plan_paper.h"
#include "ui/print/plan_sheet.h"

#include <QDate>

#include <algorithm>

namespace chalk::ui::print {

namespace {

/// The plan to print; nothing where none was begun yet.
store::Result<std::optional<chalk::direction::ClientPlan>> planToPrint(store::PlanReader& plans, base::ClientId client, base::Date today)
{
    auto running = plans.running(client, today);
    if (!running || *running) {
        return running;
    }
    const auto history = plans.history(client);
    if (!history) {
        return tl::make_unexpected(history.error());
    }
    const auto last =
        std::find_if(history->begin(), history->end(), [today](const chalk::direction::ClientPlan& plan) { return plan.begunOn <= today; });
    return last == history->end() ? std::nullopt : std::optional(*last);
}

}  // namespace

store::Result<std::unique_ptr<PaperDialog>> planDialog(const CardDialogServices& services, store::Database& database,
                                                       const lifts::Catalogue& catalogue, base::ClientId client, base::Date today,
                                                       QWidget* parent)
{
    store::PlanReader plans(database);
    const auto plan = planToPrint(plans, client, today);
    if (!plan) {
        return tl::make_unexpected(plan.error());
    }
    if (!*plan) {
        return nullptr;
    }
    auto paper = readPlanPaper(database, catalogue, **plan, today);
    if (!paper) {
        return tl::make_unexpected(paper.error());
    }
    const QString title = common::planTitle(paper->plan.plan);
    const QString name = planFileName(*paper);
    const auto sheets = [paper = *std::move(paper)](PaperSize size) { return planSheets(paper, size); };
    return std::make_unique<PaperDialog>(services, title, name, sheets, QDate(1970, 1, 1).addDays(today.daysSince1970()), parent);
}

}  // namespace chalk::ui::print
