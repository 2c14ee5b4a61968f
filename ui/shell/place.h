#pragma once

#include "core/base/id.h"
#include "core/lifts/pattern.h"

#include <QMetaType>
#include <QString>

#include <optional>

namespace chalk::ui::shell {

/// Somewhere in the program that a page can be asked to show. What a page has no use for it leaves aside.
struct Place {
    QString page;                             ///< the key of a page in the registry: `roster`, `client`, `floor` …
    base::ClientId client = {};               ///< none where the place is not about one client
    QString tab = {};                         ///< a part of the page by the page's own key: `sessions`
    std::optional<lifts::Pattern> lift = {};
    base::SessionId session = {};
    QString text = {};                        ///< what to start with in the page's own field: an entry line, a filter

    bool operator==(const Place&) const = default;
};

/// A place as one line for the settings: `client?client=12&lift=squat`. The session and the text are of the moment and left out.
[[nodiscard]] QString lineOf(const Place& place);
/// Reads such a line; nothing where it makes no sense.
[[nodiscard]] std::optional<Place> placeOf(const QString& line);

}  // namespace chalk::ui::shell

Q_DECLARE_METATYPE(chalk::ui::shell::Place)
