#include "ui/onboarding/visit_table.h"

#include "core/sessions/session.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLocale>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

constexpr int kFirstTime = 5 * 60;
constexpr int kLastTime = 22 * 60;
constexpr int kTimeStep = 30;
constexpr int kVisitDays = 7;

}  // namespace

VisitTable::VisitTable(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look), m_grid(new QGridLayout(this))
{
    m_grid->setContentsMargins(16, 4, 16, 12);
    m_grid->setHorizontalSpacing(10);
    m_grid->setVerticalSpacing(6);
    m_grid->setColumnStretch(3, 1);
}

void VisitTable::setPlan(const planning::StartingPlan& plan, const planning::PlanTemplate& used)
{
    while (QLayoutItem* item = m_grid->takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
    m_rows.clear();
    for (const planning::WeekSlot& slot : plan.week.slots) {
        addRow(slot, plan, used);
    }
}

void VisitTable::addRow(const planning::WeekSlot& slot, const planning::StartingPlan& plan, const planning::PlanTemplate& used)
{
    Row row{slot, new QComboBox(this), new QComboBox(this)};
    const QString name = tr("Session %1").arg(common::qstring(used.sessions[slot.session].name));
    for (int day = 0; day < kVisitDays; ++day) {
        row.day->addItem(QLocale::c().dayName(day + 1));
    }
    row.day->setCurrentIndex(slot.weekday);
    for (int minute = kFirstTime; minute <= kLastTime; minute += kTimeStep) {
        row.time->addItem(common::qstring(sessions::clockText(minute)), minute);
    }
    row.time->setCurrentIndex(std::max(0, row.time->findData(slot.startMinute)));
    row.day->setAccessibleName(tr("Day of %1").arg(name));
    row.time->setAccessibleName(tr("Time of %1").arg(name));
    QStringList patterns;
    QStringList dates;
    for (const planning::PlannedSession& session : plan.sessions) {
        if (session.session != slot.session) {
            continue;
        }
        dates.append(common::shortDayText(session.date));
        if (patterns.isEmpty()) {
            for (const lifts::Pattern pattern : session.patterns) {
                patterns.append(common::patternName(pattern));
            }
        }
    }
    auto* words = new QLabel(tr("%1 · %2").arg(dates.join(QStringLiteral(", ")), patterns.join(QStringLiteral(", "))), this);
    words->setWordWrap(true);
    words->setProperty("role", QStringLiteral("secondary"));
    const int line = static_cast<int>(m_rows.size());
    m_grid->addWidget(new QLabel(name, this), line, 0);
    m_grid->addWidget(row.day, line, 1);
    m_grid->addWidget(row.time, line, 2);
    m_grid->addWidget(words, line, 3);
    for (QComboBox* box : {row.day, row.time}) {
        connect(box, &QComboBox::activated, this, &VisitTable::tell);
    }
    m_rows.push_back(row);
    for (int column = 0; column < 4; ++column) {
        m_grid->itemAtPosition(line, column)->widget()->show();
    }
}

void VisitTable::tell()
{
    std::vector<planning::WeekSlot> changed;
    for (const Row& row : m_rows) {
        changed.push_back({row.slot.session, row.day->currentIndex(), row.time->currentData().toInt()});
    }
    Q_EMIT slotsChanged(changed);
}

}  // namespace chalk::ui::onboarding
