#include "app/long_undo.h"

#include "app/logging.h"
#include "app/system_clock.h"
#include "core/store/record_writer.h"
#include "ui/common/look.h"
#include "ui/settings/waited_work.h"

#include <QApplication>

namespace chalk::app {

namespace {

constexpr int kMostAtOnce = 200;  ///< entries that are taken back within the time of a keystroke

using MaybeUndone = tl::expected<base::ActId, QString>;

MaybeUndone actOf(const store::Result<store::ActOutcome>& outcome)
{
    return outcome ? MaybeUndone(outcome->act) : tl::make_unexpected(outcome.error().message);
}

}  // namespace

tl::expected<base::ActId, QString> LongUndo::undo(base::ActId act)
{
    if (m_isUnderWay) {
        return tl::make_unexpected(QApplication::translate("LongUndo", "Something is being taken back already."));
    }
    store::RecordWriter writer(m_database, SystemClock::nowUtc);
    const auto undone = writer.entriesOf(act).value_or(0) > kMostAtOnce ? undoBeside(act) : actOf(writer.undo(act));
    qCInfo(appLog) << "act" << act.value() << (undone ? "undone" : "cannot be undone");
    return undone;
}

tl::expected<base::ActId, QString> LongUndo::undoBeside(base::ActId act)
{
    m_isUnderWay = true;
    const auto work = [act, access = m_database.access(), author = m_database.author()](const store::Progress& progress) -> MaybeUndone {
        const auto database = store::Database::open(access, store::OpenMode::MustExist);
        if (!database) {
            return tl::make_unexpected(database.error().message);
        }
        (*database)->setAuthor(author);
        return actOf(store::RecordWriter(**database, SystemClock::nowUtc).undo(act, progress));
    };
    const auto undone = ui::settings::waitFor<MaybeUndone>(m_look, QApplication::activeWindow(),
                                                           QApplication::translate("LongUndo", "A large change is taken back or done again…"), work);
    m_isUnderWay = false;
    return undone;
}

}  // namespace chalk::app
