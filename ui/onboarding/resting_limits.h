#pragma once

#include "core/clients/resting_reading.h"
#include "ui/onboarding/onboarding_services.h"

#include <QWidget>

class QLabel;
class QLineEdit;

namespace chalk::ui::onboarding {

class FieldColumn;

/// The studio's limits for readings at rest, with where they come from; they can be set here, and put back to those by default.
class RestingLimitsSection : public QWidget {
    Q_OBJECT

public:
    explicit RestingLimitsSection(const OnboardingServices& services, QWidget* parent = nullptr);

    void setLimits(const clients::RestingLimits& limits);
    /// False where none is open.
    bool closeEditor();

Q_SIGNALS:
    void saved();
    void refused(const QString& message);

private:
    void buildEditor();
    void openEditor();
    void accept();
    void keep(const clients::RestingLimits& limits);

    OnboardingServices m_services;
    clients::RestingLimits m_limits;
    QLabel* m_words;
    QWidget* m_change = nullptr;
    FieldColumn* m_editor;
    QLineEdit* m_heartRate = nullptr;
    QLineEdit* m_pressure = nullptr;
};

}  // namespace chalk::ui::onboarding
