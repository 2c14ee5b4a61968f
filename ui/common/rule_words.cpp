#include "ui/common/rule_words.h"

#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QStringList>

namespace chalk::ui::common {

namespace {

using progression::Prescription;
using progression::Rule;

/// One rule in words: {load}, {reps}, {sets}, {rest}, {reserve}, {hard}, {goal}, {floor}, {hold} are filled in.
struct RuleSentence {
    Rule rule;
    const char* text;
};

// Reads beside the specification of the rules. QT_TRANSLATE_NOOP marks each sentence for translation.
constexpr RuleSentence kSentences[] = {
    {Rule::P1, QT_TRANSLATE_NOOP("Rules", "Pain reached {hold} of 10, so the lift is on hold until the coach releases it.")},
    {Rule::P2, QT_TRANSLATE_NOOP("Rules", "There was some pain, so nothing moves.")},
    {Rule::P3, QT_TRANSLATE_NOOP("Rules", "The lift is on hold, so this was only kept.")},
    {Rule::P4, QT_TRANSLATE_NOOP("Rules", "The coach released the lift.")},
    {Rule::P5, QT_TRANSLATE_NOOP("Rules", "The lift was not on hold, so nothing changes.")},
    {Rule::V1, QT_TRANSLATE_NOOP("Rules", "No working set was done, so nothing changes.")},
    {Rule::K1, QT_TRANSLATE_NOOP("Rules", "Every pause was held and steady, so load may follow.")},
    {Rule::K2, QT_TRANSLATE_NOOP("Rules", "Not every pause was held, steady and free of pain, so the pauses stay.")},
    {Rule::K3, QT_TRANSLATE_NOOP("Rules", "The unloaded movement comes first, so the loaded work was only kept.")},
    {Rule::C1, QT_TRANSLATE_NOOP("Rules", "A set lost its form, so the same again with a pause at the bottom of each rep.")},
    {Rule::C2, QT_TRANSLATE_NOOP("Rules", "Form was lost twice running, so back to Control until it is steady.")},
    {Rule::C3, QT_TRANSLATE_NOOP("Rules", "A set was shaky, so nothing moves.")},
    {Rule::U1, QT_TRANSLATE_NOOP("Rules", "Every point of the movement is met.")},
    {Rule::U2, QT_TRANSLATE_NOOP("Rules", "Not every point of the movement is met free of pain, so it is rehearsed again.")},
    {Rule::U3, QT_TRANSLATE_NOOP("Rules", "The lift carries load already, so the rehearsal was only kept.")},
    {Rule::B1, QT_TRANSLATE_NOOP("Rules", "No reps in reserve were noted, so the same load again: ask how many were left.")},
    {Rule::B2, QT_TRANSLATE_NOOP("Rules", "There were many reps left, so {load} should be about right.")},
    {Rule::B3, QT_TRANSLATE_NOOP("Rules", "There were few reps left, so {load} should be about right.")},
    {Rule::B4, QT_TRANSLATE_NOOP("Rules", "It was too heavy and nothing lighter is on hand: look for a lighter option.")},
    {Rule::B5, QT_TRANSLATE_NOOP("Rules", "The first load is found, so load starts to build.")},
    {Rule::B6, QT_TRANSLATE_NOOP("Rules", "The load fits, but the sets were not full, so the same again with {sets} full sets.")},
    {Rule::B7, QT_TRANSLATE_NOOP("Rules", "The load fits, but a set went too close to the limit: stop with {reserve} left.")},
    {Rule::A2, QT_TRANSLATE_NOOP("Rules", "The session was cut short, so the same again.")},
    {Rule::L1, QT_TRANSLATE_NOOP("Rules", "Every set had more than {hard} in it, so the load goes up to {load}.")},
    {Rule::L2, QT_TRANSLATE_NOOP("Rules", "It is hard at {floor} to {hard} now, so the load stays and the reps build.")},
    {Rule::L3, QT_TRANSLATE_NOOP("Rules", "A set fell short of {floor}, so the same load again.")},
    {Rule::L4, QT_TRANSLATE_NOOP("Rules", "The load was missed again, so the reps build at {load}, the last load that was made.")},
    {Rule::L5, QT_TRANSLATE_NOOP("Rules", "The load was missed again, so it backs off to {load}.")},
    {Rule::L6, QT_TRANSLATE_NOOP("Rules", "The next load is a big jump, so {reps} first at this one.")},
    {Rule::L7, QT_TRANSLATE_NOOP("Rules", "The reps for the big jump are there, so the load goes up to {load}.")},
    {Rule::L8, QT_TRANSLATE_NOOP("Rules", "Nothing heavier is on hand, so the reps build.")},
    {Rule::R1, QT_TRANSLATE_NOOP("Rules", "Every set reached {goal}, so sets are added.")},
    {Rule::R2, QT_TRANSLATE_NOOP("Rules", "Every set beat the best so far, so the target is {reps}. Load, sets and rest stay.")},
    {Rule::R3, QT_TRANSLATE_NOOP("Rules", "A set fell short of the target, so nothing moves.")},
    {Rule::R4, QT_TRANSLATE_NOOP("Rules", "The reps have stopped rising, so the plan moves on at {load}.")},
    {Rule::R5, QT_TRANSLATE_NOOP("Rules", "The load was lighter than planned, so it does not count as made.")},
    {Rule::S1, QT_TRANSLATE_NOOP("Rules", "All {sets} sets were made, so the rests get shorter.")},
    {Rule::S2, QT_TRANSLATE_NOOP("Rules", "All sets were made, so one is added.")},
    {Rule::S3, QT_TRANSLATE_NOOP("Rules", "Not all sets were made, so the same again.")},
    {Rule::S4, QT_TRANSLATE_NOOP("Rules", "The sets have stopped rising, so the plan moves on with {sets} at {load}.")},
    {Rule::T1, QT_TRANSLATE_NOOP("Rules", "The shortest rest was made, so round again from {load}.")},
    {Rule::T2, QT_TRANSLATE_NOOP("Rules", "All sets were made in the rest given, so the next rest is {rest}.")},
    {Rule::T3, QT_TRANSLATE_NOOP("Rules", "Not all sets were made in the rest given, so the same again.")},
    {Rule::T4, QT_TRANSLATE_NOOP("Rules", "The shortest rest that works is found, so round again from {load}.")},
    {Rule::G1, QT_TRANSLATE_NOOP("Rules", "It has been two weeks or more, so the load steps back.")},
    {Rule::G2, QT_TRANSLATE_NOOP("Rules", "It has been four weeks or more, so Control comes first and the load steps back.")},
    {Rule::G3, QT_TRANSLATE_NOOP("Rules", "It has been eight weeks or more, so a first load is found again after a new screen.")},
    {Rule::O1, QT_TRANSLATE_NOOP("Rules", "The coach set these numbers.")},
    {Rule::X1, QT_TRANSLATE_NOOP("Rules", "The exercise was swapped.")},
};

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

}  // namespace

QString sentenceFor(Rule rule, const Prescription& next, const RuleFacts& facts)
{
    const auto amount = [&facts](base::Reps reps) { return amountText(reps, facts.measure, facts.policy); };
    for (const RuleSentence& sentence : kSentences) {
        if (sentence.rule != rule) {
            continue;
        }
        return rulesText(sentence.text)
            .replace(QStringLiteral("{load}"), loadText(next.load, facts.unit, facts.pieces, facts.isAddedToBody))
            .replace(QStringLiteral("{reps}"), targetText(next, facts.measure, facts.policy))
            .replace(QStringLiteral("{sets}"), QString::number(next.sets.value()))
            .replace(QStringLiteral("{rest}"), restText(next.rest))
            .replace(QStringLiteral("{reserve}"), QString::number(facts.policy.reserve))
            .replace(QStringLiteral("{hard}"), amount(facts.policy.hardReps))
            .replace(QStringLiteral("{goal}"), amount(facts.policy.repGoal))
            .replace(QStringLiteral("{floor}"), amount(facts.policy.repFloor))
            .replace(QStringLiteral("{hold}"), QString::number(facts.policy.painHold));
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
