#pragma once

#include "core/base/id.h"
#include "core/store/database.h"

#include <QString>

#include <tl/expected.hpp>

namespace chalk::ui::common {
class Look;
}

namespace chalk::app {

/// Takes acts back for the window. A large one, such as an import of many people, goes beside the window's thread over a connection of its own, while a box
/// says how far it is and can stop it.
class LongUndo {
public:
    /// Both outlive it.
    LongUndo(store::Database& database, const ui::common::Look& look) : m_database(database), m_look(look) {}

    /// The act that takes it back, or why it could not be.
    [[nodiscard]] tl::expected<base::ActId, QString> undo(base::ActId act);

private:
    [[nodiscard]] tl::expected<base::ActId, QString> undoBeside(base::ActId act);

    store::Database& m_database;
    const ui::common::Look& m_look;
    bool m_isUnderWay = false;
};

}  // namespace chalk::app
