#include "ui/common/studio_watch.h"

#include "ui/common/formats.h"
#include "ui/common/write_desk.h"

#include <QCoreApplication>
#include <QPromise>
#include <QThreadPool>

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

StudioWatch::StudioWatch(store::Database& database, WriteDesk& writes, QObject* parent)
    : QObject(parent), m_database(database), m_writes(writes), m_feed(database)
{
    m_timer.setInterval(kLookMs);
    m_pause.setInterval(kPauseMs);
    m_pause.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &StudioWatch::look);
    connect(&m_pause, &QTimer::timeout, this, &StudioWatch::tell);
    connect(&m_answer, &QFutureWatcherBase::finished, this, &StudioWatch::takeAnswer);
}

StudioWatch::~StudioWatch()
{
    m_answer.disconnect(this);
    m_answer.waitForFinished();
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
}

void StudioWatch::look()
{
    if (m_isLost) {
        return tryAgain();
    }
    if (m_database.isOnServer()) {
        const auto answered = m_feed.check();
        if (!answered && answered.error().kind == store::StoreError::Kind::Unreachable) {
            lose();
        }
    } else if (m_feed.look()) {
        tell();
    }
}

void StudioWatch::tell()
{
    const auto news = m_feed.news();
    if (news) {
        Q_EMIT changed(news->empty() && m_feed.isOwn() ? QString() : newsWords(*news));
    } else if (news.error().kind == store::StoreError::Kind::Unreachable) {
        lose();
    }
}

void StudioWatch::lose()
{
    m_isLost = true;
    Q_EMIT lost();
}

void StudioWatch::tryAgain()
{
    if (m_answer.isRunning()) {
        return;
    }
    auto promise = std::make_shared<QPromise<bool>>();
    QThreadPool::globalInstance()->start([promise, access = m_database.access()] {
        promise->start();
        promise->addResult(store::Database::open(access, store::OpenMode::ReadOnly).has_value());
        promise->finish();
    });
    m_answer.setFuture(promise->future());
}

void StudioWatch::takeAnswer()
{
    if (!m_answer.result() || !m_database.reconnect()) {
        return;
    }
    m_isLost = false;
    listen();
    Q_EMIT found();
    m_writes.sendWaiting();
    if (const auto news = m_feed.news(); news && !news->empty()) {
        Q_EMIT changed(newsWords(*news));
    }
}

}  // namespace chalk::ui::common
