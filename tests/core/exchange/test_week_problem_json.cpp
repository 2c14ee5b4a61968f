#include "core/exchange/week_problem_json.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <map>

namespace chalk::exchange {

namespace {

using week::DaySpan;
using week::WeekProblem;

/// A problem of one coach, one station, one client and one session, with one field put in by name or, where the value is empty, taken out.
/// `coach.capacity` is the field of the coach; a bare name is one of the whole.
QByteArray weekProblemWith(const QByteArray& field = {}, const QByteArray& value = {})
{
    std::map<QByteArray, std::map<QByteArray, QByteArray>> parts{
        {"coach", {{"id", "\"Mia\""}, {"capacity", "2"}, {"softMaxMin", "300"}, {"windows", "[[0, 420, 720]]"}, {"breaks", "[]"}, {"absences", "[]"}}},
        {"station", {{"id", "\"rack\""}, {"units", "2"}, {"closures", R"([{"day": 0, "from": 0, "to": 600, "units": 1}])"}}},
        {"client",
         {{"id", "\"Ada\""}, {"priority", "4"}, {"maxGroup", "2"}, {"recovery", R"({"type": "hours", "hours": 36})"}, {"available", "[[0, 420, 720]]"},
          {"preferred", "[[0, 450, 450]]"}, {"coaches", R"({"Mia": 15})"}, {"lastWeek", R"([{"start": -900, "patterns": ["squat"]}])"}}},
        {"session",
         {{"id", "\"S1\""}, {"client", "\"Ada\""}, {"duration", "45"}, {"patterns", R"(["squat", "hinge"])"},
          {"equipment", R"([{"id": "rack", "share": 40, "from": 15, "to": 45}])"}, {"standing", R"({"coach": "Mia", "start": 480})"}, {"locked", "true"}}},
        {"", {{"name", "\"one\""}, {"grid", "15"}, {"open", "[[0, 360, 1290]]"}, {"weights", R"({"unplaced": 900, "consecutive": 7})"}}}};
    const qsizetype dot = field.indexOf('.');
    if (!field.isEmpty()) {
        parts[dot < 0 ? QByteArray() : field.left(dot)][field.mid(dot + 1)] = value;
    }
    const auto written = [](const std::map<QByteArray, QByteArray>& fields) {
        QByteArrayList texts;
        for (const auto& [name, content] : fields) {
            if (!content.isEmpty()) {
                texts.append('"' + name + "\": " + content);
            }
        }
        return texts.join(", ");
    };
    return "{" + written(parts[""]) + R"(, "coaches": [{)" + written(parts["coach"]) + R"(}], "equipment": [{)" + written(parts["station"]) +
           R"(}], "clients": [{)" + written(parts["client"]) + R"(}], "sessions": [{)" + written(parts["session"]) + "}]}";
}

JsonResult<WeekProblem> weekProblemFrom(const QByteArray& text)
{
    return parseJson(text).and_then(readWeekProblem);
}

/// `place: reason`; `none` where nothing is wrong.
std::string faultOfWeek(const QByteArray& field, const QByteArray& value)
{
    const auto read = weekProblemFrom(weekProblemWith(field, value));
    return read ? "none" : read.error().field + ": " + read.error().reason;
}

/// A problem that says every field, with lists of any length.
rc::Gen<WeekProblem> anyWeekProblem()
{
    return rc::gen::exec([] {
        const auto number = [](int low, int high) { return *rc::gen::inRange(low, high + 1); };
        WeekProblem problem;
        problem.name = "any";
        problem.grid = number(1, 2) * 15;
        problem.open = {{number(0, 6), number(0, 600), number(601, 1440)}};
        problem.weights.unplaced = number(0, 100'000);
        problem.weights.prefCap = number(0, 50);
        problem.stations = {{"rack", number(0, 20), {{{number(0, 6), 0, number(1, 1440)}, number(0, 5)}}}, {"bench", 1, {}}};
        for (int i = 0; i < number(1, 3); ++i) {
            problem.coaches.push_back({"C" + std::to_string(i), number(1, 6), number(0, 600), problem.open, {}, {{number(0, 6), 1, number(2, 9)}}});
        }
        for (int i = 0; i < number(1, 3); ++i) {
            week::ClientWeek client;
            client.id = "K" + std::to_string(i);
            client.recovery.kind = *rc::gen::element(week::RecoveryKind::Hours, week::RecoveryKind::RestDay);
            client.preferred = {{number(0, 6), 500, number(500, 700)}};
            client.coaches = {{problem.coaches.size() - 1, number(0, 99)}};
            client.lastWeek = {{-number(1, 9000), {"squat"}}};
            problem.clients.push_back(client);
            week::SessionWish session{"S" + std::to_string(i), problem.clients.size() - 1, number(10, 90), {"pull"}, {}, std::nullopt, false};
            session.needs = {{static_cast<std::size_t>(number(0, 1)), number(1, 150), number(0, 5), number(6, 10)}};
            session.standing = number(0, 1) == 1 ? std::optional(week::Slot{0, number(0, 10'079)}) : std::nullopt;
            session.isLocked = session.standing && number(0, 1) == 1;
            problem.sessions.push_back(session);
        }
        return problem;
    });
}

}  // namespace

TEST(WeekProblemJson, ReadsEveryField)
{
    const auto read = weekProblemFrom(weekProblemWith());
    ASSERT_TRUE(read) << read.error().field << read.error().reason;
    EXPECT_EQ(read->name, "one");
    EXPECT_EQ(read->grid, 15);
    EXPECT_EQ(read->open, (std::vector<DaySpan>{{0, 360, 1290}}));
    EXPECT_EQ(read->weights.unplaced, 900);
    EXPECT_EQ(read->weights.consecutive, 7);
    EXPECT_EQ(read->weights.dayMove, 80);
    EXPECT_EQ(read->stations, (std::vector<week::Station>{{"rack", 2, {{{0, 0, 600}, 1}}}}));
    EXPECT_EQ(read->coaches, (std::vector<week::CoachWeek>{{"Mia", 2, 300, {{0, 420, 720}}, {}, {}}}));
    const week::ClientWeek ada{"Ada", 4, 2, {week::RecoveryKind::Hours, 36}, {{0, 420, 720}}, {{0, 450, 450}}, {{0, 15}}, {{-900, {"squat"}}}};
    EXPECT_EQ(read->clients, std::vector<week::ClientWeek>{ada});
    const week::SessionWish session{"S1", 0, 45, {"squat", "hinge"}, {{0, 40, 15, 45}}, week::Slot{0, 480}, true};
    EXPECT_EQ(read->sessions, std::vector<week::SessionWish>{session});
}

TEST(WeekProblemJson, MayLeaveOutWhatHasADefault)
{
    for (const char* field : {"weights", "coach.softMaxMin", "coach.breaks", "coach.absences", "station.units", "station.closures", "client.priority",
                              "client.maxGroup", "client.recovery", "client.preferred", "client.lastWeek", "session.patterns", "session.equipment"}) {
        EXPECT_EQ(faultOfWeek(field, ""), "none") << field;
    }
    const auto read = weekProblemFrom(weekProblemWith("session.equipment", R"([{"id": "rack", "share": 30}])"));
    ASSERT_TRUE(read);
    EXPECT_EQ(read->sessions[0].needs, (std::vector<week::StationNeed>{{0, 30, 0, 45}})) << "a need is of the whole session";
}

TEST(WeekProblemJson, TakesWhatContradictsItself)
{
    EXPECT_EQ(faultOfWeek("coach.windows", "[[3, 420, 720]]"), "none") << "a locked session outside of the coach's hours";
    EXPECT_EQ(faultOfWeek("client.available", "[]"), "none") << "a client with no hours";
    EXPECT_EQ(faultOfWeek("session.duration", "480"), "none") << "longer than any window";
    EXPECT_EQ(faultOfWeek("session.standing", R"({"coach": "Mia", "start": 487})"), "none") << "off the grid";
    EXPECT_EQ(faultOfWeek("client.coaches", "{}"), "none") << "nobody is accepted";
}

TEST(WeekProblemJson, NamesTheFieldThatIsWrong)
{
    EXPECT_EQ(faultOfWeek("grid", "20"), "grid: must be 15 or 30");
    EXPECT_EQ(faultOfWeek("name", ""), "name: is required");
    EXPECT_EQ(faultOfWeek("opens", "[]"), "opens: is not a field that is known here");
    EXPECT_EQ(faultOfWeek("open", "[[7, 0, 10]]"), "open[0][0]: must be 0 to 6");
    EXPECT_EQ(faultOfWeek("open", "[[0, 0, 1441]]"), "open[0][2]: must be 0 to 1440");
    EXPECT_EQ(faultOfWeek("open", "[[0, 0]]"), "open[0]: must be [day, from, to]");
    EXPECT_EQ(faultOfWeek("weights", R"({"gapPer15": -1})"), "weights.gapPer15: must be 0 to 100000");
    EXPECT_EQ(faultOfWeek("coach.windows", "[[0, 1, 2], [0, 720, 420]]"), "coaches[0].windows[1]: ends before it begins");
    EXPECT_EQ(faultOfWeek("coach.breaks", "[[0, 720, 720]]"), "coaches[0].breaks[0]: is empty");
    EXPECT_EQ(faultOfWeek("client.preferred", "[[0, 720, 719]]"), "clients[0].preferred[0]: ends before it begins");
    EXPECT_EQ(faultOfWeek("coach.capacity", "0"), "coaches[0].capacity: must be 1 to 200");
    EXPECT_EQ(faultOfWeek("station.closures", R"([{"day": 0, "from": 9, "to": 9, "units": 0}])"), "equipment[0].closures[0].to: must be after from");
    EXPECT_EQ(faultOfWeek("client.coaches", R"({"Mia": 0, "Noa": 1})"), "clients[0].coaches: Noa is not among the coaches");
    EXPECT_EQ(faultOfWeek("client.coaches", R"({"Mia": -1})"), "clients[0].coaches.Mia: must be 0 to 100000");
    EXPECT_EQ(faultOfWeek("client.recovery", R"({"type": "days"})"), "clients[0].recovery.type: must be hours or restDay");
    EXPECT_EQ(faultOfWeek("client.recovery", R"({"type": "restDay", "hours": 3})"), "clients[0].recovery.hours: is of hours alone");
    EXPECT_EQ(faultOfWeek("client.lastWeek", R"([{"start": 0}])"), "clients[0].lastWeek[0].start: must be -20160 to -1");
    EXPECT_EQ(faultOfWeek("session.client", "\"Ben\""), "sessions[0].client: Ben is not among the clients");
    EXPECT_EQ(faultOfWeek("session.equipment", R"([{"id": "sled", "share": 1}])"), "sessions[0].equipment[0].id: sled is not among the equipment");
    EXPECT_EQ(faultOfWeek("session.equipment", R"([{"id": "rack", "share": 1, "to": 46}])"), "sessions[0].equipment[0].to: is after the session's end");
    EXPECT_EQ(faultOfWeek("session.equipment", R"([{"id": "rack", "share": 1, "from": 9, "to": 9}])"), "sessions[0].equipment[0].from: must be before to");
    EXPECT_EQ(faultOfWeek("session.standing", R"({"coach": "Noa", "start": 0})"), "sessions[0].standing.coach: Noa is not among the coaches");
    EXPECT_EQ(faultOfWeek("session.standing", R"({"coach": "Mia", "start": 10080})"), "sessions[0].standing.start: must be 0 to 10079");
    EXPECT_EQ(faultOfWeek("session.standing", "null"), "sessions[0].locked: needs a standing slot to be locked on");
    EXPECT_EQ(faultOfWeek("session.patterns", "[\"\"]"), "sessions[0].patterns[0]: must be a text that is not empty");
}

TEST(WeekProblemJson, NamesWhoIsThereTwice)
{
    QJsonObject problem = QJsonDocument::fromJson(weekProblemWith()).object();
    for (const char* list : {"coaches", "equipment", "clients", "sessions"}) {
        QJsonObject twice = problem;
        QJsonArray items = problem.value(QLatin1String(list)).toArray();
        items.append(items[0]);
        twice.insert(QLatin1String(list), items);
        const auto read = readWeekProblem(twice);
        ASSERT_FALSE(read);
        EXPECT_EQ(read.error().field, std::string(list) + "[1].id");
        EXPECT_EQ(read.error().reason, items[0].toObject().value(QLatin1String("id")).toString().toStdString() + " is there twice");
    }
}

RC_GTEST_PROP(WeekProblemJson, ReadsBackWhatItWrites, ())
{
    const WeekProblem problem = *anyWeekProblem();
    const auto read = readWeekProblem(toJson(problem));
    RC_ASSERT(read.has_value());
    RC_ASSERT(read->sessions == problem.sessions);
    RC_ASSERT(*read == [&problem] {
        // Hours that a rest day does not have are not written.
        WeekProblem expected = problem;
        for (week::ClientWeek& client : expected.clients) {
            client.recovery.hours = client.recovery.kind == week::RecoveryKind::Hours ? client.recovery.hours : week::Recovery{}.hours;
        }
        return expected;
    }());
}

}  // namespace chalk::exchange
