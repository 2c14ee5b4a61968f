#include "ui/floor/entry_fields.h"

#include "ui/common/formats.h"
#include "ui/floor/entry_lines.h"
#include "ui/floor/entry_words.h"

#include <QCoreApplication>

namespace chalk::ui::floor {

namespace {

using progression::Exposure;
using progression::SetRecord;
using progression::Steadiness;
using Fault = tl::unexpected<QString>;

constexpr int kMostAmount = 1000;
constexpr int kMostInReserve = 10;
constexpr int kMostPain = 10;
constexpr int kMostRest = 3600;

QString fieldWords(const char* text)
{
    return QCoreApplication::translate("EntryFields", text);
}

std::optional<int> numberIn(const QString& text, int most)
{
    bool isNumber = false;
    const int number = text.toInt(&isNumber);
    return isNumber && number >= 0 && number <= most ? std::optional(number) : std::nullopt;
}

/// The record that the lift's line stands for now; what was saved, or the plan, where nothing is typed.
std::optional<Exposure> presentExposure(const FloorLift& lift)
{
    const sessions::EntryLine line = sessions::parseEntryLine(lift.line.toStdString());
    const auto body = exposureOf(line, lift);
    const auto* exposure = body ? std::get_if<Exposure>(&*body) : nullptr;
    return exposure == nullptr ? std::nullopt : std::optional(Exposure{exposure->pain, workingSets(*exposure)});
}

/// Steady by nothing or `st…`, shaky by `s…`, lost by `l…`.
std::optional<Steadiness> feltIn(const QString& text)
{
    if (text.isEmpty() || text.startsWith(QLatin1String("st"))) {
        return Steadiness::Steady;
    }
    return text.startsWith(QLatin1Char('s')) ? std::optional(Steadiness::Shaky) : text.startsWith(QLatin1Char('l')) ? std::optional(Steadiness::Lost) : std::nullopt;
}

/// What is wrong with the text, or nothing and the exposure is changed.
QString putField(Exposure& exposure, LiftField field, int set, const QString& text)
{
    const auto ofAll = [&exposure](auto&& change) {
        for (SetRecord& one : exposure.sets) {
            change(one);
        }
        return QString();
    };
    switch (field) {
    case LiftField::Amount:
        if (text.isEmpty() && exposure.sets.size() > 1) {
            exposure.sets.erase(exposure.sets.begin() + set);
            return {};
        }
        if (const auto amount = numberIn(text, kMostAmount)) {
            exposure.sets[static_cast<std::size_t>(set)].amount = *amount;
            return {};
        }
        return fieldWords(QT_TRANSLATE_NOOP("EntryFields", "A whole number, 0 to 1000."));
    case LiftField::Left:
        if (const auto left = numberIn(text, kMostInReserve); left || text.isEmpty()) {
            return ofAll([left](SetRecord& one) { one.rir = left ? static_cast<std::int16_t>(*left) : SetRecord::kNotRecorded; });
        }
        return fieldWords(QT_TRANSLATE_NOOP("EntryFields", "Reps left: 0 to 10."));
    case LiftField::Rest: {
        const auto clock = sessions::parseEntryLine(text.toStdString()).restSeconds;
        const auto seconds = clock ? clock : numberIn(text, kMostRest);
        return seconds ? ofAll([seconds](SetRecord& one) { one.restSeconds = static_cast<std::int16_t>(*seconds); })
                       : fieldWords(QT_TRANSLATE_NOOP("EntryFields", "Like 2:15, or seconds."));
    }
    case LiftField::Felt:
        if (const auto felt = feltIn(text.toLower())) {
            return ofAll([felt](SetRecord& one) { one.steadiness = *felt; });
        }
        return fieldWords(QT_TRANSLATE_NOOP("EntryFields", "steady, shaky or lost."));
    case LiftField::Pain:
        if (const auto pain = numberIn(text, kMostPain)) {
            exposure.pain = *pain;
            return {};
        }
        return fieldWords(QT_TRANSLATE_NOOP("EntryFields", "Pain: 0 to 10."));
    case LiftField::Load:
        break;
    }
    const auto load = sessions::parseEntryLine("1 @" + text.toStdString()).load;
    return load ? ofAll([load](SetRecord& one) { one.load = *load; }) : fieldWords(QT_TRANSLATE_NOOP("EntryFields", "A load, like 72.5."));
}

}  // namespace

QString fieldText(const FloorLift& lift, LiftField field, int set)
{
    const auto exposure = presentExposure(lift);
    if (!exposure || exposure->sets.empty()) {
        return {};
    }
    const SetRecord& last = exposure->sets.back();
    switch (field) {
    case LiftField::Load:
        return common::numberText(last.load);
    case LiftField::Amount:
        return set < static_cast<int>(exposure->sets.size()) ? QString::number(exposure->sets[static_cast<std::size_t>(set)].amount) : QString();
    case LiftField::Left:
        return last.rir == SetRecord::kNotRecorded ? QString() : QString::number(last.rir);
    case LiftField::Rest:
        return last.restSeconds == SetRecord::kNotRecorded ? QString() : common::restText(base::Seconds(last.restSeconds));
    case LiftField::Felt:
        return feltText(last.steadiness);
    case LiftField::Pain:
        return QString::number(exposure->pain);
    }
    return {};
}

tl::expected<QString, QString> lineWithField(const FloorLift& lift, LiftField field, int set, const QString& text)
{
    auto exposure = presentExposure(lift);
    if (!exposure || exposure->sets.empty() || set >= static_cast<int>(exposure->sets.size())) {
        return Fault(fieldWords(QT_TRANSLATE_NOOP("EntryFields", "Put the line right first.")));
    }
    if (const QString fault = putField(*exposure, field, set, text.trimmed()); !fault.isEmpty()) {
        return Fault(fault);
    }
    const std::string note = sessions::parseEntryLine(lift.line.toStdString()).note;
    return note.empty() ? lineOf(*exposure, lift) : QStringLiteral("%1  %2").arg(lineOf(*exposure, lift), common::qstring(note));
}

}  // namespace chalk::ui::floor
