#include "ui/shell/ledge_note.h"

#include "core/sessions/session.h"
#include "ui/common/formats.h"
#include "ui/common/icon_store.h"
#include "ui/common/line_width.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"
#include "ui/common/tags.h"

#include <QAbstractButton>
#include <QAccessible>
#include <QFontMetricsF>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace chalk::ui::shell {

namespace {

constexpr double kLongestNote = 360;
constexpr int kNoteGap = 6;
constexpr double kNoteIcon = 16;
constexpr int kMinutesOfDay = 24 * 60;

/// A word in yellow and its keys, on the slate of the frame.
class NoteButton final : public QAbstractButton {
public:
    NoteButton(const common::Look& look, QWidget* parent) : QAbstractButton(parent), m_look(look)
    {
        setFocusPolicy(Qt::StrongFocus);
        setCursor(Qt::PointingHandCursor);
    }

    void setWords(const QString& text, const QString& keys)
    {
        setText(text);
        m_cap = {keys, common::KeyCapGround::Rail};
        updateGeometry();
        update();
    }

    [[nodiscard]] QSize sizeHint() const override
    {
        const common::Theme& theme = m_look.theme();
        const double width = textWidth() + theme.scaled(8) + common::keyCapWidth(m_cap, theme) + theme.scaled(12);
        return {static_cast<int>(std::ceil(width)), qRound(theme.scaled(32))};
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        const common::Theme& theme = m_look.theme();
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        if (hasFocus()) {
            painter.setPen(QPen(theme.focus.lighter(), 2));
            painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 6, 6);
        }
        const double left = theme.scaled(6);
        painter.setFont(theme.font(13, QFont::DemiBold));
        painter.setPen(theme.chalk);
        painter.drawText(QRectF(left, 0, textWidth() + 1, height()), Qt::AlignLeft | Qt::AlignVCenter, text());
        const double capLeft = left + textWidth() + theme.scaled(8);
        common::paintKeyCap(painter, QRectF(capLeft, 0, width() - capLeft, height()), m_cap, theme);
    }

private:
    [[nodiscard]] double textWidth() const
    {
        return QFontMetricsF(m_look.theme().font(13, QFont::DemiBold)).horizontalAdvance(text());
    }

    const common::Look& m_look;
    common::KeyCapView m_cap;
};

}  // namespace

LedgeNote::LedgeNote(const common::Look& look, common::ActHistory& acts, QWidget* parent)
    : QWidget(parent), m_look(look), m_acts(acts), m_icon(new QLabel(this)), m_text(new QLabel(this)), m_button(new NoteButton(look, this))
{
    m_text->setObjectName(QStringLiteral("ledgeText"));
    m_text->setTextFormat(Qt::RichText);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(kNoteGap);
    row->addWidget(m_icon);
    row->addWidget(m_text);
    row->addWidget(m_button);
    connect(m_button, &QAbstractButton::clicked, this, &LedgeNote::act);
    connect(&acts, &common::ActHistory::changed, this, &LedgeNote::readActs);
    connect(&acts, &common::ActHistory::failed, this, &LedgeNote::sayTrouble);
    connect(&look, &common::Look::changed, this, &LedgeNote::dress);
    readActs();
}

void LedgeNote::setMinute(int minuteOfDay)
{
    if (minuteOfDay != m_minute) {
        m_minute = minuteOfDay;
        if (m_kind != Kind::Trouble && !(m_kind == Kind::News && isNewsFresh())) {
            readActs();
        }
    }
}

QString LedgeNote::words() const
{
    return common::plainText(m_html);
}

void LedgeNote::readActs()
{
    const auto isFresh = [this](const std::optional<common::DoneAct>& done) {
        return done && (m_minute - done->minuteOfDay + kMinutesOfDay) % kMinutesOfDay < kUndoMinutes;
    };
    const auto done = m_acts.lastDone();
    const auto takenBack = m_acts.lastTakenBack();
    if (isFresh(takenBack)) {
        say(Kind::TakenBack, tr("Taken back: %1").arg(takenBack->words));
    } else if (isFresh(done)) {
        say(Kind::Done, done->words);
    } else if (m_acts.savedMinute()) {
        say(Kind::Saved, tr("Saved %1").arg(common::qstring(sessions::clockText(*m_acts.savedMinute()))));
    } else {
        say(Kind::Nothing, {});
    }
}

void LedgeNote::sayTrouble(const QString& reason)
{
    if (reason.isEmpty()) {
        if (m_kind == Kind::Trouble) {
            readActs();
        }
        return;
    }
    say(Kind::Trouble, reason.toHtmlEscaped());
    tell(reason);
}

void LedgeNote::sayNews(const QString& news)
{
    m_newsMinute = m_minute;
    say(Kind::News, news.toHtmlEscaped());
    tell(news);
}

void LedgeNote::tell(const QString& words)
{
    setAccessibleName(words);
    QAccessibleEvent event(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&event);
}

bool LedgeNote::isNewsFresh() const
{
    return (m_minute - m_newsMinute + kMinutesOfDay) % kMinutesOfDay < kNewsMinutes;
}

void LedgeNote::say(Kind kind, const QString& html)
{
    m_kind = kind;
    m_html = html;
    auto* button = static_cast<NoteButton*>(m_button);
    if (kind == Kind::TakenBack) {
        button->setWords(tr("Do again"), tr("Ctrl Shift Z"));
    } else {
        button->setWords(tr("Undo"), tr("Ctrl Z"));
    }
    m_button->setAccessibleName(QStringLiteral("%1: %2").arg(m_button->text(), words()));
    m_icon->setVisible(kind != Kind::Nothing);
    m_text->setVisible(kind != Kind::Nothing);
    m_button->setVisible(kind == Kind::Done || kind == Kind::TakenBack);
    dress();
    Q_EMIT wordsChanged();
}

double LedgeNote::widthBesideText() const
{
    const bool hasButton = m_kind == Kind::Done || m_kind == Kind::TakenBack;
    return m_look.theme().scaled(kNoteIcon) + kNoteGap + (hasButton ? kNoteGap + m_button->sizeHint().width() : 0);
}

double LedgeNote::wantedWidth() const
{
    if (m_kind == Kind::Nothing) {
        return 0;
    }
    const common::Theme& theme = m_look.theme();
    return widthBesideText() + std::min(common::lineWidth(m_html, theme.font(13, QFont::Normal)), theme.scaled(kLongestNote));
}

void LedgeNote::setRoom(double width)
{
    if (m_room != width) {
        m_room = width;
        dress();
    }
}

void LedgeNote::dress()
{
    static constexpr const char* kIcons[] = {"check", "undo", "again", "check", "warning", "rest"};
    const common::Theme& theme = m_look.theme();
    m_icon->setPixmap(theme.icons->pixmap(QLatin1String(kIcons[static_cast<int>(m_kind)]), qRound(theme.scaled(kNoteIcon)),
                                          m_kind == Kind::Saved ? theme.railInk : theme.railOn, devicePixelRatioF()));
    const double most = theme.scaled(kLongestNote);
    const double room = m_room ? std::clamp(*m_room - widthBesideText(), 0.0, most) : most;
    m_text->setText(common::fittedHtml(m_html, theme.font(13, QFont::Normal), room));
    m_text->setToolTip(words());
    m_text->setAccessibleName(words());
}

void LedgeNote::act()
{
    if (m_kind == Kind::TakenBack) {
        m_acts.redo();
    } else {
        m_acts.undo();
    }
}

}  // namespace chalk::ui::shell
