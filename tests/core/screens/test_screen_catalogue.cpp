#include "core/screens/screen_catalogue.h"

#include <gtest/gtest.h>

#include <functional>

namespace chalk::screens {

namespace {

using lifts::CautionTag;
using lifts::Pattern;
using Keys = std::vector<std::string>;

lifts::Catalogue easySquats()
{
    lifts::Exercise sit;
    sit.key = "sit";
    sit.name = "Sit";
    sit.rung = 1;
    sit.cues = {"One", "Two"};
    sit.ruledOutBy = {CautionTag::Knee};
    lifts::Exercise hinge = sit;
    hinge.key = "bow";
    hinge.pattern = Pattern::Hinge;
    return lifts::Catalogue::of({sit, hinge}).value();
}

CorrectiveWork drill(std::string key, Keys helps)
{
    return {WorkKind::Drill, key, "Drill " + key, "Slowly", {base::Sets(2), 10, lifts::Measure::Reps, true}, std::move(helps), {}};
}

PatternGuide guideFor(Pattern pattern)
{
    PatternGuide guide;
    guide.pattern = pattern;
    guide.how = "Five slow reps";
    guide.look = "From the side";
    for (const char* key : {"a", "b", "c", "d", "e", "f"}) {
        guide.points.push_back({key, std::string("Point ") + key, ViewFrom::Side});
    }
    guide.depths = {{"Quarter", "knees bent"}, {"Half", "halfway"}, {"Full", "level"}};
    guide.work = {drill("one", {"a"}), drill("two", {"a", "b", "c"}), drill("rest", {"d", "e", "f"})};
    return guide;
}

/// All eight, the squat with a regression; in the wrong order on purpose.
std::vector<PatternGuide> eightGuides()
{
    std::vector<PatternGuide> guides;
    for (auto pattern = lifts::kPatterns.rbegin(); pattern != lifts::kPatterns.rend(); ++pattern) {
        guides.push_back(guideFor(*pattern));
    }
    guides.back().work.push_back({WorkKind::Regression, "sit", "Sit", "Slowly", {base::Sets(2), 6, lifts::Measure::Reps, false}, {"d", "e"}, {}});
    return guides;
}

/// `7.work[1].helps` for a fault of the eighth guide, the squat, after `spoil` has been at it.
std::string placeAfterSpoiling(const std::function<void(PatternGuide&)>& spoil)
{
    auto guides = eightGuides();
    spoil(guides.back());
    const auto catalogue = ScreenCatalogue::of(std::move(guides), easySquats());
    return catalogue ? "sound" : std::to_string(catalogue.error().index) + "." + catalogue.error().field;
}

Keys workKeys(const std::vector<WorkForPoints>& work)
{
    Keys keys;
    for (const WorkForPoints& one : work) {
        keys.push_back(one.work->key);
    }
    return keys;
}

}  // namespace

TEST(ScreenCatalogues, PatternsStandInTheirOrder)
{
    const auto catalogue = ScreenCatalogue::of(eightGuides(), easySquats()).value();
    for (const Pattern pattern : lifts::kPatterns) {
        EXPECT_EQ(catalogue.of(pattern).pattern, pattern);
    }
    EXPECT_EQ(catalogue.of(Pattern::Squat).find("c")->text, "Point c");
    EXPECT_EQ(catalogue.of(Pattern::Squat).find("z"), nullptr);
}

TEST(ScreenCatalogues, ABlankScreenHasEveryPointUnmarked)
{
    const base::Date day = *base::Date::fromYmd(2026, 3, 2);
    const MovementScreen screen = ScreenCatalogue::of(eightGuides(), easySquats()).value().blankScreen(day);
    EXPECT_EQ(screen.date, day);
    EXPECT_FALSE(screen.isFinished);
    for (const Pattern pattern : lifts::kPatterns) {
        EXPECT_EQ(screen.of(pattern).pattern, pattern);
        EXPECT_EQ(screen.of(pattern).points.size(), kPointsPerPattern);
        EXPECT_FALSE(isStarted(screen.of(pattern)));
    }
}

TEST(ScreenCatalogues, WorkThatHelpsMostComesFirst)
{
    const auto catalogue = ScreenCatalogue::of(eightGuides(), easySquats()).value();
    const Keys points{"a", "c", "unknown"};
    const auto all = catalogue.allWorkFor(Pattern::Squat, points, {});
    EXPECT_EQ(workKeys(all), (Keys{"two", "one"}));
    EXPECT_EQ(all[0].points, (Keys{"a", "c"}));
    EXPECT_EQ(workKeys(catalogue.workFor(Pattern::Squat, points, {})), Keys{"two"}) << "the short list needs no second drill for a";
    EXPECT_TRUE(catalogue.allWorkFor(Pattern::Squat, {}, {}).empty());
}

TEST(ScreenCatalogues, TheShortListLeavesOutNoPoint)
{
    const auto catalogue = ScreenCatalogue::of(eightGuides(), easySquats()).value();
    const Keys points{"a", "b", "d", "f"};
    const auto chosen = catalogue.workFor(Pattern::Squat, points, {});
    EXPECT_EQ(workKeys(chosen), (Keys{"two", "rest"}));
    EXPECT_EQ(chosen[1].points, (Keys{"d", "f"}));
}

TEST(ScreenCatalogues, CautionsTakeWorkAway)
{
    const auto catalogue = ScreenCatalogue::of(eightGuides(), easySquats()).value();
    const Keys points{"d"};
    EXPECT_EQ(workKeys(catalogue.allWorkFor(Pattern::Squat, points, {})), (Keys{"rest", "sit"}));
    const std::array cautions{CautionTag::Knee};
    EXPECT_EQ(workKeys(catalogue.allWorkFor(Pattern::Squat, points, cautions)), Keys{"rest"}) << "the exercise itself is ruled out";
}

TEST(ScreenCatalogues, FaultsNameTheirPlace)
{
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide&) {}), "sound");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.points.pop_back(); }), "7.points");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.points.push_back({"g", "Seventh", ViewFrom::Front}); }), "7.points");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.points[4].key = "a"; }), "7.points[4].key");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.points[4].key = "Heels down"; }), "7.points[4].key");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.points[1].text.clear(); }), "7.points[1].text");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.how.clear(); }), "7.how");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.look.clear(); }), "7.look");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.depths.pop_back(); }), "7.depths");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.depths[2].hint.clear(); }), "7.depths[2]");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.pattern = Pattern::Hinge; }), "7.pattern");
}

TEST(ScreenCatalogues, FaultsOfWorkNameTheirPlace)
{
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.work[1].helps = {"z"}; }), "7.work[1].helps");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.work[1].helps = {"a", "a"}; }), "7.work[1].helps");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.work[1].helps.clear(); }), "7.work[1].helps");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.work[2].helps = {"d", "e"}; }), "7.work") << "nothing is left for f";
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.work[3].key = "no_such_lift"; }), "7.work[3].key");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.work[3].key = "bow"; }), "7.work[3].key") << "of another pattern";
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.work[0].key = "Two Words"; }), "7.work[0].key");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.work[0].name = g.work[1].name; }), "7.work[1].name");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.work[0].how.clear(); }), "7.work[0].how");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.work[0].dose.sets = base::Sets(6); }), "7.work[0].dose");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.work[0].dose.amount = 31; }), "7.work[0].dose");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.work[0].dose = {base::Sets(1), 4, lifts::Measure::Seconds, false}; }), "7.work[0].dose");
    EXPECT_EQ(placeAfterSpoiling([](PatternGuide& g) { g.work[0].dose.measure = lifts::Measure::Metres; }), "7.work[0].dose");
}

TEST(ScreenCatalogues, EveryPatternMustBeThere)
{
    auto guides = eightGuides();
    guides.erase(guides.begin());
    const auto catalogue = ScreenCatalogue::of(std::move(guides), easySquats());
    ASSERT_FALSE(catalogue);
    EXPECT_EQ(catalogue.error().index, 7U);
    EXPECT_EQ(catalogue.error().reason, "carry_brace is missing");
}

}  // namespace chalk::screens
