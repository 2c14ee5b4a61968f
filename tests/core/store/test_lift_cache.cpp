#include "core/store/lift_cache.h"

#include "core/store/act_reader.h"
#include "core/store/client_reader.h"
#include "core/store/record_writer.h"
#include "tests/support/journey.h"
#include "tests/support/small_studio.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace chalk::store {

namespace {

using progression::Event;

/// A studio with one client and one lift without any history.
exchange::StudioDocument oneLift(const progression::LiftSetup& setup)
{
    exchange::StudioDocument document = test::smallStudio();
    document.clients.resize(1);
    document.clients[0].lifts = {{lifts::Pattern::Squat, "back_squat", "bar", setup, base::Date::fromDays(19'990), {}}};
    return document;
}

/// The log of one lift as it ought to be, kept in the plainest way: what counts now, by place in the day.
class PlainLog {
public:
    struct Entry {
        base::EventId root;
        Event event;
        bool isVoid = false;
    };

    explicit PlainLog(progression::LiftSetup setup) : m_setup(std::move(setup)) {}

    [[nodiscard]] std::vector<Entry> present() const
    {
        std::vector<Entry> entries = m_entries;
        std::erase_if(entries, [](const Entry& entry) { return entry.isVoid; });
        std::stable_sort(entries.begin(), entries.end(), [](const Entry& a, const Entry& b) { return a.event.date < b.event.date; });
        return entries;
    }
    /// The state after all that counts; nothing where some event could not be.
    [[nodiscard]] std::optional<progression::LiftState> state() const
    {
        auto machine = progression::LiftMachine::create(m_setup).value();
        std::vector<Event> events;
        for (const Entry& entry : present()) {
            events.push_back(entry.event);
        }
        return progression::replay(machine, events) ? std::optional(machine.state()) : std::nullopt;
    }

    std::vector<Entry> m_entries;  ///< by place in the day

private:
    progression::LiftSetup m_setup;
};

/// A lift in a studio, and the same thing in a plain log: whatever is done is done to both.
class TwinLift {
public:
    explicit TwinLift(const progression::LiftSetup& setup) : m_studio(oneLift(setup)), m_plain(setup)
    {
        m_lift = test::liftOf(m_studio.database(), base::ClientId(1), lifts::Pattern::Squat);
    }

    void add(const Event& event)
    {
        const auto outcome = m_writer.record(base::ClientId(1), {}, {{m_lift, event}});
        change([this, &event](PlainLog& log) { log.m_entries.push_back({newest(), event}); }, outcome);
    }
    void correct(std::size_t which, const Event& event)
    {
        const base::EventId latest = latestOf(which);
        change([which, &event](PlainLog& log) { log.m_entries[which].event = event; }, m_writer.correct(latest, event));
    }
    void takeBack(std::size_t which)
    {
        const base::EventId latest = latestOf(which);
        change([which](PlainLog& log) { log.m_entries[which].isVoid = true; }, m_writer.takeBack(latest));
    }
    void undo()
    {
        const auto act = ActReader(m_studio.database()).undoable().value();
        if (act) {
            const auto outcome = m_writer.undo(act->id);
            RC_ASSERT(outcome.has_value());
            m_plain = m_before.back();
            m_before.pop_back();
        }
    }

    [[nodiscard]] const PlainLog& plain() const { return m_plain; }
    void expectAlike()
    {
        const auto file = ClientReader(m_studio.database()).read(base::ClientId(1), test::smallStudioDay()).value();
        RC_ASSERT(file.lifts.front().lift.machine.state() == *m_plain.state());
        const QStringList caches = m_studio.cacheRows();
        m_studio.rebuildCaches();
        RC_ASSERT(caches == m_studio.cacheRows());
    }

private:
    /// Does to the plain log what was done to the studio, or nothing where a replay says that it cannot be.
    template <class Change>
    void change(const Change& change, const Result<ActOutcome>& outcome)
    {
        PlainLog after = m_plain;
        change(after);
        if (!outcome && after.state()) {
            RC_FAIL(outcome.error().message.toStdString());
        }
        RC_ASSERT(outcome.has_value() == after.state().has_value());
        if (outcome) {
            RC_ASSERT(outcome->lifts.at(0).stateBefore == *m_plain.state());
            RC_ASSERT(outcome->lifts.at(0).stateAfter == *after.state());
            m_before.push_back(m_plain);
            m_plain = after;
        }
    }
    base::EventId newest() { return base::EventId(m_studio.rows(QStringLiteral("SELECT max(id) FROM event")).front().toLongLong()); }
    base::EventId latestOf(std::size_t which)
    {
        const auto root = m_plain.m_entries[which].root.value();
        return base::EventId(m_studio.rows(QStringLiteral("SELECT max(id) FROM event WHERE id = %1 OR root_id = %1").arg(root)).front().toLongLong());
    }

    test::StudioOnTest m_studio;
    PlainLog m_plain;
    std::vector<PlainLog> m_before;  ///< for undo
    RecordWriter m_writer{m_studio.database(), test::someMoment};
    base::LiftId m_lift;
};

std::vector<Event> lifeOf(const progression::LiftSetup& setup, const std::vector<std::uint32_t>& whims)
{
    test::Journey journey(setup);
    for (const std::uint32_t whim : whims) {
        journey.live(whim);
    }
    std::vector<Event> events;
    for (const progression::JudgedEvent& judged : journey.history()) {
        events.push_back({judged.date, *judged.body});
    }
    return events;
}

}  // namespace

RC_GTEST_PROP(LiftCache, EveryWayToTheSameLogGivesTheStateOfAFullReplay, ())
{
    const progression::LiftSetup setup = test::lowerLift(*rc::gen::element(test::barbellKit(), test::kettlebellKit()));
    const auto whims = *rc::gen::container<std::vector<std::uint32_t>>(16, rc::gen::arbitrary<std::uint32_t>());
    const std::vector<Event> life = lifeOf(setup, whims);
    TwinLift twin(setup);
    for (std::size_t i = 0; i < life.size(); ++i) {
        twin.add(life[i]);
        const std::size_t which = whims[i] / 7 % twin.plain().m_entries.size();
        const bool isThere = !twin.plain().m_entries[which].isVoid;
        switch (whims[i] % 7) {
            case 0:
                if (isThere) {  // another one's contents, on another day
                    twin.correct(which, {life[which % life.size()].date + static_cast<int>(whims[i] % 5), life[whims[i] / 3 % life.size()].body});
                }
                break;
            case 1:
                if (isThere) {
                    twin.takeBack(which);
                }
                break;
            case 2:
                twin.undo();
                break;
            case 3:  // logged late
                twin.add({life[i].date - static_cast<int>(whims[i] % 20), life[whims[i] / 5 % life.size()].body});
                break;
            default:
                break;
        }
    }
    twin.expectAlike();
}

RC_GTEST_PROP(LiftCache, GoingOnFromTheCacheGivesTheStateOfAFullReplay, ())
{
    const progression::LiftSetup setup = test::lowerLift(*rc::gen::element(test::barbellKit(), test::kettlebellKit()));
    TwinLift twin(setup);
    for (const Event& event : lifeOf(setup, *rc::gen::container<std::vector<std::uint32_t>>(24, rc::gen::arbitrary<std::uint32_t>()))) {
        twin.add(event);
    }
    twin.expectAlike();
}

}  // namespace chalk::store
