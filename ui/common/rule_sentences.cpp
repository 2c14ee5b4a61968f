#include "ui/common/rule_sentences.h"

#include <QCoreApplication>

namespace chalk::ui::common {

namespace {

using progression::Rule;

// Reads beside the specification of the rules. QT_TRANSLATE_NOOP marks each sentence for translation.
// clang-format off
constexpr RuleSentence kSentences[] = {
    {Rule::P1, QT_TRANSLATE_NOOP("Rules", "Pain reached {hold} of 10, so the lift is on hold until the coach releases it."),
     QT_TRANSLATE_NOOP("Rules", "Pain was {pain} of 10 on {date}, so the lift is on hold until the coach releases it.")},
    {Rule::P2, QT_TRANSLATE_NOOP("Rules", "There was some pain, so nothing moves."),
     QT_TRANSLATE_NOOP("Rules", "There was pain of {pain} of 10 on {date}, so nothing moves.")},
    {Rule::P3, QT_TRANSLATE_NOOP("Rules", "The lift is on hold, so this was only kept."),
     nullptr},
    {Rule::P4, QT_TRANSLATE_NOOP("Rules", "The coach released the lift."),
     nullptr},
    {Rule::P5, QT_TRANSLATE_NOOP("Rules", "The lift was not on hold, so nothing changes."),
     nullptr},
    {Rule::V1, QT_TRANSLATE_NOOP("Rules", "No working set was done, so nothing changes."),
     nullptr},
    {Rule::K1, QT_TRANSLATE_NOOP("Rules", "Every pause was held and steady, so load may follow."),
     nullptr},
    {Rule::K2, QT_TRANSLATE_NOOP("Rules", "Not every pause was held, steady and free of pain, so the pauses stay."),
     nullptr},
    {Rule::K3, QT_TRANSLATE_NOOP("Rules", "The unloaded movement comes first, so the loaded work was only kept."),
     nullptr},
    {Rule::C1, QT_TRANSLATE_NOOP("Rules", "A set lost its form, so the same again with a pause at the bottom of each rep."),
     QT_TRANSLATE_NOOP("Rules", "A set lost its form on {date}, so the same again with a pause at the bottom of each rep.")},
    {Rule::C2, QT_TRANSLATE_NOOP("Rules", "Form was lost twice running, so back to Control until it is steady."),
     QT_TRANSLATE_NOOP("Rules", "Form was lost again on {date}, so back to Control until it is steady.")},
    {Rule::C3, QT_TRANSLATE_NOOP("Rules", "A set was shaky, so nothing moves."),
     QT_TRANSLATE_NOOP("Rules", "A set was shaky on {date}, so nothing moves.")},
    {Rule::U1, QT_TRANSLATE_NOOP("Rules", "Every point of the movement is met."),
     nullptr},
    {Rule::U2, QT_TRANSLATE_NOOP("Rules", "Not every point of the movement is met free of pain, so it is rehearsed again."),
     nullptr},
    {Rule::U3, QT_TRANSLATE_NOOP("Rules", "The lift carries load already, so the rehearsal was only kept."),
     nullptr},
    {Rule::B1, QT_TRANSLATE_NOOP("Rules", "No reps in reserve were noted, so the same load again: ask how many were left."),
     nullptr},
    {Rule::B2, QT_TRANSLATE_NOOP("Rules", "There were many reps left, so {load} should be about right."),
     QT_TRANSLATE_NOOP("Rules", "The hardest set had {capacity} in it, more than {capacityMax}, so {load} should be about right.")},
    {Rule::B3, QT_TRANSLATE_NOOP("Rules", "There were few reps left, so {load} should be about right."),
     QT_TRANSLATE_NOOP("Rules", "The hardest set had {capacity} in it, fewer than {capacityMin}, so {load} should be about right.")},
    {Rule::B4, QT_TRANSLATE_NOOP("Rules", "It was too heavy and nothing lighter is on hand: look for a lighter option."),
     QT_TRANSLATE_NOOP("Rules", "The hardest set had {capacity} in it, fewer than {capacityMin}, and nothing lighter is on hand: look for a lighter option.")},
    {Rule::B5, QT_TRANSLATE_NOOP("Rules", "The first load is found, so load starts to build."),
     QT_TRANSLATE_NOOP("Rules", "The hardest set had {capacity} in it, so the first load is found and load starts to build.")},
    {Rule::B6, QT_TRANSLATE_NOOP("Rules", "The load fits, but the sets were not full, so the same again with {sets} full sets."),
     nullptr},
    {Rule::B7, QT_TRANSLATE_NOOP("Rules", "The load fits, but a set went too close to the limit: stop with {reserve} left."),
     QT_TRANSLATE_NOOP("Rules", "The load fits, but a set stopped with {leastRir} left: stop with {reserve} left.")},
    {Rule::A2, QT_TRANSLATE_NOOP("Rules", "The session was cut short, so the same again."),
     QT_TRANSLATE_NOOP("Rules", "Sets at {lastLoad}: {counted} of at least {baseSets}, so the same again.")},
    {Rule::L1, QT_TRANSLATE_NOOP("Rules", "Every set had more than {hard} in it, so the load goes up to {load}."),
     QT_TRANSLATE_NOOP("Rules", "Every set at {lastLoad} had {made} or more in it with {reserve} left, so the load goes up to {load}.")},
    {Rule::L2, QT_TRANSLATE_NOOP("Rules", "It is hard at {floor} to {hard} now, so the load stays and the reps build."),
     QT_TRANSLATE_NOOP("Rules", "At {lastLoad} the hardest set had {made} in it with {reserve} left, so the load stays and the reps build.")},
    {Rule::L3, QT_TRANSLATE_NOOP("Rules", "A set fell short of {floor}, so the same load again."),
     QT_TRANSLATE_NOOP("Rules", "A set at {lastLoad} had {made} in it with {reserve} left, short of {floor}, so the same load again.")},
    {Rule::L4, QT_TRANSLATE_NOOP("Rules", "The load was missed again, so the reps build at {load}, the last load that was made."),
     QT_TRANSLATE_NOOP("Rules", "A set at {lastLoad} had {made} in it, short of {floor} again, so the reps build at {load}, the last load that was made.")},
    {Rule::L5, QT_TRANSLATE_NOOP("Rules", "The load was missed again, so it backs off to {load}."),
     QT_TRANSLATE_NOOP("Rules", "A set at {lastLoad} had {made} in it, short of {floor} again, so the load backs off to {load}.")},
    {Rule::L6, QT_TRANSLATE_NOOP("Rules", "The next load is a big jump, so {reps} first at this one."),
     nullptr},
    {Rule::L7, QT_TRANSLATE_NOOP("Rules", "The reps for the big jump are there, so the load goes up to {load}."),
     nullptr},
    {Rule::L8, QT_TRANSLATE_NOOP("Rules", "Nothing heavier is on hand, so the reps build."),
     nullptr},
    {Rule::R1, QT_TRANSLATE_NOOP("Rules", "Every set reached {goal}, so sets are added."),
     QT_TRANSLATE_NOOP("Rules", "Every set at {lastLoad} reached {goal} with {reserve} left, so sets are added.")},
    {Rule::R2, QT_TRANSLATE_NOOP("Rules", "Every set beat the best so far, so the target is {reps}. Load, sets and rest stay."),
     QT_TRANSLATE_NOOP("Rules", "Every set had {made} or more in it with {reserve} left, the best so far, so the target is {reps}. Load, sets and rest stay.")},
    {Rule::R3, QT_TRANSLATE_NOOP("Rules", "A set fell short of the target, so nothing moves."),
     QT_TRANSLATE_NOOP("Rules", "The hardest set had {made} in it with {reserve} left, no more than before, so nothing moves.")},
    {Rule::R4, QT_TRANSLATE_NOOP("Rules", "The reps have stopped rising, so the plan moves on at {load}."),
     nullptr},
    {Rule::R5, QT_TRANSLATE_NOOP("Rules", "The load was lighter than planned, so it does not count as made."),
     QT_TRANSLATE_NOOP("Rules", "The load was {lastLoad}, lighter than planned, so it does not count as made.")},
    {Rule::S1, QT_TRANSLATE_NOOP("Rules", "All {sets} sets were made, so the rests get shorter."),
     nullptr},
    {Rule::S2, QT_TRANSLATE_NOOP("Rules", "All sets were made, so one is added, which makes {sets}."),
     nullptr},
    {Rule::S3, QT_TRANSLATE_NOOP("Rules", "Not all sets were made, so the same again."),
     QT_TRANSLATE_NOOP("Rules", "Not all sets were made on {date}, so the same again.")},
    {Rule::S4, QT_TRANSLATE_NOOP("Rules", "The sets have stopped rising, so the plan moves on with {sets} at {load}."),
     nullptr},
    {Rule::T1, QT_TRANSLATE_NOOP("Rules", "The shortest rest was made, so round again from {load}."),
     nullptr},
    {Rule::T2, QT_TRANSLATE_NOOP("Rules", "All sets were made in the rest given, so the next rest is {rest}."),
     QT_TRANSLATE_NOOP("Rules", "All sets were made with at most {longestRest} of rest, so the next rest is {rest}.")},
    {Rule::T3, QT_TRANSLATE_NOOP("Rules", "Not all sets were made in the rest given, so the same again."),
     QT_TRANSLATE_NOOP("Rules", "Not all sets were made in the rest given on {date}, so the same again.")},
    {Rule::T4, QT_TRANSLATE_NOOP("Rules", "The shortest rest that works is found, so round again from {load}."),
     nullptr},
    {Rule::G1, QT_TRANSLATE_NOOP("Rules", "It has been two weeks or more, so the load steps back."),
     QT_TRANSLATE_NOOP("Rules", "The last session was on {date}, {gap} days ago, so the load steps back to {load}.")},
    {Rule::G2, QT_TRANSLATE_NOOP("Rules", "It has been four weeks or more, so Control comes first and the load steps back."),
     QT_TRANSLATE_NOOP("Rules", "The last session was on {date}, {gap} days ago, so Control comes first and the load steps back.")},
    {Rule::G3, QT_TRANSLATE_NOOP("Rules", "It has been eight weeks or more, so a first load is found again after a new screen."),
     QT_TRANSLATE_NOOP("Rules", "The last session was on {date}, {gap} days ago, so a first load is found again after a new screen.")},
    {Rule::O1, QT_TRANSLATE_NOOP("Rules", "The coach set these numbers."),
     nullptr},
    {Rule::X1, QT_TRANSLATE_NOOP("Rules", "The exercise was swapped."),
     nullptr},
};
// clang-format on

}  // namespace

std::span<const RuleSentence> ruleSentences()
{
    return kSentences;
}

}  // namespace chalk::ui::common
