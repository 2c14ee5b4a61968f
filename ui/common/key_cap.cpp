#include "ui/common/key_cap.h"

#include "ui/common/look.h"

#include <QPainter>

#include <cmath>

namespace chalk::ui::common {

KeyCap::KeyCap(const Look& look, KeyCapView view, QWidget* parent) : QWidget(parent), m_look(look), m_view(std::move(view))
{
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setAttribute(Qt::WA_TransparentForMouseEvents);
    connect(&look, &Look::changed, this, &KeyCap::fit);
}

QSize KeyCap::sizeHint() const
{
    return {static_cast<int>(std::ceil(keyCapWidth(m_view, m_look.theme()))),
            static_cast<int>(std::ceil(keyCapHeight(m_look.theme())))};
}

void KeyCap::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    paintKeyCap(painter, rect(), m_view, m_look.theme());
}

void KeyCap::fit()
{
    updateGeometry();
    update();
}

}  // namespace chalk::ui::common
