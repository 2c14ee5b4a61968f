#pragma once

#include "core/store/session_reader.h"
#include "ui/shell/place.h"

#include <QString>

#include <functional>

namespace chalk::ui::floor {

/// What a scan works with. The database outlives the desk.
struct ScanServices {
    store::Database& database;
    std::function<void(const shell::Place&)> goTo;
    /// Says why a card opened nothing; empty once one did.
    std::function<void(const QString&)> say;
};

/// Takes the code of a card that was scanned: opens the floor at its session, of whatever day, or says why it does not. It writes
/// nothing, and what is typed on the page before stays there.
class ScanDesk {
public:
    explicit ScanDesk(ScanServices services) : m_services(std::move(services)) {}

    /// While a dialog waits for an answer nothing is opened. A menu that is open is closed.
    void take(const QString& code);

private:
    [[nodiscard]] store::Result<std::optional<store::NamedSession>> sessionWith(const QString& code);

    ScanServices m_services;
};

}  // namespace chalk::ui::floor
