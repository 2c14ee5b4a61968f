#include "ui/shell/open_clients.h"

#include <algorithm>

namespace chalk::ui::shell {

void OpenClients::show(const OpenClient& client)
{
    m_present = client.id;
    const auto byLook = [](const Entry& a, const Entry& b) { return a.lookedAt < b.lookedAt; };
    auto place = std::find_if(m_entries.begin(), m_entries.end(), [&client](const Entry& e) { return e.client.id == client.id; });
    if (place == m_entries.end()) {
        if (m_entries.size() < kMost) {
            m_entries.emplace_back();
            place = m_entries.end() - 1;
        } else {
            place = std::min_element(m_entries.begin(), m_entries.end(), byLook);
        }
    }
    *place = {client, ++m_looks};
}

void OpenClients::forget(base::ClientId client)
{
    m_entries.erase(std::remove_if(m_entries.begin(), m_entries.end(), [client](const Entry& e) { return e.client.id == client; }),
                    m_entries.end());
    if (m_present == client) {
        m_present = {};
    }
}

std::vector<OpenClient> OpenClients::clients() const
{
    std::vector<OpenClient> clients;
    for (const Entry& entry : m_entries) {
        clients.push_back(entry.client);
    }
    return clients;
}

std::optional<base::ClientId> OpenClients::next() const
{
    if (m_entries.empty()) {
        return std::nullopt;
    }
    const auto here = std::find_if(m_entries.begin(), m_entries.end(), [this](const Entry& e) { return e.client.id == m_present; });
    if (here == m_entries.end()) {
        const auto last = std::max_element(m_entries.begin(), m_entries.end(),
                                           [](const Entry& a, const Entry& b) { return a.lookedAt < b.lookedAt; });
        return last->client.id;
    }
    return here + 1 == m_entries.end() ? m_entries.front().client.id : (here + 1)->client.id;
}

}  // namespace chalk::ui::shell
