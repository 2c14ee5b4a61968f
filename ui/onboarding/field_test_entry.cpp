#include "ui/onboarding/field_test_entry.h"

#include "ui/common/formats.h"
#include "ui/common/norm_words.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

#include <array>

namespace chalk::ui::onboarding {

namespace {

using screens::FieldTest;

constexpr int kMostFieldReps = 1000;
constexpr int kMostFieldSeconds = 3600;
constexpr int kMostFieldMm = 2000;

QString fieldTestText(const char* text)
{
    return QCoreApplication::translate("FieldTests", text);
}

tl::unexpected<FieldTestFault> fieldFault(int field, const QString& reason, bool isIncomplete = false)
{
    return tl::make_unexpected(FieldTestFault{field, reason, isIncomplete});
}

std::optional<int> countOf(const QString& text)
{
    bool isNumber = false;
    const int count = text.trimmed().toInt(&isNumber);
    return isNumber && count >= 0 && count <= kMostFieldReps ? std::optional(count) : std::nullopt;
}

/// `62`, `62.5`, `1:02.5`, in milliseconds.
std::optional<int> testMsOf(const QString& text)
{
    static const QRegularExpression form(QStringLiteral("^(?:(\\d{1,2}):)?(\\d{1,4})(?:[.,](\\d{1,3}))?\\s*s?$"));
    const auto match = form.match(text.trimmed());
    if (!match.hasMatch()) {
        return std::nullopt;
    }
    const int seconds = match.captured(1).toInt() * 60 + match.captured(2).toInt();
    const bool isClock = !match.captured(1).isEmpty();
    const int ms = match.captured(3).leftJustified(3, QLatin1Char('0')).toInt();
    if (seconds > kMostFieldSeconds || (isClock && match.captured(2).toInt() >= 60)) {
        return std::nullopt;
    }
    return seconds * 1000 + ms;
}

/// Centimetres with at most one decimal, in millimetres; below nothing where `canBeNegative`.
std::optional<int> testMmOf(const QString& text, bool canBeNegative)
{
    static const QRegularExpression form(QStringLiteral("^([-\\x{2212}]?)(\\d{1,3})(?:[.,](\\d))?\\s*(?:cm)?$"));
    const auto match = form.match(text.trimmed());
    if (!match.hasMatch() || (!match.captured(1).isEmpty() && !canBeNegative)) {
        return std::nullopt;
    }
    const int mm = match.captured(2).toInt() * 10 + match.captured(3).toInt();
    return mm <= kMostFieldMm ? std::optional(match.captured(1).isEmpty() ? mm : -mm) : std::nullopt;
}

QString secondsText(int ms)
{
    return QString::number(ms / 1000.0, 'g', 7);
}

QString cmText(int mm)
{
    return QString::number(mm / 10.0);
}

using Read = tl::expected<std::optional<FieldTest>, FieldTestFault>;

/// Makes the result of the test that it is called with out of what was typed in its first field, which is not empty.
struct TypedReader {
    const FieldTestTyped& typed;

    Read operator()(const screens::ChairStand& /*test*/) const
    {
        const auto stands = countOf(typed.first);
        return stands ? Read(screens::ChairStand{base::Reps(*stands), typed.isOther}) : Read(noCount());
    }
    Read operator()(const screens::PushUps& /*test*/) const
    {
        const auto reps = countOf(typed.first);
        return reps ? Read(screens::PushUps{base::Reps(*reps), typed.isOther ? screens::PushUpForm::Knees : screens::PushUpForm::Toes}) : Read(noCount());
    }
    Read operator()(const screens::SingleLegStance& /*test*/) const
    {
        const auto held = testMsOf(typed.first);
        return held ? Read(screens::SingleLegStance{*held}) : Read(noTime());
    }
    Read operator()(const screens::Plank& /*test*/) const
    {
        const auto held = testMsOf(typed.first);
        return held ? Read(screens::Plank{*held}) : Read(noTime());
    }
    Read operator()(const screens::WeightBearingLunge& /*test*/) const
    {
        const auto left = testMmOf(typed.first, false);
        const auto right = testMmOf(typed.second, false);
        if (!left || (!right && !typed.second.trimmed().isEmpty())) {
            return noLength(left ? 1 : 0);
        }
        if (!right) {
            return fieldFault(1, fieldTestText(QT_TRANSLATE_NOOP("FieldTests", "The right side is missing.")), true);
        }
        return screens::WeightBearingLunge{*left, *right};
    }
    Read operator()(const screens::SitAndReach& /*test*/) const
    {
        const auto reach = testMmOf(typed.first, true);
        const auto zero = testMmOf(typed.second, false);
        if (!reach || (!zero && !typed.second.trimmed().isEmpty())) {
            return noLength(reach ? 1 : 0);
        }
        if (!zero) {
            return fieldFault(1, fieldTestText(QT_TRANSLATE_NOOP("FieldTests", "What does the scale show at the feet? Without it the reach means nothing.")), true);
        }
        return screens::SitAndReach{*reach, *zero};
    }

    [[nodiscard]] tl::unexpected<FieldTestFault> noCount() const
    {
        return fieldFault(0, fieldTestText(QT_TRANSLATE_NOOP("FieldTests", "“%1” is no whole number from 0 to 1000.")).arg(typed.first.trimmed()));
    }
    [[nodiscard]] tl::unexpected<FieldTestFault> noTime() const
    {
        return fieldFault(0, fieldTestText(QT_TRANSLATE_NOOP("FieldTests", "“%1” is no time: seconds, as 62.5, or 1:02.")).arg(typed.first.trimmed()));
    }
    [[nodiscard]] tl::unexpected<FieldTestFault> noLength(int field) const
    {
        return fieldFault(field, fieldTestText(QT_TRANSLATE_NOOP("FieldTests", "“%1” is no length in centimetres, with at most one decimal."))
                                     .arg((field == 0 ? typed.first : typed.second).trimmed()));
    }
};

struct TypedWriter {
    FieldTestTyped operator()(const screens::ChairStand& test) const { return {QString::number(test.stands.value()), {}, test.areArmsUsed}; }
    FieldTestTyped operator()(const screens::PushUps& test) const { return {QString::number(test.reps.value()), {}, test.form == screens::PushUpForm::Knees}; }
    FieldTestTyped operator()(const screens::SingleLegStance& test) const { return {secondsText(test.heldMs), {}, false}; }
    FieldTestTyped operator()(const screens::Plank& test) const { return {secondsText(test.heldMs), {}, false}; }
    FieldTestTyped operator()(const screens::WeightBearingLunge& test) const { return {cmText(test.leftMm), cmText(test.rightMm), false}; }
    FieldTestTyped operator()(const screens::SitAndReach& test) const { return {cmText(test.reachMm), cmText(test.zeroMm), false}; }
};

}  // namespace

Read fieldTestOf(const FieldTest& test, const FieldTestTyped& typed)
{
    if (typed.first.trimmed().isEmpty()) {
        const bool isLunge = std::holds_alternative<screens::WeightBearingLunge>(test);
        if (isLunge && !typed.second.trimmed().isEmpty()) {
            return fieldFault(0, fieldTestText(QT_TRANSLATE_NOOP("FieldTests", "The left side is missing.")), true);
        }
        return std::optional<FieldTest>();
    }
    return std::visit(TypedReader{typed}, test);
}

FieldTestTyped typedOf(const FieldTest& test)
{
    return std::visit(TypedWriter{}, test);
}

FieldTestVerdict verdictOf(const FieldTest& test, const FieldTestPerson& person)
{
    // What the lunge compares are two sides of one person: that takes no age.
    if (!person.age && !std::holds_alternative<screens::WeightBearingLunge>(test)) {
        return {fieldTestText(QT_TRANSLATE_NOOP("FieldTests", "No class: norms go by age, and there is no birth date.")), {}};
    }
    const screens::NormResult result = screens::normOf(test, {person.age.value_or(0), person.sex});
    QStringList details;
    if (screens::isClass(result.normClass) && (result.ages.from || result.ages.to)) {
        details.append(fieldTestText(QT_TRANSLATE_NOOP("FieldTests", "For %1.")).arg(common::normAgesText(result.ages)));
    }
    if (std::holds_alternative<screens::WeightBearingLunge>(test) && result.usual.from) {
        details.append(fieldTestText(QT_TRANSLATE_NOOP("FieldTests", "Usual for adults: %1.")).arg(common::normRangeText(test, result.usual)));
    }
    for (const screens::NormRemark remark : result.remarks) {
        details.append(common::remarkSentence(remark));
    }
    details.append(fieldTestText(QT_TRANSLATE_NOOP("FieldTests", "Source: %1.")).arg(common::qstring(result.source)));
    return {common::normSentence(test, result), details.join(QLatin1Char(' '))};
}

QString fieldTestResultText(const FieldTest& test)
{
    const FieldTestTyped typed = typedOf(test);
    constexpr std::array kForms{QT_TRANSLATE_NOOP("FieldTests", "%1"),         QT_TRANSLATE_NOOP("FieldTests", "%1 on the toes"),
                                QT_TRANSLATE_NOOP("FieldTests", "%1 s"),       QT_TRANSLATE_NOOP("FieldTests", "%1 s"),
                                QT_TRANSLATE_NOOP("FieldTests", "left %1, right %2 cm"), QT_TRANSLATE_NOOP("FieldTests", "%1 cm, zero at %2 cm")};
    constexpr std::array kOtherForms{QT_TRANSLATE_NOOP("FieldTests", "%1 with the arms"), QT_TRANSLATE_NOOP("FieldTests", "%1 on the knees")};
    if (typed.isOther) {
        return fieldTestText(kOtherForms[test.index()]).arg(typed.first);
    }
    const QString form = fieldTestText(kForms[test.index()]);
    return typed.second.isEmpty() ? form.arg(typed.first) : form.arg(typed.first, typed.second);
}

QString fieldTestHow(const FieldTest& test)
{
    constexpr std::array kHow{
        QT_TRANSLATE_NOOP("FieldTests", "Chair against the wall, arms crossed. Full stands in 30 seconds; more than half-way up at the end counts."),
        QT_TRANSLATE_NOOP("FieldTests", "Without a rest, until the form goes. The norm is for men on the toes, women on the knees."),
        QT_TRANSLATE_NOOP("FieldTests", "Barefoot, eyes open, arms crossed, until the foot comes down. Ends at 45 seconds. T: stopwatch."),
        QT_TRANSLATE_NOOP("FieldTests", "On the forearms, body in one line, until the hips drop or rise. T: stopwatch."),
        QT_TRANSLATE_NOOP("FieldTests", "Knee to the wall, heel down. From the big toe to the wall, each side."),
        QT_TRANSLATE_NOOP("FieldTests", "Legs straight, a slow reach held for two seconds. Zero: what the scale shows at the feet."),
    };
    return fieldTestText(kHow[test.index()]);
}

bool isTimed(const FieldTest& test)
{
    return std::holds_alternative<screens::SingleLegStance>(test) || std::holds_alternative<screens::Plank>(test);
}

}  // namespace chalk::ui::onboarding
