#pragma once

#include "core/clients/health_intake.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QLabel;
class QLineEdit;

namespace chalk::ui::common {
class Look;
class SegmentedChoice;
}  // namespace chalk::ui::common

namespace chalk::ui::onboarding {

/// One question of the health intake: No or Yes, and for a yes what it means and in the client's words. Y and N answer, Up and Down go to the
/// questions beside it.
class QuestionRow : public QWidget {
    Q_OBJECT

public:
    QuestionRow(const common::Look& look, clients::HealthQuestion question, QWidget* parent = nullptr);

    [[nodiscard]] clients::HealthQuestion question() const { return m_question; }
    /// The detail keeps its text while it is typed in.
    void setAnswer(const clients::HealthAnswer& answer);
    [[nodiscard]] clients::HealthAnswer answer() const;
    void takeFocus();
    /// As the letters do: a no moves on, a yes goes into its marks.
    void answerByKey(bool isYes);

Q_SIGNALS:
    void typed();
    void answered();
    /// A letter was typed among the marks of a yes: it answers the question below.
    void nextAnswered(bool isYes);
    /// 1: the next question is wanted, -1: the one before.
    void moveAsked(int by);

protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] bool isInDetail() const;
    void showDetail();

    const common::Look& m_look;
    clients::HealthQuestion m_question;
    common::SegmentedChoice* m_choice;
    QWidget* m_detail;
    std::vector<QCheckBox*> m_marks;
    QLineEdit* m_words;
};

}  // namespace chalk::ui::onboarding
