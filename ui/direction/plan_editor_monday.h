#pragma once

#include "core/base/date.h"

#include <QSpinBox>

namespace chalk::ui::direction {

/// The Monday that a plan starts on: the arrows go from week to week, and a day can be typed.
class MondayEntry : public QSpinBox {
    Q_OBJECT

public:
    explicit MondayEntry(QWidget* parent = nullptr);

    [[nodiscard]] base::Date monday() const;
    /// Without telling. Any day of the week stands for its Monday.
    void setMonday(base::Date day);

Q_SIGNALS:
    /// What was typed is no Monday: the one before it stays.
    void refused() const;

protected:
    [[nodiscard]] QString textFromValue(int value) const override;
    [[nodiscard]] int valueFromText(const QString& text) const override;
    QValidator::State validate(QString& text, int& place) const override;
    void fixup(QString& text) const override;
};

}  // namespace chalk::ui::direction
