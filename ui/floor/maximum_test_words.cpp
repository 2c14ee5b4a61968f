#include "ui/floor/maximum_test_words.h"

#include "ui/common/direction_words.h"
#include "ui/common/formats.h"

#include <QCoreApplication>

namespace chalk::ui::floor {

namespace {

using chalk::direction::NoTest;
using chalk::direction::TestEnd;
using chalk::direction::TestSet;
using chalk::direction::TestStep;

QString testWords(const char* text)
{
    return QCoreApplication::translate("MaximumTest", text);
}

QString repsCounted(int reps)
{
    return reps == 1 ? testWords(QT_TRANSLATE_NOOP("MaximumTest", "1 rep")) : testWords(QT_TRANSLATE_NOOP("MaximumTest", "%1 reps")).arg(reps);
}

QString liftNameOf(const TestedLift& lift)
{
    return common::qstring(lift.exercise.name);
}

}  // namespace

QString testLoadText(const TestedLift& lift, base::Load load)
{
    const progression::Kit& kit = lift.machine.kit();
    return common::loadText(load, lift.machine.setup().unit, kit.pieces, std::holds_alternative<lifts::BodyAdded>(kit.equipment));
}

QStringList testChecks(const TestedLift& lift)
{
    QStringList checks = common::testCautions();
    if (lift.reason == NoTest::Caution) {
        checks.append(testWords(QT_TRANSLATE_NOOP("MaximumTest", "Whoever treats the client agrees to heavy sets.")));
    }
    return checks;
}

QString noTestAtAllText(const TestedLift& lift)
{
    if (!canTestReps(lift.reason)) {
        return common::noTestText(*lift.reason) + QLatin1Char(' ') + testWords(QT_TRANSLATE_NOOP("MaximumTest", "Nothing is tested until then."));
    }
    const bool isCounted = lift.machine.kit().measure == lifts::Measure::Reps;
    return isCounted && lift.single > base::Load() ? QString()
                                                   : testWords(QT_TRANSLATE_NOOP("MaximumTest", "This lift is not counted in repetitions with a load, so there is nothing to test."));
}

QString noSingleText(const TestedLift& lift)
{
    if (!lift.reason || !canTestReps(lift.reason)) {
        return {};
    }
    return testWords(QT_TRANSLATE_NOOP("MaximumTest", "No single: %1")).arg(common::noTestText(*lift.reason));
}

QString testStepText(const MaximumTestRun& run)
{
    const auto next = run.next();
    if (!next) {
        return testWords(QT_TRANSLATE_NOOP("MaximumTest", "Over"));
    }
    switch (next->step) {
    case TestStep::WarmUp:
        return testWords(QT_TRANSLATE_NOOP("MaximumTest", "Warm-up"));
    case TestStep::Ramp:
        return testWords(QT_TRANSLATE_NOOP("MaximumTest", "Ramp"));
    case TestStep::NearMaximum:
        return testWords(QT_TRANSLATE_NOOP("MaximumTest", "Near the maximum"));
    case TestStep::Attempt:
    case TestStep::Over:
        break;
    }
    if (run.kind() == TestKind::Reps) {
        return testWords(QT_TRANSLATE_NOOP("MaximumTest", "Set %1 of %2 at most"))
            .arg(chalk::direction::RepsTest::kMostSets - run.attemptsLeft() + 1)
            .arg(chalk::direction::RepsTest::kMostSets);
    }
    return testWords(QT_TRANSLATE_NOOP("MaximumTest", "Attempt %1 of %2 at most"))
        .arg(chalk::direction::MaximumTest::kMostAttempts - run.attemptsLeft() + 1)
        .arg(chalk::direction::MaximumTest::kMostAttempts);
}

QString testRepsText(const TestSet& set)
{
    return set.repsLeast == set.repsMost ? repsCounted(set.repsLeast.value())
                                         : testWords(QT_TRANSLATE_NOOP("MaximumTest", "%1–%2 reps")).arg(set.repsLeast.value()).arg(set.repsMost.value());
}

QString testHowText(const MaximumTestRun& run)
{
    const auto next = run.next();
    if (!next) {
        return {};
    }
    if (next->step != TestStep::Attempt) {
        return testWords(QT_TRANSLATE_NOOP("MaximumTest", "All of them in control. Another load than asked for can be chosen."));
    }
    return run.kind() == TestKind::Single
               ? testWords(QT_TRANSLATE_NOOP("MaximumTest", "One repetition, in control from top to top. It counts as missed where a spotter helps."))
               : testWords(QT_TRANSLATE_NOOP("MaximumTest", "As many as stay in control, five at most. Say how many were made."));
}

QString testStandText(const TestedLift& lift, const MaximumTestRun& run)
{
    const auto best = run.best();
    const QString made = !best                            ? testWords(QT_TRANSLATE_NOOP("MaximumTest", "Nothing tested yet."))
                         : run.kind() == TestKind::Single ? testWords(QT_TRANSLATE_NOOP("MaximumTest", "Best so far %1.")).arg(testLoadText(lift, best->load))
                                                          : testWords(QT_TRANSLATE_NOOP("MaximumTest", "Best so far %1 × %2."))
                                                                .arg(testLoadText(lift, best->load))
                                                                .arg(best->reps.value());
    const char* left = run.kind() == TestKind::Single ? QT_TRANSLATE_NOOP("MaximumTest", "Attempts left: %1.") : QT_TRANSLATE_NOOP("MaximumTest", "Sets left: %1.");
    return made + QLatin1Char(' ') + testWords(left).arg(run.attemptsLeft());
}

QString testRestText(const TestSet& set)
{
    if (set.restMost == base::Seconds(0)) {
        return {};
    }
    return set.restLeast == set.restMost
               ? testWords(QT_TRANSLATE_NOOP("MaximumTest", "Rest %1 before it.")).arg(common::restText(set.restLeast))
               : testWords(QT_TRANSLATE_NOOP("MaximumTest", "Rest %1 to %2 before it.")).arg(common::restText(set.restLeast), common::restText(set.restMost));
}

std::optional<common::PlateStackView> testPlatesOf(const TestedLift& lift, base::Load load)
{
    const auto* barbell = std::get_if<lifts::Barbell>(&lift.machine.kit().equipment);
    auto plates = barbell == nullptr ? std::nullopt : lifts::platesPerSide(*barbell, load);
    if (!plates) {
        return std::nullopt;
    }
    common::PlateStackView view;
    view.plates = *std::move(plates);
    view.unit = lift.machine.setup().unit;
    return view;
}

QString testSetUpText(const TestedLift& lift, base::Load load)
{
    const auto* barbell = std::get_if<lifts::Barbell>(&lift.machine.kit().equipment);
    if (barbell == nullptr) {
        return {};
    }
    const QString bar = common::loadText(barbell->bar, lift.machine.setup().unit);
    return load == barbell->bar ? testWords(QT_TRANSLATE_NOOP("MaximumTest", "the bare %1 bar")).arg(bar)
                                : testWords(QT_TRANSLATE_NOOP("MaximumTest", "each side of a %1 bar")).arg(bar);
}

QString testResultText(const TestedLift& lift, const MaximumTestRun& run)
{
    const auto best = run.best();
    return best ? testWords(QT_TRANSLATE_NOOP("MaximumTest", "%1: %2, %3")).arg(liftNameOf(lift), testLoadText(lift, best->load), repsCounted(best->reps.value()))
                : testWords(QT_TRANSLATE_NOOP("MaximumTest", "%1: nothing found")).arg(liftNameOf(lift));
}

QString testEndingText(const TestedLift& lift, const MaximumTestRun& run)
{
    const TestEnd end = run.end().value_or(TestEnd::Stopped);
    const bool isThreeSets = run.kind() == TestKind::Reps && end == TestEnd::TooMany;
    QStringList sentences{isThreeSets ? testWords(QT_TRANSLATE_NOOP("MaximumTest", "Three sets are enough for a day.")) : common::testEndText(end)};
    if (end == TestEnd::Pain) {
        sentences.append(testWords(QT_TRANSLATE_NOOP("MaximumTest", "It is kept with the sets. Pain that stays is for a doctor or physiotherapist to judge.")));
    }
    sentences.append(lift.isPlanTest ? testWords(QT_TRANSLATE_NOOP("MaximumTest", "The attempts are the work of the plan’s test week."))
                                     : testWords(QT_TRANSLATE_NOOP("MaximumTest", "The sets are kept as warm-up sets, so the lift is not judged by them.")));
    return sentences.join(QLatin1Char(' '));
}

QString testKeptWords(const TestedLift& lift, const MaximumTestRun& run)
{
    const QString client = common::qstring(lift.clientName).section(QLatin1Char(' '), 0, 0);
    const auto best = run.best();
    return best ? testWords(QT_TRANSLATE_NOOP("MaximumTest", "%1 tested for %2: %3 × %4"))
                      .arg(liftNameOf(lift), client, testLoadText(lift, best->load), QString::number(best->reps.value()))
                : testWords(QT_TRANSLATE_NOOP("MaximumTest", "%1: sets of a test kept for %2")).arg(liftNameOf(lift), client);
}

}  // namespace chalk::ui::floor
