#include "ui/shell/typed_result.h"

#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

#include <algorithm>

namespace chalk::ui::shell {

namespace {

QString resultWords(const char* text)
{
    return QCoreApplication::translate("TypedResult", text);
}

/// `60x8x5` as the entry line has it: `5x8 @60`.
QString lineFrom(QString typed)
{
    static const QRegularExpression triple(QStringLiteral("(?<=^|\\s)(\\d+(?:[.,]\\d{1,2})?)[xX×](\\d+)[xX×](\\d+)(?=$|\\s)"));
    return typed.replace(triple, QStringLiteral("\\3x\\2 @\\1"));
}

QString amountsText(const std::vector<int>& amounts)
{
    const bool isAlike = std::all_of(amounts.begin(), amounts.end(), [&amounts](int amount) { return amount == amounts.front(); });
    if (isAlike && amounts.size() > 1) {
        return QStringLiteral("%1 × %2").arg(amounts.size()).arg(amounts.front());
    }
    QStringList all;
    for (const int amount : amounts) {
        all.append(QString::number(amount));
    }
    return all.join(QLatin1String(", "));
}

QString feltText(progression::Steadiness felt)
{
    switch (felt) {
    case progression::Steadiness::Steady:
        return resultWords(QT_TRANSLATE_NOOP("TypedResult", "steady"));
    case progression::Steadiness::Shaky:
        return resultWords(QT_TRANSLATE_NOOP("TypedResult", "shaky"));
    case progression::Steadiness::Lost:
        return resultWords(QT_TRANSLATE_NOOP("TypedResult", "a set lost"));
    }
    return {};
}

QString verdictText(progression::Verdict verdict)
{
    switch (verdict) {
    case progression::Verdict::Met:
        return resultWords(QT_TRANSLATE_NOOP("TypedResult", "met"));
    case progression::Verdict::Partly:
        return resultWords(QT_TRANSLATE_NOOP("TypedResult", "partly met"));
    case progression::Verdict::NotMet:
        return resultWords(QT_TRANSLATE_NOOP("TypedResult", "not met"));
    }
    return {};
}

}  // namespace

std::optional<TypedResult> typedResultOf(const QString& query)
{
    static const QRegularExpression begin(QStringLiteral("(?:^|\\s)(?=@?\\d|(?:met|partly|not)(?:\\s|$))"));
    const QString typed = query.trimmed();
    const qsizetype at = typed.indexOf(begin);
    if (at <= 0) {  // nowhere, or from the first word on
        return std::nullopt;
    }
    TypedResult result;
    result.who = typed.left(at).simplified();
    result.line = lineFrom(typed.mid(at + 1).trimmed());
    result.entry = sessions::parseEntryLine(result.line.toStdString());
    return result;
}

QString resultText(const sessions::EntryLine& entry, base::MassUnit unit)
{
    QString text = entry.amounts.empty() ? QString() : amountsText(entry.amounts);
    if (entry.load) {
        const QString load = common::loadText(*entry.load, unit);
        text = text.isEmpty() ? load : resultWords(QT_TRANSLATE_NOOP("TypedResult", "%1 at %2")).arg(text, load);
    }
    QStringList said{text};
    if (entry.verdict) {
        said.append(verdictText(*entry.verdict));
    }
    if (entry.rir) {
        said.append(resultWords(QT_TRANSLATE_NOOP("TypedResult", "%1 left")).arg(*entry.rir));
    }
    if (entry.restSeconds) {
        said.append(resultWords(QT_TRANSLATE_NOOP("TypedResult", "rest %1")).arg(common::restText(base::Seconds(*entry.restSeconds))));
    }
    if (entry.felt) {
        said.append(feltText(*entry.felt));
    }
    if (entry.pain) {
        said.append(resultWords(QT_TRANSLATE_NOOP("TypedResult", "pain %1 of 10")).arg(*entry.pain));
    }
    said.removeAll(QString());
    return said.join(QLatin1String(", "));
}

QString unknownWordOf(const TypedResult& result)
{
    const std::string line = result.line.toStdString();
    for (const sessions::EntryToken& token : result.entry.tokens) {
        if (token.part == sessions::EntryPart::Unknown) {
            return QString::fromStdString(line.substr(token.begin, token.length));
        }
    }
    return {};
}

}  // namespace chalk::ui::shell
