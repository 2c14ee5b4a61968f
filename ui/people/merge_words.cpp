#include "ui/people/merge_words.h"

#include "core/tables/table_field.h"
#include "ui/common/formats.h"
#include "ui/people/import_words.h"

#include <QCoreApplication>
#include <QStringList>

namespace chalk::ui::people {

namespace {

using common::patternName;
using common::qstring;

QString mergeWord(const char* text)
{
    return QCoreApplication::translate("Merge", text);
}

QString patternNames(const std::vector<lifts::Pattern>& patterns)
{
    QStringList names;
    for (const lifts::Pattern pattern : patterns) {
        names.append(patternName(pattern));
    }
    return names.join(QStringLiteral(", "));
}

}  // namespace

QString mergeText(const store::MergePlan& plan)
{
    const QString into = qstring(plan.intoName);
    const QString from = qstring(plan.fromName);
    QStringList lines{mergeWord("%1 stays. The other record, %2, is withdrawn.").arg(into, from)};
    if (!plan.liftsMoved.empty()) {
        lines.append(mergeWord("These lifts go over whole: %1.").arg(patternNames(plan.liftsMoved)));
    }
    if (!plan.liftsJoined.empty()) {
        lines.append(mergeWord("Both have these lifts; what was done is put together by date and judged anew: %1.").arg(patternNames(plan.liftsJoined)));
    }
    lines.append(mergeWord("Sessions that go over: %1. Cautions: %2.").arg(plan.sessions).arg(plan.cautions));
    QStringList filled;
    for (const std::string& field : plan.filled) {
        filled.append(fieldName(tables::fieldOf(field).value_or(tables::Field::Name)));
    }
    if (!filled.isEmpty()) {
        lines.append(mergeWord("Gaps that are filled: %1.").arg(filled.join(QStringLiteral(", "))));
    }
    if (plan.formsThatStay > 0) {
        lines.append(mergeWord("Forms, letters and decisions that stay in the withdrawn file: %1.").arg(plan.formsThatStay));
    }
    return lines.join(QLatin1Char('\n'));
}

}  // namespace chalk::ui::people
