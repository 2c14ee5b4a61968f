#include "ui/board/health_tab.h"

#include "ui/board/grid_rows.h"
#include "ui/board/health_words.h"
#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/common/lock_words.h"
#include "ui/common/look.h"
#include "ui/common/panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace chalk::ui::board {

namespace {

constexpr int kReadingWidth = 760;

void clearBody(QVBoxLayout& body)
{
    while (QLayoutItem* item = body.takeAt(0)) {
        if (QWidget* widget = item->widget()) {
            widget->hide();
            widget->deleteLater();
        }
        delete item;
    }
}

}  // namespace

HealthTab::HealthTab(const common::Look& look, QWidget* parent)
    : QWidget(parent), m_look(look), m_clearance(new common::Panel(look)), m_cautions(new common::Panel(look))
{
    m_clearance->setTitle(tr("Clearance"));
    m_cautions->setTitle(tr("Cautions"));
    auto* content = new QWidget;
    content->setMaximumWidth(kReadingWidth);
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(24, 12, 24, 16);
    column->setSpacing(16);
    column->addLayout(stepButtons());
    column->addWidget(m_clearance);
    column->addWidget(m_cautions);
    column->addStretch();
    for (common::Panel* panel : {m_clearance, m_cautions}) {
        panel->body()->setContentsMargins(16, 12, 16, 14);
        panel->body()->setSpacing(4);
    }
    auto* scroll = new QScrollArea(this);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setWidget(content);
    scroll->setAccessibleName(tr("Health"));
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(0, 0, 0, 0);
    page->addWidget(scroll);
    setFocusProxy(scroll);
}

QHBoxLayout* HealthTab::stepButtons()
{
    auto* row = new QHBoxLayout;
    row->setSpacing(8);
    const auto add = [this, row](const QString& text, const QString& step) {
        auto* button = new common::ActionButton(m_look, text, this);
        button->setButtonSize(common::ButtonSize::Small);
        connect(button, &QPushButton::clicked, this, [this, step] { Q_EMIT stepAsked(step); });
        row->addWidget(button);
    };
    add(tr("Health answers and cautions"), QStringLiteral("health"));
    add(tr("Profile and measures"), QStringLiteral("profile"));
    add(tr("Hours and kit"), QStringLiteral("time"));
    add(tr("Movement screen"), QStringLiteral("movement"));
    add(tr("Plan"), QStringLiteral("plan"));
    row->addStretch(1);
    return row;
}

void HealthTab::addText(common::Panel& panel, const QString& text, const char* role)
{
    QLabel* label = rowLabel(text, role, true, &panel);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    panel.body()->addWidget(label);
}

void HealthTab::setCase(const ClientCase& client)
{
    clearBody(*m_clearance->body());
    clearBody(*m_cautions->body());
    addText(*m_clearance, client.isBlocked() ? common::lockWordsOf(client.clearance, client.client, client.today).headline : clearanceTitleOf(client.clearance), "strong");
    if (client.isBlocked()) {
        addText(*m_clearance, clearanceTitleOf(client.clearance), "");
    }
    for (const QString& line : clearanceLinesOf(client.clearance)) {
        addText(*m_clearance, line, "");
    }
    if (client.cautions.empty()) {
        addText(*m_cautions, tr("Nothing to take care of is on file."), "muted");
    }
    for (const clients::Caution& caution : client.cautions) {
        if (&caution != &client.cautions.front()) {
            m_cautions->body()->addSpacing(10);
        }
        addText(*m_cautions, common::qstring(caution.bodyPart), "strong");
        addText(*m_cautions, common::qstring(caution.text), "");
        for (const QString& effect : cautionEffectsOf(caution, client)) {
            addText(*m_cautions, effect, "secondary");
        }
        if (const QString end = cautionEndOf(caution); !end.isEmpty()) {
            addText(*m_cautions, end, "muted");
        }
    }
}

}  // namespace chalk::ui::board
