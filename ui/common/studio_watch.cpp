#include "ui/common/studio_watch.h"

#include "ui/common/formats.h"
#include "ui/common/write_desk.h"

#include <QCoreApplication>

namespace chalk::ui::common {

namespace {

constexpr int kPauseMs = 150;

QString watchText(const char* text)
{
    return QCoreApplication::translate("StudioWatch", text);
}

/// `Joaquin’s squat`; empty where the act is about several.
QString subjectOf(const store::ActRecord& act)
{
    const QString who = qstring(act.clientName).section(QLatin1Char(' '), 0, 0);
    if (who.isEmpty()) {
        return {};
    }
    if (!act.patterns.empty()) {
        return watchText("%1’s %2").arg(who, patternName(act.patterns.front()).toLower());
    }
    return act.sessions > 0 ? watchText("%1’s session").arg(who) : who;
}

}  // namespace

QString newsWords(const std::vector<store::ActRecord>& news)
{
    if (news.empty()) {
        return watchText("Changed elsewhere");
    }
    const store::ActRecord& last = news.back();
    const QString subject = subjectOf(last);
    const QString by = last.coachName.empty() ? watchText("Changed elsewhere") : watchText("Changed by %1").arg(qstring(last.coachName));
    const QString words = subject.isEmpty() ? by : watchText("%1: %2").arg(by, subject);
    return news.size() == 1 ? words : watchText("%1, and %2 more").arg(words).arg(news.size() - 1);
}

StudioWatch::StudioWatch(store::Database& database, WriteDesk& writes, QObject* parent, int patienceMs)
    : QObject(parent),
      m_database(database),
      m_writes(writes),
      m_feed(database),
      m_ping(database.isOnServer() ? std::make_unique<store::ServerPing>(database.access()) : nullptr)
{
    m_timer.setInterval(kLookMs);
    m_pause.setInterval(kPauseMs);
    m_pause.setSingleShot(true);
    m_patience.setInterval(patienceMs);
    m_patience.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &StudioWatch::look);
    connect(&m_pause, &QTimer::timeout, this, &StudioWatch::tell);
    connect(&m_patience, &QTimer::timeout, this, &StudioWatch::lose);
    connect(&m_answer, &QFutureWatcherBase::finished, this, &StudioWatch::takeAnswer);
    connect(&writes, &WriteDesk::unanswered, this, [this] {
        lose();
        look();
    });
}

StudioWatch::~StudioWatch()
{
    m_answer.disconnect(this);
    m_writes.holdBack(false);
}

void StudioWatch::start()
{
    listen();
    m_timer.start();
    QTimer::singleShot(0, this, [this] { m_writes.sendWaiting(); });
}

void StudioWatch::listen()
{
    m_feed.listen([this] { m_pause.start(); });
    m_session = m_ping ? store::ServerPing::sessionOf(m_database) : QString();
}

void StudioWatch::look()
{
    if (m_ping) {
        ask();
    } else if (m_feed.look()) {
        tell();
    }
}

void StudioWatch::ask()
{
    if (!m_answer.isRunning()) {
        m_patience.start();
        m_answer.setFuture(m_ping->ask(m_session));
    }
}

void StudioWatch::takeAnswer()
{
    m_patience.stop();
    const store::PingAnswer answer = m_answer.result();
    if (answer != store::PingAnswer::Well) {
        lose();
    }
    if (m_isLost && answer != store::PingAnswer::Silent) {
        comeBack();
    }
}

void StudioWatch::tell()
{
    const auto news = m_feed.news();
    const bool isOwn = m_database.hasOwnNews();
    if (news) {
        Q_EMIT changed(news->empty() && isOwn ? QString() : newsWords(*news));
    } else if (news.error().kind == store::StoreError::Kind::Unreachable) {
        lose();
    }
}

void StudioWatch::lose()
{
    if (m_isLost || !m_ping) {
        return;
    }
    m_isLost = true;
    m_writes.holdBack(true);
    Q_EMIT lost();
}

void StudioWatch::comeBack()
{
    // The server answered a moment ago, so this does not wait for it.
    if (!m_database.reconnect()) {
        return;
    }
    m_isLost = false;
    m_writes.holdBack(false);
    listen();
    Q_EMIT found();
    m_writes.sendWaiting();
    if (m_isLost) {
        return;
    }
    // found() has everything read again; only what is known of others is said after it.
    if (const auto news = m_feed.news(); news && !news->empty()) {
        Q_EMIT changed(newsWords(*news));
    }
}

}  // namespace chalk::ui::common
