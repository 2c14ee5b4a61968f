#pragma once

#include "ui/common/dialogs.h"

#include <deque>
#include <vector>

namespace chalk::tests {

/// Answers dialogs from a script and keeps what was asked. With nothing left in the script, the safe answer is given and files are
/// called off.
class ScriptedDialogs final : public ui::common::Dialogs {
public:
    std::deque<int> answers;
    std::deque<QString> paths;
    std::vector<ui::common::Question> asked;
    std::vector<ui::common::FileQuestion> askedFiles;

    int ask(QWidget* /*parent*/, const ui::common::Question& question) override
    {
        asked.push_back(question);
        if (answers.empty()) {
            return question.safeAnswer;
        }
        const int answer = answers.front();
        answers.pop_front();
        return answer;
    }

    std::optional<QString> fileToOpen(QWidget* /*parent*/, const ui::common::FileQuestion& question) override { return next(question); }
    std::optional<QString> fileToSave(QWidget* /*parent*/, const ui::common::FileQuestion& question) override { return next(question); }
    std::optional<QString> folder(QWidget* /*parent*/, const ui::common::FileQuestion& question) override { return next(question); }

private:
    std::optional<QString> next(const ui::common::FileQuestion& question)
    {
        askedFiles.push_back(question);
        if (paths.empty()) {
            return std::nullopt;
        }
        const QString path = paths.front();
        paths.pop_front();
        return path;
    }
};

}  // namespace chalk::tests
