#include "ui/onboarding/measures_panel.h"

#include "core/exchange/profile_json.h"
#include "core/store/client_forms.h"
#include "core/store/client_writer.h"
#include "core/store/studio_settings.h"
#include "ui/common/action_button.h"
#include "ui/common/day_entry.h"
#include "ui/common/editor_foot.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"
#include "ui/common/scroll_column.h"
#include "ui/common/settling.h"
#include "ui/onboarding/field_column.h"
#include "ui/onboarding/measure_words.h"
#include "ui/onboarding/onboarding_case.h"

#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace chalk::ui::onboarding {

namespace {

constexpr double kMeasureNameWidth = 108;


QLabel* proseLabel(QWidget* parent)
{
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setTextFormat(Qt::RichText);
    label->setContentsMargins(16, 12, 16, 4);
    return label;
}

}  // namespace

MeasuresPanel::MeasuresPanel(const OnboardingServices& services, QWidget* parent)
    : common::Panel(services.look, parent),
      m_services(services),
      m_add(new common::ActionButton(services.look, tr("Add"), this)),
      m_lines(proseLabel(this)),
      m_days(proseLabel(this)),
      m_editor(new FieldColumn(services.look, this, kMeasureNameWidth))
{
    setTitle(tr("Measures"), tr("optional"));
    m_add->setButtonSize(common::ButtonSize::Small);
    m_add->setIconName(QStringLiteral("plus"));
    addHeadTool(m_add);
    connect(m_add, &QPushButton::clicked, this, &MeasuresPanel::openEditor);
    auto* contents = new QWidget(this);
    auto* column = new QVBoxLayout(contents);
    column->setContentsMargins(0, 0, 0, 8);
    column->setSpacing(0);
    column->addWidget(m_editor);
    column->addWidget(m_lines);
    column->addWidget(m_days);
    column->addStretch(1);
    auto* scroll = new QScrollArea(this);
    common::holdColumn(*scroll, contents);
    body()->addWidget(scroll);
    m_days->setProperty("role", QStringLiteral("secondary"));
    buildEditor();
}

void MeasuresPanel::buildEditor()
{
    const auto field = [this](const QString& name, const QString& hint) {
        auto* line = new QLineEdit(m_editor);
        line->setPlaceholderText(hint);
        m_editor->addField(name, line);
        connect(line, &QLineEdit::returnPressed, this, &MeasuresPanel::accept);
        return line;
    };
    m_day = field(tr("Day"), {});
    m_mass = field(tr("Body mass"), {});
    m_height = field(tr("Height"), tr("cm"));
    m_waist = field(tr("Waist"), tr("cm"));
    m_folds = field(tr("Skinfolds"), tr("three, mm"));
    m_heartRate = field(tr("Heart rate"), tr("a minute"));
    m_pressure = field(tr("Blood pressure"), tr("128/82"));
    auto* foot = new common::EditorFoot(m_services.look, tr("Keep"), m_editor);
    connect(foot, &common::EditorFoot::keepAsked, this, &MeasuresPanel::accept);
    connect(foot, &common::EditorFoot::leaveAsked, this, &MeasuresPanel::closeEditor);
    m_editor->addLine(foot);
    m_editor->hide();
}

void MeasuresPanel::setCase(const OnboardingCase& onboarding)
{
    if (onboarding.client.id != m_client.id) {
        m_editor->hide();
    }
    m_client = onboarding.client;
    m_today = onboarding.today;
    m_add->setEnabled(onboarding.canKeepHealth());
    m_measures = m_client.id.isNone() ? std::vector<clients::BodyMeasures>()
                                      : store::ClientForms(m_services.database).measures(m_client.id).value_or(std::vector<clients::BodyMeasures>());
    showLines(onboarding);
}

void MeasuresPanel::showLines(const OnboardingCase& onboarding)
{
    const auto limits = store::StudioSettings(m_services.database).restingLimits().value_or(clients::RestingLimits());
    const common::Theme& theme = m_services.look.theme();
    QString rows;
    for (const MeasureLine& line : measureLinesOf(m_measures, onboarding.client, onboarding.profile, limits)) {
        rows += QStringLiteral("<tr><td>%1</td><td align='right'><b>%2</b><br><span style='color:%3'>%4</span></td></tr>")
                    .arg(line.name.toHtmlEscaped(), line.value.toHtmlEscaped(), (line.isWarning ? theme.pain : theme.ink3).name(), line.note.toHtmlEscaped());
    }
    if (!onboarding.canKeepHealth()) {
        m_lines->setText(common::proseHtml(tr("Nothing is measured before the client agrees that health data is kept.")));
    } else if (rows.isEmpty()) {
        m_lines->setText(common::proseHtml(tr("Nothing measured yet. Body mass, height, waist, three skinfolds, heart rate and blood pressure at rest can be kept by day.")));
    } else {
        m_lines->setText(QStringLiteral("<table width='100%' cellspacing='0' cellpadding='4'>%1</table>").arg(rows));
    }
    QStringList days;
    std::for_each(m_measures.rbegin(), m_measures.rend(), [&](const clients::BodyMeasures& day) { days.append(dayLineOf(day, m_client.unit).toHtmlEscaped()); });
    m_days->setText(common::proseHtml(days.join(QStringLiteral("<br>"))));
    m_days->setVisible(!days.isEmpty());
}

void MeasuresPanel::openEditor()
{
    m_seen = m_measures;
    m_day->setText(common::entryOfDay(m_today));
    m_mass->setPlaceholderText(common::unitText(m_client.unit));
    for (QLineEdit* line : {m_mass, m_height, m_waist, m_folds, m_heartRate, m_pressure}) {
        line->clear();
        m_editor->setFault(line, {});
    }
    m_editor->show();
    m_mass->setFocus(Qt::OtherFocusReason);
}

bool MeasuresPanel::closeEditor()
{
    const bool wasOpen = !m_editor->isHidden();
    m_editor->hide();
    if (wasOpen) {
        m_add->setFocus(Qt::OtherFocusReason);
    }
    return wasOpen;
}

std::optional<clients::BodyMeasures> MeasuresPanel::seenOn(base::Date date) const
{
    const auto at = std::find_if(m_seen.begin(), m_seen.end(), [date](const clients::BodyMeasures& one) { return one.date == date; });
    return at == m_seen.end() ? std::nullopt : std::optional(*at);
}

store::Result<void> MeasuresPanel::write(const clients::BodyMeasures& typed)
{
    clients::BodyMeasures day = withThatDay(typed);
    const auto seen = seenOn(typed.date);
    return common::settled(m_services.dialogs, m_services.database, seen ? exchange::toJson(*seen) : QJsonObject(), [&](const common::Settling& settling) {
        day = settling.merged ? exchange::readBodyMeasures(*settling.merged, {}).value_or(day) : day;
        return store::ClientWriter(m_services.database).saveMeasures(m_client.id, day, m_today, settling.seen);
    });
}

clients::BodyMeasures MeasuresPanel::withThatDay(const clients::BodyMeasures& typed) const
{
    clients::BodyMeasures day = typed;
    const auto earlier = seenOn(typed.date);
    if (!earlier) {
        return day;
    }
    day.mass = typed.mass ? typed.mass : earlier->mass;
    day.height = typed.height ? typed.height : earlier->height;
    day.waist = typed.waist ? typed.waist : earlier->waist;
    day.skinfolds = typed.skinfolds ? typed.skinfolds : earlier->skinfolds;
    day.heartRate = typed.heartRate ? typed.heartRate : earlier->heartRate;
    day.systolic = typed.systolic ? typed.systolic : earlier->systolic;
    day.diastolic = typed.diastolic ? typed.diastolic : earlier->diastolic;
    return day;
}

void MeasuresPanel::accept()
{
    const auto measures = measuresOf({m_day->text(), m_mass->text().trimmed(), m_height->text().trimmed(), m_waist->text().trimmed(), m_folds->text().trimmed(),
                                      m_heartRate->text().trimmed(), m_pressure->text().trimmed()},
                                     m_client.unit, m_today);
    const std::array<std::pair<QLatin1String, QLineEdit*>, 7> fields{{{QLatin1String("date"), m_day},
                                                                      {QLatin1String("mass"), m_mass},
                                                                      {QLatin1String("height"), m_height},
                                                                      {QLatin1String("waist"), m_waist},
                                                                      {QLatin1String("skinfolds"), m_folds},
                                                                      {QLatin1String("heart_rate"), m_heartRate},
                                                                      {QLatin1String("pressure"), m_pressure}}};
    for (const auto& [key, line] : fields) {
        const bool isFaulty = !measures && measures.error().field == key;
        m_editor->setFault(line, isFaulty ? measures.error().reason : QString());
        if (isFaulty) {
            line->setFocus(Qt::OtherFocusReason);
        }
    }
    if (!measures) {
        return;
    }
    const auto written = write(*measures);
    if (!written && written.error().kind != store::StoreError::Kind::Conflict) {
        Q_EMIT refused(written.error().message);
        return;
    }
    closeEditor();
    Q_EMIT saved();
}

}  // namespace chalk::ui::onboarding
