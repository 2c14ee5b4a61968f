#include "ui/common/search_field.h"

#include "ui/common/icon_store.h"
#include "ui/common/look.h"
#include "ui/common/tags.h"

#include <QKeyEvent>
#include <QPainter>

#include <cmath>

namespace chalk::ui::common {

namespace {

constexpr double kLensLeft = 12;
constexpr double kLensSide = 16;

}  // namespace

SearchField::SearchField(const Look& look, const QString& prompt, const QString& keys, QWidget* parent)
    : QLineEdit(parent), m_look(look), m_keys(keys)
{
    setPlaceholderText(prompt);
    setAccessibleName(prompt);
    connect(&look, &Look::changed, this, &SearchField::dress);
    dress();
}

void SearchField::dress()
{
    const Theme& theme = m_look.theme();
    const double cap = m_keys.isEmpty() ? 0 : keyCapWidth({m_keys}, theme) + theme.scaled(10);
    setTextMargins(qRound(theme.scaled(kLensSide + 10)), 0, static_cast<int>(std::ceil(cap)), 0);
    update();
}

void SearchField::paintEvent(QPaintEvent* event)
{
    QLineEdit::paintEvent(event);
    const Theme& theme = m_look.theme();
    const double side = theme.scaled(kLensSide);
    QPainter painter(this);
    paintIcon(painter, QRectF(theme.scaled(kLensLeft), (height() - side) / 2, side, side), QStringLiteral("search"), theme.ink2, theme);
    if (!m_keys.isEmpty() && text().isEmpty()) {
        const double width = keyCapWidth({m_keys}, theme);
        paintKeyCap(painter, QRectF(this->width() - width - theme.scaled(10), 0, width, height()), {m_keys}, theme);
    }
}

void SearchField::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && !text().isEmpty()) {
        clear();
        return;
    }
    QLineEdit::keyPressEvent(event);
}

}  // namespace chalk::ui::common
