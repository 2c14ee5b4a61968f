#include "ui/floor/entry_lines.h"

#include "ui/common/formats.h"
#include "ui/floor/entry_words.h"

#include <algorithm>

namespace chalk::ui::floor {

namespace {

using progression::Exposure;
using progression::SetRecord;
using progression::Steadiness;

/// The value that most sets have, the first of those as frequent.
template <class Value>
Value mostOf(const std::vector<SetRecord>& sets, Value SetRecord::*field)
{
    const auto countOf = [&](const Value& value) { return std::count_if(sets.begin(), sets.end(), [&](const SetRecord& set) { return set.*field == value; }); };
    return (*std::max_element(sets.begin(), sets.end(), [&](const SetRecord& a, const SetRecord& b) { return countOf(a.*field) < countOf(b.*field); })).*field;
}

QString loadWord(base::Load load)
{
    return QLatin1Char('@') + common::numberText(load).replace(QChar(0x2212), QLatin1Char('-'));
}

/// Whether reps left can be said of all sets at once: not where one of them was not asked.
bool isLeftOfAll(const std::vector<SetRecord>& sets)
{
    return std::none_of(sets.begin(), sets.end(), [](const SetRecord& set) { return set.rir == SetRecord::kNotRecorded; });
}

bool isSteadyOnce(const std::vector<SetRecord>& sets)
{
    return std::any_of(sets.begin(), sets.end(), [](const SetRecord& set) { return set.steadiness == Steadiness::Steady; });
}

/// What goes for all sets of a line, and so is not said at each.
struct LineCommons {
    base::Load load;
    std::int16_t rir = SetRecord::kNotRecorded;
    Steadiness felt = Steadiness::Steady;
};

QString setWord(const SetRecord& set, const LineCommons& commons)
{
    QString word = QString::number(set.amount);
    if (set.load != commons.load) {
        word += loadWord(set.load);
    }
    if (set.rir != commons.rir && set.rir != SetRecord::kNotRecorded) {
        word += QStringLiteral("r%1").arg(set.rir);
    }
    if (set.steadiness != commons.felt) {
        word += set.steadiness == Steadiness::Shaky ? QLatin1Char('s') : QLatin1Char('l');
    }
    return word;
}

}  // namespace

QString lineOf(const Exposure& exposure, const FloorLift& lift)
{
    const std::vector<SetRecord> sets = workingSets(exposure);
    if (sets.empty()) {
        return {};
    }
    const LineCommons commons{mostOf(sets, &SetRecord::load), isLeftOfAll(sets) ? mostOf(sets, &SetRecord::rir) : SetRecord::kNotRecorded,
                              isSteadyOnce(sets) ? Steadiness::Steady : mostOf(sets, &SetRecord::steadiness)};
    QStringList words;
    for (const SetRecord& set : sets) {
        words.append(setWord(set, commons));
    }
    if (commons.load != lift.due.load) {
        words.append(loadWord(commons.load));
    }
    if (commons.rir != SetRecord::kNotRecorded) {
        words.append(QStringLiteral("r%1").arg(commons.rir));
    }
    const auto rest = mostOf(sets, &SetRecord::restSeconds);
    const bool isRestOne = std::all_of(sets.begin(), sets.end(), [rest](const SetRecord& set) { return set.restSeconds == rest; });
    if (isRestOne && rest != SetRecord::kNotRecorded && rest != lift.due.rest.value()) {
        words.append(common::restText(base::Seconds(rest)));
    }
    if (exposure.pain > 0) {
        words.append(QStringLiteral("p%1").arg(exposure.pain));
    }
    if (commons.felt != Steadiness::Steady) {
        words.append(commons.felt == Steadiness::Shaky ? QStringLiteral("s") : QStringLiteral("lost"));
    }
    return words.join(QLatin1Char(' '));
}

std::optional<progression::EventBody> exposureOf(const sessions::EntryLine& line, const FloorLift& lift)
{
    const auto* saved = lift.savedBody ? std::get_if<Exposure>(&*lift.savedBody) : nullptr;
    progression::Prescription due = lift.due;
    if (saved != nullptr) {
        // What was recorded against the plan, on hold or unloaded, can be corrected like all else.
        due.kind = progression::PrescriptionKind::Work;
    }
    auto body = sessions::eventOf(line, {due, lift.machine.kit().measure, lift.machine.setup().policy});
    auto* exposure = body ? std::get_if<Exposure>(&*body) : nullptr;
    if (exposure == nullptr || saved == nullptr) {
        return body;
    }
    const std::vector<SetRecord> before = workingSets(*saved);
    for (std::size_t i = 0; !line.restSeconds && i < std::min(before.size(), exposure->sets.size()); ++i) {
        exposure->sets[i].restSeconds = before[i].restSeconds;
    }
    std::vector<SetRecord> all;
    std::copy_if(saved->sets.begin(), saved->sets.end(), std::back_inserter(all), [](const SetRecord& set) { return set.isWarmup; });
    all.insert(all.end(), exposure->sets.begin(), exposure->sets.end());
    exposure->sets = std::move(all);
    return body;
}

}  // namespace chalk::ui::floor
