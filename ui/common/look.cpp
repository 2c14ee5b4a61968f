#include "ui/common/look.h"

#include "ui/common/icon_store.h"
#include "ui/common/style_sheet.h"

#include <QApplication>
#include <QEvent>
#include <QPalette>
#include <QStyle>
#include <QStyleFactory>
#include <QWidget>

#include <algorithm>

namespace chalk::ui::common {

namespace {

QPalette paletteOf(const Theme& theme)
{
    QPalette palette;
    const std::pair<QPalette::ColorRole, QColor> roles[] = {
        {QPalette::Window, theme.win},         {QPalette::WindowText, theme.ink},
        {QPalette::Base, theme.surface},       {QPalette::AlternateBase, theme.hover},
        {QPalette::Text, theme.ink},           {QPalette::Button, theme.raised},
        {QPalette::ButtonText, theme.ink},     {QPalette::Highlight, theme.wash2},
        {QPalette::HighlightedText, theme.ink}, {QPalette::PlaceholderText, theme.ink3},
        {QPalette::ToolTipBase, theme.raised}, {QPalette::ToolTipText, theme.ink},
        {QPalette::Link, theme.link},          {QPalette::LinkVisited, theme.link},
        {QPalette::Mid, theme.line2},          {QPalette::Dark, theme.line2},
        {QPalette::Light, theme.raised},       {QPalette::Midlight, theme.line},
        {QPalette::Shadow, theme.line2},       {QPalette::BrightText, theme.priInk}};
    for (const auto& [role, colour] : roles) {
        palette.setColor(role, colour);
    }
    for (const QPalette::ColorRole role : {QPalette::Text, QPalette::ButtonText, QPalette::WindowText}) {
        palette.setColor(QPalette::Disabled, role, theme.ink3);
    }
    return palette;
}

}  // namespace

Look::Look(QObject* parent)
    : QObject(parent), m_icons(std::make_shared<IconStore>()), m_theme(readTheme(Tone::Paper, 100, m_icons))
{
}

Theme Look::printTheme() const
{
    return readTheme(Tone::Print, 100, m_icons);
}

void Look::setTone(Tone tone)
{
    if (tone != m_theme.tone && tone != Tone::Print) {
        m_theme = readTheme(tone, m_theme.textPercent, m_icons);
        Q_EMIT changed();
    }
}

void Look::toggleTone()
{
    setTone(m_theme.tone == Tone::Paper ? Tone::Slate : Tone::Paper);
}

void Look::setTextPercent(int percent)
{
    const int kept = std::clamp(percent, kLeastTextPercent, kMostTextPercent);
    if (kept != m_theme.textPercent) {
        m_theme.textPercent = kept;
        Q_EMIT changed();
    }
}

void applyTheme(QApplication& application, const Theme& theme)
{
    application.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    application.setPalette(paletteOf(theme));
    application.setFont(theme.font(TextStyle::Body));
    application.setStyleSheet(styleSheetFor(theme));
    for (QWidget* widget : QApplication::allWidgets()) {  // Qt leaves out those that were made before the event loop runs
        QEvent event(QEvent::ApplicationFontChange);
        QApplication::sendEvent(widget, &event);
    }
}

}  // namespace chalk::ui::common
