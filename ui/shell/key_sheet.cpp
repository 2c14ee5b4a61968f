#include "ui/shell/key_sheet.h"

#include "ui/common/key_cap.h"
#include "ui/common/look.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>

#include <algorithm>

namespace chalk::ui::shell {

namespace {

constexpr int kSheetMargin = 24;
constexpr int kSheetColumn = 3;  // caps, words, a gap

/// The caps of one key hint in a row.
QWidget* capsWidget(const common::Look& look, const QString& keys, QWidget* parent)
{
    auto* caps = new QWidget(parent);
    auto* row = new QHBoxLayout(caps);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(4);
    for (const QString& key : common::keyCapTexts(keys)) {
        row->addWidget(new common::KeyCap(look, {key}, caps));
    }
    row->addStretch();
    return caps;
}

}  // namespace

KeySheet::KeySheet(const common::Look& look, QWidget* window) : Overlay(look, window), m_scroll(new QScrollArea(this))
{
    setAccessibleName(tr("Keyboard"));
    m_scroll->setAccessibleName(tr("Every action with its keys"));
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setWidgetResizable(true);
    m_scroll->installEventFilter(this);
}

void KeySheet::start(const std::vector<KeySection>& sections)
{
    m_body = new QWidget;
    auto* grid = new QGridLayout(m_body);
    grid->setContentsMargins(kSheetMargin, 20, kSheetMargin, kSheetMargin);
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(6);
    std::size_t length = 0;
    for (std::size_t i = 1; i < sections.size(); ++i) {
        length += sections[i].keys.size() + 2;
    }
    QStringList words;
    int column = 0;
    int row = 0;
    std::size_t taken = 0;
    for (std::size_t i = 0; i < sections.size(); ++i) {
        const bool isHalf = i > 1 && column == kSheetColumn && taken * 2 >= length;
        if (i == 1 || isHalf) {
            grid->setColumnMinimumWidth(column + 2, 28);
            column += kSheetColumn;
            row = 0;
        }
        row = addSection(*grid, sections[i], row, column);
        taken += i > 0 ? sections[i].keys.size() + 2 : 0;
        for (const KeyHint& hint : sections[i].keys) {
            words.append(QStringLiteral("%1: %2").arg(hint.keys, hint.does));
        }
    }
    grid->setRowStretch(grid->rowCount(), 1);
    m_scroll->setWidget(m_body);  // the one before goes
    m_body->setAutoFillBackground(false);  // the card's own ground
    m_scroll->viewport()->setAutoFillBackground(false);
    setAccessibleDescription(words.join(QStringLiteral(", ")));
    m_scroll->setAccessibleDescription(accessibleDescription());
    open();
    fit();  // the labels have their font only now
}

int KeySheet::addSection(QGridLayout& grid, const KeySection& section, int row, int column)
{
    auto* heading = new QLabel(section.heading, m_body);
    heading->setProperty("role", QStringLiteral("section"));
    if (row > 0) {
        grid.setRowMinimumHeight(row++, 10);
    }
    grid.addWidget(heading, row++, column, 1, 2);
    for (const KeyHint& hint : section.keys) {
        grid.addWidget(capsWidget(look(), hint.keys, m_body), row, column);
        auto* does = new QLabel(hint.does, m_body);
        does->setProperty("role", QStringLiteral("small"));
        grid.addWidget(does, row++, column + 1);
    }
    return row;
}

QRect KeySheet::cardRect() const
{
    const QSize wanted = m_body == nullptr ? QSize() : m_body->sizeHint() + QSize(2, 2);
    const QSize room = this->size() - QSize(48, 48);
    // Where it is too high a scroll bar takes its place at the side.
    const int bar = wanted.height() > room.height() ? m_scroll->verticalScrollBar()->sizeHint().width() : 0;
    const QSize size = (wanted + QSize(bar, 0)).boundedTo(room);
    return {(width() - size.width()) / 2, std::max(24, (height() - size.height()) / 3), size.width(), size.height()};
}

void KeySheet::layCard()
{
    m_scroll->setGeometry(cardRect().adjusted(1, 1, -1, -1));
}

QWidget* KeySheet::focusTarget()
{
    return m_scroll;
}

bool KeySheet::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_scroll && event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
        close();
        return true;
    }
    return Overlay::eventFilter(watched, event);
}

}  // namespace chalk::ui::shell
