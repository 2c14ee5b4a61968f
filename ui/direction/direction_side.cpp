#include "ui/direction/direction_side.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/prose.h"
#include "ui/common/scroll_column.h"

#include <QGridLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

namespace chalk::ui::direction {

namespace {

constexpr int kSideWidth = 320;
constexpr int kNarrowSideWidth = 304;
constexpr int kSideIcon = 20;

QLabel* wrapped(QWidget* parent)
{
    auto* label = new QLabel(parent);
    label->setWordWrap(true);
    label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    label->setTextFormat(Qt::RichText);
    return label;
}

}  // namespace

DirectionSide::DirectionSide(const common::Look& look, QWidget* parent)
    : common::Panel(look, parent), m_look(look), m_lines(new QGridLayout), m_caption(nullptr), m_why(nullptr), m_bar(nullptr), m_foot(new QVBoxLayout)
{
    auto* contents = new QWidget;
    auto* column = new QVBoxLayout(contents);
    column->setContentsMargins(16, 14, 16, 14);
    column->setSpacing(12);
    m_lines->setHorizontalSpacing(10);
    m_lines->setVerticalSpacing(10);
    m_lines->setColumnStretch(1, 1);
    column->addLayout(m_lines);
    m_caption = wrapped(contents);
    m_caption->setProperty("role", QStringLiteral("caption"));
    m_why = wrapped(contents);
    column->addWidget(m_caption);
    column->addWidget(m_why);
    column->addStretch(1);
    auto* area = new QScrollArea(this);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    common::holdColumn(*area, contents);
    auto* line = new QFrame(this);
    line->setProperty("rule", true);
    line->setFixedHeight(1);
    m_bar = wrapped(this);
    m_bar->setProperty("role", QStringLiteral("secondary"));
    m_foot->setContentsMargins(16, 14, 16, 14);
    m_foot->setSpacing(8);
    m_foot->addWidget(m_bar);
    body()->addWidget(area, 1);
    body()->addWidget(line);
    body()->addLayout(m_foot);
    setRoom(false);
    connect(&look, &common::Look::changed, this, &DirectionSide::fill);
}

void DirectionSide::setRoom(bool isNarrow)
{
    setFixedWidth(qRound(m_look.theme().scaled(isNarrow ? kNarrowSideWidth : kSideWidth)));
}

void DirectionSide::setView(const DirectionSideView& view)
{
    m_view = view;
    fill();
}

void DirectionSide::fill()
{
    setTitle(m_view.title);
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        item->widget()->hide();
        item->widget()->deleteLater();
        delete item;
    }
    const common::Theme& theme = m_look.theme();
    const int side = qRound(theme.scaled(kSideIcon));
    int row = 0;
    for (const ChangeLine& line : m_view.lines) {
        auto* icon = new QLabel(this);
        icon->setPixmap(theme.icons->pixmap(line.icon, side, theme.ink3, devicePixelRatioF()));
        icon->setAlignment(Qt::AlignLeft | Qt::AlignTop);
        icon->setFixedWidth(side);
        auto* text = wrapped(this);
        text->setText(common::proseHtml(line.text.toHtmlEscaped()));
        m_lines->addWidget(icon, row, 0);
        m_lines->addWidget(text, row, 1);
        ++row;
    }
    m_caption->setText(m_view.caption.toHtmlEscaped());
    m_caption->setVisible(!m_view.caption.isEmpty());
    m_why->setText(common::proseHtml(m_view.why.toHtmlEscaped()));
    m_why->setVisible(!m_view.why.isEmpty());
    m_bar->setText(common::proseHtml(m_view.bar.toHtmlEscaped()));
    m_bar->setVisible(!m_view.bar.isEmpty());
}

}  // namespace chalk::ui::direction
