#pragma once

#include "ui/shell/page.h"

#include <optional>
#include <vector>

namespace chalk::ui::shell {

/// The last clients that were opened, in the order in which they came into the list: a client that is opened again stays where
/// it is, and a fifth one takes the place of the one not looked at for longest.
class OpenClients {
public:
    static constexpr std::size_t kMost = 4;

    /// The client is on show now. A changed name is taken over.
    void show(const OpenClient& client);
    /// No client is on show.
    void showNone() { m_present = {}; }
    /// The client is gone.
    void forget(base::ClientId client);

    [[nodiscard]] std::vector<OpenClient> clients() const;
    [[nodiscard]] base::ClientId present() const { return m_present; }
    /// The client after the present one, round and round; the last one looked at where none is on show. Nothing where the list
    /// is empty.
    [[nodiscard]] std::optional<base::ClientId> next() const;

private:
    struct Entry {
        OpenClient client;
        int lookedAt = 0;
    };

    std::vector<Entry> m_entries;
    base::ClientId m_present;
    int m_looks = 0;
};

}  // namespace chalk::ui::shell
