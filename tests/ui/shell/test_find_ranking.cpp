#include "ui/shell/find_ranking.h"

#include <gtest/gtest.h>

namespace chalk::ui::shell {

namespace {

/// Gives what it was made with, whatever is asked.
class FixedFinder final : public FindProvider {
public:
    explicit FixedFinder(std::vector<FindItem> items, QStringList names = {}) : m_items(std::move(items)), m_names(std::move(names)) {}

    [[nodiscard]] std::vector<FindItem> find(const QString& /*query*/) const override { return m_items; }
    [[nodiscard]] QStringList names() const override { return m_names; }

private:
    std::vector<FindItem> m_items;
    QStringList m_names;
};

FindItem found(const char* text, FindGroup group, int score)
{
    return {group, {}, {{QLatin1String(text)}}, {}, score, {}};
}

QStringList textsOf(const std::vector<FindItem>& items)
{
    QStringList texts;
    for (const FindItem& item : items) {
        texts.append(item.parts.front().text);
    }
    return texts;
}

}  // namespace

TEST(FindRanking, TheBestComesFirstAndItsHeadingWithIt)
{
    const FixedFinder clients({found("board", FindGroup::GoTo, 80), found("other", FindGroup::GoTo, 40)});
    const FixedFinder actions({found("print", FindGroup::Do, 60)});
    const FindProvider* providers[] = {&actions, &clients};
    EXPECT_EQ(textsOf(rankedItems(providers, QStringLiteral("x"))).join(QLatin1Char(' ')).toStdString(), "board other print");
    const FixedFinder results({found("record", FindGroup::Do, kReadResult)});
    const FindProvider* withResult[] = {&actions, &clients, &results};
    EXPECT_EQ(textsOf(rankedItems(withResult, QStringLiteral("x"))).join(QLatin1Char(' ')).toStdString(), "record print board other");
}

TEST(FindRanking, EqualsKeepTheirOrderAndAHeadingHoldsSixAtMost)
{
    std::vector<FindItem> many;
    for (const char* text : {"a", "b", "c", "d", "e", "f", "g"}) {
        many.push_back(found(text, FindGroup::GoTo, 10));
    }
    const FixedFinder finder(many);
    const FindProvider* providers[] = {&finder};
    EXPECT_EQ(textsOf(rankedItems(providers, {})).join(QString()).toStdString(), "abcdef");
    EXPECT_TRUE(rankedItems({}, QStringLiteral("x")).empty());
}

TEST(FindRanking, KnowsTheNameThatWasMeant)
{
    const FixedFinder one({}, {QStringLiteral("Adaeze Quill")});
    const FixedFinder two({}, {QStringLiteral("Joaquin Ferro")});
    const FindProvider* providers[] = {&one, &two};
    EXPECT_EQ(meantName(providers, QStringLiteral("joquin")), QStringLiteral("Joaquin Ferro"));
    EXPECT_FALSE(meantName(providers, QStringLiteral("zzzzz")));
}

}  // namespace chalk::ui::shell
