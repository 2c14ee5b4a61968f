#include "ui/shell/ledge_day.h"

#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace chalk::ui::shell {

namespace {

QString ledgeText(const char* text)
{
    return QCoreApplication::translate("Ledge", text);
}

QString clockTextOf(int minute)
{
    return common::qstring(sessions::clockText(minute));
}

/// The last word of a name.
QString surname(const QString& name)
{
    return name.section(QLatin1Char(' '), -1);
}

/// `18 min`, `2 h 05 min`.
QString spanText(int minutes)
{
    if (minutes < 60) {
        return ledgeText(QT_TRANSLATE_NOOP("Ledge", "%1 min")).arg(minutes);
    }
    return ledgeText(QT_TRANSLATE_NOOP("Ledge", "%1 h %2 min")).arg(minutes / 60).arg(minutes % 60, 2, 10, QLatin1Char('0'));
}

std::vector<LedgeBar> barsOf(std::span<const LedgeSession> sessions, int& rows)
{
    std::vector<const LedgeSession*> ordered;
    for (const LedgeSession& session : sessions) {
        ordered.push_back(&session);
    }
    std::stable_sort(ordered.begin(), ordered.end(),
                     [](const LedgeSession* a, const LedgeSession* b) { return a->startMinute < b->startMinute; });
    std::map<QString, int> rowOf;
    std::map<std::pair<QString, int>, std::size_t> barAt;
    std::vector<LedgeBar> bars;
    std::vector<bool> hasOpen;
    for (const LedgeSession* session : ordered) {
        const int row = rowOf.try_emplace(session->coach, static_cast<int>(rowOf.size())).first->second;
        const auto [slot, isNew] = barAt.try_emplace({session->coach, session->startMinute}, bars.size());
        if (isNew) {
            bars.push_back({session->id, session->startMinute, session->startMinute, row, BarState::Over, session->coach, {}});
            hasOpen.push_back(false);
        }
        LedgeBar& bar = bars[slot->second];
        bar.endMinute = std::max(bar.endMinute, session->startMinute + session->minutes);
        bar.clients.append(surname(session->client));
        if (!session->isRecorded && !hasOpen[slot->second]) {
            hasOpen[slot->second] = true;
            bar.first = session->id;
            bar.state = BarState::Ahead;
        }
    }
    rows = static_cast<int>(rowOf.size());
    return bars;
}

QString sentenceOf(const LedgeBar& bar, int nowMinute)
{
    const QString who = QStringLiteral("%1: %2").arg(bar.coach, bar.clients.join(QStringLiteral(", "))).toHtmlEscaped();
    const QString start = clockTextOf(bar.startMinute);
    if (bar.startMinute > nowMinute) {
        return ledgeText(QT_TRANSLATE_NOOP("Ledge", "Next <b>%1</b> %2 · in %3")).arg(start, who, spanText(bar.startMinute - nowMinute));
    }
    return ledgeText(QT_TRANSLATE_NOOP("Ledge", "Now <b>%1</b> %2 · until %3")).arg(start, who, clockTextOf(bar.endMinute));
}

/// The bar that is on now, else the next one; the end where the day is over.
std::vector<LedgeBar>::iterator presentBar(std::vector<LedgeBar>& bars, int nowMinute)
{
    return std::find_if(bars.begin(), bars.end(),
                        [nowMinute](const LedgeBar& bar) { return bar.state == BarState::Ahead && bar.endMinute > nowMinute; });
}

void spanHours(LedgeDay& day)
{
    for (const LedgeBar& bar : day.bars) {
        day.firstHour = std::min(day.firstHour, bar.startMinute / 60);
        day.lastHour = std::max(day.lastHour, std::min(24, (bar.endMinute + 59) / 60));
    }
}

}  // namespace

std::vector<LedgeSession> ledgeSessionsOf(std::span<const store::NamedSession> sessions)
{
    std::vector<LedgeSession> shown;
    for (const store::NamedSession& named : sessions) {
        const sessions::SessionState state = named.session.state;
        if (sessions::takesTime(state)) {
            shown.push_back({named.session.id, named.session.startMinute, named.session.minutes, common::qstring(named.coachName),
                             common::qstring(named.clientName), state == sessions::SessionState::Recorded});
        }
    }
    return shown;
}

LedgeDay ledgeDayOf(std::span<const LedgeSession> sessions, int nowMinute)
{
    LedgeDay day;
    day.nowMinute = nowMinute;
    day.bars = barsOf(sessions, day.rows);
    spanHours(day);
    const auto present = presentBar(day.bars, nowMinute);
    if (present == day.bars.end()) {
        day.sentence = day.bars.empty() ? ledgeText(QT_TRANSLATE_NOOP("Ledge", "No sessions today"))
                                        : ledgeText(QT_TRANSLATE_NOOP("Ledge", "No more sessions today"));
    } else {
        day.sentence = sentenceOf(*present, nowMinute);
        day.hasPresent = true;
    }
    const int presentStart = day.hasPresent ? present->startMinute : -1;
    for (LedgeBar& bar : day.bars) {
        if (bar.state == BarState::Ahead && bar.startMinute == presentStart && bar.endMinute > nowMinute) {
            bar.state = BarState::Present;
        } else if (bar.endMinute <= nowMinute) {
            bar.state = BarState::Over;
        }
    }
    return day;
}

QString barText(const LedgeBar& bar)
{
    return ledgeText(QT_TRANSLATE_NOOP("Ledge", "%1 to %2, %3: %4"))
        .arg(clockTextOf(bar.startMinute), clockTextOf(bar.endMinute), bar.coach, bar.clients.join(QStringLiteral(", ")));
}

}  // namespace chalk::ui::shell
