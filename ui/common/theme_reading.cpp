#include "ui/common/theme_reading.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <stdexcept>
#include <utility>

namespace chalk::ui::common {

namespace {

constexpr NamedColour kNamedColours[] = {
    {"win", &Theme::win}, {"surface", &Theme::surface}, {"raised", &Theme::raised}, {"sunken", &Theme::sunken},
    {"hover", &Theme::hover}, {"line", &Theme::line}, {"line2", &Theme::line2}, {"ctl", &Theme::ctl},
    {"ink", &Theme::ink}, {"ink2", &Theme::ink2}, {"ink3", &Theme::ink3}, {"rail", &Theme::rail},
    {"rail2", &Theme::rail2}, {"railInk", &Theme::railInk}, {"railOn", &Theme::railOn}, {"railLine", &Theme::railLine},
    {"chalk", &Theme::chalk}, {"chalkInk", &Theme::chalkInk}, {"wash", &Theme::wash}, {"wash2", &Theme::wash2},
    {"mark", &Theme::mark}, {"pri", &Theme::pri}, {"priInk", &Theme::priInk}, {"priHover", &Theme::priHover},
    {"link", &Theme::link}, {"focus", &Theme::focus}, {"pain", &Theme::pain}, {"painBg", &Theme::painBg},
    {"painLine", &Theme::painLine}, {"warn", &Theme::warn}, {"warnBg", &Theme::warnBg}, {"warnLine", &Theme::warnLine},
    {"ok", &Theme::ok}, {"okBg", &Theme::okBg}, {"okLine", &Theme::okLine}, {"info", &Theme::info},
    {"infoBg", &Theme::infoBg}, {"infoLine", &Theme::infoLine}, {"rungPast", &Theme::rungPast},
    {"attDot", &Theme::attDot}, {"grid", &Theme::grid}, {"axis", &Theme::axis},
};

constexpr const char* kTypeKeys[kTextStyleCount] = {"micro", "small", "body", "strong", "section", "title", "figure", "load"};

[[noreturn]] void failTokens(const QString& what)
{
    throw std::logic_error("tokens.json: " + what.toStdString());
}

QColor colourAt(const QJsonObject& object, const QString& key)
{
    const QColor colour(object.value(key).toString());
    if (!colour.isValid()) {
        failTokens(QStringLiteral("no colour \"%1\"").arg(key));
    }
    return colour;
}

Qt::BrushStyle textureOf(const QString& name)
{
    if (name == QLatin1String("solid")) {
        return Qt::SolidPattern;
    }
    if (name == QLatin1String("hatch")) {
        return Qt::BDiagPattern;
    }
    if (name == QLatin1String("dots")) {
        return Qt::Dense6Pattern;
    }
    failTokens(QStringLiteral("unknown texture \"%1\"").arg(name));
}

void readStages(const QJsonArray& stages, const QString& column, Theme& theme)
{
    if (stages.size() != qsizetype{7}) {
        failTokens(QStringLiteral("seven stages are needed"));
    }
    for (std::size_t i = 0; i < theme.stages.size(); ++i) {
        const QJsonObject stage = stages.at(static_cast<qsizetype>(i)).toObject();
        theme.stages[i] = colourAt(stage, column);
        theme.onStages[i] = colourAt(stage.value(QLatin1String("textOnFill")).toObject(), column);
    }
}

void readPatterns(const QJsonArray& patterns, const QString& column, Theme& theme)
{
    if (patterns.size() != qsizetype{8}) {
        failTokens(QStringLiteral("eight patterns are needed"));
    }
    for (const QJsonValue value : patterns) {
        const QJsonObject object = value.toObject();
        const auto pattern = lifts::patternOf(object.value(QLatin1String("key")).toString().toStdString());
        if (!pattern) {
            failTokens(QStringLiteral("a pattern has an unknown key"));
        }
        PatternFill& fill = theme.patterns[static_cast<std::size_t>(*pattern)];
        fill.fill = colourAt(object, column);
        fill.texture = textureOf(object.value(QLatin1String("texture")).toString());
    }
    for (const QJsonValue value : patterns) {
        const QJsonObject object = value.toObject();
        const auto darker = lifts::patternOf(object.value(QLatin1String("edgeOf")).toString().toStdString());
        if (darker) {
            const auto pattern = *lifts::patternOf(object.value(QLatin1String("key")).toString().toStdString());
            theme.patterns[static_cast<std::size_t>(pattern)].edge = theme.pattern(*darker).fill;
        }
    }
}

void readType(const QJsonObject& type, Theme& theme)
{
    for (std::size_t i = 0; i < theme.type.size(); ++i) {
        const QJsonObject step = type.value(QLatin1String(kTypeKeys[i])).toObject();
        theme.type[i] = {step.value(QLatin1String("px")).toInt(), step.value(QLatin1String("weight")).toInt()};
        if (theme.type[i].px <= 0 || theme.type[i].weight <= 0) {
            failTokens(QStringLiteral("no type step \"%1\"").arg(QLatin1String(kTypeKeys[i])));
        }
    }
}

/// Paper with every ink black and every ground white; shape and line tell apart what colour tells on the screen.
void turnBlackAndWhite(Theme& theme)
{
    const QColor black(Qt::black);
    const QColor white(Qt::white);
    for (const NamedColour& colour : kNamedColours) {
        theme.*colour.member = black;
    }
    for (QColor Theme::*ground : {&Theme::win, &Theme::surface, &Theme::raised, &Theme::sunken, &Theme::hover, &Theme::wash,
                                  &Theme::wash2, &Theme::chalk, &Theme::painBg, &Theme::warnBg, &Theme::okBg, &Theme::infoBg,
                                  &Theme::railOn, &Theme::railInk, &Theme::priInk}) {
        theme.*ground = white;
    }
    theme.stages.fill(black);
    theme.onStages.fill(white);
}

}  // namespace

std::span<const NamedColour> namedColours()
{
    return kNamedColours;
}

Theme themeFromTokens(const QByteArray& json, Tone tone)
{
    const QJsonObject root = QJsonDocument::fromJson(json).object();
    const QString column = tone == Tone::Slate ? QStringLiteral("dark") : QStringLiteral("light");
    const QJsonObject colours = root.value(QLatin1String("themes")).toObject().value(column).toObject();
    Theme theme;
    theme.tone = tone;
    for (const NamedColour& colour : kNamedColours) {
        theme.*colour.member = colourAt(colours, QLatin1String(colour.name));
    }
    readStages(root.value(QLatin1String("stages")).toArray(), column, theme);
    readPatterns(root.value(QLatin1String("patterns")).toArray(), column, theme);
    readType(root.value(QLatin1String("type")).toObject(), theme);
    if (tone == Tone::Print) {
        turnBlackAndWhite(theme);
    }
    return theme;
}

Theme readTheme(Tone tone, int textPercent, std::shared_ptr<const IconStore> icons)
{
    QFile file(QStringLiteral(":/chalkrung/tokens.json"));
    if (!file.open(QIODevice::ReadOnly)) {
        failTokens(QStringLiteral("not in the program"));
    }
    Theme theme = themeFromTokens(file.readAll(), tone);
    theme.textPercent = textPercent;
    theme.icons = std::move(icons);
    return theme;
}

}  // namespace chalk::ui::common
