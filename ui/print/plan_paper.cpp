#include "ui/print/plan_paper.h"

#include "core/direction/planned_load.h"
#include "core/store/client_reader.h"
#include "core/store/plan_reader.h"
#include "core/store/studio_reader.h"
#include "ui/common/check_in_words.h"
#include "ui/common/formats.h"

#include <algorithm>

namespace chalk::ui::print {

namespace {

constexpr int kDaysOfPlanWeek = 7;

std::string nameOfLift(const chalk::direction::LiftForPlan& lift, const lifts::Catalogue& catalogue)
{
    const QString name = common::exerciseNameText(lift.exerciseKey, catalogue);
    return (name.isEmpty() ? common::patternName(lift.pattern) : name).toStdString();
}

std::vector<sessions::CardCaution> cautionsOf(const std::vector<clients::Caution>& cautions)
{
    std::vector<sessions::CardCaution> said;
    for (const clients::Caution& caution : cautions) {
        said.push_back({caution.bodyPart, caution.text.empty() ? caution.shortText : caution.text});
    }
    return said;
}

void nameLifts(PlanPaper& paper, const lifts::Catalogue& catalogue)
{
    const auto& planned = paper.plan.plan.wishes.lifts;
    for (std::size_t i = 0; i < planned.size(); ++i) {
        const chalk::direction::LiftForPlan* lift = paper.liftAt(i);
        paper.names.push_back(lift == nullptr ? std::string() : nameOfLift(*lift, catalogue));
    }
    for (const chalk::direction::LiftForPlan& lift : paper.lifts) {
        if (std::none_of(planned.begin(), planned.end(),
                         [&lift](const chalk::direction::PlannedLift& one) { return one.lift == lift.lift; })) {
            paper.beside.push_back(nameOfLift(lift, catalogue));
        }
    }
}

}  // namespace

const chalk::direction::LiftForPlan* PlanPaper::liftAt(std::size_t lift) const
{
    return chalk::direction::liftWith(lifts, plan.plan.wishes.lifts[lift].lift);
}

base::Load PlanPaper::singleIn(std::size_t lift, base::Date monday) const
{
    return isOver(monday) ? plan.singles[lift].load : chalk::direction::singleNow(plan, lift, lifts).load;
}

bool PlanPaper::isOver(base::Date monday) const
{
    return monday + kDaysOfPlanWeek <= today;
}

store::Result<PlanPaper> readPlanPaper(store::Database& database, const lifts::Catalogue& catalogue,
                                       const chalk::direction::ClientPlan& plan, base::Date today)
{
    store::PlanReader plans(database);
    const auto file = store::ClientReader(database).read(plan.client, today);
    if (!file) {
        return tl::make_unexpected(file.error());
    }
    const auto studio = store::StudioReader(database).name();
    if (!studio) {
        return tl::make_unexpected(studio.error());
    }
    auto lifts = plans.lifts(plan.client, today);
    if (!lifts) {
        return tl::make_unexpected(lifts.error());
    }
    auto done = plans.done(plan, today);
    if (!done) {
        return tl::make_unexpected(done.error());
    }
    PlanPaper paper{*studio, file->client.name,          file->coachName, today, plan, *std::move(lifts), {},
                    {},      cautionsOf(file->cautions), *std::move(done)};
    nameLifts(paper, catalogue);
    return paper;
}

}  // namespace chalk::ui::print
