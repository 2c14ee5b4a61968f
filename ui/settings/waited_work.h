#pragma once

#include "core/store/studio_import.h"

#include <QString>

#include <functional>
#include <utility>

class QWidget;

namespace chalk::ui::common {
class Look;
}

namespace chalk::ui::settings {

/// Runs `work` in a thread of its own and waits for it while windows go on being painted. After 300 ms a box says `words`, with how far it is and a way to stop it:
/// `work` hears that from the progress that it is given, which may be told from any thread. For the moments without a page to say it on: before the window is
/// open and after it closed.
void runAndWait(const common::Look& look, QWidget* parent, const QString& words, const std::function<void(const store::Progress&)>& work);

/// The same, for what `work` answers.
template <class T>
[[nodiscard]] T waitFor(const common::Look& look, QWidget* parent, const QString& words, const std::function<T(const store::Progress&)>& work)
{
    T answer{};
    runAndWait(look, parent, words, [&](const store::Progress& progress) { answer = work(progress); });
    return answer;
}

}  // namespace chalk::ui::settings
