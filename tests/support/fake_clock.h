#pragma once

#include "ui/common/clock.h"

namespace chalk::tests {

/// A clock that stands where a test puts it.
class FakeClock final : public ui::common::Clock {
public:
    explicit FakeClock(const char* day = "2026-11-24", int minute = 8 * 60 + 42) : m_day(*base::Date::parse(day)), m_minute(minute) {}

    void setDay(base::Date day) { m_day = day; }
    void setMinute(int minute) { m_minute = minute; }

    [[nodiscard]] base::Date today() const override { return m_day; }
    [[nodiscard]] int minuteOfDay() const override { return m_minute; }

private:
    base::Date m_day;
    int m_minute;
};

}  // namespace chalk::tests
