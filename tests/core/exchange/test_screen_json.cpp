#include "core/exchange/screen_json.h"

#include "core/exchange/catalogue_json.h"
#include "core/progression/screen_start.h"

#include <gtest/gtest.h>

#include <QFile>

#include <algorithm>
#include <set>

namespace chalk::exchange {

namespace {

using lifts::CautionTag;
using lifts::Pattern;
using screens::PatternGuide;
using screens::ScreenCatalogue;

constexpr int kCautions = static_cast<int>(CautionTag::GripStrength) + 1;

ScreenCatalogue builtIn()
{
    return builtInScreenCatalogue(builtInCatalogue());
}

std::vector<std::string> keysOfPoints(const PatternGuide& guide)
{
    std::vector<std::string> keys;
    for (const screens::ScreenPoint& point : guide.points) {
        keys.push_back(point.key);
    }
    return keys;
}

/// `place: reason` of the fault of the built-in file after one text in it was replaced by another, the first time that it is there.
std::string screenFaultAfter(const QByteArray& sound, const QByteArray& spoilt)
{
    QFile file(QStringLiteral(":/catalogue/screen.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QByteArray text = file.readAll();
    const auto place = text.indexOf(sound);
    EXPECT_GE(place, 0) << sound.constData();
    text.replace(place, sound.size(), spoilt);
    const auto read = readScreenCatalogue(text, builtInCatalogue());
    return read ? std::string("none") : read.error().field + ": " + read.error().reason;
}

}  // namespace

TEST(BuiltInScreens, EveryPatternIsSeenFromBothSides)
{
    const ScreenCatalogue catalogue = builtIn();
    for (const PatternGuide& guide : catalogue.guides()) {
        std::set<screens::ViewFrom> views;
        for (const screens::ScreenPoint& point : guide.points) {
            views.insert(point.from);
        }
        EXPECT_EQ(views.size(), 2U) << keyOf(guide.pattern);
        EXPECT_GE(guide.work.size(), 5U) << keyOf(guide.pattern);
    }
}

TEST(BuiltInScreens, TheSquatIsThatOfTheTrade)
{
    const PatternGuide squat = builtIn().of(Pattern::Squat);
    EXPECT_EQ(keysOfPoints(squat), (std::vector<std::string>{"heels_down", "knees_follow_toes", "back_keeps_shape", "thighs_level", "weight_even", "slow_and_breathing"}));
    EXPECT_EQ(squat.depths[2].hint, "thighs level");
}

TEST(BuiltInScreens, OverheadWorkHasThePointThatItRestsOn)
{
    EXPECT_NE(builtIn().of(Pattern::VerticalPush).find(progression::kOverheadReachPoint), nullptr);
}

TEST(BuiltInScreens, NoCautionLeavesAPointWithoutWork)
{
    const ScreenCatalogue catalogue = builtIn();
    for (int tag = 0; tag < kCautions; ++tag) {
        const std::array cautions{static_cast<CautionTag>(tag)};
        for (const PatternGuide& guide : catalogue.guides()) {
            const auto points = keysOfPoints(guide);
            std::set<std::string> helped;
            for (const screens::WorkForPoints& work : catalogue.workFor(guide.pattern, points, cautions)) {
                helped.insert(work.points.begin(), work.points.end());
            }
            EXPECT_EQ(helped.size(), points.size()) << keyOf(cautions[0]) << " in " << keyOf(guide.pattern);
        }
    }
}

TEST(BuiltInScreens, RegressionsAreDoneWithoutLoad)
{
    const lifts::Catalogue lifts = builtInCatalogue();
    const ScreenCatalogue catalogue = builtInScreenCatalogue(lifts);
    int regressions = 0;
    for (const PatternGuide& guide : catalogue.guides()) {
        for (const screens::CorrectiveWork& work : guide.work) {
            if (work.kind == screens::WorkKind::Regression) {
                ++regressions;
                EXPECT_EQ(lifts.find(work.key)->equipment, lifts::EquipmentKind::None) << work.key;
            }
        }
    }
    EXPECT_GE(regressions, 12);
}

TEST(ScreenJson, FaultsNameTheirPlace)
{
    EXPECT_EQ(screenFaultAfter("\"from\": \"side\"", "\"from\": \"above\""), "patterns[0].points[0].from: is a word that is not known here");
    EXPECT_EQ(screenFaultAfter("\"key\": \"heels_down\", ", ""), "patterns[0].points[0].key: is required");
    EXPECT_EQ(screenFaultAfter("\"hint\": \"halfway down\"", "\"tip\": \"x\""), "patterns[0].depths[1].tip: is not a field that is known here");
    EXPECT_EQ(screenFaultAfter("\"kind\": \"regression\"", "\"kind\": \"swap\""), "patterns[0].work[0].kind: is a word that is not known here");
    EXPECT_EQ(screenFaultAfter("{\"sets\": 2, \"reps\": 6}", "{\"sets\": 2, \"reps\": 6, \"seconds\": 10}"),
              "patterns[0].work[0].dose.reps: must be there, or seconds, and not both");
    EXPECT_EQ(screenFaultAfter("{\"sets\": 2, \"reps\": 6}", "{\"sets\": 9, \"reps\": 6}").substr(0, 29), "patterns[0].work[0].dose.sets");
    EXPECT_EQ(screenFaultAfter("\"key\": \"sit_to_stand\"", "\"key\": \"no_such_lift\""),
              "patterns[0].work[0].key: squat: no_such_lift is no exercise of the catalogue");
    EXPECT_EQ(screenFaultAfter("[\"heels_down\", \"thighs_level\"", "[\"heels_up\", \"thighs_level\""),
              "patterns[0].work[0].helps: squat: heels_up is no point of this pattern");
    EXPECT_EQ(screenFaultAfter("\"pattern\": \"hinge\"", "\"pattern\": \"squat\""), "patterns[1].pattern: squat is there twice");
    EXPECT_EQ(screenFaultAfter("\"patterns\"", "\"pattern\""), "pattern: is not a field that is known here");
}

}  // namespace chalk::exchange
