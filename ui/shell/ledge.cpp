#include "ui/shell/ledge.h"

#include "core/sessions/session.h"
#include "ui/common/formats.h"
#include "ui/common/line_width.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"
#include "ui/shell/day_line.h"
#include "ui/shell/key_hints_line.h"
#include "ui/shell/ledge_note.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

#include <algorithm>

namespace chalk::ui::shell {

namespace {

constexpr double kLedgeHeight = 44;
constexpr double kClockWidth = 80;
constexpr double kWideLine = 400;
constexpr double kNarrowLine = 300;
constexpr double kLeastSentence = 120;
constexpr int kBeforeNote = 6;
constexpr int kLedgeEnd = 16;

/// The yellow point before what is now or next.
class PresentDot final : public QWidget {
public:
    PresentDot(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look) { setFixedSize(8, 8); }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_look.theme().chalk);
        painter.drawEllipse(rect());
    }

private:
    const common::Look& m_look;
};

}  // namespace

Ledge::Ledge(const common::Look& look, common::ActHistory& acts, QWidget* parent)
    : QWidget(parent),
      m_look(look),
      m_row(new QHBoxLayout(this)),
      m_clock(new QLabel(this)),
      m_dayLine(new DayLine(look, this)),
      m_dot(new PresentDot(look, this)),
      m_sentence(new QLabel(this)),
      m_hints(new KeyHintsLine(look, this)),
      m_note(new LedgeNote(look, acts, this))
{
    m_clock->setAlignment(Qt::AlignCenter);
    m_clock->setObjectName(QStringLiteral("ledgeClock"));
    m_sentence->setObjectName(QStringLiteral("ledgeText"));
    m_sentence->setTextFormat(Qt::RichText);
    m_row->setContentsMargins(0, 3, kLedgeEnd, 0);
    m_row->addWidget(m_clock);
    m_row->addWidget(m_dayLine);
    m_row->addWidget(m_dot);
    m_row->addWidget(m_sentence);
    m_row->addWidget(m_hints, 1);
    m_row->addSpacing(kBeforeNote);
    m_row->addWidget(m_note);
    connect(&look, &common::Look::changed, this, &Ledge::dress);
    connect(m_note, &LedgeNote::wordsChanged, this, &Ledge::fitWords);
    dress();
}

void Ledge::setDay(const LedgeDay& day)
{
    m_day = day;
    m_clock->setText(common::qstring(sessions::clockText(day.nowMinute)));
    m_clock->setAccessibleName(tr("Time: %1").arg(m_clock->text()));
    m_dayLine->setDay(day);
    m_dot->setVisible(day.hasPresent);
    m_note->setMinute(day.nowMinute);
    fitWords();
}

void Ledge::setHints(const std::vector<KeyHint>& hints)
{
    m_hints->setHints(hints);
}

void Ledge::setNarrow(bool isNarrow)
{
    m_isNarrow = isNarrow;
    dress();
}

void Ledge::dress()
{
    const common::Theme& theme = m_look.theme();
    setFixedHeight(qRound(theme.scaled(kLedgeHeight)));
    m_clock->setFixedWidth(qRound(kClockWidth));
    m_dayLine->setFixedSize(qRound(m_isNarrow ? kNarrowLine : kWideLine), height() - 3);
    m_row->setSpacing(qRound(theme.scaled(10)));
    fitWords();
    update();
}

void Ledge::fitWords()
{
    const QFont font = m_look.theme().font(13, QFont::Normal);
    const int gap = m_row->spacing();
    const double dot = m_day.hasPresent ? m_dot->width() + gap : 0;
    const double shared = width() - m_clock->width() - m_dayLine->width() - dot - 4 * gap - kBeforeNote - kLedgeEnd;
    const double most = std::max(kLeastSentence, (width() - kClockWidth - m_dayLine->width()) * 0.5);
    const double sentence = std::min(most, common::lineWidth(m_day.sentence, font));
    const double note = std::min(m_note->wantedWidth(), std::max(shared - sentence, shared * 0.5));
    m_note->setRoom(note);
    m_sentence->setText(common::fittedHtml(m_day.sentence, font, std::min(most, std::max(kLeastSentence, shared - note))));
    m_sentence->setToolTip(common::plainText(m_day.sentence));
    m_sentence->setAccessibleName(m_sentence->toolTip());
}

void Ledge::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitWords();
}

void Ledge::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.fillRect(rect(), m_look.theme().rail);
    painter.fillRect(QRect(0, 0, width(), 3), m_look.theme().rail2);
}

}  // namespace chalk::ui::shell
