#pragma once

#include "app/system_clock.h"
#include "ui/shell/page_registry.h"

#include <QString>

#include <functional>
#include <memory>

class QSettings;

namespace chalk::lifts {
class Catalogue;
}
namespace chalk::screens {
class ScreenCatalogue;
}
namespace chalk::store {
class Database;
class KeyRing;
}
namespace chalk::ui::common {
class ActHistory;
class BackupKeeper;
class Dialogs;
class Look;
class WriteDesk;
}
namespace chalk::ui::floor {
class CardDesk;
class FloorPresenter;
}
namespace chalk::ui::lock {
class LockDesk;
}
namespace chalk::ui::records {
class ClientRecords;
}

namespace chalk::app {

/// What the pages of a studio share; all of it outlives them.
struct StudioServices {
    store::Database& database;
    ui::common::BackupKeeper& backups;
    const SystemClock& clock;
    const lifts::Catalogue& catalogue;
    const screens::ScreenCatalogue& screens;
    ui::common::Look& look;
    QSettings& settings;
    ui::lock::LockDesk& lock;
    ui::common::ActHistory& acts;
    ui::common::Dialogs& dialogs;
    ui::common::WriteDesk& writes;
    ui::floor::FloorPresenter& floor;
    ui::floor::CardDesk& cards;
    ui::records::ClientRecords& records;
    bool mayBackUp = false;         ///< whoever works here may make and restore backups
    std::function<QString()> name;  ///< of the studio, as a title says it
    /// Once the window is closed it is to open again on that backup, which those keys open.
    std::function<void(const QString& backup, const std::shared_ptr<store::KeyRing>& keys)> openAnew;
};

/// The pages that whoever works here may see, in the order of the rail.
[[nodiscard]] ui::shell::PageRegistry studioPages(const StudioServices& studio);

}  // namespace chalk::app
