#include "core/store/server_ping.h"

#include "core/store/statement.h"

#include <QPromise>

#include <condition_variable>
#include <mutex>
#include <optional>
#include <thread>

namespace chalk::store {

namespace {

/// A process number alone is given to somebody else one day. Whoever asks about their own login's connections is told when they began.
constexpr const char* kSessionName = "CAST(pid AS text) || ' ' || CAST(backend_start AS text)";

PingAnswer answerOf(Database& database, const QString& session)
{
    const Snapshot snapshot(database);
    Statement row(database, QStringLiteral("SELECT count(*) FROM pg_stat_activity WHERE %1 = ?").arg(QLatin1String(kSessionName)));
    const bool isThere = row.run(session) && row.next() && row.integer(0) > 0;
    return database.failure() ? PingAnswer::Silent : isThere || session.isEmpty() ? PingAnswer::Well : PingAnswer::CutOff;
}

}  // namespace

struct ServerPing::Thread {
    struct Question {
        QString session;
        QPromise<PingAnswer> promise;
    };

    explicit Thread(Access where) : access(std::move(where)) {}

    void run();
    [[nodiscard]] PingAnswer answer(const QString& session);

    const Access access;
    std::unique_ptr<Database> database;  ///< of the thread alone
    std::mutex mutex;
    std::condition_variable woken;
    std::optional<Question> question;
    bool isOver = false;
};

PingAnswer ServerPing::Thread::answer(const QString& session)
{
    if (!database) {
        if (auto opened = Database::open(access, OpenMode::ReadOnly)) {
            database = *std::move(opened);
        }
    }
    const PingAnswer answer = database ? answerOf(*database, session) : PingAnswer::Silent;
    if (answer == PingAnswer::Silent) {
        database.reset();
    }
    return answer;
}

void ServerPing::Thread::run()
{
    for (;;) {
        std::unique_lock lock(mutex);
        woken.wait(lock, [this] { return isOver || question; });
        if (isOver) {
            break;
        }
        Question asked = std::move(*question);
        question.reset();
        lock.unlock();
        asked.promise.addResult(answer(asked.session));
        asked.promise.finish();
    }
    database.reset();
}

ServerPing::ServerPing(Access access) : m_thread(std::make_shared<Thread>(std::move(access)))
{
    std::thread([thread = m_thread] { thread->run(); }).detach();
}

ServerPing::~ServerPing()
{
    const std::lock_guard lock(m_thread->mutex);
    m_thread->isOver = true;
    m_thread->woken.notify_one();
}

QString ServerPing::sessionOf(Database& database)
{
    const Snapshot snapshot(database);
    Statement row(database, QStringLiteral("SELECT %1 FROM pg_stat_activity WHERE pid = pg_backend_pid()").arg(QLatin1String(kSessionName)));
    return row.run() && row.next() ? row.qtext(0) : QString();
}

QFuture<PingAnswer> ServerPing::ask(const QString& session)
{
    Thread::Question question{session, {}};
    question.promise.start();
    QFuture<PingAnswer> future = question.promise.future();
    const std::lock_guard lock(m_thread->mutex);
    m_thread->question = std::move(question);
    m_thread->woken.notify_one();
    return future;
}

}  // namespace chalk::store
