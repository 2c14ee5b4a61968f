#include "ui/onboarding/start_words.h"

#include "ui/common/formats.h"

#include <QCoreApplication>

namespace chalk::ui::onboarding {

namespace {

using progression::PatternStart;
using progression::StartState;

QString startText(const char* text)
{
    return QCoreApplication::translate("Start", text);
}

QString lowerPattern(lifts::Pattern pattern)
{
    return common::patternName(pattern).toLower();
}

QString pointsText(const PatternStart& start)
{
    const int all = static_cast<int>(screens::kPointsPerPattern);
    QStringList parts{startText(QT_TRANSLATE_NOOP("Start", "%1 of %2 points met")).arg(start.met).arg(all)};
    if (start.partly > 0) {
        parts.append(startText(QT_TRANSLATE_NOOP("Start", "%1 partly")).arg(start.partly));
    }
    if (start.notMet > 0) {
        parts.append(startText(QT_TRANSLATE_NOOP("Start", "%1 not met")).arg(start.notMet));
    }
    return parts.join(QStringLiteral(", ")) + QLatin1Char('.');
}

QString pausesText(const PatternStart& start, const screens::PatternGuide& guide)
{
    QStringList names;
    for (const screens::PauseDepth depth : start.pausesInTheWay) {
        names.append(common::qstring(guide.depths[static_cast<std::size_t>(depth)].name).toLower());
    }
    return names.isEmpty() ? QString() : startText(QT_TRANSLATE_NOOP("Start", "Not held at %1, so no load yet.")).arg(names.join(QStringLiteral(", ")));
}

}  // namespace

QString startHeadline(const PatternStart& start)
{
    switch (start.state) {
    case StartState::NotScreened:
        return startText(QT_TRANSLATE_NOOP("Start", "The %1 is not screened yet.")).arg(lowerPattern(start.pattern));
    case StartState::OnHold:
        return startText(QT_TRANSLATE_NOOP("Start", "The %1 is on hold.")).arg(lowerPattern(start.pattern));
    case StartState::Starts:
        return startText(QT_TRANSLATE_NOOP("Start", "Start the %1 at %2.")).arg(lowerPattern(start.pattern), common::stageName(start.stage));
    }
    return {};
}

QString startReason(const PatternStart& start, const screens::PatternGuide& guide)
{
    if (start.state == StartState::NotScreened) {
        return startText(QT_TRANSLATE_NOOP("Start", "Mark the six points, then the pauses."));
    }
    if (start.state == StartState::OnHold) {
        return start.isPainAtHoldLimit
                   ? startText(QT_TRANSLATE_NOOP("Start", "Pain was named: no starting stage. Only a release or a new screen without pain ends the hold. Pain that stays is for a licensed professional."))
                   : startText(QT_TRANSLATE_NOOP("Start", "Pain was named: no starting stage before it is looked at again."));
    }
    QStringList sentences{pointsText(start)};
    if (!start.pointsInTheWay.empty() || start.met < static_cast<int>(screens::kPointsPerPattern)) {
        sentences.append(startText(QT_TRANSLATE_NOOP("Start", "Every point has to be met before the pauses count.")));
    } else {
        sentences.append(pausesText(start, guide));
    }
    if (start.areRepsInTheWay) {
        sentences.append(startText(QT_TRANSLATE_NOOP("Start", "Fewer repetitions than asked for.")));
    }
    if (start.isSteadinessInTheWay) {
        sentences.append(startText(QT_TRANSLATE_NOOP("Start", "It was not steady.")));
    }
    if (start.isProvisional) {
        sentences.append(startText(QT_TRANSLATE_NOOP("Start", "Something is still open.")));
    } else if (start.stage == progression::Stage::BaseLoad) {
        sentences.append(startText(QT_TRANSLATE_NOOP("Start", "All pauses held: a first load can follow.")));
    }
    sentences.removeAll(QString());
    return sentences.join(QLatin1Char(' '));
}

QStringList needSentences(const PatternStart& start)
{
    QStringList sentences;
    for (const progression::StartNeed need : start.unmetNeeds) {
        sentences.append(need == progression::StartNeed::PushUpControl
                             ? startText(QT_TRANSLATE_NOOP("Start", "A loaded press needs the push-up at Control first."))
                             : startText(QT_TRANSLATE_NOOP("Start", "Loaded work overhead needs the overhead reach first.")));
    }
    return sentences;
}

QString doseText(const screens::Dose& dose)
{
    const QString amount = dose.measure == lifts::Measure::Seconds ? startText(QT_TRANSLATE_NOOP("Start", "%1 s")).arg(dose.amount) : QString::number(dose.amount);
    const QString text = QStringLiteral("%1 × %2").arg(dose.sets.value()).arg(amount);
    return dose.isEachSide ? startText(QT_TRANSLATE_NOOP("Start", "%1 each side")).arg(text) : text;
}

QString viewName(screens::ViewFrom from)
{
    return from == screens::ViewFrom::Side ? startText(QT_TRANSLATE_NOOP("Start", "side")) : startText(QT_TRANSLATE_NOOP("Start", "front"));
}

QString choiceFaultText(progression::ChoiceFault fault)
{
    switch (fault) {
    case progression::ChoiceFault::OnHold:
        return startText(QT_TRANSLATE_NOOP("Start", "Pain was named: the lift waits on hold, whatever stage is chosen."));
    case progression::ChoiceFault::NoStartStage:
        return startText(QT_TRANSLATE_NOOP("Start", "A lift starts at Pattern, Control or Base load."));
    case progression::ChoiceFault::ReasonMissing:
        return startText(QT_TRANSLATE_NOOP("Start", "Another stage than the screen’s needs a reason."));
    }
    return {};
}

}  // namespace chalk::ui::onboarding
