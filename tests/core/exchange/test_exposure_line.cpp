#include "core/exchange/exposure_line.h"

#include "core/exchange/entry_fields.h"
#include "core/exchange/lift_json.h"

#include <gtest/gtest.h>

#include <random>

namespace chalk::exchange {

namespace {

using progression::SetRecord;
using progression::Steadiness;

const std::vector<std::optional<std::string>> kCodes{std::nullopt, "K7Q2", "a \"b\" \\c", "Gr\xC3\xBC\xC3\x9F", "\xF0\x9F\x8F\x8B", std::string("line\n\x01\x7F")};

/// Draws exposures with any field there or not.
class ExposureDraw {
public:
    DocumentEvent draw()
    {
        progression::Exposure exposure{between(0, 3), {}};
        for (int i = between(1, 4); i > 0; --i) {
            exposure.sets.push_back({base::Load::fromCenti(between(-500'000, 500'000)), between(0, 10'000), static_cast<std::int16_t>(between(-1, 10)),
                                     static_cast<std::int16_t>(between(-1, 3600)), static_cast<Steadiness>(between(0, 2)), between(0, 1) == 1});
        }
        DocumentEvent entry{{base::Date::fromDays(between(-20'000, 80'000)), std::move(exposure)}, kCodes[static_cast<std::size_t>(between(0, 5))]};
        entry.isTakenBack = between(0, 1) == 1;
        return entry;
    }
    lifts::Measure measure() { return static_cast<lifts::Measure>(between(0, 2)); }

private:
    int between(int least, int most) { return std::uniform_int_distribution<int>(least, most)(m_random); }

    std::mt19937 m_random{20261127};
};

DocumentEvent exposureOf(std::vector<SetRecord> sets)
{
    return {{*base::Date::fromYmd(2026, 3, 2), progression::Exposure{0, std::move(sets)}}, std::nullopt};
}

}  // namespace

TEST(ExposureLine, HasItsFieldsByName)
{
    DocumentEvent entry = exposureOf({{base::Load::fromCenti(4250), 8, 2, 90}, {base::Load::fromCenti(2000), 5, -1, -1, Steadiness::Shaky, true}});
    std::get<progression::Exposure>(entry.event.body).pain = 2;
    entry.sessionCode = "K7Q2";
    entry.isTakenBack = true;
    EXPECT_EQ(exposureLine(entry, lifts::Measure::Reps),
              R"({"date":"2026-03-02","pain":2,"session":"K7Q2","sets":[{"load":42.5,"reps":8,"rest_s":90,"rir":2},{"load":20,"reps":5,"steadiness":"shaky","warmup":true}],)"
              R"("taken_back":true,"type":"exposure"})");
}

TEST(ExposureLine, IsThatOfItsObject)
{
    ExposureDraw random;
    for (int i = 0; i < 3000; ++i) {
        const DocumentEvent entry = random.draw();
        const lifts::Measure measure = random.measure();
        ASSERT_TRUE(isPlainExposure(entry));
        ASSERT_EQ(exposureLine(entry, measure), lineOf(toJson(entry, measure)).toStdString());
    }
}

TEST(ExposureLine, HasTheNumbersOfItsObject)
{
    constexpr int kMost = 500'000;
    constexpr int kStep = 37;
    for (int centi = -kMost; centi <= kMost; centi += kStep) {
        const DocumentEvent entry = exposureOf({{base::Load::fromCenti(centi), 1}});
        ASSERT_EQ(exposureLine(entry, lifts::Measure::Reps), lineOf(toJson(entry, lifts::Measure::Reps)).toStdString());
    }
}

TEST(ExposureLine, IsForPlainExposuresAlone)
{
    DocumentEvent corrected = exposureOf({{base::Load::fromCenti(100), 1}});
    EXPECT_TRUE(isPlainExposure(corrected));
    corrected.former.push_back(corrected.event);
    EXPECT_FALSE(isPlainExposure(corrected));
    EXPECT_FALSE(isPlainExposure(exposureOf({}))) << "an empty list is no rows of a table";
    DocumentEvent unnamed = exposureOf({{base::Load::fromCenti(100), 1}});
    unnamed.sessionCode = "";
    EXPECT_FALSE(isPlainExposure(unnamed)) << "an empty field of a table is no text";
    EXPECT_FALSE(isPlainExposure({{*base::Date::fromYmd(2026, 3, 2), progression::Release{}}, std::nullopt}));
}

}  // namespace chalk::exchange
