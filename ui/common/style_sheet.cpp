#include "ui/common/style_sheet.h"

#include "ui/common/theme_reading.h"

#include <QFile>
#include <QRegularExpression>
#include <QStyle>
#include <QWidget>

namespace chalk::ui::common {

namespace {

QString valueOfName(const QString& name, const Theme& theme)
{
    for (const NamedColour& colour : namedColours()) {
        if (name == QLatin1String(colour.name)) {
            return (theme.*colour.member).name();
        }
    }
    if (name == QLatin1String("tone")) {
        return theme.tone == Tone::Slate ? QStringLiteral("slate") : QStringLiteral("paper");
    }
    return QLatin1Char('@') + name;
}

}  // namespace

QString filledIn(QString styleTemplate, const Theme& theme)
{
    static const QRegularExpression placeholder(QStringLiteral("@(?:px\\((\\d+)\\)|([A-Za-z][A-Za-z0-9]*))"));
    QString filled;
    qsizetype from = 0;
    for (auto matches = placeholder.globalMatch(styleTemplate); matches.hasNext();) {
        const QRegularExpressionMatch match = matches.next();
        filled += QStringView(styleTemplate).mid(from, match.capturedStart() - from);
        filled += match.hasCaptured(1) ? QStringLiteral("%1px").arg(qRound(theme.scaled(match.captured(1).toInt())))
                                       : valueOfName(match.captured(2), theme);
        from = match.capturedEnd();
    }
    return filled + QStringView(styleTemplate).mid(from);
}

QString styleSheetFor(const Theme& theme)
{
    QFile file(QStringLiteral(":/chalkrung/style.qss"));
    return file.open(QIODevice::ReadOnly) ? filledIn(QString::fromUtf8(file.readAll()), theme) : QString();
}

void restyle(QWidget& widget)
{
    widget.style()->unpolish(&widget);
    widget.style()->polish(&widget);
    widget.update();
}

}  // namespace chalk::ui::common
