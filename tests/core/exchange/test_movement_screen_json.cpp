#include "core/exchange/movement_screen_json.h"

#include "tests/support/marked_screen.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <QJsonArray>
#include <QJsonDocument>

namespace chalk::exchange {

namespace {

using lifts::Pattern;
using screens::Mark;
using screens::MovementScreen;
using screens::PauseMark;

MovementScreen anyMovementScreen()
{
    MovementScreen screen = test::markedMovementScreen(base::Date::fromDays(*rc::gen::inRange(18'000, 25'000)));
    screen.isFinished = *rc::gen::arbitrary<bool>();
    for (screens::PatternScreen& one : screen.patterns) {
        for (screens::PointMark& point : one.points) {
            point.mark = static_cast<Mark>(*rc::gen::inRange(0, 4));
        }
        for (screens::PauseTry& pause : one.pauses) {
            pause.mark = static_cast<PauseMark>(*rc::gen::inRange(0, 4));
            if (pause.mark != PauseMark::NotTried && *rc::gen::arbitrary<bool>()) {
                pause.heldMs = *rc::gen::inRange(0, screens::kMostPauseMs + 1);
            }
        }
        if (*rc::gen::arbitrary<bool>()) {
            one.steadiness = static_cast<screens::MovementSteadiness>(*rc::gen::inRange(0, 3));
            one.reps = base::Reps(*rc::gen::inRange(0, 101));
            one.note = "Left knee clicks; \"fine\" with a 2 cm wedge \xC3\xA9";
        }
        if (*rc::gen::arbitrary<bool>()) {
            one.pain = screens::ScreenPain{*rc::gen::element<std::string>("", "left knee"), {}};
        }
        if (one.pain && *rc::gen::arbitrary<bool>()) {
            one.pain->score = *rc::gen::inRange(0, 11);
        }
    }
    return screen;
}

std::string faultOfText(QByteArray text)
{
    const auto read = readMovementScreen(QJsonDocument::fromJson(text).object(), {});
    return read ? std::string("none") : read.error().field + ": " + read.error().reason;
}

QByteArray soundText()
{
    return QJsonDocument(toJson(test::markedMovementScreen(*base::Date::fromYmd(2026, 3, 2)))).toJson(QJsonDocument::Compact);
}

std::string faultAfterReplacing(const char* sound, const char* spoilt)
{
    QByteArray text = soundText();
    const auto place = text.indexOf(sound);
    EXPECT_GE(place, 0) << sound;
    text.replace(place, static_cast<qsizetype>(qstrlen(sound)), spoilt);
    return faultOfText(text);
}

}  // namespace

RC_GTEST_PROP(MovementScreenJson, ReadsBackTheSame, ())
{
    const MovementScreen screen = anyMovementScreen();
    const QByteArray text = QJsonDocument(toJson(screen)).toJson();
    const auto read = readMovementScreen(QJsonDocument::fromJson(text).object(), {});
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == screen);
}

TEST(MovementScreenJson, FaultsNameTheirPlace)
{
    EXPECT_EQ(faultOfText(soundText()), "none");
    EXPECT_EQ(faultAfterReplacing("2026-03-02", "2026-02-30"), "date: must be a date, YYYY-MM-DD");
    EXPECT_EQ(faultAfterReplacing("\"mark\":\"met\"", "\"mark\":\"good\""), "patterns[0].points[0].mark: is a word that is not known here");
    EXPECT_EQ(faultAfterReplacing("\"mark\":\"held\"", "\"mark\":\"held\",\"held_s\":-1").substr(0, 34), "patterns[0].pauses.bottom.held_s: ");
    EXPECT_EQ(faultAfterReplacing("\"mark\":\"held\"", "\"mark\":\"not_tried\",\"held_s\":1"), "patterns[0].pauses.bottom: has a time but was not tried");
    EXPECT_EQ(faultAfterReplacing("\"pattern\":\"hinge\"", "\"pattern\":\"squat\""), "patterns: has squat twice");
    EXPECT_EQ(faultAfterReplacing("\"pattern\":\"hinge\"", "\"pattern\":\"hinge\",\"pain\":{\"score\":11}").substr(0, 25), "patterns[1].pain.score: m");
}

}  // namespace chalk::exchange
