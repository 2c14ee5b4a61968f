#pragma once

#include "core/base/id.h"
#include "ui/common/clock.h"

#include <QObject>
#include <QString>

#include <functional>
#include <optional>
#include <vector>

#include <tl/expected.hpp>

namespace chalk::ui::common {

/// One thing that was done in this run of the program.
struct DoneAct {
    base::ActId act;
    QString words;       ///< what was done, in the past: `Squat held at 77.5 kg for Joaquin`
    int minuteOfDay = 0;
};

/// What was done, taken back and done again, newest last. Every page tells it after a write that succeeded; Ctrl+Z and the ledge
/// work from it. It writes nothing itself: `undo` appends the undoing of an act to the studio and names that new act, or says
/// in words why it could not.
class ActHistory : public QObject {
    Q_OBJECT

public:
    using Undo = std::function<tl::expected<base::ActId, QString>(base::ActId)>;

    ActHistory(const Clock& clock, Undo undo, QObject* parent = nullptr);

    /// Something was done and is written. What was taken back before can no longer be done again.
    void add(base::ActId act, const QString& words);

    /// What Ctrl+Z takes back; nothing where nothing was done.
    [[nodiscard]] std::optional<DoneAct> lastDone() const;
    /// What Ctrl+Shift+Z does again; nothing where nothing was taken back.
    [[nodiscard]] std::optional<DoneAct> lastTakenBack() const;
    /// The minute of the last write; nothing where there was none.
    [[nodiscard]] std::optional<int> savedMinute() const { return m_savedMinute; }

    /// Does nothing where there is nothing to take back or do again.
    void undo();
    void redo();

Q_SIGNALS:
    /// lastDone() or lastTakenBack() is different.
    void changed();
    /// An undo or a redo was written: what is on the screen is to be read again.
    void studioChanged();
    /// An undo or a redo could not be done, and why.
    void failed(const QString& reason);

private:
    void move(std::vector<DoneAct>& from, std::vector<DoneAct>& to);

    const Clock& m_clock;
    Undo m_undo;
    std::vector<DoneAct> m_done;
    std::vector<DoneAct> m_takenBack;
    std::optional<int> m_savedMinute;
};

}  // namespace chalk::ui::common
