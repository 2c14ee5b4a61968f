#include "ui/settings/appearance_section.h"

#include "ui/common/action_button.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"
#include "ui/common/segmented_choice.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace chalk::ui::settings {

namespace {

constexpr int kTextStepPercent = 10;
constexpr double kNameColumn = 148;  ///< pixels at a text size of 100 %

/// A row of a panel: what is set, and what it is set with.
QHBoxLayout* addSettingRow(common::Panel& panel, const QString& name, const common::Look& look)
{
    auto* row = new QHBoxLayout;
    row->setContentsMargins(18, 6, 18, 14);
    row->setSpacing(10);
    auto* label = new QLabel(name, &panel);
    label->setProperty("role", QStringLiteral("secondary"));
    label->setMinimumWidth(qRound(look.theme().scaled(kNameColumn)));
    row->addWidget(label);
    panel.body()->addLayout(row);
    return row;
}

}  // namespace

AppearanceSection::AppearanceSection(common::Look& look, QWidget* parent) : SettingsSection(parent), m_look(look)
{
    addTone();
    addTextSize();
    connect(&look, &common::Look::changed, this, &AppearanceSection::refresh);
    AppearanceSection::refresh();
}

void AppearanceSection::addTone()
{
    auto* panel = new common::Panel(m_look, this);
    panel->setTitle(tr("Theme"), tr("on this machine"));
    QHBoxLayout* row = addSettingRow(*panel, tr("Ground"), m_look);
    m_tone = new common::SegmentedChoice(tr("Theme"), {{tr("Paper")}, {tr("Slate")}}, panel);
    row->addWidget(m_tone);
    row->addStretch(1);
    column()->addWidget(panel);
    connect(m_tone, &common::SegmentedChoice::choiceMade, this,
            [this](int choice) { m_look.setTone(choice == 0 ? common::Tone::Paper : common::Tone::Slate); });
}

void AppearanceSection::addTextSize()
{
    auto* panel = new common::Panel(m_look, this);
    panel->setTitle(tr("Text"), tr("90 to 150 per cent"));
    QHBoxLayout* row = addSettingRow(*panel, tr("Size"), m_look);
    m_smaller = new common::ActionButton(m_look, tr("Smaller"), panel);
    m_smaller->setKeyText(tr("Ctrl −"));
    m_percent = new QLabel(panel);
    m_percent->setProperty("role", QStringLiteral("strong"));
    m_percent->setAlignment(Qt::AlignCenter);
    m_percent->setMinimumWidth(qRound(m_look.theme().scaled(56)));
    m_larger = new common::ActionButton(m_look, tr("Larger"), panel);
    m_larger->setKeyText(tr("Ctrl +"));
    row->addWidget(m_smaller);
    row->addWidget(m_percent);
    row->addWidget(m_larger);
    row->addStretch(1);
    column()->addWidget(panel);
    connect(m_smaller, &QPushButton::clicked, this, [this] { changeTextBy(-kTextStepPercent); });
    connect(m_larger, &QPushButton::clicked, this, [this] { changeTextBy(kTextStepPercent); });
}

void AppearanceSection::changeTextBy(int percent)
{
    m_look.setTextPercent(m_look.theme().textPercent + percent);
}

void AppearanceSection::refresh()
{
    const common::Theme& theme = m_look.theme();
    m_tone->setChosen(theme.tone == common::Tone::Slate ? 1 : 0);
    m_percent->setText(tr("%1 %").arg(theme.textPercent));
    m_percent->setAccessibleName(tr("Text size %1 per cent").arg(theme.textPercent));
    m_smaller->setEnabled(theme.textPercent > common::Look::kLeastTextPercent);
    m_larger->setEnabled(theme.textPercent < common::Look::kMostTextPercent);
}

}  // namespace chalk::ui::settings
