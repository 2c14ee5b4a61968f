#include "core/planning/rotation.h"

#include "core/planning/rotation_order.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <random>
#include <set>

namespace chalk::planning {
namespace {

RotationLift rotationLift(lifts::Pattern pattern, const std::string& station, int minutes, int block = 0)
{
    return {std::string(lifts::keyOf(pattern)), pattern, station, block, {1, 60, (minutes - 1) * 60, 0}};
}

/// Small requests whose orders can all be gone through.
RotationRequest drawnRequest(unsigned seed, int clients, int mostLifts)
{
    std::mt19937 random(seed);
    const auto draw = [&random](int least, int most) { return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1)); };
    RotationRequest request;
    request.stations = {{"rack", draw(1, 2)}, {"bench", 1}, {"machine", draw(1, 2)}};
    const std::array<std::string, 4> places{"rack", "bench", "machine", ""};
    for (int i = 0; i < clients; ++i) {
        RotationClient client{"client " + std::to_string(i), {}};
        const int count = draw(1, mostLifts);
        for (int lift = 0; lift < count; ++lift) {
            client.lifts.push_back(rotationLift(lifts::kPatterns.at(static_cast<std::size_t>(draw(0, 4))), places.at(static_cast<std::size_t>(draw(0, 3))),
                                                draw(2, 15), draw(0, 1)));
        }
        request.clients.push_back(client);
    }
    return request;
}

/// Goes through every order of everything: the judge of the search.
class EveryOrder {
public:
    explicit EveryOrder(const RotationRequest& request) : m_work(workOf(request)), m_done(m_work.clients.size(), 0), m_last(m_work.clients.size(), -1)
    {
        go(false);
    }

    [[nodiscard]] RotationBound best() const { return m_best; }

private:
    void go(bool isAnyDone)
    {
        bool isEnd = isAnyDone;
        for (std::size_t client = 0; client < m_work.clients.size(); ++client) {
            for (std::size_t lift = 0; lift < m_work.clients[client].lifts.size(); ++lift) {
                if (mayFollow(client, lift)) {
                    isEnd = false;
                    take(client, lift);
                }
            }
        }
        if (isEnd && isEverythingDone()) {
            const RotationBound value = valueOf(m_work, m_order);
            if (!value.isWorseOrEqual(m_best)) {
                m_best = value;
            }
        }
    }

    void take(std::size_t client, std::size_t lift)
    {
        const int last = m_last[client];
        m_done[client] |= 1U << lift;
        m_last[client] = static_cast<int>(lift);
        m_order.push_back({client, lift});
        go(true);
        m_order.pop_back();
        m_last[client] = last;
        m_done[client] &= ~(1U << lift);
    }

    /// From the lifts themselves, not from the table that the search uses.
    [[nodiscard]] bool mayFollow(std::size_t client, std::size_t lift) const
    {
        const WorkLift& work = m_work.clients[client].lifts[lift];
        const bool isOpen = (m_done[client] >> lift & 1U) == 0 && (work.mustBeDone & ~m_done[client]) == 0;
        return isOpen && (m_last[client] < 0 || (work.notRightAfter >> m_last[client] & 1) == 0);
    }

    [[nodiscard]] bool isEverythingDone() const
    {
        for (std::size_t client = 0; client < m_work.clients.size(); ++client) {
            if (m_done[client] != (1U << m_work.clients[client].lifts.size()) - 1) {
                return false;
            }
        }
        return true;
    }

    RotationWork m_work;
    std::vector<unsigned> m_done;
    std::vector<int> m_last;
    std::vector<RotationStep> m_order;
    RotationBound m_best{1 << 30, 1 << 30};
};

/// What a rotation must keep, checked from the request alone.
void expectLegal(const RotationRequest& request, const Rotation& rotation)
{
    ASSERT_EQ(rotation.clients.size(), request.clients.size());
    std::map<std::pair<std::string, int>, std::vector<std::pair<int, int>>> busy;
    for (std::size_t i = 0; i < request.clients.size(); ++i) {
        const std::vector<RotationLift>& lifts = request.clients[i].lifts;
        std::set<std::size_t> seen;
        int free = 0;
        int block = 0;
        const RotationLift* last = nullptr;
        for (const RotationTurn& turn : rotation.clients[i].turns) {
            const RotationLift& lift = lifts.at(turn.lift);
            EXPECT_TRUE(seen.insert(turn.lift).second);
            EXPECT_EQ(turn.beginSecond, free + turn.waitedSeconds);
            EXPECT_GE(turn.waitedSeconds, 0);
            EXPECT_EQ(turn.endSecond - turn.beginSecond, lift.timing.seconds());
            EXPECT_GE(lift.block, block);
            EXPECT_TRUE(last == nullptr || last->pattern != lift.pattern || rotation.clients[i].isPatternRepeated);
            EXPECT_EQ(turn.unit.has_value(), !lift.station.empty());
            if (turn.unit) {
                busy[{lift.station, *turn.unit}].emplace_back(turn.beginSecond, turn.endSecond);
            }
            free = turn.endSecond;
            block = lift.block;
            last = &lift;
        }
        EXPECT_EQ(seen.size(), lifts.size());
    }
    for (auto& [unit, spans] : busy) {
        const auto station = std::find_if(request.stations.begin(), request.stations.end(), [&](const RotationStation& one) { return one.key == unit.first; });
        ASSERT_NE(station, request.stations.end());
        EXPECT_LT(unit.second, station->units);
        std::sort(spans.begin(), spans.end());
        for (std::size_t i = 1; i < spans.size(); ++i) {
            EXPECT_LE(spans[i - 1].second, spans[i].first) << unit.first << " " << unit.second;
        }
    }
}

TEST(Rotation, NobodyWaitsWhereAnotherOrderAvoidsIt)
{
    RotationRequest request;
    request.stations = {{"rack", 1}};
    for (const char* name : {"Ada", "Ben", "Cy"}) {
        request.clients.push_back({name,
                                   {rotationLift(lifts::Pattern::Squat, "rack", 10), rotationLift(lifts::Pattern::HorizontalPull, "", 10),
                                    rotationLift(lifts::Pattern::VerticalPull, "", 10)}});
    }
    const Rotation rotation = rotationOf(request, usualEffort(3));
    expectLegal(request, rotation);
    EXPECT_EQ(rotation.waitedSeconds(), 0);
    EXPECT_EQ(rotation.endSecond(), 30 * 60);
    EXPECT_TRUE(rotation.isProved);
}

TEST(Rotation, WhereWaitingCannotBeAvoidedTheShortestGoesFirst)
{
    RotationRequest request;
    request.stations = {{"rack", 1}};
    request.clients = {{"Ada", {rotationLift(lifts::Pattern::Squat, "rack", 12)}}, {"Ben", {rotationLift(lifts::Pattern::Squat, "rack", 5)}}};
    const Rotation rotation = rotationOf(request, usualEffort(2));
    expectLegal(request, rotation);
    EXPECT_EQ(rotation.clients[0].waitedSeconds(), 5 * 60);
    EXPECT_EQ(rotation.clients[1].waitedSeconds(), 0);
    EXPECT_TRUE(rotation.isProved);
}

TEST(Rotation, BlocksAreKeptThoughItCostsWaiting)
{
    RotationRequest request;
    request.stations = {{"rack", 1}};
    for (const char* name : {"Ada", "Ben"}) {
        request.clients.push_back({name, {rotationLift(lifts::Pattern::Squat, "rack", 10, 0), rotationLift(lifts::Pattern::CarryBrace, "", 10, 1)}});
    }
    const Rotation rotation = rotationOf(request, usualEffort(2));
    expectLegal(request, rotation);
    EXPECT_EQ(rotation.waitedSeconds(), 10 * 60);
}

TEST(Rotation, OnePatternAloneIsFollowedByItselfAndSaysSo)
{
    RotationRequest request;
    request.clients = {{"Ada", {rotationLift(lifts::Pattern::Squat, "", 5), rotationLift(lifts::Pattern::Squat, "", 6)}},
                       {"Ben", {rotationLift(lifts::Pattern::Squat, "", 5), rotationLift(lifts::Pattern::Hinge, "", 6), rotationLift(lifts::Pattern::Squat, "", 4)}}};
    const Rotation rotation = rotationOf(request, usualEffort(2));
    expectLegal(request, rotation);
    EXPECT_TRUE(rotation.clients[0].isPatternRepeated);
    EXPECT_FALSE(rotation.clients[1].isPatternRepeated);
    EXPECT_EQ(rotation.clients[1].turns[1].lift, 1U);
}

TEST(Rotation, AgreesWithEveryOrderOfSmallGroups)
{
    for (unsigned seed = 0; seed < 150; ++seed) {
        const RotationRequest request = seed % 3 == 0 ? drawnRequest(seed, 3, 2) : drawnRequest(seed, 2, 4);
        SCOPED_TRACE(seed);
        const RotationBound best = EveryOrder(request).best();
        for (const RotationEffort effort : {RotationEffort{0, 100'000}, RotationEffort{500, 100'000}}) {
            const Rotation rotation = rotationOf(request, effort);
            expectLegal(request, rotation);
            EXPECT_TRUE(rotation.isProved);
            EXPECT_EQ(rotation.waitedSeconds(), best.waited);
            EXPECT_EQ(rotation.endSecond(), best.end);
        }
    }
}

TEST(Rotation, AgreesWithEveryOrderOfThreeWhoDoThreeLiftsEach)
{
    for (unsigned seed = 200; seed < 206; ++seed) {
        SCOPED_TRACE(seed);
        RotationRequest request = drawnRequest(seed, 3, 4);
        for (RotationClient& client : request.clients) {
            client.lifts.resize(std::min<std::size_t>(client.lifts.size(), 3));
        }
        const RotationBound best = EveryOrder(request).best();
        const Rotation rotation = rotationOf(request, {0, 100'000});
        expectLegal(request, rotation);
        EXPECT_TRUE(rotation.isProved);
        EXPECT_EQ(rotation.waitedSeconds(), best.waited);
        EXPECT_EQ(rotation.endSecond(), best.end);
    }
}

/// Four people of four to six lifts each on a floor as most have it.
RotationRequest usualFour(unsigned seed)
{
    using lifts::Pattern;
    const std::vector<RotationLift> usual{{"squat", Pattern::Squat, "rack", 0, {}},          {"press", Pattern::HorizontalPush, "bench", 0, {}},
                                          {"pulldown", Pattern::VerticalPull, "machine", 0, {}}, {"split squat", Pattern::SingleLeg, "", 0, {}},
                                          {"carry", Pattern::CarryBrace, "lane", 1, {}},      {"deadlift", Pattern::Hinge, "rack", 0, {}},
                                          {"row", Pattern::HorizontalPull, "machine", 0, {}}, {"overhead", Pattern::VerticalPush, "rack", 0, {}},
                                          {"pull-up", Pattern::VerticalPull, "pull_up_bar", 0, {}}};
    std::mt19937 random(seed);
    const auto draw = [&random](int least, int most) { return least + static_cast<int>(random() % static_cast<unsigned>(most - least + 1)); };
    RotationRequest request;
    request.stations = {{"rack", 2}, {"bench", 2}, {"machine", 2}, {"pull_up_bar", 1}, {"lane", 2}};
    for (int i = 0; i < 4; ++i) {
        RotationClient client{"client " + std::to_string(i), usual};
        for (std::size_t k = client.lifts.size() - 1; k > 0; --k) {
            std::swap(client.lifts[k], client.lifts[static_cast<std::size_t>(draw(0, static_cast<int>(k)))]);
        }
        client.lifts.resize(static_cast<std::size_t>(draw(4, 6)));
        for (RotationLift& lift : client.lifts) {
            lift.timing = {draw(2, 5), draw(24, 40), 30 * draw(3, 6), 30 + 10 * draw(0, 12)};
        }
        request.clients.push_back(client);
    }
    return request;
}

TEST(Rotation, NearlyEveryUsualGroupOfFourIsProved)
{
    int proved = 0;
    for (unsigned seed = 0; seed < 6; ++seed) {
        const RotationRequest request = usualFour(seed);
        const Rotation rotation = rotationOf(request, usualEffort(4));
        expectLegal(request, rotation);
        proved += rotation.isProved ? 1 : 0;
    }
    EXPECT_GE(proved, 5);
}

TEST(Rotation, TheBoundNeverExceedsTheBest)
{
    for (unsigned seed = 1000; seed < 1100; ++seed) {
        SCOPED_TRACE(seed);
        const RotationRequest request = drawnRequest(seed, 2, 4);
        const RotationBound best = EveryOrder(request).best();
        const RotationBound bound = boundOf(workOf(request), RotationState());
        EXPECT_LE(bound.waited, best.waited);
        EXPECT_LE(bound.end, best.end);
    }
}

TEST(Rotation, LargeGroupsAreLegalAndTheSameEveryTime)
{
    for (unsigned seed = 0; seed < 12; ++seed) {
        SCOPED_TRACE(seed);
        const RotationRequest request = drawnRequest(seed, 4 + static_cast<int>(seed % 3), 6);
        const RotationEffort effort{2'000, 3'000};
        const Rotation rotation = rotationOf(request, effort);
        expectLegal(request, rotation);
        EXPECT_EQ(rotation, rotationOf(request, effort));
        EXPECT_GE(rotation.waitedSeconds(), boundOf(workOf(request), RotationState()).waited);
    }
}

TEST(Rotation, SaysWhenNothingIsProved)
{
    RotationRequest request;
    request.stations = {{"rack", 1}, {"bench", 1}, {"machine", 1}};
    for (int i = 0; i < 6; ++i) {
        request.clients.push_back({"client " + std::to_string(i),
                                   {rotationLift(lifts::Pattern::Squat, "rack", 9 + i), rotationLift(lifts::Pattern::HorizontalPush, "bench", 12 - i),
                                    rotationLift(lifts::Pattern::HorizontalPull, "machine", 7 + i % 3), rotationLift(lifts::Pattern::SingleLeg, "rack", 5)}});
    }
    EXPECT_FALSE(rotationOf(request, {200, 50}).isProved);
}

TEST(Rotation, FaultsNameThePlace)
{
    const auto faultAfter = [](auto&& change) {
        RotationRequest request;
        request.stations = {{"rack", 1}};
        request.clients = {{"Ada", {rotationLift(lifts::Pattern::Squat, "rack", 5)}}};
        change(request);
        const auto fault = faultOf(request);
        return fault ? fault->field : std::string("none");
    };
    EXPECT_EQ(faultAfter([](RotationRequest&) {}), "none");
    EXPECT_EQ(faultAfter([](RotationRequest& r) { r.clients.clear(); }), "clients");
    EXPECT_EQ(faultAfter([](RotationRequest& r) { r.clients.assign(7, r.clients.front()); }), "clients");
    EXPECT_EQ(faultAfter([](RotationRequest& r) { r.clients[0].lifts.clear(); }), "clients[0].lifts");
    EXPECT_EQ(faultAfter([](RotationRequest& r) { r.clients[0].lifts.assign(9, r.clients[0].lifts[0]); }), "clients[0].lifts");
    EXPECT_EQ(faultAfter([](RotationRequest& r) { r.clients[0].name.clear(); }), "clients[0].name");
    EXPECT_EQ(faultAfter([](RotationRequest& r) { r.clients[0].lifts[0].station = "yard"; }), "clients[0].lifts[0].station");
    EXPECT_EQ(faultAfter([](RotationRequest& r) { r.clients[0].lifts[0].block = 10; }), "clients[0].lifts[0].block");
    EXPECT_EQ(faultAfter([](RotationRequest& r) { r.clients[0].lifts[0].timing.sets = 0; }), "clients[0].lifts[0].sets");
    EXPECT_EQ(faultAfter([](RotationRequest& r) { r.clients[0].lifts[0].timing.workSeconds = 4; }), "clients[0].lifts[0].work_seconds");
    EXPECT_EQ(faultAfter([](RotationRequest& r) { r.clients[0].lifts[0].timing.restSeconds = -1; }), "clients[0].lifts[0].rest_seconds");
    EXPECT_EQ(faultAfter([](RotationRequest& r) { r.clients[0].lifts[0].timing.setUpSeconds = 901; }), "clients[0].lifts[0].set_up_seconds");
    EXPECT_EQ(faultAfter([](RotationRequest& r) { r.stations.push_back({"rack", 2}); }), "stations[1].key");
    EXPECT_EQ(faultAfter([](RotationRequest& r) { r.stations[0].units = 0; }), "stations[0].units");
}

}  // namespace
}  // namespace chalk::planning
