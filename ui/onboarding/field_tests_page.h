#pragma once

#include "core/clients/client.h"
#include "core/clients/profile.h"
#include "core/store/store_error.h"
#include "ui/onboarding/field_test_entry.h"
#include "ui/onboarding/stopwatch.h"

#include <QWidget>

#include <vector>

class QLabel;
class QScrollArea;
class QTimer;

namespace chalk::store {
class Database;
}

namespace chalk::ui::common {
class Dialogs;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

class FieldTestRow;
struct OnboardingCase;

/// The optional field tests: results of today with their norms, and those of earlier days, which stay as they are. Up, Down and Enter move
/// between the fields, T times the test with the focus.
class FieldTestsPage : public QWidget {
    Q_OBJECT

public:
    FieldTestsPage(store::Database& database, common::Dialogs& dialogs, const common::Look& look, QWidget* parent = nullptr);

    /// `canKeep`: whether health data may be kept and the client may exert themselves.
    void setCase(const OnboardingCase& onboarding, bool canKeep);
    /// The first test without a result.
    void takeFocus();
    /// Writes what waits; what makes no sense stays in its field. False where the studio refused it.
    bool keep();
    /// Starts the stopwatch for the test with the focus, or the first timed one; stops it and notes the time.
    void toggleStopwatch();
    /// False where it does not run.
    bool dropStopwatch();
    /// With another clock, for tests.
    void setNow(Stopwatch::Now now);

Q_SIGNALS:
    void saved();
    void refused(const QString& message);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    void watchStopwatch();
    void showDays();
    [[nodiscard]] FieldTestPerson personOn(base::Date day) const;
    [[nodiscard]] QStringList earlierLines(const screens::FieldTest& test) const;
    [[nodiscard]] std::optional<screens::FieldTest> keptOf(const screens::FieldTest& test) const;
    bool save();
    /// Writes the results of today; where somebody else wrote some of that day, the person decides.
    [[nodiscard]] store::Result<void> write(screens::FieldTestDay day);
    void move(QObject* from, int by);

    store::Database& m_database;
    common::Dialogs& m_dialogs;
    const common::Look& m_look;
    QScrollArea* m_scroll;
    QLabel* m_why;
    std::vector<FieldTestRow*> m_rows;
    QTimer* m_pause;
    Stopwatch* m_watch;
    FieldTestRow* m_timed = nullptr;
    clients::Client m_client;
    clients::NormSex m_sex = clients::NormSex::NotGiven;
    base::Date m_today;
    std::vector<screens::FieldTestDay> m_days;  ///< the oldest first
    bool m_canKeep = false;
};

}  // namespace chalk::ui::onboarding
