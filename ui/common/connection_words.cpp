#include "ui/common/connection_words.h"

#include "core/sessions/session.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

#include <algorithm>

namespace chalk::ui::common {

namespace {

constexpr std::size_t kMostNamed = 3;

QString connectionText(const char* text)
{
    return QCoreApplication::translate("Connection", text);
}

/// `Back squat for Joaquin, Missed: Adaeze and 2 more`.
QString namesOf(const std::vector<store::OutboxItem>& waiting)
{
    QStringList names;
    for (std::size_t i = 0; i < std::min(waiting.size(), kMostNamed); ++i) {
        names.append(waiting[i].words);
    }
    const QString all = names.join(QStringLiteral(", "));
    return waiting.size() > kMostNamed ? connectionText("%1 and %2 more").arg(all).arg(waiting.size() - kMostNamed) : all;
}

QString countOf(const std::vector<store::OutboxItem>& waiting)
{
    return waiting.size() == 1 ? connectionText("One change is") : connectionText("%1 changes are").arg(waiting.size());
}

}  // namespace

QString roleName(store::Role role)
{
    switch (role) {
    case store::Role::Owner: return connectionText("owner");
    case store::Role::Coach: return connectionText("coach");
    case store::Role::FrontDesk: return connectionText("front desk");
    }
    return {};
}

BannerMessage lostConnection(int sinceMinute, const std::vector<store::OutboxItem>& waiting)
{
    const QString lead = connectionText("No connection since %1.").arg(qstring(sessions::clockText(sinceMinute)));
    const QString text = waiting.empty() ? connectionText("What you type stays. Results, session states and bookings are kept here and sent as soon as the server answers.")
                                         : connectionText("%1 kept here and sent as soon as the server answers: %2.").arg(countOf(waiting), namesOf(waiting));
    return {Signal::Warn, QStringLiteral("warning"), lead, text};
}

std::optional<BannerMessage> stillWaiting(const std::vector<store::OutboxItem>& waiting)
{
    if (waiting.empty()) {
        return std::nullopt;
    }
    return BannerMessage{Signal::Warn, QStringLiteral("warning"), connectionText("Not sent yet."),
                         connectionText("%1 kept here: %2. Nothing is lost when the window is closed.").arg(countOf(waiting), namesOf(waiting))};
}

}  // namespace chalk::ui::common
