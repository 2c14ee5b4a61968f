#pragma once

#include "ui/week/studio_hours.h"

#include <QDialog>

#include <functional>
#include <vector>

class QLabel;
class QListWidget;
class QStackedWidget;

namespace chalk::ui::common {
class HoursGrid;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::week {

/// What weeks are planned from: closures, the studio's hours, each coach's hours and places, how many stations there are. Each change is kept at
/// once.
class HoursDialog : public QDialog {
    Q_OBJECT

public:
    /// The database and `dialogs` outlive the dialog.
    HoursDialog(const common::Look& look, store::Database& database, common::Dialogs& dialogs, base::Date today, QWidget* parent = nullptr);

Q_SIGNALS:
    void changed();

private:
    void addPart(const QString& name, QWidget* part);
    [[nodiscard]] common::HoursGrid* hoursGrid(const QString& name, const clients::WeekHours& hours);
    [[nodiscard]] QWidget* studioPart();
    [[nodiscard]] QWidget* coachPart(const clients::Coach& coach);
    [[nodiscard]] QWidget* stationsPart();
    /// Shows what is set now, which may be what somebody else set, and why something was refused.
    void told(bool isDone);

    const common::Look& m_look;
    StudioHours m_hours;
    QListWidget* m_names;
    QStackedWidget* m_parts;
    QLabel* m_told;
    std::vector<std::function<void()>> m_shows;  ///< each puts what is set now into a field
};

}  // namespace chalk::ui::week
