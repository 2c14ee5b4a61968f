#include "core/sessions/entry_line.h"
#include "tests/support/lift_on_test.h"

#include <array>
#include <cstdlib>
#include <string>

namespace {

using chalk::progression::Exposure;
using chalk::progression::LiftMachine;
using chalk::progression::PrescriptionKind;
using chalk::progression::Steadiness;
using chalk::progression::Verdict;
using chalk::sessions::EntryLine;
using chalk::sessions::EntryPart;
using chalk::sessions::EntrySet;

void expect(bool holds)
{
    if (!holds) {
        std::abort();
    }
}

/// `1.25` of a number in so many decimals.
std::string decimal(int value, int decimals)
{
    const int unit = decimals == 2 ? 100 : 1000;
    const int size = std::abs(value);
    const std::string fraction = std::to_string(unit + size % unit).substr(1);
    return (value < 0 ? "-" : "") + std::to_string(size / unit) + "." + fraction;
}

std::string ownText(const EntrySet& own)
{
    std::string text = own.load ? "@" + decimal(own.load->centi(), 2) : std::string();
    text += own.rir ? "r" + std::to_string(*own.rir) : std::string();
    return text + (!own.felt ? "" : *own.felt == Steadiness::Shaky ? "s" : "l");
}

std::string pauseText(char place, const std::optional<int>& milliseconds)
{
    return milliseconds ? std::string(1, place) + decimal(*milliseconds, 3) + " " : std::string();
}

/// A line that says the same in words of its own.
std::string textOf(const EntryLine& line)
{
    std::string text;
    for (std::size_t i = 0; i < line.amounts.size(); ++i) {
        text += std::to_string(line.amounts[i]) + ownText(line.own[i]) + " ";
    }
    text += line.load ? "@" + decimal(line.load->centi(), 2) + " " : std::string();
    text += line.rir ? "r" + std::to_string(*line.rir) + " " : std::string();
    if (line.restSeconds) {
        text += std::to_string(*line.restSeconds / 60) + ":" + std::to_string(100 + *line.restSeconds % 60).substr(1) + " ";
    }
    text += line.pain ? "p" + std::to_string(*line.pain) + " " : std::string();
    text += !line.felt ? "" : *line.felt == Steadiness::Shaky ? "s " : *line.felt == Steadiness::Lost ? "lost " : "steady ";
    text += !line.verdict ? "" : *line.verdict == Verdict::Met ? "met " : *line.verdict == Verdict::Partly ? "partly " : "not ";
    text += pauseText('t', line.pauses.topMs) + pauseText('m', line.pauses.middleMs) + pauseText('b', line.pauses.bottomMs);
    text += line.isSkipped ? "x " : "";
    return line.note.empty() ? text : (text.empty() ? "s " : text) + " " + line.note;
}

bool isSame(const EntryLine& a, const EntryLine& b)
{
    return a.amounts == b.amounts && a.own == b.own && a.load == b.load && a.rir == b.rir && a.restSeconds == b.restSeconds && a.pain == b.pain &&
           a.felt == b.felt && a.verdict == b.verdict && a.pauses == b.pauses && a.isSkipped == b.isSkipped && a.note == b.note;
}

/// Every word is a token, in its place: what is not understood can be pointed at.
void expectTokensCover(const EntryLine& line, std::string_view text)
{
    std::size_t at = 0;
    for (const auto& token : line.tokens) {
        expect(token.begin >= at && token.length > 0 && token.begin + token.length <= text.size());
        expect(text.substr(at, token.begin - at).find_first_not_of(' ') == std::string_view::npos);
        expect(text.substr(token.begin, token.length).find(' ') == std::string_view::npos);
        at = token.begin + token.length;
    }
    const std::string_view after = text.substr(at);
    const auto rest = after.find_first_not_of(' ');
    expect(rest == std::string_view::npos ? line.note.empty() : after.substr(0, 2) == "  " && line.note == after.substr(rest));
}

const std::array<LiftMachine, 4>& lifts()
{
    static const std::array<LiftMachine, 4> all = [] {
        chalk::test::LiftOnTest first;
        chalk::test::LiftOnTest loaded;
        loaded.rehearse();
        chalk::test::LiftOnTest built;
        built.set(chalk::progression::Stage::RepBuild, 60);
        chalk::test::LiftOnTest held;
        held.set(chalk::progression::Stage::SetBuild, 80);
        held.work({{80, 5, 2}}, 6);
        return std::array{first.machine(), loaded.machine(), built.machine(), held.machine()};
    }();
    return all;
}

/// What the line comes to for a lift: an event that the lift's log can hold and go on from, or nothing where it cannot.
void judge(const EntryLine& line, const LiftMachine& lift)
{
    const auto day = chalk::base::Date::fromDays(21'000);
    const auto due = lift.prescriptionOn(day);
    const chalk::sessions::EntryPlan plan{due, lift.kit().measure, lift.setup().policy};
    const auto event = eventOf(line, plan);
    expect(!event || (line.isUnderstood() && !line.isSkipped && due.kind != PrescriptionKind::Hold));
    expect(event || !line.isUnderstood() || line.isSkipped || due.kind != PrescriptionKind::Work);
    if (!event) {
        return;
    }
    if (const auto* exposure = std::get_if<Exposure>(&*event)) {
        expect(line.amounts.empty() || exposure->sets.size() == line.amounts.size());
        static_cast<void>(doubtsAbout(*exposure, plan, lift.loads()));
    }
    if (!lift.faultOf(*event)) {
        LiftMachine after = lift;
        static_cast<void>(after.apply(day, *event));
        static_cast<void>(after.prescriptionOn(day + 1));
    }
}

}  // namespace

/// A line of results as somebody types it: each word is understood or pointed at, what is understood says the same when it is written
/// anew, and every lift takes it or refuses it.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size)
{
    const std::string text(reinterpret_cast<const char*>(bytes), size);
    const EntryLine line = chalk::sessions::parseEntryLine(text);
    expectTokensCover(line, text);
    expect(line.amounts.size() == line.own.size() && line.amounts.size() <= 20);
    if (line.isUnderstood() && !line.tokens.empty()) {
        const EntryLine again = chalk::sessions::parseEntryLine(textOf(line));
        expect(again.isUnderstood() && isSame(line, again));
    }
    for (const LiftMachine& lift : lifts()) {
        judge(line, lift);
    }
    return 0;
}
