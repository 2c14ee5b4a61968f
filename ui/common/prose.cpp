#include "ui/common/prose.h"

namespace chalk::ui::common {

QString proseHtml(const QString& html)
{
    return QStringLiteral("<p style=\"line-height:118%; margin:0\">%1</p>").arg(html);
}

QString linkHtml(const QString& target, const QString& text)
{
    return QStringLiteral("<a href=\"%1\" style=\"text-decoration:none; font-weight:500\">%2</a>")
        .arg(target.toHtmlEscaped(), text.toHtmlEscaped());
}

}  // namespace chalk::ui::common
