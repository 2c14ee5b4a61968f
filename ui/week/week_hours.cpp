#include "ui/week/week_hours.h"

#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace chalk::ui::week {

namespace {

using chalk::week::kDayMinutes;
using chalk::week::kWeekDays;

constexpr int kHour = 60;
constexpr int kCell = 15;
constexpr int kCells = kDayMinutes / kCell;
constexpr int kUsualFrom = 8 * kHour;
constexpr int kUsualTo = 20 * kHour;

using DayWords = std::array<QString, kCells>;  ///< why a quarter of an hour is closed; empty where it is not

bool isOpen(const clients::WeekHours& hours, int day, int minute)
{
    return hours.isSet(day, minute / clients::WeekHours::kSlotMinutes);
}

/// Whether anything of the week is at that minute of some day.
bool isInUse(const WeekScene& scene, const chalk::week::WeekFacts& facts, int minute)
{
    for (const int day : scene.days) {
        if (isOpen(facts.studio.open, day, minute)) {
            return true;
        }
    }
    return std::any_of(scene.blocks.begin(), scene.blocks.end(), [minute](const WeekBlock& block) { return block.from < minute + kCell && minute < block.to; });
}

bool hasDay(const WeekScene& scene, const chalk::week::WeekFacts& facts, int day)
{
    bool isThere = std::any_of(scene.blocks.begin(), scene.blocks.end(), [day](const WeekBlock& block) { return block.day == day; });
    for (int minute = 0; minute < kDayMinutes && !isThere; minute += kCell) {
        isThere = isOpen(facts.studio.open, day, minute);
    }
    return isThere;
}

DayWords dayWords(const chalk::week::WeekFacts& facts, int day)
{
    DayWords words;
    for (int cell = 0; cell < kCells; ++cell) {
        words[static_cast<std::size_t>(cell)] = isOpen(facts.studio.open, day, cell * kCell) ? QString() : QCoreApplication::translate("WeekScene", "closed");
    }
    return words;
}

/// Writes the closures that are about `coach`, or about the studio for none, over the words.
void addClosures(DayWords& words, const chalk::week::WeekFacts& facts, int day, base::CoachId coach, const QString& usual)
{
    for (const chalk::week::Closure& closure : facts.closures) {
        const base::Date date = facts.monday + day;
        if (closure.station || closure.coach != coach || date < closure.first || closure.last < date) {
            continue;
        }
        for (int cell = closure.fromMinute / kCell; cell < (closure.toMinute + kCell - 1) / kCell; ++cell) {
            QString& word = words[static_cast<std::size_t>(cell)];
            word = closure.why.empty() ? usual : common::qstring(closure.why);
        }
    }
}

void addStretches(WeekScene& scene, const DayWords& words, int day, std::optional<std::size_t> coach)
{
    for (int cell = 0; cell < kCells; ++cell) {
        const QString& word = words[static_cast<std::size_t>(cell)];
        if (word.isEmpty()) {
            continue;
        }
        const int first = cell;
        while (cell + 1 < kCells && words[static_cast<std::size_t>(cell) + 1] == word) {
            ++cell;
        }
        const int from = std::max(first * kCell, scene.from);
        const int to = std::min((cell + 1) * kCell, scene.to);
        if (from < to) {
            scene.hatched.push_back({day, coach, from, to, word});
        }
    }
}

void addFolds(WeekScene& scene, const chalk::week::WeekFacts& facts)
{
    for (int hour = scene.from; hour < scene.to; hour += kHour) {
        int end = hour;
        while (end < scene.to && !isInUse(scene, facts, end) && !isInUse(scene, facts, end + kHour / 2) && !isInUse(scene, facts, end + kCell) &&
               !isInUse(scene, facts, end + kHour - kCell)) {
            end += kHour;
        }
        if (end > hour) {
            scene.folds.push_back({hour, end});
            hour = end - kHour;
        }
    }
}

}  // namespace

void addHours(WeekScene& scene, const chalk::week::WeekFacts& facts)
{
    for (int day = 0; day < kWeekDays; ++day) {
        if (hasDay(scene, facts, day)) {
            scene.days.push_back(day);
        }
    }
    if (scene.days.empty()) {
        scene.days = {0, 1, 2, 3, 4};
    }
    int first = 0;
    while (first < kDayMinutes && !isInUse(scene, facts, first)) {
        first += kCell;
    }
    int last = kDayMinutes;
    while (last > first && !isInUse(scene, facts, last - kCell)) {
        last -= kCell;
    }
    const bool isUnused = first >= kDayMinutes;
    scene.from = isUnused ? kUsualFrom : first / kHour * kHour;
    scene.to = isUnused ? kUsualTo : (last + kHour - 1) / kHour * kHour;
    if (!isUnused) {
        addFolds(scene, facts);
    }
}

void addHatched(WeekScene& scene, const chalk::week::WeekFacts& facts)
{
    const QString closed = QCoreApplication::translate("WeekScene", "closed");
    const QString off = QCoreApplication::translate("WeekScene", "off");
    for (const int day : scene.days) {
        DayWords ofDay = dayWords(facts, day);
        addClosures(ofDay, facts, day, {}, closed);
        addStretches(scene, ofDay, day, std::nullopt);
        for (std::size_t i = 0; i < facts.coaches.size(); ++i) {
            DayWords own;
            const clients::WeekHours hours = facts.coaches[i].work.hours.value_or(facts.studio.open);
            for (int cell = 0; cell < kCells; ++cell) {
                own[static_cast<std::size_t>(cell)] = isOpen(hours, day, cell * kCell) ? QString() : off;
            }
            addClosures(own, facts, day, facts.coaches[i].coach.id, off);
            for (int cell = 0; cell < kCells; ++cell) {
                if (!ofDay[static_cast<std::size_t>(cell)].isEmpty()) {
                    own[static_cast<std::size_t>(cell)].clear();
                }
            }
            addStretches(scene, own, day, i);
        }
    }
}

}  // namespace chalk::ui::week
