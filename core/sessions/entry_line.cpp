#include "core/sessions/entry_line.h"

#include <algorithm>
#include <cstdlib>

namespace chalk::sessions {

namespace {

using progression::Steadiness;
using progression::Verdict;

constexpr int kMostSets = 20;
constexpr int kMostAmount = 1000;

/// A whole number of at most six digits; nothing for anything else.
std::optional<int> wholeOf(std::string_view text)
{
    if (text.empty() || text.size() > 6 || !std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; })) {
        return std::nullopt;
    }
    int value = 0;
    for (const char c : text) {
        value = value * 10 + (c - '0');
    }
    return value;
}

/// A number with at most `decimals` decimals, point or comma, in units of 10^-decimals; a minus is allowed.
std::optional<int> decimalOf(std::string_view text, int decimals)
{
    const bool isNegative = !text.empty() && text.front() == '-';
    text.remove_prefix(isNegative ? 1 : 0);
    const auto point = text.find_first_of(".,");
    const auto whole = wholeOf(text.substr(0, point));
    std::string fraction = point == std::string_view::npos ? std::string() : std::string(text.substr(point + 1));
    if (!whole || *whole > 99999 || (point != std::string_view::npos && fraction.empty()) || fraction.size() > static_cast<std::size_t>(decimals)) {
        return std::nullopt;
    }
    fraction.resize(static_cast<std::size_t>(decimals), '0');
    const auto part = wholeOf(fraction);
    if (!part) {
        return std::nullopt;
    }
    int unit = 1;
    for (int i = 0; i < decimals; ++i) {
        unit *= 10;
    }
    const int value = *whole * unit + *part;
    return isNegative ? -value : value;
}

/// Takes the characters of `kind` from the front of a text.
std::string_view takeFront(std::string_view& text, std::string_view kind)
{
    const auto end = std::min(text.find_first_not_of(kind), text.size());
    const std::string_view taken = text.substr(0, end);
    text.remove_prefix(end);
    return taken;
}

constexpr std::string_view kDigits = "0123456789";

/// `r1s@80`: what stands right behind the number of a set.
std::optional<EntrySet> ownOf(std::string_view text)
{
    EntrySet own;
    while (!text.empty()) {
        const char kind = text.front();
        text.remove_prefix(1);
        if (kind == 's' || kind == 'l') {
            own.felt = kind == 's' ? Steadiness::Shaky : Steadiness::Lost;
        } else if (kind == 'r') {
            own.rir = wholeOf(takeFront(text, kDigits));
            if (!own.rir || *own.rir > 10) {
                return std::nullopt;
            }
        } else {
            const auto centi = kind == '@' ? decimalOf(takeFront(text, "-0123456789.,"), 2) : std::nullopt;
            if (!centi) {
                return std::nullopt;
            }
            own.load = base::Load::fromCenti(*centi);
        }
    }
    return own;
}

/// `8`, `5x8`, and what is said of just these sets behind it.
EntryPart readSets(std::string_view word, EntryLine& line)
{
    std::optional<int> count = 1;
    auto amount = wholeOf(takeFront(word, kDigits));
    EntryPart part = EntryPart::Reps;
    const std::size_t cross = word.substr(0, 1) == "x" || word.substr(0, 1) == "X" ? 1 : word.substr(0, 2) == "×" ? 2 : 0;
    if (cross > 0) {
        word.remove_prefix(cross);
        count = amount;
        amount = wholeOf(takeFront(word, kDigits));
        part = EntryPart::SetsAndReps;
    }
    const auto own = ownOf(word);
    if (!count || !amount || !own || *count < 1 || *count > kMostSets || *amount > kMostAmount ||
        line.amounts.size() + static_cast<std::size_t>(*count) > static_cast<std::size_t>(kMostSets)) {
        return EntryPart::Unknown;
    }
    line.amounts.insert(line.amounts.end(), static_cast<std::size_t>(*count), *amount);
    line.own.insert(line.own.end(), static_cast<std::size_t>(*count), *own);
    return part;
}

bool readRest(std::string_view word, EntryLine& line)
{
    const auto colon = word.find(':');
    if (colon == std::string_view::npos) {
        return false;
    }
    const auto minutes = wholeOf(word.substr(0, colon));
    const auto seconds = wholeOf(word.substr(colon + 1));
    if (!minutes || !seconds || word.size() - colon != 3 || *seconds > 59 || *minutes > 59) {
        return false;
    }
    line.restSeconds = *minutes * 60 + *seconds;
    return true;
}

template <class T>
bool keepWithin(std::optional<T>& target, std::optional<int> value, int low, int high)
{
    if (!value || *value < low || *value > high) {
        return false;
    }
    target = *value;
    return true;
}

EntryPart readWord(std::string_view word, EntryLine& line)
{
    const std::string_view rest = word.substr(1);
    if (word == "x" || word == "skip") {
        line.isSkipped = true;
        return EntryPart::Skip;
    }
    if (word == "s" || word == "shaky" || word == "steady" || word == "lost") {
        line.felt = word == "lost" ? Steadiness::Lost : word == "steady" ? Steadiness::Steady : Steadiness::Shaky;
        return EntryPart::Felt;
    }
    if (word == "met" || word == "partly" || word == "not") {
        line.verdict = word == "met" ? Verdict::Met : word == "partly" ? Verdict::Partly : Verdict::NotMet;
        return EntryPart::Verdict;
    }
    switch (word.front()) {
    case '@':
        if (const auto centi = decimalOf(rest, 2)) {
            line.load = base::Load::fromCenti(*centi);
            return EntryPart::Load;
        }
        return EntryPart::Unknown;
    case 'r':
        return keepWithin(line.rir, wholeOf(rest), 0, 10) ? EntryPart::Rir : EntryPart::Unknown;
    case 'p':
        return keepWithin(line.pain, wholeOf(rest), 0, 10) ? EntryPart::Pain : EntryPart::Unknown;
    case 't':
        return keepWithin(line.pauses.topMs, decimalOf(rest, 3), 0, 60'000) ? EntryPart::Pause : EntryPart::Unknown;
    case 'm':
        return keepWithin(line.pauses.middleMs, decimalOf(rest, 3), 0, 60'000) ? EntryPart::Pause : EntryPart::Unknown;
    case 'b':
        return keepWithin(line.pauses.bottomMs, decimalOf(rest, 3), 0, 60'000) ? EntryPart::Pause : EntryPart::Unknown;
    default:
        break;
    }
    return readRest(word, line) ? EntryPart::Rest : readSets(word, line);
}

progression::EventBody rehearsalOf(const EntryLine& line, const EntryPlan& plan)
{
    progression::Rehearsal rehearsal;
    rehearsal.criteria = {{"movement", line.verdict.value_or(Verdict::Met)}};
    rehearsal.reps = line.amounts.empty() ? plan.policy.controlReps : base::Reps(line.amounts.front());
    rehearsal.pauses = line.pauses;
    rehearsal.steadiness = line.felt.value_or(Steadiness::Steady);
    rehearsal.pain = line.pain.value_or(0);
    return rehearsal;
}

progression::EventBody exposureOf(const EntryLine& line, const EntryPlan& plan)
{
    std::vector<int> amounts = line.amounts;
    const bool isAsPlanned = amounts.empty();
    if (isAsPlanned) {
        amounts.assign(static_cast<std::size_t>(plan.due.sets.value()), plannedAmount(plan));
    }
    progression::Exposure exposure;
    exposure.pain = line.pain.value_or(0);
    for (std::size_t i = 0; i < amounts.size(); ++i) {
        const EntrySet own = isAsPlanned ? EntrySet{} : line.own[i];
        progression::SetRecord set;
        set.load = own.load.value_or(line.load.value_or(plan.due.load));
        set.amount = amounts[i];
        set.rir = static_cast<std::int16_t>(own.rir.value_or(line.rir.value_or(isAsPlanned ? plan.due.reserve : progression::SetRecord::kNotRecorded)));
        set.restSeconds = static_cast<std::int16_t>(line.restSeconds.value_or(plan.due.rest.value()));
        set.steadiness = own.felt.value_or(line.felt.value_or(Steadiness::Steady));
        exposure.sets.push_back(set);
    }
    return exposure;
}

}  // namespace

bool EntryLine::isUnderstood() const
{
    return std::none_of(tokens.begin(), tokens.end(), [](const EntryToken& token) { return token.part == EntryPart::Unknown; });
}

EntryLine parseEntryLine(std::string_view text)
{
    EntryLine line;
    const auto first = text.find_first_not_of(' ');
    const auto noteAt = first == std::string_view::npos ? std::string_view::npos : text.find("  ", first);
    if (noteAt != std::string_view::npos) {
        const auto noteBegin = text.find_first_not_of(' ', noteAt);
        line.note = noteBegin == std::string_view::npos ? std::string() : std::string(text.substr(noteBegin));
    }
    const std::string_view words = text.substr(0, noteAt);
    std::size_t at = 0;
    while ((at = words.find_first_not_of(' ', at)) != std::string_view::npos) {
        const auto end = std::min(words.find(' ', at), words.size());
        line.tokens.push_back({at, end - at, readWord(words.substr(at, end - at), line)});
        at = end;
    }
    return line;
}

int plannedAmount(const EntryPlan& plan)
{
    const int reps = (plan.due.repsLow.value() + plan.due.repsHigh.value() + 1) / 2;
    switch (plan.measure) {
    case lifts::Measure::Reps:
        return reps;
    case lifts::Measure::Seconds:
        return reps * plan.policy.secondsPerRep.value();
    case lifts::Measure::Metres:
        return reps * plan.policy.metresPerRep.value();
    }
    return reps;
}

std::optional<progression::EventBody> eventOf(const EntryLine& line, const EntryPlan& plan)
{
    if (line.isSkipped || !line.isUnderstood() || plan.due.kind == progression::PrescriptionKind::Hold) {
        return std::nullopt;
    }
    if (plan.due.kind == progression::PrescriptionKind::Rehearse) {
        // A rehearsal that nobody watched is none: the verdict or the pauses have to be said.
        const bool isSaid = line.verdict || line.pauses.topMs || line.pauses.middleMs || line.pauses.bottomMs;
        return isSaid ? std::optional(rehearsalOf(line, plan)) : std::nullopt;
    }
    return exposureOf(line, plan);
}

std::vector<EntryDoubt> doubtsAbout(const progression::Exposure& exposure, const EntryPlan& plan, const lifts::LoadTable& loads)
{
    std::vector<EntryDoubt> doubts;
    const int planned = plannedAmount(plan);
    for (const progression::SetRecord& set : exposure.sets) {
        if (set.amount > 30 && set.amount > 3 * planned) {
            doubts.push_back(EntryDoubt::ManyReps);
            break;
        }
    }
    const auto other = std::find_if(exposure.sets.begin(), exposure.sets.end(),
                                    [&plan](const progression::SetRecord& set) { return !set.isWarmup && set.load != plan.due.load; });
    if (other == exposure.sets.end()) {
        return doubts;
    }
    const double load = other->load.centi();
    const double due = plan.due.load.centi();
    constexpr double kPoundsPerKilogram = 2.2046226218;
    const auto isNear = [load, due](double factor) { return due > 0 && load > due * factor * 0.97 && load < due * factor * 1.03; };
    if (isNear(kPoundsPerKilogram) || isNear(1 / kPoundsPerKilogram)) {
        doubts.push_back(EntryDoubt::LoadInOtherUnit);
    } else if (due > 0 && (load >= due * 4 || load * 4 <= due)) {
        doubts.push_back(EntryDoubt::LoadFarOff);
    } else if (!loads.canGive(other->load)) {
        doubts.push_back(EntryDoubt::LoadNotOnHand);
    }
    return doubts;
}

}  // namespace chalk::sessions
