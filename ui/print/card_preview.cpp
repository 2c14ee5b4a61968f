#include "ui/print/card_preview.h"

#include "core/sessions/card_content.h"
#include "ui/common/formats.h"
#include "ui/print/card_printing.h"

#include <QPainter>

#include <algorithm>

namespace chalk::ui::print {

namespace {

constexpr int kUsualWidth = 296;  ///< two pixels to the millimetre of an A5 card

}  // namespace

CardPreview::CardPreview(QWidget* parent) : QWidget(parent)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(tr("Card"));
}

CardPreview::~CardPreview() = default;

void CardPreview::setCard(const sessions::CardContent& card)
{
    const bool isSameClient = m_card && m_card->clientName == card.clientName;
    m_card = std::make_unique<const sessions::CardContent>(card);
    m_sheet = isSameClient ? m_sheet : 0;
    countSheets();
}

void CardPreview::clear()
{
    m_card.reset();
    countSheets();
}

void CardPreview::setPaper(PaperSize paper)
{
    m_paper = paper;
    countSheets();
    updateGeometry();
}

void CardPreview::setSheet(int sheet)
{
    m_sheet = std::clamp(sheet, 0, std::max(0, m_sheetCount - 1));
    update();
}

void CardPreview::countSheets()
{
    m_sheetCount = m_card ? print::sheetCount(*m_card, m_paper) : 0;
    setSheet(m_sheet);
    describe();
}

void CardPreview::describe()
{
    setAccessibleDescription(m_card ? tr("Card of %1, %n sheet(s)", nullptr, m_sheetCount).arg(common::qstring(m_card->clientName)) : QString());
}

int CardPreview::heightForWidth(int width) const
{
    const QSizeF paper = millimetresOf(m_paper);
    return qRound(width * paper.height() / paper.width());
}

QSize CardPreview::sizeHint() const
{
    return {kUsualWidth, heightForWidth(kUsualWidth)};
}

void CardPreview::paintEvent(QPaintEvent* /*event*/)
{
    if (!m_card) {
        return;
    }
    const QSizeF paper = millimetresOf(m_paper).scaled(size(), Qt::KeepAspectRatio);
    const QRectF page(QPointF((width() - paper.width()) / 2, 0), paper);
    QPainter painter(this);
    painter.fillRect(page, Qt::white);
    paintCard(painter, *m_card, m_paper, page, m_sheet);
}

}  // namespace chalk::ui::print
