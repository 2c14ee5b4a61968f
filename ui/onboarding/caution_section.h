#pragma once

#include "core/clients/client.h"
#include "core/lifts/catalogue.h"
#include "ui/onboarding/onboarding_services.h"

#include <QWidget>

#include <vector>

class QCheckBox;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace chalk::ui::onboarding {

class FieldColumn;
struct OnboardingCase;

/// The cautions in force, those that the answers suggest, and an editor for one. Says which patterns are left without any exercise.
class CautionSection : public QWidget {
    Q_OBJECT

public:
    explicit CautionSection(const OnboardingServices& services, QWidget* parent = nullptr);

    void setCase(const OnboardingCase& onboarding);
    /// False where none is open.
    bool closeEditor();

Q_SIGNALS:
    void saved();
    void refused(const QString& message);

private:
    void buildEditor();
    void edit(const clients::Caution& caution);
    void accept();
    void write(const clients::Caution& caution);
    void end(const clients::Caution& caution);
    void showCautions(const std::vector<lifts::CautionTag>& suggested);
    void addRow(const QString& html, const QString& action, std::function<void()> does, const QString& other = {}, std::function<void()> alsoDoes = {});
    [[nodiscard]] QString patternsWithoutExercise() const;

    OnboardingServices m_services;
    QVBoxLayout* m_rows;
    QLabel* m_gaps;
    FieldColumn* m_editor;
    QLineEdit* m_part = nullptr;
    QLineEdit* m_text = nullptr;
    QLineEdit* m_short = nullptr;
    QLineEdit* m_until = nullptr;
    std::vector<QCheckBox*> m_tags;
    std::vector<clients::Caution> m_cautions;
    clients::Caution m_edited;
    clients::Caution m_seen;  ///< as it was when it was opened
    base::ClientId m_client;
    base::MassUnit m_unit = base::MassUnit::Kilogram;
    base::Date m_today;
};

}  // namespace chalk::ui::onboarding
