#include "ui/floor/card_pane.h"

#include "core/sessions/card_content.h"
#include "ui/common/action_button.h"
#include "ui/common/formats.h"
#include "ui/common/look.h"
#include "ui/common/plate_stack.h"
#include "ui/common/wrapped_text.h"
#include "ui/floor/entry_words.h"
#include "ui/print/card_preview.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

namespace chalk::ui::floor {

namespace {

constexpr double kSetUpHeight = 112;
constexpr double kSetUpSide = 14;

QString withPlace(const QString& place, const QString& words)
{
    return place.isEmpty() ? SetUpView::tr("Set up: %1").arg(words) : SetUpView::tr("Set up: %1, %2").arg(place, words);
}

}  // namespace

SetUpView::SetUpView(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    setFixedHeight(qRound(look.theme().scaled(kSetUpHeight)));
    connect(&look, &common::Look::changed, this, [this] { setFixedHeight(qRound(m_look.theme().scaled(kSetUpHeight))); });
}

void SetUpView::setLift(const FloorLift& lift, base::Load load, const QString& place)
{
    m_unit = lift.machine.setup().unit;
    m_plates.reset();
    m_words.clear();
    const auto* bar = std::get_if<lifts::Barbell>(&lift.machine.kit().equipment);
    if (lift.due.kind != progression::PrescriptionKind::Work) {
        m_caption = withPlace(place, lift.due.kind == progression::PrescriptionKind::Rehearse ? tr("no load") : tr("on hold"));
    } else if (bar != nullptr) {
        m_plates = lifts::platesPerSide(*bar, load);
        m_caption = withPlace(place, tr("%1 %2 bar, each side").arg(common::numberText(bar->bar), common::unitText(m_unit)));
        m_words = m_plates ? QString() : tr("The plates on hand cannot give %1.").arg(loadOf(load, lift));
    } else {
        m_caption = withPlace(place, loadOf(load, lift));
    }
    setAccessibleName(m_caption);
    setAccessibleDescription(m_plates ? common::plateStackText({*m_plates, m_unit, true}) : m_words);
    update();
}

void SetUpView::clear()
{
    m_caption.clear();
    m_words.clear();
    m_plates.reset();
    update();
}

void SetUpView::paintEvent(QPaintEvent* /*event*/)
{
    const common::Theme& theme = m_look.theme();
    QPainter painter(this);
    painter.fillRect(QRectF(0, 0, width(), 1), theme.line);
    const double side = theme.scaled(kSetUpSide);
    const QFont font = theme.font(12, QFont::DemiBold);
    const double line = theme.scaled(17);
    const double room = width() - 2 * side;
    painter.setPen(theme.ink2);
    common::paintWrappedText(painter, {side, side}, m_caption, font, room, line);
    const double top = side + common::wrappedTextHeight(m_caption, font, room, line) + theme.scaled(8);
    if (m_plates) {
        common::paintPlateStack(painter, QRectF(side, top, room, height() - top), {*m_plates, m_unit, true}, theme);
        if (m_plates->empty()) {
            painter.setPen(theme.ink2);
            common::paintWrappedText(painter, {side + theme.scaled(90), top + theme.scaled(10)}, tr("no plates"), theme.font(13, QFont::Normal), room, line);
        }
    } else {
        common::paintWrappedText(painter, {side, top}, m_words, theme.font(13, QFont::Normal), room, theme.scaled(19));
    }
}

CardPane::CardPane(const common::Look& look, QWidget* parent)
    : Panel(look, parent),
      m_preview(new print::CardPreview(this)),
      m_why(new QLabel(this)),
      m_paper(new QWidget(this)),
      m_setUp(new SetUpView(look, this)),
      m_print(new common::ActionButton(look, tr("Print"), this))
{
    setTitle(tr("Card"), QStringLiteral("A5"));
    m_paper->setProperty("ground", QStringLiteral("win"));
    auto* paper = new QVBoxLayout(m_paper);
    paper->setContentsMargins(12, 12, 12, 12);
    paper->addWidget(m_preview);
    m_why->setWordWrap(true);
    m_why->setProperty("role", QStringLiteral("secondary"));
    m_why->setContentsMargins(14, 14, 14, 14);
    m_print->setIconName(QStringLiteral("print"));
    m_print->setKeyText(tr("Ctrl P"));
    m_print->setKind(common::ButtonKind::Primary);
    connect(m_print, &QPushButton::clicked, this, &CardPane::printAsked);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(12, 12, 12, 12);
    foot->addWidget(m_print);
    body()->addWidget(m_paper);
    body()->addWidget(m_why);
    body()->addWidget(m_setUp);
    body()->addStretch(1);
    auto* rule = new QFrame(this);
    rule->setProperty("rule", true);
    rule->setFixedHeight(1);
    body()->addWidget(rule);
    body()->addLayout(foot);
    clearCard({});
}

void CardPane::setCard(const sessions::CardContent& card)
{
    m_preview->setCard(card);
    m_hasCard = true;
    m_paper->show();
    m_why->hide();
    m_print->setEnabled(true);
}

void CardPane::clearCard(const QString& why)
{
    m_preview->clear();
    m_hasCard = false;
    m_paper->hide();
    m_why->setText(why);
    m_why->setVisible(!why.isEmpty());
    m_print->setEnabled(false);
}

}  // namespace chalk::ui::floor
