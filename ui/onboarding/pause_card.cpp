#include "ui/onboarding/pause_card.h"

#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/segmented_choice.h"
#include "ui/onboarding/marked_choice.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QRegularExpression>
#include <QVBoxLayout>

namespace chalk::ui::onboarding {

namespace {

constexpr int kSecondsWidth = 46;

QString pauseText(int heldMs)
{
    return QString::number(heldMs / 1000.0, 'f', 1);
}

}  // namespace

std::optional<int> pauseMsOf(const QString& text)
{
    static const QRegularExpression number(QStringLiteral("^(\\d{1,3})(?:[.,](\\d))?\\s*s?$"));
    const auto match = number.match(text.trimmed());
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    const int ms = match.captured(1).toInt() * 1000 + match.captured(2).toInt() * 100;
    return ms <= screens::kMostPauseMs ? std::optional(ms) : std::nullopt;
}

PauseCard::PauseCard(const common::Look& look, const screens::DepthName& name, screens::PauseDepth depth, QWidget* parent)
    : QFrame(parent),
      m_look(look),
      m_depth(depth),
      m_choice(new common::SegmentedChoice(tr("Pause, %1").arg(common::qstring(name.name)), {{tr("Held"), common::Signal::Ok}, {tr("Shaky"), common::Signal::Warn}, {tr("No")}},
                                           this)),
      m_keys(new MarkedChoice(*m_choice)),
      m_seconds(new QLineEdit(this)),
      m_running(new QLabel(this))
{
    auto* title = new QLabel(common::qstring(name.name), this);
    title->setProperty("role", QStringLiteral("strong"));
    auto* hint = new QLabel(common::qstring(name.hint), this);
    hint->setProperty("role", QStringLiteral("muted"));
    hint->setWordWrap(true);
    hint->setMinimumWidth(1);  // wraps at any width
    m_choice->setCompact();
    m_seconds->setPlaceholderText(tr("s"));
    m_seconds->setAccessibleName(tr("Seconds held, %1").arg(common::qstring(name.name)));
    m_seconds->setFixedWidth(kSecondsWidth);
    m_running->setProperty("role", QStringLiteral("figure"));
    m_running->hide();
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    words->addWidget(title);
    words->addWidget(hint);
    auto* head = new QHBoxLayout;
    head->setSpacing(4);
    head->addSpacing(qRound(look.theme().scaled(26)));
    head->addLayout(words, 1);
    head->addWidget(m_seconds);
    head->addWidget(m_running);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 8, 8, 10);
    column->setSpacing(6);
    column->addLayout(head);
    column->addWidget(m_choice, 0, Qt::AlignHCenter);
    connect(m_choice, &common::SegmentedChoice::choiceMade, this, &PauseCard::changed);
    connect(m_seconds, &QLineEdit::editingFinished, this, &PauseCard::changed);
}

void PauseCard::setTry(const screens::PauseTry& pause)
{
    m_choice->setChosen(static_cast<int>(pause.mark) - 1);
    if (!m_seconds->hasFocus()) {
        m_seconds->setText(pause.heldMs ? pauseText(*pause.heldMs) : QString());
    }
}

screens::PauseTry PauseCard::pause() const
{
    return {static_cast<screens::PauseMark>(m_choice->chosen() + 1), pauseMsOf(m_seconds->text())};
}

void PauseCard::showRunning(std::optional<int> elapsedMs)
{
    m_running->setVisible(elapsedMs.has_value());
    m_seconds->setVisible(!elapsedMs);
    if (elapsedMs) {
        m_running->setText(pauseText(*elapsedMs));
    }
    update();
}

bool PauseCard::hasFocusInside() const
{
    return isAncestorOf(focusWidget()) || m_seconds->hasFocus();
}

void PauseCard::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_running->isHidden() ? theme.line2 : theme.mark, m_running->isHidden() ? 1 : 2));
    painter.setBrush(theme.raised);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 8, 8);
    // How deep it is: a bar from the top down to the pause, with the pause as its end.
    const double left = theme.scaled(12);
    const double top = theme.scaled(12);
    const double full = theme.scaled(34);
    const double depth = full * (static_cast<int>(m_depth) + 1) / 3;
    painter.setPen(QPen(theme.line2, 2));
    painter.drawLine(QPointF(left + 6, top), QPointF(left + 6, top + full));
    painter.setPen(QPen(theme.ink2, 3));
    painter.drawLine(QPointF(left + 6, top), QPointF(left + 6, top + depth));
    painter.setPen(QPen(theme.mark, 3));
    painter.drawLine(QPointF(left - 1, top + depth), QPointF(left + 13, top + depth));
}

}  // namespace chalk::ui::onboarding
