#include "ui/check_in/evidence_pane.h"

#include "ui/check_in/evidence_chart.h"
#include "ui/check_in/stage_tag.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QStringList>

namespace chalk::ui::check_in {

namespace {

constexpr int kPaneEdge = 16;
constexpr int kLiftsMost = 230;

QFrame* paneRule(QWidget* parent, bool isUpright)
{
    auto* rule = new QFrame(parent);
    rule->setProperty("rule", true);
    if (isUpright) {
        rule->setFixedWidth(1);
    } else {
        rule->setFixedHeight(1);
    }
    return rule;
}

QString aboutText(const checkin::ClientEvidence& client)
{
    QStringList parts;
    if (client.age) {
        parts << QString::number(*client.age);
    }
    parts << common::qstring(client.goal) << common::qstring(client.coachName);
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" · "));
}

}  // namespace

EvidencePane::EvidencePane(const common::Look& look, common::Dialogs& dialogs, QWidget* parent) : Panel(look, parent), m_look(look)
{
    buildHead();
    for (EvidenceChart*& chart : m_charts) {
        chart = new EvidenceChart(look, dialogs, this);
    }
    buildCharts();
    connect(&look, &common::Look::changed, this, &EvidencePane::dress);
    dress();
}

void EvidencePane::buildHead()
{
    auto* head = new QHBoxLayout;
    head->setContentsMargins(kPaneEdge, 8, kPaneEdge, 8);
    head->setSpacing(12);
    m_name = new QLabel(this);
    m_name->setTextFormat(Qt::PlainText);
    head->addWidget(m_name);
    m_about = new QLabel(this);
    m_about->setProperty("role", QStringLiteral("secondary"));
    m_about->setTextFormat(Qt::PlainText);
    m_about->setMinimumWidth(0);
    m_about->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_about->installEventFilter(this);
    head->addWidget(m_about, 1);
    m_lifts = new QComboBox(this);
    m_lifts->setAccessibleName(tr("Lift on show"));
    m_lifts->setFocusPolicy(Qt::StrongFocus);
    m_lifts->setMaximumWidth(kLiftsMost);
    connect(m_lifts, &QComboBox::activated, this, &EvidencePane::liftChosen);
    head->addWidget(m_lifts);
    m_stage = new StageTag(m_look, this);
    head->addWidget(m_stage);
    body()->addLayout(head);
}

void EvidencePane::buildCharts()
{
    body()->addWidget(paneRule(this, false));
    body()->addWidget(m_charts[0], 5);
    addRow(m_charts[1], m_charts[2], 5);
    addRow(m_charts[3], m_charts[4], 4);
}

void EvidencePane::addRow(EvidenceChart* left, EvidenceChart* right, int stretch)
{
    body()->addWidget(paneRule(this, false));
    auto* row = new QHBoxLayout;
    row->setContentsMargins(1, 0, 1, 1);
    row->setSpacing(0);
    row->addWidget(left, 3);
    row->addWidget(paneRule(this, true));
    row->addWidget(right, 2);
    body()->addLayout(row, stretch);
}

void EvidencePane::dress()
{
    m_name->setFont(m_look.theme().font(18, QFont::Bold, true));
}

void EvidencePane::fitAbout()
{
    m_about->setText(m_about->fontMetrics().elidedText(m_aboutText, Qt::ElideRight, m_about->width()));
    m_about->setToolTip(m_aboutText);
    m_about->setAccessibleName(m_aboutText);
}

bool EvidencePane::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_about && event->type() == QEvent::Resize) {
        fitAbout();
    }
    return Panel::eventFilter(watched, event);
}

void EvidencePane::setRoom(bool isNarrow)
{
    m_isNarrow = isNarrow;
    m_stage->setVisible(!isNarrow && m_lifts->count() > 0);
}

void EvidencePane::setPage(const CheckInCase& page, std::size_t lift)
{
    const checkin::ClientEvidence& client = page.evidence;
    m_name->setText(common::qstring(client.name));
    m_aboutText = aboutText(client);
    fitAbout();
    m_lifts->clear();
    for (const checkin::LiftEvidence& one : client.lifts) {
        m_lifts->addItem(common::qstring(one.name));
    }
    m_lifts->setVisible(m_lifts->count() > 0);
    const bool hasLift = lift < client.lifts.size();
    const checkin::LiftEvidence shown = hasLift ? client.lifts[lift] : checkin::LiftEvidence();
    m_stage->setVisible(hasLift && !m_isNarrow);
    if (hasLift) {
        m_lifts->setCurrentIndex(static_cast<int>(lift));
        m_stage->setView({shown.stage, shown.cycle});
    }
    m_charts[0]->setScene(singleScene(client, shown));
    m_charts[1]->setScene(stagesScene(client, shown));
    m_charts[2]->setScene(readinessScene(client, shown));
    m_charts[3]->setScene(volumeScene(client, shown));
    m_charts[4]->setScene(sessionsScene(client, shown));
}

}  // namespace chalk::ui::check_in
