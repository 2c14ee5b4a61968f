#include "ui/check_in/stage_tag.h"

#include "ui/common/look.h"

#include <QPainter>

#include <cmath>

namespace chalk::ui::check_in {

StageTag::StageTag(const common::Look& look, QWidget* parent) : QWidget(parent), m_look(look)
{
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    connect(&look, &common::Look::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void StageTag::setView(const common::StageTagView& view)
{
    m_view = view;
    setAccessibleName(common::stageTagText(view));
    updateGeometry();
    update();
}

QSize StageTag::sizeHint() const
{
    const common::Theme& theme = m_look.theme();
    return {static_cast<int>(std::ceil(common::stageTagWidth(m_view, theme))), static_cast<int>(std::ceil(common::tagHeight(theme)))};
}

void StageTag::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    common::paintStageTag(painter, QRectF(rect()), m_view, m_look.theme());
}

}  // namespace chalk::ui::check_in
