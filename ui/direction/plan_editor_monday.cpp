#include "ui/direction/plan_editor_monday.h"

#include "ui/common/day_entry.h"

#include <QSignalBlocker>

namespace chalk::ui::direction {

namespace {

constexpr int kDaysAWeek = 7;
constexpr int kLastWeek = 10'000;  // the year 2161
const base::Date kFirstMonday = base::Date::fromDays(4);  // 5 January 1970

}  // namespace

MondayEntry::MondayEntry(QWidget* parent) : QSpinBox(parent)
{
    setRange(0, kLastWeek);
    setKeyboardTracking(false);
    setToolTip(tr("The arrows go from week to week."));
}

base::Date MondayEntry::monday() const
{
    return kFirstMonday + value() * kDaysAWeek;
}

void MondayEntry::setMonday(base::Date day)
{
    const QSignalBlocker quiet(this);
    setValue((day - day.weekday() - kFirstMonday) / kDaysAWeek);
}

QString MondayEntry::textFromValue(int value) const
{
    return common::entryOfDay(kFirstMonday + value * kDaysAWeek);
}

int MondayEntry::valueFromText(const QString& text) const
{
    const auto day = common::dayOfEntry(text);
    return day ? (*day - kFirstMonday) / kDaysAWeek : value();
}

QValidator::State MondayEntry::validate(QString& text, int& /*place*/) const
{
    const auto day = common::dayOfEntry(text);
    return day && day->weekday() == 0 ? QValidator::Acceptable : QValidator::Intermediate;
}

void MondayEntry::fixup(QString& text) const
{
    text = textFromValue(value());
    Q_EMIT refused();
}

}  // namespace chalk::ui::direction
