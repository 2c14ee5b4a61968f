#include "ui/common/scroll_column.h"

namespace chalk::ui::common {

void holdColumn(QScrollArea& area, QWidget* contents)
{
    area.setWidgetResizable(true);
    area.setFocusPolicy(Qt::NoFocus);
    area.setWidget(contents);
    area.viewport()->setAutoFillBackground(false);
    contents->setAutoFillBackground(false);
}

}  // namespace chalk::ui::common
