#include "core/base/date.h"
#include "core/clients/client.h"
#include "core/lifts/exercise.h"
#include "core/progression/rule.h"
#include "core/progression/stage.h"
#include "core/sessions/session.h"
#include "core/store/migrations.h"

#include <QStringList>

#include <cstdlib>
#include <string>

namespace {

/// A text that a reader takes is the text that the value is written as.
template <class Value, class Written>
void expectSame(const std::optional<Value>& value, Written&& written, std::string_view text)
{
    if (value && written(*value) != text) {
        std::abort();
    }
}

}  // namespace

/// Days, weeks, times of day, keys and names: whatever is read is written back as it was.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size)
{
    namespace base = chalk::base;
    namespace lifts = chalk::lifts;
    namespace progression = chalk::progression;
    namespace sessions = chalk::sessions;
    const std::string text(reinterpret_cast<const char*>(bytes), size);
    expectSame(base::Date::parse(text), [](base::Date date) { return date.toString(); }, text);
    expectSame(base::parseIsoWeek(text), [](base::IsoWeek week) { return base::toString(week); }, text);
    expectSame(sessions::parseClock(text), [](int minute) { return sessions::clockText(minute); }, text);
    expectSame(lifts::patternOf(text), [](lifts::Pattern pattern) { return lifts::keyOf(pattern); }, text);
    expectSame(lifts::cautionTagOf(text), [](lifts::CautionTag tag) { return lifts::keyOf(tag); }, text);
    expectSame(progression::stageOf(text), [](progression::Stage stage) { return progression::keyOf(stage); }, text);
    expectSame(progression::ruleOf(text), [](progression::Rule rule) { return progression::nameOf(rule); }, text);
    static_cast<void>(chalk::clients::initialsOf(text));
    static_cast<void>(chalk::store::statementsOf(QString::fromStdString(text)));
    return 0;
}
