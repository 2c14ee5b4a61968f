#include "ui/onboarding/outcome_panel.h"

#include "ui/common/day_entry.h"
#include "ui/common/formats.h"
#include "ui/common/health_words.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"
#include "ui/common/scroll_column.h"
#include "ui/common/wrapped_text.h"

#include <QLabel>
#include <QPainter>
#include <QScrollArea>
#include <QVBoxLayout>

namespace chalk::ui::onboarding {

namespace {

// Pixels at a text size of 100 %.
constexpr double kLeastWidth = 304;
constexpr double kEdge = 16;
constexpr double kIcon = 24;
constexpr double kIconGap = 10;
constexpr double kHeadLine = 22;
constexpr double kBar = 8;
constexpr double kBarGap = 12;
constexpr double kNameHeight = 18;

/// What a letter on file says, instead of what the answers alone would.
QString letterHtml(const clients::Clearance& clearance, base::Date today)
{
    if (clearance.state != clients::ClearanceState::Granted) {
        return {};
    }
    const QString until = clearance.validUntil ? OutcomePanel::tr(", valid until %1").arg(common::entryOfDay(*clearance.validUntil)) : QString();
    QString text = OutcomePanel::tr("Letter of %1 on file, %2%3.")
                       .arg(common::qstring(clearance.grantedBy), clearance.grantedOn ? common::entryOfDay(*clearance.grantedOn) : QString(), until);
    if (!clearance.limits.empty()) {
        text += QLatin1Char(' ') + OutcomePanel::tr("Limits: %1").arg(common::qstring(clearance.limits));
    }
    if (clients::isBlocked(clearance, today)) {
        text += QLatin1Char(' ') + OutcomePanel::tr("It is past its date: a new one is needed.");
    }
    return QStringLiteral("<b>%1</b>").arg(text.toHtmlEscaped());
}

}  // namespace

LevelScale::LevelScale(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&look, &common::Look::changed, this, &QWidget::updateGeometry);
}

void LevelScale::setOutcome(const clients::HealthOutcome& outcome, bool isCleared)
{
    const bool isByLetter = isCleared && outcome.level >= clients::HealthLevel::AskDoctor;
    m_headline = isByLetter ? tr("Cleared by a letter on file") : common::outcomeHeadline(outcome);
    m_level = isByLetter ? clients::HealthLevel::Limits : outcome.level;
    m_isCareNeeded = outcome.isCareNeededNow && !isByLetter;
    m_isOpen = !outcome.isComplete() && outcome.level < clients::HealthLevel::AskDoctor;
    setAccessibleName(m_headline);
    updateGeometry();
    update();
}

QString LevelScale::iconName() const
{
    if (m_isCareNeeded) {
        return QStringLiteral("warning");
    }
    if (m_isOpen) {
        return QStringLiteral("info");
    }
    return m_level >= clients::HealthLevel::AskDoctor ? QStringLiteral("clearance") : QStringLiteral("check");
}

int LevelScale::heightForWidth(int width) const
{
    const common::Theme& theme = m_look.theme();
    const double room = width - theme.scaled(2 * kEdge + kIcon + kIconGap);
    const double head = common::wrappedTextHeight(m_headline, theme.font(17, QFont::DemiBold), room, theme.scaled(kHeadLine));
    return qRound(head + theme.scaled(2 * kEdge + kBarGap + kBar + 6 + kNameHeight));
}

QSize LevelScale::sizeHint() const
{
    const int wide = qRound(m_look.theme().scaled(kLeastWidth));
    return {wide, heightForWidth(width() > 0 ? width() : wide)};
}

void LevelScale::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    common::SignalColours colours = theme.signal(m_isOpen ? common::Signal::Muted : common::healthLevelSignal(m_level));
    if (m_isCareNeeded) {
        colours = {theme.surface, theme.pain, theme.surface};
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), colours.fill);
    painter.fillRect(QRect(0, height() - 1, width(), 1), colours.line);
    const double edge = theme.scaled(kEdge);
    const double icon = theme.scaled(kIcon);
    common::paintIcon(painter, QRectF(edge, edge - 1, icon, icon), iconName(), colours.ink, theme);
    const double left = edge + icon + theme.scaled(kIconGap);
    const QFont font = theme.font(17, QFont::DemiBold);
    painter.setPen(colours.ink);
    common::paintWrappedText(painter, {left, edge}, m_headline, font, width() - edge - left, theme.scaled(kHeadLine));
    const double top = edge + common::wrappedTextHeight(m_headline, font, width() - edge - left, theme.scaled(kHeadLine)) + theme.scaled(kBarGap);
    const double gap = 3;
    const double wide = (width() - 2 * edge - 3 * gap) / 4;
    for (int i = 0; i < 4; ++i) {
        const bool isReached = !m_isOpen && i == static_cast<int>(m_level);
        const QRectF bar(edge + i * (wide + gap), top, wide, theme.scaled(kBar));
        painter.setPen(QPen(colours.line, 1));
        painter.setBrush(isReached ? colours.ink : m_isCareNeeded ? colours.fill : theme.surface);
        painter.drawRoundedRect(bar.adjusted(0.5, 0.5, -0.5, -0.5), bar.height() / 2, bar.height() / 2);
        painter.setPen(isReached || m_isCareNeeded ? colours.ink : theme.ink2);
        painter.setFont(theme.font(12, isReached ? QFont::Bold : QFont::Normal));
        painter.drawText(QRectF(bar.left() - gap, bar.bottom() + theme.scaled(6), wide + 2 * gap, theme.scaled(kNameHeight)), Qt::AlignHCenter | Qt::AlignVCenter,
                         common::healthLevelName(static_cast<clients::HealthLevel>(i)));
    }
}

OutcomePanel::OutcomePanel(const common::Look& look, QWidget* parent)
    : common::Panel(look, parent), m_look(look), m_scale(new LevelScale(look, this)), m_foot(new QVBoxLayout)
{
    body()->addWidget(m_scale);
    auto* contents = new QWidget(this);
    auto* column = new QVBoxLayout(contents);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_why = addPart(*column, tr("Why"));
    m_say = addPart(*column, tr("What to say"));
    m_rest = addPart(*column, QString());
    column->addStretch(1);
    auto* scroll = new QScrollArea(this);
    common::holdColumn(*scroll, contents);
    body()->addWidget(scroll, 1);
    m_foot->setContentsMargins(16, 12, 16, 14);
    m_foot->setSpacing(8);
    body()->addLayout(m_foot);
}

QLabel* OutcomePanel::addPart(QVBoxLayout& column, const QString& caption)
{
    if (!caption.isEmpty()) {
        auto* head = new QLabel(caption, this);
        head->setProperty("role", QStringLiteral("caption"));
        head->setContentsMargins(16, 12, 16, 2);
        column.addWidget(head);
    }
    auto* text = new QLabel(this);
    text->setWordWrap(true);
    text->setTextFormat(Qt::RichText);
    text->setContentsMargins(16, caption.isEmpty() ? 12 : 0, 16, 8);
    column.addWidget(text);
    return text;
}

void OutcomePanel::setOutcome(const clients::HealthOutcome& outcome, const clients::Clearance& clearance, base::Date today)
{
    const bool isBlocked = clients::isBlocked(clearance, today);
    const bool isCleared = clearance.state == clients::ClearanceState::Granted && !isBlocked;
    m_scale->setOutcome(outcome, isCleared);
    const QString letter = letterHtml(clearance, today);
    const QString stop = outcome.isCareNeededNow && !isCleared ? QStringLiteral("<b style='color:%1'>%2</b>").arg(m_look.theme().pain.name(), common::emergencyText().toHtmlEscaped()) : QString();
    QStringList why{stop, letter, common::outcomeReason(outcome).toHtmlEscaped(), common::openAnswersText(outcome).toHtmlEscaped()};
    why.removeAll(QString());
    m_why->setText(common::proseHtml(why.join(QStringLiteral("<br>"))));
    m_say->setText(common::proseHtml(QStringLiteral("<i>“%1”</i>").arg((isCleared ? tr("Your doctor has answered. We keep to what the letter says; tell me when something changes.") : common::wordsToSay(outcome)).toHtmlEscaped())));
    QStringList rest;
    if (const QString waits = isBlocked ? common::whatWaitsText(outcome) : QString(); !waits.isEmpty()) {
        rest.append(waits.toHtmlEscaped());
    }
    rest.append((isBlocked ? common::whatGoesOnText(outcome) : tr("Everything can go on.")).toHtmlEscaped());
    if (stop.isEmpty()) {
        rest.append(QStringLiteral("<b style='color:%1'>%2</b>").arg(m_look.theme().pain.name(), common::emergencyText().toHtmlEscaped()));
    }
    rest.append(QStringLiteral("<span style='color:%1'>%2 %3</span>")
                    .arg(m_look.theme().ink3.name(), common::noDiagnosisText().toHtmlEscaped(), common::screeningSourceText().toHtmlEscaped()));
    QString paragraphs;
    for (const QString& line : rest) {
        paragraphs += QStringLiteral("<p style='margin-top:0; margin-bottom:8px'>%1</p>").arg(line);
    }
    m_rest->setText(common::proseHtml(paragraphs));
}

}  // namespace chalk::ui::onboarding
