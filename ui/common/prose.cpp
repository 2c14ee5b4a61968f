#include "ui/common/prose.h"

#include "ui/common/line_width.h"

#include <QFont>
#include <QFontMetricsF>
#include <QTextDocument>

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

QString plainText(const QString& html)
{
    QTextDocument document;
    document.setHtml(html);
    return document.toPlainText();
}

QString fittedHtml(const QString& html, const QFont& font, double width)
{
    if (lineWidth(html, font) <= width) {
        return html;
    }
    return QFontMetricsF(font).elidedText(plainText(html), Qt::ElideRight, width).toHtmlEscaped();
}

}  // namespace chalk::ui::common
