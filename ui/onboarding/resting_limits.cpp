#include "ui/onboarding/resting_limits.h"

#include "core/store/studio_settings.h"
#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/common/settling.h"
#include "ui/onboarding/field_column.h"
#include "ui/onboarding/measure_words.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace chalk::ui::onboarding {

RestingLimitsSection::RestingLimitsSection(const OnboardingServices& services, QWidget* parent)
    : QWidget(parent), m_services(services), m_words(new QLabel(this)), m_editor(new FieldColumn(services.look, this))
{
    m_words->setProperty("role", QStringLiteral("secondary"));
    m_words->setWordWrap(true);
    auto* change = new common::ActionButton(services.look, tr("Change the limits"), this);
    change->setButtonSize(common::ButtonSize::Small);
    change->setAccessibleName(tr("Change the limits at rest"));
    connect(change, &QPushButton::clicked, this, &RestingLimitsSection::openEditor);
    m_change = change;
    auto* row = new QHBoxLayout;
    row->setContentsMargins(16, 4, 16, 8);
    row->setSpacing(10);
    row->addWidget(m_words, 1);
    row->addWidget(change, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(row);
    column->addWidget(m_editor);
    buildEditor();
}

void RestingLimitsSection::buildEditor()
{
    const auto field = [this](const QString& name) {
        auto* line = new QLineEdit(m_editor);
        m_editor->addField(name, line);
        connect(line, &QLineEdit::returnPressed, this, &RestingLimitsSection::accept);
        return line;
    };
    m_heartRate = field(tr("Heart rate over"));
    m_pressure = field(tr("Blood pressure over"));
    auto* foot = new QWidget(m_editor);
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(0, 4, 0, 0);
    const auto add = [&](const QString& text, auto&& act) {
        auto* button = new common::ActionButton(m_services.look, text, foot);
        connect(button, &QPushButton::clicked, this, act);
        row->addWidget(button);
        return button;
    };
    add(tr("Keep"), [this] { accept(); })->setKind(common::ButtonKind::Primary);
    add(tr("Back to the default"), [this] { keep(clients::RestingLimits()); });
    add(tr("Leave"), [this] { closeEditor(); })->setKeyText(tr("Esc"));
    row->addStretch(1);
    m_editor->addLine(foot);
    m_editor->hide();
}

void RestingLimitsSection::setLimits(const clients::RestingLimits& limits)
{
    m_limits = limits;
    const QString origin = limits == clients::RestingLimits() ? tr("the default, the exclusion limits of the NHANES fitness manual")
                                                              : tr("set by this studio; the default is 100 and 180/100");
    m_words->setText(tr("Readings at rest warn above %1 a minute and %2/%3 mmHg: %4. Sources differ; a physician’s word goes before both.")
                         .arg(limits.heartRate)
                         .arg(limits.systolic)
                         .arg(limits.diastolic)
                         .arg(origin));
}

void RestingLimitsSection::openEditor()
{
    m_heartRate->setText(QString::number(m_limits.heartRate));
    m_pressure->setText(QStringLiteral("%1/%2").arg(m_limits.systolic).arg(m_limits.diastolic));
    m_editor->setFault(m_heartRate, {});
    m_editor->setFault(m_pressure, {});
    m_editor->show();
    m_heartRate->setFocus(Qt::OtherFocusReason);
    m_heartRate->selectAll();
}

bool RestingLimitsSection::closeEditor()
{
    const bool wasOpen = !m_editor->isHidden();
    m_editor->hide();
    if (wasOpen) {
        m_change->setFocus(Qt::OtherFocusReason);
    }
    return wasOpen;
}

void RestingLimitsSection::accept()
{
    const TypedPressure pressure = pressureOf(m_pressure->text()).value_or(TypedPressure());
    const clients::RestingLimits limits{m_heartRate->text().trimmed().toInt(), pressure.systolic, pressure.diastolic};
    const auto fault = clients::faultyLimitOf(limits);
    const bool isHeartRate = fault && QLatin1String(*fault) == QLatin1String("heart_rate");
    m_editor->setFault(m_heartRate, isHeartRate ? tr("40 to 200 a minute.") : QString());
    m_editor->setFault(m_pressure, fault && !isHeartRate ? tr("Like 180/100: 90 to 250 over 50 to 150.") : QString());
    if (!fault) {
        keep(limits);
    } else {
        (isHeartRate ? m_heartRate : m_pressure)->setFocus(Qt::OtherFocusReason);
    }
}

void RestingLimitsSection::keep(const clients::RestingLimits& limits)
{
    const auto written = common::settled(m_services.dialogs, m_services.database, {}, [&](const common::Settling& settling) {
        return store::StudioSettings(m_services.database).setRestingLimits(limits, settling.seen ? std::nullopt : std::optional(m_limits));
    });
    if (!written && written.error().kind != store::StoreError::Kind::Conflict) {
        Q_EMIT refused(written.error().message);
        return;
    }
    closeEditor();
    Q_EMIT saved();
}

}  // namespace chalk::ui::onboarding
