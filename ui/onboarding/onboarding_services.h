#pragma once

#include <QString>

#include <functional>

namespace chalk::lifts {
class Catalogue;
}

namespace chalk::screens {
class ScreenCatalogue;
}

namespace chalk::store {
class Database;
}

namespace chalk::ui::common {
class ActHistory;
class Clock;
class Dialogs;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

/// What onboarding works with. Everything outlives the page.
struct OnboardingServices {
    store::Database& database;
    const lifts::Catalogue& catalogue;
    const screens::ScreenCatalogue& screens;
    const common::Look& look;
    const common::Clock& clock;
    common::ActHistory& acts;
    common::Dialogs& dialogs;
    std::function<QString()> atUtc;  ///< the moment of an act, ISO 8601
};

}  // namespace chalk::ui::onboarding
