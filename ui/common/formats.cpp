#include "ui/common/formats.h"

#include <QCoreApplication>
#include <QDate>
#include <QLocale>

#include <cstdlib>

namespace chalk::ui::common {

namespace {

using lifts::Measure;

constexpr const char* kStageNames[] = {QT_TRANSLATE_NOOP("Formats", "Pattern"),   QT_TRANSLATE_NOOP("Formats", "Control"),
                                       QT_TRANSLATE_NOOP("Formats", "Base load"), QT_TRANSLATE_NOOP("Formats", "Load build"),
                                       QT_TRANSLATE_NOOP("Formats", "Rep build"), QT_TRANSLATE_NOOP("Formats", "Set build"),
                                       QT_TRANSLATE_NOOP("Formats", "Rest cut")};
constexpr const char* kPatternNames[] = {
    QT_TRANSLATE_NOOP("Formats", "Squat"),         QT_TRANSLATE_NOOP("Formats", "Hinge"),         QT_TRANSLATE_NOOP("Formats", "Horizontal push"),
    QT_TRANSLATE_NOOP("Formats", "Horizontal pull"), QT_TRANSLATE_NOOP("Formats", "Vertical push"), QT_TRANSLATE_NOOP("Formats", "Vertical pull"),
    QT_TRANSLATE_NOOP("Formats", "Single-leg"),    QT_TRANSLATE_NOOP("Formats", "Carry and brace")};

QString formatsText(const char* text)
{
    return QCoreApplication::translate("Formats", text);
}

QString formattedDay(base::Date date, const QString& format)
{
    const auto day = date.ymd();
    const QDate qdate(static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())),
                      static_cast<int>(static_cast<unsigned>(day.day())));
    return QLocale::c().toString(qdate, format);
}

int amountOf(base::Reps reps, Measure measure, const progression::Policy& policy)
{
    const int perRep = measure == Measure::Reps ? 1 : measure == Measure::Seconds ? policy.secondsPerRep.value() : policy.metresPerRep.value();
    return reps.value() * perRep;
}

}  // namespace

QString qstring(std::string_view utf8)
{
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QString numberText(base::Load load)
{
    const int centi = std::abs(load.centi());
    QString text = QString::number(centi / 100);
    if (centi % 100 != 0) {
        text += QStringLiteral(".%1").arg(centi % 100, 2, 10, QLatin1Char('0'));
        if (text.endsWith(QLatin1Char('0'))) {
            text.chop(1);
        }
    }
    return load.centi() < 0 ? QChar(0x2212) + text : text;
}

QString unitText(base::MassUnit unit)
{
    return unit == base::MassUnit::Kilogram ? QStringLiteral("kg") : QStringLiteral("lb");
}

QString loadText(base::Load load, base::MassUnit unit, int pieces, bool isAddedToBody)
{
    const auto plain = [unit](base::Load one) { return QStringLiteral("%1 %2").arg(numberText(one), unitText(unit)); };
    if (!isAddedToBody) {
        return pieces == 2 ? QStringLiteral("2 × ") + plain(load) : plain(load);
    }
    if (load == base::Load()) {
        return formatsText(QT_TRANSLATE_NOOP("Formats", "bodyweight"));
    }
    return load > base::Load() ? QLatin1Char('+') + plain(load)
                               : formatsText(QT_TRANSLATE_NOOP("Formats", "%1 of help")).arg(plain(-1 * load));
}

QString lighterWeekText(base::Date lastDay)
{
    return formatsText(QT_TRANSLATE_NOOP("Formats", "Lighter week, to %1")).arg(dayText(lastDay));
}

QString amountText(base::Reps reps, Measure measure, const progression::Policy& policy)
{
    const QString unit = measure == Measure::Reps ? QString() : measure == Measure::Seconds ? QStringLiteral(" s") : QStringLiteral(" m");
    return QString::number(amountOf(reps, measure, policy)) + unit;
}

QString targetText(const progression::Prescription& next, Measure measure, const progression::Policy& policy)
{
    const QString high = amountText(next.repsHigh, measure, policy);
    if (next.repsLow == next.repsHigh) {
        return high;
    }
    return QString::number(amountOf(next.repsLow, measure, policy)) + QChar(0x2013) + high;
}

QString restText(base::Seconds rest)
{
    return QStringLiteral("%1:%2").arg(rest.value() / 60).arg(rest.value() % 60, 2, 10, QLatin1Char('0'));
}

QString dayText(base::Date date)
{
    return formattedDay(date, QStringLiteral("ddd d MMM"));
}

QString shortDayText(base::Date date)
{
    return formattedDay(date, QStringLiteral("d MMM"));
}

QString longDayText(base::Date date)
{
    return formattedDay(date, QStringLiteral("dddd d MMMM"));
}

QString stageName(progression::Stage stage)
{
    return formatsText(kStageNames[progression::numberOf(stage) - 1]);
}

QString patternName(lifts::Pattern pattern)
{
    return formatsText(kPatternNames[static_cast<int>(pattern)]);
}

}  // namespace chalk::ui::common
