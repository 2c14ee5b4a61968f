#include "ui/common/plan_week_text.h"

#include <QCoreApplication>

namespace chalk::ui::common {

namespace {

QString planWeekWords(const char* text)
{
    return QCoreApplication::translate("PlanWeek", text);
}

QString withKind(const QString& text, const progression::BlockMark& week)
{
    if (week.isTest) {
        return planWeekWords(QT_TRANSLATE_NOOP("PlanWeek", "%1, test")).arg(text);
    }
    return week.isLighter ? planWeekWords(QT_TRANSLATE_NOOP("PlanWeek", "%1, lighter")).arg(text) : text;
}

}  // namespace

QString planWeekText(const progression::BlockMark& week)
{
    return withKind(planWeekWords(QT_TRANSLATE_NOOP("PlanWeek", "Plan week %1 of %2")).arg(week.week).arg(week.weeks), week);
}

QString planWeekInSentence(const progression::BlockMark& week)
{
    return withKind(planWeekWords(QT_TRANSLATE_NOOP("PlanWeek", "plan week %1 of %2")).arg(week.week).arg(week.weeks), week);
}

}  // namespace chalk::ui::common
