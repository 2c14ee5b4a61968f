#include "core/direction/plan_curves.h"
#include "ui/common/direction_words.h"
#include "ui/print/plan_parts.h"

namespace chalk::ui::print {

PlanNotes::PlanNotes(const chalk::direction::BlockPlan& plan)
{
    for (const chalk::direction::PlanDeparture& found : chalk::direction::departuresOf(plan)) {
        const QString text = common::departureText(found.departure);
        if (!m_texts.contains(text)) {
            m_texts.append(text);
        }
        QString& marks = m_marks[{found.week, found.lift, found.exposure}];
        marks += (marks.isEmpty() ? QString() : QStringLiteral(", ")) + QString::number(m_texts.indexOf(text) + 1);
    }
}

QString PlanNotes::marksOf(std::size_t week, std::size_t lift, std::size_t exposure) const
{
    const auto found = m_marks.find({week, lift, exposure});
    return found == m_marks.end() ? QString() : found->second;
}

}  // namespace chalk::ui::print
