#pragma once

#include "core/clients/client.h"

#include <QString>

namespace chalk::ui::common {

/// Why nothing loaded may be done; all empty where it may.
struct LockWords {
    QString brief;     ///< `Waiting for letter`, for lists
    QString headline;  ///< `Waiting for Osric’s doctor`
    QString text;      ///< what is on file, and what waits

    bool operator==(const LockWords&) const = default;
};

/// On `day`; the client is named by the first name.
[[nodiscard]] LockWords lockWordsOf(const clients::Clearance& clearance, const clients::Client& client, base::Date day);

}  // namespace chalk::ui::common
