#include "tests/faults/children.h"

#include "core/store/backup_shelf.h"
#include "core/store/record_writer.h"
#include "core/store/session_writer.h"
#include "tests/support/lift_on_test.h"
#include "tests/support/small_studio.h"

#include <QSqlQuery>

#include <cstdio>

#include <unistd.h>

namespace chalk::faults {

namespace {

constexpr int kCannot = 3;
constexpr int kMinutesADay = 24 * 60;

/// Says something at once: what is said is in the pipe before the next thing is done.
void sayLine(const QString& line)
{
    const QByteArray bytes = line.toUtf8() + '\n';
    if (::write(STDOUT_FILENO, bytes.constData(), static_cast<size_t>(bytes.size())) != bytes.size()) {
        std::_Exit(kCannot);
    }
}

int cannot(const store::StoreError& error)
{
    sayLine(QStringLiteral("cannot: ") + error.message);
    return kCannot;
}

int numberIn(store::Database& database, const char* sql)
{
    QSqlQuery query(database.connection());
    return query.exec(QString::fromLatin1(sql)) && query.next() ? query.value(0).toInt() : 0;
}

int recordForEver(const QString& file)
{
    const auto opened = store::Database::open(file, store::OpenMode::MustExist);
    if (!opened) {
        return cannot(opened.error());
    }
    store::Database& database = **opened;
    const base::ClientId ada = test::clientNamed(database, "Ada Lund");
    const base::LiftId squat = test::liftOf(database, ada, lifts::Pattern::Squat);
    const base::LiftId hinge = test::liftOf(database, ada, lifts::Pattern::Hinge);
    while (true) {
        const base::Date day = base::Date::fromDays(numberIn(database, "SELECT max(day) FROM session") + 1);
        const sessions::Session booking{{}, ada, base::CoachId(1), day, 540, 60, "Rack 1", 4, sessions::SessionKind::Training, sessions::SessionState::Planned, {}, false};
        if (const auto booked = store::SessionWriter(database, test::someMoment).book(booking); !booked) {
            return cannot(booked.error());
        }
        const base::SessionId session(numberIn(database, "SELECT max(id) FROM session"));
        const auto recorded = store::RecordWriter(database, test::someMoment)
                                  .record(ada, session, {{squat, {day, test::exposureOf({{45, 8, 2}, {45, 8, 2}})}}, {hinge, {day, test::exposureOf({{60, 8, 3}})}}});
        if (!recorded) {
            return cannot(recorded.error());
        }
        sayLine(QStringLiteral("recorded %1 2 %2").arg(recorded->act.value()).arg(session.value()));
    }
}

/// A shelf whose clock goes on by a minute whenever it is asked, from the latest backup there.
store::BackupShelf shelfOf(const QString& file)
{
    const QString folder = store::BackupShelf::folderFor(file);
    const auto far = [] { return store::BackupShelf::Moment{{*base::Date::parse("2099-01-01"), 0}, 0}; };
    const auto kept = store::BackupShelf(folder, far).list();
    const base::Date first = *base::Date::parse(kFirstBackupDay);
    const studio::BackupMoment last = kept.empty() ? studio::BackupMoment{first, 0} : kept.front().made;
    int minute = (last.day.daysSince1970() - first.daysSince1970()) * kMinutesADay + last.minute;
    return {folder, [first, minute]() mutable {
                ++minute;
                return store::BackupShelf::Moment{{first + minute / kMinutesADay, minute % kMinutesADay}, 0};
            }};
}

int backUpForEver(const QString& file)
{
    const auto opened = store::Database::open(file, store::OpenMode::MustExist);
    if (!opened) {
        return cannot(opened.error());
    }
    store::BackupShelf shelf = shelfOf(file);
    while (true) {
        const auto made = shelf.add(**opened);
        if (!made) {
            return cannot(made.error());
        }
        sayLine(QStringLiteral("made ") + *made);
    }
}

int restoreForEver(const QString& file, const QStringList& backups)
{
    const store::BackupShelf shelf = shelfOf(file);
    while (true) {
        for (const QString& backup : backups) {
            if (const auto restored = shelf.restore(backup, file); !restored) {
                return cannot(restored.error());
            }
            shelf.rotate();
            sayLine(QStringLiteral("restored ") + backup);
        }
    }
}

}  // namespace

int runChild(const QStringList& arguments)
{
    const QString what = arguments.value(0);
    const QString file = arguments.value(1);
    if (what == QLatin1String("record")) {
        return recordForEver(file);
    }
    if (what == QLatin1String("backup")) {
        return backUpForEver(file);
    }
    if (what == QLatin1String("restore")) {
        return restoreForEver(file, arguments.mid(2));
    }
    if (what == QLatin1String("flip")) {
        return flipBits(file, arguments.value(2).toUInt(), arguments.value(3).toInt(), arguments.value(4).toInt());
    }
    return kCannot;
}

}  // namespace chalk::faults
