#pragma once

#include "core/store/change_feed.h"
#include "core/store/server_ping.h"

#include <QFutureWatcher>
#include <QObject>
#include <QTimer>

#include <memory>

namespace chalk::ui::common {

class WriteDesk;

/// `Changed by Ines: Joaquin’s squat` of the last of what others did; `Changed elsewhere` where nothing is known of it.
[[nodiscard]] QString newsWords(const std::vector<store::ActRecord>& news);

/// Looks after the window's connection: tells when somebody else wrote, when a server does not answer and when it does again; then what waited
/// is sent. A server is asked in a thread of its own: one that hangs does not hold up the window, and counts as one that does not answer.
class StudioWatch : public QObject {
    Q_OBJECT

public:
    static constexpr int kLookMs = 3'000;
    static constexpr int kPatienceMs = 6'000;

    /// Both outlive this. A server that takes longer than `patienceMs` for an answer counts as lost.
    StudioWatch(store::Database& database, WriteDesk& writes, QObject* parent = nullptr, int patienceMs = kPatienceMs);
    ~StudioWatch() override;

    /// Sends what an earlier run left waiting, and looks every few seconds from here on.
    void start();
    /// Looks now; what comes of a server is told later.
    void look();
    [[nodiscard]] bool isLost() const { return m_isLost; }

Q_SIGNALS:
    /// Something was written beside the window; `words` say what, and are empty where the program itself did, in a thread of its own.
    void changed(const QString& words);
    /// The server does not answer.
    void lost();
    /// It does again: what is on show is to be read again.
    void found();

private:
    void ask();
    void takeAnswer();
    void lose();
    void comeBack();
    void listen();
    void tell();

    store::Database& m_database;
    WriteDesk& m_writes;
    store::ChangeFeed m_feed;
    QTimer m_timer;
    QTimer m_pause;  ///< several changes at once are told once
    std::unique_ptr<store::ServerPing> m_ping;  ///< none for a file
    QString m_session;                          ///< the window's connection, as the server names it
    QFutureWatcher<store::PingAnswer> m_answer;
    QTimer m_patience;
    bool m_isLost = false;
};

}  // namespace chalk::ui::common
