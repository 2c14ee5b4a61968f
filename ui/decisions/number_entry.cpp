#include "ui/decisions/number_entry.h"

#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace chalk::ui::decisions {

namespace {

QString numberWords(const char* text)
{
    return QCoreApplication::translate("NumberEntry", text);
}

}  // namespace

std::optional<base::Load> loadOf(const QString& text)
{
    static const QRegularExpression pattern(QStringLiteral("^\\s*([-\u2212]?)(\\d{1,4})(?:[.,](\\d{1,2}))?\\s*$"));
    const QRegularExpressionMatch match = pattern.match(text);
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    const int whole = match.captured(2).toInt();
    const int part = match.captured(3).leftJustified(2, QLatin1Char('0')).toInt();
    const int centi = whole * 100 + part;
    if (centi > lifts::kMaxLoadCenti) {
        return std::nullopt;
    }
    return base::Load::fromCenti(match.captured(1).isEmpty() ? centi : -centi);
}

std::optional<int> wholeNumberOf(const QString& text, int least, int most)
{
    static const QRegularExpression pattern(QStringLiteral("^\\s*(\\d{1,4})\\s*$"));
    const QRegularExpressionMatch match = pattern.match(text);
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    const int number = match.captured(1).toInt();
    return number >= least && number <= most ? std::optional(number) : std::nullopt;
}

std::optional<base::Seconds> restOf(const QString& text)
{
    static const QRegularExpression pattern(QStringLiteral("^\\s*(?:(\\d{1,2}):([0-5]\\d)|(\\d{1,4}))\\s*$"));
    const QRegularExpressionMatch match = pattern.match(text);
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    const int seconds =
        match.captured(3).isEmpty() ? match.captured(1).toInt() * 60 + match.captured(2).toInt() : match.captured(3).toInt();
    return seconds <= 3600 ? std::optional(base::Seconds(seconds)) : std::nullopt;
}

QString nearestLoadsText(const lifts::LoadTable& loads, base::Load wanted, base::MassUnit unit)
{
    const auto below = loads.nextBelow(wanted);
    const auto above = loads.nextAbove(wanted);
    const QString unitName = common::unitText(unit);
    if (below && above) {
        return numberWords("This equipment gives %1 or %2 %3.").arg(common::numberText(*below), common::numberText(*above), unitName);
    }
    if (below) {
        return numberWords("This equipment gives no more than %1 %2.").arg(common::numberText(*below), unitName);
    }
    return numberWords("This equipment gives no less than %1 %2.").arg(common::numberText(loads.lightest()), unitName);
}

}  // namespace chalk::ui::decisions
