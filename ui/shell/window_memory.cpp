#include "ui/shell/window_memory.h"

#include "ui/common/look.h"

#include <QScreen>
#include <QSettings>
#include <QWidget>

namespace chalk::ui::shell {

namespace {

constexpr auto kGeometryKey = "window/geometry";
constexpr auto kPlaceKey = "window/place";
constexpr auto kToneKey = "look/theme";
constexpr auto kTextKey = "look/text_percent";

QString settingKey(const char* key)
{
    return QLatin1String(key);
}

}  // namespace

void WindowMemory::rememberWindow(const QWidget& window)
{
    m_settings.setValue(settingKey(kGeometryKey), window.saveGeometry());
}

bool WindowMemory::restoreWindow(QWidget& window) const
{
    const QByteArray geometry = m_settings.value(settingKey(kGeometryKey)).toByteArray();
    if (geometry.isEmpty() || !window.restoreGeometry(geometry)) {
        return false;
    }
    // Qt moves a window onto the screen that is there now; it does not always make it as small.
    window.resize(window.size().boundedTo(window.screen()->availableSize()).expandedTo(window.minimumSize()));
    return true;
}

void WindowMemory::rememberLook(const common::Look& look)
{
    m_settings.setValue(settingKey(kToneKey),
                        look.theme().tone == common::Tone::Slate ? QStringLiteral("slate") : QStringLiteral("paper"));
    m_settings.setValue(settingKey(kTextKey), look.theme().textPercent);
}

void WindowMemory::restoreLook(common::Look& look) const
{
    if (m_settings.value(settingKey(kToneKey)).toString() == QLatin1String("slate")) {
        look.setTone(common::Tone::Slate);
    }
    bool isNumber = false;
    const int percent = m_settings.value(settingKey(kTextKey)).toInt(&isNumber);
    if (isNumber && percent > 0) {
        look.setTextPercent(percent);
    }
}

void WindowMemory::rememberPlace(const Place& place)
{
    m_settings.setValue(settingKey(kPlaceKey), lineOf(place));
}

std::optional<Place> WindowMemory::place() const
{
    return placeOf(m_settings.value(settingKey(kPlaceKey)).toString());
}

}  // namespace chalk::ui::shell
