#include "ui/direction/direction_cards.h"

#include "ui/common/direction_words.h"
#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/tags.h"
#include "ui/common/wrapped_text.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace chalk::ui::direction {

namespace {

using chalk::direction::Direction;
using chalk::direction::FitNote;

constexpr double kCardPadX = 16;
constexpr double kCardPadY = 13;
constexpr double kNameHeight = 26;
constexpr double kCardLine = 18;
constexpr double kPipRow = 18;
constexpr double kPipWord = 52;
constexpr double kCardPipWidth = 11;
constexpr double kCardPipPitch = 15;
constexpr int kMostPips = 4;
constexpr double kNoteIcon = 16;
constexpr double kNoteGap = 14;
constexpr double kCardColumnGap = 12;
constexpr double kLeastGap = 4;
constexpr int kLeastCardWidth = 200;
constexpr int kBetweenCards = 12;

/// A note and its room on the card.
struct PlacedNote {
    const CardNote* note;
    QRectF box;   ///< of the words
};

struct CardLayout {
    QRectF sentence;
    double pipsTop = kCardPadY;   ///< beside the name; below the sentence where there is no room
    std::vector<PlacedNote> notes;
    double height = 0;
};

double pipsColumn(const common::Theme& theme)
{
    return theme.scaled(kPipWord) + kMostPips * kCardPipPitch;
}

/// Of the name with its key.
double nameWidth(const DirectionCardView& view, const common::Theme& theme)
{
    return QFontMetricsF(theme.font(18, QFont::DemiBold)).horizontalAdvance(view.name) + 8 + common::keyCapWidth({view.key}, theme);
}

CardLayout cardLayout(const DirectionCardView& view, double width, const common::Theme& theme)
{
    CardLayout layout;
    const double inner = width - 2 * kCardPadX;
    const QFont small = theme.font(common::TextStyle::Small);
    const double line = theme.scaled(kCardLine);
    const double beside = inner - pipsColumn(theme) - kCardColumnGap;
    const bool isBeside = nameWidth(view, theme) <= beside + kCardColumnGap - kLeastGap;
    const double wordsWidth = isBeside ? beside : inner;
    const double top = kCardPadY + theme.scaled(kNameHeight);
    layout.sentence = QRectF(kCardPadX, top, wordsWidth, std::max(line, common::wrappedTextHeight(view.sentence, small, wordsWidth, line)));
    layout.pipsTop = isBeside ? kCardPadY : layout.sentence.bottom() + 4;
    double y = std::max(layout.sentence.bottom(), layout.pipsTop + 3 * theme.scaled(kPipRow)) + 6;
    double x = kCardPadX;
    double rowHeight = 0;
    const QFontMetricsF metrics(small);
    const double lead = theme.scaled(kNoteIcon) + 6;
    for (const CardNote& note : view.notes) {
        const double wanted = std::ceil(metrics.horizontalAdvance(note.text)) + 1;
        if (x > kCardPadX && x + lead + wanted > width - kCardPadX) {
            x = kCardPadX;
            y += rowHeight + 2;
            rowHeight = 0;
        }
        const double room = std::min(wanted, width - kCardPadX - x - lead);
        const double height = std::max(line, common::wrappedTextHeight(note.text, small, room, line));
        layout.notes.push_back({&note, QRectF(x + lead, y, room, height)});
        rowHeight = std::max(rowHeight, height);
        x += lead + room + kNoteGap;
    }
    layout.height = y + rowHeight + kCardPadY;
    return layout;
}

void paintDemands(QPainter& painter, const QPointF& topRight, const DirectionCardView& view, const common::Theme& theme)
{
    const std::array<std::pair<QString, int>, 3> rows{std::pair{DirectionCard::tr("load"), view.demands.load},
                                                      std::pair{DirectionCard::tr("reps"), view.demands.reps},
                                                      std::pair{DirectionCard::tr("variety"), view.demands.variety}};
    const double left = topRight.x() - pipsColumn(theme);
    const double pitch = theme.scaled(kPipRow);
    painter.setFont(theme.font(common::TextStyle::Micro));
    double y = topRight.y();
    for (const auto& [word, count] : rows) {
        painter.setPen(theme.ink2);
        painter.drawText(QRectF(left, y, theme.scaled(kPipWord), pitch), Qt::AlignLeft | Qt::AlignVCenter, word);
        painter.setPen(Qt::NoPen);
        for (int i = 0; i < kMostPips; ++i) {
            painter.setBrush(i < count ? theme.ink2 : theme.line);
            painter.drawRoundedRect(QRectF(left + theme.scaled(kPipWord) + i * kCardPipPitch, y + pitch / 2 - 4.5, kCardPipWidth, 9), 2.5, 2.5);
        }
        y += pitch;
    }
}

CardNote noteOf(FitNote note, Direction direction, int sessionsAWeek)
{
    const QString text = common::fitNoteText(note, direction, sessionsAWeek);
    switch (note) {
    case FitNote::FitsTheWeek:
        return {QStringLiteral("check"), common::Signal::Ok, text};
    case FitNote::LiftOnHold:
        return {QStringLiteral("hold"), common::Signal::Pain, text};
    case FitNote::FewerThanWanted:
    case FitNote::TooFewSessions:
    case FitNote::CareWithHeavyLoads:
        return {QStringLiteral("warning"), common::Signal::Warn, text};
    case FitNote::FewLiftsGoneRound:
        return {QStringLiteral("plateau"), common::Signal::Muted, text};
    }
    return {};
}

}  // namespace

DirectionCardView cardViewOf(const chalk::direction::DirectionFit& fit, int sessionsAWeek)
{
    DirectionCardView view;
    view.name = common::directionName(fit.direction);
    view.key = QString::number(static_cast<int>(fit.direction) + 1);
    view.sentence = common::directionText(fit.direction);
    view.demands = chalk::direction::demandsOf(fit.direction);
    if (fit.isSuggested) {
        view.notes.push_back({QStringLiteral("ready"), common::Signal::Ok, DirectionCard::tr("Suggested")});
    }
    for (const FitNote note : fit.notes) {
        view.notes.push_back(noteOf(note, fit.direction, sessionsAWeek));
    }
    return view;
}

QString spokenOf(const DirectionCardView& view)
{
    QStringList notes;
    for (const CardNote& note : view.notes) {
        notes.append(note.text);
    }
    return DirectionCard::tr("%1, key %2. %3 Load %4, reps %5, variety %6 of 4. %7")
        .arg(view.name, view.key, view.sentence)
        .arg(view.demands.load)
        .arg(view.demands.reps)
        .arg(view.demands.variety)
        .arg(notes.join(QStringLiteral(", ")));
}

DirectionCard::DirectionCard(const common::Look& look, QWidget* parent) : QAbstractButton(parent), m_look(look)
{
    setCheckable(true);
    setCursor(Qt::PointingHandCursor);
    setFocusPolicy(Qt::StrongFocus);
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&look, &common::Look::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void DirectionCard::setView(const DirectionCardView& view)
{
    m_view = view;
    setAccessibleName(spokenOf(view));
    updateGeometry();
    update();
}

QSize DirectionCard::sizeHint() const
{
    const int width = qRound(m_look.theme().scaled(300));
    return {width, heightForWidth(width)};
}

QSize DirectionCard::minimumSizeHint() const
{
    const int width = qRound(m_look.theme().scaled(kLeastCardWidth));
    return {width, qRound(m_look.theme().scaled(90))};
}

int DirectionCard::heightForWidth(int width) const
{
    return static_cast<int>(std::ceil(cardLayout(m_view, width, m_look.theme()).height));
}

void DirectionCard::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double edge = isChecked() ? 2 : 1;
    painter.setPen(QPen(isChecked() ? theme.mark : theme.line, edge));
    painter.setBrush(isChecked() ? theme.wash : theme.surface);
    painter.drawRoundedRect(QRectF(rect()).adjusted(edge / 2, edge / 2, -edge / 2, -edge / 2), 8, 8);
    const CardLayout layout = cardLayout(m_view, width(), theme);
    painter.setPen(theme.ink);
    painter.setFont(theme.font(18, QFont::DemiBold));
    const QRectF name(kCardPadX, kCardPadY, layout.sentence.width(), theme.scaled(24));
    painter.drawText(name, Qt::AlignLeft | Qt::AlignVCenter, m_view.name);
    const double after = kCardPadX + QFontMetricsF(painter.font()).horizontalAdvance(m_view.name) + 8;
    common::paintKeyCap(painter, QRectF(after, kCardPadY, 40, theme.scaled(24)), {m_view.key}, theme);
    painter.setPen(theme.ink2);
    common::paintWrappedText(painter, layout.sentence.topLeft(), m_view.sentence, theme.font(common::TextStyle::Small), layout.sentence.width(),
                             theme.scaled(kCardLine));
    paintDemands(painter, QPointF(width() - kCardPadX, layout.pipsTop), m_view, theme);
    for (const PlacedNote& placed : layout.notes) {
        const double side = theme.scaled(kNoteIcon);
        common::paintIcon(painter, QRectF(placed.box.left() - side - 6, placed.box.top() + 1, side, side), placed.note->icon,
                          theme.signal(placed.note->signal).ink, theme);
        painter.setPen(theme.ink);
        common::paintWrappedText(painter, placed.box.topLeft(), placed.note->text, theme.font(common::TextStyle::Small), placed.box.width(),
                                 theme.scaled(kCardLine));
    }
    if (hasFocus()) {
        painter.setPen(QPen(theme.focus, 2));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(QRectF(rect()).adjusted(3, 3, -3, -3), 6, 6);
    }
}

DirectionCards::DirectionCards(const common::Look& look, QWidget* parent) : QWidget(parent)
{
    setAccessibleName(tr("Directions"));
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(kBetweenCards);
    auto* group = new QButtonGroup(this);
    for (const Direction direction : chalk::direction::kDirections) {
        auto* card = new DirectionCard(look, this);
        card->installEventFilter(this);
        m_cards[static_cast<std::size_t>(direction)] = card;
        group->addButton(card, static_cast<int>(direction));
        row->addWidget(card, 1);
    }
    m_cards.front()->setChecked(true);
    connect(&look, &common::Look::changed, this, &DirectionCards::fitHeight);
    connect(group, &QButtonGroup::idClicked, this, [this](int id) { Q_EMIT choiceMade(static_cast<Direction>(id)); });
}

void DirectionCards::setFits(const std::array<chalk::direction::DirectionFit, 3>& fits, int sessionsAWeek)
{
    for (const chalk::direction::DirectionFit& fit : fits) {
        card(fit.direction)->setView(cardViewOf(fit, sessionsAWeek));
    }
    fitHeight();
}

void DirectionCards::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitHeight();
}

void DirectionCards::fitHeight()
{
    const int count = static_cast<int>(m_cards.size());
    const int each = (width() - (count - 1) * kBetweenCards) / count;
    int height = 0;
    for (const DirectionCard* card : m_cards) {
        height = std::max(height, card->heightForWidth(each));
    }
    setFixedHeight(height);
}

Direction DirectionCards::chosen() const
{
    const auto found = std::ranges::find_if(m_cards, &QAbstractButton::isChecked);
    return static_cast<Direction>(found == m_cards.end() ? 0 : found - m_cards.begin());
}

void DirectionCards::setChosen(Direction direction)
{
    card(direction)->setChecked(true);
}

bool DirectionCards::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::KeyPress) {
        return QWidget::eventFilter(watched, event);
    }
    const auto key = static_cast<QKeyEvent*>(event)->key();
    const auto found = std::ranges::find(m_cards, watched);
    if (found == m_cards.end() || (key != Qt::Key_Left && key != Qt::Key_Right)) {
        return QWidget::eventFilter(watched, event);
    }
    const auto at = found - m_cards.begin() + (key == Qt::Key_Right ? 1 : -1);
    if (at >= 0 && at < static_cast<std::ptrdiff_t>(m_cards.size())) {
        m_cards[static_cast<std::size_t>(at)]->setFocus(Qt::TabFocusReason);
        m_cards[static_cast<std::size_t>(at)]->click();
    }
    return true;
}

}  // namespace chalk::ui::direction
