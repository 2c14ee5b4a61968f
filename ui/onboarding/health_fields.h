#pragma once

#include "core/clients/health_intake.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QLabel;
class QLineEdit;
class QPlainTextEdit;

namespace chalk::ui::common {
class Look;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

class FieldColumn;
class QuestionRow;

/// The whole intake below each other: the questions, how active the client is, readings at rest, a note, and that it was read and agreed.
class HealthFields : public QWidget {
    Q_OBJECT

public:
    explicit HealthFields(const common::Look& look, QWidget* parent = nullptr);

    /// What is being typed in keeps its text. `name` and `today` are for the line of agreement.
    void setIntake(const clients::HealthIntake& intake, const QString& name, base::Date today);
    /// Takes away readings that made no sense, for somebody else.
    void clear();
    /// Readings that make no sense are left out and say so.
    [[nodiscard]] clients::HealthIntake intake() const;
    /// Says what is wrong with a reading, or which limit it is above.
    void review(const clients::RestingLimits& limits);
    /// The first question without an answer.
    void takeFocus();

Q_SIGNALS:
    void typed();
    void answered();
    /// The last answer was given with the keyboard.
    void endReached();
    /// This part has the focus now and should be seen.
    void seen(QWidget* part);

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void addActivity();
    [[nodiscard]] bool isActivityAsked() const;
    void move(std::size_t from, int by);
    void answerNext(std::size_t from, bool isYes);
    void answerActivity(bool isYes);
    [[nodiscard]] clients::RestingReading reading() const;

    std::vector<QuestionRow*> m_rows;
    FieldColumn* m_more;
    common::SegmentedChoice* m_active;
    common::SegmentedChoice* m_intended;
    QLineEdit* m_heartRate;
    QLineEdit* m_pressure;
    QPlainTextEdit* m_note;
    QCheckBox* m_agreed;
    std::optional<base::Date> m_agreedOn;
    base::Date m_today;
};

}  // namespace chalk::ui::onboarding
