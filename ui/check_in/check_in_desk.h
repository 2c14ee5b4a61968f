#pragma once

#ifndef Q_MOC_RUN  // moc stumbles over the standard library behind it
#include "ui/check_in/check_in_source.h"
#endif

#include <QFutureWatcher>
#include <QObject>

#include <memory>
#include <set>

namespace chalk::ui::common {
class ActHistory;
class Clock;
}  // namespace chalk::ui::common

namespace chalk::ui::check_in {

/// What the coach settled on the form.
struct DecisionDraft {
    checkin::ChoiceKind choice = checkin::ChoiceKind::Hold;
    std::optional<base::LiftId> lift;
    std::optional<progression::EventBody> event;
    std::string note;
    base::Date nextReview;
    QString words;  ///< for the ledge, in the past: `Bench press: lighter week for Tomasz`
};

/// Between the check-in page and the studio: reads the queue and the open client beside the window's thread, writes decisions, and knows who
/// is next. Asked again while it reads, it reads what was asked last.
class CheckInDesk : public QObject {
    Q_OBJECT

public:
    /// `clock` and `acts` outlive the desk.
    CheckInDesk(std::unique_ptr<CheckInSource> source, const common::Clock& clock, common::ActHistory& acts, QObject* parent = nullptr);
    /// Waits for a reading that is under way.
    ~CheckInDesk() override;

    /// Reads the queue and the open client again.
    void refresh();
    /// Opens a client of the queue, or one who is not due.
    void go(base::ClientId client);
    /// Opens the client `by` places on in the queue; stays at its ends.
    void step(int by);
    /// Leaves the open client for later and opens the next one who is not settled.
    void skip();
    /// Writes a decision about the open client and opens the next one who is not settled. The reason where it could not be written.
    [[nodiscard]] QString decide(const DecisionDraft& draft);
    void chooseLift(std::size_t lift);

    [[nodiscard]] const std::vector<checkin::QueueEntry>& queue() const { return m_queue; }
    [[nodiscard]] bool hasQueue() const { return m_hasQueue; }
    [[nodiscard]] bool isReading() const { return m_isReading; }
    [[nodiscard]] base::ClientId client() const { return m_client; }
    /// The page of the open client; null until it is read.
    [[nodiscard]] const CheckInCase* page() const { return m_page ? &*m_page : nullptr; }
    [[nodiscard]] std::size_t lift() const { return m_lift; }
    [[nodiscard]] bool isSkipped(base::ClientId client) const { return m_skipped.contains(client); }
    [[nodiscard]] int decidedCount() const;
    /// Everybody is decided or skipped, and nobody was opened since.
    [[nodiscard]] bool isAtEnd() const { return m_isAtEnd; }
    /// The day that everything is of.
    [[nodiscard]] base::Date day() const { return m_day; }
    [[nodiscard]] CheckInSource& source() { return *m_source; }

Q_SIGNALS:
    void begun();
    void queueLoaded();
    /// The open client is read, or another one is on the way.
    void pageChanged();
    void failed(const QString& message);

private:
    struct Reading;
    using Read = std::shared_ptr<Reading>;

    void read();
    void take();
    void openNext();
    [[nodiscard]] bool isSettled(const checkin::QueueEntry& entry) const;
    [[nodiscard]] std::ptrdiff_t indexOf(base::ClientId client) const;

    std::shared_ptr<CheckInSource> m_source;
    const common::Clock& m_clock;
    common::ActHistory& m_acts;
    QFutureWatcher<Read> m_watcher;
    std::vector<checkin::QueueEntry> m_queue;
    std::set<base::ClientId> m_skipped;
    base::ClientId m_client;
    std::optional<CheckInCase> m_page;
    std::size_t m_lift = 0;
    base::Date m_day;
    bool m_hasQueue = false;
    bool m_isQueueWanted = false;
    bool m_isPageWanted = false;
    bool m_isReading = false;  ///< the watcher does not know it before the other thread has begun
    bool m_isAtEnd = false;
};

}  // namespace chalk::ui::check_in
