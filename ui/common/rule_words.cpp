#include "ui/common/rule_words.h"

#include "ui/common/formats.h"
#include "ui/common/rule_sentences.h"

#include <QCoreApplication>
#include <QHash>
#include <QStringList>

#include <algorithm>
#include <variant>

namespace chalk::ui::common {

namespace {

using progression::Prescription;
using progression::Rule;

QString rulesText(const char* text)
{
    return QCoreApplication::translate("Rules", text);
}

QString sentenceOfStage(progression::Stage stage)
{
    if (stage == progression::Stage::Pattern) {
        return rulesText(QT_TRANSLATE_NOOP("Rules", "The unloaded movement comes first, done well."));
    }
    if (stage == progression::Stage::Control) {
        return rulesText(QT_TRANSLATE_NOOP("Rules", "The unloaded movement, with pauses at the top, the middle and the bottom."));
    }
    return rulesText(QT_TRANSLATE_NOOP("Rules", "Start light and find a load with plenty of reps left."));
}

using RuleValues = QHash<QString, QString>;

/// What the prescription and the policy fill in.
RuleValues valuesOf(const Prescription& next, const RuleFacts& facts)
{
    const auto amount = [&facts](base::Reps reps) { return amountText(reps, facts.measure, facts.policy); };
    const progression::Policy& policy = facts.policy;
    RuleValues values{{QStringLiteral("load"), loadText(next.load, facts.unit, facts.pieces, facts.isAddedToBody)},
            {QStringLiteral("reps"), targetText(next, facts.measure, policy)},
            {QStringLiteral("sets"), QString::number(next.sets.value())},
            {QStringLiteral("rest"), restText(next.rest)},
            {QStringLiteral("reserve"), QString::number(policy.reserve)},
            {QStringLiteral("hard"), amount(policy.hardReps)},
            {QStringLiteral("goal"), amount(policy.repGoal)},
            {QStringLiteral("floor"), amount(policy.repFloor)},
            {QStringLiteral("hold"), QString::number(policy.painHold)},
            {QStringLiteral("baseSets"), QString::number(policy.baseSets.value())},
            {QStringLiteral("capacityMin"), amount(policy.capacityMin)},
            {QStringLiteral("capacityMax"), amount(policy.capacityMax)}};
    if (next.lighterUntil) {
        values.insert(QStringLiteral("lighterUntil"), dayText(*next.lighterUntil));
    }
    return values;
}

/// What the record fills in; only what it really says.
void addRecord(RuleValues& values, const RuleFacts& facts)
{
    if (!facts.record) {
        return;
    }
    const auto amount = [&facts](int reps) { return amountText(base::Reps(std::max(0, reps)), facts.measure, facts.policy); };
    const progression::ExposureFacts& said = facts.record->facts;
    values.insert(QStringLiteral("date"), dayText(facts.record->date));
    values.insert(QStringLiteral("pain"), QString::number(facts.record->pain));
    if (said.counted > 0) {
        values.insert(QStringLiteral("counted"), QString::number(said.counted));
        values.insert(QStringLiteral("made"), amount(said.adjustedReps));
        values.insert(QStringLiteral("lastLoad"), loadText(said.workingLoad, facts.unit, facts.pieces, facts.isAddedToBody));
    }
    if (said.capacity) {
        values.insert(QStringLiteral("capacity"), amount(*said.capacity));
    }
    if (said.leastRir) {
        values.insert(QStringLiteral("leastRir"), QString::number(*said.leastRir));
    }
    if (said.longestRest) {
        values.insert(QStringLiteral("longestRest"), restText(base::Seconds(*said.longestRest)));
    }
    const int gap = facts.today ? *facts.today - facts.record->date : 0;
    if (gap >= facts.policy.layoffDays.front()) {
        values.insert(QStringLiteral("gap"), QString::number(gap));
    }
}

/// Nothing where a value is missing.
std::optional<QString> filledSentence(const QString& text, const RuleValues& values)
{
    QString filled;
    qsizetype from = 0;
    for (qsizetype open = text.indexOf(QLatin1Char('{')); open >= 0; open = text.indexOf(QLatin1Char('{'), from)) {
        const qsizetype close = text.indexOf(QLatin1Char('}'), open);
        const auto value = values.constFind(text.mid(open + 1, close - open - 1));
        if (value == values.constEnd()) {
            return std::nullopt;
        }
        filled += QStringView(text).mid(from, open - from);
        filled += *value;
        from = close + 1;
    }
    return filled + QStringView(text).mid(from);
}

}  // namespace

std::optional<DecidedRecord> decidedRecordOf(base::Date date, const progression::EventBody& body, lifts::Measure measure,
                                             const progression::Policy& policy)
{
    if (const auto* exposure = std::get_if<progression::Exposure>(&body)) {
        return DecidedRecord{date, exposure->pain, progression::factsOf(*exposure, measure, policy)};
    }
    if (const auto* rehearsal = std::get_if<progression::Rehearsal>(&body)) {
        return DecidedRecord{date, rehearsal->pain, {}};
    }
    return std::nullopt;
}

QString sentenceFor(Rule rule, const Prescription& next, const RuleFacts& facts)
{
    RuleValues values = valuesOf(next, facts);
    addRecord(values, facts);
    for (const RuleSentence& sentence : ruleSentences()) {
        if (sentence.rule != rule) {
            continue;
        }
        if (sentence.withRecord != nullptr) {
            if (const auto filled = filledSentence(rulesText(sentence.withRecord), values)) {
                return *filled;
            }
        }
        return filledSentence(rulesText(sentence.text), values).value_or(QString());
    }
    return {};
}

QString whyOf(const progression::RuleList& decided, const Prescription& next, const RuleFacts& facts)
{
    QStringList sentences;
    for (const Rule rule : next.rules.isEmpty() ? decided : next.rules) {
        sentences.append(sentenceFor(rule, next, facts));
    }
    return sentences.isEmpty() ? sentenceOfStage(next.stage) : sentences.join(QLatin1Char(' '));
}

}  // namespace chalk::ui::common
