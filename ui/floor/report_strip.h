#pragma once

#ifndef Q_MOC_RUN  // moc stumbles over the standard library behind it
#include "core/base/id.h"
#include "core/sessions/session_report.h"
#endif

#include <QWidget>

#include <vector>

class QLabel;

namespace chalk::ui::common {
class ActionButton;
class Look;
}  // namespace chalk::ui::common

namespace chalk::ui::floor {

class ReportField;

/// What is said once of a session, in one line: sleep, soreness, stress, effort, minutes and a note. All of it may be left out. Where there is
/// little room it is one button that says what was said, and opens while it is worked in.
class ReportStrip : public QWidget {
    Q_OBJECT

public:
    /// `look` outlives the strip.
    explicit ReportStrip(const common::Look& look, QWidget* parent = nullptr);
    ~ReportStrip() override;

    /// Shows the report of a session. What is typed of another one is said first. Without `isHealthKept` sleep, soreness and stress are not asked.
    void setReport(base::SessionId session, const sessions::SessionReport& report, bool isHealthKept);
    /// Where the page is low, it is one button however wide it is.
    void setTight(bool isTight);
    /// Opens it and puts the focus into its first field.
    void takeFocus();
    [[nodiscard]] bool isFolded() const;
    /// The words below or behind the fields: what cannot be; empty where all can.
    [[nodiscard]] QString faultText() const;

Q_SIGNALS:
    /// Something different was said of the session.
    void told(base::SessionId session, const chalk::sessions::SessionReport& report);
    /// Work goes on where it was before.
    void left();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    /// A label and its field.
    struct Cell {
        QWidget* box;
        QLabel* caption;
        ReportField* field;
    };

    ReportField* addField(int kind, const QString& label, const QString& spoken);
    [[nodiscard]] sessions::SessionReport typed() const;
    [[nodiscard]] bool hasField(const QWidget* widget) const;
    void load();
    void say();
    void fold();
    void stretchNote();
    void showSummary();
    /// What one line takes, with the narrowest field for the note.
    [[nodiscard]] int lineWidth() const;

    const common::Look& m_look;
    base::SessionId m_session;
    sessions::SessionReport m_report;
    bool m_isHealthKept = false;
    bool m_isTight = false;
    bool m_isOpen = false;  ///< worked in, though there is little room
    common::ActionButton* m_button;
    QWidget* m_line;
    QLabel* m_summary;  ///< what was said, behind the button
    std::vector<Cell> m_cells;
    ReportField* m_sleep;
    ReportField* m_soreness;
    ReportField* m_stress;
    ReportField* m_effort;
    ReportField* m_minutes;
    ReportField* m_note;
    QLabel* m_fault;
};

}  // namespace chalk::ui::floor
