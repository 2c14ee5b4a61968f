#pragma once

#include "core/store/change_feed.h"

#include <QFutureWatcher>
#include <QObject>
#include <QTimer>

#include <memory>

namespace chalk::ui::common {

class WriteDesk;

/// `Changed by Ines: Joaquin’s squat` of the last of what others did; `Changed elsewhere` where nothing is known of it.
[[nodiscard]] QString newsWords(const std::vector<store::ActRecord>& news);

/// Looks after the window's connection: tells when somebody else wrote, when a server does not answer and when it does again; then what waited
/// is sent. A server that does not answer is asked in a thread of its own, so the window goes on.
class StudioWatch : public QObject {
    Q_OBJECT

public:
    static constexpr int kLookMs = 3'000;

    /// Both outlive this.
    StudioWatch(store::Database& database, WriteDesk& writes, QObject* parent = nullptr);
    ~StudioWatch() override;

    /// Sends what an earlier run left waiting, and looks every few seconds from here on.
    void start();
    /// Looks now.
    void look();
    [[nodiscard]] bool isLost() const { return m_isLost; }

Q_SIGNALS:
    /// Somebody wrote; `words` say what, and nothing where it was this run of the program.
    void changed(const QString& words);
    /// The server does not answer.
    void lost();
    /// It does again: what is on show is to be read again.
    void found();

private:
    void lose();
    void tryAgain();
    void takeAnswer();
    void listen();
    void tell();

    store::Database& m_database;
    WriteDesk& m_writes;
    store::ChangeFeed m_feed;
    QTimer m_timer;
    QTimer m_pause;  ///< several changes at once are told once
    QFutureWatcher<bool> m_answer;
    bool m_isLost = false;
};

}  // namespace chalk::ui::common
