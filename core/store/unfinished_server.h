#pragma once

#include "core/store/database.h"

#include <cstdint>
#include <memory>

namespace chalk::store {

/// A place for a studio on a server: what has to be made for it, the database or the tables and roles in one that is empty, goes away again unless
/// the work comes to its end. What was there before stays.
class UnfinishedServer {
public:
    explicit UnfinishedServer(Access access) : m_access(std::move(access)) {}
    ~UnfinishedServer();
    UnfinishedServer(const UnfinishedServer&) = delete;
    UnfinishedServer& operator=(const UnfinishedServer&) = delete;

    /// Makes what is not there and opens it; the connection is to be closed before this goes.
    [[nodiscard]] Result<std::unique_ptr<Database>> make();
    /// What was made stays.
    void finish() { m_made = Made::Nothing; }

private:
    enum class Made : std::uint8_t { Nothing, Tables, Database };

    /// What is to be made where nobody could get in for that reason.
    [[nodiscard]] static Made missing(const StoreError& error);

    Access m_access;
    Made m_made = Made::Nothing;
    QString m_roleBase;
};

}  // namespace chalk::store
