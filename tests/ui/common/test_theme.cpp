#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/style_sheet.h"
#include "ui/common/theme_reading.h"

#include <QFile>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QImage>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSignalSpy>

#include <gtest/gtest.h>

#include <stdexcept>

namespace chalk::ui::common {

namespace {

QByteArray tokensJson()
{
    QFile file(QStringLiteral(":/chalkrung/tokens.json"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

struct ContrastPair {
    QColor Theme::*ink;
    QColor Theme::*ground;
    double least;
};

// WCAG 2.2, success criteria 1.4.3 (text, 4.5:1) and 1.4.11 (what is needed to see a control or a graphic, 3:1).
constexpr double kText = 4.5;
constexpr double kGraphic = 3.0;
constexpr ContrastPair kContrastPairs[] = {
    {&Theme::ink, &Theme::surface, kText},      {&Theme::ink, &Theme::win, kText},
    {&Theme::ink, &Theme::raised, kText},       {&Theme::ink, &Theme::wash, kText},
    {&Theme::ink, &Theme::wash2, kText},        {&Theme::ink, &Theme::hover, kText},
    {&Theme::ink2, &Theme::surface, kText},     {&Theme::ink2, &Theme::win, kText},
    {&Theme::ink2, &Theme::raised, kText},      {&Theme::ink2, &Theme::wash, kText},
    {&Theme::ink3, &Theme::surface, kText},     {&Theme::ink3, &Theme::win, kText},
    {&Theme::ink3, &Theme::raised, kText},      {&Theme::ink3, &Theme::sunken, kText},
    {&Theme::ink3, &Theme::wash, kText},        {&Theme::railInk, &Theme::rail, kText},
    {&Theme::railInk, &Theme::rail2, kText},    {&Theme::railOn, &Theme::rail2, kText},
    {&Theme::chalk, &Theme::rail, kText},       {&Theme::priInk, &Theme::pri, kText},
    {&Theme::priInk, &Theme::priHover, kText},  {&Theme::chalkInk, &Theme::chalk, kText},
    {&Theme::link, &Theme::surface, kText},     {&Theme::link, &Theme::win, kText},
    {&Theme::pain, &Theme::painBg, kText},      {&Theme::pain, &Theme::surface, kText},
    {&Theme::ink, &Theme::painBg, kText},       {&Theme::warn, &Theme::warnBg, kText},
    {&Theme::warn, &Theme::surface, kText},     {&Theme::ink, &Theme::warnBg, kText},
    {&Theme::ok, &Theme::okBg, kText},          {&Theme::ok, &Theme::surface, kText},
    {&Theme::ink, &Theme::okBg, kText},         {&Theme::info, &Theme::infoBg, kText},
    {&Theme::info, &Theme::surface, kText},     {&Theme::ink, &Theme::infoBg, kText},
    {&Theme::ctl, &Theme::raised, kGraphic},    {&Theme::ctl, &Theme::surface, kGraphic},
    {&Theme::focus, &Theme::surface, kGraphic}, {&Theme::focus, &Theme::win, kGraphic},
    {&Theme::focus, &Theme::raised, kGraphic},  {&Theme::mark, &Theme::surface, kGraphic},
    {&Theme::mark, &Theme::wash, kGraphic},     {&Theme::axis, &Theme::surface, kGraphic},
    {&Theme::attDot, &Theme::surface, kGraphic}};

}  // namespace

TEST(Theme, HasEveryTokenInBothTones)
{
    for (const Tone tone : {Tone::Paper, Tone::Slate}) {
        const Theme theme = themeFromTokens(tokensJson(), tone);
        for (const NamedColour& colour : namedColours()) {
            EXPECT_TRUE((theme.*colour.member).isValid()) << colour.name;
        }
        for (const TypeStep step : theme.type) {
            EXPECT_GE(step.px, 12);
        }
    }
    EXPECT_NE(themeFromTokens(tokensJson(), Tone::Paper).win, themeFromTokens(tokensJson(), Tone::Slate).win);
}

TEST(Theme, NamesTheTokenThatIsMissing)
{
    QJsonObject root = QJsonDocument::fromJson(tokensJson()).object();
    QJsonObject themes = root.value(QStringLiteral("themes")).toObject();
    QJsonObject light = themes.value(QStringLiteral("light")).toObject();
    light.remove(QStringLiteral("attDot"));
    themes.insert(QStringLiteral("light"), light);
    root.insert(QStringLiteral("themes"), themes);
    const QByteArray json = QJsonDocument(root).toJson();
    try {
        (void)themeFromTokens(json, Tone::Paper);
        FAIL() << "a token is missing";
    } catch (const std::logic_error& error) {
        EXPECT_NE(std::string(error.what()).find("attDot"), std::string::npos);
    }
    EXPECT_NO_THROW((void)themeFromTokens(json, Tone::Slate));
}

TEST(Theme, ContrastIsThePublishedRatio)
{
    // WCAG 2.2: black on white is 21:1. #767676 on white is 4.54:1, the grey that W3C's techniques name as the lightest that passes.
    EXPECT_NEAR(contrastOf(Qt::black, Qt::white), 21.0, 1e-9);
    EXPECT_NEAR(contrastOf(QColor(0x76, 0x76, 0x76), Qt::white), 4.54, 0.005);
    EXPECT_LT(contrastOf(QColor(0x77, 0x77, 0x77), Qt::white), 4.5);
    EXPECT_DOUBLE_EQ(contrastOf(Qt::white, Qt::red), contrastOf(Qt::red, Qt::white));
}

TEST(Theme, EveryPairOfColoursCanBeRead)
{
    for (const Tone tone : {Tone::Paper, Tone::Slate}) {
        const Theme theme = themeFromTokens(tokensJson(), tone);
        for (const ContrastPair& pair : kContrastPairs) {
            EXPECT_GE(contrastOf(theme.*pair.ink, theme.*pair.ground), pair.least)
                << (theme.*pair.ink).name().toStdString() << " on " << (theme.*pair.ground).name().toStdString();
        }
        for (const progression::Stage stage : progression::kStages) {
            for (QColor Theme::*ground : {&Theme::surface, &Theme::raised, &Theme::wash}) {
                EXPECT_GE(contrastOf(theme.stage(stage), theme.*ground), kText) << progression::numberOf(stage);
            }
            EXPECT_GE(contrastOf(theme.onStage(stage), theme.stage(stage)), kText) << progression::numberOf(stage);
        }
        for (const lifts::Pattern pattern : lifts::kPatterns) {
            const PatternFill& fill = theme.pattern(pattern);
            EXPECT_GE(contrastOf(fill.edge.isValid() ? fill.edge : fill.fill, theme.surface), kGraphic)
                << lifts::keyOf(pattern);
        }
    }
}

TEST(Theme, PrintsInBlackAndWhiteOnly)
{
    const Theme print = Look().printTheme();
    for (const NamedColour& colour : namedColours()) {
        const QColor c = print.*colour.member;
        EXPECT_TRUE(c == QColor(Qt::black) || c == QColor(Qt::white)) << colour.name;
    }
}

TEST(Theme, FontsAreOursAndTheirDigitsAreAllOneWidth)
{
    const Theme theme = Look().theme();
    for (int i = 0; i < kTextStyleCount; ++i) {
        EXPECT_TRUE(QFontInfo(theme.font(static_cast<TextStyle>(i))).family().startsWith(QLatin1String("Inter Tab"))) << i;
    }
    const QFontMetricsF metrics(theme.font(TextStyle::Body));
    for (const QChar digit : QStringLiteral("023456789")) {
        EXPECT_DOUBLE_EQ(metrics.horizontalAdvance(digit), metrics.horizontalAdvance(QLatin1Char('1')));
    }
}

TEST(Look, TextSizeScalesTheTypeAndStaysInBounds)
{
    Look look;
    const QSignalSpy changes(&look, &Look::changed);
    EXPECT_EQ(look.theme().font(TextStyle::Body).pixelSize(), 14);
    look.setTextPercent(150);
    EXPECT_EQ(look.theme().font(TextStyle::Body).pixelSize(), 21);
    look.setTextPercent(400);
    EXPECT_EQ(look.theme().textPercent, Look::kMostTextPercent);
    look.setTextPercent(10);
    EXPECT_EQ(look.theme().textPercent, Look::kLeastTextPercent);
    look.toggleTone();
    EXPECT_EQ(look.theme().tone, Tone::Slate);
    EXPECT_EQ(look.theme().textPercent, Look::kLeastTextPercent);
    look.setTone(Tone::Print);
    EXPECT_EQ(look.theme().tone, Tone::Slate);
    EXPECT_EQ(changes.count(), 3);
}

TEST(StyleSheet, KnowsEveryNameItUses)
{
    Look look;
    const QString sheet = styleSheetFor(look.theme());
    EXPECT_FALSE(sheet.isEmpty());
    EXPECT_FALSE(sheet.contains(QLatin1Char('@')));
    EXPECT_EQ(filledIn(QStringLiteral("a { color: @nothing; }"), look.theme()), QStringLiteral("a { color: @nothing; }"));
    look.setTextPercent(150);
    EXPECT_EQ(filledIn(QStringLiteral("height: @px(10); color: @line2; background: @line"), look.theme()),
              QStringLiteral("height: 15px; color: #b7bdb7; background: #daddd7"));
}

TEST(IconStore, DrawsInTheColourAskedForAndKeepsWhatItDrew)
{
    const IconStore icons;
    const QPixmap red = icons.pixmap(QStringLiteral("roster"), 20, Qt::red, 2.0);
    EXPECT_EQ(red.size(), QSize(40, 40));
    EXPECT_EQ(red.cacheKey(), icons.pixmap(QStringLiteral("roster"), 20, Qt::red, 2.0).cacheKey());
    EXPECT_NE(red.cacheKey(), icons.pixmap(QStringLiteral("roster"), 20, Qt::blue, 2.0).cacheKey());
    const QImage image = red.toImage();
    int inked = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QColor colour = image.pixelColor(x, y);
            if (colour.alpha() == 255) {
                ++inked;
                EXPECT_EQ(colour, QColor(Qt::red));
            }
        }
    }
    EXPECT_GT(inked, 50);
    EXPECT_TRUE(icons.pixmap(QStringLiteral("no-such-icon"), 20, Qt::red, 1.0).isNull());
    EXPECT_FALSE(IconStore::has(QStringLiteral("no-such-icon")));
}

}  // namespace chalk::ui::common
