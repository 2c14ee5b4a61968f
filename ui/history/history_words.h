#pragma once

#include "core/lifts/catalogue.h"
#include "core/store/change_history.h"

#include <QByteArray>
#include <QString>

#include <array>
#include <vector>

namespace chalk::ui::history {

/// What an entry of the history is about, to choose by.
enum class HistoryTopic : std::uint8_t { Training, Sessions, Person, Health, Planning, Studio, Files };
inline constexpr std::array<HistoryTopic, 7> kHistoryTopics{HistoryTopic::Training, HistoryTopic::Sessions, HistoryTopic::Person, HistoryTopic::Health,
                                                            HistoryTopic::Planning, HistoryTopic::Studio, HistoryTopic::Files};

/// `Profile and contact`.
[[nodiscard]] QString historyTopicName(HistoryTopic topic);
[[nodiscard]] HistoryTopic topicOf(const store::ChangeEntry& entry);

/// What was done: `Recorded: Back squat, Deadlift`, `Profile changed`. A lift whose exercise is not known is named by its pattern.
[[nodiscard]] QString historyTitle(const store::ChangeEntry& entry, const lifts::Catalogue& catalogue);
/// The particulars: `goal: Carry the boat → Carry two boats`; of health the names of the fields alone; of a lift that was set by hand what was set and why.
/// Empty where there are none.
[[nodiscard]] QString historyDetail(const store::ChangeEntry& entry, const lifts::Catalogue& catalogue);
/// `24 Nov 2026, 17:31` by the clock of this machine, from ISO 8601; the text itself where it is none.
[[nodiscard]] QString momentText(const std::string& atUtc);
/// Who did it; `nobody named` where nobody said.
[[nodiscard]] QString historyAuthor(const store::ChangeEntry& entry);

/// CSV by RFC 4180: `at_utc,who,client,topic,what,detail`.
[[nodiscard]] QByteArray historyCsvOf(const std::vector<store::ChangeEntry>& entries, const lifts::Catalogue& catalogue);

/// JSON: `history`, a list of objects with `at`, `who`, `client`, `what`, `title`, `detail`, and of acts `act` and `taken_back`, of the audit `before`
/// and `after`.
[[nodiscard]] QByteArray historyJsonOf(const std::vector<store::ChangeEntry>& entries, const lifts::Catalogue& catalogue);

}  // namespace chalk::ui::history
