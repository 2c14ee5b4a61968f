#include "ui/onboarding/rescreen_words.h"

#include "ui/common/day_entry.h"
#include "ui/common/formats.h"
#include "ui/common/theme.h"

#include <QCoreApplication>

namespace chalk::ui::onboarding {

namespace {

using progression::Change;
using screens::Mark;
using screens::PauseMark;

QString rescreenText(const char* text)
{
    return QCoreApplication::translate("Rescreen", text);
}

QString painWord(const screens::PatternScreen& screen)
{
    if (!screens::isPainful(screen)) {
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "none"));
    }
    const QString place = common::qstring(screen.pain->place);
    const QString score = screen.pain->score ? rescreenText(QT_TRANSLATE_NOOP("Rescreen", "%1 of 10")).arg(*screen.pain->score)
                                             : rescreenText(QT_TRANSLATE_NOOP("Rescreen", "named"));
    return place.isEmpty() ? score : QStringLiteral("%1, %2").arg(place, score);
}

/// Writes the rows of the comparison.
struct ComparisonRows {
    const common::Theme& theme;
    QString html = {};

    [[nodiscard]] QString colourOf(Change change) const
    {
        switch (change) {
        case Change::Better:
            return theme.ok.name();
        case Change::Worse:
            return theme.pain.name();
        case Change::Same:
        case Change::NotComparable:
            break;
        }
        return theme.ink3.name();
    }

    void add(const QString& name, const QString& before, const QString& after, Change change, bool isHead = false)
    {
        const QString weight = isHead ? QStringLiteral("font-weight:600; padding-top:14px") : QStringLiteral("padding-top:2px");
        html += QStringLiteral("<tr><td style='%1'>%2</td><td style='%1; color:%3'>%4</td><td style='%1'>%5</td><td style='%1; color:%6'>%7</td></tr>")
                    .arg(weight, name.toHtmlEscaped(), theme.ink2.name(), before.toHtmlEscaped(), after.toHtmlEscaped(), colourOf(change), changeWord(change).toHtmlEscaped());
    }
};

void addPointsAndPauses(ComparisonRows& rows, const progression::PatternChange& change, const screens::PatternGuide& guide)
{
    for (const progression::PointChange& point : change.points) {
        if (point.before != Mark::NotJudged || point.after != Mark::NotJudged) {
            const screens::ScreenPoint* known = guide.find(point.key);
            rows.add(common::qstring(known == nullptr ? point.key : known->text), markWord(point.before), markWord(point.after), point.change);
        }
    }
    for (const progression::PauseChange& pause : change.pauses) {
        if (pause.before.mark != PauseMark::NotTried || pause.after.mark != PauseMark::NotTried) {
            rows.add(rescreenText(QT_TRANSLATE_NOOP("Rescreen", "Pause: %1")).arg(common::qstring(guide.depths[static_cast<std::size_t>(pause.depth)].name)),
                     pauseWord(pause.before), pauseWord(pause.after), pause.change);
        }
    }
}

}  // namespace

QString markWord(Mark mark)
{
    switch (mark) {
    case Mark::NotJudged:
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "not judged"));
    case Mark::Met:
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "met"));
    case Mark::Partly:
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "partly"));
    case Mark::NotMet:
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "not met"));
    }
    return {};
}

QString pauseWord(const screens::PauseTry& pause)
{
    QString word;
    switch (pause.mark) {
    case PauseMark::NotTried:
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "not tried"));
    case PauseMark::Held:
        word = rescreenText(QT_TRANSLATE_NOOP("Rescreen", "held"));
        break;
    case PauseMark::Shaky:
        word = rescreenText(QT_TRANSLATE_NOOP("Rescreen", "shaky"));
        break;
    case PauseMark::NotHeld:
        word = rescreenText(QT_TRANSLATE_NOOP("Rescreen", "not held"));
        break;
    }
    return pause.heldMs ? rescreenText(QT_TRANSLATE_NOOP("Rescreen", "%1 %2 s")).arg(word, QString::number(*pause.heldMs / 1000.0, 'f', 1)) : word;
}

QString startWord(const progression::PatternStart& start)
{
    switch (start.state) {
    case progression::StartState::NotScreened:
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "not screened"));
    case progression::StartState::OnHold:
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "on hold"));
    case progression::StartState::Starts:
        return QStringLiteral("%1 %2").arg(progression::numberOf(start.stage)).arg(common::stageName(start.stage));
    }
    return {};
}

QString changeWord(Change change)
{
    switch (change) {
    case Change::Better:
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "better"));
    case Change::Same:
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "as before"));
    case Change::Worse:
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "worse"));
    case Change::NotComparable:
        break;
    }
    return {};
}

QString rescreenSentence(const progression::RescreenDue& due)
{
    QStringList names;
    for (const lifts::Pattern pattern : due.patterns) {
        names.append(common::patternName(pattern).toLower());
    }
    const QString day = due.since ? common::entryOfDay(*due.since) : QString();
    switch (due.reason) {
    case progression::RescreenReason::NeverScreened:
        return {};
    case progression::RescreenReason::EightWeeks:
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "A new screen is due since %1: the last one is eight weeks old.")).arg(day);
    case progression::RescreenReason::Layoff:
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "A new screen is due after a layoff: %1.")).arg(names.join(QStringLiteral(", ")));
    case progression::RescreenReason::Hold:
        return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "A new screen is due: a hold was released on %1 (%2).")).arg(day, names.join(QStringLiteral(", ")));
    }
    return {};
}

QString runningLiftsSentence()
{
    return rescreenText(QT_TRANSLATE_NOOP("Rescreen", "A screen moves no lift that runs. A hold ends with a release on the client's board, the flag of a layoff with "
                                                      "the next rehearsal; another stage is a change there, with its reason."));
}

QString comparisonHtml(const screens::MovementScreen& before, const screens::MovementScreen& after, const screens::ScreenCatalogue& catalogue,
                       const progression::Policy& policy, const common::Theme& theme)
{
    ComparisonRows rows{theme};
    rows.html = QStringLiteral("<tr style='color:%1'><td width='46%'></td><td>%2</td><td>%3</td><td></td></tr>")
                    .arg(theme.ink3.name(), common::entryOfDay(before.date), common::entryOfDay(after.date));
    for (const progression::PatternChange& change : progression::comparisonOf(before, after, policy)) {
        rows.add(common::patternName(change.pattern), startWord(change.before), startWord(change.after), change.stage, true);
        addPointsAndPauses(rows, change, catalogue.of(change.pattern));
        const screens::PatternScreen& first = before.of(change.pattern);
        const screens::PatternScreen& second = after.of(change.pattern);
        if (screens::isPainful(first) || screens::isPainful(second)) {
            rows.add(rescreenText(QT_TRANSLATE_NOOP("Rescreen", "Pain")), painWord(first), painWord(second), change.pain);
        }
    }
    return QStringLiteral("<table width='100%' cellspacing='0' cellpadding='2'>%1</table>").arg(rows.html);
}

}  // namespace chalk::ui::onboarding
