#include "ui/common/theme.h"

#include <QFontDatabase>
#include <QFontInfo>

#include <algorithm>
#include <cmath>

/// A static library keeps its resources only where something names them; Qt's macro has to stand outside any namespace.
static void keepUiResources()
{
    Q_INIT_RESOURCE(ui);
}

namespace chalk::ui::common {

namespace {

double linearChannel(double channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double luminanceOf(const QColor& colour)
{
    return 0.2126 * linearChannel(colour.redF()) + 0.7152 * linearChannel(colour.greenF()) +
           0.0722 * linearChannel(colour.blueF());
}

std::size_t stageIndex(progression::Stage stage)
{
    return static_cast<std::size_t>(progression::numberOf(stage) - 1);
}

}  // namespace

QColor Theme::stage(progression::Stage stage) const
{
    return stages[stageIndex(stage)];
}

QColor Theme::onStage(progression::Stage stage) const
{
    return onStages[stageIndex(stage)];
}

const PatternFill& Theme::pattern(lifts::Pattern pattern) const
{
    return patterns[static_cast<std::size_t>(pattern)];
}

SignalColours Theme::signal(Signal signal) const
{
    switch (signal) {
    case Signal::Pain:
        return {pain, painBg, painLine};
    case Signal::Warn:
        return {warn, warnBg, warnLine};
    case Signal::Ok:
        return {ok, okBg, okLine};
    case Signal::Info:
        return {info, infoBg, infoLine};
    case Signal::Muted:
        return {ink3, sunken, line2};
    }
    return {};
}

QFont Theme::font(TextStyle style) const
{
    const TypeStep step = type[static_cast<std::size_t>(style)];
    return font(step.px, static_cast<QFont::Weight>(step.weight), style == TextStyle::Title);
}

QFont Theme::font(double px, QFont::Weight weight, bool isDisplay) const
{
    QFont font(isDisplay ? QStringLiteral("Inter Tab Display") : QStringLiteral("Inter Tab"));
    font.setPixelSize(std::max(1, qRound(scaled(px))));
    font.setWeight(weight);
    font.setHintingPreference(QFont::PreferNoHinting);
    if (tone == Tone::Print) {
        font.setStyleStrategy(QFont::PreferNoShaping);  // contextual glyphs would not come out as text from a PDF
    }
    return font;
}

bool loadFonts()
{
    keepUiResources();
    for (const char* face : {"InterTab-Regular", "InterTab-Medium", "InterTab-SemiBold", "InterTab-Bold",
                             "InterTabDisplay-SemiBold", "InterTabDisplay-Bold"}) {
        if (QFontDatabase::addApplicationFont(QStringLiteral(":/chalkrung/fonts/%1.otf").arg(QLatin1String(face))) < 0) {
            return false;
        }
    }
    return true;
}

double contrastOf(const QColor& a, const QColor& b)
{
    const double la = luminanceOf(a);
    const double lb = luminanceOf(b);
    return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

}  // namespace chalk::ui::common
