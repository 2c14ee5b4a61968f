#include "ui/shell/page.h"

namespace chalk::ui::shell {

Page::~Page()
{
    for (QObject* part : findChildren<QObject*>()) {
        part->disconnect(this);
    }
}

}  // namespace chalk::ui::shell
